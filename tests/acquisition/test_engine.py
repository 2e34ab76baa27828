"""The engine on a simulated house in virtual time: the job it has to do, and all that can go wrong on the way."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from acquisition.snapshot import Activity, EngineState, PointState, Severity, Snapshot
from acquisition.steps import WindowKind
from analysis.errors import InvalidInput
from analysis.records import Direction, Limit
from drivers.clock import VirtualClock
from drivers.instrument import LinkState
from tests.acquisition.scenes import SHORT, Scene, a_scene


def averaging_at(target_pa: float, scene: Scene) -> None:
    """Let the test run until it averages at a target."""
    scene.until(lambda s: s.activity is Activity.AVERAGE and s.target_pa == target_pa and s.activity_s > 3)


def unmet(seen: Snapshot) -> list[tuple[str, float | None]]:
    """Return the checks that are not met, for the message of a failed test."""
    return [] if seen.result is None else [(c.id, c.value) for run in seen.result.runs for c in run.checks if not c.ok]


def test_a_test_in_both_directions_runs_from_one_call_to_a_valid_result(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin(scene.plan(both=True, valid=True))
        seen = scene.to_the_end()
        assert [run.direction for run in seen.runs] == [Direction.DEPRESSURIZE, Direction.PRESSURIZE]
        assert all(run.complete and len(run.points) == len(SHORT) for run in seen.runs)
        assert seen.result is not None
        assert seen.result.valid, unmet(seen)
        assert seen.result.mean.n50_per_h is not None
        assert seen.result.mean.n50_per_h.value == pytest.approx(scene.house.true_n50(), rel=0.01)
        assert seen.fan_fraction == 0.0
        assert scene.house.world.speed == 0.0
        # What the job file says is the live result to the last digit.
        loaded = scene.job.load(scene.job.tests()[0].id)
        assert loaded.test() == seen.test
        assert scene.engine.fault is None


def test_points_stand_near_their_targets_and_the_fan_is_held_while_averaging(
    clock: VirtualClock, tmp_path: Path
) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin(scene.plan(valid=True))
        held: set[float] = set()
        averaging_at(-40.0, scene)
        while scene.engine.snapshot().activity is Activity.AVERAGE:
            held.add(scene.engine.snapshot().fan_fraction)
            scene.pass_time(0.1)
        seen = scene.to_the_end()
        assert len(held - {0.0}) <= 2  # one held speed, and the first step to the next target
        for point in seen.runs[0].points:
            assert point.envelope_pa is not None
            assert abs(point.envelope_pa - (seen.zero_pa or 0.0) - point.target_pa) < 2.0


def test_a_question_waits_for_its_answer_and_the_answer_is_recorded(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        scene.begin()
        seen = scene.until(lambda s: s.state is EngineState.ASKING)
        assert seen.ask is not None
        assert seen.ask.id == "safety"
        assert scene.pass_time(60.0).state is EngineState.ASKING
        scene.engine.answer("another", seen.ask.choices[0])
        scene.engine.answer("safety", "a choice that there is not")
        assert scene.pass_time(1.0).state is EngineState.ASKING
        scene.engine.answer("safety", seen.ask.choices[0])
        assert scene.pass_time(1.0).state is EngineState.RUNNING
        scene.to_the_end()
        answers = scene.job.load(scene.job.tests()[0].id).answers
        assert [(answer.ask_id, answer.choice) for answer in answers] == [("safety", seen.ask.choices[0])]


def test_refusing_the_safety_question_ends_the_test_without_moving_the_fan(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        scene.begin()
        ask = scene.until(lambda s: s.ask is not None).ask
        assert ask is not None
        scene.engine.answer("safety", ask.choices[1])
        seen = scene.to_the_end()
        assert seen.runs == ()
        assert scene.rig.speed_readback() in (None, 0.0)


def test_the_stop_key_brings_the_fan_to_rest_and_the_test_can_go_on(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin(scene.plan(valid=True))
        averaging_at(-50.0, scene)
        taken = sum(point.state is PointState.TAKEN for point in scene.engine.snapshot().runs[0].points)
        scene.engine.stop_fan()
        assert scene.pass_time(0.3).state is EngineState.PAUSED
        assert scene.house.world.speed == 0.0
        assert scene.pass_time(60.0).state is EngineState.PAUSED  # nothing starts a fan by itself after a stop
        assert abs(scene.engine.snapshot().envelope_pa or 99.0) < 5.0
        scene.engine.resume()
        seen = scene.to_the_end()
        points = seen.runs[0].points
        assert [point.target_pa for point in points] == [-t for t in SHORT]
        assert taken == 1
        assert seen.result is not None
        assert seen.result.valid, unmet(seen)


@pytest.mark.parametrize("link", ["gauge", pytest.param("fan", marks=pytest.mark.walk)])
def test_a_pulled_cable_stops_the_fan_and_the_point_is_taken_again(
    clock: VirtualClock, tmp_path: Path, link: str
) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin(scene.plan(valid=True))
        averaging_at(-40.0, scene)
        port = scene.house.ports[f"sim:{link}"]
        port.unplug()
        seen = scene.until(lambda s: s.state is EngineState.PAUSED, limit_s=3.0)
        assert seen.paused_reason.endswith(".")
        scene.pass_time(3.0)
        assert scene.house.world.speed == 0.0  # by command, or by the drive's own time-out when its cable was pulled
        scene.pass_time(20.0)
        port.replug()
        seen = scene.to_the_end()
        assert [point.target_pa for point in seen.runs[0].points] == [-t for t in SHORT]
        assert seen.result is not None
        assert seen.result.valid, unmet(seen)
        assert seen.result.mean.n50_per_h is not None
        assert seen.result.mean.n50_per_h.value == pytest.approx(scene.house.true_n50(), rel=0.01)


def test_no_sample_that_was_taken_is_lost_by_a_pulled_cable(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin()
        averaging_at(-40.0, scene)
        scene.house.ports["sim:gauge"].unplug()
        scene.pass_time(10.0)
        scene.house.ports["sim:gauge"].replug()
        scene.to_the_end()
        readings = scene.job.load(scene.job.tests()[0].id).runs[0].data
        counts = {role: readings.count(role) for role in readings.roles}
        assert len(set(counts.values())) == 1
        status = scene.rig.statuses()[0]
        assert counts.popitem()[1] <= status.readings


def test_a_gauge_that_freezes_stops_the_fan(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        scene.begin()
        scene.until(lambda s: s.ask is not None)
        scene.engine.answer("safety", "All of this is so")
        averaging_at(-50.0, scene)
        shown = scene.house.plant.gauge.shown
        frozen = shown.copy()
        scene.house.plant.gauge.step = lambda dt_s, true: shown.__setitem__(slice(None), frozen)  # type: ignore[method-assign]
        seen = scene.until(lambda s: s.state is EngineState.PAUSED, limit_s=3.0)
        assert "gauge-frozen" in [flag.id for flag in seen.flags if flag.severity is Severity.ALARM]
        assert scene.pass_time(0.3).state is EngineState.PAUSED
        assert scene.house.world.speed == 0.0


def test_striking_a_point_changes_the_result_and_restoring_brings_it_back(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin()
        before = scene.to_the_end()
        window = before.runs[0].points[2].window
        assert window is not None
        assert before.result is not None
        scene.engine.strike(window, "A door was opened.")
        struck = scene.pass_time(0.3)
        assert struck.runs[0].points[2].state is PointState.STRUCK
        assert struck.runs[0].points[2].struck_reason == "A door was opened."
        assert struck.result is not None
        assert len(struck.result.runs[0].induced_pa) == len(SHORT) - 1
        assert not struck.result.valid  # five points are the least
        scene.engine.restore(window)
        assert scene.pass_time(0.3).result == before.result


def test_closing_in_the_middle_of_a_test_confirms_that_the_fan_is_at_rest(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin()
        averaging_at(-60.0, scene)
        scene.engine.close()
        assert scene.rig.stopped_safely is True
        assert scene.house.world.speed == 0.0
        assert all(status.state is LinkState.CLOSED for status in scene.rig.statuses())
        assert scene.job.tests()[0].state.value == "stopped"


def test_a_door_opened_while_averaging_spoils_the_point_and_it_is_taken_again(
    clock: VirtualClock, tmp_path: Path
) -> None:
    with a_scene(clock, tmp_path) as scene:
        targets_pa = (58.0, 50.0, 42.0, 34.0, 26.0, 18.0)
        scene.begin(scene.plan(targets_pa=targets_pa, valid=True))
        averaging_at(-42.0, scene)
        leaks = scene.house.plant.leaks
        shut = leaks.outflow

        def ajar(pressure: object, facade: object) -> object:
            mass, slope = shut(pressure, facade)  # type: ignore[arg-type]
            return 1.6 * mass, 1.6 * slope

        leaks.outflow = ajar  # type: ignore[method-assign, assignment]
        scene.until(lambda s: "leakage-jumped" in [flag.id for flag in s.flags], limit_s=10.0)
        assert scene.engine.snapshot().activity is not Activity.AVERAGE
        leaks.outflow = shut  # type: ignore[method-assign]
        seen = scene.to_the_end()
        assert [point.target_pa for point in seen.runs[0].points] == [-t for t in targets_pa]
        assert seen.result is not None
        assert seen.result.valid, unmet(seen)
        assert seen.result.mean.n50_per_h is not None
        assert seen.result.mean.n50_per_h.value == pytest.approx(scene.house.true_n50(), rel=0.01)


def test_a_limit_on_a_rate_waits_for_the_volume_it_needs(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        plan = scene.plan()
        limited = replace(plan, limit=Limit("stage", "n50_per_h", 2.0))
        assert limited.limits == (limited.limit,)
        unknown = replace(limited, building=replace(plan.building, volume_m3=None))
        assert unknown.limits == ()
        scene.begin(unknown)
        seen = scene.to_the_end()
        assert seen.result is not None
        assert seen.result.mean.n50_per_h is None
        assert seen.result.verdicts == ()


def test_a_fault_of_the_program_ends_the_test_with_the_fan_at_rest(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin()
        averaging_at(-60.0, scene)

        def broken(*_: object) -> None:
            raise ZeroDivisionError("on purpose")

        scene.engine._bench.progress.close_point = broken  # type: ignore[union-attr, method-assign]
        seen = scene.to_the_end()
        assert isinstance(scene.engine.fault, ZeroDivisionError)
        assert "on purpose" in seen.sentence
        scene.pass_time(0.3)
        assert scene.house.world.speed == 0.0
        assert scene.job.tests()[0].state.value == "faulted"
        # The engine is ready for another test.
        scene.begin()
        assert scene.to_the_end().result is not None


def test_one_test_at_a_time(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin()
        with pytest.raises(InvalidInput, match="one test at a time"):
            scene.begin()
        scene.engine.abandon()
        scene.to_the_end()


def test_every_moment_has_a_sentence_and_the_windows_are_shown(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        sentences: set[str] = set()
        scene.begin()
        seen = scene.engine.snapshot()
        while scene.engine.busy:
            seen = scene.pass_time(0.5)
            assert seen.sentence.endswith((".", "?"))
            sentences.add(seen.sentence.split(":")[0])
        assert {s.kind for s in seen.windows} == set(WindowKind)
        assert len(seen.windows) == len(SHORT) + 2
        assert any(s.startswith("Holding −40 Pa, averaging") for s in sentences)
        assert any(s.startswith("Reading the zero-flow pressure before the points") for s in sentences)


def test_two_runs_with_one_seed_give_the_same_digits(tmp_path: Path) -> None:
    results = []
    for name in ("one", "two"):
        folder = tmp_path / name
        folder.mkdir()
        with a_scene(VirtualClock(datetime(2026, 5, 4, 9, tzinfo=UTC)), folder, seed=7) as scene:
            scene.begin()
            results.append(scene.to_the_end().result)
    assert results[0] == results[1]
