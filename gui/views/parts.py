"""Small widgets that every part of the window is built from."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QFont, QFontDatabase, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from gui.look import Look
from gui.theme import GAP_4, GAP_8, GAP_12, GAP_16, TARGET_HEIGHT, Tone
from gui.words import say

MAY_BREAK = "\N{ZERO WIDTH SPACE}"
_LONG_WORD = re.compile(r"\S{31,}")
"""Longer than our own words are in any language."""


def label(text: str = "", role: str = "", tone: Tone | None = None) -> QLabel:
    """Return a label of a role; text is plain, never markup."""
    made = QLabel(text)
    made.setTextFormat(Qt.TextFormat.PlainText)
    if role:
        made.setProperty("role", role)
    if tone is not None:
        made.setProperty("tone", tone.value)
    return made


def wrapped(role: str = "") -> QLabel:
    """Return a label that breaks its lines."""
    made = label(role=role)
    made.setWordWrap(True)
    made.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
    return made


def set_tone(widget: QLabel, tone: Tone) -> None:
    """Change the tone of a label; cheap when it does not change."""
    if widget.property("tone") != tone.value:
        widget.setProperty("tone", tone.value)
        widget.style().unpolish(widget)
        widget.style().polish(widget)


def set_text(widget: QLabel, text: str) -> None:
    """Change the text of a label; cheap when it does not change."""
    if widget.text() != text:
        widget.setText(text)


def set_typed(widget: QLabel, text: str) -> None:
    """Change the text of a label that wraps where somebody typed it: a word wider than any line breaks anywhere.

    Its words as they were typed are then its tip and what a screen reader says.
    """
    shown = _LONG_WORD.sub(lambda word: MAY_BREAK.join(word[0]), text)
    if widget.text() != shown:
        widget.setText(shown)
        widget.setToolTip(text if shown != text else "")
        widget.setAccessibleName(text)


def button(text: str, role: str = "") -> QPushButton:
    """Return a button of a role."""
    made = QPushButton(text)
    made.setAutoDefault(False)
    if role:
        made.setProperty("role", role)
    return made


def row(*widgets: QWidget, gap: int = GAP_8) -> QHBoxLayout:
    """Return widgets side by side."""
    made = QHBoxLayout()
    made.setContentsMargins(0, 0, 0, 0)
    made.setSpacing(gap)
    for widget in widgets:
        made.addWidget(widget)
    return made


def column(gap: int = GAP_8, margin: int = 0) -> QVBoxLayout:
    """Return an empty column."""
    made = QVBoxLayout()
    made.setContentsMargins(margin, margin, margin, margin)
    made.setSpacing(gap)
    return made


def in_order(*widgets: QWidget) -> None:
    """Have the Tab key go from each to the next: for what is made late and would be reached last."""
    for one, other in pairwise(widgets):
        QWidget.setTabOrder(one, other)


class ElidedLabel(QLabel):
    """A line of text that ends in an ellipsis where there is no room, with the whole text as its tool tip."""

    def __init__(self, role: str = "", parent: QWidget | None = None) -> None:
        """Make it empty."""
        super().__init__(parent)
        self._full = ""
        self._tip = ""
        self.setTextFormat(Qt.TextFormat.PlainText)
        if role:
            self.setProperty("role", role)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    @property
    def full(self) -> str:
        """The whole text."""
        return self._full

    def show_text(self, text: str, tip: str = "") -> None:
        """Show a text, with a tool tip of its own or none."""
        if text != self._full or tip != self._tip:
            self._full, self._tip = text, tip
            self.setAccessibleName(text)
            self._fit()

    def sizeHint(self) -> QSize:
        """Ask for the whole text."""
        margins = self.contentsMargins()
        width = self.fontMetrics().horizontalAdvance(self._full) + margins.left() + margins.right() + 2
        return QSize(width, self.fontMetrics().height())

    def minimumSizeHint(self) -> QSize:
        """Be content with a few letters."""
        return QSize(self.fontMetrics().averageCharWidth() * 6, self.fontMetrics().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the text to the new width."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        room = self.contentsRect().width()
        shown = self.fontMetrics().elidedText(self._full, Qt.TextElideMode.ElideRight, room)
        if shown != self.text():
            self.setText(shown)
        self.setToolTip(self._tip or (self._full if shown != self._full else ""))


class Panel(QFrame):
    """A panel with a title, a note at the right of it, and a column below."""

    def __init__(self, title: str = "", parent: QWidget | None = None) -> None:
        """Make it empty."""
        super().__init__(parent)
        self.setProperty("role", "panel")
        self.title = ElidedLabel("title")
        self.title.show_text(say(title))
        self.note = label(role="quiet")
        self.head = row(self.title, self.note)
        self.head.setStretch(0, 1)
        self.body = column(GAP_8)
        self.body.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        self.body.addLayout(self.head)
        self.setLayout(self.body)

    def fold(self, folded: bool, rest: Sequence[QWidget]) -> None:
        """Show the head only, or all of it again; `rest` is what goes."""
        for part in rest:
            part.setVisible(not folded)
        policy = QSizePolicy.Policy.Maximum if folded else QSizePolicy.Policy.Preferred
        self.setSizePolicy(QSizePolicy.Policy.Preferred, policy)


class StopButton(QPushButton):
    """STOP FAN: red, the same everywhere."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make it; `clicked` is connected by whoever places it."""
        super().__init__(parent)
        self.setProperty("role", "stop")
        self.setAccessibleName(say("Stop the fan"))
        self.setToolTip(say("Stop the fan, at once (Esc)"))
        self.setAutoDefault(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        word, key = label(say("STOP FAN"), "stop-word"), label("Esc", "stop-key")
        inside = column(0)
        inside.setContentsMargins(GAP_12, GAP_4, GAP_12, GAP_4)
        for line in (word, key):
            line.setAlignment(Qt.AlignmentFlag.AlignCenter)
            line.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
            inside.addWidget(line)
        self.setLayout(inside)

    def sizeHint(self) -> QSize:
        """Leave room for both lines."""
        inside = self.layout()
        assert inside is not None
        return inside.sizeHint().expandedTo(QSize(116, TARGET_HEIGHT))

    def minimumSizeHint(self) -> QSize:
        """Never less."""
        return self.sizeHint()


class Lamp(QWidget):
    """A dot in the colour of a tone; the word beside it says the same."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        """Make it dark."""
        super().__init__(parent)
        self._look = look
        self._tone = Tone.QUIET
        self.setFixedSize(10, 10)

    def show_tone(self, tone: Tone) -> None:
        """Change the colour."""
        if tone is not self._tone:
            self._tone = tone
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the dot; a ring where there is nothing to tell."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour = self._look.colour(self._tone)
        box = QRectF(1, 1, 8, 8)
        if self._tone is Tone.QUIET:
            painter.setPen(colour)
            painter.drawEllipse(box)
        else:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour)
            painter.drawEllipse(box)
        painter.end()


def monospaced(size: int) -> QFont:
    """Return a font whose letters are equally wide."""
    font = QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont)
    font.setPixelSize(size)
    return font
