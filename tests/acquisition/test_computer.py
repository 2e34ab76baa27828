"""The computer under a running test: it sleeps, and its battery runs empty."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from acquisition.engine import Engine
from acquisition.job import Job
from acquisition.openrig import open_rig
from acquisition.rigfile import read_rig
from acquisition.snapshot import Activity, EngineState, PointState
from acquisition.steps import WindowKind
from drivers.battery import Battery
from drivers.clock import VirtualClock
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from tests.acquisition.samples import START
from tests.acquisition.scenes import Scene, a_scene

TARGETS = (58.0, 50.0, 42.0, 34.0, 26.0, 18.0)


class SleepyClock(VirtualClock):
    """The monotonic clock of a computer stands still while it sleeps, the time of day does not."""

    slept = timedelta()

    def utc(self) -> datetime:
        """Return the time of day."""
        return super().utc() + self.slept


@pytest.mark.parametrize("slept_s", [40.0, pytest.param(1800.0, marks=pytest.mark.walk)])
def test_sleep_interrupts_the_test_and_it_goes_on(tmp_path: Path, slept_s: float) -> None:
    clock = SleepyClock(START)
    with a_scene(clock, tmp_path, auto_answer=False, wind_m_s=0.0) as scene:
        scene.begin(replace(scene.plan(targets_pa=TARGETS, valid=True), safety="The fan may start.", hose_check=False))
        scene.until(lambda shown: shown.target_pa == -42.0 and shown.activity is Activity.AVERAGE)
        clock.slept += timedelta(seconds=slept_s)
        shown = scene.pass_time(0.5)
        assert shown.state is EngineState.PAUSED
        assert shown.paused_reason.startswith("The computer slept for ")
        assert scene.house.world.speed == 0.0
        scene.pass_time(30.0)
        scene.engine.resume()
        shown = scene.until(lambda shown: shown.ask is not None)
        assert shown.ask is not None
        assert shown.ask.id == "set-up-again"
        scene.engine.answer("set-up-again", shown.ask.choices[0])
        shown = scene.to_the_end()
        assert [p.target_pa for p in shown.runs[0].points if p.state is PointState.TAKEN] == [-t for t in TARGETS]
        assert shown.result is not None
        assert shown.result.valid
        loaded = scene.job.load(1)
        zeros = [w for w in loaded.runs[0].windows if w.kind is WindowKind.ZERO_AFTER]
        assert len(zeros) == (2 if slept_s > 300.0 else 1)
        assert any(mark.kind == "time-gap" for mark in loaded.marks)
        assert loaded.test() == shown.test


def test_a_nearly_empty_battery_is_told_and_an_empty_one_stops_the_fan(clock: VirtualClock, tmp_path: Path) -> None:
    left = [Battery(0.5, draining=True)]
    house = SimulatedRig(load_house("mill-row"), 1, clock, wind_m_s=0.0)
    rig = open_rig(read_rig(house.rig_toml(house.own_ports)), clock, house.open)
    engine = Engine(rig, clock, battery=lambda: left[0])
    engine.start()
    job = Job.create(tmp_path / "battery.airseam", clock, "Battery")
    scene = Scene(clock, house, rig, engine, job)
    try:
        scene.pass_time(3.0)
        scene.begin(replace(scene.plan(targets_pa=TARGETS, valid=True), safety="The fan may start.", hose_check=False))
        scene.until(lambda shown: shown.activity is Activity.AVERAGE)
        left[0] = Battery(0.09, draining=True)
        shown = scene.until(lambda shown: any(flag.id == "battery-low" for flag in shown.flags), 15.0)
        assert shown.state is EngineState.RUNNING
        left[0] = Battery(0.04, draining=True)
        shown = scene.until(lambda shown: shown.state is EngineState.PAUSED, 15.0)
        assert shown.paused_reason.startswith("The battery of this computer is at 4 %: the fan was stopped.")
        assert scene.pass_time(0.5).fan_fraction == 0.0
        assert house.world.speed == 0.0
        # Still empty: it stops again. On the mains it goes on.
        engine.resume()
        scene.until(lambda shown: shown.state is EngineState.PAUSED, 30.0)
        left[0] = Battery(0.04, draining=False)
        scene.pass_time(11.0)
        engine.resume()
        shown = scene.to_the_end()
        assert shown.result is not None
        assert shown.result.valid
    finally:
        engine.close()
        job.close()
