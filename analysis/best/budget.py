"""The uncertainty budget: every part of the uncertainty of a quantity by itself, and all together (JCGM 100).

All are standard uncertainties of the logarithm. The intervals are confidence intervals of the quantity; where one more
reading would fall is another question (`powerlaw.further_reading_at`).
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from analysis.air import ZERO_C_IN_K
from analysis.best.estimate import NUDGE_PA, BestRun
from analysis.effective import QUANTITIES, EffectiveQuantity, effective
from analysis.powerlaw import ln_flow_variance, log_estimate
from analysis.records import Kit, PowerLaw, QuantityBudget, Test, UncertaintyPart
from analysis.student import pooled_dof

DIVISORS = {"volume_m3": "volume", "envelope_area_m2": "envelope_area", "floor_area_m2": "floor_area"}
"""Field of the kit for each measure of a building."""


def budgets(
    test: Test, official_lines: Sequence[PowerLaw], runs: Sequence[BestRun], kit: Kit
) -> tuple[QuantityBudget, ...]:
    """Return the budget of every quantity that the building allows."""
    allowed = [
        item for item in QUANTITIES.values() if item.divisor is None or getattr(test.building, item.divisor) is not None
    ]
    return tuple(budget_of(item, test, official_lines, runs, kit) for item in allowed)


def budget_of(
    quantity: EffectiveQuantity, test: Test, official_lines: Sequence[PowerLaw], runs: Sequence[BestRun], kit: Kit
) -> QuantityBudget:
    """Return the official value of a quantity, as mean over the runs, with everything that makes it uncertain.

    What the readings hold (fit, zero-flow pressure and its drift, wind) is taken from the best lines, because the
    official interval leaves most of it out. Raises `InvalidInput` where the building lacks what the quantity needs.
    """
    official = effective(official_lines, test.building, quantity, "the budget")
    parts = [*_of_readings(quantity.pressure_pa, runs), *_of_kit(quantity, test, runs, kit)]
    variances = tuple(part.ln_u**2 for part in parts)
    dof = pooled_dof(variances, tuple(part.dof for part in parts))
    total = log_estimate(official.value, math.fsum(variances), dof, extrapolated=official.extrapolated)
    return QuantityBudget(quantity.id, total, tuple(parts), dof)


def _of_readings(pressure_pa: float, runs: Sequence[BestRun]) -> list[UncertaintyPart]:
    """Return the parts that come anew with every test; runs are independent of each other."""
    flows = [math.exp(run.line.ln_c) * pressure_pa**run.line.n for run in runs]
    shares = [flow / math.fsum(flows) for flow in flows]
    fit: list[float] = []
    scatter: list[float] = []
    drift: list[float] = []
    wind: list[float] = []
    for run, share in zip(runs, shares, strict=True):
        slope = _zero_slope(run, pressure_pa)
        zero = [0.0, 0.0, 0.0] if run.zero is None else [run.zero.scatter, run.zero.drift, run.zero.wind]
        of_zero = [(slope * u) ** 2 for u in zero]
        whole = ln_flow_variance(run.line, pressure_pa)
        own = max(whole - math.fsum(of_zero), 0.0) if run.holds_zero else whole
        fit.append(share**2 * own)
        for kept, variance in zip((scatter, drift, wind), of_zero, strict=True):
            kept.append(share**2 * variance)
    return [
        UncertaintyPart("fit", math.sqrt(math.fsum(fit)), pooled_dof(tuple(fit), tuple(run.line.dof for run in runs))),
        UncertaintyPart("zero", math.sqrt(math.fsum(scatter))),
        UncertaintyPart("zero-drift", math.sqrt(math.fsum(drift))),
        UncertaintyPart("wind", math.sqrt(math.fsum(wind))),
    ]


def _zero_slope(run: BestRun, pressure_pa: float) -> float:
    """Return by how much ln q at a pressure changes with the zero-flow pressure (1/Pa)."""
    ln_pressure = math.log(pressure_pa)
    moved = run.nudged.ln_c - run.line.ln_c + (run.nudged.n - run.line.n) * ln_pressure
    return moved / NUDGE_PA


def _of_kit(quantity: EffectiveQuantity, test: Test, runs: Sequence[BestRun], kit: Kit) -> list[UncertaintyPart]:
    """Return the parts of instruments and measures: the same in every test with them.

    An error of the gauge in proportion moves ln q by n times that. Temperatures enter by the densities: half of the
    relative error of the air in the fan, n times that of the air in the leaks.
    """
    n = math.fsum(run.line.n for run in runs) / len(runs)
    kelvin = ZERO_C_IN_K + math.fsum(run.air.outdoor_c for run in test.runs) / len(test.runs)
    of_air = kit.temperature_k / kelvin * math.hypot(0.5, n)
    parts = [
        UncertaintyPart("gauge", abs(n) * kit.gauge, repeatable=False),
        UncertaintyPart("flow-element", kit.flow_element, repeatable=False),
        UncertaintyPart("temperature", of_air, repeatable=False),
    ]
    if quantity.divisor is not None:
        name = DIVISORS[quantity.divisor]
        parts.append(UncertaintyPart(name.replace("_", "-"), getattr(kit, name), repeatable=False))
    return parts
