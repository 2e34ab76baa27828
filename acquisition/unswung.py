"""What a held fan's own swing put into the readings of a window, told from what the fan was told. Pure.

The swing moves neither the mean of a window nor its slope, see `acquisition.dither`; it does widen the readings about
their mean, and would make a point look less sure than it is.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.signal import lfilter

from acquisition.lags import FAN_LAG_S, GAUGE_LAG_S, LATENCY_S
from acquisition.series import RunData
from drivers.clock import NS_PER_S

HOUSE_LAGS_S = (0.5, 1.1, 3.0)
"""Of building and gauge: the one that explains most is taken."""
STEEPEST = 2.0
"""At most so many percent of pressure or flow follow one of speed (an orifice flow follows the root of pressure)."""
TICK_S = 0.1
MEMORY_S = 10.0
FEWEST = 8
"""Readings; with fewer the swing cannot be told from chance."""

Floats = NDArray[np.float64]


def without_swing(data: RunData, times_ns: NDArray[np.int64], values: Floats) -> Floats:
    """Return readings (n,) with stamps (n,) less what follows the changes of the fan's speed; the mean stays.

    No more is taken off than a fan can do. One of which nothing was told, or that stood still for the window and the
    seconds before, changes nothing.
    """
    if len(values) < FEWEST:
        return values
    grid_s = np.arange(-MEMORY_S, (times_ns[-1] - times_ns[0]) / NS_PER_S + TICK_S, TICK_S)
    grid_ns = times_ns[0] + np.round(grid_s * NS_PER_S).astype(np.int64)
    told = data.speed(grid_ns, round((LATENCY_S + GAUGE_LAG_S) * NS_PER_S))
    mean = float(values.mean())
    if np.ptp(told) == 0.0 or told.mean() <= 0.0:
        return values
    fan = _lagged(told / told.mean() - 1.0, FAN_LAG_S)
    at_s = (times_ns - times_ns[0]) / NS_PER_S
    left = [_left(values - mean, mean * np.interp(at_s, grid_s, _lagged(fan, lag_s))) for lag_s in HOUSE_LAGS_S]
    return mean + min(left, key=lambda rest: float(rest @ rest))


def _left(about_mean: Floats, shape: Floats) -> Floats:
    shape = shape - shape.mean()
    power = float(shape @ shape)
    share = float(np.clip(shape @ about_mean / power, 0.0, STEEPEST)) if power > 0.0 else 0.0
    return about_mean - share * shape


def _lagged(told: Floats, lag_s: float) -> Floats:
    keeps = np.exp(-TICK_S / lag_s)
    settled = keeps * told[0]
    course: Floats = lfilter([1.0 - keeps], [1.0, -keeps], told, zi=[settled])[0]
    return course
