"""The page on which the pressures with exhaust fans on are read, one situation after another."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from gui.theme import GAP_8, GAP_12, GAP_16
from gui.viewmodels.worst_case import SUGGESTED, WorstCasePicture
from gui.views.choices import Choice
from gui.views.parts import Panel, button, column, label, row, set_text, wrapped
from gui.views.tables_view import TablesView
from gui.words import say


class WorstCasePage(QWidget):
    """The page. `read_asked` carries the words of the situation."""

    read_asked = Signal(str)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: WorstCasePicture | None = None
        self._proposed = ""
        self.back = button(say("Back"))
        head = row(label(say("Worst case of the exhaust fans"), "head"))
        head.addStretch(1)
        head.addWidget(self.back)
        self.live = label("", "figure")
        self.live.setAccessibleName(say("Pressure indoors against outdoors"))
        self.words = wrapped("quiet")
        self.situation = Choice()
        self.situation.setEditable(True)
        self.situation.setAccessibleName(say("What is on"))
        self.situation.addItems([say(item) for item in SUGGESTED])
        self.read = button(say("Read"))
        self.read.clicked.connect(lambda: self.read_asked.emit(self.situation.currentText()))
        self.tables = TablesView(say("Worst case of the exhaust fans"))
        panels = QHBoxLayout()
        panels.setSpacing(GAP_12)
        panels.addWidget(self._reading(), 2)
        told = Panel(say("What it tells"))
        told.body.addWidget(self.tables, 1)
        panels.addWidget(told, 3)
        box = column(GAP_12)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addLayout(head)
        box.addLayout(panels, 1)
        self.setLayout(box)

    def show_picture(self, picture: WorstCasePicture) -> None:
        """Show a moment; what somebody chose or typed as the situation stays until it is read."""
        if picture == self._shown:
            return
        self._shown = picture
        set_text(self.live, f"{picture.live} Pa")
        set_text(self.words, picture.words)
        self.read.setEnabled(picture.can_read)
        if picture.next_words != self._proposed:
            self._proposed = picture.next_words
            self.situation.setEditText(picture.next_words)
        self.tables.show_tables(picture.tables)

    def _reading(self) -> Panel:
        panel = Panel(say("Indoors against outdoors"))
        line = row(self.situation, self.read, gap=GAP_8)
        line.setStretch(0, 1)
        panel.body.addWidget(self.live)
        panel.body.addWidget(self.words)
        panel.body.addWidget(label(say("What is on"), "small"))
        panel.body.addLayout(line)
        panel.body.addStretch(1)
        return panel
