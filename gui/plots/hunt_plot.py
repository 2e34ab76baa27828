"""The flow of a held pressure: readings, the level between changes with its band, marks with their words."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainterPath, QPen
from PySide6.QtWidgets import QGraphicsPathItem

from gui.look import Look, tabular
from gui.plots.canvas import PlotPanel
from gui.plots.items import Item
from gui.theme import SMALL, Tone
from gui.viewmodels.hunt_trace import AHEAD_S, SHOWN_S, HuntTrace
from gui.viewmodels.scales import Tick, linear_ticks, time_ticks
from gui.words import mark, say

BAND_ALPHA = 36
MOST_WORDS = 40
LIMITS = {"xMin": -172_800.0, "xMax": 3600.0, "yMin": -1e6, "yMax": 1e6, "minXRange": 10.0, "minYRange": 0.5}
FOOT = mark("thick: level between changes, with its 95 % band")


class HuntPlot(PlotPanel):
    """The plot."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        self._decimal_mark = "."
        self.curve: Item = None
        self._levels: Item = None
        self._marks: Item = None
        self._words: list[Item] = []
        self._said: list[tuple[str, int]] = []
        """Text and colour of each word: setting either lays the text out anew, which is slow."""
        self._bands = QGraphicsPathItem()
        super().__init__(say("Last 10 minutes"), look, LIMITS)
        self.picture: HuntTrace | None = None
        self._bands.setPen(QPen(Qt.PenStyle.NoPen))
        self._bands.setZValue(-10)
        self.box.addItem(self._bands, ignoreBounds=True)
        self.curve = self.plot.plot(connect="finite")
        self._levels = self.plot.plot(connect="finite")
        self._levels.setZValue(5)
        self._marks = self.plot.plot(connect="finite")
        self._marks.setZValue(4)
        self.curve.setDownsampling(auto=True, method="peak")
        self.curve.setClipToView(True)
        for _ in range(MOST_WORDS):
            words = pg.TextItem(anchor=(0, 0))
            words.hide()
            self.box.addItem(words, ignoreBounds=True)
            self._words.append(words)
        self._said = [("", 0)] * MOST_WORDS
        self.recolour()

    def show_picture(self, picture: HuntTrace | None, decimal_mark: str, empty: str) -> None:
        """Show a look; None before there is any, `empty` then says what will be seen."""
        if picture is self.picture and picture is not None and decimal_mark == self._decimal_mark:
            return
        self._decimal_mark = decimal_mark
        self.picture = picture
        self.show_empty("" if picture is not None else empty)
        if picture is None:
            for item in (self.curve, self._levels, self._marks):
                item.setData([], [])
            self._bands.setPath(QPainterPath())
            self.foot.setText("")
            self._put_words()
            self.show_ranges((-SHOWN_S, AHEAD_S), (0.0, 1.0))
            self._range_changed()
            return
        self.curve.setData(picture.x_s, picture.flow)
        self._levels.setData(*_pieces([(one, two, level, level) for one, two, level in picture.levels]))
        path = QPainterPath()
        for start, end, low, high in picture.bands:
            path.addRect(QRectF(start, low, end - start, high - low))
        self._bands.setPath(path)
        self.foot.setText(say("leakage flow, {unit}", unit=picture.unit) + f" · {say(FOOT)}")
        self.show_ranges(picture.x_range, picture.y_range)
        self._put_words()

    def ticks(self, axis: str, low: float, high: float, length_px: float) -> Sequence[Tick]:
        """Return minutes and round flows."""
        if axis == "bottom":
            return time_ticks(low, high, length_px, zero=say("now"))
        if self.picture is None:
            return ()
        return linear_ticks(low, high, length_px, 34, self._decimal_mark)

    def on_range(self, x_low: float, x_high: float, y_low: float, y_high: float) -> None:
        """Keep the words of the marks at the upper edge."""
        self._put_words()

    def _put_words(self) -> None:
        """Place the newest marks in view, each word a line below the one before where they would cover each other."""
        if self._marks is None or not self._words:
            return
        (x_low, x_high), (y_low, y_high) = self.box.viewRange()
        flags = self.picture.flags if self.picture is not None else ()
        seen = [flag for flag in flags if x_low <= flag.at_s <= x_high][-MOST_WORDS:]
        self._marks.setData(*_pieces([(flag.at_s, flag.at_s, y_low, y_high) for flag in seen]))
        width, height = max(self.box.width(), 1.0), max(self.box.height(), 1.0)
        line = 16.0 * (y_high - y_low) / height
        ends: list[float] = []
        for at, view in enumerate(self._words):
            if at >= len(seen):
                view.hide()
                continue
            flag = seen[at]
            ink = self.look.ink(Tone.PRESSURE if flag.mine else Tone.QUIET)
            if self._said[at] != (flag.words, ink.rgba()):
                self._said[at] = (flag.words, ink.rgba())
                view.setText(flag.words, color=ink)
            room = view.boundingRect().width()
            # A word that would reach over the edge ends there.
            left = min((flag.at_s - x_low) / (x_high - x_low) * width, width - room)
            level = next((i for i, end in enumerate(ends) if left > end), len(ends))
            right = left + room
            if level < len(ends):
                ends[level] = right
            else:
                ends.append(right)
            view.setPos(x_low + left / width * (x_high - x_low), y_high - (level % 4) * line)
            view.show()

    def recolour(self) -> None:
        """Take the colours of the theme."""
        super().recolour()
        if self._marks is None:
            return
        text = self.look.colour(Tone.PLAIN)
        fill = QColor(text)
        fill.setAlpha(BAND_ALPHA)
        self._bands.setBrush(QBrush(fill))
        self.curve.setPen(pg.mkPen(self.look.colour(Tone.FLOW), width=self.look.theme.line_width))
        self._levels.setPen(pg.mkPen(text, width=self.look.theme.line_width + 1))
        self._marks.setPen(pg.mkPen(self.look.colour(Tone.PRESSURE), width=1, style=Qt.PenStyle.DashLine))
        font = tabular(self.font(), SMALL + 1)
        for view in self._words:
            view.setFont(font)
        self._put_words()


def _pieces(lines: Sequence[tuple[float, float, float, float]]) -> tuple[np.ndarray, np.ndarray]:
    """Return lines (x, x, y, y) as one curve with gaps."""
    x = np.array([value for one, two, _, _ in lines for value in (one, two, np.nan)])
    y = np.array([value for _, _, one, two in lines for value in (one, two, np.nan)])
    return x, y
