"""How restless a channel is over some seconds, apart from where it is going. Pure."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

FLUTTER_BLOCK_S, WANDER_BLOCK_S = 0.5, 1.0
LEAST_BLOCKS = 7
MEDIAN_TO_SD = 1.4826


def flutter(time_s: Floats, value: Floats) -> float | None:
    """Return how much half-second means change from one to the next, as a standard deviation; None with too little.

    Half a second takes the noise of single readings away and keeps what water or a moving hose do. The median of the
    changes is taken, about their own median: neither one step, however large, nor a slope is unrest.
    """
    means = _means(time_s, value, FLUTTER_BLOCK_S)
    if len(means) < LEAST_BLOCKS:
        return None
    changes = np.diff(means)
    return float(np.median(np.abs(changes - np.median(changes))) * MEDIAN_TO_SD / np.sqrt(2.0))


def liveliness(time_s: Floats, value: Floats) -> float | None:
    """Return how many times more the means of whole seconds scatter than the noise of single readings explains.

    About 1: nothing but the gauge's own noise is left. None with too little to go by, or a gauge without noise.
    """
    means = _means(time_s, value, WANDER_BLOCK_S)
    if len(means) < LEAST_BLOCKS or len(value) < 3 * LEAST_BLOCKS:
        return None
    single = float(np.std(np.diff(value))) / np.sqrt(2.0)
    rate = (len(value) - 1) / max(float(time_s[-1] - time_s[0]), 1e-6)
    floor = single / np.sqrt(max(rate * WANDER_BLOCK_S, 1.0))
    return float(np.std(means, ddof=1) / floor) if floor > 0.0 else None


def _means(time_s: Floats, value: Floats, block_s: float) -> Floats:
    if len(time_s) < 2:
        return np.empty(0)
    block = np.floor((time_s - time_s[0]) / block_s).astype(np.int64)
    counts = np.bincount(block)
    sums = np.bincount(block, weights=value)
    means: Floats = sums[counts > 0] / counts[counts > 0]
    return means


def repeated(value: Floats) -> float:
    """Return the share of readings that are the same as the one before, to the digit."""
    return float(np.mean(np.diff(value) == 0.0)) if len(value) > 1 else 0.0
