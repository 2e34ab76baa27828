"""Least squares of ln q on ln dp, each point weighted by how sure its pressure and its flow are.

Weight 1/(u(ln q)**2 + n**2 u(ln dp)**2), iterated on n (Delmotte 2013: pressure and flow uncertainties must both enter,
by iteration). Points that scatter more than their uncertainties explain widen the interval; those that scatter less do
not narrow it.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from analysis.estimators.observations import Observations
from analysis.leastsquares import StraightLine, moments, straight_line
from analysis.records import PowerLaw
from analysis.student import chi_square_limit

ID = "wls"
TITLE = "weighted least squares"
WEIGHTED = True

FIRST_EXPONENT = 0.65
_STEPS = 60


def fit(observations: Observations) -> PowerLaw:
    """Return the line through at least two points of different pressure."""
    noise = observations.known_noise()
    x, y = observations.logarithms()
    ln_pressure_u = [u / p for u, p in zip(noise.pressure_u_pa, observations.pressure_pa, strict=True)]
    n = FIRST_EXPONENT
    for _ in range(_STEPS):
        weights = effective_weights(ln_pressure_u, noise.ln_flow_u, n)
        m = moments(x, y, weights)
        previous, n = n, m.sxy / m.sxx
        if abs(n - previous) <= 1e-14 * abs(n):
            break
    weights = effective_weights(ln_pressure_u, noise.ln_flow_u, n)
    line = straight_line(x, y, weights)
    return weighted_law(line, weights, observations.pressure_pa)


def effective_weights(ln_pressure_u: Sequence[float], ln_flow_u: Sequence[float], n: float) -> list[float]:
    """Return the weight of each point: one over the variance of ln q that both uncertainties make at exponent n."""
    return [1.0 / (uq**2 + (n * up) ** 2) for up, uq in zip(ln_pressure_u, ln_flow_u, strict=True)]


def weighted_law(line: StraightLine, weights: Sequence[float], pressures_pa: Sequence[float]) -> PowerLaw:
    """Return a power law from a line whose weights are one over the variances of the points.

    The variances are those of the weights, widened as `scale_and_dof` says.
    """
    scale, dof = scale_and_dof(line.residual_sum, len(weights))
    return PowerLaw(
        ln_c=line.intercept,
        n=line.slope,
        var_ln_c=scale * line.unit_var_intercept,
        var_n=scale * line.unit_var_slope,
        cov_ln_c_n=scale * line.unit_cov,
        dof=dof,
        r2=line.r2,
        residual_sd=residual_sd(line, weights),
        low_pa=min(pressures_pa),
        high_pa=max(pressures_pa),
    )


def scale_and_dof(residual_sum: float, count: int) -> tuple[float, float]:
    """Return the factor on the variances and the degrees of freedom of the interval.

    While the weighted residual sum passes the chi-square test at 95 % the uncertainties explain the scatter: no factor,
    normal distribution. Beyond, the variances grow with the sum (Birge ratio) and Student's t applies.
    """
    dof = count - 2
    if dof <= 0 or residual_sum <= chi_square_limit(dof):
        return 1.0, math.inf
    return residual_sum / dof, float(dof)


def residual_sd(line: StraightLine, weights: Sequence[float]) -> float:
    """Return the standard deviation of ln q about the line for a point of mean weight; infinite for two points."""
    dof = len(weights) - 2
    if dof <= 0:
        return math.inf
    return math.sqrt(line.residual_sum / dof * len(weights) / math.fsum(weights))
