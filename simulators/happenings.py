"""What can happen in a scenario, by the word for it: the keys that describe it, the action, and how it is undone."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from simulators import faults
from simulators.element import RANGES
from simulators.filetable import FileTable
from simulators.hoses import Hose
from simulators.house import WALLS, Facade, House
from simulators.memory import Faults
from simulators.plant import Action

INSTRUMENTS = ("gauge", "fan")
MOST_WIND_M_S = 30.0


@dataclass(frozen=True, slots=True)
class Happening:
    """An action on the plant and the one that undoes it, None when it cannot be undone."""

    action: Action
    undo: Action | None = None


@dataclass(frozen=True, slots=True)
class LinkHappening:
    """Something about the cable of an instrument: `faults`, or None when it is pulled out."""

    instrument: str
    faults: Faults | None


@dataclass(frozen=True, slots=True)
class Site:
    """Where it happens: the house, and the pressure channels of the gauge that have a hose."""

    house: House
    channels: tuple[str, ...]


Reader = Callable[[FileTable, Site], Happening | LinkHappening]


def _opening(table: FileTable, site: Site) -> Happening:
    wall = Facade(table.choice("facade", WALLS))
    area_m2 = table.number("area_m2", above=0.0, at_most=10.0)
    return Happening(faults.opened(wall, area_m2), faults.opened(wall, 0.0))


def _flue(table: FileTable, site: Site) -> Happening:
    area_m2 = table.number("area_m2", above=0.0, at_most=1.0)
    return Happening(faults.flue_opened(area_m2), faults.flue_opened(0.0))


def _exhaust(table: FileTable, site: Site) -> Happening:
    flow_m3_h = table.number("flow_m3_h", above=0.0, at_most=5000.0)
    return Happening(faults.exhaust_on(flow_m3_h), faults.exhaust_on(0.0))


def _leaks(table: FileTable, site: Site) -> tuple[str, ...]:
    names = table.texts("leaks", ())
    known = tuple(leak.name for leak in site.house.leaks)
    for name in names:
        if name not in known:
            table.fail("leaks", f"leaks of this house are needed: {', '.join(known)}; not {name!r}")
    return names


def _came_off(table: FileTable, site: Site) -> Happening:
    names = _leaks(table, site)
    times = table.number("times", above=1.0, at_most=1000.0)
    return Happening(faults.came_off(times, names), faults.came_off(1.0, names))


def _sealing(table: FileTable, site: Site) -> Happening:
    names = _leaks(table, site)
    share = table.number("share", above=0.0, at_most=1.0)
    return Happening(faults.sealed(share, names), faults.sealed(0.0, names))


def _zone_door(table: FileTable, site: Site) -> Happening:
    known = tuple(zone.name for zone in site.house.zones)
    if not known:
        table.fail("zone", "this house has no zones")
    name = table.choice("zone", known)
    times = table.number("times", faults.DOOR_OPEN, above=1.0, at_most=1000.0)
    return Happening(faults.zone_opened(name, times), faults.zone_opened(name, 1.0))


def _hose(table: FileTable, site: Site) -> Happening:
    channel = table.choice("channel", site.channels, "p1")
    state = Hose(table.choice("state", tuple(Hose)))
    return Happening(faults.hose(channel, state), faults.hose(channel, Hose.SOUND))


def _swapped(table: FileTable, site: Site) -> Happening:
    return Happening(faults.hoses_swapped(True), faults.hoses_swapped(False))


def _jet(table: FileTable, site: Site) -> Happening:
    channel = table.choice("channel", site.channels, "p1")
    jet_pa = table.number("jet_pa", at_least=-100.0, at_most=100.0)
    return Happening(faults.hose_in_jet(channel, jet_pa), faults.hose_in_jet(channel, 0.0))


def _obstructed(table: FileTable, site: Site) -> Happening:
    share = table.number("share", above=0.0, at_most=0.95)
    return Happening(faults.fan_obstructed(share), faults.fan_obstructed(0.0))


def _tripped(table: FileTable, site: Site) -> Happening:
    return Happening(faults.fan_tripped(True), faults.fan_tripped(False))


def _range(table: FileTable, site: Site) -> Happening:
    name = table.choice("range", tuple(item.name for item in RANGES))
    return Happening(faults.range_changed(name), faults.range_changed(site.house.fitted))


def _wind(table: FileTable, site: Site) -> Happening:
    speed_m_s = table.number("speed_m_s", at_least=0.0, at_most=MOST_WIND_M_S)
    from_deg = table.number("from_deg", at_least=0.0, at_most=360.0) if table.has("from_deg") else None
    return Happening(
        faults.wind_changes(speed_m_s, from_deg),
        faults.wind_changes(site.house.climate.wind_m_s, site.house.climate.wind_from_deg),
    )


def _gust(table: FileTable, site: Site) -> Happening:
    return Happening(faults.gust(table.number("speed_m_s", above=0.0, at_most=MOST_WIND_M_S)))


def _outdoors(table: FileTable, site: Site) -> Happening:
    celsius = table.number("celsius", at_least=-50.0, at_most=60.0)
    return Happening(faults.outdoors_becomes(celsius), faults.outdoors_becomes(site.house.climate.outdoor_c))


def _heating(table: FileTable, site: Site) -> Happening:
    celsius = table.number("celsius", at_least=-20.0, at_most=60.0)
    return Happening(faults.heated(celsius), faults.heated(site.house.climate.indoor_c))


def _frozen(table: FileTable, site: Site) -> Happening:
    return Happening(faults.gauge_frozen(True), faults.gauge_frozen(False))


def _zeroes(table: FileTable, site: Site) -> Happening:
    return Happening(faults.gauge_zeroes())


def _drift(table: FileTable, site: Site) -> Happening:
    channel = table.choice("channel", site.channels, "p1")
    pascal = table.number("pa", at_least=-500.0, at_most=500.0)
    return Happening(faults.gauge_drifts(pascal, channel), faults.gauge_drifts(-pascal, channel))


def _lost(table: FileTable, site: Site) -> Happening:
    share = table.number("share", above=0.0, at_most=1.0)
    return Happening(faults.readings_lost(share), faults.readings_lost(0.0))


def _unplugged(table: FileTable, site: Site) -> LinkHappening:
    return LinkHappening(table.choice("instrument", INSTRUMENTS), None)


def _silent(table: FileTable, site: Site) -> LinkHappening:
    return LinkHappening(table.choice("instrument", INSTRUMENTS), Faults(mute=True))


def _noisy(table: FileTable, site: Site) -> LinkHappening:
    every = table.whole("corrupt_every", 200, at_least=2, at_most=1_000_000)
    return LinkHappening(table.choice("instrument", INSTRUMENTS), Faults(corrupt_every=every))


def _slow(table: FileTable, site: Site) -> LinkHappening:
    delay_s = table.number("delay_s", above=0.0, at_most=60.0)
    return LinkHappening(table.choice("instrument", INSTRUMENTS), Faults(delay_s=delay_s))


HAPPENINGS: dict[str, Reader] = {
    "opening": _opening,
    "flue": _flue,
    "exhaust": _exhaust,
    "seal-off": _came_off,
    "sealing": _sealing,
    "zone-door": _zone_door,
    "hose": _hose,
    "hoses-swapped": _swapped,
    "hose-in-jet": _jet,
    "fan-obstructed": _obstructed,
    "fan-tripped": _tripped,
    "range-fitted": _range,
    "wind": _wind,
    "gust": _gust,
    "outdoors": _outdoors,
    "heating": _heating,
    "gauge-frozen": _frozen,
    "gauge-zeroes": _zeroes,
    "gauge-drift": _drift,
    "readings-lost": _lost,
    "unplugged": _unplugged,
    "silent": _silent,
    "line-noise": _noisy,
    "slow-line": _slow,
}
"""Every word that `what` of an event may have."""
