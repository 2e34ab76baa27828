"""Conversions of the American methods: density from temperature and elevation, reference air by density and viscosity.

ASTM E779 (from memory): C0 = C (mu/mu0)**(2 n - 1) (rho/rho0)**(1 - n), with the air that enters the leaks.
"""

from __future__ import annotations

import math

from analysis.air import (
    REFERENCE_DENSITY_KG_M3,
    REFERENCE_TEMPERATURE_C,
    STANDARD_PRESSURE_PA,
    density_at_elevation,
    viscosity_pa_s,
)
from analysis.methods.method import Conversion, SiteAir
from analysis.records import Air, Building


def site_air(air: Air, building: Building) -> SiteAir:
    """Return dry-air densities by the elevation, or by the barometric pressure where that was read."""
    return SiteAir(
        indoor_c=air.indoor_c,
        outdoor_c=air.outdoor_c,
        indoor_kg_m3=_density(air.indoor_c, air, building),
        outdoor_kg_m3=_density(air.outdoor_c, air, building),
    )


def to_reference(temperature_c: float, density_kg_m3: float) -> tuple[float, float]:
    """Return (a, b) such that ln C0 is ln C + a + b n."""
    ln_mu = math.log(viscosity_pa_s(temperature_c) / viscosity_pa_s(REFERENCE_TEMPERATURE_C))
    ln_rho = math.log(density_kg_m3 / REFERENCE_DENSITY_KG_M3)
    return ln_rho - ln_mu, 2.0 * ln_mu - ln_rho


def _density(temperature_c: float, air: Air, building: Building) -> float:
    if air.barometric_pa is None:
        return density_at_elevation(temperature_c, building.altitude_m)
    return density_at_elevation(temperature_c, 0.0) * air.barometric_pa / STANDARD_PRESSURE_PA


ELEVATION = Conversion(site_air=site_air, to_reference=to_reference)
