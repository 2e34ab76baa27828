"""Both directions together: the mean flow at 50 Pa with its interval, and limits held against it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from analysis.errors import InvalidInput
from analysis.methods.quantities import RATE_DIVISORS, REFERENCE_PRESSURE_PA, divisor, rates
from analysis.powerlaw import flow_at, ln_flow_variance, log_estimate
from analysis.records import Building, Limit, MeanResult, PowerLaw, Verdict
from analysis.student import pooled_dof, t_probability
from analysis.validation import validate_limit

MEETS, DOES_NOT_MEET, CANNOT_TELL = "meets", "does not meet", "cannot tell"
CONFORMITY = 0.95
"""Probability from which a limit counts as met, or as not met (our choice; the rule is that of JCGM 106)."""


@dataclass(frozen=True, slots=True)
class MeanFlow:
    """Mean of the runs' flows at 50 Pa (m3/h) in reference air, with the variance of its logarithm."""

    value: float
    ln_variance: float
    dof: float
    extrapolated: bool


def mean_flow(reference_lines: Sequence[PowerLaw]) -> MeanFlow:
    """Return the arithmetic mean over the runs, which are taken as independent of each other.

    The variances add; the degrees of freedom are pooled (Welch-Satterthwaite). One run gives itself.
    """
    flows = [flow_at(line, REFERENCE_PRESSURE_PA) for line in reference_lines]
    total = math.fsum(flow.value for flow in flows)
    shares = tuple(
        (flow.value / total) ** 2 * ln_flow_variance(line, REFERENCE_PRESSURE_PA)
        for flow, line in zip(flows, reference_lines, strict=True)
    )
    return MeanFlow(
        value=total / len(flows),
        ln_variance=math.fsum(shares),
        dof=pooled_dof(shares, tuple(line.dof for line in reference_lines)),
        extrapolated=any(flow.extrapolated for flow in flows),
    )


def mean_result(flow: MeanFlow, building: Building) -> MeanResult:
    """Return the mean and its rates per volume and area."""
    q50 = log_estimate(flow.value, flow.ln_variance, flow.dof, extrapolated=flow.extrapolated)
    per_50 = rates(q50, building)
    return MeanResult(
        q50_m3_h=q50,
        n50_per_h=per_50["n50_per_h"],
        qe50_m3_h_m2=per_50["qe50_m3_h_m2"],
        qf50_m3_h_m2=per_50["qf50_m3_h_m2"],
    )


def verdict(flow: MeanFlow, building: Building, limit: Limit, field: str) -> Verdict:
    """Hold a limit against the mean: how probable is it that the true value is within?

    Raises `InvalidInput` for an unknown quantity, a limit that is not above 0, or a building that lacks the divisor.
    """
    if limit.quantity not in RATE_DIVISORS:
        raise InvalidInput(f"{field}.quantity", limit.quantity, f"one of {', '.join(RATE_DIVISORS)} is needed")
    validate_limit(limit, field)
    by = divisor(building, limit.quantity)
    if by is None:
        name = RATE_DIVISORS[limit.quantity]
        raise InvalidInput(f"building.{name}", None, f"the limit {limit.id} on {limit.quantity} needs it")
    probability = probability_within(flow, limit.value * by)
    if probability >= CONFORMITY:
        return Verdict(limit, probability, MEETS)
    return Verdict(limit, probability, DOES_NOT_MEET if probability <= 1.0 - CONFORMITY else CANNOT_TELL)


def probability_within(flow: MeanFlow, limit_m3_h: float) -> float:
    """Return the probability that the true mean flow is at most the limit."""
    distance = math.log(limit_m3_h / flow.value)
    if flow.ln_variance == 0:
        return 1.0 if distance >= 0 else 0.0
    return t_probability(distance / math.sqrt(flow.ln_variance), flow.dof)
