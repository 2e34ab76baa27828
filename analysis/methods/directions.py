"""Both directions together: the mean flow at 50 Pa with its interval, and limits held against the test."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from analysis.best import Assessment
from analysis.effective import (
    REFERENCE_PRESSURE_PA,
    Effective,
    effective,
    effective_quantity,
    measure_of,
)
from analysis.effective import mean_flow as mean_flow_at
from analysis.methods.quantities import rates
from analysis.records import Building, Limit, MeanResult, PowerLaw, QuantityBudget, Verdict
from analysis.validation import validate_limit
from analysis.verdict import conformity, probability_within, settling


@dataclass(frozen=True, slots=True)
class MeanFlow:
    """The lines of the runs in reference air, and the mean of their flows at 50 Pa (m3/h)."""

    lines: tuple[PowerLaw, ...]
    at_50: Effective


def mean_flow(reference_lines: Sequence[PowerLaw]) -> MeanFlow:
    """Return the mean over the runs, which are taken as independent of each other. One run gives itself."""
    return MeanFlow(tuple(reference_lines), mean_flow_at(reference_lines, REFERENCE_PRESSURE_PA))


def mean_result(flow: MeanFlow, building: Building) -> MeanResult:
    """Return the mean and its rates per volume and area."""
    q50 = flow.at_50.estimate
    per_50 = rates(q50, building)
    return MeanResult(
        q50_m3_h=q50,
        n50_per_h=per_50["n50_per_h"],
        qe50_m3_h_m2=per_50["qe50_m3_h_m2"],
        qf50_m3_h_m2=per_50["qf50_m3_h_m2"],
    )


def verdict(
    flow: MeanFlow, building: Building, limit: Limit, field: str, assessed: Assessment | None = None
) -> Verdict:
    """Hold a limit against the mean, or against each direction where the limit says so: the worse one decides then.

    When `assessed` everything that makes the result uncertain counts, else the scatter about the line alone. Raises
    `InvalidInput` for an unknown quantity, a limit that is not above 0, or a building that lacks the divisor.
    """
    quantity = effective_quantity(limit.quantity, f"{field}.quantity")
    validate_limit(limit, field)
    places = range(len(flow.lines))
    groups = [(at,) for at in places] if limit.each_direction else [tuple(places)]
    measure_of(building, quantity, f"the limit {limit.id}")
    if assessed is not None:
        judged = [_of_budget(assessed.over(group).of(quantity), limit) for group in groups]
    else:
        held = [effective([flow.lines[at] for at in group], building, quantity, "the limit") for group in groups]
        judged = [_of_scatter(item, limit) for item in held]
    return min(judged, key=lambda found: found.probability)


def _of_budget(found: QuantityBudget, limit: Limit) -> Verdict:
    probability = probability_within(found.total, limit.value, found.dof)
    way = settling(found.total, limit.value, found.dof, found.parts)
    return Verdict(limit, probability, conformity(probability), way)


def _of_scatter(found: Effective, limit: Limit) -> Verdict:
    probability = probability_within(found.estimate, limit.value, found.dof)
    return Verdict(limit, probability, conformity(probability), settling(found.estimate, limit.value, found.dof))
