"""The points of a test in the window: struck, restored, and those to come."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QCoreApplication, QEvent, QPoint
from PySide6.QtWidgets import QApplication

from gui.viewmodels.prompt import STRIKE
from tests.gui.conftest import Stage
from tests.gui.driven import click


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
