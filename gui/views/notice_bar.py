"""Notices under the ribbon: one at a time, worst first; they stay until somebody has read them."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QHBoxLayout

from acquisition.snapshot import Severity
from gui.desk import Notice
from gui.theme import GAP_8, GAP_12, GAP_16, SIGNS, Tone
from gui.viewmodels.retold import retold
from gui.views.parts import button, label, set_text, set_tone, wrapped
from gui.words import say

TONES = {Severity.NOTE: Tone.GOOD, Severity.ATTENTION: Tone.ATTENTION, Severity.ALARM: Tone.BAD}
MOST = 50


class NoticeBar(QFrame):
    """Shows notices; hidden when there are none."""

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self.setProperty("role", "notice")
        self._notices: list[Notice] = []
        self._sign = label(role="strong")
        self._text = wrapped("strong")
        self._more = label(role="quiet")
        self.dismiss = button(say("I have read it"), "slim")
        self.dismiss.clicked.connect(self._dismiss)
        line = QHBoxLayout()
        line.setContentsMargins(GAP_16, GAP_8, GAP_12, GAP_8)
        line.setSpacing(GAP_8)
        line.addWidget(self._sign)
        line.addWidget(self._text, 1)
        line.addWidget(self._more)
        line.addWidget(self.dismiss)
        self.setLayout(line)
        self.hide()

    @property
    def notices(self) -> tuple[Notice, ...]:
        """What is still to be read, the one on show first."""
        return tuple(self._notices)

    def add(self, notice: Notice) -> None:
        """Add a notice; one that says the same as another is not repeated."""
        if notice.matter:
            self._notices = [item for item in self._notices if item.matter != notice.matter]
        if notice.sentence and all(item.sentence != notice.sentence for item in self._notices):
            order = list(Severity)
            self._notices.append(notice)
            self._notices.sort(key=lambda item: (-order.index(item.severity), item.number))
            del self._notices[MOST:]
        self._refresh()

    def _dismiss(self) -> None:
        if self._notices:
            del self._notices[0]
        self._refresh()

    def _refresh(self) -> None:
        self.setVisible(bool(self._notices))
        if not self._notices:
            return
        first = self._notices[0]
        tone = TONES[first.severity]
        self.setProperty("tone", tone.value)
        self.style().unpolish(self)
        self.style().polish(self)
        set_text(self._sign, SIGNS[tone])
        set_tone(self._sign, tone)
        set_text(self._text, retold(first.sentence))
        rest = len(self._notices) - 1
        set_text(self._more, say("{rest} more", rest=rest) if rest else "")
