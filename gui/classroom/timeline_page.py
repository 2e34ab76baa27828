"""The timeline of a house: what happened, what is to come, and taking that back."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QWidget

from gui.theme import GAP_8, GAP_12, Tone
from gui.viewmodels.retold import retold
from gui.views.parts import ElidedLabel, button, column, label, row, set_text, set_tone, wrapped
from gui.views.scrolled import scrolled
from gui.words import mark, say
from simulators.classroom.station import Moment

EMPTY = mark("Nothing has happened in this house, and nothing is to come.")
WORDS = mark("Times are those of the house. What you throw in the tab Faults for later stands here until it happens.")


class _Line(QWidget):
    """One moment."""

    def __init__(self) -> None:
        super().__init__()
        self.when = label(role="quiet")
        self.when.setFixedWidth(92)
        self.title = ElidedLabel()
        self.back: QPushButton = button(say("Take back"), "slim")
        layout = row(self.when, self.title, self.back)
        layout.setStretch(1, 1)
        self.setLayout(layout)

    def show_moment(self, moment: Moment) -> None:
        """Show it; only what is to come by the trainer can be taken back."""
        set_text(self.when, when_words(moment))
        self.title.show_text(retold(moment.title))
        self.title.setToolTip(retold(moment.title))
        set_tone(self.title, Tone.QUIET if moment.past else Tone.PLAIN)
        self.back.setVisible(moment.number is not None)
        self.back.setAccessibleName(say("Take back: {moment}", moment=retold(moment.title)))


class TimelinePage(QWidget):
    """`back_asked` carries the moment that is not to come."""

    back_asked = Signal(object)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self.lines: list[_Line] = []
        self._shown: tuple[Moment, ...] | None = None
        self._box = column(GAP_8)
        self._box.addStretch(1)
        self.empty = wrapped("quiet")
        words = wrapped("quiet")
        words.setText(say(WORDS))
        box = column(GAP_8)
        box.setContentsMargins(0, GAP_12, 0, 0)
        box.addWidget(words)
        box.addWidget(self.empty)
        box.addWidget(scrolled(self._box, say("Timeline")), 1)
        self.setLayout(box)

    def show_timeline(self, moments: Sequence[Moment]) -> None:
        """Show the moments in their order."""
        if tuple(moments) == self._shown:
            return
        self._shown = tuple(moments)
        set_text(self.empty, "" if moments else say(EMPTY))
        self.empty.setVisible(not moments)
        for at in range(len(self.lines), len(moments)):
            made = _Line()
            made.back.clicked.connect(lambda _, at=at: self._asked(at))
            self.lines.append(made)
            self._box.insertWidget(at, made)
        for at, line in enumerate(self.lines):
            line.setVisible(at < len(moments))
            if at < len(moments):
                line.show_moment(moments[at])

    def _asked(self, at: int) -> None:
        if self._shown is not None and at < len(self._shown):
            self.back_asked.emit(self._shown[at])


def when_words(moment: Moment) -> str:
    """Return the time of a moment in a few letters."""
    if moment.at_s is None:
        return say("fan + {time}", time=_minutes(moment.after_fan_s))
    return _minutes(moment.at_s) if moment.past else say("at {time}", time=_minutes(moment.at_s))


def _minutes(time_s: float) -> str:
    minutes, seconds = divmod(int(time_s), 60)
    return f"{minutes}:{seconds:02d}"
