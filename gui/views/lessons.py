"""The two ways to teach a gauge, one behind the other: one that sends lines, one whose registers are read."""

from __future__ import annotations

from PySide6.QtWidgets import QButtonGroup, QStackedWidget, QWidget

from gui.theme import GAP_8
from gui.views.parts import button, column, row
from gui.words import say

LINES, REGISTERS = 0, 1


class Lessons(QWidget):
    """Both pages and what chooses between them."""

    def __init__(self, lines: QWidget, registers: QWidget) -> None:
        """Put them behind each other."""
        super().__init__()
        self.pages = QStackedWidget()
        self._group = QButtonGroup(self)
        ways = row()
        for at, (words, page) in enumerate(
            ((say("It sends or answers lines"), lines), (say("Modbus registers"), registers))
        ):
            made = button(words, "tab")
            made.setCheckable(True)
            made.setChecked(at == LINES)
            self._group.addButton(made, at)
            ways.addWidget(made, 1)
            self.pages.addWidget(page)
        self._group.idClicked.connect(self.choose)
        box = column(GAP_8)
        box.addLayout(ways)
        box.addWidget(self.pages, 1)
        self.setLayout(box)

    def choose(self, at: int) -> None:
        """Show one of the pages."""
        self._group.button(at).setChecked(True)
        self.pages.setCurrentIndex(at)
