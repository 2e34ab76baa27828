"""What the vigil and its parts are shown."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from acquisition.snapshot import Activity

Floats = NDArray[np.float64]

REACH_S = 14.0
"""So far back everything is shown."""


@dataclass(frozen=True, slots=True)
class Sight:
    """What the vigil is shown: times (n,) in seconds before now, newest 0, and values of the last seconds.

    `pressure_pa` is induced, in the direction of the run; `raw_pa` as read. `element_pa` is empty for a gauge that
    gives flow itself. `speed` is commanded, `motor` what the fan should have come to by now. `held_s` is for how long
    the fan has been frozen, `activity_s` since when the step runs. `swing_pa` at `swing_s` (m,) is what a small swing
    of the held fan should have done to the pressure, empty while there is none.
    """

    now_ns: int
    activity: Activity
    activity_s: float
    held_s: float
    speed: float
    motor: float
    target_pa: float
    pressure_s: Floats
    raw_pa: Floats
    pressure_pa: Floats
    flow_s: Floats
    flow_m3_h: Floats
    element_pa: Floats
    swing_s: Floats
    swing_pa: Floats
    stored_m3_h: float
    bad_frames: int

    def without_swing(self, exponent: float) -> tuple[Floats, Floats]:
        """Return induced pressure and flow, (n,) each, less what the small swing of the held fan does to them."""
        if not len(self.swing_pa) or not len(self.pressure_pa) or not len(self.flow_m3_h):
            return self.pressure_pa, self.flow_m3_h
        swing_pa, of_flow_pa = (
            np.interp(times, self.swing_s, self.swing_pa, left=0.0) for times in (self.pressure_s, self.flow_s)
        )
        at_pa = max(float(self.pressure_pa.mean()), 1.0)
        return self.pressure_pa - swing_pa, self.flow_m3_h * (1.0 - exponent * of_flow_pa / at_pa)
