"""How far the flow at one pressure wanders in this house while nobody touches a leak: its own quiet record.

The record is looked at with differences of neighbouring means over longer and longer windows, much as clocks are judged
by their Allan variance. White noise and slow wander of several time scales, none below nothing, are mixed until they
show the same differences (non-negative least squares); the mixture then says how far any two means lie apart, whatever
their lengths and the pause between them. No mean of the record enters, so that a short one does not flatter the wind.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from analysis.sealing.levelled import Trace, differences_within
from analysis.student import t_multiplier

Floats = NDArray[np.float64]

SHORTEST_S = 60.0
"""A quiet record shorter than this says nothing (our choice)."""
LEAST_SHARE = 2e-4
"""No difference of means is surer than this share of the flow (our choice): what flow elements resolve."""
SCALES_S = (0.0, 3.0, 12.0, 50.0, 200.0)
"""Time scales of the noise; 0 is white."""
HALVES_S = (1, 2, 4, 8, 15, 30)
FEWEST_LOOKS = 2.0
MEDIAN_OF_SQUARES = 0.4549
"""Median of the square of a normal number of unit variance (chi-square of one degree of freedom, tables)."""
_CHANCES_PER_CONTRAST = 4.0
"""Independent looks that a record gives for each length of both windows; tuned on simulated houses."""


@dataclass(frozen=True, slots=True)
class Windows:
    """A mean over `after_s` against one over `before_s`, with `gap_s` between them, all in whole seconds."""

    before_s: int
    after_s: int
    gap_s: int = 0

    @property
    def total_s(self) -> int:
        """From the begin of the first to the end of the last."""
        return self.before_s + self.gap_s + self.after_s


@dataclass(frozen=True, slots=True)
class Unrest:
    """Variances (m3/h)**2 of the noise of each of `SCALES_S`, and the record they were taken from."""

    variances: tuple[float, ...]
    seconds: float
    mean_m3_h: float

    def sd_m3_h(self, windows: Windows) -> float:
        """Return the standard deviation of the difference of both means while nothing is sealed."""
        variance = float(_parts(windows) @ np.asarray(self.variances))
        return math.sqrt(max(variance, (LEAST_SHARE * self.mean_m3_h) ** 2))

    def dof(self, windows: Windows) -> float:
        """Return how many degrees of freedom that standard deviation has."""
        return max(_CHANCES_PER_CONTRAST * self.seconds / (windows.before_s + windows.after_s) - 1.0, 1.0)

    def limit_m3_h(self, windows: Windows, coverage: float) -> float:
        """Return what a difference stays within, with this probability, while nothing is sealed."""
        return t_multiplier(self.dof(windows), coverage) * self.sd_m3_h(windows)


def unrest_of(stretches: Sequence[Trace], *, mostly: bool = False) -> Unrest | None:
    """Return the unrest of quiet stretches, None when they are too short to say.

    Differences are taken within a stretch only. With `mostly` the stretches are quiet for the greater part: the median
    of the squares counts, which a few changes do not move.
    """
    values = [stretch.flow_m3_h for stretch in stretches]
    seconds = float(sum(np.count_nonzero(np.isfinite(item)) for item in values))
    rows, seen = [], []
    for after_s in HALVES_S:
        squares = np.square(differences_within(values, 2 * after_s, after_s))
        squares = squares[np.isfinite(squares)]
        looks = len(squares) / (3 * after_s)
        if looks < FEWEST_LOOKS:
            break
        middle = float(np.median(squares)) / MEDIAN_OF_SQUARES if mostly else float(squares.mean())
        variance = max(middle, 1e-12)
        # As many rows as independent looks, each in shares of what is seen: a slow wander counts as much as noise.
        weight = math.sqrt(looks) / variance
        rows.append(weight * _parts(Windows(2 * after_s, after_s)))
        seen.append(weight * variance)
    if seconds < SHORTEST_S or not rows:
        return None
    from scipy.optimize import nnls  # half a second to load, and few runs need it

    variances, _ = nnls(np.array(rows), np.array(seen))
    mean = float(np.nanmean(np.concatenate(values)))
    return Unrest(tuple(float(value) for value in variances), seconds, mean)


@lru_cache(maxsize=1024)
def _parts(windows: Windows) -> Floats:
    """Return the variance of the contrast that unit noise of each scale makes (scales,)."""
    weights = np.concatenate(
        [
            np.full(windows.before_s, -1.0 / windows.before_s),
            np.zeros(windows.gap_s),
            np.full(windows.after_s, 1.0 / windows.after_s),
        ]
    )
    pairs = np.correlate(weights, weights, "full")[len(weights) - 1 :]
    pairs[1:] *= 2.0
    lags = np.arange(len(pairs))
    parts = np.array([pairs @ (np.exp(-lags / scale) if scale else (lags == 0)) for scale in SCALES_S])
    parts.setflags(write=False)
    return parts
