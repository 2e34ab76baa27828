"""Air as the simulator sees it: density and viscosity by formulas of its own.

They are independent of the program that tests the house, so that the simulator can catch a wrong one there.
Reference air is dry air of 20 degrees C at 101 325 Pa.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

FloatArray = npt.NDArray[np.float64]

GRAVITY_M_S2 = 9.80665
ZERO_CELSIUS_K = 273.15
STANDARD_PRESSURE_PA = 101_325.0
DRY_GAS_CONSTANT_J_KG_K = 287.055
VAPOUR_TO_DRY = 0.62198
"""Ratio of the molar masses of water and dry air."""


def density(celsius: FloatArray, relative_humidity: FloatArray, pressure_pa: FloatArray) -> FloatArray:
    """Return the density of moist air in kg/m3: two ideal gases side by side.

    `relative_humidity` is 0..1; saturation pressure over water by the Magnus form with the coefficients 611.2 Pa,
    17.62 and 243.12 degrees C (WMO guide to instruments, from memory).
    """
    saturation_pa = 611.2 * np.exp(17.62 * celsius / (243.12 + celsius))
    vapour_pa = relative_humidity * saturation_pa
    dry_equivalent_pa = pressure_pa - (1.0 - VAPOUR_TO_DRY) * vapour_pa
    return dry_equivalent_pa / (DRY_GAS_CONSTANT_J_KG_K * (celsius + ZERO_CELSIUS_K))


def viscosity(celsius: FloatArray) -> FloatArray:
    """Return the dynamic viscosity of air in Pa s: Sutherland's formula, 1.458e-6 and 110.4 K (from memory)."""
    kelvin = celsius + ZERO_CELSIUS_K
    return 1.458e-6 * kelvin**1.5 / (kelvin + 110.4)


REFERENCE_DENSITY_KG_M3 = float(density(np.array(20.0), np.array(0.0), np.array(STANDARD_PRESSURE_PA)))
REFERENCE_VISCOSITY_PA_S = float(viscosity(np.array(20.0)))
