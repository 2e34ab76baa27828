"""The ASHRAE basic model (Sherman and Grimsrud 1980): stack and wind on the effective leakage area.

Q (l/s) = A_L (Cs |dT| + Cw U**2)**0.5 with A_L in cm2 at 4 Pa (EnergyPlus input/output reference, group airflow; ASHRAE
Fundamentals 2001, chapter 26).
"""

from __future__ import annotations

import math

from analysis.bounds import above_zero, within
from analysis.infiltration.model import Infiltration, infiltration
from analysis.infiltration.site import Shelter, Site, Weather, check_drive, check_site, check_weather
from analysis.records import Estimate

STACK = {1: 0.000145, 2: 0.000290, 3: 0.000435}
"""Cs by storeys, (l/s)2/(cm4 K) (source as above)."""
WIND = {
    Shelter.NONE: (0.000319, 0.000420, 0.000494),
    Shelter.ISOLATED: (0.000246, 0.000325, 0.000382),
    Shelter.ACROSS_STREET: (0.000174, 0.000231, 0.000271),
    Shelter.LARGER_LOTS: (0.000104, 0.000137, 0.000161),
    Shelter.ADJACENT: (0.000032, 0.000042, 0.000049),
}
"""Cw by shelter and storeys, (l/s)2/(cm4 (m/s)2) (source as above)."""

_M3_H_PER_L_S = 3.6
_GRAVITY = 9.80665
_SI_TO_TABLE = 0.01
"""(m3/s)2/m4 to (l/s)2/cm4."""


def basic_infiltration(
    ela4_cm2: Estimate, site: Site, weather: Weather, volume_m3: float | None = None
) -> Infiltration:
    """Return the natural air flow by the basic model, for the wind at the weather station. Raises `InvalidInput`."""
    check_site(site)
    check_weather(weather)
    return _of(ela4_cm2, STACK[site.storeys], WIND[site.shelter][site.storeys - 1], weather, volume_m3)


def basic_by_coefficients(
    ela4_cm2: Estimate, stack: float, wind: float, weather: Weather, volume_m3: float | None = None
) -> Infiltration:
    """Return the same from coefficients of one's own, such as `stack_coefficient` and `wind_coefficient` give."""
    check_weather(weather)
    return _of(ela4_cm2, above_zero(stack, "stack"), above_zero(wind, "wind"), weather, volume_m3)


def stack_coefficient(
    height_m: float, horizontal_share: float, neutral_level: float = 0.5, indoor_c: float = 20.0
) -> float:
    """Return Cs of a house of this height whose leaks lie in floor and ceiling with the share given.

    fs = (2/3) (1 + R/2) (2 b (1 - b))**0.5/(b**0.5 + (1 - b)**0.5), Cs = fs**2 g H/T, with the neutral level b as a
    share of the height (NREL OpenStudio-HPXML, airflow.rb).
    """
    above_zero(height_m, "height_m")
    share = within(horizontal_share, 0.0, 1.0, "horizontal_share")
    level = within(neutral_level, 0.01, 0.99, "neutral_level")
    shape = math.sqrt(2.0 * level * (1.0 - level)) / (math.sqrt(level) + math.sqrt(1.0 - level))
    fs = 2.0 / 3.0 * (1.0 + share / 2.0) * shape
    return _SI_TO_TABLE * fs**2 * _GRAVITY * height_m / (indoor_c + 273.15)


def wind_coefficient(
    horizontal_share: float, shelter_factor: float, height_m: float, site_profile: tuple[float, float]
) -> float:
    """Return Cw of a house with a shelter factor C' (about a third of that of the enhanced model).

    fw = C' (1 - R)**(1/3) f_t with f_t = alpha (H/10)**gamma; `site_profile` is (alpha, gamma): station 1.0, 0.15;
    rural 0.85, 0.20; suburb 0.67, 0.25; city 0.47, 0.35 (NREL OpenStudio-HPXML, airflow.rb).
    """
    above_zero(height_m, "height_m")
    share = within(horizontal_share, 0.0, 1.0, "horizontal_share")
    alpha, gamma = site_profile
    fw = above_zero(shelter_factor, "shelter_factor") * (1.0 - share) ** (1 / 3) * alpha * (height_m / 10.0) ** gamma
    return _SI_TO_TABLE * float(fw**2)


def _of(ela4_cm2: Estimate, stack: float, wind: float, weather: Weather, volume_m3: float | None) -> Infiltration:
    square = check_drive(stack * weather.temperature_difference_k + wind * weather.wind_m_s**2)
    drive = math.sqrt(square) * _M3_H_PER_L_S
    return infiltration("basic", ela4_cm2.times(drive), volume_m3)
