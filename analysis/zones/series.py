"""Two leaks in series: from the house through a zone (attic, garage, crawl space) to outdoors.

The same flow passes both: C_hz (P_h - P_z)**n = C_zo P_z**n, with the pressures of house and zone against outdoors and
one exponent for both (conservation of mass, power law).
"""

from __future__ import annotations

from analysis.bounds import above_zero, within

EXPONENTS = (0.5, 1.0)
"""Between turbulent and laminar flow."""


def leakage_ratio(house_pa: float, zone_pa: float, n: float) -> float:
    """Return C_hz/C_zo = (P_z/(P_h - P_z))**n; raises `InvalidInput` for a zone outside house and outdoors."""
    above_zero(house_pa, "house_pa")
    above_zero(zone_pa, "zone_pa")
    above_zero(house_pa - zone_pa, "house_pa less zone_pa")
    return float((zone_pa / (house_pa - zone_pa)) ** within(n, *EXPONENTS, "n"))


def zone_pressure_pa(house_pa: float, ratio: float, n: float) -> float:
    """Return the pressure of the zone against outdoors for C_hz/C_zo: P_h r/(1 + r) with r = ratio**(1/n)."""
    share = float(above_zero(ratio, "ratio") ** (1.0 / within(n, *EXPONENTS, "n")))
    return above_zero(house_pa, "house_pa") * share / (1.0 + share)


def series_coefficient(house_zone: float, zone_outdoors: float, n: float) -> float:
    """Return the coefficient of both leaks together: C_s**(-1/n) = C_hz**(-1/n) + C_zo**(-1/n)."""
    power = -1.0 / within(n, *EXPONENTS, "n")
    one, other = above_zero(house_zone, "house_zone"), above_zero(zone_outdoors, "zone_outdoors")
    return float((one**power + other**power) ** (1.0 / power))
