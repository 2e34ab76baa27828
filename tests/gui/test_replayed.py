"""A recorded test played back through the window: as an instrument, with its marks, to the same digits."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from acquisition.job import Job, LoadedTest, RecordState
from gui.viewmodels.moment import Place, RigState
from gui.views.rig_place import REPLAY
from tests.gui.conftest import Stage


@pytest.fixture
def record(stage: Stage, tested: Path) -> LoadedTest:
    """Open a copy of the tested job in the window and choose it for playing back."""
    stage.program.desk.replaying.clock = lambda _: stage.clock
    stage.open_copy(tested)
    stage.program.actions.replay.trigger()
    stage.draw()
    assert stage.program.desk.job is not None
    return stage.program.desk.job.load(1)


def play(stage: Stage) -> None:
    stage.program.window.rig.replay.play.click()
    stage.pass_time(0.5)


@pytest.mark.walk
def test_a_record_is_an_instrument_and_gives_its_own_result_to_the_digit(stage: Stage, record: LoadedTest) -> None:
    program, page = stage.program, stage.program.window.rig.replay
    assert program.window.rig.pages.currentIndex() == REPLAY
    assert page.job.full == "copy.airseam"
    assert page.test.count() == 1
    play(stage)
    desk = program.desk
    assert desk.busy
    assert program.screen.place is Place.TEST
    assert desk.job is not None
    assert desk.job.path.name == "copy played back.airseam"
    # While it plays the window shows the readings of the record and the points as they are closed.
    seen = stage.until(lambda now: bool(now.runs) and len(now.runs[0].points) == 2)
    assert seen.now_ns < record.runs[0].record.ended_ns  # type: ignore[operator]  # it has ended
    assert seen.envelope_pa is not None
    assert seen.flow_m3_h is not None
    assert seen.sentence == "Playing back the recorded test: the point at −50 Pa."
    # Who stops to talk about what is seen loses nothing of it.
    stage.press()
    stood_ns = stage.snapshot().now_ns
    stage.pass_time(25.0)
    assert stage.snapshot().now_ns - stood_ns < 1e9
    assert stage.program.window.next_bar.primary.text() == "Go on"
    stage.press()
    marks = {mark.text for mark in record.marks if mark.t_ns >= record.runs[0].record.started_ns}
    for _ in range(4000):
        stage.pass_time(0.5)
        if desk.engine is None:
            break
    stage.draw()
    assert desk.rig().state is RigState.NONE
    again = desk.job.load(1)
    assert again.record.state is RecordState.COMPLETE
    assert json.loads(again.record.result_json) == json.loads(record.record.result_json)
    assert marks <= {mark.text for mark in again.marks}
    assert all(item.ok for item in desk.job.verify())
    assert any("the same to the digit" in notice.sentence for notice in program.window.notices.notices)


def test_a_record_that_is_ended_early_says_so_and_leaves_the_rig_free(stage: Stage, record: LoadedTest) -> None:
    desk = stage.program.desk
    play(stage)
    stage.until(lambda now: bool(now.runs) and len(now.runs[0].points) == 1)
    desk.repairs.take_again(None)
    desk.repairs.fit_range("wide")
    stage.draw()
    assert any("stays as it was" in notice.sentence for notice in stage.program.window.notices.notices)
    desk.end_test()
    stage.pass_time(1.0)
    assert desk.rig().state is RigState.NONE
    # The next play-back gets a name of its own, and the house can be connected again.
    stage.program.actions.replay.trigger()
    play(stage)
    assert desk.job is not None
    assert desk.job.path.name == "copy played back 2.airseam"
    desk.end_test()
    stage.pass_time(1.0)
    stage.connect()
    assert desk.rig().state is RigState.CONNECTED
    assert not desk.replaying.playing


def test_what_is_no_job_and_a_job_without_a_test_are_answered_with_a_sentence(
    stage: Stage, record: LoadedTest, tmp_path: Path
) -> None:
    intents, page = stage.program.intents, stage.program.window.rig.replay
    wrong = tmp_path / "wrong.airseam"
    wrong.write_text("no job", encoding="utf-8")
    intents.replay.choose(wrong)
    stage.draw()
    assert page.play.isEnabled()
    Job.create(tmp_path / "empty.airseam", stage.clock, "Empty").close()
    intents.replay.choose(tmp_path / "empty.airseam")
    stage.draw()
    assert not page.play.isEnabled()
    assert not page.test.isEnabled()
