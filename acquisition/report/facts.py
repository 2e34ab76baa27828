"""The facts of the test beside the figure: building, equipment, air and zero-flow pressure."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import PurePath

from acquisition.languages import Language
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
    say = content.language.say
    return [
        {"head": say("Building and method"), "rows": _building(content, display), "note": ""},
        {"head": say("Equipment"), "rows": _equipment(content), "note": ""},
        {"head": say("Air and zero-flow pressure"), "rows": _air(content, display), "note": _air_note(content)},
    ]


def _building(content: ReportContent, display: Display) -> list[list[str]]:
    building, note, say = content.test.building, printable(content.details.note), content.language.say

    def size(kind: Quantity, value: float | None) -> str:
        if value is None:
            return say(wording.NOT_RECORDED)
        shown = to_display(value, kind, display)
        decimals = 0 if shown >= 1000 or abs(shown - round(shown)) < 0.05 else 1
        return format_with_unit(value, kind, display, decimals)

    height, altitude = size(Quantity.LENGTH, building.height_m), size(Quantity.LENGTH, building.altitude_m)
    return [
        [say("Method"), method_title(content.result.method)],
        *_preparation(content),
        [say("Internal volume"), size(Quantity.VOLUME, building.volume_m3)],
        [say("Envelope area"), size(Quantity.AREA, building.envelope_area_m2)],
        [say("Floor area"), size(Quantity.AREA, building.floor_area_m2)],
        [say("Height, altitude"), f"{height}, {altitude}"],
        *([[say("Note"), note]] if note else []),
    ]


def _preparation(content: ReportContent) -> list[list[str]]:
    """Return the state in which the building was tested, where the method tells such states apart."""
    states = method_of(content.result.method).preparations
    if not states:
        return []
    say = content.language.say
    words = states.get(content.test.preparation, wording.NOT_RECORDED)
    return [[say("State"), say(words.partition(":")[0])]]


def _equipment(content: ReportContent) -> list[list[Cell]]:
    language, say = content.language, content.language.say
    if content.rig is None:
        return [[say("Rig"), say(wording.NOT_RECORDED)]]
    instruments: list[list[Cell]] = [
        [printable(_named(say(item.name))), _instrument(item, content.rig, language)]
        for item in content.rig.instruments
    ]
    return [
        [say("Rig"), printable(content.rig.name)],
        *instruments,
        *([] if content.rig.typed else _fitted(content.rig, language)),
    ]


def _named(words: str) -> str:
    return words[:1].upper() + words[1:]


def _fitted(rig: RigSpec, language: Language) -> list[list[Cell]]:
    """Return range and calibration of each fan."""
    say = language.say
    rows: list[list[Cell]] = []
    for number, item in enumerate(rig.fitted_ranges.ranges, 1):
        words = f"{_flow_range(item, language)}{_calibrated(rig, range_words(item), language)}"
        flow_range, calibration = say("Flow range"), say("Calibration")
        if rig.further:
            flow_range, calibration = (
                say("Flow range of fan {number}", number=number), say("Calibration of fan {number}", number=number)
            )  # fmt: skip
        rows += [[flow_range, words], [calibration, _calibration(item, language)]]
    return rows


def _instrument(item: InstrumentSpec, rig: RigSpec, language: Language) -> str:
    say = language.say
    serial = say(", number {serial}", serial=printable(item.serial)) if item.serial else ""
    words = f"{printable(PurePath(item.profile).stem)}{serial}{_calibrated(rig, item.name, language)}"
    alike: dict[str, list[str]] = {}
    for correction in rig.corrections:
        of, _, channel = correction.channel.rpartition(".")
        if of == item.name:
            how = say(
                "corrected by certificate of {day}: {words}",
                day=language.short_day(correction.calibrated),
                words=language.said(correction.words),
            )
            alike.setdefault(how, []).append(say(channel))
    return words + "".join(f"; {printable(', '.join(channels))} {printable(how)}" for how, channels in alike.items())


def _calibrated(rig: RigSpec, of: str, language: Language) -> str:
    """Return the day of a calibration and until when it is good, as the register had it."""
    note = next((note for note in rig.calibrations if note.of == of), None)
    if note is None or note.calibrated is None:
        return ""
    say, day = language.say, language.short_day
    due = ", ".join(
        say("{day} by {scheme}", day=day(until), scheme=printable(scheme)) if scheme else day(until)
        for scheme, until in note.due
    )
    return say(", calibrated {day}, due {due}", day=day(note.calibrated), due=due)


def _flow_range(item: FlowRange, language: Language) -> str:
    low, high = (language.number(f"{pressure:g}") for pressure in (item.min_pa, item.max_pa))
    name = printable(item.name)
    return language.say("{name}, {low} to {high} Pa at the flow element", name=name, low=low, high=high)


def _calibration(item: FlowRange, language: Language) -> Cell:
    number = language.number
    return {
        "before": f"q = {number(f'{item.coefficient_m3_h_pa_n:g}')} (Δp/Pa)",
        "power": number(f"{item.exponent:g}"),
        "behind": language.say(" m³/h at {density} kg/m³", density=number(f"{item.reference_density_kg_m3:g}")),
    }


def _air(content: ReportContent, display: Display) -> list[list[str]]:
    runs, say = content.runs, content.language.say
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
            say(wording.NOT_RECORDED) if rh is None else format_with_unit(rh, Quantity.RELATIVE_HUMIDITY, display)
            for rh in sides
        )

    def wind(run: RunContent) -> str:
        speed_m_s = run.run.air.wind_m_s
        return say(wording.NOT_RECORDED) if speed_m_s is None else format_with_unit(speed_m_s, Quantity.SPEED, display)

    rows: list[tuple[str, Callable[[RunContent], str]]] = [
        (say("Indoor air"), lambda run: temperature(run.run.air.indoor_c)),
        (say("Outdoor air"), lambda run: temperature(run.run.air.outdoor_c)),
        (say("Air pressure"), barometer),
        (say("Wind"), wind),
        (say("Zero before, Pa"), lambda run: _zero(run.run.zero_before, display, content.language)),
        (say("Zero after, Pa"), lambda run: _zero(run.run.zero_after, display, content.language)),
    ]
    if any(run.run.air.indoor_rh is not None or run.run.air.outdoor_rh is not None for run in runs):
        rows.insert(2, (say("Humidity in / out"), humidity))
    head = [["", *(say(wording.DIRECTIONS[run.run.direction]) for run in runs)]] if len(runs) > 1 else []
    return head + [[name, *(text(run) for run in runs)] for name, text in rows]


def _air_note(content: ReportContent) -> str:
    zeros = [zero for run in content.runs for zero in (run.run.zero_before, run.run.zero_after) if zero is not None]
    notes = [
        wording.BY_ALTITUDE if any(run.run.air.barometric_pa is None for run in content.runs) else "",
        wording.ZERO_SIDES if any(_has_sides(zero) for zero in zeros) else "",
    ]
    return " ".join(content.language.say(note) for note in notes if note)


def _has_sides(zero: ZeroFlow) -> bool:
    return zero.negative_mean_pa is not None and zero.positive_mean_pa is not None


def _zero(zero: ZeroFlow | None, display: Display, language: Language) -> str:
    """Return the mean of a zero-flow record, with the means of its negative and its positive readings."""
    if zero is None:
        return language.say("not measured")
    sides = (zero.negative_mean_pa, zero.positive_mean_pa) if _has_sides(zero) else ()
    mean, *rest = (
        format_value(value, Quantity.PRESSURE, display, 2) for value in (zero.mean_pa, *sides) if value is not None
    )
    return f"{mean} ({language.say(', ').join(rest)})" if rest else mean
