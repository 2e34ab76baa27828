"""Components added up: what a list of them may leak, beside what was measured."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from analysis.air import REFERENCE_DENSITY_KG_M3
from analysis.bounds import above_zero, not_negative
from analysis.components.table import ComponentTable

USUAL_EXPONENT = 0.65
"""Flow exponent where none was measured (mean of many houses, from memory)."""

_CM2_PER_M2 = 1e4
_SECONDS_PER_HOUR = 3600.0
_ELA_PA = 4.0


@dataclass(frozen=True, slots=True)
class ComponentTotal:
    """Effective leakage area at 4 Pa (cm2) of a list of components: typical, and all at the lower or upper end.

    The ends are no interval of any probability: it is unlikely that all components lie at the same end.
    """

    typical_cm2: float
    least_cm2: float
    most_cm2: float


def component_total(table: ComponentTable, amounts: Mapping[str, float]) -> ComponentTotal:
    """Return what so many of each component (pieces, metres or square metres) leak together.

    Raises `InvalidInput` for a component that the table lacks, or an amount that is below 0.
    """
    typical, least, most = [], [], []
    for component_id, amount in amounts.items():
        component = table.component(component_id, f"amounts.{component_id}")
        count = not_negative(amount, f"amounts.{component_id}")
        low, high = component.range_cm2
        typical.append(count * component.typical_cm2)
        least.append(count * low)
        most.append(count * high)
    return ComponentTotal(math.fsum(typical), math.fsum(least), math.fsum(most))


def flow_of_area_m3_h(ela4_cm2: float, pressure_pa: float = 50.0, n: float = USUAL_EXPONENT) -> float:
    """Return the flow (m3/h) at a pressure of an effective leakage area at 4 Pa with discharge coefficient 1.

    A (2 4/rho)**0.5 (dp/4)**n (definition of the area, power law).
    """
    at_4 = ela4_cm2 / _CM2_PER_M2 * math.sqrt(2.0 * _ELA_PA / REFERENCE_DENSITY_KG_M3) * _SECONDS_PER_HOUR
    return at_4 * float((above_zero(pressure_pa, "pressure_pa") / _ELA_PA) ** n)
