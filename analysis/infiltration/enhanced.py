"""The ASHRAE enhanced model (AIM-2, Walker and Wilson 1998): stack and wind on the leakage line itself.

Qs = c Cs |dT|**n, Qw = c Cw (s U)**(2 n), Q = (Qs**2 + Qw**2)**0.5 with c in m3/(s Pa**n) and the wind at the eaves
(EnergyPlus engineering reference and input/output reference, group airflow; ASHRAE Fundamentals 2001, chapter 26).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from analysis.bounds import above_zero, within
from analysis.infiltration.model import Infiltration, infiltration
from analysis.infiltration.site import (
    Foundation,
    Shelter,
    Site,
    Weather,
    check_drive,
    check_site,
    check_weather,
    eaves_wind_m_s,
)
from analysis.powerlaw import log_estimate
from analysis.records import PowerLaw

_STACK = {False: (0.054, 0.078, 0.098), True: (0.069, 0.089, 0.107)}
"""Cs by flue and storeys, (Pa/K)**n (EnergyPlus input/output reference)."""
_WIND = {
    (Foundation.BASEMENT_OR_SLAB, False): (0.156, 0.170, 0.170),
    (Foundation.BASEMENT_OR_SLAB, True): (0.142, 0.156, 0.167),
    (Foundation.CRAWL_SPACE, False): (0.128, 0.142, 0.151),
    (Foundation.CRAWL_SPACE, True): (0.128, 0.142, 0.154),
}
"""Cw by foundation, flue and storeys, (Pa s2/m2)**n (source as above)."""
_SHELTER = {
    False: ((1.00, 0.90, 0.70, 0.50, 0.30),) * 3,
    True: ((1.10, 1.02, 0.86, 0.70, 0.54), (1.07, 0.98, 0.81, 0.64, 0.47), (1.06, 0.97, 0.79, 0.61, 0.43)),
}
"""Shelter factor by flue, storeys and shelter class (source as above)."""

_SECONDS_PER_HOUR = 3600.0
_GRAVITY = 9.80665
_EXPONENTS = (0.3, 1.5)


@dataclass(frozen=True, slots=True)
class Coefficients:
    """Stack coefficient ((Pa/K)**n), wind coefficient ((Pa s2/m2)**n) and shelter factor."""

    stack: float
    wind: float
    shelter: float


@dataclass(frozen=True, slots=True)
class LeakSplit:
    """Shares of the leakage without the flue: ceiling and floor; the walls have the rest. `flue` is its own share.

    `flue_height` is the height of its top over that of the house, 1.5 being typical (Walker and Wilson 1998, read in a
    public weather model). The other defaults are those of NREL OpenStudio-HPXML.
    """

    ceiling: float = 0.25
    floor: float = 0.25
    flue: float = 0.0
    flue_height: float = 1.5


def enhanced_infiltration(line: PowerLaw, site: Site, weather: Weather, volume_m3: float | None = None) -> Infiltration:
    """Return the natural air flow by the enhanced model; the line is in reference air. Raises `InvalidInput`."""
    check_site(site)
    return enhanced_by_coefficients(line, table_coefficients(site), site, weather, volume_m3)


def enhanced_by_coefficients(
    line: PowerLaw, coefficients: Coefficients, site: Site, weather: Weather, volume_m3: float | None = None
) -> Infiltration:
    """Return the same from coefficients of one's own, such as `coefficients_of` gives."""
    check_weather(weather)
    n = within(line.n, *_EXPONENTS, "n")
    difference, wind = weather.temperature_difference_k, coefficients.shelter * eaves_wind_m_s(site, weather)
    stack_part = coefficients.stack * difference**n
    wind_part = coefficients.wind * wind ** (2.0 * n)
    drive = check_drive(math.hypot(stack_part, wind_part))
    # d ln Q/d n, from the shares of the squares
    slope = (stack_part / drive) ** 2 * _ln(difference) + (wind_part / drive) ** 2 * 2.0 * _ln(wind)
    variance = line.var_ln_c + 2.0 * slope * line.cov_ln_c_n + slope**2 * line.var_n
    flow = log_estimate(math.exp(line.ln_c) * drive, max(variance, 0.0), line.dof, extrapolated=True)
    return infiltration("enhanced", flow, volume_m3)


def table_coefficients(site: Site) -> Coefficients:
    """Return the coefficients of the tables for a site."""
    at = site.storeys - 1
    return Coefficients(
        stack=_STACK[site.flue][at],
        wind=_WIND[site.foundation, site.flue][at],
        shelter=_SHELTER[site.flue][at][Shelter(site.shelter) - 1],
    )


def coefficients_of(
    split: LeakSplit, n: float, height_m: float, density_kg_m3: float, shelter: float, indoor_c: float = 20.0
) -> Coefficients:
    """Return the coefficients from the split of the leaks, on a basement or slab (equations of Walker and Wilson 1998).

    Read in NREL OpenStudio-HPXML, airflow.rb. `shelter` is that of the walls; the flue stands free above the roof.
    Raises `InvalidInput`.
    """
    _check_split(split)
    n = within(n, 0.5, 1.0, "n")
    above_zero(height_m, "height_m")
    above_zero(density_kg_m3, "density_kg_m3")
    stack_pa_k = density_kg_m3 * _GRAVITY * height_m / (indoor_c + 273.15)
    return Coefficients(
        stack=_stack_factor(split, n) * float(stack_pa_k**n),
        wind=_wind_factor(split, n) * float((density_kg_m3 / 2.0) ** n),
        shelter=shelter * (1.0 - split.flue) + 1.5 * split.flue,
    )


def _shape(split: LeakSplit) -> tuple[float, float, float]:
    """Return R (ceiling and floor), X (ceiling less floor) and Y (flue) as shares of all leaks."""
    rest = 1.0 - split.flue
    return (split.ceiling + split.floor) * rest, (split.ceiling - split.floor) * rest, split.flue


def _stack_factor(split: LeakSplit, n: float) -> float:
    r, x, y = _shape(split)
    m = min((x + (2.0 * n + 1.0) * y) ** 2 / (2.0 - r), 1.0)
    return (1.0 + n * r) / (n + 1.0) * float((0.5 - 0.5 * m**1.2) ** (n + 1.0)) + _flue_part(split, n)


def _flue_part(split: LeakSplit, n: float) -> float:
    r, x, y = _shape(split)
    if y == 0.0:
        return 0.0
    above = split.flue_height - 1.0
    critical = r + 2.0 * (1.0 - r - y) / (n + 1.0) - 2.0 * y * above**n
    loss = 3.0 * (critical - x) ** 2 * r ** (1.0 - n) / (2.0 * (split.flue_height + 1.0))
    return float(n * y * above ** ((3.0 * n - 1.0) / 3.0) * (1.0 - loss))


def _wind_factor(split: LeakSplit, n: float) -> float:
    r, x, y = _shape(split)
    j = (x + r + 2.0 * y) / 2.0
    house = 0.19 * (2.0 - n) * (1.0 - ((x + r) / 2.0) ** (1.5 - y))
    return float(house - y / 4.0 * (j - 2.0 * y * j**4))


def _check_split(split: LeakSplit) -> None:
    within(split.ceiling, 0.0, 1.0, "split.ceiling")
    within(split.floor, 0.0, 1.0 - split.ceiling, "split.floor")
    within(split.flue, 0.0, 0.9, "split.flue")
    within(split.flue_height, 1.0, 10.0, "split.flue_height")


def _ln(value: float) -> float:
    return math.log(value) if value > 0.0 else 0.0
