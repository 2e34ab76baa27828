"""How far apart the points of a run stand: the lowest one, what a weak fan leaves of them, a gap between two."""

from __future__ import annotations

import math
from collections.abc import Sequence

from acquisition.plan import FEWEST_POINTS, LOWEST_PA
from analysis.methods import method_of
from analysis.records import ZeroFlow

ZERO_MULTIPLE = 5.0
"""ISO 9972: no point is lower than so many times the zero-flow pressure (from memory)."""
MARGIN = 1.1
"""The closing zero-flow pressure may be a little larger than the one before."""
SPAN = 3.0
"""A line wants pressures over at least this ratio where targets are chosen anew (our choice)."""


def lowest_target_pa(before: ZeroFlow) -> float:
    """Return the lowest target (Pa) that a zero-flow pressure allows, rounded up to half a pascal."""
    means = [before.mean_pa, before.positive_mean_pa or 0.0, before.negative_mean_pa or 0.0]
    return max(LOWEST_PA, math.ceil(MARGIN * ZERO_MULTIPLE * max(abs(mean) for mean in means) * 2) / 2)


def respaced(targets_pa: Sequence[float], reached_pa: float, lowest_pa: float) -> list[float]:
    """Return the targets below what a fan reaches (Pa), spaced anew where too few are left for a line.

    `lowest_pa` is the lowest that may be chosen; a target that was asked for stays allowed.
    """
    further = FEWEST_POINTS - 1
    if len(targets_pa) >= further or reached_pa <= lowest_pa:
        return list(targets_pa)
    end_pa = min([*targets_pa, max(lowest_pa, reached_pa / SPAN)])
    step_pa = (reached_pa - end_pa) / further
    return [round(reached_pa - at * step_pa, 1) for at in range(1, further + 1)]


def halfway(method: str, upper_pa: float, lower_pa: float) -> float | None:
    """Return the pressure between two neighbouring points (Pa) that stand further apart than a method allows, or None.

    Targets ten pascals apart leave no room: wind moves either point, and a rule of ten pascals is broken.
    """
    rule = next((item for item in method_of(method).requirements() if item.id == "point-spacing"), None)
    if rule is None or rule.at_most is None or upper_pa - lower_pa <= rule.at_most + rule.tolerance:
        return None
    return round((upper_pa + lower_pa) / 2.0, 1)
