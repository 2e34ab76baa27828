"""What was noticed, drawn into the trace: a stick for each, with its words at the upper edge."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QFont

from gui.look import Look
from gui.plots.items import Item, Plot
from gui.theme import SIGNS, Tone
from gui.viewmodels.trace_marks import TraceMark

MOST = 12
"""Words that there is room for; of more the newest are told, the sticks stand all the same."""
LINE_PX, LEVELS = 16.0, 3


class MarkWords:
    """The marks of one plot. Words that would cover each other stand a line lower; what finds no line stays a stick."""

    def __init__(self, plot: Plot, box: Item) -> None:
        """Make as many words as are ever shown, and hide them."""
        self._box = box
        self._marks: Sequence[TraceMark] = ()
        self._look: Look | None = None
        self._sticks = {tone: plot.plot(connect="finite") for tone in (Tone.ATTENTION, Tone.BAD)}
        self._said: list[tuple[str, int]] = [("", 0)] * MOST
        self._words: list[Item] = []
        for item in self._sticks.values():
            item.setZValue(4)
        for _ in range(MOST):
            words = pg.TextItem(anchor=(0, 0))
            words.hide()
            box.addItem(words, ignoreBounds=True)
            self._words.append(words)

    def show_marks(self, marks: Sequence[TraceMark], look: Look) -> None:
        """Show these."""
        self._marks, self._look = marks, look
        self.place()

    def place(self) -> None:
        """Put sticks and words where the view now is."""
        (x_low, x_high), (y_low, y_high) = self._box.viewRange()
        seen = [mark for mark in self._marks if x_low <= mark.at_s <= x_high]
        for tone, item in self._sticks.items():
            ends = [mark.at_s for mark in seen if mark.alarm is (tone is Tone.BAD)]
            item.setData(
                np.array([value for at in ends for value in (at, at, np.nan)]),
                np.array([value for _ in ends for value in (y_low, y_high, np.nan)]),
            )
        for view in self._words:
            view.hide()
        if self._look is None or not seen:
            return
        width, height = max(self._box.width(), 1.0), max(self._box.height(), 1.0)
        # Turned over, the larger pressures stand below: the upper edge is then the lower end of the axis.
        upper, down = (y_low, 1.0) if self._box.yInverted() else (y_high, -1.0)
        taken: list[list[tuple[float, float]]] = [[] for _ in range(LEVELS)]
        for at, mark in enumerate(reversed(seen[-MOST:])):
            view = self._words[at]
            tone = Tone.BAD if mark.alarm else Tone.ATTENTION
            ink, text = self._look.ink(tone), f"{SIGNS[tone]} {mark.words}"
            if self._said[at] != (text, ink.rgba()):
                self._said[at] = (text, ink.rgba())
                view.setText(text, color=ink)
            room = view.boundingRect().width()
            left = min((mark.at_s - x_low) / (x_high - x_low) * width, width - room)
            free = (n for n, row in enumerate(taken) if all(left + room < a or left > b for a, b in row))
            level = next(free, None)
            if level is None:
                continue
            taken[level].append((left, left + room))
            y = upper + down * level * LINE_PX * (y_high - y_low) / height
            view.setPos(x_low + left / width * (x_high - x_low), y)
            view.show()

    def recolour(self, look: Look, font: QFont) -> None:
        """Take the colours of the theme."""
        self._look = look
        for tone, item in self._sticks.items():
            item.setPen(pg.mkPen(look.colour(tone), width=1, style=Qt.PenStyle.DotLine))
        for view in self._words:
            view.setFont(font)
        self.place()
