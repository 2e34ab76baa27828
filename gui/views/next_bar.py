"""The bar at the bottom: one sentence and one button."""

from __future__ import annotations

from PySide6.QtCore import QElapsedTimer, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout

from gui.theme import GAP_16, GAP_24
from gui.viewmodels.next_step import NextStep, Verb
from gui.views.parts import button, column, label, set_text, wrapped
from gui.words import say

BAR_HEIGHT = 68
BUTTON_WIDTH = 216
SETTLE_MS = 400
"""A press this soon after the button changed its meaning was meant for the old one."""


class NextBar(QFrame):
    """What to do next. `pressed` carries the step that was meant."""

    pressed = Signal(object)

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self.setProperty("role", "bar")
        self.setFixedHeight(BAR_HEIGHT)
        self.settle_ms = SETTLE_MS
        self._step: NextStep | None = None
        self._since = QElapsedTimer()
        self.sentence = wrapped("next")
        self.primary = button("", "primary")
        self.primary.setMinimumWidth(BUTTON_WIDTH)
        self.primary.setToolTip(say("Space"))
        self.primary.clicked.connect(self.press)
        words = column(2)
        words.addStretch(1)
        words.addWidget(label(say("Next"), "small"))
        words.addWidget(self.sentence)
        words.addStretch(1)
        line = QHBoxLayout()
        line.setContentsMargins(GAP_24, 0, GAP_24 - 4, 0)
        line.setSpacing(GAP_16)
        line.addLayout(words, 1)
        line.addWidget(self.primary)
        self.setLayout(line)

    def show_step(self, step: NextStep) -> None:
        """Show what is to be done."""
        if step == self._step:
            return
        if self._step is None or step.id != self._step.id:
            self._since.start()
        self._step = step
        set_text(self.sentence, step.sentence)
        if self.primary.text() != step.label:
            self.primary.setText(step.label)
        self.primary.setEnabled(step.verb is not Verb.NOTHING)
        self.primary.setAccessibleName(f"{step.label}. {step.sentence}")

    def press(self) -> None:
        """Do the step, unless it has only just become another one."""
        if self._step is None or not self.primary.isEnabled():
            return
        if self._since.elapsed() >= self.settle_ms:
            self.pressed.emit(self._step)
