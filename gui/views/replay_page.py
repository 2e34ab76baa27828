"""Playing a recorded test back: which job, which test, how fast."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QDoubleSpinBox, QWidget

from gui.theme import GAP_8, GAP_12
from gui.views.choices import Names
from gui.views.parts import ElidedLabel, button, column, label, row, wrapped
from gui.words import mark, say

WORDS = mark(
    "A recorded test becomes an instrument: its readings come again, each at its time, with its marks. It is kept in a "
    "job of its own beside the recorded one. No fan turns."
)
EMPTY = mark("No job is chosen.")
SLOWEST, FASTEST = 0.5, 120.0


class ReplayPage(QWidget):
    """`asked` carries the number of the test and how many times faster than real time it is to play."""

    asked = Signal(int, float)
    choose_asked = Signal()

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        words = wrapped("quiet")
        words.setText(say(WORDS))
        self.job = ElidedLabel("strong")
        self.choose = button(say("Choose a job…"))
        self.choose.clicked.connect(self.choose_asked)
        self.test = Names()
        self.test.setAccessibleName(say("Recorded test"))
        self.speed = QDoubleSpinBox()
        self.speed.setRange(SLOWEST, FASTEST)
        self.speed.setDecimals(1)
        self.speed.setValue(1.0)
        self.speed.setSuffix("×")
        self.speed.setAccessibleName(say("How many times faster than real time"))
        self.speed.setMinimumHeight(36)
        self.play = button(say("Play it back"))
        self.play.clicked.connect(self._asked)
        box = column(GAP_8)
        box.addWidget(words)
        chosen = row(self.job, self.choose, gap=GAP_8)
        chosen.setStretch(0, 1)
        box.addLayout(chosen)
        box.addWidget(self.test)
        pace = row(label(say("Speed against real time"), "small"), self.speed, gap=GAP_12)
        pace.setStretch(1, 1)
        box.addLayout(pace)
        box.addWidget(self.play)
        box.addStretch(1)
        self.setLayout(box)
        self.show_tests(None, ())

    def show_tests(self, path: Path | None, tests: Sequence[tuple[int, str]]) -> None:
        """Offer the tests of a job, the last one chosen."""
        self.job.show_text(say(EMPTY) if path is None else path.name)
        self.job.setToolTip("" if path is None else str(path))
        self.test.clear()
        for number, words in tests:
            self.test.addItem(words, number)
        self.test.setCurrentIndex(len(tests) - 1)
        self.test.setEnabled(bool(tests))
        self.show_enabled(possible=bool(tests))

    def show_enabled(self, *, possible: bool) -> None:
        """Let it be played, or not."""
        self.play.setEnabled(possible and self.test.count() > 0)

    def _asked(self) -> None:
        self.asked.emit(int(self.test.currentData()), self.speed.value())
