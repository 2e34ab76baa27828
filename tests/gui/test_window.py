"""The window on a simulated house: a whole test with the keyboard, and everything that can come between."""

from __future__ import annotations

import json
import sqlite3
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QPoint, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QPushButton, QWidget

from acquisition.job import RecordState
from acquisition.snapshot import EngineState, PointState, Severity, Snapshot
from analysis.units import System
from gui.viewmodels.moment import Place, RigState
from gui.viewmodels.next_step import Verb
from gui.viewmodels.prompt import CLOSE, END_TEST, STAY, STRIKE
from gui.views.parts import StopButton
from tests.gui.conftest import Stage


def key(widget: QWidget, which: Qt.Key, modifiers: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    """Press and release a key on a widget."""
    for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
        QApplication.sendEvent(widget, QKeyEvent(kind, which, modifiers))


def click(stage: Stage, words: str) -> None:
    """Press the visible button with these words."""
    buttons = [item for item in stage.program.window.findChildren(QPushButton) if item.isVisible()]
    next(item for item in buttons if item.text() == words).click()
    stage.pass_time(0.3)


def start(stage: Stage) -> None:
    """Connect the house, make the test short, start it and answer the safety question."""
    stage.connect()
    stage.shorten()
    stage.press()
    stage.press()


def test_a_first_start_says_what_to_do_and_does_it(stage: Stage) -> None:
    bar = stage.program.window.next_bar
    assert bar.primary.text() == "Connect the simulated rig"
    stage.press()
    stage.pass_time(3.0)
    assert bar.primary.text() == "Start the test"
    assert stage.program.desk.rig().state is RigState.CONNECTED


def test_a_test_runs_from_one_press_to_the_saved_report(stage: Stage, tmp_path: Path) -> None:
    stage.connect()
    stage.shorten()
    stage.run_to_the_end()
    window = stage.program.window
    assert window.next_bar.primary.text() == "Open the report"
    assert window.test.result._figure.text().startswith("1.7")
    stage.press()
    assert stage.program.screen.place is Place.REPORT
    assert len(window.report.preview._pages) == 1
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
    again, reopened = stage.program.desk.shown(None), stage.program.desk.job
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


@pytest.mark.parametrize("place", list(Place))
def test_escape_stops_the_fan_from_every_place_even_while_typing(stage: Stage, place: Place) -> None:
    start(stage)
    stage.until(lambda now: now.fan_fraction > 0.2)
    stage.program.intents.go_to(place)
    stage.draw()
    window = stage.program.window
    target = window.job.fields["volume"].input if place is Place.JOB else window.places[place]
    key(target, Qt.Key.Key_Escape)
    stage.pass_time(0.2)
    assert stage.snapshot().state is EngineState.PAUSED
    assert stage.snapshot().fan_fraction == 0.0
    stage.pass_time(5.0)
    assert stage.houses[-1].world.speed == 0.0


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


def test_a_point_is_struck_with_a_reason_and_restored(stage: Stage) -> None:
    stage.connect()
    stage.shorten()
    stage.run_to_the_end()
    table = stage.program.window.test.points
    before = stage.snapshot().result
    table.view.selectRow(1)
    table.toggle_chosen()
    stage.draw()
    stage.program.window.test.prompt.reason.setEditText("The dog went out")
    click(stage, STRIKE)
    assert table.model.picture is not None
    assert table.model.picture.rows[1].tip == "Struck: The dog went out"
    assert stage.snapshot().result != before
    table.view.selectRow(1)
    table.toggle_chosen()
    stage.pass_time(0.3)
    assert stage.snapshot().result == before


def test_a_point_of_a_test_out_of_the_file_is_struck_too(stage: Stage, tested: Path) -> None:
    job = stage.open_copy(tested)
    table = stage.program.window.test.points
    table.view.selectRow(2)
    table.toggle_chosen()
    stage.draw()
    click(stage, STRIKE)
    assert table.model.picture is not None
    assert table.model.picture.rows[2].struck
    assert job.load(1).runs[1].windows[3].struck_reason == "A door or window was opened"


def test_points_to_come_cannot_be_struck(stage: Stage) -> None:
    table = stage.program.window.test.points
    table.view.selectRow(0)
    table.toggle_chosen()
    assert stage.program.screen.strike is None


def test_both_directions_have_their_table_and_one_result(stage: Stage) -> None:
    stage.connect()
    stage.shorten()
    stage.program.intents.edit("directions", "both")
    stage.run_to_the_end()
    table = stage.program.window.test.points
    assert table.model.picture is not None
    assert table.model.picture.rows[0].cells[0] == "60"
    click(stage, "Depressurize")
    assert table.model.picture.rows[0].cells[0] == "−60"
    assert [run.complete for run in stage.snapshot().runs] == [True, True]


def test_residuals_are_one_key_away(stage: Stage) -> None:
    window = stage.program.window
    window.setFocus()
    QTest.keyClick(window, Qt.Key.Key_R)
    assert window.test.plots.currentWidget() is window.test.residuals
    QTest.keyClick(window, Qt.Key.Key_R)
    assert window.test.plots.currentWidget() is window.test.flow


def test_letters_and_spaces_typed_into_a_field_stay_there(stage: Stage) -> None:
    stage.program.intents.go_to_field("stage")
    stage.draw()
    line = stage.program.window.job.fields["stage"].line
    assert line is not None
    QTest.keyClicks(line, "ax r 12")
    assert line.text() == "ax r 12"
    assert stage.program.screen.place is Place.JOB


def test_edits_are_kept_at_once_and_undone_by_key(stage: Stage) -> None:
    stage.program.intents.go_to_field("volume")
    stage.draw()
    line = stage.program.window.job.fields["volume"].line
    assert line is not None
    line.setText("310")
    key(line, Qt.Key.Key_Return)
    stage.draw()
    job = stage.program.desk.job
    assert job is not None
    assert job.draft().building.volume_m3 == 310.0
    stage.program.window.setFocus()
    QTest.keyClick(stage.program.window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    stage.draw()
    assert job.draft().building.volume_m3 is None
    assert line.text() == ""


def test_a_field_error_is_shown_in_its_place(stage: Stage) -> None:
    stage.program.intents.go_to_field("volume")
    stage.program.intents.edit("volume", "many")
    stage.draw()
    field = stage.program.window.job.fields["volume"]
    assert field._message.text().startswith("✗ Internal volume is 'many'")
    assert field.input.property("wrong") == "true"


def test_what_is_still_being_typed_counts_when_the_test_starts(stage: Stage) -> None:
    stage.connect()
    stage.program.intents.go_to_field("volume")
    stage.draw()
    line = stage.program.window.job.fields["volume"].line
    assert line is not None
    line.setText("333")
    stage.press()
    job = stage.program.desk.job
    assert job is not None
    assert job.tests()[-1].plan.building.volume_m3 == 333.0


def test_a_changed_building_becomes_a_version_with_its_reason(stage: Stage, tested: Path) -> None:
    job = stage.open_copy(tested)
    stage.connect()
    stage.program.intents.edit("volume", "310")
    stage.program.intents.edit("reason", "the attic was measured again")
    stage.draw()
    stage.press()
    opened = stage.program.desk.job
    assert opened is not None
    assert opened is job
    assert [version.reason for version in job.building_versions] == ["as first entered", "the attic was measured again"]
    click(stage, "Do not test")


def test_units_change_what_is_seen_and_not_what_is_stored(stage: Stage) -> None:
    stage.connect()
    job = stage.program.desk.job
    assert job is not None
    before = job.draft()
    stage.program.window.setFocus()
    QTest.keyClick(stage.program.window, Qt.Key.Key_U, Qt.KeyboardModifier.ControlModifier)
    stage.program.intents.go_to(Place.JOB)
    stage.draw()
    assert stage.program.screen.display.system is System.US
    assert stage.program.window.job.fields["volume"].text() == "10\u2009594.4"
    stage.program.intents.go_to(Place.TEST)
    stage.draw()
    assert job.draft() == before


def test_the_theme_can_be_forced_and_is_remembered(stage: Stage, tmp_path: Path) -> None:
    window = stage.program.window
    window.setFocus()
    QTest.keyClick(window, Qt.Key.Key_T, Qt.KeyboardModifier.ControlModifier)
    assert window.look.theme.name == "dark"
    QTest.keyClick(window, Qt.Key.Key_T, Qt.KeyboardModifier.ControlModifier)
    assert window.look.theme.name == "light"
    assert json.loads((tmp_path / "settings.json").read_text())["mode"] == "light"


def test_closing_at_rest_closes(stage: Stage) -> None:
    stage.connect()
    stage.program.window.close()
    stage.draw()
    assert stage.program.window.may_close
    assert stage.program.desk.engine is None
    assert stage.program.desk.job is None


def test_closing_during_a_test_asks_once_stops_the_fan_and_keeps_the_record(stage: Stage) -> None:
    start(stage)
    stage.until(lambda now: now.fan_fraction > 0.2)
    window, desk = stage.program.window, stage.program.desk
    job = desk.job
    assert job is not None
    path = job.path
    window.close()
    stage.draw()
    assert window.close_prompt.isVisible()
    assert not window.may_close
    click(stage, STAY)
    assert desk.busy
    window.close()
    stage.draw()
    next(item for item in window.close_prompt._buttons if item.text() == CLOSE).click()
    assert stage.program.window.may_close
    assert desk.job is None
    with sqlite3.connect(path) as db:
        assert db.execute("SELECT state FROM run").fetchall() == [("stopped",)]
    db.close()
    assert stage.houses[-1].world.speed == 0.0


def test_a_second_close_while_asking_does_not_ask_again(stage: Stage) -> None:
    start(stage)
    stage.program.window.close()
    stage.program.window.close()
    stage.draw()
    assert stage.program.screen.asking_to_close
    assert not stage.program.screen.closing


def test_another_job_is_not_opened_during_a_test(stage: Stage, tmp_path: Path) -> None:
    start(stage)
    assert not stage.program.desk.open_job(tmp_path / "other.airseam")
    stage.draw()
    assert "A test is running" in stage.program.window.notices.notices[0].sentence


def test_a_file_that_is_no_job_is_one_sentence(stage: Stage, tmp_path: Path) -> None:
    odd = tmp_path / "odd.airseam"
    odd.write_bytes(b"\x00\x01 not a job")
    stage.program.intents.opened(odd)
    stage.draw()
    notice = stage.program.window.notices.notices[0]
    assert notice.severity is Severity.ATTENTION
    assert str(odd) in notice.sentence
    assert stage.program.desk.job is not None


def test_notices_stay_until_they_are_read_and_the_worst_comes_first(stage: Stage) -> None:
    bar = stage.program.window.notices
    while bar.notices:
        bar.dismiss.click()
    stage.program.desk.tell(Severity.NOTE, "Saved.")
    stage.program.desk.tell(Severity.ALARM, "The gauge is silent.")
    stage.program.desk.tell(Severity.ALARM, "The gauge is silent.")
    stage.draw()
    assert [item.sentence for item in bar.notices] == ["The gauge is silent.", "Saved."]
    assert bar._more.text() == "1 more"
    bar.dismiss.click()
    bar.dismiss.click()
    assert not bar.isVisible()


def test_the_key_sheet_comes_and_goes(stage: Stage) -> None:
    window = stage.program.window
    window.setFocus()
    QTest.keyClick(window, Qt.Key.Key_F1)
    stage.draw()
    assert window.stack.currentWidget() is window.keys
    window.keys.back.click()
    stage.draw()
    assert window.stack.currentWidget() is window.test


@pytest.mark.parametrize(("digit", "place"), [(str(at), place) for at, place in enumerate(Place, 1)])
def test_digits_lead_to_the_places(stage: Stage, digit: str, place: Place) -> None:
    stage.program.window.setFocus()
    QTest.keyClicks(stage.program.window, digit)
    stage.draw()
    assert stage.program.window.stack.currentWidget() is stage.program.window.places[place]


def test_a_missing_item_leads_to_its_field(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    stage.program.intents.go_to(Place.REPORT)
    stage.draw()
    stage.program.window.report.missing._group.button(0).click()
    stage.draw()
    assert stage.program.screen.place is Place.JOB
    assert QApplication.focusWidget() is stage.program.window.job.fields["tester"].input


def test_tables_and_test_are_exported(stage: Stage, tested: Path, tmp_path: Path) -> None:
    job, number = stage.open_copy(tested), stage.program.desk.shown_number()
    assert number == 1
    told: list[str] = []
    out = tmp_path / "out"
    out.mkdir()
    stage.program.screen.pages.save_csv(job, out, told.append, told.append)
    stage.program.screen.pages.save_json(job, number, tmp_path / "test.json", told.append, told.append)
    assert json.loads((tmp_path / "test.json").read_text("utf-8"))["format"] == "airseam-test-1"
    assert list(out.glob("*.csv"))
    assert all(line.endswith(".") and "could not" not in line for line in told)


@pytest.mark.parametrize(("kind", "head"), [("png", b"\x89PNG"), ("svg", b"<?xml"), ("csv", b"direction,")])
def test_plots_are_saved(stage: Stage, tested: Path, tmp_path: Path, kind: str, head: bytes) -> None:
    stage.open_copy(tested)
    path = tmp_path / f"plot.{kind}"
    stage.program.intents.files.write_plot(stage.program.window.test.flow, kind, path)
    assert path.read_bytes().startswith(head)


def test_a_rig_file_is_saved_and_loaded(stage: Stage, tmp_path: Path) -> None:
    rig = stage.program.screen.rig
    rig.add_instrument("scpi-gauge")
    rig.set_instrument(0, "port", "/dev/ttyUSB7")
    rig.add_range()
    for field, text in (("coefficient_m3_h_pa_n", "183"), ("exponent", "0.5"), ("min_pa", "8"), ("max_pa", "250")):
        rig.set_range(0, field, text)
    stage.program.intents.rig.save(tmp_path / "rig.toml")
    saved = rig.spec
    rig.remove_instrument(0)
    stage.program.intents.rig.load(tmp_path / "rig.toml")
    assert rig.spec == saved
    (tmp_path / "bad.toml").write_text("format = 3")
    stage.program.intents.rig.load(tmp_path / "bad.toml")
    stage.draw()
    assert 'Format is 3: "airseam-rig-1" is needed.' in [n.sentence for n in stage.program.window.notices.notices]


def test_a_rig_whose_port_is_missing_is_one_sentence(stage: Stage) -> None:
    stage.program.screen.rig.add_instrument("scpi-gauge")
    stage.program.screen.rig.set_instrument(0, "port", "/dev/ttyUSB7")
    stage.program.desk.connection.connect_spec(stage.program.screen.rig.spec)
    stage.draw()
    sentence = stage.program.window.notices.notices[0].sentence
    assert sentence.startswith("The rig could not be connected: port is '/dev/ttyUSB7'")


def test_the_rig_is_edited_on_the_screen(stage: Stage) -> None:
    window = stage.program.window
    stage.program.intents.go_to(Place.RIG)
    window.rig.choose_page(1)
    stage.draw()
    editor = window.rig.own.editor
    editor.kind.setCurrentIndex(editor.kind.findData("scpi-gauge"))
    editor.add.click()
    stage.draw()
    assert [item.name for item in stage.program.screen.rig.spec.instruments] == ["gauge"]
    port = editor._instruments[0].port
    port.setEditText("/dev/ttyUSB3")
    line = port.lineEdit()
    assert line is not None
    QTest.keyClick(line, Qt.Key.Key_Return)
    stage.draw()
    assert stage.program.screen.rig.spec.instruments[0].port == "/dev/ttyUSB3"
    assert "Flow range is missing" in window.rig.own.problem.text()


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


def test_live_curves_are_made_once_and_thinned_out(stage: Stage) -> None:
    stage.connect()
    trace = stage.program.window.test.trace
    items = list(trace.item.items)
    stage.pass_time(30.0)
    assert list(trace.item.items) == items
    assert trace.curve.opts["autoDownsample"] is True
    assert trace.curve.opts["downsampleMethod"] == "peak"
    assert trace.curve.opts["clipToView"] is True
    assert len(trace.curve.getData()[0]) > 100


def test_a_zoomed_plot_stays_until_all_is_shown_again(stage: Stage) -> None:
    stage.connect()
    trace = stage.program.window.test.trace
    trace.box.scaleBy((0.5, 0.5))
    trace.touched = True
    zoomed = trace.box.viewRange()
    stage.pass_time(10.0)
    assert trace.box.viewRange() == zoomed
    stage.program.window.setFocus()
    QTest.keyClick(stage.program.window, Qt.Key.Key_A)
    assert trace.box.viewRange()[0] == pytest.approx([-180.0, 4.0])


def test_no_plot_can_be_zoomed_to_where_it_locks_up(stage: Stage) -> None:
    for plot in (stage.program.window.test.flow, stage.program.window.test.residuals, stage.program.window.test.trace):
        for factor in (1e9, 1e-9):
            plot.box.scaleBy((factor, factor))
            (x_low, x_high), (y_low, y_high) = plot.box.viewRange()
            assert 0 < x_high - x_low < 1e6
            assert 0 < y_high - y_low < 1e6
        plot.show_all()


def test_the_menu_of_a_plot_offers_to_save_it(stage: Stage) -> None:
    menu = stage.program.window.test.flow.menu()
    assert [item.text() for item in menu.actions() if item.text()] == [
        "Save as PNG…", "Save as SVG…", "Save the numbers as CSV…", "Show all",
    ]  # fmt: skip
    menu.deleteLater()


def test_the_context_menu_of_a_point_strikes_it(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    table = stage.program.window.test.points
    where = table.view.visualRect(table.model.index(1, 1)).center()
    table.view.customContextMenuRequested.emit(QPoint(where))
    popup = QApplication.activePopupWidget()
    assert popup is not None
    popup.actions()[0].trigger()
    popup.close()
    stage.draw()
    assert stage.program.screen.strike is not None
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)


def test_an_engine_that_fails_is_told_and_the_fan_is_stopped(stage: Stage, monkeypatch: pytest.MonkeyPatch) -> None:
    start(stage)
    stage.until(lambda now: now.fan_fraction > 0.2)

    def broken(*_: object) -> None:
        raise ArithmeticError("one is not two")

    monkeypatch.setattr(stage.engine(), "_command", broken)
    stage.pass_time(0.2)
    monkeypatch.undo()
    stage.pass_time(3.0)
    assert "one is not two" in stage.program.window.notices.notices[0].sentence
    assert stage.houses[-1].world.speed == 0.0


def test_every_control_has_a_name_for_those_who_listen(stage: Stage) -> None:
    stage.connect()
    for place in Place:
        stage.program.intents.go_to(place)
        stage.draw()
        for item in stage.program.window.places[place].findChildren(QWidget):
            reached = item.isVisible() and item.isEnabled() and item.focusPolicy() & Qt.FocusPolicy.TabFocus
            if reached:
                assert spoken(item), f"{type(item).__name__} in {place}"


def spoken(item: QWidget) -> str:
    """Return what a control is called: its own name, its word, or that of the control it is a part of."""
    word = item.text() if isinstance(item, QAbstractButton) else ""
    above = item.parentWidget()
    return item.accessibleName() or word or (above.accessibleName() if above is not None else "")
