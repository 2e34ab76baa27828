"""In which order the targets are taken, and where zero-flow records stand between them."""

from __future__ import annotations

from acquisition.plan import TestPlan
from analysis.outlook import Effort, Unrest, expected_half_width

WORTH_SHARE = 0.95
"""Records between the points are made where they bring the interval to this share or less."""


def rounds(targets_pa: tuple[float, ...], between: int) -> tuple[tuple[float, ...], ...]:
    """Return the targets in rounds, a zero-flow record after each: every round goes down the whole span.

    So pressure and time do not go together, and a slow change of the wind does not tilt the line. The first target of
    all stays the highest: it shows a loose seal at once.
    """
    count = min(between + 1, len(targets_pa))
    return tuple(targets_pa[at::count] for at in range(count))


def between_pays(plan: TestPlan, air: Unrest, targets_pa: tuple[float, ...]) -> bool:
    """Return whether zero-flow records between the points narrow the interval enough to be worth the stops."""
    runs = len(plan.directions)
    with_them = Effort(plan.zero_s, plan.average_s, runs, 2 + plan.zeros_between)
    without = Effort(plan.zero_s, plan.average_s, runs)
    narrow = expected_half_width(air, targets_pa, with_them)
    return narrow <= WORTH_SHARE * expected_half_width(air, targets_pa, without)
