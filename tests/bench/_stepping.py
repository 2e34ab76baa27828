"""How the pressure went from one point to the next: time until it stood, how far it passed the target, gusts apart."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from acquisition.series import WindowRecord
from acquisition.steps import WindowKind

Floats = NDArray[np.float64]

SMALL_STEP_PA = (4.0, 6.5)
LONGEST_S = 26.0
"""A point that comes later was begun anew, or waited for something else than the pressure."""
SMOOTHED_READINGS = 5
HOLD_SETTLES_S = 2.0


@dataclass(frozen=True, slots=True)
class Stepped:
    """One step down: seconds until the average began; Pa by which the pressure passed the target.

    `gusts_pa` is what the same measure finds in as many seconds of the held fan after it, where no controller acts.
    """

    settle_s: float
    overshoot_pa: float
    gusts_pa: float


def small_steps(
    windows: Sequence[WindowRecord], zero_pa: float, pressures: Callable[[int, int], Floats]
) -> list[Stepped]:
    """Return the steps of `SMALL_STEP_PA` between points with nothing between them.

    `windows` in the order of time, none struck; `pressures(start_ns, end_ns)` gives envelope pressures.
    """
    found = []
    for before, after in pairwise(windows):
        if before.kind is not WindowKind.POINT or after.kind is not WindowKind.POINT:
            continue
        if before.target_pa is None or after.target_pa is None:
            continue
        settle_s = (after.start_ns - before.end_ns) / 1e9
        step_pa = abs(before.target_pa) - abs(after.target_pa)
        if not SMALL_STEP_PA[0] <= step_pa <= SMALL_STEP_PA[1] or settle_s > LONGEST_S:
            continue
        way = 1.0 if after.target_pa > 0 else -1.0
        moving = _smooth(way * (pressures(before.end_ns, after.start_ns) - zero_pa))
        start_ns = after.start_ns + round(HOLD_SETTLES_S * 1e9)
        end_ns = min(start_ns + after.start_ns - before.end_ns, after.end_ns)
        held = _smooth(way * (pressures(start_ns, end_ns) - zero_pa))
        if len(moving) and len(held):
            overshoot_pa = max(abs(after.target_pa) - float(moving.min()), 0.0)
            found.append(Stepped(settle_s, overshoot_pa, float(held.mean() - held.min())))
    return found


def _smooth(values: Floats) -> Floats:
    """Return half-second means, as the controller is shown."""
    if len(values) < SMOOTHED_READINGS:
        return np.empty(0)
    return np.convolve(values, np.ones(SMOOTHED_READINGS) / SMOOTHED_READINGS, "valid")
