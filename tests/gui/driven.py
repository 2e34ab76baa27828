"""How tests press keys and buttons of the window."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QPushButton, QWidget

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
