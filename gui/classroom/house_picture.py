"""A house of the class as the trainer sees it: plain data for the section that is drawn of it."""

from __future__ import annotations

from dataclasses import dataclass

from analysis.units import Display, Quantity, format_with_unit
from gui.words import mark, say
from simulators.classroom import Station
from simulators.house import FACADES, Facade

SLIGHT_M3_H = 0.5
NORTH, EAST, SOUTH, WEST, ROOF, FLOOR = FACADES
COMPASS = ("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west")
FROM = (
    mark("from the north"),
    mark("from the north-east"),
    mark("from the east"),
    mark("from the south-east"),
    mark("from the south"),
    mark("from the south-west"),
    mark("from the west"),
    mark("from the north-west"),
)
"""Where the wind comes from, clockwise."""


@dataclass(frozen=True, slots=True)
class LeakMark:
    """A leak: where it lies (`height` is its share of the height of the house), and what passes, out of it positive."""

    name: str
    facade: Facade
    height: float
    flow_m3_h: float
    times: float


@dataclass(frozen=True, slots=True)
class ZoneMark:
    """A zone with its pressure against outdoors."""

    name: str
    facade: Facade
    pressure_pa: float


@dataclass(frozen=True, slots=True)
class HousePicture:
    """One moment. Pressures are indoor minus outdoor; `begun_s` is None until the fan first turned."""

    name: str
    time_s: float
    pressure_pa: float
    fan_m3_h: float
    fan_speed: float
    blows_in: bool
    fan_facade: Facade
    fitted: str
    wind_m_s: float
    wind_from_deg: float
    indoor_c: float
    outdoor_c: float
    leaks: tuple[LeakMark, ...]
    zones: tuple[ZoneMark, ...]
    truth_m3_h: tuple[float, float]
    has_flue: bool
    paused: bool

    def wind_words(self, display: Display) -> str:
        """Where the wind comes from and how fast it is."""
        if self.wind_m_s < 0.05:
            return say("no wind")
        speed = format_with_unit(self.wind_m_s, Quantity.SPEED, display)
        return f"{speed} {say(FROM[round(self.wind_from_deg / 45.0) % 8])}"


def house_picture(station: Station) -> HousePicture:
    """Return a house as it is now."""
    rig = station.rig
    with rig.world.lock:
        plant = rig.plant
        leaks, air, house = plant.leaks, plant.interior.air, rig.house
        density = float(air.indoor_density[0])
        mass = leaks.each(plant.pressure_pa, plant.weather.facade_pa)[0]
        times = leaks.times[0]
        marks = tuple(
            LeakMark(
                leak.name,
                leak.facade,
                min(leak.height_m / house.height_m, 1.0),
                3600.0 * float(mass[at]) / density,
                float(times[at]),
            )
            for at, leak in enumerate(leaks.paths)
            if at < len(house.leaks) or float(times[at]) > 0.0
        )
        zones = tuple(
            ZoneMark(zone.name, zone.facade, float(plant.interior.zones.pressure_pa[0, at]))
            for at, zone in enumerate(house.zones)
        )
        return HousePicture(
            name=house.name,
            time_s=plant.time_s,
            pressure_pa=float(plant.pressure_pa[0]),
            fan_m3_h=3600.0 * float(plant.flow_m3_s[0]),
            fan_speed=float(plant.motor.speed[0]),
            blows_in=rig.world.direction > 0,
            fan_facade=house.fan_facade,
            fitted=plant.element.fitted[0],
            wind_m_s=float(plant.weather.speed_m_s[0]),
            wind_from_deg=float(plant.weather.from_deg[0]) % 360.0,
            indoor_c=float(air.indoor_c[0]),
            outdoor_c=float(air.outdoor_c[0]),
            leaks=marks,
            zones=zones,
            truth_m3_h=(rig.true_q_m3_h(50.0, "depressurize"), rig.true_q_m3_h(50.0, "pressurize")),
            has_flue=any(mark.facade is ROOF and mark.name.startswith("opening") for mark in marks),
            paused=rig.world.pace <= 0.0,
        )
