"""Whether a pressure stands: the settle test of the controller and the spread of the zero-flow pressure. Pure."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

WINDOW_S = 3.0
"""Length of the window that the test looks at."""

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Trend:
    """Straight line through a window: its mean and its slope."""

    mean_pa: float
    slope_pa_s: float
    span_s: float
    count: int


def trend(time_s: Floats, pressure_pa: Floats) -> Trend | None:
    """Return mean and slope of a window, both arrays of shape (n,); None with fewer than three readings."""
    if len(time_s) < 3:
        return None
    count = len(time_s)
    centred = time_s - np.add.reduce(time_s) / count
    spread = float(centred @ centred)
    if spread <= 0:
        return None
    mean = float(np.add.reduce(pressure_pa)) / count
    return Trend(mean, float(centred @ (pressure_pa - mean)) / spread, float(time_s[-1] - time_s[0]), count)


def settled(window: Trend, target_pa: float, building_lag_s: float, wind_spread_pa: float) -> bool:
    """Tell whether a window stands at its target.

    The slope counts by what it still has to bring: a tight house creeps for many seconds after its mean looks right,
    and averaging that creep biases the flow.
    """
    near = max(0.3, 0.02 * abs(target_pa)) + wind_spread_pa
    still = max(0.4, 0.015 * abs(target_pa)) + 1.2 * wind_spread_pa
    return (
        window.span_s >= 0.9 * WINDOW_S
        and abs(window.mean_pa - target_pa) < near
        and abs(window.slope_pa_s) * (1 + building_lag_s) < still
    )


def spread_of_means(time_s: Floats, pressure_pa: Floats, block_s: float = WINDOW_S) -> float:
    """Return the standard deviation of block means of a record (Pa), 0 when there are fewer than three blocks."""
    if len(time_s) < 3:
        return 0.0
    block = np.floor((time_s - time_s[0]) / block_s).astype(np.int64)
    counts = np.bincount(block)
    sums = np.bincount(block, weights=pressure_pa)
    means = sums[counts > 0] / counts[counts > 0]
    whole = means[:-1] if len(means) > 3 else means
    return float(np.std(whole, ddof=1)) if len(whole) >= 3 and math.isfinite(float(whole.sum())) else 0.0
