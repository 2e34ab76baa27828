"""The facts of the test beside the figure: building, equipment, air and zero-flow pressure."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import PurePath

from acquisition.register.ofrig import range_words
from acquisition.report import wording
from acquisition.report.content import ReportContent, RunContent
from acquisition.report.names import Json
from acquisition.report.typeface import printable
from acquisition.rig import InstrumentSpec, RigSpec
from acquisition.told.titles import method_title
from analysis.air import pressure_at_altitude
from analysis.methods import method_of
from analysis.records import FlowRange, ZeroFlow
from analysis.units import Display, Quantity, format_value, format_with_unit, to_display

Cell = str | dict[str, str]
"""A text, or a power: what stands before it, its exponent, what stands behind."""


def fact_groups(content: ReportContent, display: Display) -> list[Json]:
    """Return the groups: each a heading and rows of cells, the first cell of a row its name."""
    return [
        {"head": "Building and method", "rows": _building(content, display), "note": ""},
        {"head": "Equipment", "rows": _equipment(content), "note": ""},
        {"head": "Air and zero-flow pressure", "rows": _air(content, display), "note": _air_note(content)},
    ]


def _building(content: ReportContent, display: Display) -> list[list[str]]:
    building, note = content.test.building, printable(content.details.note)

    def size(kind: Quantity, value: float | None) -> str:
        if value is None:
            return wording.NOT_RECORDED
        shown = to_display(value, kind, display)
        decimals = 0 if shown >= 1000 or abs(shown - round(shown)) < 0.05 else 1
        return format_with_unit(value, kind, display, decimals)

    height, altitude = size(Quantity.LENGTH, building.height_m), size(Quantity.LENGTH, building.altitude_m)
    return [
        ["Method", method_title(content.result.method)],
        *_preparation(content),
        ["Internal volume", size(Quantity.VOLUME, building.volume_m3)],
        ["Envelope area", size(Quantity.AREA, building.envelope_area_m2)],
        ["Floor area", size(Quantity.AREA, building.floor_area_m2)],
        ["Height, altitude", f"{height}, {altitude}"],
        *([["Note", note]] if note else []),
    ]


def _preparation(content: ReportContent) -> list[list[str]]:
    """Return the state in which the building was tested, where the method tells such states apart."""
    states = method_of(content.result.method).preparations
    if not states:
        return []
    words = states.get(content.test.preparation, wording.NOT_RECORDED)
    return [["State", words.partition(":")[0]]]


def _equipment(content: ReportContent) -> list[list[Cell]]:
    if content.rig is None:
        return [["Rig", wording.NOT_RECORDED]]
    instruments: list[list[Cell]] = [
        [printable(item.name).capitalize(), _instrument(item, content.rig)] for item in content.rig.instruments
    ]
    return [
        ["Rig", printable(content.rig.name)],
        *instruments,
        *([] if content.rig.typed else _fitted(content.rig)),
    ]


def _fitted(rig: RigSpec) -> list[list[Cell]]:
    """Return range and calibration of each fan."""
    rows: list[list[Cell]] = []
    for number, item in enumerate(rig.fitted_ranges.ranges, 1):
        of_fan = f" of fan {number}" if rig.further else ""
        words = f"{_flow_range(item)}{_calibrated(rig, range_words(item))}"
        rows += [[f"Flow range{of_fan}", words], [f"Calibration{of_fan}", _calibration(item)]]
    return rows


def _instrument(item: InstrumentSpec, rig: RigSpec) -> str:
    serial = f", number {printable(item.serial)}" if item.serial else ""
    words = f"{printable(PurePath(item.profile).stem)}{serial}{_calibrated(rig, item.name)}"
    alike: dict[str, list[str]] = {}
    for correction in rig.corrections:
        of, _, channel = correction.channel.rpartition(".")
        if of == item.name:
            how = f"corrected by certificate of {correction.calibrated.isoformat()}: {correction.words}"
            alike.setdefault(how, []).append(channel)
    return words + "".join(f"; {printable(', '.join(channels))} {printable(how)}" for how, channels in alike.items())


def _calibrated(rig: RigSpec, of: str) -> str:
    """Return the day of a calibration and until when it is good, as the register had it."""
    note = next((note for note in rig.calibrations if note.of == of), None)
    if note is None or note.calibrated is None:
        return ""
    due = ", ".join(f"{day.isoformat()} by {printable(name)}" if name else day.isoformat() for name, day in note.due)
    return f", calibrated {note.calibrated.isoformat()}, due {due}"


def _flow_range(item: FlowRange) -> str:
    return f"{printable(item.name)}, {item.min_pa:g} to {item.max_pa:g} Pa at the flow element"


def _calibration(item: FlowRange) -> Cell:
    return {
        "before": f"q = {item.coefficient_m3_h_pa_n:g} (Δp/Pa)",
        "power": f"{item.exponent:g}",
        "behind": f" m³/h at {item.reference_density_kg_m3:g} kg/m³",
    }


def _air(content: ReportContent, display: Display) -> list[list[str]]:
    runs = content.runs
    altitude_m = content.test.building.altitude_m

    def temperature(value_c: float) -> str:
        return format_with_unit(value_c, Quantity.TEMPERATURE, display)

    def barometer(run: RunContent) -> str:
        measured_pa = run.run.air.barometric_pa
        pressure_pa = pressure_at_altitude(altitude_m) if measured_pa is None else measured_pa
        return format_with_unit(pressure_pa, Quantity.BAROMETRIC_PRESSURE, display)

    def humidity(run: RunContent) -> str:
        sides = (run.run.air.indoor_rh, run.run.air.outdoor_rh)
        return " / ".join(
            wording.NOT_RECORDED if rh is None else format_with_unit(rh, Quantity.RELATIVE_HUMIDITY, display)
            for rh in sides
        )

    def wind(run: RunContent) -> str:
        speed_m_s = run.run.air.wind_m_s
        return wording.NOT_RECORDED if speed_m_s is None else format_with_unit(speed_m_s, Quantity.SPEED, display)

    rows: list[tuple[str, Callable[[RunContent], str]]] = [
        ("Indoor air", lambda run: temperature(run.run.air.indoor_c)),
        ("Outdoor air", lambda run: temperature(run.run.air.outdoor_c)),
        ("Air pressure", barometer),
        ("Wind", wind),
        ("Zero before, Pa", lambda run: _zero(run.run.zero_before, display)),
        ("Zero after, Pa", lambda run: _zero(run.run.zero_after, display)),
    ]
    if any(run.run.air.indoor_rh is not None or run.run.air.outdoor_rh is not None for run in runs):
        rows.insert(2, ("Humidity in / out", humidity))
    head = [["", *(wording.DIRECTIONS[run.run.direction] for run in runs)]] if len(runs) > 1 else []
    return head + [[name, *(text(run) for run in runs)] for name, text in rows]


def _air_note(content: ReportContent) -> str:
    zeros = [zero for run in content.runs for zero in (run.run.zero_before, run.run.zero_after) if zero is not None]
    notes = [
        wording.BY_ALTITUDE if any(run.run.air.barometric_pa is None for run in content.runs) else "",
        wording.ZERO_SIDES if any(_has_sides(zero) for zero in zeros) else "",
    ]
    return " ".join(note for note in notes if note)


def _has_sides(zero: ZeroFlow) -> bool:
    return zero.negative_mean_pa is not None and zero.positive_mean_pa is not None


def _zero(zero: ZeroFlow | None, display: Display) -> str:
    """Return the mean of a zero-flow record, with the means of its negative and its positive readings."""
    if zero is None:
        return "not measured"
    sides = (zero.negative_mean_pa, zero.positive_mean_pa) if _has_sides(zero) else ()
    mean, *rest = (
        format_value(value, Quantity.PRESSURE, display, 2) for value in (zero.mean_pa, *sides) if value is not None
    )
    return f"{mean} ({', '.join(rest)})" if rest else mean
