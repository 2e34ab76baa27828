"""Effective quantities: what a limit may be set on, and how each follows from the leakage lines of a test.

All are the flow at one pressure times a constant, over one measure of the building.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from analysis.bounds import above_zero
from analysis.errors import InvalidInput
from analysis.hole import SHARP_EDGED, hole_cm2_per_m3_h
from analysis.powerlaw import flow_at, ln_flow_variance, log_estimate
from analysis.records import Building, Estimate, PowerLaw
from analysis.student import pooled_dof
from analysis.units import Quantity

REFERENCE_PRESSURE_PA = 50.0
_SECONDS_PER_HOUR = 3600.0
_LITRES_PER_M3 = 1000.0


@dataclass(frozen=True, slots=True)
class EffectiveQuantity:
    """`factor` times the flow (m3/h) at `pressure_pa`, divided by the named measure of the building."""

    id: str
    symbol: str
    title: str
    pressure_pa: float
    divisor: str | None
    kind: Quantity
    factor: float = 1.0


@dataclass(frozen=True, slots=True)
class Effective:
    """A mean over the runs of a test, with the variance of its logarithm and its degrees of freedom."""

    value: float
    ln_variance: float
    dof: float
    extrapolated: bool

    @property
    def estimate(self) -> Estimate:
        """Return the value with its 95 % interval."""
        return log_estimate(self.value, self.ln_variance, self.dof, extrapolated=self.extrapolated)


_TABLE = (
    EffectiveQuantity("q50_m3_h", "q50", "flow at 50 Pa", 50.0, None, Quantity.FLOW),
    EffectiveQuantity("n50_per_h", "n50", "air changes per hour at 50 Pa", 50.0, "volume_m3", Quantity.AIR_CHANGE),
    EffectiveQuantity(
        "qe50_m3_h_m2", "qE50", "flow at 50 Pa per envelope area", 50.0, "envelope_area_m2", Quantity.FLOW_PER_AREA
    ),
    EffectiveQuantity(
        "qf50_m3_h_m2", "qF50", "flow at 50 Pa per floor area", 50.0, "floor_area_m2", Quantity.FLOW_PER_AREA
    ),
    EffectiveQuantity(
        "qe75_m3_h_m2", "qE75", "flow at 75 Pa per envelope area", 75.0, "envelope_area_m2", Quantity.FLOW_PER_AREA
    ),
    EffectiveQuantity(
        "qe4_m3_h_m2", "qE4", "flow at 4 Pa per envelope area", 4.0, "envelope_area_m2", Quantity.FLOW_PER_AREA
    ),
    EffectiveQuantity(
        "nla10_cm2_m2",
        "NLA10",
        "equivalent leakage area at 10 Pa (discharge coefficient 0.611) per envelope area",
        10.0,
        "envelope_area_m2",
        Quantity.NORMALISED_LEAKAGE_AREA,
        hole_cm2_per_m3_h(10.0, SHARP_EDGED),
    ),
    EffectiveQuantity(
        "nlr50_l_s_m2",
        "NLR50",
        "normalised leakage rate at 50 Pa, flow per envelope area",
        50.0,
        "envelope_area_m2",
        Quantity.NORMALISED_LEAKAGE_RATE,
        _LITRES_PER_M3 / _SECONDS_PER_HOUR,
    ),
    EffectiveQuantity(
        "sla4_cm2_m2",
        "SLA4",
        "specific leakage area: effective leakage area at 4 Pa (discharge coefficient 1) per floor area",
        4.0,
        "floor_area_m2",
        Quantity.NORMALISED_LEAKAGE_AREA,
        hole_cm2_per_m3_h(4.0, 1.0),
    ),
)
QUANTITIES = {item.id: item for item in _TABLE}


def effective_quantity(quantity_id: str, field: str = "quantity") -> EffectiveQuantity:
    """Return the quantity of an id; raises `InvalidInput` that lists those there are."""
    found = QUANTITIES.get(quantity_id)
    if found is None:
        raise InvalidInput(field, quantity_id, f"one of {', '.join(QUANTITIES)} is needed")
    return found


def effective(lines: Sequence[PowerLaw], building: Building, quantity: EffectiveQuantity, needed_by: str) -> Effective:
    """Return a quantity as the mean over the runs, whose lines are in reference air and independent of each other.

    The variances add; the degrees of freedom are pooled (Welch-Satterthwaite). Raises `InvalidInput` where the building
    lacks the measure, saying what needs it.
    """
    mean = mean_flow(lines, quantity.pressure_pa)
    factor = quantity.factor / measure_of(building, quantity, needed_by)
    return Effective(mean.value * factor, mean.ln_variance, mean.dof, mean.extrapolated)


def flow_at_pressure(pressure_pa: float) -> EffectiveQuantity:
    """Return the flow at a pressure of one's own as a quantity; raises `InvalidInput` for one that is not above 0."""
    above_zero(pressure_pa, "pressure_pa")
    return EffectiveQuantity(
        f"q{pressure_pa:g}_m3_h", f"q{pressure_pa:g}", f"flow at {pressure_pa:g} Pa", pressure_pa, None, Quantity.FLOW
    )


def mean_flow(lines: Sequence[PowerLaw], pressure_pa: float) -> Effective:
    """Return the arithmetic mean over the runs of the flow (m3/h) at a pressure. One run gives itself."""
    flows = [flow_at(line, pressure_pa) for line in lines]
    total = math.fsum(flow.value for flow in flows)
    shares = tuple(
        (flow.value / total) ** 2 * ln_flow_variance(line, pressure_pa) for flow, line in zip(flows, lines, strict=True)
    )
    return Effective(
        value=total / len(flows),
        ln_variance=math.fsum(shares),
        dof=pooled_dof(shares, tuple(line.dof for line in lines)),
        extrapolated=any(flow.extrapolated for flow in flows),
    )


def measure_of(building: Building, quantity: EffectiveQuantity, needed_by: str) -> float:
    """Return what the flow is divided by, 1 for a flow; raises `InvalidInput` where the building does not say."""
    if quantity.divisor is None:
        return 1.0
    value: float | None = getattr(building, quantity.divisor)
    if value is None:
        raise InvalidInput(f"building.{quantity.divisor}", None, f"{needed_by} on {quantity.id} needs it")
    return value
