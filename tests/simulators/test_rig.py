"""The simulated rig as the front door sees it."""

from __future__ import annotations

import tomllib
from dataclasses import replace

import pytest

from drivers.clock import ScaledClock, seconds
from simulators.houses import house_names, load_house
from simulators.rig import SimulatedRig
from tests.simulators.rigs import virtual_clock, virtual_rig


@pytest.mark.parametrize("name", house_names())
def test_the_truth_is_the_n50_of_the_house_file(name: str) -> None:
    house = load_house(name)
    rig = SimulatedRig(house, 1, virtual_clock())
    assert SimulatedRig(replace(house, zones=()), 1, virtual_clock()).true_n50() == pytest.approx(house.n50_per_h)
    assert (rig.true_n50() > 1.2 * house.n50_per_h) is bool(house.zones)
    for direction in ("depressurize", "pressurize"):
        assert rig.true_q_m3_h(-25.0, direction) == rig.true_q_m3_h(25.0, direction)
        assert rig.true_q_m3_h(25.0, direction) < rig.true_q_m3_h(50.0, direction)


def test_a_wrong_direction_or_protocol_is_answered_with_those_there_are() -> None:
    with pytest.raises(ValueError, match=r"'sideways'.*depressurize, pressurize"):
        virtual_rig().true_q_m3_h(50.0, "sideways")
    with pytest.raises(ValueError, match=r"'smoke'.*scpi, lines"):
        virtual_rig("smoke")
    with pytest.raises(ValueError, match=r"'sim:cat'.*sim:gauge, sim:fan"):
        virtual_rig().open("sim:cat")


def test_air_and_building_are_what_somebody_would_write_down() -> None:
    rig = virtual_rig(wind_m_s=3.0)
    assert rig.air() == {
        "indoor_c": 21.0,
        "outdoor_c": 11.0,
        "indoor_rh": 0.45,
        "outdoor_rh": 0.75,
        "barometric_pa": 101325.0,
        "wind_m_s": 3.0,
    }
    assert rig.building()["name"] == "Mill Row 8"
    assert rig.building()["volume_m3"] == 300.0


@pytest.mark.parametrize("protocol", ["scpi", "lines"])
def test_the_rig_file_names_instruments_roles_and_ranges(protocol: str) -> None:
    rig = virtual_rig(protocol)
    table = tomllib.loads(rig.rig_toml({"gauge": "/dev/pts/3", "fan": "C:\\odd"}))
    assert table["format"] == "airseam-rig-1"
    assert table["simulated"] is True
    assert table["shutter"] is True
    assert "time_factor" not in table
    assert table["fitted"] == "narrow"
    gauge, fan = table["instrument"]
    assert gauge["profile"] == {"scpi": "scpi-gauge", "lines": "line-gauge"}[protocol]
    assert gauge["serial"] == {"scpi": "SG-0012", "lines": "LG-0007"}[protocol]
    assert gauge["port"] == "/dev/pts/3"
    assert gauge["channels"]["p1"] == "envelope-pressure"
    assert ("b1" in gauge["channels"]) is (protocol == "scpi")
    assert fan["profile"] == "scpi-fan"
    assert fan["port"] == "C:\\odd"
    narrow = next(item for item in table["range"] if item["name"] == "narrow")
    # 0.30 m3/s at 250 Pa, by hand.
    flow = narrow["coefficient_m3_h_pa_n"] * 250.0 ** narrow["exponent"]
    assert flow == pytest.approx(1080.0, rel=1e-6)
    assert [item["name"] for item in table["range"]] == ["wide", "middle", "narrow", "slim", "trickle"]


def test_the_rig_file_tells_how_fast_its_clock_runs() -> None:
    rig = SimulatedRig(load_house("mill-row"), 1, ScaledClock(20.0))
    assert tomllib.loads(rig.rig_toml(rig.own_ports))["time_factor"] == 20.0


def poll(rig: SimulatedRig, speed: float, ticks: int) -> list[bytes]:
    """Drive the fan and read the gauge ten times a second over the in-memory wires."""
    gauge, fan = rig.open("sim:gauge"), rig.open("sim:fan")
    gauge.open()
    fan.open()
    replies = []
    for _ in range(ticks):
        fan.write(f"FAN:SPEED {speed:.4f}\n".encode())
        gauge.write(b"READ?\n")
        rig.clock.wait_until(rig.clock.now_ns() + seconds(0.1))
        replies.append(gauge.read(0.0))
    gauge.close()
    fan.close()
    return replies


def test_over_its_wires_one_seed_reads_the_same_again() -> None:
    first, again, other = (poll(virtual_rig(seed=seed), 0.6, 300) for seed in (3, 3, 4))
    assert first == again
    assert first != other
    assert all(reply.endswith(b"\n") for reply in first)
    assert float(first[-1].split(b",")[0]) < -40.0
