"""Running a test without a window, on a simulated house in virtual time."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path

import pytest

from acquisition.conduct import END, GO_ON, LOST_LIMIT_S, Conclusion, Outcome, await_links, conduct
from acquisition.job import RecordState
from acquisition.multipoint import DO_NOT_TEST
from acquisition.snapshot import Activity, EngineState, Snapshot
from acquisition.steps import Ask
from drivers.clock import VirtualClock, seconds
from tests.acquisition.scenes import SHORT, Scene, a_scene


def run(
    scene: Scene,
    ask: Callable[[Ask], str | None] | None = None,
    watch: Callable[[Snapshot], None] = lambda shown: None,
    cancel: threading.Event | None = None,
) -> Outcome:
    plan = scene.plan()
    recorder = scene.job.record(plan, scene.rig.spec)
    return conduct(scene.engine, scene.clock, plan, recorder, ask, watch, cancel or threading.Event())


def state(scene: Scene) -> RecordState:
    return scene.job.tests()[-1].state


def test_a_rig_that_answers_by_itself_runs_to_its_end(clock: VirtualClock, tmp_path: Path) -> None:
    seen: list[Snapshot] = []
    with a_scene(clock, tmp_path) as scene:
        outcome = run(scene, watch=seen.append)
        assert outcome.conclusion is Conclusion.COMPLETE
        assert outcome.sentence == ""
        assert outcome.snapshot.state is EngineState.IDLE
        assert outcome.snapshot.result is not None
        assert state(scene) is RecordState.COMPLETE
    assert seen[-1] is outcome.snapshot
    assert {Activity.ZERO, Activity.AVERAGE} <= {shown.activity for shown in seen}


def test_questions_go_to_the_person_each_once(clock: VirtualClock, tmp_path: Path) -> None:
    asked: list[str] = []

    def ask(question: Ask) -> str:
        asked.append(question.id)
        return question.choices[0]

    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        assert run(scene, ask).conclusion is Conclusion.COMPLETE
    assert asked == ["safety"]


def test_do_not_test_moves_nothing(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        outcome = run(scene, lambda question: DO_NOT_TEST)
        assert outcome.snapshot.runs == ()
        assert outcome.snapshot.result is None
        assert scene.house.world.speed == 0.0


def test_no_answer_ends_the_test(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        outcome = run(scene, lambda question: None)
        assert outcome.conclusion is Conclusion.STOPPED
        assert "by hand" in outcome.sentence
        assert state(scene) is RecordState.STOPPED


def test_cancelling_stops_the_fan_and_keeps_what_was_read(clock: VirtualClock, tmp_path: Path) -> None:
    cancel = threading.Event()

    def watch(shown: Snapshot) -> None:
        if shown.activity is Activity.AVERAGE and shown.target_pa == -40.0:
            cancel.set()

    with a_scene(clock, tmp_path) as scene:
        outcome = run(scene, watch=watch, cancel=cancel)
        assert outcome.conclusion is Conclusion.STOPPED
        assert not scene.engine.busy
        assert scene.house.world.speed < 0.05
        assert len(scene.job.load(1).runs[0].windows) == 3  # a zero and two points
        assert state(scene) is RecordState.STOPPED


def pull_at_40(scene: Scene, *, back_after_s: float) -> Callable[[Snapshot], None]:
    """Return a watcher that pulls the gauge's plug in the middle of a point."""
    port = scene.house.ports["sim:gauge"]
    pulled_ns: list[int] = []

    def watch(shown: Snapshot) -> None:
        if not pulled_ns and shown.activity is Activity.AVERAGE and shown.target_pa == -40.0 and shown.activity_s > 3.0:
            port.unplug()
            pulled_ns.append(shown.now_ns)
        elif pulled_ns and shown.now_ns - pulled_ns[0] > seconds(back_after_s):
            port.replug()

    return watch


def test_a_person_decides_whether_to_go_on_after_a_pause(clock: VirtualClock, tmp_path: Path) -> None:
    asked: list[Ask] = []

    def ask(question: Ask) -> str:
        asked.append(question)
        if question.id == "paused":
            scene.house.ports["sim:gauge"].replug()
            scene.pass_time(10.0)
        return question.choices[0]

    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        outcome = run(scene, ask, pull_at_40(scene, back_after_s=1e9))
        assert outcome.conclusion is Conclusion.COMPLETE
        assert [point.target_pa for point in outcome.snapshot.runs[0].points] == [-target for target in SHORT]
    assert [question.id for question in asked] == ["safety", "paused"]
    assert asked[1].choices == (GO_ON, END)
    assert "gauge" in asked[1].text or "pressure" in asked[1].text


def test_going_on_too_early_asks_again(clock: VirtualClock, tmp_path: Path) -> None:
    """The link is still lost: the watchdog stops the fan once more, and the person is not left alone."""
    answers = [GO_ON, GO_ON, END]

    def ask(question: Ask) -> str:
        return answers.pop(0) if question.id == "paused" else question.choices[0]

    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        outcome = run(scene, ask, pull_at_40(scene, back_after_s=1e9))
        assert outcome.conclusion is Conclusion.STOPPED
        assert outcome.sentence
        assert answers == []


@pytest.mark.parametrize(
    ("back_after_s", "expected"),
    [(60.0, Conclusion.COMPLETE), pytest.param(1e9, Conclusion.FAULTED, marks=pytest.mark.walk)],
)
def test_nobody_there_waits_for_a_lost_link_but_not_for_ever(
    back_after_s: float, expected: Conclusion, clock: VirtualClock, tmp_path: Path
) -> None:
    with a_scene(clock, tmp_path) as scene:
        outcome = run(scene, watch=pull_at_40(scene, back_after_s=back_after_s))
        assert outcome.conclusion is expected
        assert (f"within {LOST_LIMIT_S:.0f} s" in outcome.sentence) == (expected is Conclusion.FAULTED)
        assert scene.house.world.speed == 0.0


def test_links_are_awaited_and_the_silent_one_is_named(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        assert await_links(scene.engine, clock, threading.Event()) == ""
        scene.house.ports["sim:gauge"].unplug()
        scene.pass_time(5.0)
        began_ns = clock.now_ns()
        sentence = await_links(scene.engine, clock, threading.Event(), limit_s=10.0)
        assert sentence.startswith("Instrument gauge at sim:gauge: ")
        assert clock.now_ns() - began_ns >= seconds(10.0)
        cancelled = threading.Event()
        cancelled.set()
        assert await_links(scene.engine, clock, cancelled) != ""
