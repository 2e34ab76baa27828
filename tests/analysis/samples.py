"""Runs and tests for the tests of the analysis. All data are invented."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from analysis.records import Air, Building, Check, Direction, Point, Run, Test, TestResult, ZeroFlow

PRESSURES_PA = (60.2, 54.1, 48.8, 43.6, 38.1, 32.4, 26.9, 21.3, 15.8, 10.4)
FLOWS_M3_H = (1502.1, 1401.9, 1316.0, 1217.5, 1116.3, 1009.7, 884.0, 765.2, 627.9, 479.8)

BUILDING = Building("Mill Row 8", 300.0, 360.0, 120.0, 5.0)
STILL_AIR = Air(20.0, 20.0, barometric_pa=101_325.0, wind_m_s=0.5)
ZERO = ZeroFlow(0.0, 0.04, -0.05, 600, 60.0)


def run_of(
    pressures_pa: Sequence[float] = PRESSURES_PA,
    flows_m3_h: Sequence[float] = FLOWS_M3_H,
    direction: Direction = Direction.DEPRESSURIZE,
    air: Air = STILL_AIR,
    zero_before: ZeroFlow | None = ZERO,
    zero_after: ZeroFlow | None = ZERO,
) -> Run:
    """Return a run of induced magnitudes and flows; envelope pressures hold the zero-flow pressure."""
    means = [zero.mean_pa for zero in (zero_before, zero_after) if zero is not None]
    zero_pa = sum(means) / len(means) if means else 0.0
    points = tuple(
        Point(direction.sign * pressure + zero_pa, flow, 20.0, count=200)
        for pressure, flow in zip(pressures_pa, flows_m3_h, strict=True)
    )
    return Run(direction, air, points, zero_before, zero_after)


def whole_test(*runs: Run, building: Building = BUILDING) -> Test:
    """Return a test of the runs, of one good one if none is given."""
    return Test(building, runs or (run_of(),), "as built")


def without_point(run: Run, *at: int) -> Run:
    """Return the run without some of its points."""
    return replace(run, points=tuple(point for i, point in enumerate(run.points) if i not in at))


def check_of(result: TestResult, check_id: str, run: int = 0) -> Check:
    """Return one check of a result."""
    return next(check for check in result.runs[run].checks if check.id == check_id)
