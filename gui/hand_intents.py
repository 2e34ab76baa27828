"""What is typed for a gauge that a person reads."""

from __future__ import annotations

from PySide6.QtCore import QObject

from acquisition.rig import Role
from gui.desk import Desk
from gui.screen import Screen
from gui.window import Window


class HandIntents(QObject):
    """Hears the panel of readings by hand."""

    def __init__(self, desk: Desk, screen: Screen, window: Window) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._panel = window.test.by_hand
        self._panel.entered.connect(self.enter)

    def enter(self, role: Role, text: str) -> None:
        """Take what was typed, and empty its field; what cannot be used stays, with a sentence."""
        engine = self._desk.engine
        if engine is not None and self._screen.by_hand.enter(role, text, self._screen.display, engine.enter):
            self._panel.taken(role)
        self._screen.touch()
