"""A whole test in the window with the keyboard, and everything that can come between."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from acquisition.job import RecordState
from acquisition.snapshot import EngineState, PointState, Severity, Snapshot
from gui.viewmodels.moment import Place
from gui.viewmodels.next_step import Verb
from gui.viewmodels.prompt import END_TEST
from gui.views.parts import StopButton
from tests.gui.conftest import Stage
from tests.gui.driven import click, key, start


def test_a_test_runs_from_one_press_to_the_saved_report(stage: Stage, tmp_path: Path) -> None:
    stage.connect()
    stage.shorten()
    stage.run_to_the_end()
    window = stage.program.window
    assert window.next_bar.primary.text() == "Open the report"
    assert window.test.result._figure.text().startswith("1.7")
    stage.press()
    assert stage.program.screen.place is Place.REPORT
    assert len(window.report.preview._pages) == 3
    assert window.next_bar.primary.text() == "Save the report"
    stage.press()
    dialog = stage.program.intents.files.dialog
    assert dialog is not None
    dialog.picked.emit(str(tmp_path / "report.pdf"))
    dialog.reject()
    stage.draw()
    assert (tmp_path / "report.pdf").read_bytes().startswith(b"%PDF-")
    assert window.next_bar.primary.text() == "Start the test"


def test_the_result_is_what_the_job_file_gives_again(stage: Stage) -> None:
    stage.connect()
    stage.shorten()
    stage.run_to_the_end()
    live = stage.snapshot().result
    job = stage.program.desk.job
    assert job is not None
    stage.program.desk.open_job(job.path)
    stage.draw()
    again, reopened = stage.program.desk.showing.test(None), stage.program.desk.job
    assert again is not None
    assert reopened is not None
    assert live is not None
    assert again.result == live
    assert [item.ok for item in reopened.verify()] == [True] * 3


def test_space_is_the_big_button_and_a_held_key_presses_once(stage: Stage) -> None:
    stage.connect()
    pressed = []
    stage.program.window.next_bar.pressed.connect(lambda step: pressed.append(step.verb))
    stage.program.window.setFocus()
    QTest.keyClick(stage.program.window, Qt.Key.Key_Space)
    assert pressed == [Verb.START]


def test_a_press_meant_for_the_last_question_is_not_taken_for_the_next(stage: Stage) -> None:
    stage.connect()
    stage.program.window.next_bar.settle_ms = 60_000
    stage.program.window.next_bar.press()
    stage.pass_time(1.0)
    assert stage.snapshot().state is EngineState.IDLE


def test_questions_stand_in_the_test_place_and_are_not_answered_from_elsewhere(stage: Stage) -> None:
    stage.connect()
    stage.press()
    window = stage.program.window
    assert window.test.prompt.isVisible()
    assert "flue gas" in window.test.prompt._caution.text()
    stage.program.intents.go_to(Place.REPORT)
    stage.draw()
    assert window.next_bar.primary.text() == "Go to the test"
    stage.press()
    assert stage.program.screen.place is Place.TEST
    assert stage.snapshot().state is EngineState.ASKING
    click(stage, "Do not test")
    stage.pass_time(1.0)
    assert stage.snapshot().state is EngineState.IDLE


def test_escape_stops_the_fan_from_every_place_even_while_typing(stage: Stage) -> None:
    start(stage)
    window = stage.program.window
    for place in Place:
        stage.until(lambda now: now.fan_fraction > 0.2)
        stage.program.intents.go_to(place)
        stage.draw()
        target = window.job.fields["volume"].input if place is Place.JOB else window.places[place]
        key(target, Qt.Key.Key_Escape)
        stage.pass_time(0.2)
        assert stage.snapshot().state is EngineState.PAUSED, place
        assert stage.snapshot().fan_fraction == 0.0
        stage.pass_time(5.0)
        assert stage.houses[-1].world.speed == 0.0
        stage.engine().resume()
        stage.pass_time(0.3)


def test_escape_in_a_dialog_stops_the_fan_and_closes_the_dialog(stage: Stage) -> None:
    start(stage)
    stage.until(lambda now: now.fan_fraction > 0.2)
    stage.program.intents.open_job()
    dialog = stage.program.intents.files.dialog
    assert dialog is not None
    assert not dialog.isModal()
    assert dialog.findChild(StopButton) is not None
    key(dialog, Qt.Key.Key_Escape)
    stage.pass_time(0.3)
    assert stage.snapshot().state is EngineState.PAUSED
    assert stage.program.intents.files.dialog is None


def test_the_stop_button_of_a_dialog_stops_the_fan(stage: Stage) -> None:
    start(stage)
    stage.until(lambda now: now.fan_fraction > 0.2)
    stage.program.intents.new_job()
    dialog = stage.program.intents.files.dialog
    assert dialog is not None
    dialog.stop.click()
    stage.pass_time(0.3)
    assert stage.snapshot().state is EngineState.PAUSED
    dialog.reject()


def test_a_stopped_test_goes_on_and_loses_nothing(stage: Stage) -> None:
    start(stage)

    def taken(now: Snapshot, at: int) -> bool:
        points = now.runs[-1].points if now.runs else ()
        return len(points) > at and points[at].state is PointState.TAKEN

    stage.until(lambda now: taken(now, 1))
    before = stage.snapshot().runs[-1].points[:2]
    stage.program.window.ribbon.stop.click()
    stage.pass_time(2.0)
    assert stage.program.window.next_bar.primary.text() == "Go on"
    stage.press()
    stage.until(lambda now: taken(now, 2))
    assert stage.snapshot().runs[-1].points[:2] == before


def test_a_paused_test_can_be_ended_where_it_is(stage: Stage) -> None:
    start(stage)
    stage.until(lambda now: now.fan_fraction > 0.2)
    click(stage, "Pause test")
    click(stage, END_TEST)
    stage.pass_time(1.0)
    job = stage.program.desk.job
    assert job is not None
    assert job.tests()[-1].state is RecordState.STOPPED


def test_both_directions_have_their_table_and_one_result(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    table = stage.program.window.test.points
    assert table.model.picture is not None
    assert table.model.picture.rows[0].cells[0] == "60"
    click(stage, "Depressurize")
    assert table.model.picture.rows[0].cells[0] == "−60"
    shown = stage.program.desk.showing.test(None)
    assert shown is not None
    assert [run.complete for run in shown.runs] == [True, True]
    assert shown.result is not None
    assert len(shown.result.runs) == 2


def test_an_unplugged_gauge_pauses_the_test_and_is_told(stage: Stage) -> None:
    start(stage)
    stage.until(lambda now: now.fan_fraction > 0.2)
    stage.houses[-1].ports["sim:gauge"].unplug()
    stage.until(lambda now: now.state is EngineState.PAUSED, 10.0)
    assert stage.program.window.notices.notices[0].severity is Severity.ALARM
    assert "✗" in [item._item.mark for item in stage.program.window.rail._buttons]
    stage.houses[-1].ports["sim:gauge"].replug()
    stage.pass_time(8.0)
    stage.press()
    stage.until(lambda now: now.state is EngineState.RUNNING and now.fan_fraction > 0.1)
