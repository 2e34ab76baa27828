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
MOST_TAPS, MOST_ZONES, MOST_FANS = 4, 3, 4
FURTHER_ELEMENTS = ("p9", "p10", "p11")


@dataclass(frozen=True, slots=True)
class GaugeModel:
    """How good a gauge is: what its pressure channels have in common. Pa and seconds.

    `gain_sd` is the standard deviation of the calibration of each pressure channel, 0.01: one per cent; `output_s` the
    time between two new readings, 0.1 to 1 s; `lost_share` how many readings do not come.
    """

    gain_sd: float = 0.0
    noise_pa: float = 0.08
    resolution_pa: float = 0.01
    zero_sd_pa: float = 0.03
    zero_walk_pa: float = 0.004
    hose_lag_s: float = 0.25
    output_s: float = 0.1
    lost_share: float = 0.0

    def channels(self, taps: int = 1, zones: int = 0, fans: int = 1) -> tuple[ChannelModel, ...]:
        """Return the channels: p1 envelope, p2 flow element, p3 to p5 further taps, p6 to p8 zones, then the air.

        The flow elements of further fans stand before the air, from p9 on; a gauge of its own shows them.
        """
        names = ["p1", "p2"]
        names += [f"p{number}" for number in range(3, 2 + taps)]
        names += [f"p{number}" for number in range(6, 6 + zones)]
        names += FURTHER_ELEMENTS[: fans - 1]
        return tuple(self._pressure(name) for name in names) + AIR_CHANNELS

    def _pressure(self, name: str) -> ChannelModel:
        low, high = -PRESSURE_END_PA, PRESSURE_END_PA
        lag_s, noise_pa, resolution_pa = self.hose_lag_s, self.noise_pa, self.resolution_pa
        return ChannelModel(name, lag_s, noise_pa, resolution_pa, low, high, self.zero_sd_pa, self.zero_walk_pa)


AIR_CHANNELS = (
    ChannelModel("t1", 5.0, 0.02, 0.01, -50.0, 80.0),
    ChannelModel("t2", 5.0, 0.02, 0.01, -50.0, 80.0),
    ChannelModel("b1", 1.0, 3.0, 1.0, 60_000.0, 110_000.0),
    ChannelModel("h1", 10.0, 0.2, 0.1, 0.0, 100.0),
)
CHANNELS = GaugeModel().channels()
"""The channels of a gauge with one outdoor tap."""
ZEROED_SD_PA = 0.01
ZEROING_S = 1.5


class Gauge:
    """Turns true values into readings."""

    def __init__(
        self,
        start: FloatArray,
        rng: np.random.Generator,
        gain: FloatArray | Sequence[float] | float = 0.0,
        channels: Sequence[ChannelModel] = CHANNELS,
        output_s: float = 0.0,
        lost_share: float = 0.0,
    ) -> None:
        """Have stood at `start` (B, channels) for a while; `gain` is the relative error of each channel."""
        self._rng = rng
        self._scale = 1.0 + np.asarray(gain, dtype=float)
        self.columns = {channel.name: column for column, channel in enumerate(channels)}
        """Where each channel is found in `shown`."""
        self.pressures = sum(channel.name.startswith("p") for channel in channels)
        """So many channels, the first ones, are pressures."""
        self._lag_s = np.array([channel.lag_s for channel in channels])
        self._noise_sd = np.array([channel.noise_sd for channel in channels])
        self._resolution = np.array([channel.resolution for channel in channels])
        self._low = np.array([channel.low for channel in channels])
        self._high = np.array([channel.high for channel in channels])
        self._walk = np.array([channel.zero_walk for channel in channels[: self.pressures]])
        self._output_s = output_s
        self.lost_share = lost_share
        """How many readings do not come: the one before is shown again."""
        self._since_s = 0.0
        self._felt = start.copy()
        self._zero: FloatArray = rng.standard_normal(start.shape) * np.array([item.zero_sd for item in channels])
        self._zeroing_s = 0.0
        self._dt_s = 0.0
        self._share = self._walked = np.empty(0)
        self.frozen = False
        """Whether it repeats its last readings for ever."""
        self.shown: FloatArray = start.copy()
        """The readings; not a number while the gauge zeroes itself."""

    def step(self, dt_s: float, true: FloatArray) -> None:
        """Feel the true values (B, channels) for a while and show new readings."""
        if dt_s != self._dt_s:
            self._dt_s = dt_s
            self._share = -np.expm1(-dt_s / self._lag_s)
            self._walked = self._walk * math.sqrt(dt_s)
        size = len(self._lag_s)
        noise = self._rng.standard_normal((true.shape[0], size + self.pressures))
        self._felt = self._felt + (true - self._felt) * self._share
        self._zero[:, : self.pressures] += self._walked * noise[:, size:]
        self._since_s += dt_s
        if self.frozen or self._since_s < self._output_s - 1e-6:
            return
        self._since_s = 0.0
        raw = self._felt * self._scale + self._zero + self._noise_sd * noise[:, :size]
        rounded = np.rint(raw / self._resolution) * self._resolution
        before, self.shown = self.shown, np.minimum(np.maximum(rounded, self._low), self._high)
        if self.lost_share:
            lost = self._rng.random(true.shape[0]) < self.lost_share
            self.shown[lost] = before[lost]
        if self._zeroing_s > 0.0:
            self._zeroing_s -= dt_s
            self.shown[:, : self.pressures] = np.nan

    def zero(self) -> None:
        """Close the hoses for a moment and take what is read then off; no pressure is shown meanwhile."""
        size = (self._zero.shape[0], self.pressures)
        self._zero[:, : self.pressures] = ZEROED_SD_PA * self._rng.standard_normal(size)
        self._zeroing_s = ZEROING_S
        self.shown[:, : self.pressures] = np.nan

    def drift(self, channel: int, pascal: float) -> None:
        """Move the zero of a pressure channel."""
        self._zero[:, channel] += pascal
