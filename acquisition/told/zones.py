"""What the pressure of a zone tells: on which side it lies, how its leaks split, what the garage brings."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import interval
from analysis.errors import InvalidInput
from analysis.numbertext import format_number
from analysis.records import Check, Estimate
from analysis.uncertain import Measured
from analysis.units import Display, Quantity, format_estimate, unit_symbol
from analysis.zones import (
    AddedHole,
    DoorOpened,
    HoleSide,
    ZoneReading,
    ZoneSplit,
    garage_result,
    split_by_hole,
    zone_ratio,
)

HOLES = {"outdoors": HoleSide.OUTDOORS, "house": HoleSide.HOUSE}


@dataclass(frozen=True, slots=True)
class ZoneQuestion:
    """What was read: magnitudes in Pa against outdoors and fan flows in m3/h, each with its standard uncertainty.

    `hole` is where one was added ("outdoors" or "house"), None without; `garage` means that the hole is its overhead
    door. What belongs to a hole that was not made is None.
    """

    house_pa: float
    zone_pa: float
    pressure_u_pa: float = 0.3
    hole: str | None = None
    zone_after_pa: float | None = None
    flow_before_m3_h: float | None = None
    flow_after_m3_h: float | None = None
    flow_u_m3_h: float = 3.0
    garage: bool = False


def zone_tables(question: ZoneQuestion, display: Display) -> tuple[Table, ...]:
    """Return everything that the readings tell; raises `InvalidInput` for readings that cannot be."""
    reading = ZoneReading(
        Measured(question.house_pa, question.pressure_u_pa), Measured(question.zone_pa, question.pressure_u_pa)
    )
    ratio = zone_ratio(reading)
    value, between = _plain(ratio.ratio, display)
    rows = [
        Row(("Leak to the house over leak to outdoors", value, between), f"The zone is {ratio.side}."),
        *_checks(ratio.checks, display),
    ]
    tables = [Table("Zone pressure", ("", "Value", "95 % interval"), tuple(rows))]
    if question.garage:
        tables.append(_garage(question, reading, display))
    elif question.hole is not None:
        tables.append(_split(question, reading, display))
    return tuple(tables)


def _split(question: ZoneQuestion, reading: ZoneReading, display: Display) -> Table:
    before, after = _flows(question)
    if question.zone_after_pa is None:
        raise InvalidInput("zone pressure after", None, "the pressure of the zone with the hole is needed")
    if question.hole not in HOLES:
        raise InvalidInput("hole", question.hole, f"one of {', '.join(HOLES)} is needed")
    change = Measured(after.value - before.value, question.flow_u_m3_h * 2**0.5)
    hole = AddedHole(HOLES[question.hole], Measured(question.zone_after_pa, question.pressure_u_pa), change)
    found: ZoneSplit = split_by_hole(reading, hole, before)
    flow, unit = Quantity.FLOW, unit_symbol(Quantity.FLOW, display)
    coefficient = unit_symbol(Quantity.FLOW_COEFFICIENT, display)
    rows = [
        _row(f"Flow through the zone at this pressure, {unit}", found.path_flow_m3_h, flow, display),
        _row(f"Leak between house and zone, {coefficient}", found.house_zone, Quantity.FLOW_COEFFICIENT, display),
        _row(f"Leak between zone and outdoors, {coefficient}", found.zone_outdoors, Quantity.FLOW_COEFFICIENT, display),
    ]
    if found.share is not None:
        rows.append(Row(("Share of the leakage of the house, %", *_plain(found.share.times(100.0), display))))
    rows += _checks(found.checks, display)
    note = () if found.usable else ("Not every check is met: the numbers are not worth a decision.",)
    return Table("Split by the added hole", ("", "Value", "95 % interval"), tuple(rows), note)


def _garage(question: ZoneQuestion, reading: ZoneReading, display: Display) -> Table:
    door = None
    if question.flow_after_m3_h is not None or question.flow_before_m3_h is not None:
        before, after = _flows(question)
        door = DoorOpened(before, after, question.zone_after_pa or 0.0)
    found = garage_result(reading, door)
    rows = _checks(found.checks, display)
    if found.found is not None:
        unit = unit_symbol(Quantity.FLOW, display)
        rows.insert(
            0, _row(f"Leak between house and garage, {unit}", found.found.interface_m3_h, Quantity.FLOW, display)
        )
        rows.insert(1, Row(("Share of the leakage, %", *_plain(found.found.share.times(100.0), display))))
    return Table("Garage", ("", "Value", "95 % interval"), tuple(rows))


def _flows(question: ZoneQuestion) -> tuple[Measured, Measured]:
    for name, value in (("flow before", question.flow_before_m3_h), ("flow after", question.flow_after_m3_h)):
        if value is None:
            raise InvalidInput(name, None, "the fan flow before and after is needed, at the same house pressure")
    assert question.flow_before_m3_h is not None
    assert question.flow_after_m3_h is not None
    return (
        Measured(question.flow_before_m3_h, question.flow_u_m3_h),
        Measured(question.flow_after_m3_h, question.flow_u_m3_h),
    )


def _row(title: str, estimate: Estimate, kind: Quantity, display: Display) -> Row:
    return Row((title, format_estimate(estimate, kind, display).value, interval(estimate, kind, display)))


def _plain(estimate: Estimate, display: Display) -> tuple[str, str]:
    text = format_estimate(estimate, Quantity.EXPONENT, display)
    return text.value, f"{text.low} to {text.high}" if text.low else "open"


def _checks(checks: Sequence[Check], display: Display) -> list[Row]:
    rows = []
    for check in checks:
        value = "" if check.value is None else f"{format_number(check.value, 1, display.decimal_mark)} {check.unit}"
        tone = Tone.GOOD if check.ok else Tone.BAD
        rows.append(Row((check.text, value.strip(), "met" if check.ok else "not met"), "", tone))
    return rows
