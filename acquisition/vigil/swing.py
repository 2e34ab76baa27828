"""Whether the pressure follows the small swing of a held fan, or stands still instead. Pure."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

BLOCK_S = 0.5
FEWEST_BLOCKS = 6


@dataclass(frozen=True, slots=True)
class Swing:
    """How a pressure moved about a straight line, in units of what its gauge's own noise does to half-second means.

    `seen` is what it did, `expected` what the fan's swing should have done to it, `share` how much of that swing is in
    it (about 1 in a sound hose, wind apart). Without a swing `expected` is 0 and `share` 1.
    """

    seen: float
    expected: float
    share: float


def swing_of(
    pressure: tuple[Floats, Floats], swing: tuple[Floats, Floats], span_s: float, noise_pa: float
) -> Swing | None:
    """Look at the last `span_s`; `pressure` and `swing`: times before now (s) and values (Pa), (n,) and (m,) each.

    `noise_pa` is the spread of a single reading. None with too little to go by.
    """
    times, values = (item[pressure[0] >= -span_s] for item in pressure)
    if len(times) < 3 * FEWEST_BLOCKS or times[-1] - times[0] < 0.9 * span_s - BLOCK_S or noise_pa <= 0.0:
        return None
    per_block = max(round(len(times) / (span_s / BLOCK_S)), 1)
    noise = noise_pa / math.sqrt(per_block)
    moved = _about_line(_means(values, per_block))
    free = len(moved) - 2
    seen = float(np.sqrt(moved @ moved / free)) / noise
    if len(swing[0]) < 2 or swing[0][0] > times[0] + BLOCK_S / 2:
        return Swing(seen, 0.0, 1.0)
    wanted = _about_line(_means(np.interp(times, *swing), per_block))
    power = float(wanted @ wanted)
    if power <= 0.0:
        return Swing(seen, 0.0, 1.0)
    return Swing(seen, float(np.sqrt(power / free)) / noise, float(moved @ wanted) / power)


def reading_noise(values: Floats) -> float:
    """Return the spread of single readings (n,) about what they show, from their changes; 0 with fewer than three."""
    return float(np.std(np.diff(values))) / np.sqrt(2.0) if len(values) > 2 else 0.0


def _means(values: Floats, per_block: int) -> Floats:
    count = len(values) // per_block
    means: Floats = values[len(values) - count * per_block :].reshape(count, per_block).mean(axis=1)
    return means


def _about_line(values: Floats) -> Floats:
    at = np.arange(len(values)) - (len(values) - 1) / 2
    centred = values - values.mean()
    left: Floats = centred - at * (float(at @ centred) / float(at @ at))
    return left
