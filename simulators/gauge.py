"""The gauge: what becomes of a pressure on its way through hose, sensor and rounding. Figures are our own invention.

Arrays have the houses in the leading axis B and the channels (order of `CHANNELS`) in the last axis.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from simulators.air import FloatArray


@dataclass(frozen=True, slots=True)
class ChannelModel:
    """One channel: lag of its hose or sensor, noise of one reading, resolution, range, and its zero.

    The zero starts with the standard deviation `zero_sd` and walks by `zero_walk` in one second.
    """

    name: str
    lag_s: float
    noise_sd: float
    resolution: float
    low: float
    high: float
    zero_sd: float = 0.0
    zero_walk: float = 0.0


PRESSURE_END_PA = 500.0
CHANNELS = (
    ChannelModel("p1", 0.25, 0.08, 0.01, -PRESSURE_END_PA, PRESSURE_END_PA, 0.03, 0.004),
    ChannelModel("p2", 0.25, 0.08, 0.01, -PRESSURE_END_PA, PRESSURE_END_PA, 0.03, 0.004),
    ChannelModel("t1", 5.0, 0.02, 0.01, -50.0, 80.0),
    ChannelModel("t2", 5.0, 0.02, 0.01, -50.0, 80.0),
    ChannelModel("b1", 1.0, 3.0, 1.0, 60_000.0, 110_000.0),
    ChannelModel("h1", 10.0, 0.2, 0.1, 0.0, 100.0),
)
CHANNEL_NAMES = tuple(channel.name for channel in CHANNELS)
PRESSURE_CHANNELS = 2
ZEROED_SD_PA = 0.01
ZEROING_S = 1.5


class Gauge:
    """Turns true values into readings."""

    def __init__(self, start: FloatArray, rng: np.random.Generator, gain: Sequence[float] | float = 0.0) -> None:
        """Have stood at `start` (B, channels) for a while; `gain` is the relative error of each channel."""
        self._rng = rng
        self._gain = np.asarray(gain, dtype=float)
        self._lag_s = np.array([channel.lag_s for channel in CHANNELS])
        self._noise_sd = np.array([channel.noise_sd for channel in CHANNELS])
        self._resolution = np.array([channel.resolution for channel in CHANNELS])
        self._low = np.array([channel.low for channel in CHANNELS])
        self._high = np.array([channel.high for channel in CHANNELS])
        self._walk = np.array([channel.zero_walk for channel in CHANNELS[:PRESSURE_CHANNELS]])
        self._felt = start.copy()
        self._zero: FloatArray = rng.standard_normal(start.shape) * np.array([item.zero_sd for item in CHANNELS])
        self._zeroing_s = 0.0
        self.shown: FloatArray = start.copy()
        """The readings; not a number while the gauge zeroes itself."""

    def step(self, dt_s: float, true: FloatArray) -> None:
        """Feel the true values (B, channels) for a while and show new readings."""
        noise = self._rng.standard_normal((true.shape[0], len(CHANNELS) + PRESSURE_CHANNELS))
        self._felt = self._felt + (true - self._felt) * -np.expm1(-dt_s / self._lag_s)
        walked = self._walk * math.sqrt(dt_s) * noise[:, len(CHANNELS) :]
        self._zero[:, :PRESSURE_CHANNELS] += walked
        raw = self._felt * (1.0 + self._gain) + self._zero + self._noise_sd * noise[:, : len(CHANNELS)]
        rounded = np.rint(raw / self._resolution) * self._resolution
        self.shown = np.minimum(np.maximum(rounded, self._low), self._high)
        if self._zeroing_s > 0.0:
            self._zeroing_s -= dt_s
            self.shown[:, :PRESSURE_CHANNELS] = np.nan

    def zero(self) -> None:
        """Close the hoses for a moment and take what is read then off; no pressure is shown meanwhile."""
        size = (self._zero.shape[0], PRESSURE_CHANNELS)
        self._zero[:, :PRESSURE_CHANNELS] = ZEROED_SD_PA * self._rng.standard_normal(size)
        self._zeroing_s = ZEROING_S
        self.shown[:, :PRESSURE_CHANNELS] = np.nan
