"""A picture with pins: a click puts the pin of the chosen leak there."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFont, QMouseEvent, QPainter, QPaintEvent, QPixmap
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui.look import Look, tabular
from gui.theme import SMALL, Tone
from gui.words import mark, say

PIN = 9.0
EMPTY = mark("A photo or a plan: from a file, pasted, or dropped here. A click sets a pin.")


class PhotoPins(QWidget):
    """The picture, as large as its room. `pinned` carries shares of its width and height."""

    pinned = Signal(float, float)

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self._look = look
        self._pixmap = QPixmap()
        self._shown: int | None = None
        self._pins: tuple[tuple[int, float, float], ...] = ()
        self._chosen: int | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(say("Photo with pins"))
        look.changed.connect(self.update)

    def minimumSizeHint(self) -> QSize:
        """Ask for a stamp."""
        return QSize(150, 90)

    @property
    def shown(self) -> int | None:
        """Number of the photo on show."""
        return self._shown

    def show_photo(
        self,
        photo: int | None,
        content: bytes | None,
        pins: tuple[tuple[int, float, float], ...],
        chosen: int | None,
    ) -> None:
        """Show a photo; `content` is needed only where it is another one than before."""
        if photo != self._shown:
            self._shown, self._pixmap = photo, QPixmap()
            if content:
                self._pixmap.loadFromData(content)
            self.update()
        if (pins, chosen) != (self._pins, self._chosen):
            self._pins, self._chosen = pins, chosen
            self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take a click as the place of the pin."""
        box = self._box()
        if box.isEmpty() or not box.contains(event.position()):
            return
        at = event.position() - box.topLeft()
        self.pinned.emit(at.x() / box.width(), at.y() / box.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw picture and pins."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        box = self._box()
        if box.isEmpty():
            painter.setPen(self._look.ink(Tone.QUIET))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 8, 8)
            flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
            painter.drawText(QRectF(self.rect()).adjusted(12, 8, -12, -8), flags, say(EMPTY))
            painter.end()
            return
        painter.drawPixmap(box, self._pixmap, QRectF(self._pixmap.rect()))
        painter.setFont(tabular(self.font(), SMALL, QFont.Weight.Bold))
        for number, across, down in self._pins:
            middle = QPointF(box.left() + across * box.width(), box.top() + down * box.height())
            tone = Tone.PRESSURE if number == self._chosen else Tone.FLOW
            painter.setPen(self._look.theme.ground)
            painter.setBrush(self._look.colour(tone))
            painter.drawEllipse(middle, PIN, PIN)
            spot = QRectF(middle.x() - PIN, middle.y() - PIN, 2 * PIN, 2 * PIN)
            painter.setPen(self._look.theme.on_primary)
            painter.drawText(spot, Qt.AlignmentFlag.AlignCenter, str(number))
        painter.end()

    def _box(self) -> QRectF:
        if self._pixmap.isNull():
            return QRectF()
        size = QSize(self._pixmap.size()).scaled(self.size(), Qt.AspectRatioMode.KeepAspectRatio)
        left, top = (self.width() - size.width()) / 2, (self.height() - size.height()) / 2
        return QRectF(left, top, size.width(), size.height())
