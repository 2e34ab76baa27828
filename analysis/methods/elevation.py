"""Conversions of the American methods: density from temperature and elevation, reference air by density and viscosity.

ASTM E779 (from memory): C0 = C (mu/mu0)**(2 n - 1) (rho/rho0)**(1 - n), with the air that enters the leaks.
"""

from __future__ import annotations

from analysis.air import STANDARD_PRESSURE_PA, density_at_elevation
from analysis.methods.method import Conversion
from analysis.records import Air, Building
from analysis.siteair import SiteAir, to_reference


def site_air(air: Air, building: Building) -> SiteAir:
    """Return dry-air densities by the elevation, or by the barometric pressure where that was read."""
    return SiteAir(
        indoor_c=air.indoor_c,
        outdoor_c=air.outdoor_c,
        indoor_kg_m3=_density(air.indoor_c, air, building),
        outdoor_kg_m3=_density(air.outdoor_c, air, building),
    )


def _density(temperature_c: float, air: Air, building: Building) -> float:
    if air.barometric_pa is None:
        return density_at_elevation(temperature_c, building.altitude_m)
    return density_at_elevation(temperature_c, 0.0) * air.barometric_pa / STANDARD_PRESSURE_PA


ELEVATION = Conversion(site_air=site_air, to_reference=to_reference)
