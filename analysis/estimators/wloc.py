"""Weighted line of organic correlation: neither pressure nor flow is taken as exact.

Weight 1/(u(ln dp) u(ln q)); n is the square root of the ratio of the weighted sums of squares, and the line goes
through the weighted means (method named by Delmotte 2013 and by Koelsch and Walker 2020; formula derived). The interval
is that of least squares with the scatter about this line.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from analysis.estimators.observations import Observations
from analysis.estimators.wls import residual_sd
from analysis.leastsquares import StraightLine, line_through, moments
from analysis.records import PowerLaw

ID = "wloc"
TITLE = "weighted line of organic correlation"
WEIGHTED = True


def fit(observations: Observations) -> PowerLaw:
    """Return the line through at least two points of different pressure; with two it has no degree of freedom."""
    noise = observations.known_noise()
    x, y = observations.logarithms()
    weights = [
        pressure / (u * ln_flow_u)
        for pressure, u, ln_flow_u in zip(observations.pressure_pa, noise.pressure_u_pa, noise.ln_flow_u, strict=True)
    ]
    line = organic_line(x, y, weights)
    dof = len(x) - 2
    variance = line.residual_sum / dof if dof > 0 else math.inf
    return PowerLaw(
        ln_c=line.intercept,
        n=line.slope,
        var_ln_c=variance * line.unit_var_intercept,
        var_n=variance * line.unit_var_slope,
        cov_ln_c_n=variance * line.unit_cov if dof > 0 else 0.0,
        dof=float(dof),
        r2=line.r2,
        residual_sd=residual_sd(line, weights),
        low_pa=min(observations.pressure_pa),
        high_pa=max(observations.pressure_pa),
    )


def organic_line(x: Sequence[float], y: Sequence[float], weights: Sequence[float] | None = None) -> StraightLine:
    """Return the line of organic correlation: slope sqrt(Syy/Sxx) with the sign of Sxy, through the means."""
    m = moments(x, y, weights)
    return line_through(m, math.copysign(math.sqrt(m.syy / m.sxx), m.sxy), x, y, weights)
