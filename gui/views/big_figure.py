"""A figure as large as its room allows, with its unit beside it; to be read from across a room."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui.look import Look, tabular
from gui.theme import Tone

UNIT_SHARE = 0.24
GAP_SHARE = 0.08
TALL = 1.16
"""Height of a line over the size of its letters, digits having no descenders."""


class BigFigure(QWidget):
    """Paints a value and its unit on one line. The value keeps its size until its room or its length changes."""

    def __init__(self, look: Look, least: int, most: int) -> None:
        """Make it empty; `least` and `most` bound the size of the digits in pixels."""
        super().__init__()
        self._look = look
        self._least, self._most = least, most
        self._value, self._unit, self._tone = "", "", Tone.PLAIN
        self._faded = self._small = False
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Expanding)
        look.changed.connect(self.update)

    def show_figure(
        self, value: str, unit: str, tone: Tone, spoken: str, *, faded: bool = False, small: bool = False
    ) -> None:
        """Show a figure; a faded one is too old to be believed, a small one only keeps the place of one to come."""
        if (value, unit, tone, faded, small) != (self._value, self._unit, self._tone, self._faded, self._small):
            self._value, self._unit, self._tone = value, unit, tone
            self._faded, self._small = faded, small
            self.update()
        if self.accessibleName() != spoken:
            self.setAccessibleName(spoken)

    def minimumSizeHint(self) -> QSize:
        """Ask for the least size of digits."""
        return QSize(120, round(self._least * TALL))

    def sizeHint(self) -> QSize:
        """Ask for no more than the least; whoever lays out gives more."""
        return self.minimumSizeHint()

    def digit_size(self) -> int:
        """Return the size of the digits in pixels that fits the room now."""
        most = self._least if self._small else self._most
        size = max(min(round(self.height() / TALL), most), 8)
        # A digit more than there is now: the size does not jump at every thousand.
        widest = self._width_of(f"{self._value}0", size)
        if widest > self.width() > 0:
            size = int(size * self.width() / widest)
        return max(size, 8)

    def _width_of(self, value: str, size: int) -> float:
        digits, unit = self._fonts(size)
        gap = GAP_SHARE * size
        return QFontMetricsF(digits).horizontalAdvance(value) + gap + QFontMetricsF(unit).horizontalAdvance(self._unit)

    def _fonts(self, size: int) -> tuple[QFont, QFont]:
        return (
            tabular(self.font(), size, QFont.Weight.Normal if self._small else QFont.Weight.Bold),
            tabular(self.font(), max(round(UNIT_SHARE * size), 12)),
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it on one base line, at the left."""
        size = self.digit_size()
        digits, unit = self._fonts(size)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
        painter.setFont(digits)
        tone = Tone.QUIET if self._faded or self._small else self._tone
        painter.setPen(self._look.ink(tone))
        metrics = QFontMetricsF(digits)
        base = (self.height() + metrics.capHeight()) / 2
        painter.drawText(QPointF(0.0, base), self._value)
        painter.setFont(unit)
        painter.setPen(self._look.ink(Tone.QUIET))
        painter.drawText(QPointF(metrics.horizontalAdvance(self._value) + GAP_SHARE * size, base), self._unit)
        painter.end()

    def setVisible(self, visible: bool) -> None:
        """Be no target of the mouse."""
        super().setVisible(visible)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
