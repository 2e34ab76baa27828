"""Ordinary least squares of ln q on ln dp: the official fit of most methods.

ISO 9972 Annex C and ASTM E779 Annex A1 agree on it (from memory). Its interval holds the scatter about the line and
nothing else: not the error that all points share, and not wind.
"""

from __future__ import annotations

import math

from analysis.estimators.observations import Observations
from analysis.leastsquares import straight_line
from analysis.records import PowerLaw

ID = "ols"
TITLE = "ordinary least squares"
WEIGHTED = False


def fit(observations: Observations) -> PowerLaw:
    """Return the line through at least two points of different pressure; with two it has no degree of freedom."""
    line = straight_line(*observations.logarithms())
    dof = len(observations.pressure_pa) - 2
    variance = line.residual_sum / dof if dof > 0 else math.inf
    return PowerLaw(
        ln_c=line.intercept,
        n=line.slope,
        var_ln_c=variance * line.unit_var_intercept,
        var_n=variance * line.unit_var_slope,
        cov_ln_c_n=variance * line.unit_cov if dof > 0 else 0.0,
        dof=float(dof),
        r2=line.r2,
        residual_sd=math.sqrt(variance),
        low_pa=min(observations.pressure_pa),
        high_pa=max(observations.pressure_pa),
    )
