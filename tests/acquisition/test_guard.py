"""The guard has the last word on the drive: whatever the engine does, or when it does nothing any more."""

from __future__ import annotations

import threading
from pathlib import Path

import pytest

from acquisition.engine import Engine
from acquisition.guard import PERIOD_S, Expectation
from acquisition.openrig import open_rig
from acquisition.rigfile import read_rig
from acquisition.snapshot import Activity, EngineState, Severity
from acquisition.watchdog import AlarmKind
from drivers.clock import VirtualClock, WallClock, seconds
from simulators import faults
from simulators.hoses import Hose
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from tests.acquisition.scenes import a_scene


def test_an_engine_that_hangs_is_noticed_and_the_fan_stops(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin()
        scene.until(lambda s: s.activity is Activity.AVERAGE)
        assert scene.house.world.speed > 0.0
        assert scene.engine._hosted is not None
        scene.engine._hosted.stop()  # the loop no longer ticks, as if a thread hung
        scene.pass_time(0.4)
        assert scene.engine._guard.alarm is None
        scene.pass_time(0.5)
        assert getattr(scene.engine._guard.alarm, "kind", None) is AlarmKind.HELD_UP
        assert scene.house.world.speed == 0.0


def test_after_an_alarm_no_speed_passes_until_somebody_releases_it(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        guard = scene.engine._guard
        assert guard.drive(0.4, Expectation(), clock.now_ns())
        scene.pass_time(1.0)  # nobody repeats it: held up
        assert guard.alarm is not None
        assert not guard.drive(0.4, Expectation(), clock.now_ns())
        scene.pass_time(0.3)
        assert scene.house.world.speed == 0.0
        guard.release()
        assert guard.drive(0.2, Expectation(), clock.now_ns())
        scene.pass_time(0.3)
        assert scene.house.world.speed == pytest.approx(0.2)


def test_rounds_missed_in_a_stall_are_not_made_up(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        guard = scene.engine._guard
        scene.pass_time(0.5)
        now_ns = clock.now_ns()
        assert guard.pump(now_ns) - now_ns <= seconds(2 * PERIOD_S)
        late_ns = now_ns + seconds(5.0)
        assert guard.pump(late_ns) == late_ns + seconds(PERIOD_S)


def test_the_guard_reads_the_gauge_although_the_engine_takes_every_reading(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        scene.begin()
        ask = scene.until(lambda s: s.ask is not None).ask
        assert ask is not None
        scene.engine.answer(ask.id, ask.choices[0])
        scene.until(lambda s: s.activity is Activity.AVERAGE and s.target_pa == -50.0)
        scene.house.happen(faults.hose(0, Hose.OFF))
        seen = scene.until(lambda s: s.state is EngineState.PAUSED, limit_s=4.0)
        assert "pressure-collapsed" in [flag.id for flag in seen.flags if flag.severity is Severity.ALARM]
        assert abs(float(scene.house.plant.pressure_pa[0])) < 80.0


def test_a_gauge_that_reads_low_by_more_and_more_cannot_drive_the_house_up(clock: VirtualClock, tmp_path: Path) -> None:
    """The controller follows the gauge; what the flow took before says that the pressure must be higher."""
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        scene.begin()
        ask = scene.until(lambda s: s.ask is not None).ask
        assert ask is not None
        scene.engine.answer(ask.id, ask.choices[0])
        scene.until(lambda s: s.activity is Activity.AVERAGE and s.target_pa == -50.0)
        scene.house.happen(faults.gauge_drifts(+35.0), over_s=20.0)
        highest_pa = 0.0
        for _ in range(600):
            seen = scene.pass_time(0.1)
            highest_pa = max(highest_pa, abs(float(scene.house.plant.pressure_pa[0])))
            if seen.state is EngineState.PAUSED:
                break
        assert highest_pa < 85.0


def test_the_guard_has_a_thread_of_its_own_and_ends_with_the_engine() -> None:
    clock = WallClock()
    house = SimulatedRig(load_house("mill-row"), 1, clock)
    engine = Engine(open_rig(read_rig(house.rig_toml(house.own_ports)), clock, house.open), clock)
    engine.start()
    try:
        assert {"engine", "watchdog"} <= {thread.name for thread in threading.enumerate()}
    finally:
        engine.close()
    assert "watchdog" not in {thread.name for thread in threading.enumerate()}
