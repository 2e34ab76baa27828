"""Whether the envelope pressure answers a step of the fan as far as the flow says it must. Pure.

When the target changes, the flow through the fan changes within seconds, and the leakage line says what that does to
the pressure. A hose that is pinched, frozen or blocked hides it: the pressure stands where it stood.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from acquisition.vigil.shift import mean_between

Floats = NDArray[np.float64]

BEFORE_S, NOW_S = 2.5, 1.0
EARLIEST_S, LATEST_S = 2.5, 9.0
"""Before that the air of a tight house still takes most of the change; after it the step is too long ago."""
LEAST_EXPECTED_PA = 3.0
LEAST_PRESSURE_PA = 5.0
UNANSWERED_SHARE = 0.3
STEADY_SHARE = 0.04


def unanswered(
    since_s: float, pressure: tuple[Floats, Floats], flow: tuple[Floats, Floats], stored_m3_h: float, exponent: float
) -> bool:
    """Tell whether a step begun `since_s` ago should have moved the pressure and did not.

    `pressure` (s, Pa) and `flow` (s, m3/h): times before now and values, (n,) each; `exponent` of the leakage line.
    """
    if not EARLIEST_S <= since_s <= LATEST_S:
        return False
    halves = [(-since_s - BEFORE_S, -since_s - BEFORE_S / 2), (-since_s - BEFORE_S / 2, -since_s)]
    pressures, flows = ([mean_between(*item, *half) for half in halves] for item in (pressure, flow))
    if not all(earlier > 0.0 and abs(later / earlier - 1.0) < STEADY_SHARE for earlier, later in (pressures, flows)):
        # What moved before the step is another matter.
        return False
    pressure_before, flow_before = sum(pressures) / 2, sum(flows) / 2
    pressure_now, flow_now = mean_between(*pressure, -NOW_S, 0.0), mean_between(*flow, -NOW_S, 0.0) - stored_m3_h
    if pressure_before < LEAST_PRESSURE_PA or not flow_now > 0.05 * flow_before:
        return False
    expected = pressure_before * (math.pow(flow_now / flow_before, 1.0 / exponent) - 1.0)
    moved = pressure_now - pressure_before
    return abs(expected) > LEAST_EXPECTED_PA and abs(moved) < UNANSWERED_SHARE * abs(expected)
