"""How restless a channel is over some seconds, apart from where it is going. Pure."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

FLUTTER_BLOCK_S, WANDER_BLOCK_S = 0.5, 1.0
FEWEST_BLOCKS = 6
MEDIAN_TO_SD = 1.4826
LEFT_OUT = 2.0
"""What the mean square of normal changes loses with the largest two of seven left out, about."""
STEP_SHARE = 0.55


def flutter(time_s: Floats, value: Floats) -> float | None:
    """Return how restless half-second means are, as a standard deviation of one of them; None with too little.

    Half a second takes the noise of single readings away and keeps what water or a moving hose do. How much each change
    differs from the one before is looked at, and the median taken: neither one step, however large, nor a pressure on
    its way to a target is unrest.
    """
    means = _means(time_s, value, FLUTTER_BLOCK_S)
    if len(means) < FEWEST_BLOCKS:
        return None
    bends = np.diff(means, 2)
    return float(np.median(np.abs(bends)) * MEDIAN_TO_SD / np.sqrt(6.0))


def stir(time_s: Floats, value: Floats) -> float | None:
    """Return how much half-second means of a held pressure move, as a standard deviation; None with too little.

    The smaller of two measures: how far they scatter about a straight line, and by how much they change from one to
    the next. Where two changes make most of it, it is a step or a short ramp, and only the others count.
    """
    means = _means(time_s, value, FLUTTER_BLOCK_S)
    if len(means) < FEWEST_BLOCKS:
        return None
    at = np.arange(len(means))
    off = means - np.polyval(np.polyfit(at, means, 1), at)
    changes = np.sort(np.diff(means) ** 2)
    all_pa, others_pa = (float(np.sqrt(mean / 2.0)) for mean in (changes.mean(), LEFT_OUT * changes[:-2].mean()))
    if others_pa < STEP_SHARE * all_pa:
        return others_pa
    return min(float(np.sqrt(off @ off / (len(means) - 2))), all_pa)


def liveliness(time_s: Floats, value: Floats) -> float | None:
    """Return how many times more a channel moves than the noise of its single readings explains.

    The larger of two measures: how far means of whole seconds scatter about a straight line, and by how much
    half-second means change from one to the next. About 1: nothing but the gauge's own noise is left. None with too
    little to go by, or a gauge without noise.
    """
    wander, quick = _means(time_s, value, WANDER_BLOCK_S), _means(time_s, value, FLUTTER_BLOCK_S)
    if len(wander) < FEWEST_BLOCKS or len(value) < 3 * FEWEST_BLOCKS:
        return None
    single = float(np.std(np.diff(value))) / np.sqrt(2.0)
    rate = (len(value) - 1) / max(float(time_s[-1] - time_s[0]), 1e-6)
    if single <= 0.0:
        return None
    at = np.arange(len(wander))
    off = wander - np.polyval(np.polyfit(at, wander, 1), at)
    scatter = float(np.sqrt(off @ off / (len(wander) - 2))) * np.sqrt(max(rate * WANDER_BLOCK_S, 1.0))
    change = float(np.sqrt(np.mean(np.diff(quick) ** 2) / 2.0)) * np.sqrt(max(rate * FLUTTER_BLOCK_S, 1.0))
    return float(max(scatter, change) / single)


def _means(time_s: Floats, value: Floats, block_s: float) -> Floats:
    if len(time_s) < 2:
        return np.empty(0)
    block = np.floor((time_s - time_s[0]) / block_s).astype(np.int64)
    counts = np.bincount(block)
    sums = np.bincount(block, weights=value)
    # What is left over at an end is too short to be a mean like the others.
    whole = 2 * counts > counts.max()
    means: Floats = sums[whole] / counts[whole]
    return means


def repeated(value: Floats) -> float:
    """Return the share of readings that are the same as the one before, to the digit."""
    return float(np.mean(np.diff(value) == 0.0)) if len(value) > 1 else 0.0
