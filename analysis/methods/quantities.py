"""Derived quantities: flow at a pressure, its rates per volume and area, and equivalent leakage areas."""

from __future__ import annotations

import math
from dataclasses import dataclass

from analysis.air import REFERENCE_DENSITY_KG_M3
from analysis.powerlaw import flow_at
from analysis.records import Building, Estimate, PowerLaw

_CM2_PER_M2 = 1e4
_SECONDS_PER_HOUR = 3600.0

RATE_DIVISORS = {
    "q50_m3_h": None,
    "n50_per_h": "volume_m3",
    "qe50_m3_h_m2": "envelope_area_m2",
    "qf50_m3_h_m2": "floor_area_m2",
}
"""The quantities at 50 Pa and what of the building the flow is divided by."""


@dataclass(frozen=True, slots=True)
class AreaConvention:
    """What an equivalent leakage area means: the hole of this discharge coefficient that passes the same flow."""

    name: str
    pressure_pa: float
    discharge_coefficient: float
    definition: str


ELA4 = AreaConvention("ELA4", 4.0, 1.0, "effective leakage area at 4 Pa, discharge coefficient 1")
EQLA10 = AreaConvention("EqLA10", 10.0, 0.611, "equivalent leakage area at 10 Pa, discharge coefficient 0.611")


def divisor(building: Building, quantity: str) -> float | None:
    """Return what the flow at 50 Pa is divided by for a quantity, None where the building does not say."""
    name = RATE_DIVISORS[quantity]
    if name is None:
        return 1.0
    value: float | None = getattr(building, name)
    return value


def rates(q50: Estimate, building: Building) -> dict[str, Estimate | None]:
    """Return the quantities at 50 Pa by their names, None for those that the building does not allow."""
    divisors = {quantity: divisor(building, quantity) for quantity in RATE_DIVISORS}
    return {name: None if by is None else scaled(q50, 1.0 / by) for name, by in divisors.items()}


def leakage_area_cm2(reference_line: PowerLaw, convention: AreaConvention) -> Estimate:
    """Return the leakage area (cm2) of a line in reference air.

    q/(Cd (2 dp/rho)**0.5), which is (C_L/3600) (rho0/2)**0.5 dp**(n - 0.5) / Cd (ISO 9972 and ASTM E779, from memory).
    """
    speed_m_s = math.sqrt(2.0 * convention.pressure_pa / REFERENCE_DENSITY_KG_M3)
    factor = _CM2_PER_M2 / (_SECONDS_PER_HOUR * convention.discharge_coefficient * speed_m_s)
    return scaled(flow_at(reference_line, convention.pressure_pa), factor)


def scaled(estimate: Estimate, factor: float) -> Estimate:
    """Return the estimate times a factor above 0 that is taken as exact."""
    return Estimate(estimate.value * factor, estimate.low * factor, estimate.high * factor, estimate.extrapolated)
