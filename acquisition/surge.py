"""A pressure that runs away upwards: a door or a large hole was shut while the fan ran for it. Pure.

The controller answers to a step within seconds, as suits gusts; a house that suddenly is much tighter is above the
limit of the watchdog by then. So such a rise is told from a gust, the fan is let coast, and where the pressure turns
the fan's speed and the house belong together again.
"""

from __future__ import annotations

import math
from collections import deque

LEAST_PA, SHARE = 6.0, 0.12
GUSTS = 5.0
"""So far above the target, and in wind so many spreads of its 3 s means farther, no gust brings it (our choice)."""
HEADING_PA = 72.0
RISE_PA = 1.5
LOOK_TICKS = 5
"""Over so many ticks the rise is looked at, and so many ahead: a steep one is caught sooner."""
STOOD_PA, STOOD_SHARE = 1.5, 0.04
"""So near the target, and as still, the pressure has stood before: on its way there no rise is a surge."""
STOOD_TICKS = 8
"""For so many ticks on end: where a way down turns, the pressure is near and still for a moment too."""
LATE_S = 0.75
"""So much later than the fan the smoothed pressure shows what it did: latency, gauge and smoothing."""
COAST_S = 1.6
"""A slow fan coasts down so; a quicker one is thought to turn faster than it does, and the target is met from below."""


class Surge:
    """Looks at one held target, tick by tick."""

    def __init__(self) -> None:
        """Have seen nothing."""
        self.braking = False
        """Whether the fan is to coast."""
        self._stood = False
        self._near_ticks = 0
        self._recent_pa: deque[float] = deque(maxlen=LOOK_TICKS + 1)
        self._speed = self._coasted_s = 0.0

    def look(
        self,
        pressure_pa: float,
        target_pa: float,
        wind_spread_pa: float,
        speed: float,
        dt_s: float,
        *,
        averaging: bool = False,
    ) -> float | None:
        """Take a tick: the pressure, its target, how far gusts move it, the speed that the fan should have.

        While a point is averaged only a pressure on its way to the limit of the watchdog is braked: what happened can
        be told better with the fan as it is.
        Returns the speed that belongs to the present pressure when the rise is over, None at all other times.
        """
        self._recent_pa.append(pressure_pa)
        if len(self._recent_pa) <= LOOK_TICKS:
            return None
        rise_pa = pressure_pa - self._recent_pa[0]
        if not self.braking:
            near_pa = max(STOOD_PA, STOOD_SHARE * target_pa) + wind_spread_pa
            near = max(abs(pressure_pa - target_pa), abs(rise_pa)) < near_pa
            self._near_ticks = self._near_ticks + 1 if near else 0
            self._stood = self._stood or self._near_ticks >= STOOD_TICKS
            above_pa = max(LEAST_PA, SHARE * target_pa) + GUSTS * wind_spread_pa
            above_pa = max(above_pa, HEADING_PA - target_pa) if averaging else above_pa
            self.braking = self._stood and rise_pa > RISE_PA and pressure_pa + rise_pa - target_pa > above_pa
            self._speed, self._coasted_s = speed, 0.0
            return None
        self._coasted_s += dt_s
        if rise_pa > 0.0:
            return None
        self.braking = False
        self._recent_pa.clear()
        return self._speed * math.exp(-max(self._coasted_s - LATE_S, 0.0) / COAST_S)
