"""The command palette: every command of the menus, found by its words and done with the keyboard."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from analysis.units import System
from gui.viewmodels.palette import matching
from gui.views.palette import Palette
from tests.gui.boxes import cut_texts
from tests.gui.conftest import Stage


def opened(stage: Stage) -> Palette:
    stage.program.intents._actions.palette.trigger()
    stage.draw()
    [palette] = stage.program.window.findChildren(Palette)
    assert palette.isVisible()
    return palette


def test_all_words_have_to_be_there_and_beginnings_come_first() -> None:
    commands = ("Save the report as PDF", "Open a job", "Export the tables", "Job of last week")
    assert matching(commands, "") == (0, 1, 2, 3)
    assert matching(commands, "PDF save") == (0,)
    assert matching(commands, "port") == (0, 2)
    assert matching(commands, "ex") == (2,)
    assert matching(commands, "job nothing") == ()


def test_a_command_is_found_by_its_words_and_done(stage: Stage) -> None:
    palette = opened(stage)
    QTest.keyClicks(palette.line, "us units")
    assert palette.list.item(0).text().startswith("US units")
    assert cut_texts(palette) == []
    QTest.keyClick(palette.line, Qt.Key.Key_Return)
    stage.draw()
    assert stage.program.screen.display.system is System.US
    assert not stage.program.window.findChildren(Palette) or not palette.isVisible()


def test_the_arrows_move_in_the_list_and_unknown_words_are_said(stage: Stage) -> None:
    palette = opened(stage)
    QTest.keyClick(palette.line, Qt.Key.Key_Down)
    assert palette.list.currentRow() == 1
    QTest.keyClick(palette.line, Qt.Key.Key_Up)
    QTest.keyClick(palette.line, Qt.Key.Key_Up)
    assert palette.list.currentRow() == palette.list.count() - 1
    palette.line.setText("turn lead into gold")
    assert not palette.list.isVisible()
    assert "No command" in palette._none.text()
    palette.close()


def test_escape_closes_it(stage: Stage) -> None:
    palette = opened(stage)
    QTest.keyClick(palette.line, Qt.Key.Key_Escape)
    assert not stage.program.window.findChildren(Palette) or not palette.isVisible()
