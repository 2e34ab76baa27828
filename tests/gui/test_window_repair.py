"""Mending a test in the window: going on after a crash, a point once more, another flow range, strikes taken back."""

from __future__ import annotations

import shutil
from pathlib import Path

from acquisition.job import RecordState
from acquisition.snapshot import Activity, EngineState, PointState, Snapshot
from gui.viewmodels.prompt import CORRECT, END_TEST, FIT, NOT_RESUME, STRIKE, STRIKE_ALL
from tests.gui.conftest import Stage
from tests.gui.driven import click, start


def taken(now: Snapshot) -> int:
    return sum(point.state is PointState.TAKEN for run in now.runs for point in run.points)


def crashed(stage: Stage, folder: Path) -> Path:
    """Return what is on the disk when the program dies after two points; the window goes on with another job."""
    start(stage)
    stage.until(lambda now: taken(now) == 2)
    job = stage.program.desk.job
    assert job is not None
    job.flush()
    copy = folder / "crashed.airseam"
    for part in ("", "-wal"):
        shutil.copy(f"{job.path}{part}", f"{copy}{part}")
    stage.program.desk.end_test()
    stage.pass_time(1.0)
    stage.program.intents.opened(copy)
    stage.draw()
    return copy


def test_the_big_button_goes_on_with_an_interrupted_test(stage: Stage, tmp_path: Path) -> None:
    crashed(stage, tmp_path)
    window = stage.program.window
    assert window.next_bar.primary.text() == "Go on with the test"
    assert window.test.prompt.isVisible()
    stage.press()
    asked = stage.until(lambda now: now.ask is not None and now.ask.id == "safety")
    assert asked.state is EngineState.ASKING
    stage.press()
    asked = stage.until(lambda now: now.ask is not None and now.ask.id == "set-up-again")
    assert asked.ask is not None
    assert "with 2 points taken" in asked.ask.text
    stage.press()
    stage.until(lambda now: now.state is EngineState.IDLE)
    stage.pass_time(0.3)
    job = stage.program.desk.job
    assert job is not None
    (record,) = job.tests()
    assert record.state is RecordState.COMPLETE
    assert len(stage.snapshot().runs[0].points) == 5
    assert window.next_bar.primary.text() == "Open the report"
    assert all(item.ok for item in job.verify())


def test_an_interrupted_test_can_be_left_and_gone_on_with_by_its_key(stage: Stage, tmp_path: Path) -> None:
    crashed(stage, tmp_path)
    window = stage.program.window
    click(stage, NOT_RESUME)
    assert window.next_bar.primary.text() == "Start the test"
    assert not window.test.prompt.isVisible()
    stage.program.intents._actions.go_on.trigger()
    stage.until(lambda now: now.ask is not None and now.ask.id == "safety")


def test_a_point_is_taken_again_by_its_key(stage: Stage) -> None:
    start(stage)
    stage.until(lambda now: taken(now) == 2)
    stage.draw()
    window = stage.program.window
    window.test.points.view.selectRow(0)
    stage.program.intents._actions.again.trigger()
    stage.until(lambda now: len(now.runs[0].points) == 6)
    assert stage.snapshot().runs[0].points[0].struck_reason == "taken again"


def test_another_flow_range_stops_the_fan_and_begins_the_point_anew(stage: Stage) -> None:
    start(stage)
    stage.until(lambda now: now.activity is Activity.AVERAGE)
    before = stage.houses[-1].house.fitted
    stage.program.intents._actions.fit_range.trigger()
    stage.draw()
    prompt = stage.program.window.test.prompt
    assert prompt.isVisible()
    prompt.reason.setCurrentText("middle" if before != "middle" else "narrow")
    click(stage, FIT)
    asked = stage.until(lambda now: now.ask is not None)
    assert asked.ask is not None
    assert asked.ask.id == "fit-range"
    assert stage.houses[-1].world.speed == 0.0
    click(stage, asked.ask.choices[0])
    shown = stage.until(lambda now: taken(now) == 1)
    assert [flag.id for flag in shown.flags].count("range-changed") == 1


def test_strikes_are_taken_back_and_done_again(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    table = stage.program.window.test.points
    table.view.selectRow(1)
    table.toggle_chosen()
    stage.draw()
    click(stage, STRIKE)

    def struck() -> bool:
        stage.draw()
        assert table.model.picture is not None
        return table.model.picture.rows[1].struck

    assert struck()
    stage.program.intents.undo()
    assert not struck()
    stage.program.intents.redo()
    assert struck()


def test_the_range_of_points_already_taken_is_corrected_by_one_key_and_taken_back(stage: Stage, tested: Path) -> None:
    job = stage.open_copy(tested)
    window, repairs = stage.program.window, stage.program.desk.repairs
    loaded = job.load(1)
    right = loaded.test()
    ranges = [item.name for item in loaded.record.rig.ranges]
    entered = loaded.record.rig.fitted
    wrong = ranges[ranges.index(entered) - 1]
    last = [item.id for item in loaded.runs[1].windows if item.target_pa is not None][2:]
    repairs.correct_range(last, wrong)
    stage.draw()
    table = window.test.points
    assert job.load(1).test() != right
    assert window.test.flow.foot.text() == "Read with another flow range? Shift+F"
    rows = table.model.picture.rows if table.model.picture is not None else ()
    assert [row.sign for row in rows] == ["✓", "✓", "✎", "✎", "✎"]
    assert rows[2].tip == f"Worked out with flow range {wrong}; {entered} had been entered."
    # Nothing is marked: the key asks about those that leave the line, the straightest answer first.
    stage.program.actions.correct_range.trigger()
    stage.draw()
    prompt = window.test.prompt
    assert prompt.isVisible()
    offers = [prompt.reason.itemText(at) for at in range(prompt.reason.count())]
    chosen = next(text for text in offers if f"range {entered}; " in text)
    prompt.reason.setEditText(chosen)
    click(stage, CORRECT)
    stage.draw()
    assert job.load(1).test() == right
    assert window.test.flow.foot.text() != "Read with another flow range? Shift+F"
    for _ in range(2):
        repairs.undo()
    stage.draw()
    assert job.load(1).test() == right
    assert all(not window.corrected for run in job.load(1).runs for window in run.windows)
    repairs.redo()
    table.view.selectAll()
    table.correct_range()
    stage.draw()
    prompt.reason.setEditText("broad")
    click(stage, CORRECT)
    stage.draw()
    told = [notice.sentence for notice in window.notices.notices]
    assert any("'broad': one of this rig's is needed" in sentence for sentence in told)


def test_several_points_are_struck_and_restored_at_once(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    table = stage.program.window.test.points
    table.view.selectAll()
    table.toggle_chosen()
    stage.draw()
    click(stage, STRIKE_ALL)
    stage.draw()
    assert table.model.picture is not None
    assert all(row.struck for row in table.model.picture.rows)
    stage.program.intents.undo()
    stage.draw()
    assert not any(row.struck for row in table.model.picture.rows)


def test_a_question_with_one_answer_is_no_dead_end(stage: Stage) -> None:
    stage.connect()
    stage.shorten()
    stage.program.intents.edit("directions", "both")
    stage.press()
    stage.press()
    asked = stage.until(lambda now: now.ask is not None and now.ask.id == "turn-fan")
    assert asked.ask is not None
    assert len(asked.ask.choices) == 1
    click(stage, END_TEST)
    stage.pass_time(1.0)
    job = stage.program.desk.job
    assert job is not None
    assert not stage.engine().busy
    assert job.tests()[-1].state is RecordState.STOPPED
