"""Several outdoor taps, zones with a hose, hoses up a wall: what the gauge reads."""

from __future__ import annotations

import tomllib
from dataclasses import replace

import numpy as np
import pytest

from drivers.clock import seconds
from simulators.gauge import GaugeModel
from simulators.house import Facade, Zone
from simulators.houses import load_house
from simulators.plant import Plant, PlantInputs
from simulators.rig import SimulatedRig
from simulators.rigging import Rigging, TapPlace
from tests.simulators.builders import one_leak_house, run
from tests.simulators.rigs import virtual_clock

EXACT = GaugeModel(noise_pa=0.0, zero_sd_pa=0.0, zero_walk_pa=0.0, hose_lag_s=0.001)


def shown(plant: Plant, *names: str) -> list[float]:
    return [float(plant.gauge.shown[0, plant.gauge.columns[name]]) for name in names]


def test_each_channel_reads_against_its_own_tap() -> None:
    plant = Plant([load_house("mill-row")], 3, 6.0, Rigging(taps=4, tap=TapPlace.FACADE, gauge=EXACT))
    run(plant, 20.0, 0.5)
    expected = plant.pressure_pa[0] - plant.weather.tap_pa[0]
    assert shown(plant, "p1", "p3", "p4", "p5") == pytest.approx(expected, abs=0.006)
    assert np.ptp(expected) > 1.0
    assert plant.envelope_pa[0] == pytest.approx(expected)


def test_the_zones_are_read_as_house_minus_zone() -> None:
    garage = Zone("garage", 60.0, 0.01, 0.62, 0.02, 0.62, Facade.EAST)
    plant = Plant([replace(one_leak_house(), zones=(garage,))], 1, 0.0, Rigging(zones=1, gauge=EXACT))
    run(plant, 60.0, 0.5)
    house_pa, garage_pa = float(plant.pressure_pa[0]), float(plant.interior.zones.pressure_pa[0, 0])
    assert shown(plant, "p6")[0] == pytest.approx(house_pa - garage_pa, abs=0.006)
    assert shown(plant, "p1")[0] == pytest.approx(house_pa, abs=0.006)


def test_warm_air_in_a_hose_up_the_wall_reads_as_a_pressure() -> None:
    house = one_leak_house()
    cold = replace(house, climate=replace(house.climate, indoor_c=0.0, outdoor_c=0.0))
    up = Rigging(taps=2, hose_rise_m=(0.0, 5.0), hose_c=20.0, gauge=EXACT)
    plant = Plant([cold], 1, 0.0, up)
    plant.step(0.1, plant_at_rest(plant))
    plain, risen = shown(plant, "p1", "p3")
    # (1.204 - 1.292) kg/m3 x 9.80665 m/s2 x 5 m = -4.327 Pa at the gauge, so that much more is read; densities
    # of dry air at 20 and 0 C (handbook values), by hand.
    assert risen - plain == pytest.approx(4.327, abs=0.02)


def plant_at_rest(plant: Plant) -> PlantInputs:
    count = len(plant.houses)
    return PlantInputs(np.zeros(count), -np.ones(count))


def test_gain_errors_are_drawn_once_for_each_pressure_channel() -> None:
    crooked = replace(EXACT, gain_sd=0.01)
    plant = Plant([one_leak_house()] * 400, 1, 0.0, Rigging(taps=2, gauge=crooked))
    run(plant, 60.0, 0.3)
    gains = plant.gauge.shown[:, [0, 2]] / plant.envelope_pa - 1.0
    assert gains.std() == pytest.approx(0.01, rel=0.1)
    assert abs(np.asarray(np.corrcoef(gains.T))[0, 1]) < 0.2
    assert plant.gauge.shown[:, plant.gauge.columns["t1"]] == pytest.approx(20.0, abs=0.15)


def test_the_flow_elements_calibration_has_its_own_error() -> None:
    plant = Plant([one_leak_house()] * 400, 1, 0.0, Rigging(element_sd=0.02))
    still = plant.element.pressure(np.full(400, 0.1), np.full(400, 1.204))
    power = 1.0 / 0.502
    # dp grows as (Q / C)^(1/n): two per cent of C are four of dp.
    assert float(np.std(still) / np.mean(still)) == pytest.approx(0.02 * power, rel=0.12)


def test_a_rig_with_four_taps_has_the_gauge_with_eight_inputs() -> None:
    rig = SimulatedRig(load_house("mill-row"), 1, virtual_clock(), taps=4, tap="facade")
    table = tomllib.loads(rig.rig_toml(rig.own_ports))
    gauge = table["instrument"][0]
    assert gauge["profile"] == "scpi-gauge-8"
    assert gauge["serial"] == "SG-0031"
    roles = [gauge["channels"][name] for name in ("p1", "p3", "p4", "p5")]
    assert roles == ["envelope-pressure", *(f"envelope-pressure-{number}" for number in (2, 3, 4))]
    port = rig.open("sim:gauge")
    port.open()
    port.write(b"*IDN?\nREAD?\n")
    rig.clock.wait_until(rig.clock.now_ns() + seconds(0.1))
    identity, reading = port.read(0.0).decode().splitlines()
    assert identity == "AIRSEAM DEMO,SCPI-GAUGE-8,SG-0031,1.0"
    fields = [float(field) for field in reading.split(",")]
    assert len(fields) == 12
    assert [field == 9.91e37 for field in fields] == [False] * 5 + [True] * 3 + [False] * 4


def test_what_no_gauge_has_is_answered_in_a_sentence() -> None:
    house, clock = load_house("mill-row"), virtual_clock()
    with pytest.raises(ValueError, match="taps is 5: 1 to 4"):
        SimulatedRig(house, 1, clock, taps=5)
    with pytest.raises(ValueError, match=r"'moon'.*facade, ground"):
        SimulatedRig(house, 1, clock, tap="moon")
    with pytest.raises(ValueError, match='protocol is "lines"'):
        SimulatedRig(house, 1, clock, protocol="lines", taps=4)
    with pytest.raises(ValueError, match="zones is 4: 0 to 3"):
        Rigging(zones=4)
    with pytest.raises(ValueError, match="hose_rise_m has 1 numbers"):
        Rigging(taps=2, hose_rise_m=(1.0,))
