"""The field checks of a gauge over time: which share of the allowed difference each used up. A small drawing."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui.look import Look
from gui.theme import Tone
from gui.viewmodels.register import CheckMark
from gui.words import say

HEIGHT, MARGIN, DOT = 108, 8, 4.0
LEAST_TOP = 1.25
"""The line of what is allowed is always well inside."""


class CheckHistory(QWidget):
    """Dots by day, joined; a dashed line at what is allowed. Nothing is drawn for fewer than two checks."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self._look = look
        self.marks: tuple[CheckMark, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say("Field checks over time"))
        look.changed.connect(self.update)
        self.hide()

    def sizeHint(self) -> QSize:
        """Be low."""
        return QSize(240, HEIGHT)

    def show_marks(self, marks: Sequence[CheckMark]) -> None:
        """Show checks, oldest first."""
        if tuple(marks) == self.marks:
            return
        self.marks = tuple(marks)
        self.setVisible(len(self.marks) > 1)
        said = (
            say("{day}: {share} of what is allowed", day=mark.day.isoformat(), share=f"{mark.share:.0%}")
            for mark in self.marks
        )
        self.setAccessibleDescription("; ".join(said))
        self.setToolTip("\n".join(f"{mark.day.isoformat()}  {mark.share:.0%}" for mark in self.marks))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw."""
        if len(self.marks) < 2:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        text_height = painter.fontMetrics().height()
        box = QRectF(self.rect()).adjusted(MARGIN, text_height + MARGIN, -MARGIN, -text_height - MARGIN)
        quiet, plain = self._look.colour(Tone.QUIET), self._look.colour(Tone.PLAIN)
        places = self._places(box)
        allowed_y = self._y(1.0, box)
        painter.setPen(QPen(quiet, 1.0, Qt.PenStyle.DashLine))
        painter.drawLine(QPointF(box.left(), allowed_y), QPointF(box.right(), allowed_y))
        painter.setPen(quiet)
        painter.drawText(QPointF(box.left(), text_height - 2), say("difference as a share of what is allowed (dashed)"))
        painter.drawText(QPointF(box.left(), self.height() - 3), self.marks[0].day.isoformat())
        last = self.marks[-1].day.isoformat()
        width = painter.fontMetrics().horizontalAdvance(last)
        painter.drawText(QPointF(box.right() - width, self.height() - 3), last)
        painter.setPen(QPen(plain, 1.2))
        painter.drawPolyline(places)
        painter.setPen(Qt.PenStyle.NoPen)
        for mark, place in zip(self.marks, places, strict=True):
            painter.setBrush(self._look.colour(Tone.GOOD if mark.share <= 1.0 else Tone.BAD))
            painter.drawEllipse(place, DOT, DOT)

    def _places(self, box: QRectF) -> list[QPointF]:
        first = self.marks[0].day
        days = max((self.marks[-1].day - first).days, 1)
        inside = box.adjusted(DOT, 0, -DOT, 0)
        return [
            QPointF(inside.left() + inside.width() * (mark.day - first).days / days, self._y(mark.share, box))
            for mark in self.marks
        ]

    def _y(self, share: float, box: QRectF) -> float:
        top = max(LEAST_TOP, *(mark.share for mark in self.marks))
        return box.bottom() - box.height() * min(share, top) / top
