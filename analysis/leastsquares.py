"""The straight line by least squares: one core for every estimator that weighs points one by one.

Sums are exactly rounded (`math.fsum`) about the weighted means, so that the digits depend neither on the order of the
points nor on the machine.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Moments:
    """Weighted means and central sums of the points (x, y)."""

    count: int
    weight: float
    mean_x: float
    mean_y: float
    sxx: float
    sxy: float
    syy: float


@dataclass(frozen=True, slots=True)
class StraightLine:
    """y = intercept + slope x. `unit_*` are the (co)variances of the parameters for a variance of 1 at weight 1."""

    intercept: float
    slope: float
    unit_var_intercept: float
    unit_var_slope: float
    unit_cov: float
    residual_sum: float
    """Weighted sum of squared residuals."""
    r2: float
    """Share of the spread of y that the line explains; 0 where y does not vary."""


def moments(x: Sequence[float], y: Sequence[float], weights: Sequence[float] | None = None) -> Moments:
    """Return the moments of points of equal number; weights default to 1."""
    w = weights if weights is not None else (1.0,) * len(x)
    weight = math.fsum(w)
    mean_x = math.fsum(a * b for a, b in zip(w, x, strict=True)) / weight
    mean_y = math.fsum(a * b for a, b in zip(w, y, strict=True)) / weight
    dx = [value - mean_x for value in x]
    dy = [value - mean_y for value in y]
    return Moments(
        count=len(dx),
        weight=weight,
        mean_x=mean_x,
        mean_y=mean_y,
        sxx=math.fsum(a * b * b for a, b in zip(w, dx, strict=True)),
        sxy=math.fsum(a * b * c for a, b, c in zip(w, dx, dy, strict=True)),
        syy=math.fsum(a * b * b for a, b in zip(w, dy, strict=True)),
    )


def straight_line(x: Sequence[float], y: Sequence[float], weights: Sequence[float] | None = None) -> StraightLine:
    """Return the line of least squares through points of at least two different x.

    Textbook sums about the means; the same numbers as ISO 9972 Annex C and ASTM E779 Annex A1 (from memory).
    """
    m = moments(x, y, weights)
    return line_through(m, m.sxy / m.sxx, x, y, weights)


def line_through(
    m: Moments, slope: float, x: Sequence[float], y: Sequence[float], weights: Sequence[float] | None = None
) -> StraightLine:
    """Return the line of a given slope through the means, with the covariance that least squares would give it."""
    w = weights if weights is not None else (1.0,) * len(x)
    residual_sum = math.fsum(
        a * ((c - m.mean_y) - slope * (b - m.mean_x)) ** 2 for a, b, c in zip(w, x, y, strict=True)
    )
    unit_var_slope = 1.0 / m.sxx
    return StraightLine(
        intercept=m.mean_y - slope * m.mean_x,
        slope=slope,
        unit_var_intercept=1.0 / m.weight + m.mean_x**2 * unit_var_slope,
        unit_var_slope=unit_var_slope,
        unit_cov=-m.mean_x * unit_var_slope,
        residual_sum=residual_sum,
        r2=min(m.sxy**2 / (m.sxx * m.syy), 1.0) if m.syy > 0 else 0.0,
    )
