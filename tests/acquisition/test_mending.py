"""What no point can be taken with is asked about; what cannot lie on a line is left out; a weak fan gets its points."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from acquisition.multipoint import ALL_THE_SAME, CHECK_AGAIN
from acquisition.planning.spacing import halfway, respaced
from acquisition.points import Course, Taken
from acquisition.progress import NO_FLOW, TAKEN_AGAIN
from acquisition.repair import IS_RIGHT, KEEP_ALL, PUT_RIGHT, ask_lasting
from acquisition.report.content import content_of
from acquisition.report.remarks import deviations
from acquisition.snapshot import Activity, EngineState, PointState, Snapshot
from acquisition.steps import Ask, GoTo, StrikeLast
from analysis.units import Display
from drivers.clock import VirtualClock, seconds
from simulators import faults
from simulators.hoses import Hose
from tests.acquisition.scenes import Scene, a_scene
from tests.acquisition.test_multipoint import a_plan, walk

TARGETS = (58.0, 50.0, 42.0, 34.0, 26.0)


def to_the_third(scene: Scene) -> None:
    """Run until the third point is being averaged."""
    scene.begin(replace(scene.plan(targets_pa=TARGETS), safety="The fan may start.", hose_check=False))
    scene.until(
        lambda shown: shown.target_pa == -42.0 and shown.activity is Activity.AVERAGE and shown.activity_s > 4.0
    )


def asked(scene: Scene, ask_id: str) -> Ask:
    """Run until this is asked; the fan rests then."""
    shown = scene.until(lambda shown: shown.state is EngineState.ASKING, 60.0)
    assert shown.ask is not None
    assert shown.ask.id == ask_id
    assert scene.house.world.speed == 0.0
    return shown.ask


def taken(shown: Snapshot) -> list[float]:
    return [point.target_pa for point in shown.runs[0].points if point.state is PointState.TAKEN]


def test_a_hose_that_came_off_is_asked_about_and_the_point_begun_again(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        to_the_third(scene)
        scene.house.happen(faults.hose(1, Hose.OFF))
        ask = asked(scene, "flow-hose-off")
        assert ask.choices == (PUT_RIGHT, IS_RIGHT)
        scene.pass_time(20.0)
        scene.house.happen(faults.hose(1, Hose.SOUND))
        scene.engine.answer(ask.id, PUT_RIGHT)
        shown = scene.to_the_end()
        assert taken(shown) == [-target for target in TARGETS]
        assert shown.result is not None
        true = scene.house.true_q_m3_h(50.0, "depressurize")
        assert shown.result.mean.q50_m3_h.value == pytest.approx(true, rel=0.01)
        # The test stood still for a person: that nothing was watched meanwhile is no gap in the record.
        assert not any(flag.id == "time-gap" for flag in shown.flags)
        said = deviations(content_of(scene.job, 1), Display())
        assert any(line.startswith("Noticed: The fan runs and the flow element reads next to nothing") for line in said)


def test_where_nobody_mends_it_a_point_without_flow_spoils_no_result(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        to_the_third(scene)
        scene.house.happen(faults.hose(1, Hose.OFF))
        scene.until(lambda shown: shown.target_pa == -34.0)
        scene.house.happen(faults.hose(1, Hose.SOUND))
        shown = scene.to_the_end()
        struck = [point for point in shown.runs[0].points if point.state is PointState.STRUCK]
        assert [(point.target_pa, point.struck_reason) for point in struck] == [(-42.0, NO_FLOW)]
        assert shown.result is not None


def test_another_range_than_entered_is_asked_about_and_corrected(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        to_the_third(scene)
        scene.engine.pause()
        scene.pass_time(10.0)
        scene.house.happen(faults.range_changed("middle"))
        scene.engine.resume()
        ask = asked(scene, "fit-range")
        assert "with flow range middle it would lie on it" in ask.text
        assert (ask.choices[0], ask.choices[-1]) == ("Range middle is fitted", "Range narrow stays fitted")
        scene.engine.answer(ask.id, ask.choices[0])
        scene.pass_time(1.0)
        # It is large for this house, which is asked about once.
        ask = asked(scene, "fit-range")
        assert "below the 8 Pa that range middle is calibrated to" in ask.text
        scene.engine.answer(ask.id, ask.choices[1])
        shown = scene.until(lambda shown: len(taken(shown)) == 3)
        assert scene.rig.spec.fitted == "middle"
        true = scene.house.true_q_m3_h(42.0, "depressurize")
        assert shown.runs[0].points[2].flow_m3_h == pytest.approx(true, rel=0.03)


def test_a_flow_below_its_range_is_asked_about_while_the_point_is_averaged(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        right = scene.rig.spec.fitted
        scene.rig.fit(0, "wide")
        scene.house.happen(faults.range_changed("wide"))
        scene.begin(replace(scene.plan(targets_pa=TARGETS), safety="The fan may start.", hose_check=False))
        averaging = scene.until(lambda shown: shown.activity is Activity.AVERAGE and shown.target_pa is not None)
        noticed = scene.until(lambda shown: any(flag.id == "out-of-range" for flag in shown.flags))
        assert noticed.now_ns - averaging.now_ns < seconds(4.0)
        ask = asked(scene, "fit-range")
        assert "Pa at the flow element is below the 8 Pa that range wide is calibrated to." in ask.text
        assert ask.choices == (f"Range {right} is fitted", "Range wide stays fitted")
        scene.house.happen(faults.range_changed(right))
        scene.engine.answer(ask.id, ask.choices[0])
        shown = scene.until(lambda shown: len(taken(shown)) == 1)
        assert scene.rig.spec.fitted == right
        assert [flag.id for flag in shown.flags].count("out-of-range") == 1


def test_a_change_that_comes_a_second_time_may_be_a_flap() -> None:
    first, second = ask_lasting("Lasting step."), ask_lasting("Lasting step.", again=True)
    assert "flap" not in first.text
    assert "flap or damper that opens with the pressure" in second.text
    assert second.choices[0] == KEEP_ALL
    assert set(first.choices) == set(second.choices)
    assert CHECK_AGAIN != ALL_THE_SAME


def test_a_weak_fan_gets_five_points_below_what_it_reaches() -> None:
    assert respaced([40.0, 30.0, 20.0, 12.0], 43.0, 10.0) == [40.0, 30.0, 20.0, 12.0]
    spaced = respaced([18.0], 27.0, 10.0)
    assert spaced == pytest.approx([22.8, 18.5, 14.2, 10.0], abs=0.1)
    assert respaced([], 9.0, 10.0) == []
    steps = walk(a_plan(), reach_pa=27.0)
    reached = [abs(step.target_pa) for step in steps if isinstance(step, GoTo)]
    assert len(reached) >= 5
    assert max(reached[1:]) < 27.0
    (question,) = [step for step in steps if isinstance(step, Ask) and step.id == "reach"]
    assert "comes to 27 Pa; 60 Pa was wanted" in question.text
    assert not any(isinstance(step, StrikeLast) and step.reason == TAKEN_AGAIN for step in steps)


def test_two_points_further_apart_than_the_method_allows_get_one_between() -> None:
    # ISO 9972 5.3.4: not more than about 10 Pa apart (from memory).
    assert halfway("iso9972", 30.9, 20.2) == pytest.approx(25.5, abs=0.06)
    assert halfway("iso9972", 30.4, 20.0) is None
    assert halfway("resnet-380-single", 60.0, 20.0) is None
    course = Course(a_plan(), a_plan().directions[0], None, None, True)  # type: ignore[arg-type]  # neither is asked
    course.taken = [Taken(40.0, 40.9, 500.0), Taken(30.0, 30.9, 430.0)]
    assert course.gap(Taken(20.0, 20.2, 330.0)) == pytest.approx(25.5, abs=0.06)
    assert course.gap(Taken(21.0, 20.6, 330.0)) is None
    # Where the targets themselves lie so far apart somebody wanted it so.
    assert course.gap(Taken(15.0, 15.0, 280.0)) is None
