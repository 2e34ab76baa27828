"""Two fans in one leaky house: one command, flows that add up, one stop for both."""

from __future__ import annotations

from contextlib import AbstractContextManager
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from acquisition.derive import derive_point
from acquisition.engine import Engine
from acquisition.fitted import Fitted, RangeChange
from acquisition.job import Job
from acquisition.openrig import open_rig
from acquisition.rig import FLOW_ELEMENTS, Role
from acquisition.rigfile import read_rig, write_rig
from acquisition.series import RunData, WindowRecord
from acquisition.snapshot import Activity, EngineState, Snapshot
from acquisition.steps import WindowKind
from acquisition.testfile import load_stored_test
from analysis.errors import InvalidInput
from analysis.records import Air, Building, Direction, FlowRange
from drivers.clock import VirtualClock, seconds
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from tests.acquisition.scenes import Scene, a_scene

LEAKY = replace(load_house("gable-barn"), n50_per_h=17.0)
"""Invented: at 50 Pa it leaks 8840 m3/h, more than the 7920 m3/h of one fan."""


def leaky_scene(clock: VirtualClock, folder: Path, fans: int) -> AbstractContextManager[Scene]:
    return a_scene(clock, folder, wind_m_s=0.0, built=LEAKY, fans=fans)


def test_two_fans_reach_what_one_cannot_and_the_flows_add_up(clock: VirtualClock, tmp_path: Path) -> None:
    with leaky_scene(clock, tmp_path, 2) as scene:
        scene.begin(scene.plan(both=True))
        shown = scene.to_the_end()
        assert shown.result is not None
        assert shown.result.mean.n50_per_h is not None
        assert shown.result.mean.n50_per_h.value == pytest.approx(scene.house.true_n50(), rel=0.015)
        assert max(point.envelope_pa or 0.0 for point in shown.runs[1].points) > 55.0
        assert all(run.data.count(Role.FLOW_ELEMENT_2) > 100 for run in scene.job.load(1).runs)
        assert all(item.ok for item in scene.job.verify())
        live = shown.result
    stored = load_stored_test(tmp_path / "scene.airseam", clock)
    assert stored.result() == live


@pytest.mark.walk
def test_one_fan_does_not_reach_50_pa(clock: VirtualClock, tmp_path: Path) -> None:
    with leaky_scene(clock, tmp_path, 1) as scene:
        scene.begin()
        shown = scene.to_the_end()
        assert max(abs(point.envelope_pa or 0.0) for point in shown.runs[0].points) < 50.0
        assert any(flag.id == "reach" for flag in shown.flags)


VERY_LEAKY = replace(LEAKY, n50_per_h=31.0)
"""Invented: at 50 Pa it leaks 16 120 m3/h, more than two fans move."""


@pytest.mark.walk
def test_three_fans_join_and_leave_one_by_one_and_their_flows_add_up(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, built=VERY_LEAKY, fans=3) as scene:
        scene.begin(scene.plan(targets_pa=(50.0, 40.0, 20.0, 10.0)))
        running: dict[float | None, int] = {}

        def ended(shown: Snapshot) -> bool:
            assert abs(float(scene.house.plant.pressure_pa[0])) < 75.0
            if shown.activity is Activity.AVERAGE and shown.activity_s > 1.0:
                running[shown.target_pa] = sum(speed > 0.0 for speed in scene.house.world.speeds)
            return shown.state is EngineState.IDLE and not scene.engine.busy

        shown = scene.until(ended)
        assert running[-50.0] == 3 > running[-10.0]
        assert sorted(running.values()) == [running[key] for key in sorted(running, key=lambda pa: -(pa or 0.0))]
        assert {flag.sentence[:12] for flag in shown.flags if flag.id == "fans"} >= {"Fan 3 joins:", "Fan 3 leaves"}
        assert shown.result is not None
        true = scene.house.true_q_m3_h(50.0, "depressurize")
        assert shown.result.mean.q50_m3_h.value == pytest.approx(true, rel=0.015)
        run = scene.job.load(1).runs[0]
        assert all(run.data.count(role) > 100 for role in FLOW_ELEMENTS[:3])
        assert not run.data.count(Role.FLOW_ELEMENT_4)
        assert scene.job.load(1).test() == shown.test


def test_a_range_of_the_third_fan_is_its_own_and_its_loss_stops_all(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, built=VERY_LEAKY, fans=3) as scene:
        scene.engine.fit_range("middle", 2)
        scene.pass_time(0.5)
        assert [item.name for item in scene.rig.spec.fitted_ranges.now] == ["wide", "wide", "middle"]
        assert read_rig(write_rig(scene.rig.spec)) == scene.rig.spec
        scene.begin(scene.plan(targets_pa=(35.0,)))
        scene.until(lambda shown: shown.activity is Activity.AVERAGE)
        assert min(scene.house.world.speeds) > 0.0
        scene.house.ports["sim:fan-3"].unplug()
        scene.until(lambda shown: shown.state is EngineState.PAUSED, 5.0)
        scene.pass_time(2.5)
        assert scene.house.world.speeds == [0.0, 0.0, 0.0]


def test_a_fan_that_is_lost_stops_both(clock: VirtualClock, tmp_path: Path) -> None:
    with leaky_scene(clock, tmp_path, 2) as scene:
        scene.begin()
        scene.until(lambda shown: shown.activity is Activity.AVERAGE)
        assert scene.house.world.speeds[0] == scene.house.world.speeds[1] > 0.0
        scene.house.ports["sim:fan-2"].unplug()
        scene.until(lambda shown: shown.state is EngineState.PAUSED, 5.0)
        scene.pass_time(1.0)
        assert scene.house.world.speed == 0.0
        scene.pass_time(1.5)
        assert scene.house.world.speeds[1] == 0.0  # it stopped by itself: it heard nothing


def test_closing_brings_both_to_rest(clock: VirtualClock, tmp_path: Path) -> None:
    with leaky_scene(clock, tmp_path, 2) as scene:
        scene.begin()
        scene.until(lambda shown: shown.activity is Activity.AVERAGE)
        scene.engine.close()
        assert scene.house.world.speeds == [0.0, 0.0]
        assert scene.rig.stopped_safely is True


def rig_text(clock: VirtualClock) -> str:
    house = SimulatedRig(LEAKY, 1, clock, fans=2)
    return house.rig_toml(house.own_ports)


def test_the_rig_file_is_read_back_with_a_range_for_each_fan(clock: VirtualClock) -> None:
    text = rig_text(clock).replace('fans = ["fan", "fan-2"]', 'fans = ["fan", "fan-2"]\nfitted_on = {fan-2 = "middle"}')
    spec = read_rig(text)
    assert spec.fans == ("fan", "fan-2")
    assert [item.name for item in spec.fitted_ranges.now] == ["wide", "middle"]
    assert read_rig(write_rig(spec)) == spec


@pytest.mark.parametrize(
    ("old", "new", "sentence"),
    [
        ('"fan-2"]', '"pump"]', "fan is 'pump': the name of an instrument is needed"),
        ('["fan", "fan-2"]', "3", "fans is 3: a list of names of fan drives is needed"),
        ('"fan-2"]', '"fan"]', "fans is 'fan': each may occur only once"),
        ('"fan-2"]', '"fan-2"]\nfitted_on = {fan-2 = "x"}', "fitted_on.fan-2 is 'x': the name of a flow range"),
        ('"fan-2"]', '"fan-2"]\nfitted_on = {x = "wide"}', "fitted_on.x is 'unknown': the fans beyond the first"),
        ('p1 = "flow-element-pressure-2"', "", "without the flow of fan fan-2"),
    ],
)
def test_a_mistake_in_the_rig_file_is_named(clock: VirtualClock, old: str, new: str, sentence: str) -> None:
    with pytest.raises(InvalidInput) as caught:
        read_rig(rig_text(clock).replace(old, new))
    assert sentence in str(caught.value)


def test_flows_are_added_by_the_range_that_was_fitted_in_the_window() -> None:
    one, other = FlowRange("one", 100.0, 0.5, 5.0, 250.0), FlowRange("other", 50.0, 0.5, 5.0, 250.0)
    data = RunData()
    for at in range(200):
        data.append_value(Role.ENVELOPE, seconds(at * 0.1), -50.0)
        data.append_value(Role.FLOW_ELEMENT, seconds(at * 0.1), 100.0)
        data.append_value(Role.FLOW_ELEMENT_2, seconds(at * 0.1 + 0.04), 64.0)
    fitted = Fitted((one, one)).changed(RangeChange(seconds(10.0), 1, other))
    windows = [
        WindowRecord(1, WindowKind.POINT, seconds(1.0), seconds(9.0)),
        WindowRecord(2, WindowKind.POINT, seconds(11.0), seconds(19.0)),
    ]
    air = Air(21.0, 3.0, barometric_pa=101_325.0)
    flows = [derive_point(Direction.DEPRESSURIZE, air, data, item, fitted, Building("x")).flow_m3_h for item in windows]
    assert flows == pytest.approx(np.array([1800.0, 1400.0]) * (1.2041 / 1.19) ** 0.5, rel=0.005)


def test_a_point_out_of_a_range_is_flagged_and_the_range_that_fits_is_named(
    clock: VirtualClock, tmp_path: Path
) -> None:
    house = SimulatedRig(replace(load_house("mill-row"), fitted="wide"), 1, clock, wind_m_s=0.0)
    rig = open_rig(read_rig(house.rig_toml(house.own_ports)), clock, house.open)
    engine = Engine(rig, clock, auto_answer=True)
    engine.start()
    job = Job.create(tmp_path / "wide.airseam", clock, "Wide")
    scene = Scene(clock, house, rig, engine, job)
    try:
        scene.pass_time(3.0)
        scene.begin(scene.plan(targets_pa=(50.0, 20.0)))
        shown = scene.until(lambda shown: any(flag.id == "out-of-range" for flag in shown.flags))
        said = next(flag.sentence for flag in shown.flags if flag.id == "out-of-range")
        assert "is below the 8 Pa that range wide is calibrated to. Fit range " in said
        assert said.endswith(("Fit range middle.", "Fit range narrow."))
    finally:
        engine.close()
        job.close()
