"""A fan that a person turns: led to every target by sentences, points taken by themselves, warned but never stopped."""

from __future__ import annotations

import json
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

import airseam
from acquisition.engine import Engine
from acquisition.fanbyhand import Order, warning
from acquisition.job import Job
from acquisition.leading import lead
from acquisition.openrig import open_rig
from acquisition.rigfile import read_rig
from acquisition.snapshot import Activity, EngineState, Severity, Snapshot
from acquisition.watchdog import Alarm, AlarmKind
from drivers.clock import VirtualClock, seconds
from simulators.faults import ELEMENT, ENVELOPE, hose
from simulators.hand import Hand
from simulators.hoses import Hose
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from tests.acquisition.scenes import Scene
from tests.simulators.rigs import new_world


@contextmanager
def hand_scene(clock: VirtualClock, folder: Path, *, seed: int = 1, wind_m_s: float = 0.0) -> Iterator[Scene]:
    house = SimulatedRig(load_house("mill-row"), seed, clock, wind_m_s=wind_m_s, by_hand=True)
    rig = open_rig(read_rig(house.rig_toml(house.own_ports)), clock, house.open)
    engine = Engine(rig, clock, auto_answer=True)
    engine.start()
    assert house.hand is not None
    led = lead(engine, clock, house.hand.hear)
    job = Job.create(folder / "hand.airseam", clock, "By hand")
    try:
        clock.wait_until(clock.now_ns() + seconds(3.0))
        yield Scene(clock, house, rig, engine, job)
    finally:
        led.stop()
        engine.close()
        job.close()


@pytest.mark.parametrize(("seed", "wind_m_s"), [(1, 0.0), pytest.param(3, 3.0, marks=pytest.mark.walk)])
def test_a_person_is_led_through_a_whole_test(clock: VirtualClock, tmp_path: Path, seed: int, wind_m_s: float) -> None:
    said: set[str] = set()

    def note(shown: Snapshot) -> bool:
        said.add(shown.sentence.split(". ")[0])
        return shown.state is EngineState.IDLE and not scene.engine.busy

    with hand_scene(clock, tmp_path, seed=seed, wind_m_s=wind_m_s) as scene:
        scene.begin()
        shown = scene.until(note)
        assert shown.last_error == ""
        assert shown.result is not None
        taken = shown.runs[0].points
        assert len(taken) == 5
        q50 = shown.result.runs[0].q50_m3_h.value
        true = scene.house.true_q_m3_h(50.0, "depressurize")
        assert q50 == pytest.approx(true, rel=0.015 if wind_m_s == 0.0 else 0.05)
        answers = [answer.ask_id for answer in scene.job.load(1).answers]
        assert answers == ["safety", "cover-fan", "uncover-fan", "cover-fan"]
        assert all(item.ok for item in scene.job.verify())
        assert scene.house.world.speed == 0.0
    assert {"Raise the speed slowly", "Lower the speed slowly", "Turn the fan down slowly and switch it off."} <= said


@pytest.mark.parametrize(("reaction_s", "pace"), [(4.0, 0.03), pytest.param(1.5, 0.02, marks=pytest.mark.walk)])
def test_a_slow_person_passes_no_limit_and_gets_the_points(
    clock: VirtualClock, tmp_path: Path, reaction_s: float, pace: float
) -> None:
    with hand_scene(clock, tmp_path) as scene:
        hand, highest_pa = scene.house.hand, 0.0
        assert hand is not None
        hand.reaction_s, hand.slow_per_s = reaction_s, pace
        scene.begin(scene.plan(targets_pa=(50.0, 35.0, 20.0)))

        def watched(shown: Snapshot) -> bool:
            nonlocal highest_pa
            highest_pa = max(highest_pa, abs(float(scene.house.plant.pressure_pa[0])))
            return shown.state in (EngineState.IDLE, EngineState.PAUSED) and not scene.engine.busy

        shown = scene.until(watched, 900.0)
        assert highest_pa < 80.0
        assert [point.target_pa for point in shown.runs[0].points] == [-50.0, -35.0, -20.0]


def test_a_fan_that_blows_on_while_the_test_stands_still_is_told_again_and_again(
    clock: VirtualClock, tmp_path: Path
) -> None:
    with hand_scene(clock, tmp_path) as scene:
        scene.begin()
        scene.until(lambda shown: shown.activity is Activity.AVERAGE)
        assert scene.house.hand is not None
        scene.house.hand.reaction_s = 50.0
        scene.engine.pause()
        shown = scene.pass_time(45.0)
        told = [flag for flag in shown.flags if flag.id == "still-blowing"]
        assert len(told) == 3
        assert all(flag.severity is Severity.ALARM for flag in told)
        assert told[0].sentence.startswith("The fan still blows, at ")
        assert shown.hand == Order.OFF
        shown = scene.pass_time(25.0)
        assert scene.house.world.speed == 0.0
        assert shown.hand == ""
        assert [flag.id for flag in scene.pass_time(20.0).flags].count("still-blowing") <= 4


def test_the_point_is_taken_again_when_the_knob_is_turned(clock: VirtualClock, tmp_path: Path) -> None:
    with hand_scene(clock, tmp_path) as scene:
        scene.begin()
        scene.until(lambda shown: shown.activity is Activity.AVERAGE)
        scene.house.world.speed *= 0.7
        shown = scene.until(lambda shown: any(flag.id == "knob-moved" for flag in shown.flags), 20.0)
        assert not [point for point in shown.runs[0].points if point.window is not None]
        assert len(scene.to_the_end().runs[0].points) == 5


def test_the_watchdog_warns_and_the_person_turns_the_fan_down(clock: VirtualClock, tmp_path: Path) -> None:
    with hand_scene(clock, tmp_path) as scene:
        scene.begin()
        scene.until(lambda shown: shown.activity is Activity.AVERAGE)
        scene.house.happen(hose(ENVELOPE, Hose.OFF))
        shown = scene.until(lambda shown: bool(shown.last_error), 20.0)
        alarms = [flag.sentence for flag in shown.flags if flag.severity is Severity.ALARM]
        assert alarms
        assert alarms[0].startswith("Turn the fan down now. ")
        assert "was stopped" not in alarms[0]
        scene.pass_time(8.0)
        assert scene.house.world.speed == 0.0
    assert ELEMENT != ENVELOPE


def test_a_warning_says_what_to_do_first() -> None:
    silent = Alarm(AlarmKind.SILENT, "The gauge went silent. The fan was stopped; look at cable and battery.")
    assert warning(silent) == (
        "Turn the fan down now. The gauge went silent. Then look at cable and battery of the gauge."
    )


def test_a_simulated_person_reacts_late_and_turns_slowly() -> None:
    world = new_world()
    hand = Hand(world, 1)
    world.advance(seconds(1.0))
    hand.hear(Order.RAISE.value, seconds(1.0))
    world.advance(seconds(1.6))
    assert world.speed == 0.0
    world.advance(seconds(5.0))
    risen = world.speed
    assert 0.08 < risen < 0.25
    hand.hear("hold", seconds(5.0))
    world.advance(seconds(20.0))
    assert risen < world.speed < risen + 0.05
    with pytest.raises(ValueError, match="order is 'up'"):
        hand.hear("up", 0)


@pytest.mark.walk
def test_a_test_with_a_fan_by_hand_from_the_command_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = str(tmp_path / "hand.airseam")
    assert airseam.main(["test", "--rig", "sim:mill-row", "--by-hand", "--job", path, "--wind", "0", "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert document["runs"][0]["n50_per_h"]["value"] == pytest.approx(1.72, rel=0.03)
