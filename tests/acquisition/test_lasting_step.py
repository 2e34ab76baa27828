"""Something comes off in the middle of a test and stays off: the person is asked, and the points say what it was."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from acquisition.rangedoubt import LASTING
from acquisition.regimes import BEFORE_STEP, regimes_of
from acquisition.repair import ANEW, KEEP_ALL, PUT_BACK, STAYS
from acquisition.report.content import content_of
from acquisition.report.remarks import deviations
from acquisition.snapshot import EngineState, PointState, Snapshot
from acquisition.testfile import load_stored_test
from analysis.units import Display
from drivers.clock import VirtualClock
from simulators.faults import came_off
from tests.acquisition.scenes import Scene, a_scene

TARGETS = (60.0, 52.0, 44.0, 36.0, 28.0, 20.0)
WIDER = 1.3


def to_the_question(scene: Scene) -> Snapshot:
    """Run until the person is asked what became of it: after three points the house leaks 30 % more."""
    plan = replace(scene.plan(targets_pa=TARGETS), safety="The fan may start.", hose_check=False, average_s=20.0)
    scene.begin(plan)
    taken = scene.until(lambda shown: sum(p.state is PointState.TAKEN for r in shown.runs for p in r.points) == 3)
    assert taken.result is not None
    scene.house.happen(came_off(WIDER), after_s=0.5)
    shown = scene.until(lambda shown: shown.state is EngineState.ASKING)
    assert shown.ask is not None
    assert shown.ask.id == LASTING
    assert shown.ask.choices == (STAYS, PUT_BACK, KEEP_ALL, ANEW)
    assert scene.house.world.speed == 0.0
    assert shown.ask.text.startswith("Lasting step: +")
    return shown


def to_the_end(scene: Scene, choice: str) -> Snapshot:
    """Answer, and let the test run to its end."""
    scene.engine.answer(LASTING, choice)

    def ended(shown: Snapshot) -> bool:
        assert abs(float(scene.house.plant.pressure_pa[0])) < 75.0
        return shown.state is EngineState.IDLE and not scene.engine.busy

    return scene.until(ended)


def test_where_it_stays_the_points_before_are_struck_and_taken_again(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, auto_answer=False) as scene:
        to_the_question(scene)
        shown = to_the_end(scene, STAYS)
        points = shown.runs[0].points
        struck = [point for point in points if point.state is PointState.STRUCK]
        assert [point.struck_reason for point in struck] == [BEFORE_STEP] * 3
        assert sorted(abs(p.target_pa) for p in points if p.state is PointState.TAKEN) == sorted(TARGETS)
        assert shown.result is not None
        true = scene.house.true_q_m3_h(50.0, "depressurize")
        assert shown.result.mean.q50_m3_h.value == pytest.approx(true, rel=0.01)
        found = regimes_of(points, shown.result.runs[0])
        assert found is not None
        assert found.changed_at == 3
        assert found.step_m3_h.value == pytest.approx(true * (1 - 1 / WIDER), rel=0.04)
        assert scene.job.load(1).test() == shown.test
        said = deviations(content_of(scene.job, 1), Display())
    stored = load_stored_test(tmp_path / "scene.airseam", clock)
    (sentence,) = stored.regimes(stored.result(), Display())
    assert sentence.startswith("Two regimes (depressurize): after point 3 the house leaks +")
    assert [item for item in said if item.startswith("Two regimes")] == [sentence]


@pytest.mark.walk
def test_where_it_is_put_back_the_points_before_count_on(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, auto_answer=False) as scene:
        to_the_question(scene)
        scene.house.happen(came_off(1.0))
        scene.pass_time(1.0)
        shown = to_the_end(scene, PUT_BACK)
        points = [p for p in shown.runs[0].points if p.state is PointState.TAKEN]
        assert sorted(abs(p.target_pa) for p in points) == sorted(TARGETS)
        assert shown.result is not None
        assert shown.result.runs[0].r2 > 0.999
        assert regimes_of(shown.runs[0].points, shown.result.runs[0]) is None


@pytest.mark.walk
def test_all_points_can_be_kept(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, auto_answer=False) as scene:
        to_the_question(scene)
        shown = to_the_end(scene, KEEP_ALL)
        assert [p.state for p in shown.runs[0].points] == [PointState.TAKEN] * len(TARGETS)
        assert shown.result is not None
        assert regimes_of(shown.runs[0].points, shown.result.runs[0]) is not None


@pytest.mark.walk
def test_the_direction_can_be_begun_again(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, auto_answer=False) as scene:
        to_the_question(scene)
        shown = to_the_end(scene, ANEW)
        assert [run.complete for run in shown.runs] == [False, True]
        assert len(shown.runs[1].points) == len(TARGETS)
        assert shown.result is not None
        true = scene.house.true_q_m3_h(50.0, "depressurize")
        assert shown.result.mean.q50_m3_h.value == pytest.approx(true, rel=0.01)
        assert scene.job.load(1).test() == shown.test
