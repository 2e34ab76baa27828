"""A test that is mended while it runs: taken up again, a point once more, another flow range."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from acquisition.job import RecordState
from acquisition.snapshot import Activity, EngineState, PointState, Snapshot
from acquisition.steps import WindowKind
from acquisition.takeup import take_up
from analysis.errors import InvalidInput
from analysis.records import Direction
from drivers.clock import VirtualClock
from simulators.houses import load_house
from tests.acquisition.scenes import SHORT, Scene, a_scene


def taken(shown: Snapshot) -> list[float]:
    """Return the targets of the points that count."""
    points = shown.runs[-1].points if shown.runs else ()
    return [point.target_pa for point in points if point.state is PointState.TAKEN]


def cut(scene: Scene, points: int) -> None:
    """Let a test be cut short after so many points."""
    scene.until(lambda shown: len(taken(shown)) == points and shown.activity is Activity.SETTLE)
    scene.engine.stop_fan()
    scene.engine.abandon()
    scene.pass_time(1.0)


def go_on(scene: Scene) -> None:
    """Take it up again."""
    again = take_up(scene.job, scene.rig.spec, scene.clock.utc())
    scene.engine.begin(again.plan, scene.job.resume(again.number), again.standing)


def same_digits(scene: Scene, shown: Snapshot) -> None:
    """Hold the live result against the job file."""
    record = scene.job.tests()[-1]
    assert scene.job.load(record.id).test() == shown.test
    assert all(item.ok for item in scene.job.verify())


@pytest.mark.parametrize("gap_s", [30.0, pytest.param(1200.0, marks=pytest.mark.walk)])
def test_a_test_goes_on_at_the_point_that_was_cut_short(clock: VirtualClock, tmp_path: Path, gap_s: float) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin(scene.plan(both=True, valid=True))
        cut(scene, 2)
        assert scene.job.tests()[0].state is RecordState.STOPPED
        scene.pass_time(gap_s)
        go_on(scene)
        shown = scene.to_the_end()
        # Targets ten pascals apart leave no room: where wind moves a point off, one more stands in the gap.
        between = [target for target in taken(shown) if target not in SHORT]
        assert [target for target in taken(shown) if target in SHORT] == list(SHORT)
        assert len(between) == sum(flag.id == "spacing" for flag in shown.flags) <= 1
        assert [run.direction for run in shown.runs] == [Direction.DEPRESSURIZE, Direction.PRESSURIZE]
        assert shown.result is not None
        assert shown.result.valid
        assert shown.result.mean.n50_per_h is not None
        assert shown.result.mean.n50_per_h.value == pytest.approx(scene.house.true_n50(), rel=0.01)
        record = scene.job.tests()[0]
        assert (len(scene.job.tests()), record.state) == (1, RecordState.COMPLETE)
        first, second = scene.job.load(record.id).runs
        assert [w.target_pa for w in first.windows if w.kind is WindowKind.POINT] == [-target for target in SHORT]
        # After a long gap the zero-flow pressure is read once more, between the points.
        zeros = sum(window.kind is WindowKind.ZERO_AFTER for window in first.windows)
        assert zeros == (2 if gap_s > 300.0 else 1)
        assert len(first.pieces) == 2
        assert max(item.fraction for item in first.fan) > 0.1
        assert not second.pieces
        gap = next(flag.sentence for flag in shown.flags if flag.id == "time-gap")
        assert gap.startswith("The test was interrupted with 2 points taken; nothing was recorded for ")
        same_digits(scene, shown)


@pytest.mark.walk
def test_between_two_directions_it_goes_on_with_the_next_one(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin(scene.plan(both=True))
        scene.until(lambda shown: len(shown.runs) == 2)
        scene.engine.abandon()
        scene.pass_time(1.0)
        go_on(scene)
        shown = scene.to_the_end()
        assert [run.complete for run in shown.runs][-1]
        assert shown.result is not None
        assert len(shown.result.runs) == 2
        same_digits(scene, shown)


def test_another_rig_and_a_complete_test_are_refused(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin()
        cut(scene, 1)
        spec = scene.rig.spec
        gauge, *rest = spec.instruments
        other = replace(spec, instruments=(replace(gauge, serial="SG-9999"), *rest))
        with pytest.raises(InvalidInput, match="begun with other instruments"):
            take_up(scene.job, other, clock.utc())
        # Another port of the same instruments is no other rig.
        moved = replace(spec, instruments=(replace(gauge, port="sim:elsewhere"), *rest))
        assert take_up(scene.job, moved, clock.utc()).standing.words == "1 point taken"
        go_on(scene)
        scene.to_the_end()
        with pytest.raises(InvalidInput, match="nothing to go on with"):
            take_up(scene.job, spec, clock.utc())


def test_a_point_is_taken_again_and_the_old_one_stays_in_the_record(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin(scene.plan(valid=True))
        shown = scene.until(lambda shown: len(taken(shown)) == 2)
        scene.engine.take_again(shown.runs[0].points[0].window)
        shown = scene.to_the_end()
        points = shown.runs[0].points
        assert [point.target_pa for point in points] == [-60.0, -50.0, -40.0, -60.0, -30.0, -20.0]
        assert [point.struck_reason for point in points if point.state is PointState.STRUCK] == ["taken again"]
        assert shown.result is not None
        assert shown.result.valid
        same_digits(scene, shown)


def test_a_point_wanted_again_after_the_last_one_gets_a_closing_record_of_its_own(
    clock: VirtualClock, tmp_path: Path
) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin()
        shown = scene.until(lambda shown: len(taken(shown)) == 5 and shown.activity is Activity.ZERO)
        scene.engine.take_again(shown.runs[0].points[1].window)
        scene.engine.take_again(999)
        shown = scene.to_the_end()
        assert [point.target_pa for point in shown.runs[0].points] == [-60.0, -50.0, -40.0, -30.0, -20.0, -50.0]
        assert any(flag.id == "not-again" for flag in shown.flags)
        (run,) = scene.job.load(1).runs
        assert [window.kind for window in run.windows][-3:] == [
            WindowKind.ZERO_AFTER, WindowKind.POINT, WindowKind.ZERO_AFTER,
        ]  # fmt: skip


def test_the_range_is_changed_before_the_flow_leaves_it_and_each_point_keeps_its_own(
    clock: VirtualClock, tmp_path: Path
) -> None:
    with a_scene(clock, tmp_path, built=replace(load_house("mill-row"), fitted="middle"), wind_m_s=0.0) as scene:
        scene.rig.fitter = scene.house.fit
        scene.begin(scene.plan(targets_pa=(58.0, 50.0, 42.0, 34.0, 26.0, 18.0), valid=True))
        shown = scene.to_the_end()
        said = [flag.sentence for flag in shown.flags if flag.id == "range-changed"]
        assert said == ["Flow range narrow is fitted; before it was middle."]
        (run,) = scene.job.load(1).runs
        assert [change.flow_range.name for change in run.changes] == ["narrow"]
        assert scene.rig.spec.fitted == "narrow"
        assert scene.job.load(1).record.rig.fitted == "middle"
        assert shown.result is not None
        assert shown.result.valid, [(c.id, c.value, c.limit) for c in shown.result.runs[0].checks if not c.ok]
        assert shown.result.mean.n50_per_h is not None
        assert shown.result.mean.n50_per_h.value == pytest.approx(
            scene.house.true_q_m3_h(50.0, "depressurize") / scene.house.house.volume_m3, rel=0.01
        )
        assert scene.house.plant.pressure_pa[0] < 70.0
        same_digits(scene, shown)


def test_a_person_changes_the_range_while_the_fan_runs(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, auto_answer=False) as scene:
        scene.begin(replace(scene.plan(), safety="The fan may start.", hose_check=False))
        scene.until(lambda shown: shown.target_pa == -40.0 and shown.activity is Activity.AVERAGE)
        other = "middle" if scene.rig.spec.fitted == "narrow" else "narrow"
        with pytest.raises(InvalidInput, match="flow range is 'broad'"):
            scene.engine.fit_range("broad")
        scene.engine.fit_range(other)
        shown = scene.until(lambda shown: shown.state is EngineState.ASKING)
        assert shown.ask is not None
        assert shown.ask.id == "fit-range"
        assert scene.house.world.speed == 0.0
        scene.house.fit(0, other)
        scene.engine.answer("fit-range", shown.ask.choices[0])
        highest = [0.0]

        def ended(shown: Snapshot) -> bool:
            highest.append(abs(float(scene.house.plant.pressure_pa[0])))
            if shown.ask is not None:
                scene.engine.answer(shown.ask.id, shown.ask.choices[-1])
            return shown.state is EngineState.IDLE and not scene.engine.busy

        shown = scene.until(ended)
        assert max(highest) < 70.0
        assert [point.target_pa for point in shown.runs[0].points] == [-target for target in SHORT]
        assert shown.result is not None
        assert shown.result.runs[0].r2 > 0.9985
        same_digits(scene, shown)
