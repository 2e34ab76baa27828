"""The command palette: everything in the menus, found by its words."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QAction, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QDialog, QLineEdit, QListWidget, QListWidgetItem, QMainWindow

from gui.theme import GAP_8, GAP_12
from gui.viewmodels.palette import matching
from gui.views.parts import column, wrapped
from gui.words import mark, say

WIDTH, HEIGHT = 520, 380
NONE = mark("No command has these words.")


class Palette(QDialog):
    """A dialog over the window; it is made anew each time, so that it offers what can be done now."""

    def __init__(self, window: QMainWindow, commands: Sequence[QAction]) -> None:
        """Offer those of the commands that can be done now."""
        super().__init__(window)
        self.setWindowTitle(say("Find a command"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(WIDTH, HEIGHT)
        self._actions = [action for action in commands if action.isEnabled()]
        self._order: tuple[int, ...] = ()
        self.line = QLineEdit()
        self.line.setPlaceholderText(say("Type a word of the command"))
        self.line.setAccessibleName(say("Words of the command"))
        self.line.textChanged.connect(self._filter)
        self.line.installEventFilter(self)
        self.line.returnPressed.connect(self._press)
        self.list = QListWidget()
        self.list.setAccessibleName(say("Commands"))
        self.list.itemClicked.connect(lambda _: self._press())
        self._none = wrapped("quiet")
        self._none.setText(say(NONE))
        box = column(GAP_8)
        box.setContentsMargins(GAP_12, GAP_12, GAP_12, GAP_12)
        for part in (self.line, self.list, self._none):
            box.addWidget(part)
        self.setLayout(box)
        self._filter("")
        self.line.setFocus()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let the arrows move in the list while somebody types."""
        if watched is self.line and isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(event.key()), 0)
            if step and self.list.count():
                self.list.setCurrentRow((self.list.currentRow() + step) % self.list.count())
                return True
        return bool(super().eventFilter(watched, event))

    def _filter(self, typed: str) -> None:
        self._order = matching([_words(action) for action in self._actions], typed)
        self.list.clear()
        for at in self._order:
            action = self._actions[at]
            keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
            self.list.addItem(QListWidgetItem(f"{_words(action)}   {keys}".rstrip()))
        self.list.setCurrentRow(0)
        self.list.setVisible(bool(self._order))
        self._none.setVisible(not self._order)

    def _press(self) -> None:
        at = self.list.currentRow()
        if 0 <= at < len(self._order):
            action = self._actions[self._order[at]]
            self.close()
            action.trigger()


def _words(action: QAction) -> str:
    return action.text().replace("&", "").rstrip("…")
