"""The rail at the left: the places, with a mark where something is missing."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFont, QFontMetrics, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QFrame, QSizePolicy

from gui.icons import draw_icon
from gui.look import Look, tabular
from gui.theme import PANEL_CORNER, SMALL, Tone
from gui.viewmodels.moment import Place
from gui.viewmodels.rail import RailItem
from gui.views.parts import column

MARGIN = 8
ITEM = QSize(76, 66)
"""Grows with the longest word of the language."""
LEAST, LEAST_WORD = 28, 46
"""Heights in a low window: of a place, and of one that still has its word."""
GAP, LEAST_GAP = 12, 2
ICON = 24


class RailButton(QAbstractButton):
    """One place."""

    def __init__(self, place: Place, look: Look) -> None:
        """Make it."""
        super().__init__()
        self._look = look
        self._item = RailItem(place, chosen=False, mark="", tone=Tone.QUIET, tip="")
        self.setText(place.word)
        self.setAccessibleName(place.word)
        bold = tabular(self.font(), SMALL + 1, QFont.Weight.DemiBold)
        self._size = ITEM.expandedTo(QSize(QFontMetrics(bold).horizontalAdvance(place.word) + MARGIN, 0))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Maximum)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)

    @property
    def chosen(self) -> bool:
        """Whether this place is on show."""
        return self._item.chosen

    def show_item(self, item: RailItem) -> None:
        """Show a moment."""
        if item != self._item:
            self._item = item
            self.setToolTip(item.tip)
            self.setAccessibleDescription(item.tip)
            self.update()

    def sizeHint(self) -> QSize:
        """Leave room for the word, also when it is bold."""
        return self._size

    def minimumSizeHint(self) -> QSize:
        """Never narrower; in a low window without the word, which is in the tip too."""
        return QSize(self._size.width(), LEAST)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the sign, the word, and the mark."""
        theme, chosen = self._look.theme, self._item.chosen
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect())
        if chosen or self.underMouse():
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(theme.raised)
            painter.drawRoundedRect(box, PANEL_CORNER, PANEL_CORNER)
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(theme.primary)
            painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), PANEL_CORNER - 1, PANEL_CORNER - 1)
        ink = self._look.ink(Tone.PLAIN if chosen else Tone.QUIET)
        worded = self.height() >= LEAST_WORD
        top = (self.height() - (44 if worded else ICON)) / 2
        place = QRectF((box.width() - ICON) / 2, top, ICON, ICON)
        draw_icon(painter, self._item.place, place, ink)
        painter.setPen(ink)
        painter.setFont(tabular(self.font(), SMALL + 1, QFont.Weight.DemiBold if chosen else QFont.Weight.Normal))
        if worded:
            word = QRectF(0, top + 29, box.width(), 20)
            painter.drawText(word, Qt.AlignmentFlag.AlignCenter, self._item.place.word)
        if self._item.mark:
            painter.setPen(self._look.ink(self._item.tone))
            painter.setFont(tabular(self.font(), SMALL + 2, QFont.Weight.Bold))
            painter.drawText(QRectF(place.right() + 3, top - 5, 16, 16), Qt.AlignmentFlag.AlignCenter, self._item.mark)
        painter.end()


class Rail(QFrame):
    """All places; `asked` tells which one somebody wants to see."""

    asked = Signal(object)

    def __init__(self, look: Look) -> None:
        """Make the buttons."""
        super().__init__()
        self._look = look
        self.setProperty("role", "bar")
        self._group = QButtonGroup(self)
        self._places = list(Place)
        self._buttons: list[RailButton] = []
        self._box = box = column(GAP)
        box.setContentsMargins(MARGIN, 12, MARGIN, 12)
        for at, place in enumerate(self._places):
            made = RailButton(place, look)
            self._group.addButton(made, at)
            self._buttons.append(made)
            box.addWidget(made)
        box.addStretch(1)
        self.setFixedWidth(max(view.sizeHint().width() for view in self._buttons) + 2 * MARGIN)
        self.setLayout(box)
        self._group.idClicked.connect(self._clicked)

    def show_items(self, items: Sequence[RailItem]) -> None:
        """Show a moment."""
        for view, item in zip(self._buttons, items, strict=True):
            view.show_item(item)
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Move the places together in a low window."""
        super().resizeEvent(event)
        roomy = len(self._buttons) * (ITEM.height() + GAP) + GAP
        self._box.setSpacing(GAP if self.height() >= roomy else LEAST_GAP)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the bar beside the chosen place."""
        super().paintEvent(event)
        chosen = next((view for view in self._buttons if view.chosen), None)
        if chosen is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._look.colour(Tone.PRESSURE))
        painter.drawRoundedRect(QRectF(0, chosen.y() + 12, 4, chosen.height() - 24), 2, 2)
        painter.end()

    def _clicked(self, at: int) -> None:
        self.asked.emit(self._places[at])
