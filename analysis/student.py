"""Distributions: the quantile behind every interval, the probability behind every verdict, the test of a scatter."""

from __future__ import annotations

import math
from functools import lru_cache

from scipy.special import chdtri, ndtr, ndtri, stdtr, stdtrit

COVERAGE = 0.95
"""Every interval of this program."""


@lru_cache(maxsize=1024)
def t_multiplier(dof: float, coverage: float = COVERAGE) -> float:
    """Return the two-sided multiplier of Student's t; normal for infinite degrees of freedom, infinite for none."""
    if dof <= 0:
        return math.inf
    upper = 0.5 + coverage / 2
    return float(ndtri(upper) if math.isinf(dof) else stdtrit(dof, upper))


@lru_cache(maxsize=1024)
def chi_square_limit(dof: int) -> float:
    """Return what a sum of `dof` squares of unit variance stays below with a probability of 95 %."""
    return float(chdtri(dof, 1.0 - COVERAGE))


def t_probability(t: float, dof: float) -> float:
    """Return the probability that Student's t is at most `t`; 0.5 without degrees of freedom: nothing is known."""
    if dof <= 0:
        return 0.5
    return float(ndtr(t) if math.isinf(dof) else stdtr(dof, t))


def pooled_dof(variances: tuple[float, ...], dofs: tuple[float, ...]) -> float:
    """Return the degrees of freedom of a sum of independent parts (Welch-Satterthwaite, JCGM 100 G.4)."""
    if any(dof <= 0 for dof in dofs):
        return 0.0
    total = math.fsum(variances)
    weight = math.fsum(variance**2 / dof for variance, dof in zip(variances, dofs, strict=True))
    return total**2 / weight if weight > 0 else min(dofs)
