"""How far the points lie off the line."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pyqtgraph as pg

from analysis.records import Direction
from gui.look import Look
from gui.plots.canvas import PlotPanel
from gui.plots.flow_plot import LIMITS, SYMBOLS, WORDS
from gui.plots.items import POINT_PX, Item, error_bars, put_bars, scatter_item
from gui.theme import Tone
from gui.viewmodels.residuals import ResidualPicture
from gui.viewmodels.scales import Tick, linear_ticks, log_ticks
from gui.words import say

Y_LIMITS = {"yMin": -1000.0, "yMax": 1000.0, "minYRange": 0.01, "maxYRange": 2000.0}


class ResidualPlot(PlotPanel):
    """Percent off the line against pressure."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        self._decimal_mark = "."
        self._taken: dict[Direction, tuple[Item, Item]] = {}
        self._struck: Item = None
        self._zero: Item = None
        super().__init__(say("How far the points lie off the line"), look, {**LIMITS, **Y_LIMITS})
        self.picture: ResidualPicture | None = None
        self._zero = pg.InfiniteLine(0.0, angle=0)
        self._zero.setZValue(-15)
        self.plot.addItem(self._zero)
        self._taken = {
            direction: (scatter_item(self.plot, SYMBOLS[direction]), error_bars(self.plot)) for direction in Direction
        }
        self._struck = scatter_item(self.plot, "x", POINT_PX + 2)
        self.recolour()

    def show_picture(self, picture: ResidualPicture, decimal_mark: str) -> None:
        """Show a moment."""
        if picture == self.picture and decimal_mark == self._decimal_mark:
            return
        self.picture, self._decimal_mark = picture, decimal_mark
        shown = {curve.direction: curve for curve in picture.curves}
        for direction, (points, bars) in self._taken.items():
            dots = shown[direction].taken if direction in shown else ()
            x, y = np.array([dot.x for dot in dots]), np.array([dot.percent for dot in dots])
            error = np.array([dot.error_pct for dot in dots])
            points.setData(x=x, y=y)
            put_bars(bars, x, y, error, error)
        struck = [dot for curve in picture.curves for dot in curve.struck]
        self._struck.setData(x=np.array([dot.x for dot in struck]), y=np.array([dot.percent for dot in struck]))
        self.note.setText(picture.note)
        both = [WORDS[direction] for direction in shown] if len(shown) > 1 else []
        self.foot.setText(say("off the line, %"))
        self.foot_right.setText("   ".join([*both, say("envelope pressure, Pa")]))
        self.show_empty(picture.empty)
        self.show_ranges(picture.x_range, picture.y_range)
        self._range_changed()

    def ticks(self, axis: str, low: float, high: float, length_px: float) -> Sequence[Tick]:
        """Return round pressures and percents."""
        if axis == "bottom":
            return log_ticks(low, high, length_px, 26, self._decimal_mark)
        return linear_ticks(low, high, length_px, 30, self._decimal_mark)

    def recolour(self) -> None:
        """Take the colours of the theme."""
        super().recolour()
        text = self.look.colour(Tone.PLAIN)
        for points, bars in self._taken.values():
            points.setPen(pg.mkPen(self.look.theme.panel, width=1))
            points.setBrush(pg.mkBrush(text))
            bars.setOpts(pen=pg.mkPen(text, width=1.5), beam=0.012)
        if self._struck is not None:
            self._struck.setPen(pg.mkPen(self.look.colour(Tone.BAD), width=1))
            self._struck.setBrush(pg.mkBrush(self.look.colour(Tone.BAD)))
            self._zero.setPen(pg.mkPen(self.look.colour(Tone.FLOW), width=self.look.theme.line_width))
