"""House, shelter and weather, as the infiltration models want them."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum, IntEnum, StrEnum

from analysis.bounds import above_zero, not_negative, within
from analysis.errors import InvalidInput

STOREYS = (1, 2, 3)
STOREY_HEIGHT_M = 2.5


class Shelter(IntEnum):
    """Shelter class of the ASHRAE models."""

    NONE = 1
    """No obstructions."""
    ISOLATED = 2
    """Rural house, isolated."""
    ACROSS_STREET = 3
    """Buildings across the street."""
    LARGER_LOTS = 4
    """Urban, larger lots, buildings more than one house height away."""
    ADJACENT = 5
    """Immediately adjacent buildings."""


class Foundation(StrEnum):
    """What the house stands on."""

    BASEMENT_OR_SLAB = "basement or slab"
    CRAWL_SPACE = "crawl space"


class Terrain(Enum):
    """Terrain: thickness of the boundary layer (m) and exponent of the wind profile (NREL OpenStudio-HPXML)."""

    OPEN = (270.0, 0.14)
    SUBURB = (370.0, 0.22)
    CITY = (460.0, 0.33)


@dataclass(frozen=True, slots=True)
class Site:
    """House and surroundings. Without a height of the eaves, 2.5 m for each storey."""

    storeys: int
    shelter: Shelter
    flue: bool = False
    foundation: Foundation = Foundation.BASEMENT_OR_SLAB
    terrain: Terrain = Terrain.SUBURB
    eaves_m: float | None = None


@dataclass(frozen=True, slots=True)
class Weather:
    """Indoor minus outdoor temperature (a magnitude) and wind at a weather station: 10 m above open ground.

    `eaves_wind_m_s` is the undisturbed wind at the height of the eaves where that is known itself.
    """

    temperature_difference_k: float
    wind_m_s: float
    eaves_wind_m_s: float | None = None


def check_site(site: Site) -> None:
    """Raise `InvalidInput` for a site that the tables of the models do not hold."""
    if site.storeys not in STOREYS:
        raise InvalidInput("storeys", site.storeys, "1, 2 or 3 is needed: the models were made for low houses")
    if site.eaves_m is not None:
        above_zero(site.eaves_m, "eaves_m")


def check_weather(weather: Weather) -> None:
    """Raise `InvalidInput` for weather that is none."""
    not_negative(weather.temperature_difference_k, "temperature_difference_k")
    within(weather.wind_m_s, 0.0, 100.0, "wind_m_s", "m/s")
    if weather.eaves_wind_m_s is not None:
        within(weather.eaves_wind_m_s, 0.0, 100.0, "eaves_wind_m_s", "m/s")


def check_drive(drive: float) -> float:
    """Return what drives air through the leaks; raises `InvalidInput` where nothing does."""
    if drive <= 0.0:
        allowed = "a temperature difference or a wind above 0 is needed"
        raise InvalidInput("weather", drive, allowed, shown="still, with no temperature difference")
    return drive


def eaves_wind_m_s(site: Site, weather: Weather) -> float:
    """Return the wind at the eaves (m/s): as given, or by the profiles of station and site.

    U (delta_m/z_m)**a_m (z/delta_s)**a_s (NREL OpenStudio-HPXML, after ASHRAE Fundamentals).
    """
    if weather.eaves_wind_m_s is not None:
        return weather.eaves_wind_m_s
    height = site.eaves_m if site.eaves_m is not None else STOREY_HEIGHT_M * site.storeys
    station_thickness, station_exponent = Terrain.OPEN.value
    thickness, exponent = site.terrain.value
    return weather.wind_m_s * float((station_thickness / 10.0) ** station_exponent * (height / thickness) ** exponent)
