"""The result so far: the number, its interval, the limit."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui.look import Look
from gui.theme import GAP_4, GAP_12, SIGNS, Tone, mix
from gui.viewmodels.outcome import LimitBar, OutcomePicture
from gui.views.parts import ElidedLabel, Panel, column, label, row, set_text, set_tone, wrapped
from gui.words import say


class LimitBarView(QWidget):
    """A bar up to the value, its interval as a lighter stretch, the limit as an upright mark."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self._look = look
        self._bar: LimitBar | None = None
        self._tone = Tone.QUIET
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Return a low strip."""
        return QSize(120, 22)

    def show_bar(self, bar: LimitBar | None, tone: Tone) -> None:
        """Show a value against its limit."""
        if (bar, tone) != (self._bar, self._tone):
            self._bar, self._tone = bar, tone
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        theme, bar = self._look.theme, self._bar
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        width, middle = float(self.width()), self.height() / 2
        painter.setBrush(theme.raised)
        painter.drawRoundedRect(QRectF(0, middle - 5, width, 10), 5, 5)
        if bar is not None:
            colour = theme.mark(self._tone)
            painter.setBrush(colour)
            painter.drawRoundedRect(QRectF(0, middle - 5, bar.value * width, 10), 5, 5)
            painter.setBrush(mix(colour, theme.panel, 0.45))
            painter.drawRect(QRectF(bar.low * width, middle - 2, (bar.high - bar.low) * width, 4))
            painter.setBrush(theme.text)
            painter.drawRect(QRectF(bar.limit * width - 1.5, middle - 10, 3, 20))
        painter.end()


class ResultPanel(Panel):
    """The whole panel."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__(say("Result so far"))
        self._shown: OutcomePicture | None = None
        self._figure = label(role="result")
        self._unit = wrapped("quiet")
        self._interval = label()
        self._limit = ElidedLabel("quiet")
        self._verdict = label(role="strong")
        self._bar = LimitBarView(look)
        self._why = wrapped("quiet")
        self._scatter = ElidedLabel("small")
        self._others = ElidedLabel("quiet")
        beside = column(0)
        beside.addStretch(1)
        beside.addWidget(self._interval)
        beside.addWidget(self._unit)
        beside.addStretch(1)
        number = row(self._figure, gap=GAP_12)
        number.addLayout(beside, 1)
        against = row(self._limit, self._verdict)
        against.setStretch(0, 1)
        self.body.setSpacing(GAP_4)
        self.body.addLayout(number)
        self.body.addLayout(against)
        self.body.addWidget(self._bar)
        self.body.addWidget(self._why)
        self.body.addWidget(self._others)
        self.body.addWidget(self._scatter)

    def show_picture(self, picture: OutcomePicture) -> None:
        """Show a moment."""
        if picture == self._shown:
            return
        self._shown = picture
        self.title.show_text(picture.title)
        set_text(self._figure, picture.figure)
        set_text(self._unit, picture.unit)
        set_text(self._interval, picture.interval)
        self._limit.show_text(picture.limit)
        sign = SIGNS.get(picture.tone, "")
        set_text(self._verdict, f"{sign} {picture.verdict}".strip() if picture.verdict else "")
        set_tone(self._verdict, picture.tone)
        self._bar.show_bar(picture.bar, picture.tone)
        self._bar.setVisible(picture.bar is not None)
        set_text(self._why, picture.why)
        self._why.setVisible(bool(picture.why))
        self._scatter.show_text(picture.scatter)
        self._scatter.setVisible(bool(picture.scatter))
        self._others.show_text(picture.others)
        self._others.setVisible(bool(picture.others))
        self.setAccessibleName(picture.spoken)
