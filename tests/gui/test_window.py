"""The window on a simulated house: what is asked, said and shown around the places."""

from __future__ import annotations

import json
import sqlite3
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QWidget

from acquisition.snapshot import Severity
from analysis.units import System
from gui.viewmodels.moment import Place, RigState
from gui.viewmodels.prompt import CLOSE, STAY
from tests.gui.conftest import Stage
from tests.gui.driven import click, start


def test_a_first_start_says_what_to_do_and_does_it(stage: Stage) -> None:
    bar = stage.program.window.next_bar
    assert bar.primary.text() == "Connect the simulated rig"
    stage.press()
    stage.pass_time(3.0)
    assert bar.primary.text() == "Start the test"
    assert stage.program.desk.rig().state is RigState.CONNECTED


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
    next(item for item in window.close_prompt.choices if item.text() == CLOSE).click()
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


def test_digits_lead_to_the_places(stage: Stage) -> None:
    for digit, place in reversed([*enumerate(Place, 1)]):
        stage.program.window.setFocus()
        QTest.keyClicks(stage.program.window, str(digit))
        stage.draw()
        assert stage.program.window.stack.currentWidget() is stage.program.window.places[place]


def test_an_engine_that_fails_is_told_and_the_fan_is_stopped(stage: Stage, monkeypatch: pytest.MonkeyPatch) -> None:
    start(stage)
    stage.until(lambda now: now.fan_fraction > 0.2)

    def broken(*_: object) -> None:
        raise ArithmeticError("one is not two")

    monkeypatch.setattr(stage.engine(), "_advance", broken)
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
