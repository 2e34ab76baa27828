"""The naive way of testing, to hold the program against: what a first attempt would do, on the same rig and engine.

Averages of 10 s whatever the wind does, one loop on target minus reading that chases gusts while it averages, one
zero-flow record before the points, an unweighted fit.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager, nullcontext
from dataclasses import replace
from unittest.mock import patch

from acquisition.control import HIGHEST_SPEED, LOWEST_SPEED, SLEW_PER_S, PressureController
from acquisition.plan import TestPlan
from analysis.methods import analyse
from analysis.records import Estimate, Test

AVERAGE_S = 10.0
GAIN_PER_PA, RESET_S = 0.004, 2.5


class OneLoop(PressureController):
    """A PI controller on target minus reading, in Pa. It never holds the fan."""

    _sum = 0.0

    def aim(self, target_pa: float, standing_pa: float) -> None:
        """Take a new target; the sum goes on from the present speed."""
        super().aim(target_pa, standing_pa)
        self._sum = self.command

    def hold(self) -> None:
        """Go on steering while averaging."""

    def update(self, pressure_pa: float, flow_m3_h: float, dt_s: float) -> None:
        """One tick towards the target."""
        if self.target_pa is None:
            self.rest()
            return
        self._lag_s = self.plant.lag_s(pressure_pa, flow_m3_h)
        error = self.target_pa - pressure_pa
        self._sum = min(max(self._sum + GAIN_PER_PA * error * dt_s / RESET_S, LOWEST_SPEED), HIGHEST_SPEED)
        self._move(self._sum + GAIN_PER_PA * error, dt_s, SLEW_PER_S)


def steering(*, naive: bool) -> AbstractContextManager[object]:
    """Have tests that begin inside steered by the one loop, or as they are."""
    return patch("acquisition.bench.PressureController", OneLoop) if naive else nullcontext()


@contextmanager
def blind() -> Iterator[None]:
    """Have nobody watch inside: no vigil, no watchdog, and a loop that chases whatever is read."""
    with (
        patch("acquisition.vigil.Vigil.look", return_value=[]),
        patch("acquisition.watchdog.Watchdog.look", return_value=None),
        patch("acquisition.executors._unbelievable", return_value=False),
    ):
        yield


def naive_plan(plan: TestPlan) -> TestPlan:
    """Return the plan with short averages of fixed length and nothing between the points."""
    return replace(plan, average_s=AVERAGE_S, zeros_between=0, longest_average_s=None)


def naive_estimate(test: Test) -> Estimate:
    """Return q50 by the unweighted fit and the zero-flow record before the points alone."""
    runs = tuple(
        replace(run, zero_after=None, gust_corrected=None, zeros_between=(), zero_at_points_pa=()) for run in test.runs
    )
    return analyse(replace(test, runs=runs)).mean.q50_m3_h
