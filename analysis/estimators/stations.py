"""A line through two stations, each measured several times: the fit of the two-point method of ASTM E1827.

n = ln(Q1/Q2)/ln(P1/P2) and C = Q1/P1**n with the means of the repeated readings (from memory). The uncertainty is that
of the means, carried to n and C (JCGM 100).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from analysis.errors import InvalidInput
from analysis.estimators.observations import Observations
from analysis.records import PowerLaw
from analysis.student import pooled_dof

ID = "two-stations"
TITLE = "line through two stations"
WEIGHTED = False
LEAST_RATIO = 1.3
"""The pressures of both stations differ by at least this factor (our choice)."""


@dataclass(frozen=True, slots=True)
class _Station:
    """Means of the readings at one station, and the variances of the logarithm of the means."""

    pressure_pa: float
    flow_m3_h: float
    ln_pressure_var: float
    ln_flow_var: float
    count: int


def fit(observations: Observations) -> PowerLaw:
    """Return the line; raises `InvalidInput` where the pressures do not make two stations.

    The stations are told apart by the widest step between neighbouring pressures. With one reading each there is no
    scatter, and no degree of freedom.
    """
    readings = sorted(zip(observations.pressure_pa, observations.flow_m3_h, strict=True))
    steps = [high / low for (low, _), (high, _) in pairwise(readings)]
    if not steps or max(steps) < LEAST_RATIO:
        pressures = ", ".join(f"{pressure:.3g}" for pressure, _ in readings)
        allowed = f"two stations are needed, at pressures that differ by a factor of {LEAST_RATIO:g} at least"
        raise InvalidInput("points", pressures, allowed, shown=f"at {pressures} Pa")
    cut = steps.index(max(steps)) + 1
    low, high = _station(readings[:cut]), _station(readings[cut:])
    span = math.log(high.pressure_pa / low.pressure_pa)
    n = math.log(high.flow_m3_h / low.flow_m3_h) / span
    # Error of the logarithm of the flow at each station as seen along the line.
    errors = [item.ln_flow_var + n * n * item.ln_pressure_var for item in (high, low)]
    dofs = [float(item.count - 1) for item in (high, low)]
    x_high, x_low = math.log(high.pressure_pa), math.log(low.pressure_pa)
    known = all(dofs)
    return PowerLaw(
        ln_c=math.log(high.flow_m3_h) - n * x_high,
        n=n,
        var_ln_c=(x_low**2 * errors[0] + x_high**2 * errors[1]) / span**2,
        var_n=math.fsum(errors) / span**2,
        cov_ln_c_n=-(x_low * errors[0] + x_high * errors[1]) / span**2,
        dof=max(pooled_dof((errors[0], errors[1]), (dofs[0], dofs[1])), 1.0) if known else 0.0,
        r2=1.0,
        residual_sd=math.sqrt(
            math.fsum(error * item.count for error, item in zip(errors, (high, low), strict=True)) / 2
        ),
        low_pa=min(observations.pressure_pa),
        high_pa=max(observations.pressure_pa),
    )


def _station(readings: Sequence[tuple[float, float]]) -> _Station:
    pressures = [pressure for pressure, _ in readings]
    flows = [flow for _, flow in readings]
    pressure, flow = _mean(pressures), _mean(flows)
    return _Station(pressure, flow, _mean_var(pressures) / pressure**2, _mean_var(flows) / flow**2, len(readings))


def _mean(values: Sequence[float]) -> float:
    return math.fsum(values) / len(values)


def _mean_var(values: Sequence[float]) -> float:
    """Return the variance of the mean, 0 for a single value."""
    if len(values) < 2:
        return 0.0
    mean = _mean(values)
    return math.fsum((value - mean) ** 2 for value in values) / (len(values) - 1) / len(values)
