"""The infiltration credit of ASHRAE 62.2: how much fresh air the leaks count for beside a fan.

Editions differ, and so does what a code adopts of them; the form used is named with each function.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from analysis.bounds import above_zero, not_negative, within
from analysis.datafile import read_entries, shipped_text, take_provenance
from analysis.errors import InvalidInput
from analysis.fields import Fields
from analysis.infiltration.model import Infiltration, infiltration
from analysis.provenance import Provenance
from analysis.records import Estimate

NOT_NEEDED_BELOW_M3_H = 7.0 * 3.6
"""A fan is not required below this (7 l/s; NREL OpenStudio-HPXML)."""

_M3_H_PER_L_S = 3.6
_M3_H_PER_CFM = 1.699010796
_FT2_PER_M2 = 1.0 / 0.09290304
_REFERENCE_HEIGHT_M = 2.5
_HEIGHT_EXPONENT = 0.4
_FACTORS = (0.05, 3.0)


@dataclass(frozen=True, slots=True)
class Station:
    """Weather and shielding factor of a weather station."""

    id: str
    title: str
    factor: float
    provenance: Provenance


def credit(q50_m3_h: Estimate, height_m: float, weather_factor: float, volume_m3: float | None = None) -> Infiltration:
    """Return the credit by ASHRAE 62.2-2019, equation 4-3: 0.052 Q50 wsf (H/2.5 m)**0.4.

    Q50 is the flow at 50 Pa, H the height from the lowest to the highest leak, wsf the weather and shielding factor of
    the station (form read in a public preprocessor for EnergyPlus). Raises `InvalidInput`.
    """
    factor = 0.052 * _height_factor(height_m) * within(weather_factor, *_FACTORS, "weather_factor")
    return infiltration("credit-62.2", q50_m3_h.times(factor), volume_m3)


def credit_by_leakage_m3_h(normalized_leakage: float, floor_area_m2: float, weather_factor: float) -> float:
    """Return the credit by ASHRAE 62.2-2016, equation 4.5a: NL wsf A_floor/7.3 (cfm and ft2; NREL OpenStudio-HPXML)."""
    above_zero(normalized_leakage, "normalized_leakage")
    floor_ft2 = above_zero(floor_area_m2, "floor_area_m2") * _FT2_PER_M2
    return normalized_leakage * within(weather_factor, *_FACTORS, "weather_factor") * floor_ft2 / 7.3 * _M3_H_PER_CFM


def normalized_leakage(
    ela4_cm2: float, floor_area_m2: float, height_m: float, height_exponent: float = _HEIGHT_EXPONENT
) -> float:
    """Return NL = 1000 (ELA/A_floor) (H/2.5 m)**z.

    z is 0.4 in ASHRAE 62.2 (NREL OpenStudio-HPXML) and was 0.3 in ASHRAE 119 and 136 (from memory).
    """
    leakage_m2 = above_zero(ela4_cm2, "ela4_cm2") / 1e4
    height = above_zero(height_m, "height_m") / _REFERENCE_HEIGHT_M
    return 1000.0 * leakage_m2 / above_zero(floor_area_m2, "floor_area_m2") * float(height**height_exponent)


def required_ventilation_m3_h(floor_area_m2: float, bedrooms: int) -> float:
    """Return what ASHRAE 62.2 asks for as a whole: 0.15 A + 3.5 (bedrooms + 1) l/s (NREL OpenStudio-HPXML)."""
    above_zero(floor_area_m2, "floor_area_m2")
    return (0.15 * floor_area_m2 + 3.5 * (not_negative(bedrooms, "bedrooms") + 1)) * _M3_H_PER_L_S


def fan_flow_m3_h(required_m3_h: float, credit_m3_h: float, *, balanced: bool, exterior_share: float = 1.0) -> float:
    """Return what a fan has to do: Qtot - phi Qinf A_ext, at least 0.

    phi is 1 for supply and exhaust in balance, else Qinf/Qtot; A_ext is the share of the boundary that is exterior, 1
    for a detached house (NREL OpenStudio-HPXML). Older editions capped the credit of existing dwellings (from memory).
    """
    above_zero(required_m3_h, "required_m3_h")
    not_negative(credit_m3_h, "credit_m3_h")
    share = within(exterior_share, 0.0, 1.0, "exterior_share")
    counted = credit_m3_h if balanced else credit_m3_h * min(credit_m3_h / required_m3_h, 1.0)
    return max(required_m3_h - counted * share, 0.0)


@cache
def stations() -> tuple[Station, ...]:
    """Return the few weather stations that come with the program."""
    entries = read_entries(shipped_text(__package__, "weather.toml"), "weather.toml", "station")["station"]
    return tuple(map(_station, entries))


def weather_factor(station_id: str) -> float:
    """Return the weather and shielding factor of a station; raises `InvalidInput` that lists those there are."""
    for station in stations():
        if station.id == station_id:
            return station.factor
    raise InvalidInput("station", station_id, f"one of {', '.join(item.id for item in stations())} is needed")


def _height_factor(height_m: float) -> float:
    return float((above_zero(height_m, "height_m") / _REFERENCE_HEIGHT_M) ** _HEIGHT_EXPONENT)


def _station(fields: Fields) -> Station:
    read = Station(
        id=fields.text("id"),
        title=fields.text("title"),
        factor=within(fields.number("factor"), *_FACTORS, fields.path("factor")),
        provenance=take_provenance(fields),
    )
    fields.finish()
    return read
