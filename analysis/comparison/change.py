"""The change of a flow between two tests, with its interval.

Errors that both tests share cancel in the change as far as they are the same: a flow element that reads 3 % high does
so before and after. What is left follows from the joint covariance of both results (JCGM 100 5.2).
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from analysis.bounds import above_zero, not_negative, within
from analysis.effective import mean_flow
from analysis.errors import InvalidInput
from analysis.powerlaw import log_estimate
from analysis.records import Estimate, PowerLaw, UncertaintyPart
from analysis.student import pooled_dof, t_multiplier
from analysis.verdict import probability_within

REFERENCE_PRESSURE_PA = 50.0


@dataclass(frozen=True, slots=True)
class Assessed:
    """A result above 0 with the independent parts of its uncertainty, each part named once."""

    value: float
    parts: tuple[UncertaintyPart, ...]

    @property
    def ln_variance(self) -> float:
        """Variance of the logarithm, all parts together."""
        return math.fsum(part.ln_u**2 for part in self.parts)


@dataclass(frozen=True, slots=True)
class Calibration:
    """Relative standard uncertainties that an instrument brings into every point alike."""

    gauge: float
    flow_element: float


@dataclass(frozen=True, slots=True)
class Change:
    """After less before, and after over before; `probability_lower` is that of a true fall.

    `smallest` is the least relative change that two such tests tell from none at 95 %, infinite without an interval.
    """

    difference: Estimate
    ratio: Estimate
    probability_lower: float
    smallest: float

    @property
    def real(self) -> bool:
        """True when the interval leaves out that nothing changed."""
        return not self.ratio.low <= 1.0 <= self.ratio.high


def assessed_flow(
    reference_lines: Sequence[PowerLaw], calibration: Calibration, pressure_pa: float = REFERENCE_PRESSURE_PA
) -> Assessed:
    """Return the mean flow of a test (m3/h) with its parts `fit`, `gauge` and `flow-element`.

    The gauge counts n times: an error of the pressure moves the flow by that much. Raises `InvalidInput` for
    a calibration that is below 0.
    """
    gauge = not_negative(calibration.gauge, "calibration.gauge")
    element = not_negative(calibration.flow_element, "calibration.flow_element")
    flow = mean_flow(reference_lines, above_zero(pressure_pa, "pressure_pa"))
    n = math.fsum(line.n for line in reference_lines) / len(reference_lines)
    return Assessed(
        flow.value,
        (
            UncertaintyPart("fit", math.sqrt(flow.ln_variance), flow.dof),
            UncertaintyPart("gauge", abs(n) * gauge, repeatable=False),
            UncertaintyPart("flow-element", element, repeatable=False),
        ),
    )


def change_between(before: Assessed, after: Assessed, shared: Mapping[str, float]) -> Change:
    """Return the change from one test to another.

    `shared` names the parts that both have from one source, with their correlation (1 for the same instrument with the
    same calibration); all other parts are independent. Raises `InvalidInput` for a part that one of them lacks.
    """
    above_zero(before.value, "before")
    above_zero(after.value, "after")
    ours, theirs = _by_id(before, "before"), _by_id(after, "after")
    for name, correlation in shared.items():
        if name not in ours or name not in theirs:
            known = ", ".join(sorted(ours.keys() & theirs.keys())) or "none"
            raise InvalidInput("shared", name, f"a part of both tests is needed (there are: {known})")
        within(correlation, -1.0, 1.0, f"shared.{name}")
    ratio_variance, ratio_dof = _pooled(ours, theirs, shared, 1.0, 1.0)
    ratio = log_estimate(after.value / before.value, ratio_variance, ratio_dof)
    variance, dof = _pooled(ours, theirs, shared, before.value, after.value)
    half = t_multiplier(dof) * math.sqrt(variance) if dof > 0 else math.inf
    difference = after.value - before.value
    return Change(
        difference=Estimate(difference, difference - half, difference + half),
        ratio=ratio,
        probability_lower=probability_within(ratio, 1.0, ratio_dof),
        smallest=ratio.high / ratio.value - 1.0,
    )


def _pooled(
    before: Mapping[str, UncertaintyPart],
    after: Mapping[str, UncertaintyPart],
    shared: Mapping[str, float],
    before_scale: float,
    after_scale: float,
) -> tuple[float, float]:
    """Return variance and degrees of freedom of the scaled difference of both (Welch-Satterthwaite)."""
    kept: list[tuple[float, float]] = []
    for name in [*before, *(name for name in after if name not in before)]:
        one = before_scale * before[name].ln_u if name in before else 0.0
        other = after_scale * after[name].ln_u if name in after else 0.0
        correlation = shared.get(name, 0.0)
        if correlation and math.isfinite(one) and math.isfinite(other):
            left = max(one**2 + other**2 - 2.0 * correlation * one * other, 0.0)
            kept.append((left, min(before[name].dof, after[name].dof)))
            continue
        kept += [(u**2, parts[name].dof) for u, parts in ((one, before), (other, after)) if name in parts]
    kept = [(variance, dof) for variance, dof in kept if variance > 0.0]
    if not kept:
        return 0.0, math.inf
    variances, dofs = zip(*kept, strict=True)
    return math.fsum(variances), pooled_dof(variances, dofs)


def _by_id(result: Assessed, field: str) -> dict[str, UncertaintyPart]:
    found: dict[str, UncertaintyPart] = {}
    for part in result.parts:
        if part.id in found:
            raise InvalidInput(
                f"{field}.parts", part.id, "every part needs a name of its own", shown=f"{part.id!r} twice"
            )
        if not part.ln_u >= 0.0:
            raise InvalidInput(f"{field}.parts.{part.id}", part.ln_u, "a number of at least 0 is needed")
        found[part.id] = part
    return found
