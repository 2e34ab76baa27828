"""Two gauges on one hose: are they apart by more than their makers allow, and does that grow from check to check?"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from statistics import fmean

from acquisition.register.records import CheckPoint, FieldCheck
from analysis.errors import InvalidInput

LEAST_READINGS = 5
LEAST_POINTS = 2
GROWTH_WORTH_A_WORD = 0.25
"""Share of what is allowed by which the difference has to have grown to be mentioned."""


@dataclass(frozen=True, slots=True)
class Accuracy:
    """What a maker states: so many Pa plus so many percent of the reading."""

    pa: float
    percent: float = 0.0

    def at(self, pressure_pa: float) -> float:
        """Return it at a pressure, in Pa."""
        return self.pa + self.percent / 100.0 * abs(pressure_pa)


def check_point(first_pa: Sequence[float], second_pa: Sequence[float], first: Accuracy, second: Accuracy) -> CheckPoint:
    """Return the means of what both showed at one pressure, and by how much they may differ.

    The limit is the root of the sum of squares of both stated accuracies. Raises `InvalidInput` for too few readings.
    """
    for name, readings in (("first gauge", first_pa), ("second gauge", second_pa)):
        if len(readings) < LEAST_READINGS or not all(math.isfinite(item) for item in readings):
            raise InvalidInput(f"readings of the {name}", len(readings), f"{LEAST_READINGS} numbers or more are needed")
    one, two = fmean(first_pa), fmean(second_pa)
    pressure = (one + two) / 2.0
    return CheckPoint(one, two, math.hypot(first.at(pressure), second.at(pressure)))


def field_check(day: date, first: str, second: str, points: Sequence[CheckPoint], note: str = "") -> FieldCheck:
    """Return the check; raises `InvalidInput` when it is of one gauge, or of too few pressures to mean anything."""
    if first == second:
        raise InvalidInput("second", second, "another gauge than the first is needed")
    if len(points) < LEAST_POINTS:
        raise InvalidInput("points", len(points), f"{LEAST_POINTS} pressures or more are needed, one of them near zero")
    return FieldCheck(day, first, second, tuple(points), note)


def verdict(check: FieldCheck) -> str:
    """Return what a check found, in a sentence."""
    worst = max(check.points, key=used_share)
    apart = abs(worst.first_pa - worst.second_pa)
    where = f"{apart:.2f} Pa apart at {(worst.first_pa + worst.second_pa) / 2:.1f} Pa"
    limit = f"{worst.allowed_pa:.2f} Pa are allowed"
    if check.agree:
        return f"{check.first} and {check.second} agree: at most {where}; {limit}."
    return f"{check.first} and {check.second} do not agree: {where}; {limit}. One of them needs calibration."


def history(checks: Sequence[FieldCheck]) -> str:
    """Return what the checks of the same two gauges say together, oldest first; empty for fewer than two."""
    if len(checks) < 2:
        return ""
    used = [max(used_share(point) for point in check.points) for check in checks]
    words = f"{len(checks)} checks since {checks[0].day.isoformat()}"
    if used[-1] - used[0] > GROWTH_WORTH_A_WORD:
        return f"{words}: the difference has grown from {used[0]:.0%} to {used[-1]:.0%} of what is allowed."
    return f"{words}: the difference has not grown."


def used_share(point: CheckPoint) -> float:
    """Return which share of the allowed difference a point uses up."""
    return abs(point.first_pa - point.second_pa) / point.allowed_pa if point.allowed_pa > 0 else math.inf
