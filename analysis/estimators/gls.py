"""Generalized least squares: weighted points that share one error, that of the zero-flow pressure.

Covariance of ln q between points i and j: delta_ij (u(ln q)**2 + (n u(dp)/dp_i)**2) + (n u(zero))**2/(dp_i dp_j),
iterated on n (derived from the propagation of uncertainty, JCGM 100). An error of the zero-flow pressure tilts the
whole line; a fit that takes points as independent does not see it, and its interval at low pressure is far too narrow.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from analysis.estimators.observations import Observations, PointNoise
from analysis.estimators.wls import FIRST_EXPONENT, effective_weights, residual_sd, scale_and_dof
from analysis.leastsquares import Moments, StraightLine, line_through, moments
from analysis.records import PowerLaw

ID = "gls"
TITLE = "generalized least squares with a common zero-flow error"
WEIGHTED = True

_STEPS = 60


@dataclass(frozen=True, slots=True)
class _Solution:
    """Level at the weighted mean of x and slope, with their covariance, and the squared distance of the points."""

    m: Moments
    weights: list[float]
    level: float
    slope: float
    var_level: float
    var_slope: float
    cov: float
    distance: float


def fit(observations: Observations) -> PowerLaw:
    """Return the line through at least two points of different pressure."""
    noise = observations.known_noise()
    x, y = observations.logarithms()
    n = FIRST_EXPONENT
    for _ in range(_STEPS):
        found = _solve(x, y, observations.pressure_pa, noise, n)
        previous, n = n, found.slope
        if abs(n - previous) <= 1e-12 * abs(n):
            break
    found = _solve(x, y, observations.pressure_pa, noise, n)
    scale, dof = scale_and_dof(found.distance, len(x))
    mean_x = found.m.mean_x
    about = _line(found, x, y)
    return PowerLaw(
        ln_c=found.level - found.slope * mean_x,
        n=found.slope,
        var_ln_c=scale * (found.var_level - 2.0 * mean_x * found.cov + mean_x**2 * found.var_slope),
        var_n=scale * found.var_slope,
        cov_ln_c_n=scale * (found.cov - mean_x * found.var_slope),
        dof=dof,
        r2=about.r2,
        residual_sd=residual_sd(about, found.weights),
        low_pa=min(observations.pressure_pa),
        high_pa=max(observations.pressure_pa),
    )


def response(observations: Observations, line: PowerLaw) -> tuple[float, float]:
    """Return (a, b): ln q of a fitted line moves by a + b ln dp with the zero-flow pressure (1/Pa).

    Raising the magnitudes of all pressures by a little is lowering ln q of each point by n/dp of it, at the weights of
    the fit.
    """
    x, _ = observations.logarithms()
    moved = [-line.n / pressure for pressure in observations.pressure_pa]
    found = _solve(x, moved, observations.pressure_pa, observations.known_noise(), line.n)
    return found.level - found.slope * found.m.mean_x, found.slope


def _solve(x: list[float], y: list[float], pressures_pa: Sequence[float], noise: PointNoise, n: float) -> _Solution:
    """Return the solution for covariances at exponent n.

    V = D + b b^T with D diagonal, so V^-1 = D^-1 - (D^-1 b)(D^-1 b)^T/(1 + b^T D^-1 b) (Sherman and Morrison).
    About the weighted mean of x the sums of D^-1 alone are diagonal.
    """
    ln_pressure_u = [u / pressure for u, pressure in zip(noise.pressure_u_pa, pressures_pa, strict=True)]
    weights = effective_weights(ln_pressure_u, noise.ln_flow_u, n)
    common = [n * noise.zero_u_pa / pressure for pressure in pressures_pa]
    m = moments(x, y, weights)
    wb = [w * b for w, b in zip(weights, common, strict=True)]
    b_1 = math.fsum(wb)
    b_x = math.fsum(w * (value - m.mean_x) for w, value in zip(wb, x, strict=True))
    b_y = math.fsum(w * (value - m.mean_y) for w, value in zip(wb, y, strict=True))
    shared = 1.0 + math.fsum(w * b for w, b in zip(wb, common, strict=True))
    a11, a12, a22 = m.weight - b_1 * b_1 / shared, -b_1 * b_x / shared, m.sxx - b_x * b_x / shared
    r1, r2 = -b_1 * b_y / shared, m.sxy - b_x * b_y / shared
    determinant = a11 * a22 - a12 * a12
    level, slope = (a22 * r1 - a12 * r2) / determinant, (a11 * r2 - a12 * r1) / determinant
    residuals = [(b - m.mean_y) - level - slope * (a - m.mean_x) for a, b in zip(x, y, strict=True)]
    distance = math.fsum(w * r * r for w, r in zip(weights, residuals, strict=True))
    distance -= math.fsum(w * r for w, r in zip(wb, residuals, strict=True)) ** 2 / shared
    return _Solution(
        m,
        weights,
        m.mean_y + level,
        slope,
        a22 / determinant,
        a11 / determinant,
        -a12 / determinant,
        max(distance, 0.0),
    )


def _line(found: _Solution, x: list[float], y: list[float]) -> StraightLine:
    """Return the scatter about the line by the weights of the points alone."""
    return line_through(found.m, found.slope, x, y, found.weights)
