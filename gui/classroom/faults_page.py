"""Faults to throw: now, or on the timeline."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QDoubleSpinBox, QPushButton, QWidget

from gui.classroom.faults import Fault
from gui.theme import GAP_8, GAP_12
from gui.views.parts import ElidedLabel, button, column, label, row
from gui.views.scrolled import scrolled
from gui.words import say

LONGEST_MIN = 120.0


class FaultsPage(QWidget):
    """Carries the place of a fault in the list."""

    throw_asked = Signal(int, float)
    mend_asked = Signal(int)
    plug_asked = Signal(bool)
    everybody_asked = Signal(bool)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: tuple[str, ...] = ()
        self.rows: list[QWidget] = []
        self.lines: list[tuple[ElidedLabel, QPushButton, QPushButton]] = []
        self._box = column(GAP_8)
        self._box.addStretch(1)
        self.after = QDoubleSpinBox()
        self.after.setRange(0.0, LONGEST_MIN)
        self.after.setDecimals(1)
        self.after.setSingleStep(0.5)
        self.after.setSuffix(say(" min from now"))
        self.after.setSpecialValueText(say("now"))
        self.after.setAccessibleName(say("When it happens"))
        self.after.setMinimumHeight(36)
        self.everybody = QCheckBox(say("in every house"))
        self.everybody.toggled.connect(self.everybody_asked)
        self.pull, self.back = button(say("Pull the gauge's cable"), "slim"), button(say("Put it back"), "slim")
        self.pull.clicked.connect(lambda: self.plug_asked.emit(False))
        self.back.clicked.connect(lambda: self.plug_asked.emit(True))
        when = row(label(say("It happens"), "quiet"), self.after, self.everybody)
        when.setStretch(1, 1)
        cable = row(self.pull, self.back)
        box = column(GAP_8)
        box.setContentsMargins(0, GAP_12, 0, 0)
        box.addLayout(when)
        box.addWidget(scrolled(self._box, say("Faults")), 1)
        box.addLayout(cable)
        self.setLayout(box)

    def show_faults(self, faults: Sequence[tuple[Fault, str]]) -> None:
        """Show what can be thrown, and the state of what is."""
        words = tuple(fault.words for fault, _ in faults)
        if words != self._shown:
            self._shown = words
            self._have(faults)
        for (_, state), (title, throw, mend) in zip(faults, self.lines, strict=True):
            title.show_text(f"● {state}: {title.property('words')}" if state else title.property("words"))
            throw.setEnabled(not state)
            mend.setEnabled(bool(state))
        self.setEnabled(bool(faults))

    def _have(self, faults: Sequence[tuple[Fault, str]]) -> None:
        for view in self.rows:
            self._box.removeWidget(view)
            view.deleteLater()
        self.rows, self.lines = [], []
        for at, (fault, _) in enumerate(faults):
            title = ElidedLabel()
            title.setProperty("words", fault.words)
            throw, mend = button(say("Throw"), "slim"), button(say("Put right"), "slim")
            throw.setAccessibleName(say("Throw: {fault}", fault=fault.words))
            mend.setAccessibleName(say("Put right: {fault}", fault=fault.words))
            throw.clicked.connect(lambda _, at=at: self.throw_asked.emit(at, 60.0 * self.after.value()))
            mend.clicked.connect(lambda _, at=at: self.mend_asked.emit(at))
            mend.setVisible(fault.lasts)
            line = QWidget()
            layout = row(title, throw, mend)
            layout.setStretch(0, 1)
            line.setLayout(layout)
            self._box.insertWidget(at, line)
            self.rows.append(line)
            self.lines.append((title, throw, mend))
