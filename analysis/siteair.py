"""The air on both sides of an envelope, and what it does to a leakage line."""

from __future__ import annotations

import math
from dataclasses import dataclass

from analysis.air import (
    REFERENCE_DENSITY_KG_M3,
    REFERENCE_TEMPERATURE_C,
    moist_air_density,
    pressure_at_altitude,
    viscosity_pa_s,
)
from analysis.records import Air, Building, Direction


@dataclass(frozen=True, slots=True)
class SiteAir:
    """The air on both sides of the envelope."""

    indoor_c: float
    outdoor_c: float
    indoor_kg_m3: float
    outdoor_kg_m3: float


def moist_site_air(air: Air, building: Building) -> SiteAir:
    """Return densities from temperature, humidity (dry where unknown) and barometric pressure or altitude."""
    pressure = air.barometric_pa if air.barometric_pa is not None else pressure_at_altitude(building.altitude_m)
    return SiteAir(
        indoor_c=air.indoor_c,
        outdoor_c=air.outdoor_c,
        indoor_kg_m3=moist_air_density(air.indoor_c, air.indoor_rh, pressure),
        outdoor_kg_m3=moist_air_density(air.outdoor_c, air.outdoor_rh, pressure),
    )


def leak_air(direction: Direction, air: SiteAir) -> tuple[float, float]:
    """Return temperature and density of the air that enters the leaks."""
    if direction is Direction.DEPRESSURIZE:
        return air.outdoor_c, air.outdoor_kg_m3
    return air.indoor_c, air.indoor_kg_m3


def to_reference(temperature_c: float, density_kg_m3: float) -> tuple[float, float]:
    """Return (a, b) such that ln C in reference air is ln C + a + b n, by density and viscosity.

    C0 = C (mu/mu0)**(2 n - 1) (rho/rho0)**(1 - n) with the air that enters the leaks (ASTM E779, from memory; Carrie
    2014).
    """
    ln_mu = math.log(viscosity_pa_s(temperature_c) / viscosity_pa_s(REFERENCE_TEMPERATURE_C))
    ln_rho = math.log(density_kg_m3 / REFERENCE_DENSITY_KG_M3)
    return ln_rho - ln_mu, 2.0 * ln_mu - ln_rho
