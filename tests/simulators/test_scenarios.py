"""Scenario files: those that come along, what they make happen, and how mistakes in them are answered."""

from __future__ import annotations

from pathlib import Path

import pytest

import airseam
from acquisition.options import parser
from drivers.clock import seconds
from drivers.errors import LinkLost, PortMissing
from simulators.filetable import InvalidFile
from simulators.happenings import HAPPENINGS
from simulators.plant import Event
from simulators.rig import SimulatedRig
from simulators.scenario import LinkEvent, Plug
from simulators.scenarios import load_scenario, read_scenario, scenario_names
from tests.simulators.rigs import virtual_clock

HEAD = 'format = "airseam-scenario-1"\ntitle = "T"\nnote = "Invented data."\nhouse = "brook-end"\n'


def advance(rig: SimulatedRig, to_s: float) -> None:
    """Let the rig come to a time; asked now and then, or it takes the time for a computer's sleep."""
    while rig.clock.now_ns() < seconds(to_s):
        rig.clock.wait_until(min(seconds(to_s), rig.clock.now_ns() + seconds(20.0)))
        with rig.world.lock:
            rig.world.advance(rig.clock.now_ns())


def one(event: str) -> tuple[Event, ...]:
    return read_scenario("x", HEAD + "[rig]\ntaps = 4\n" + event).events


def test_there_are_scenarios_enough_to_teach_with() -> None:
    assert len(scenario_names()) >= 5
    words = {
        line.split('"')[1]
        for name in scenario_names()
        for line in (Path("simulators/scenarios") / f"{name}.toml").read_text(encoding="utf-8").splitlines()
        if line.startswith("what")
    }
    assert words <= set(HAPPENINGS)
    assert len(words) >= 12


@pytest.mark.parametrize("name", scenario_names())
def test_every_shipped_scenario_is_invented_and_starts(name: str) -> None:
    scenario = load_scenario(name)
    assert "nvented" in scenario.note
    assert scenario.task
    rig = scenario.rig(1, virtual_clock())
    rig.world.speed = 0.4
    advance(rig, 10.0)
    assert abs(rig.plant.pressure_pa[0]) < 150.0


@pytest.mark.walk
@pytest.mark.parametrize("name", scenario_names())
def test_every_shipped_scenario_runs_to_its_last_event(name: str) -> None:
    scenario = load_scenario(name)
    rig = scenario.rig(1, virtual_clock())
    rig.world.speed = 0.4
    last_s = max([event.end_s for event in scenario.events] + [60.0])
    advance(rig, last_s + 1.0)
    assert not rig.plant._events
    assert abs(rig.plant.pressure_pa[0]) < 150.0


def test_an_event_that_ends_leaves_the_house_as_it_was() -> None:
    rig = load_scenario("garage-door").rig(1, virtual_clock())
    flows = []
    for time_s in (290.0, 400.0, 430.0):
        advance(rig, time_s)
        flows.append(rig.true_q_m3_h(50.0, "depressurize"))
    assert flows[1] > 1.02 * flows[0]
    assert flows[2] == flows[0]


def test_a_cable_comes_off_and_is_put_back() -> None:
    rig = load_scenario("loose-cable").rig(1, virtual_clock())
    port = rig.open("sim:gauge")
    port.open()
    rig.clock.wait_until(seconds(139.0))
    port.write(b"READ?\n")
    rig.clock.wait_until(seconds(141.0))
    with pytest.raises(LinkLost):
        port.read(0.0)
    with pytest.raises(PortMissing):
        rig.open("sim:gauge").open()
    port.close()
    rig.clock.wait_until(seconds(153.0))
    again = rig.open("sim:gauge")
    again.open()
    again.write(b"*IDN?\n")
    rig.clock.wait_until(seconds(153.2))
    assert b"SCPI-GAUGE" in again.read(0.0)


EVENTS = {
    "opening": 'facade = "east"\narea_m2 = 0.02',
    "flue": "area_m2 = 0.02",
    "exhaust": "flow_m3_h = 200",
    "seal-off": "times = 2.0",
    "sealing": "share = 0.1",
    "zone-door": 'zone = "garage"',
    "hose": 'channel = "p4"\nstate = "wet"',
    "hoses-swapped": "",
    "hose-in-jet": "jet_pa = 5.0",
    "fan-obstructed": "share = 0.3",
    "fan-tripped": "",
    "range-fitted": 'range = "wide"',
    "wind": "speed_m_s = 5.0\nfrom_deg = 10.0",
    "gust": "speed_m_s = 5.0",
    "outdoors": "celsius = 0.0",
    "heating": "celsius = 25.0",
    "gauge-frozen": "",
    "gauge-zeroes": "",
    "gauge-drift": "pa = 1.0",
    "readings-lost": "share = 0.1",
    "unplugged": 'instrument = "gauge"',
    "silent": 'instrument = "fan"',
    "line-noise": 'instrument = "gauge"',
    "slow-line": 'instrument = "gauge"\ndelay_s = 0.2',
}


@pytest.mark.parametrize("what", HAPPENINGS)
def test_every_word_for_a_happening_can_be_read_done_and_undone(what: str) -> None:
    ends_itself = what in ("gust", "gauge-zeroes")
    until = "" if ends_itself else "until_s = 4.0\n"
    scenario = read_scenario(
        "x", f'{HEAD}[rig]\ntaps = 4\n[[event]]\nwhat = "{what}"\nat_s = 2.0\n{until}{EVENTS[what]}\n'
    )
    assert len(scenario.events) + len(scenario.link_events) == (1 if ends_itself else 2)
    rig = scenario.rig(1, virtual_clock())
    rig.world.speed = 0.4
    truths = []
    for time_s in (1.0, 3.0, 6.0):
        advance(rig, time_s)
        truths.append(rig.true_q_m3_h(50.0, "depressurize"))
    assert truths[2] == pytest.approx(truths[0], rel=1e-12)
    leaks = what in ("opening", "flue", "seal-off", "sealing", "zone-door")
    assert (truths[1] != pytest.approx(truths[0], rel=1e-6)) is leaks


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        ('house = "castle"\n', r"x\.toml, line 5: house: one of these is needed: mill-row.*by-chance; not 'castle'"),
        ('house = "mill-row"\n[weather]\nwind_m_s = -1\n', r"line 7: weather\.wind_m_s: a number at least 0"),
        ('house = "mill-row"\n[rig]\ntaps = 5\n', r"line 7: rig\.taps: a whole number at least 1 and at most 4"),
        ('house = "mill-row"\n[rig]\nprotocol = "lines"\ntaps = 2\n', r"line 8: rig\.taps: .*at most 1"),
        (
            'house = "mill-row"\n[[event]]\nat_s = 1\nwhat = "flood"\n',
            r"line 8: event\.what: one of these.*not 'flood'",
        ),
        (
            'house = "mill-row"\n[[event]]\nat_s = 1\nwhat = "fan-tripped"\n[[event]]\nat_s = -9\nwhat = "gust"\n',
            r"line 10: event\.at_s: a number at least 0 .*not -9",
        ),
        (
            'house = "mill-row"\n[[event]]\nat_s = 9\nuntil_s = 8\nwhat = "fan-tripped"\n',
            r"line 8: event\.until_s: a number greater than 9 .*not 8",
        ),
        (
            'house = "mill-row"\n[[event]]\nat_s = 1\nuntil_s = 9\nwhat = "gust"\nspeed_m_s = 3\n',
            r"line 8: event\.until_s: this ends by itself",
        ),
        ('house = "mill-row"\n[[event]]\nat_s = 1\nwhat = "zone-door"\n', r"event\.zone: this house has no zones"),
        (
            'house = "mill-row"\n[[event]]\nat_s = 1\nwhat = "hose"\nchannel = "p3"\nstate = "off"\n',
            r"line 9: event\.channel: one of these is needed: p1, p2; not 'p3'",
        ),
        (
            'house = "mill-row"\n[[event]]\nat_s = 1\nwhat = "sealing"\nshare = 0.5\nleaks = ["moat"]\n',
            r"line 10: event\.leaks: leaks of this house are needed: window frames.*not 'moat'",
        ),
        (
            'house = "mill-row"\n[[event]]\nat_s = 1\nover_s = 2\nwhat = "unplugged"\ninstrument = "fan"\n',
            r"line 8: event\.over_s: a cable has no halfway",
        ),
        (
            'house = "mill-row"\n[[event]]\nat_s = 1\nwhat = "gust"\nspeed_m_s = 3\nchannel = "p1"\n',
            r"line 10: event\.channel: unknown; the keys here are: at_s, over_s, speed_m_s",
        ),
        ('house = "mill-row"\nweather = 3\n', r"line 6: weather: a table \[weather\] is needed"),
    ],
)
def test_every_mistake_is_named_with_its_line(lines: str, said: str) -> None:
    head = '# A comment.\nformat = "airseam-scenario-1"\ntitle = "T"\nnote = "Invented data."\n'
    with pytest.raises(InvalidFile, match=said):
        read_scenario("x", head + lines)


def test_what_is_no_scenario_is_answered_in_a_sentence(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match=r"'flood'.*quiet-morning"):
        load_scenario("flood")
    with pytest.raises(InvalidFile, match=r"mine\.toml: a file that can be read is needed"):
        load_scenario(str(tmp_path / "mine.toml"))
    with pytest.raises(InvalidFile, match='format: "airseam-scenario-1" is needed, not None'):
        read_scenario("x", "")
    with pytest.raises(InvalidFile, match="no TOML"):
        read_scenario("x", "= =")


def test_a_test_can_be_made_in_a_scenario(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    words = ["test", "--job", str(tmp_path / "a.airseam"), "--rig", "sim:loose-cable"]
    site = airseam.site_of(parser(("mill-row",)).parse_args(words))
    assert site.spec.name == "Demo rig on Mill Row 8"
    assert airseam.main([*words, "--taps", "2"]) == 2
    assert "--taps is 2: a scenario brings this with it" in capsys.readouterr().err
    assert airseam.main([*words[:-1], "sim:flood"]) == 2
    assert "of a scenario, one of cold-and-tall" in capsys.readouterr().err


def test_a_file_of_ones_own_is_read(tmp_path: Path) -> None:
    file = tmp_path / "mine.toml"
    file.write_text(
        HEAD + '[[event]]\nwhat = "unplugged"\nat_s = 3\nuntil_s = 5\ninstrument = "fan"\n', encoding="utf-8"
    )
    scenario = load_scenario(str(file))
    assert scenario.id == "mine"
    assert scenario.link_events == (LinkEvent(3.0, "fan", Plug.PULL), LinkEvent(5.0, "fan", Plug.PUT_BACK))


def test_weather_and_rig_are_those_of_the_file() -> None:
    scenario = read_scenario(
        "x",
        HEAD + "n50_per_h = 3.0\n[weather]\noutdoor_c = -5.0\nshelter = 1.0\n"
        '[rig]\ntaps = 3\ntap = "facade"\nhose_rise_m = 2.0\nhose_c = 15.0\n[gauge]\ngain_sd = 0.01\n',
    )
    assert scenario.house.n50_per_h == 3.0
    assert scenario.house.climate.outdoor_c == -5.0
    assert scenario.rigging.hose_rise_m == (2.0, 2.0, 2.0)
    assert scenario.rigging.zones == 2
    assert scenario.rigging.gauge.gain_sd == 0.01
    rig = scenario.rig(1, virtual_clock())
    assert rig.rig_toml(rig.own_ports).count("envelope-pressure") == 3
