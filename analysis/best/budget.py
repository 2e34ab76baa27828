"""The uncertainty budget: every part of the uncertainty of a quantity by itself, and all together (JCGM 100).

All are standard uncertainties of the logarithm. The intervals are confidence intervals of the quantity; where one more
reading would fall is another question (`powerlaw.further_reading_at`).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

from analysis.air import ZERO_C_IN_K
from analysis.best.estimate import BestRun
from analysis.effective import QUANTITIES, Effective, EffectiveQuantity, mean_flow, measure_of
from analysis.powerlaw import ln_flow_variance, log_estimate
from analysis.records import Kit, PowerLaw, QuantityBudget, Test, UncertaintyPart
from analysis.student import pooled_dof

DIVISORS = {"volume_m3": "volume", "envelope_area_m2": "envelope_area", "floor_area_m2": "floor_area"}
"""Field of the kit for each measure of a building."""


class Assessment:
    """A test whose quantities can be asked for with everything that makes them uncertain.

    The value is the official one, as mean over the runs. What the readings hold (fit, zero-flow pressure and its drift,
    wind) is taken from the best lines, because the official interval leaves most of it out. How far the official number
    lies off the best one is a part too: what the method's fit and its conversion to reference air leave out.
    """

    def __init__(self, test: Test, official_lines: Sequence[PowerLaw], runs: Sequence[BestRun], kit: Kit) -> None:
        """Take the official lines in reference air, and the best one of each run."""
        self._test = test
        self._lines = tuple(official_lines)
        self._runs = tuple(runs)
        self._kit = kit
        self._at: dict[float, tuple[Effective, list[UncertaintyPart]]] = {}

    def over(self, places: Sequence[int]) -> Assessment:
        """Return the same for some of the runs."""
        if len(places) == len(self._runs):
            return self
        some = replace(self._test, runs=tuple(self._test.runs[at] for at in places))
        return Assessment(some, [self._lines[at] for at in places], [self._runs[at] for at in places], self._kit)

    def all(self) -> tuple[QuantityBudget, ...]:
        """Return the budget of every quantity that the building allows."""
        building = self._test.building
        return tuple(
            self.of(item)
            for item in QUANTITIES.values()
            if item.divisor is None or getattr(building, item.divisor) is not None
        )

    def of(self, quantity: EffectiveQuantity) -> QuantityBudget:
        """Return the budget of a quantity; raises `InvalidInput` where the building lacks what it needs."""
        if quantity.pressure_pa not in self._at:
            flow = mean_flow(self._lines, quantity.pressure_pa)
            best = mean_flow([run.line for run in self._runs], quantity.pressure_pa)
            off = abs(math.log(best.value / flow.value))
            held = [*_of_readings(quantity.pressure_pa, self._runs), UncertaintyPart("method", off, repeatable=False)]
            self._at[quantity.pressure_pa] = (flow, held)
        flow, readings = self._at[quantity.pressure_pa]
        value = flow.value * quantity.factor / measure_of(self._test.building, quantity, "the budget")
        parts = (*readings, *_of_kit(quantity, self._test, self._runs, self._kit))
        variances = tuple(part.ln_u**2 for part in parts)
        dof = pooled_dof(variances, tuple(part.dof for part in parts))
        total = log_estimate(value, math.fsum(variances), dof, extrapolated=flow.extrapolated)
        return QuantityBudget(quantity.id, total, parts, dof)


def _of_readings(pressure_pa: float, runs: Sequence[BestRun]) -> list[UncertaintyPart]:
    """Return the parts that come anew with every test; runs are independent of each other."""
    flows = [math.exp(run.line.ln_c) * pressure_pa**run.line.n for run in runs]
    shares = [flow / math.fsum(flows) for flow in flows]
    fit: list[float] = []
    scatter: list[float] = []
    drift: list[float] = []
    wind: list[float] = []
    for run, share in zip(runs, shares, strict=True):
        slope = run.zero_slope(pressure_pa)
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
