"""The dialog after a mistake of the program: what happened, a text to copy, a bundle to save. Nothing is sent."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QApplication, QCheckBox, QDialog, QPlainTextEdit, QWidget

from gui.theme import GAP_8, GAP_16
from gui.views.parts import StopButton, button, column, row, set_text, wrapped
from gui.words import say

WIDTH, HEIGHT = 640, 520


class TroubleDialog(QDialog):
    """Never modal: a test may be running. `save_asked` carries whether the job goes along."""

    save_asked = Signal(bool)
    stop_asked = Signal()

    def __init__(self, parent: QWidget, lead: str, trace: str, names: Callable[[bool], list[str]]) -> None:
        """Show what happened; `names` lists what a bundle would hold, with the job or without."""
        super().__init__(parent)
        self._names = names
        self.setWindowTitle(say("Support"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setModal(False)
        self.resize(WIDTH, HEIGHT)
        self.lead = wrapped()
        self.lead.setText(lead)
        self.trace = QPlainTextEdit()
        self.trace.setPlainText(trace)
        self.trace.setReadOnly(True)
        self.trace.setAccessibleName(say("What happened"))
        self.trace.setVisible(bool(trace))
        self.inside = wrapped("small")
        self.job = QCheckBox(say("Add the job that is open; it holds names, addresses and photos"))
        self.job.toggled.connect(self._list)
        self.copy = button(say("Copy the text"))
        self.copy.setVisible(bool(trace))
        self.copy.clicked.connect(lambda: QApplication.clipboard().setText(self.trace.toPlainText()))
        self.save = button(say("Save a bundle for support"))
        self.save.clicked.connect(lambda: self.save_asked.emit(self.job.isChecked()))
        self.done_button = button(say("Go on"))
        self.done_button.clicked.connect(self.close)
        self.stop = StopButton()
        self.stop.clicked.connect(self.stop_asked)
        box = column(GAP_8)
        box.setContentsMargins(GAP_16, GAP_16, GAP_16, GAP_16)
        for part in (self.lead, self.trace, self.inside, self.job):
            box.addWidget(part)
        box.addStretch(1)
        box.addLayout(row(self.copy, self.save, self.done_button))
        box.addWidget(self.stop)
        self.setLayout(box)
        self._list()

    def _list(self) -> None:
        names = ", ".join(self._names(self.job.isChecked()))
        set_text(
            self.inside,
            say("A bundle holds: {names}. It is written where you say; nothing is sent by itself.", names=names),
        )
