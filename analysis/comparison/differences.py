"""What two tests differ in besides their result: a comparison is never silent about it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from analysis.records import Building, Run, Test
from analysis.zeroflow import zero_correction_pa

Value = float | str | None


@dataclass(frozen=True, slots=True)
class Difference:
    """One thing that differs. Values are in `unit`, None where not recorded; `effect` says what that does.

    `field` names it as in the JSON form of a test, with the direction in front where it belongs to one.
    """

    field: str
    title: str
    before: Value
    after: Value
    unit: str
    effect: str


@dataclass(frozen=True, slots=True)
class _Looked:
    """Something to look at; numbers count as different from `least` on (our choice: below, it hardly matters)."""

    field: str
    title: str
    unit: str
    effect: str
    least: float = 0.0


def _shortest(run: Run) -> float | None:
    known = [point.seconds for point in run.points if point.seconds is not None]
    return min(known) if known else None


_BUILDING = (
    _Looked("name", "Building", "", "another building, or the same one under another name"),
    _Looked("volume_m3", "Volume", "m³", "air changes are not comparable; flows are"),
    _Looked("envelope_area_m2", "Envelope area", "m²", "rates per envelope area are not comparable; flows are"),
    _Looked("floor_area_m2", "Floor area", "m²", "rates per floor area are not comparable; flows are"),
    _Looked("height_m", "Height", "m", "the expected stack pressure is not the same"),
    _Looked("altitude_m", "Altitude", "m", "the density of the air is not the same where no barometer was read"),
)

_MISSING_ZERO = "the zero-flow pressure was taken off in one test only"
_TEMPERATURE = "openings and the stack may have behaved differently; the air itself is accounted for"
_RUN: tuple[tuple[_Looked, Callable[[Run], float | None]], ...] = (
    (_Looked("air.indoor_c", "Indoor temperature", "°C", _TEMPERATURE, 2.0), lambda run: run.air.indoor_c),
    (_Looked("air.outdoor_c", "Outdoor temperature", "°C", _TEMPERATURE, 5.0), lambda run: run.air.outdoor_c),
    (
        _Looked("air.wind_m_s", "Wind", "m/s", "wind biases a test, more at low pressure than at 50 Pa", 1.0),
        lambda run: run.air.wind_m_s,
    ),
    (
        _Looked("air.barometric_pa", "Barometric pressure", "Pa", "the density was taken from another source", 1000.0),
        lambda run: run.air.barometric_pa,
    ),
    (
        _Looked("zero_pa", "Zero-flow pressure", "Pa", "stack and wind pushed differently on the house", 1.0),
        lambda run: zero_correction_pa(run.zero_before, run.zero_after),
    ),
    (
        _Looked("zero_before", "Zero-flow record before", "readings", _MISSING_ZERO, float("inf")),
        lambda run: None if run.zero_before is None else float(run.zero_before.count),
    ),
    (
        _Looked("zero_after", "Zero-flow record after", "readings", _MISSING_ZERO, float("inf")),
        lambda run: None if run.zero_after is None else float(run.zero_after.count),
    ),
    (
        _Looked("points", "Points", "", "the intervals are not equally wide", 2.0),
        lambda run: float(len(run.points)),
    ),
    (
        _Looked("lowest_pa", "Lowest pressure", "Pa", "a bend of the line shows in one test and not in the other", 5.0),
        lambda run: min((abs(point.envelope_pa) for point in run.points), default=None),
    ),
    (
        _Looked("highest_pa", "Highest pressure", "Pa", "flaps and seals may have moved in one test only", 5.0),
        lambda run: max((abs(point.envelope_pa) for point in run.points), default=None),
    ),
    (
        _Looked("seconds", "Average of a point", "s", "the intervals are not equally wide", 5.0),
        _shortest,
    ),
)


def differences(
    before: Test,
    after: Test,
    conditions_before: Mapping[str, str] | None = None,
    conditions_after: Mapping[str, str] | None = None,
) -> tuple[Difference, ...]:
    """Return everything in which the set-up of two tests differs, the building first.

    The conditions are what a test does not hold itself, as texts by their title: method, fit, rig, openings.
    """
    return (
        *_of_buildings(before.building, after.building),
        *_of_stages(before.stage, after.stage),
        *_of_directions(before, after),
        *_of_runs(before, after),
        *_of_conditions(conditions_before or {}, conditions_after or {}),
    )


def _of_buildings(before: Building, after: Building) -> Iterator[Difference]:
    for looked in _BUILDING:
        one: Value = getattr(before, looked.field)
        other: Value = getattr(after, looked.field)
        if one != other:
            yield _difference(looked, f"building.{looked.field}", one, other)


def _of_stages(before: str, after: str) -> Iterator[Difference]:
    if before != after:
        yield Difference("stage", "Stage", before, after, "", "what was built or sealed between is part of the change")


def _of_directions(before: Test, after: Test) -> Iterator[Difference]:
    one, other = (" and ".join(sorted(run.direction.value for run in test.runs)) for test in (before, after))
    if one != other:
        effect = "flaps and membranes leak differently in each direction: compare the direction that both have"
        yield Difference("directions", "Directions", one, other, "", effect)


def _of_runs(before: Test, after: Test) -> Iterator[Difference]:
    later = {run.direction: run for run in after.runs}
    for run in before.runs:
        other = later.get(run.direction)
        if other is None:
            continue
        for looked, value in _RUN:
            was, now = value(run), value(other)
            if _differs(was, now, looked.least):
                yield _difference(looked, f"{run.direction.value}.{looked.field}", was, now)


def _of_conditions(before: Mapping[str, str], after: Mapping[str, str]) -> Iterator[Difference]:
    for title in dict.fromkeys([*before, *after]):
        was, now = before.get(title), after.get(title)
        if was != now:
            yield Difference(title, title, was, now, "", "part of the change may come from it")


def _difference(looked: _Looked, field: str, before: Value, after: Value) -> Difference:
    return Difference(field, looked.title, before, after, looked.unit, looked.effect)


def _differs(before: float | None, after: float | None, least: float) -> bool:
    if before is None or after is None:
        return before is not after
    return abs(after - before) >= least
