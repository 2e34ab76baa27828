"""Rules of thumb: a natural air change straight from that at 50 Pa. Cruder than the models, and so said."""

from __future__ import annotations

from dataclasses import replace
from enum import Enum

from analysis.bounds import above_zero, within
from analysis.errors import InvalidInput
from analysis.infiltration.model import Infiltration, infiltration
from analysis.records import Estimate

_TWENTY = 20.0
_HEIGHT = {1.0: 1.0, 1.5: 0.9, 2.0: 0.8, 3.0: 0.7}
"""Factor by storeys (from memory)."""
_CLIMATES = (10.0, 35.0)


class Exposure(Enum):
    """Shelter factor of the refined divisor (from memory)."""

    SHELTERED = 1.2
    NORMAL = 1.0
    EXPOSED = 0.9


class LeakSize(Enum):
    """Leak factor of the refined divisor, by the tightness of the house (from memory)."""

    TIGHT = 1.4
    NORMAL = 1.0
    LEAKY = 0.7


def by_twenty(q50_m3_h: Estimate, volume_m3: float) -> Infiltration:
    """Return the air change at 50 Pa divided by 20 (Kronvall and Persily; named in Sherman 1987)."""
    return _divided("twentieth", q50_m3_h, _TWENTY, volume_m3)


def by_divisor(
    q50_m3_h: Estimate,
    volume_m3: float,
    climate: float,
    storeys: float,
    exposure: Exposure = Exposure.NORMAL,
    leaks: LeakSize = LeakSize.NORMAL,
) -> Infiltration:
    """Return the air change at 50 Pa divided by climate, height, shelter and leak factors (Sherman 1987, from memory).

    The climate factor is about 14 to 26 in the United States. Raises `InvalidInput`.
    """
    within(climate, *_CLIMATES, "climate")
    if storeys not in _HEIGHT:
        raise InvalidInput("storeys", storeys, "1, 1.5, 2 or 3 is needed")
    divisor = climate * _HEIGHT[storeys] * exposure.value * leaks.value
    return _divided("divisor", q50_m3_h, divisor, volume_m3)


def by_design_pressure(q50_m3_h: Estimate, volume_m3: float, design_pa: float, share: float = 0.5) -> Infiltration:
    """Return share n50 (dp/50)**(2/3) (as in DIN 1946-6; read in CityEnergyAnalyst). Raises `InvalidInput`."""
    within(share, 0.01, 1.0, "share")
    divisor = 1.0 / (share * (above_zero(design_pa, "design_pa") / 50.0) ** (2 / 3))
    return _divided("design-pressure", q50_m3_h, divisor, volume_m3)


def by_facade_pressure(
    q_m3_h: Estimate, measured_pa: float, facade_pa: float, volume_m3: float | None = None, roof_share: float = 0.22
) -> Infiltration:
    """Return (1 + 0.22) q (dp_facade/dp)**0.65: the average rate of energy models of large buildings.

    `measured_pa` is the pressure of the flow; see `average_facade_pa`. Gowri, Winiarski and Jarnagin 2009 (PNNL-18898),
    as coded in NREL openstudio-standards; ASHRAE 90.1 appendix G has the whole factor as 0.112 of the rate at 75 Pa.
    """
    ratio = above_zero(facade_pa, "facade_pa") / above_zero(measured_pa, "measured_pa")
    factor = (1.0 + within(roof_share, 0.0, 1.0, "roof_share")) * float(ratio**0.65)
    return infiltration("facade-pressure", replace(q_m3_h.times(factor), extrapolated=True), volume_m3)


def average_facade_pa(
    wind_m_s: float = 4.47, density_kg_m3: float = 1.18, pressure_coefficient: float = 0.1617
) -> float:
    """Return 0.5 Cp rho U**2 (Pa), with the defaults of PNNL-18898 as coded in NREL openstudio-standards."""
    above_zero(wind_m_s, "wind_m_s")
    return 0.5 * pressure_coefficient * above_zero(density_kg_m3, "density_kg_m3") * wind_m_s**2


def _divided(model: str, q50_m3_h: Estimate, divisor: float, volume_m3: float) -> Infiltration:
    return infiltration(model, q50_m3_h.times(1.0 / divisor), volume_m3)
