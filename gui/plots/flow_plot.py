"""Flow against envelope pressure, log-log: the line that grows while the points are taken."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor

from analysis.records import Direction
from gui.look import Look
from gui.plots.canvas import PlotPanel
from gui.plots.items import POINT_PX, Item, Plot, error_bars, line_item, put_dots, scatter_item, stick
from gui.theme import Tone
from gui.viewmodels.flow_plot import Curve, FlowPicture
from gui.viewmodels.scales import Tick, log_ticks
from gui.words import mark, say

BAND_ALPHA = 46
SYMBOLS = {Direction.DEPRESSURIZE: "o", Direction.PRESSURIZE: "s"}
WORDS = {Direction.DEPRESSURIZE: mark("● depressurize"), Direction.PRESSURIZE: mark("■ pressurize")}
LIMITS = {
    "xMin": math.log10(0.5),
    "xMax": math.log10(500),
    "yMin": -2.0,
    "yMax": 7.0,
    "minXRange": 0.02,
    "minYRange": 0.005,
    "maxXRange": 3.0,
    "maxYRange": 9.0,
}


class CurveItems:
    """What one direction is drawn with, made once."""

    def __init__(self, plot: Plot, direction: Direction) -> None:
        """Put everything into the plot."""
        symbol = SYMBOLS[direction]
        self.direction = direction
        self.low, self.high = line_item(plot, -10), line_item(plot, -10)
        self.band = pg.FillBetweenItem(self.low, self.high)
        self.band.setZValue(-11)
        plot.addItem(self.band)
        self.line = line_item(plot)
        self.others = (line_item(plot, -9), line_item(plot, -9))
        self.bars = error_bars(plot)
        # Where both directions stand on one spot the larger mark lies below and shows round the smaller one.
        below = direction is Direction.PRESSURIZE
        self.taken = scatter_item(plot, symbol, POINT_PX + (4 if below else 0), 8 if below else 10)
        self.struck_bars = error_bars(plot, 4)
        self.struck = scatter_item(plot, "x", POINT_PX + 2)
        self.averaging = scatter_item(plot, symbol, POINT_PX + 4, 12)

    def show_curve(self, curve: Curve | None) -> None:
        """Show a direction, or nothing."""
        shown = curve if curve is not None else Curve(self.direction)
        x = np.array(shown.x)
        self.line.setData(x, np.array(shown.line))
        if shown.low:
            self.low.setData(x, np.array(shown.low))
            self.high.setData(x, np.array(shown.high))
        self.band.setVisible(bool(shown.low))
        for item, other in zip(self.others, shown.other or ((), ()), strict=True):
            item.setData(x[: len(other)], np.array(other))
        put_dots(self.taken, self.bars, shown.taken)
        put_dots(self.struck, self.struck_bars, shown.struck)
        put_dots(self.averaging, None, () if shown.averaging is None else (shown.averaging,))

    def recolour(self, look: Look) -> None:
        """Take the colours of the theme."""
        flow, text = look.colour(Tone.FLOW), look.colour(Tone.PLAIN)
        dashed = self.direction is Direction.PRESSURIZE
        style = Qt.PenStyle.DashLine if dashed else Qt.PenStyle.SolidLine
        self.line.setPen(pg.mkPen(flow, width=look.theme.line_width, style=style))
        for other in self.others:
            other.setPen(pg.mkPen(text, width=look.theme.line_width, style=Qt.PenStyle.DotLine))
        for bound in (self.low, self.high):
            bound.setPen(pg.mkPen(None))
        fill = QColor(flow)
        fill.setAlpha(BAND_ALPHA)
        self.band.setBrush(pg.mkBrush(fill))
        self.taken.setPen(pg.mkPen(QColor(look.theme.panel), width=1.5))
        self.taken.setBrush(pg.mkBrush(text))
        self.bars.setOpts(pen=pg.mkPen(text, width=1.5), beam=0.012)
        self.struck.setPen(pg.mkPen(look.colour(Tone.BAD), width=1))
        self.struck.setBrush(pg.mkBrush(look.colour(Tone.BAD)))
        self.struck_bars.setOpts(pen=pg.mkPen(look.colour(Tone.QUIET), width=1), beam=0.012)
        self.averaging.setPen(pg.mkPen(look.colour(Tone.PRESSURE), width=2.5))
        self.averaging.setBrush(pg.mkBrush(None))


class FlowPlot(PlotPanel):
    """The plot of the test."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        self._decimal_mark = "."
        self._curves: dict[Direction, CurveItems] = {}
        self._reference: Item = None
        self._targets: Item = None
        super().__init__(say("Flow against envelope pressure"), look, LIMITS)
        self.picture: FlowPicture | None = None
        self._reference = pg.InfiniteLine(math.log10(50.0), angle=90)
        self._reference.setZValue(-15)
        self.plot.addItem(self._reference)
        self._curves = {direction: CurveItems(self.plot, direction) for direction in Direction}
        self._targets = scatter_item(self.plot, stick(), 18, 3)
        self.recolour()

    def show_picture(self, picture: FlowPicture, decimal_mark: str) -> None:
        """Show a moment."""
        if picture == self.picture and decimal_mark == self._decimal_mark:
            return
        self.picture, self._decimal_mark = picture, decimal_mark
        shown = {curve.direction: curve for curve in picture.curves}
        for direction, items in self._curves.items():
            items.show_curve(shown.get(direction))
        self.note.setText(picture.note)
        both = [say(WORDS[direction]) for direction in shown] if len(shown) > 1 else []
        self.foot.setText(picture.hidden or picture.y_label)
        self.foot_right.setText("   ".join([*both, say(picture.x_label)]))
        self.show_empty(picture.empty)
        self.show_ranges(picture.x_range, picture.y_range)
        self._range_changed()

    def ticks(self, axis: str, low: float, high: float, length_px: float) -> Sequence[Tick]:
        """Return round numbers on the logarithmic scale."""
        return log_ticks(low, high, length_px, 26 if axis == "bottom" else 20, self._decimal_mark)

    def on_range(self, x_low: float, x_high: float, y_low: float, y_high: float) -> None:
        """Keep the targets on the lower edge."""
        if self._targets is not None and self.picture is not None:
            targets = np.array(self.picture.targets)
            self._targets.setData(x=targets, y=np.full(len(targets), y_low))

    def recolour(self) -> None:
        """Take the colours of the theme."""
        super().recolour()
        for items in self._curves.values():
            items.recolour(self.look)
        if self._targets is not None:
            quiet = self.look.ink(Tone.QUIET)
            self._targets.setPen(pg.mkPen(None))
            self._targets.setBrush(pg.mkBrush(quiet))
            self._reference.setPen(pg.mkPen(self.look.theme.line, width=self.look.theme.line_width))
