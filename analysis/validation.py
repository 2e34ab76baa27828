"""What the values of a test may be. Every test passes here, whether it was read from a file or taken by the engine."""

from __future__ import annotations

import math

from analysis.bounds import above_zero, within
from analysis.errors import InvalidInput
from analysis.records import Air, Building, Limit, Point, Run, Test, ZeroFlow

_PRESSURE_PA = (-1000.0, 1000.0)
_TEMPERATURE_C = (-60.0, 60.0)
_BAROMETRIC_PA = (40_000.0, 115_000.0)
_ROUNDING_PA = 0.05
"""What means written down with one decimal may differ by."""


def validate(test: Test) -> None:
    """Raise `InvalidInput` for the first value that cannot be; fields are named as in the JSON form of a test."""
    _building(test.building)
    if not test.runs:
        raise InvalidInput("runs", (), "one run, or one in each direction, is needed", shown="empty")
    seen = set()
    for at, run in enumerate(test.runs):
        if run.direction in seen:
            raise InvalidInput(
                f"runs[{at}].direction", run.direction.value, "only one run in each direction is allowed"
            )
        seen.add(run.direction)
        _run(run, f"runs[{at}]")


def validate_limit(limit: Limit, field: str) -> None:
    """Raise `InvalidInput` for a limit whose value is no number above 0."""
    above_zero(limit.value, f"{field}.value")


def _building(building: Building) -> None:
    for name in ("volume_m3", "envelope_area_m2", "floor_area_m2", "height_m"):
        value: float | None = getattr(building, name)
        if value is not None:
            above_zero(value, f"building.{name}")
    within(building.altitude_m, -500.0, 6000.0, "building.altitude_m", "m")


def _run(run: Run, path: str) -> None:
    _air(run.air, f"{path}.air")
    if run.zero_before is not None:
        _zero(run.zero_before, f"{path}.zero_before")
    for at, point in enumerate(run.points):
        _point(point, f"{path}.points[{at}]")
    if run.zero_after is not None:
        _zero(run.zero_after, f"{path}.zero_after")
    for at, zero in enumerate(run.zeros_between):
        _zero(zero, f"{path}.zeros_between[{at}]")
    if run.zero_at_points_pa and len(run.zero_at_points_pa) != len(run.points):
        allowed = f"one for each of the {len(run.points)} points is needed"
        raise InvalidInput(f"{path}.zero_at_points_pa", len(run.zero_at_points_pa), allowed)
    for at, pressure_pa in enumerate(run.zero_at_points_pa):
        within(pressure_pa, *_PRESSURE_PA, f"{path}.zero_at_points_pa[{at}]", "Pa")
    if run.gust_corrected is not None:
        _corrected(run, run.gust_corrected, f"{path}.gust_corrected")


def _corrected(run: Run, corrected: Run, path: str) -> None:
    """Hold a gust-corrected run against the one that it corrects: the same points, another outdoor pressure."""
    if corrected.gust_corrected is not None:
        raise InvalidInput(f"{path}.gust_corrected", "a run", "a corrected run is not corrected again", shown="a run")
    if (corrected.direction, len(corrected.points)) != (run.direction, len(run.points)):
        allowed = f"the same direction and as many points as the run itself, {len(run.points)}, are needed"
        shown = f"{corrected.direction.value} with {len(corrected.points)} points"
        raise InvalidInput(f"{path}.points", len(corrected.points), allowed, shown=shown)
    _run(corrected, path)


def _air(air: Air, path: str) -> None:
    within(air.indoor_c, *_TEMPERATURE_C, f"{path}.indoor_c", "degC")
    within(air.outdoor_c, *_TEMPERATURE_C, f"{path}.outdoor_c", "degC")
    for name in ("indoor_rh", "outdoor_rh"):
        humidity: float | None = getattr(air, name)
        if humidity is not None:
            within(humidity, 0.0, 1.0, f"{path}.{name}", "(relative humidity as a fraction)")
    if air.barometric_pa is not None:
        within(air.barometric_pa, *_BAROMETRIC_PA, f"{path}.barometric_pa", "Pa")
    if air.wind_m_s is not None:
        within(air.wind_m_s, 0.0, 100.0, f"{path}.wind_m_s", "m/s")


def _zero(zero: ZeroFlow, path: str) -> None:
    low_pa, high_pa = _PRESSURE_PA
    if zero.readings_pa and not (low_pa <= min(zero.readings_pa) and max(zero.readings_pa) <= high_pa):
        for at, reading in enumerate(zero.readings_pa):
            within(reading, low_pa, high_pa, f"{path}.readings_pa[{at}]", "Pa")
    if not math.isfinite(math.fsum(zero.readings_pa)):
        for at, reading in enumerate(zero.readings_pa):
            within(reading, low_pa, high_pa, f"{path}.readings_pa[{at}]", "Pa")
    within(zero.mean_pa, *_PRESSURE_PA, f"{path}.mean_pa", "Pa")
    positive, negative = zero.positive_mean_pa, zero.negative_mean_pa
    if positive is not None:
        within(positive, 0.0, _PRESSURE_PA[1], f"{path}.positive_mean_pa", "Pa")
    if negative is not None:
        within(negative, _PRESSURE_PA[0], 0.0, f"{path}.negative_mean_pa", "Pa")
    if positive is not None or negative is not None:
        low, high = negative or 0.0, positive or 0.0
        if not low - _ROUNDING_PA <= zero.mean_pa <= high + _ROUNDING_PA:
            allowed = f"a mean between those of the negative and the positive readings, {low:g} and {high:g}, is needed"
            raise InvalidInput(f"{path}.mean_pa", zero.mean_pa, allowed)
    _count(zero.count, f"{path}.count")
    if zero.seconds is not None:
        above_zero(zero.seconds, f"{path}.seconds")


def _point(point: Point, path: str) -> None:
    within(point.envelope_pa, *_PRESSURE_PA, f"{path}.envelope_pa", "Pa")
    above_zero(point.flow_m3_h, f"{path}.flow_m3_h")
    if point.target_pa is not None:
        within(point.target_pa, *_PRESSURE_PA, f"{path}.target_pa", "Pa")
    if point.seconds is not None:
        above_zero(point.seconds, f"{path}.seconds")
    if point.count is not None:
        _count(point.count, f"{path}.count")
    for name in ("envelope_sd_pa", "flow_sd_m3_h"):
        spread: float | None = getattr(point, name)
        if spread is not None and not 0.0 <= spread < math.inf:
            raise InvalidInput(f"{path}.{name}", spread, "a number of at least 0 is needed")


def _count(value: int, field: str) -> None:
    if value < 1:
        raise InvalidInput(field, value, "a whole number of at least 1 is needed")
