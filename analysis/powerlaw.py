"""The leakage line `q = C dp**n`: what it says at a pressure, and the same line in other air.

Confidence and prediction are two questions. `flow_at` answers "where is the line?", which is what a test reports;
`further_reading_at` answers "where would one more reading fall?".
"""

from __future__ import annotations

import math
from dataclasses import replace

from analysis.records import Estimate, PowerLaw
from analysis.student import t_multiplier

NEAR = 1.03
"""A pressure this factor beyond those measured is not extrapolated to (our choice)."""
_LARGEST_LN = 600.0


def flow_at(line: PowerLaw, pressure_pa: float) -> Estimate:
    """Return the flow of the line (m3/h) at a pressure above 0, with the confidence interval of the line."""
    return _flow(line, pressure_pa, ln_flow_variance(line, pressure_pa))


def further_reading_at(line: PowerLaw, pressure_pa: float) -> Estimate:
    """Return the flow of the line (m3/h) with the prediction interval of one further reading."""
    return _flow(line, pressure_pa, ln_flow_variance(line, pressure_pa) + line.residual_sd**2)


def ln_flow_variance(line: PowerLaw, pressure_pa: float) -> float:
    """Return the variance of ln q of the line at a pressure; infinite without degrees of freedom."""
    if line.dof <= 0:
        return math.inf
    x = math.log(pressure_pa)
    return max(line.var_ln_c + 2.0 * x * line.cov_ln_c_n + x * x * line.var_n, 0.0)


def is_outside(line: PowerLaw, pressure_pa: float) -> bool:
    """Tell whether a pressure lies outside those that were measured; as near as a target is met counts as inside."""
    return not line.low_pa / NEAR <= pressure_pa <= line.high_pa * NEAR


def exponent(line: PowerLaw) -> Estimate:
    """Return the flow exponent with its interval."""
    half = _half_width(line.dof, line.var_n)
    return Estimate(line.n, line.n - half, line.n + half)


def coefficient(line: PowerLaw) -> Estimate:
    """Return the leakage coefficient C (m3/(h Pa^n)) with its interval."""
    return log_estimate(math.exp(line.ln_c), line.var_ln_c, line.dof)


def in_other_air(line: PowerLaw, constant: float, per_n: float) -> PowerLaw:
    """Return the line whose ln C is `ln C + constant + per_n n`.

    That is the form of every conversion to reference air; the covariance follows exactly.
    """
    return replace(
        line,
        ln_c=line.ln_c + constant + per_n * line.n,
        var_ln_c=line.var_ln_c + 2.0 * per_n * line.cov_ln_c_n + per_n**2 * line.var_n,
        cov_ln_c_n=line.cov_ln_c_n + per_n * line.var_n,
    )


def log_estimate(value: float, ln_variance: float, dof: float, *, extrapolated: bool = False) -> Estimate:
    """Return an estimate above 0 whose logarithm has the given variance."""
    half = _half_width(dof, ln_variance)
    high = value * math.exp(half) if half < _LARGEST_LN else math.inf
    return Estimate(value, value * math.exp(-half), high, extrapolated)


def _flow(line: PowerLaw, pressure_pa: float, ln_variance: float) -> Estimate:
    value = math.exp(line.ln_c + line.n * math.log(pressure_pa))
    outside = is_outside(line, pressure_pa)
    return log_estimate(value, ln_variance, line.dof, extrapolated=outside)


def _half_width(dof: float, variance: float) -> float:
    """Return half of the interval; infinite without degrees of freedom."""
    return math.inf if dof <= 0 else t_multiplier(dof) * math.sqrt(variance)
