"""Gust weights: which mean of several outdoor taps stands most still while the fan does.

While a fan turns evenly, the pressure that the leaks feel changes little; what a gauge shows changes with the gusts at
its taps. Inside such windows the fast changes that the flow does not explain are regressed on the differences between
the taps, which do not hold the pressure of the house. The weights that follow serve points and zero-flow records alike.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

FEWEST_TAPS = 3
RIDGE = 0.25
"""Share of the mean variance of the differences that is added to each: keeps the weights near the plain mean."""

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class SteadyWindow:
    """Fast readings of a window with the fan at one speed: at each tap (count, taps) in Pa, and the flow (count,)."""

    taps_pa: Floats
    flow_m3_h: Floats


def gust_weights(windows: Sequence[SteadyWindow]) -> tuple[float, ...]:
    """Return a weight for each tap, together 1; equal ones where nothing can be told, none with fewer than three taps.

    Every window is looked at about its own means.
    """
    taps = windows[0].taps_pa.shape[1] if windows else 0
    if taps < FEWEST_TAPS:
        return ()
    moving = [(_about_mean(item.taps_pa), _about_mean(item.flow_m3_h)) for item in windows if len(item.flow_m3_h) > 2]
    if not moving:
        return (1.0 / taps,) * taps
    readings = np.concatenate([taps_pa for taps_pa, _ in moving])
    plain = readings.mean(axis=1)
    apart = readings - plain[:, None]
    unexplained = np.concatenate([_unexplained(taps_pa.mean(axis=1), flow) for taps_pa, flow in moving])
    square = apart.T @ apart
    scale = float(np.trace(square)) / taps
    if scale <= 0.0:
        return (1.0 / taps,) * taps
    share = np.linalg.solve(square + RIDGE * scale * np.eye(taps), apart.T @ unexplained)
    weights = (1.0 + share.sum()) / taps - share
    return tuple(float(weight) for weight in weights)


def weighted(taps_pa: Floats, weights: Sequence[float]) -> Floats:
    """Return the envelope pressure (count,) of readings at each tap (count, taps)."""
    mean: Floats = taps_pa @ np.asarray(weights, np.float64)
    return mean


def _about_mean(values: Floats) -> Floats:
    centred: Floats = values - values.mean(axis=0)
    return centred


def _unexplained(pressure_pa: Floats, flow: Floats) -> Floats:
    """Return what is left of a pressure when the flow has explained what it can."""
    spread = float(flow @ flow)
    if spread <= 0.0:
        return pressure_pa
    left: Floats = pressure_pa - flow * (float(flow @ pressure_pa) / spread)
    return left
