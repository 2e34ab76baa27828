"""A line of assumed exponent: the fit of single-point methods.

C follows from the mean of ln q at the mean of ln dp; the exponent is that of many houses and not of this one. What is
read off the line near the measured pressure hardly depends on it, what is carried to 4 Pa does.
"""

from __future__ import annotations

import math

from analysis.estimators.observations import Observations
from analysis.records import PowerLaw

ID = "assumed-exponent"
TITLE = "assumed flow exponent of 0.65"
WEIGHTED = False
EXPONENT = 0.65
"""Assumed by ASTM E1827 and ANSI/RESNET/ICC 380 for a single point (from memory; read in NREL OpenStudio-HPXML)."""
EXPONENT_U = 0.05
"""Standard uncertainty of the assumption: about the spread of exponents among houses (from memory)."""


def fit(observations: Observations) -> PowerLaw:
    """Return the line through at least one point; a single point has no scatter and leaves no degree of freedom.

    No slope is fitted, so that r2 says nothing: it is 1.
    """
    x, y = observations.logarithms()
    count = len(x)
    mean_x = math.fsum(x) / count
    offsets = [b - EXPONENT * a for a, b in zip(x, y, strict=True)]
    ln_c = math.fsum(offsets) / count
    dof = count - 1
    variance = math.fsum((value - ln_c) ** 2 for value in offsets) / dof if dof else 0.0
    var_n = EXPONENT_U**2
    return PowerLaw(
        ln_c=ln_c,
        n=EXPONENT,
        var_ln_c=variance / count + mean_x**2 * var_n,
        var_n=var_n,
        cov_ln_c_n=-mean_x * var_n,
        dof=float(dof),
        r2=1.0,
        residual_sd=math.sqrt(variance),
        low_pa=min(observations.pressure_pa),
        high_pa=max(observations.pressure_pa),
    )
