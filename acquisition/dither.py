"""A small swing of a held fan, by which a hose that hides the pressure is told within seconds. Pure.

While a point is averaged the fan stands, and in calm air nothing tells a pinched or frozen hose from a still house. So
the speed goes up and down a little about what is held, and where the pressure stands suspiciously still it does so once
more strongly. The pattern is up, down for twice as long, up: it moves neither the mean of a window nor its slope, and
so neither a point nor the flow that the air of the building stores. How far the pressure should have swung is followed
by the model of fan and building.
"""

from __future__ import annotations

from collections import deque

import numpy as np
from numpy.typing import NDArray

from acquisition.lags import StepModel

SWING_PA, NUDGE_PA = 0.4, 1.6
NUDGE_WINDS = 2.0
"""A nudge is so many spreads of the zero-flow pressure at least."""
WINDY_PA = 1.0
"""From this spread on the wind shows by itself what the hose does, and only nudges are left."""
HALF_S = 2.5
SLOW_S, MOST = 3.0, 3.0
"""A slow building swings less: the speed by so much more, up to so many times."""
KEPT_TICKS = 80
SAME_S = 1e-6


class Dither:
    """The swing about one held speed."""

    def __init__(
        self, speed: float, speed_per_pa: float, fan_lag_s: float, building_lag_s: float, wind_pa: float, least: float
    ) -> None:
        """Begin at a held speed.

        `speed_per_pa` is the slope of the speed curve there, `wind_pa` the spread of the zero-flow pressure, `least`
        the smallest step of the drive.
        """
        more = min(1.0 + building_lag_s / SLOW_S, MOST)
        self.speed = speed
        """The speed about which it swings."""
        self._per_pa = speed_per_pa
        self._small = max(SWING_PA * more * speed_per_pa, least) if wind_pa < WINDY_PA else 0.0
        self._large = max(NUDGE_PA, NUDGE_WINDS * wind_pa) * more * speed_per_pa
        self._model = StepModel(0.0, fan_lag_s)
        self._building_lag_s = building_lag_s
        self._time_s = self._begun_s = 0.0
        self.nudging = False
        """Whether it swings strongly at present."""
        self._swing_pa: deque[float] = deque(maxlen=KEPT_TICKS)

    def nudge(self) -> None:
        """Swing once strongly; while that is done already, go on with it."""
        if not self.nudging:
            self.nudging, self._begun_s = True, self._time_s

    def wanted(self) -> float:
        """Return the speed of this moment, not quantised."""
        since_s = self._time_s - self._begun_s
        if self.nudging and since_s > 2 * HALF_S - SAME_S:
            self.nudging, self._begun_s, since_s = False, self._time_s, 0.0
        upper = int((since_s + HALF_S / 2) / HALF_S) % 2 == 0
        share = self._large if self.nudging else self._small
        return self.speed + (share if upper else -share)

    def took(self, command: float, dt_s: float) -> None:
        """Take in what the fan was really told for a tick."""
        self._model.step(command - self.speed, dt_s, self._building_lag_s)
        self._time_s += dt_s
        self._swing_pa.append(self._model.value / self._per_pa)

    @property
    def swing_pa(self) -> NDArray[np.float64]:
        """What the pressure should have done about its mean at the last ticks (n,), the newest last, in Pa."""
        return np.array(self._swing_pa)
