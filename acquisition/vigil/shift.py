"""Whether pressure and flow moved while the fan was held, and together in which way. Pure.

With the fan's speed held there are four ways: something opened (pressure down, flow up), something closed (up, down),
the fan does less or more (both the same way), or only one of the two moved, which the house cannot do.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

LATE_S = 2.0
GAP_S = 0.6
EARLY_S = 10.0
EARLY_LEAST_S = 2.0
SURE_SIGMAS = 2.0
FLAT_PRESSURE = 0.04
"""A share of the pressure below which it did not move."""
FAN_SLOPE_LEAST = 0.06
"""A fan's flow follows the pressure against it by at least so much (share per share); less is no answer of a fan."""
FAN_SLOPE_MOST = 1.0
"""And by at most so much."""


class Move(StrEnum):
    """What moved."""

    OPENED = "opened"
    CLOSED = "closed"
    FAN_LESS = "fan does less"
    FAN_MORE = "fan does more"
    PRESSURE_ALONE = "pressure alone"
    FLOW_ALONE = "flow alone"


@dataclass(frozen=True, slots=True)
class Shift:
    """Means before and now: induced pressure in the direction of the run (Pa), flow (m3/h)."""

    pressure_before_pa: float
    pressure_pa: float
    flow_before_m3_h: float
    flow_m3_h: float

    @property
    def moved(self) -> Floats:
        """The difference (2,): Pa, and ln of the flow."""
        ratio = max(self.flow_m3_h, 1e-3) / max(self.flow_before_m3_h, 1e-3)
        return np.array([self.pressure_pa - self.pressure_before_pa, np.log(ratio)])

    @property
    def pressure_share(self) -> float:
        """By which share of itself the pressure changed."""
        return self.pressure_pa / max(self.pressure_before_pa, 1.0) - 1.0

    @property
    def flow_share(self) -> float:
        """By which share of itself the flow changed; a flow element too weakly blown at gives none at all."""
        return self.flow_m3_h / max(self.flow_before_m3_h, 1.0) - 1.0


def shift_of(
    pressure_s: Floats, pressure_pa: Floats, flow_s: Floats, flow_m3_h: Floats, reach_s: float
) -> Shift | None:
    """Compare the last seconds with those before; times (n,) are seconds before now, 0 the newest, and negative.

    `reach_s` is how long the fan has been held; None when that is too short, or readings are missing.
    """
    start_s = -min(reach_s, EARLY_S + GAP_S + LATE_S)
    if start_s > -(LATE_S + GAP_S + EARLY_LEAST_S):
        return None
    early = (start_s, -(LATE_S + GAP_S))
    values = [
        values[(times >= low) & (times <= high)]
        for times, values in ((pressure_s, pressure_pa), (flow_s, flow_m3_h))
        for low, high in (early, (-LATE_S, 0.0))
    ]
    if any(len(item) < 4 for item in values):
        return None
    means = [float(item.mean()) for item in values]
    return Shift(*means)


def move_of(shift: Shift, sigmas: Floats) -> Move:
    """Say in which of the ways a shift went; `sigmas` (2,) is what both move by themselves."""
    pascal, flow = (float(item) for item in shift.moved)
    pressure_moved = abs(shift.pressure_share) > FLAT_PRESSURE and abs(pascal) > SURE_SIGMAS * sigmas[0]
    answer = max(FAN_SLOPE_LEAST * abs(shift.pressure_share), SURE_SIGMAS * float(sigmas[1]))
    if abs(flow) < answer:
        return Move.PRESSURE_ALONE
    if not pressure_moved:
        return Move.FLOW_ALONE
    if pascal * flow < 0.0 and abs(flow) > FAN_SLOPE_MOST * abs(shift.pressure_share):
        # No fan gives so much more for so little less to work against.
        return Move.FLOW_ALONE
    if pascal < 0.0:
        return Move.OPENED if flow > 0.0 else Move.FAN_LESS
    return Move.CLOSED if flow < 0.0 else Move.FAN_MORE


def mean_between(times: Floats, values: Floats, start_s: float, end_s: float) -> float:
    """Return the mean of what was read from `start_s` to `end_s` before now (negative), not a number without any."""
    chosen = values[(times >= start_s) & (times <= end_s)] if len(values) == len(times) else values[:0]
    return float(chosen.mean()) if len(chosen) else math.nan
