"""The scenarios that come with the program: TOML files beside this module. All their data are invented."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np

from simulators.filetable import FileTable, named_file, read_file
from simulators.gauge import MOST_TAPS, MOST_ZONES, GaugeModel
from simulators.happenings import HAPPENINGS, LinkHappening, Site
from simulators.house import House
from simulators.houses import RANGE_NAMES, house_names, load_house
from simulators.memory import Faults
from simulators.plant import Event
from simulators.random_house import HIGHEST_N50, random_house
from simulators.rig import PROTOCOLS
from simulators.rigging import Rigging, TapPlace
from simulators.scenario import LinkEvent, Plug, Scenario

FORMAT = "airseam-scenario-1"
BY_CHANCE = "by-chance"
LATEST_S = 86_400.0
_FOLDER = Path(__file__).parent


def scenario_names() -> tuple[str, ...]:
    """Return the ids of all scenarios, sorted."""
    return tuple(sorted(path.stem for path in _FOLDER.glob("*.toml")))


def load_scenario(id_or_path: str) -> Scenario:
    """Return a scenario by its id, or from a file of one's own that ends in .toml.

    Raises `InvalidFile`, a `ValueError`, with file, line and key; an unknown id is answered with those there are.
    """
    return read_scenario(*named_file("scenario", id_or_path, _FOLDER, scenario_names()))


def read_scenario(name: str, text: str, file: str = "") -> Scenario:
    """Read the text of a scenario file; raises `InvalidFile` with file, line and key."""
    top = read_file(text, file or f"{name}.toml", FORMAT)
    house, rigging, protocol = read_place(top)
    site = site_of(house, rigging)
    events: list[Event] = []
    links: list[LinkEvent] = []
    for table in top.tables("event"):
        for event in read_events(table, site):
            if isinstance(event, Event):
                events.append(event)
            else:
                links.append(event)
    title, note, task = top.text("title"), top.text("note"), top.text("task", "")
    top.finish()
    return Scenario(name, title, note, task, house, rigging, protocol, tuple(events), tuple(links))


def read_place(top: FileTable) -> tuple[House, Rigging, str]:
    """Read house, weather, rig and gauge of a scenario or exercise; the last one is the protocol of the gauge."""
    house = _weather(top.optional("weather"), _house(top))
    rigging, protocol = _rigging(top.optional("rig"), house, _gauge(top.optional("gauge")))
    return house, rigging, protocol


def site_of(house: House, rigging: Rigging) -> Site:
    """Return where events happen."""
    channels = (item.name for item in rigging.gauge.channels(rigging.taps, rigging.zones))
    return Site(house, tuple(name for name in channels if name.startswith("p")))


def _house(top: FileTable) -> House:
    name = top.choice("house", (*house_names(), BY_CHANCE))
    if name == BY_CHANCE:
        house = random_house(np.random.default_rng(top.whole("house_seed", 1, at_least=0, at_most=2**31)))
    else:
        house = load_house(name)
    if top.has("fitted"):
        house = replace(house, fitted=top.choice("fitted", RANGE_NAMES))
    if top.has("n50_per_h"):
        house = replace(house, n50_per_h=top.number("n50_per_h", above=0.0, at_most=10 * HIGHEST_N50))
    return house


def _weather(table: FileTable | None, house: House) -> House:
    if table is None:
        return house
    climate = house.climate
    climate = replace(
        climate,
        wind_m_s=table.number("wind_m_s", climate.wind_m_s, at_least=0.0, at_most=30.0),
        wind_from_deg=table.number("wind_from_deg", climate.wind_from_deg, at_least=0.0, at_most=360.0),
        shelter=table.number("shelter", climate.shelter, at_least=0.0, at_most=2.0),
        indoor_c=table.number("indoor_c", climate.indoor_c, at_least=-50.0, at_most=60.0),
        outdoor_c=table.number("outdoor_c", climate.outdoor_c, at_least=-50.0, at_most=60.0),
        barometric_pa=table.number("barometric_pa", climate.barometric_pa, at_least=50_000.0, at_most=110_000.0),
    )
    table.finish()
    return replace(house, climate=climate)


def _rigging(table: FileTable | None, house: House, gauge: GaugeModel) -> tuple[Rigging, str]:
    if table is None:
        return Rigging(zones=min(len(house.zones), MOST_ZONES), gauge=gauge), PROTOCOLS[0]
    protocol = table.choice("protocol", PROTOCOLS, PROTOCOLS[0])
    many = protocol == PROTOCOLS[0]
    taps = table.whole("taps", 1, at_least=1, at_most=MOST_TAPS if many else 1)
    rise_m = table.number("hose_rise_m", 0.0, at_least=-50.0, at_most=50.0)
    rigging = Rigging(
        taps=taps,
        tap=TapPlace(table.choice("tap", tuple(TapPlace), TapPlace.GROUND)),
        zones=min(len(house.zones), MOST_ZONES) if many else 0,
        hose_rise_m=(rise_m,) * taps if rise_m else (),
        hose_c=table.number("hose_c", at_least=-50.0, at_most=60.0) if table.has("hose_c") else None,
        gauge=gauge,
        element_sd=table.number("element_sd", 0.0, at_least=0.0, at_most=0.2),
    )
    table.finish()
    return rigging, protocol


def _gauge(table: FileTable | None) -> GaugeModel:
    usual = GaugeModel()
    if table is None:
        return usual
    model = GaugeModel(
        gain_sd=table.number("gain_sd", usual.gain_sd, at_least=0.0, at_most=0.2),
        noise_pa=table.number("noise_pa", usual.noise_pa, at_least=0.0, at_most=10.0),
        resolution_pa=table.number("resolution_pa", usual.resolution_pa, at_least=0.001, at_most=5.0),
        zero_sd_pa=table.number("zero_sd_pa", usual.zero_sd_pa, at_least=0.0, at_most=50.0),
        zero_walk_pa=table.number("zero_walk_pa", usual.zero_walk_pa, at_least=0.0, at_most=1.0),
        hose_lag_s=table.number("hose_lag_s", usual.hose_lag_s, at_least=0.01, at_most=30.0),
        output_s=table.number("output_s", usual.output_s, at_least=0.1, at_most=1.0),
        lost_share=table.number("lost_share", usual.lost_share, at_least=0.0, at_most=1.0),
    )
    table.finish()
    return model


def read_events(table: FileTable, site: Site) -> list[Event | LinkEvent]:
    """Return what one table asks for: the event, and that which undoes it at `until_s`."""
    at_s = table.number("at_s", at_least=0.0, at_most=LATEST_S)
    over_s = table.number("over_s", 0.0, at_least=0.0, at_most=LATEST_S)
    until_s = table.number("until_s", above=at_s + over_s, at_most=LATEST_S) if table.has("until_s") else None
    happening = HAPPENINGS[table.choice("what", tuple(HAPPENINGS))](table, site)
    table.finish()
    if isinstance(happening, LinkHappening):
        if over_s:
            table.fail("over_s", "a cable has no halfway: leave it out")
        events: list[Event | LinkEvent] = [LinkEvent(at_s, happening.instrument, happening.faults or Plug.PULL)]
        if until_s is not None:
            back = Faults() if happening.faults else Plug.PUT_BACK
            events.append(LinkEvent(until_s, happening.instrument, back))
        return events
    events = [Event(at_s, at_s + over_s, happening.action)]
    if until_s is not None:
        if happening.undo is None:
            table.fail("until_s", "this ends by itself: leave it out")
        events.append(Event(until_s, until_s + over_s, happening.undo))
    return events
