"""What the pressure of a zone tells: on which side it lies, how its leaks split, what the garage brings."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from acquisition.languages import ENGLISH, Language
from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import interval
from acquisition.zonetest import KeptZone, ZoneQuestion
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


def zone_tables(question: ZoneQuestion, display: Display, language: Language = ENGLISH) -> tuple[Table, ...]:
    """Return everything that the readings tell; raises `InvalidInput` for readings that cannot be."""
    say = language.say
    reading = ZoneReading(
        Measured(question.house_pa, question.pressure_u_pa), Measured(question.zone_pa, question.pressure_u_pa)
    )
    ratio = zone_ratio(reading)
    cells = (say("Leak to the house over leak to outdoors"), *_plain(ratio.ratio, display, language))
    rows = [
        Row(cells, say("The zone is {side}.", side=say(ratio.side))),
        *_checks(ratio.checks, display, language),
    ]
    tables = [Table(say("Zone pressure"), _heads(language), tuple(rows))]
    if question.garage:
        tables.append(_garage(question, reading, display, language))
    elif question.hole is not None:
        tables.append(_split(question, reading, display, language))
    return tuple(tables)


def kept_zone_tables(zones: Iterable[KeptZone], display: Display, language: Language = ENGLISH) -> tuple[Table, ...]:
    """Return what each zone tells that was kept, under its name; one whose readings cannot be is left out."""
    tables: list[Table] = []
    for zone in zones:
        try:
            told = zone_tables(zone.question, display, language)
        except InvalidInput:
            continue
        tables += [replace(table, title=f"{zone.name}: {table.title}") for table in told]
    return tuple(tables)


def _split(question: ZoneQuestion, reading: ZoneReading, display: Display, language: Language) -> Table:
    say = language.say
    before, after = _flows(question)
    if question.zone_after_pa is None:
        raise InvalidInput("zone pressure after", None, "the pressure of the zone with the hole is needed")
    if question.hole not in HOLES:
        raise InvalidInput("hole", question.hole, f"one of {', '.join(HOLES)} is needed")
    change = Measured(after.value - before.value, question.flow_u_m3_h * 2**0.5)
    hole = AddedHole(HOLES[question.hole], Measured(question.zone_after_pa, question.pressure_u_pa), change)
    found: ZoneSplit = split_by_hole(reading, hole, before)
    unit, coefficient = (unit_symbol(kind, display) for kind in (Quantity.FLOW, Quantity.FLOW_COEFFICIENT))
    through = say("Flow through the zone at this pressure, {unit}", unit=unit)
    inner = say("Leak between house and zone, {unit}", unit=coefficient)
    outer = say("Leak between zone and outdoors, {unit}", unit=coefficient)
    rows = [
        _row(through, found.path_flow_m3_h, Quantity.FLOW, display, language),
        _row(inner, found.house_zone, Quantity.FLOW_COEFFICIENT, display, language),
        _row(outer, found.zone_outdoors, Quantity.FLOW_COEFFICIENT, display, language),
    ]
    if found.share is not None:
        title = say("Share of the leakage of the house, %")
        rows.append(Row((title, *_plain(found.share.times(100.0), display, language))))
    rows += _checks(found.checks, display, language)
    note = () if found.usable else (say("Not every check is met: the numbers are not worth a decision."),)
    return Table(say("Split by the added hole"), _heads(language), tuple(rows), note)


def _garage(question: ZoneQuestion, reading: ZoneReading, display: Display, language: Language) -> Table:
    say = language.say
    door = None
    if question.flow_after_m3_h is not None or question.flow_before_m3_h is not None:
        before, after = _flows(question)
        door = DoorOpened(before, after, question.zone_after_pa or 0.0)
    found = garage_result(reading, door)
    rows = _checks(found.checks, display, language)
    if found.found is not None:
        title = say("Leak between house and garage, {unit}", unit=unit_symbol(Quantity.FLOW, display))
        share = _plain(found.found.share.times(100.0), display, language)
        rows[:0] = [
            _row(title, found.found.interface_m3_h, Quantity.FLOW, display, language),
            Row((say("Share of the leakage, %"), *share)),
        ]
    return Table(say("Garage"), _heads(language), tuple(rows))


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


def _heads(language: Language) -> tuple[str, ...]:
    return "", language.say("Value"), language.say("95 % interval")


def _row(title: str, estimate: Estimate, kind: Quantity, display: Display, language: Language) -> Row:
    return Row((title, format_estimate(estimate, kind, display).value, interval(estimate, kind, display, language)))


def _plain(estimate: Estimate, display: Display, language: Language) -> tuple[str, str]:
    text = format_estimate(estimate, Quantity.EXPONENT, display)
    between = language.say("{low} to {high}", low=text.low, high=text.high)
    return text.value, between if text.low else language.say("open")


def _checks(checks: Sequence[Check], display: Display, language: Language) -> list[Row]:
    rows = []
    for check in checks:
        value = "" if check.value is None else f"{format_number(check.value, 1, display.decimal_mark)} {check.unit}"
        tone, word = (Tone.GOOD, language.say("met")) if check.ok else (Tone.BAD, language.say("not met"))
        rows.append(Row((language.said(check.text), value.strip(), word), "", tone))
    return rows
