"""Air: density, saturation, viscosity, and pressure at an altitude.

The ISO form of the density uses dry or moist ideal gas; the elevation form gives density from temperature and altitude
alone. Sources are named with each formula.
"""

from __future__ import annotations

import math

STANDARD_PRESSURE_PA = 101_325.0
REFERENCE_TEMPERATURE_C = 20.0
REFERENCE_DENSITY_KG_M3 = 1.2041
"""Dry air at 20 degC and 101 325 Pa, the reference of all methods here."""
REFERENCE_VISCOSITY_PA_S = 1.458e-6 * 293.15**1.5 / (293.15 + 110.4)

ZERO_C_IN_K = 273.15
_GAS_CONSTANT_DRY = 287.055
_VAPOUR_DEFICIT = 0.37802


def saturation_pressure_pa(temperature_c: float) -> float:
    """Return the pressure of saturated water vapour over water (Pa).

    Formula of ISO 9972 (from memory).
    """
    kelvin = temperature_c + ZERO_C_IN_K
    return math.exp(59.484085 - 6790.4985 / kelvin - 5.02802 * math.log(kelvin))


def moist_air_density(temperature_c: float, rh: float | None, pressure_pa: float) -> float:
    """Return the density of air (kg/m3) at a relative humidity of 0..1; dry air where that is None.

    Formula of ISO 9972 (from memory).
    """
    vapour_pa = 0.0 if not rh else rh * saturation_pressure_pa(temperature_c)
    return (pressure_pa - _VAPOUR_DEFICIT * vapour_pa) / (_GAS_CONSTANT_DRY * (temperature_c + ZERO_C_IN_K))


def pressure_at_altitude(altitude_m: float) -> float:
    """Return the pressure of the standard atmosphere (Pa) at an altitude below 11 000 m (ISO 2533, from memory)."""
    ratio: float = (1.0 - 0.0065 * altitude_m / 288.15) ** 5.25588
    return STANDARD_PRESSURE_PA * ratio


def density_at_elevation(temperature_c: float, elevation_m: float) -> float:
    """Return the density of air (kg/m3) from temperature and elevation alone.

    Formula of ASTM E779 with its rounded 273 and 293 K (from memory).
    """
    ratio: float = (1.0 - 0.0065 * elevation_m / 293.0) ** 5.2553
    return REFERENCE_DENSITY_KG_M3 * ratio * 293.0 / (temperature_c + 273.0)


def sutherland_viscosity_pa_s(kelvin: float) -> float:
    """Return the dynamic viscosity of air (Pa s) by Sutherland's formula (constants of the standard atmosphere)."""
    return 1.458e-6 * math.sqrt(kelvin) / (1.0 + 110.4 / kelvin)


def viscosity_pa_s(temperature_c: float) -> float:
    """Return the dynamic viscosity of air (Pa s)."""
    return sutherland_viscosity_pa_s(temperature_c + ZERO_C_IN_K)
