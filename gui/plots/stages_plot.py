"""Two tests laid over each other: the earlier one quiet, the later one in the colour of the flow."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pyqtgraph as pg

from gui.look import Look
from gui.plots.canvas import PlotPanel
from gui.plots.flow_plot import LIMITS
from gui.plots.items import Item, line_item, scatter_item
from gui.theme import LINE_WIDTH, Tone
from gui.viewmodels.scales import Tick, log_ticks
from gui.viewmodels.stages_place import StageCurve
from gui.words import say

TONES = (Tone.QUIET, Tone.FLOW)
SYMBOLS = ("o", "d")
MOST_LINES = 2
MARGIN = 0.04


class StagesPlot(PlotPanel):
    """The plot."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        self._decimal_mark = "."
        self._lines: list[list[Item]] = []
        self._points: list[Item] = []
        super().__init__(say("Leakage curves"), look, LIMITS)
        self.curves: tuple[StageCurve, ...] = ()
        self._lines = [[line_item(self.plot) for _ in range(MOST_LINES)] for _ in TONES]
        self._points = [scatter_item(self.plot, symbol) for symbol in SYMBOLS]
        self.recolour()

    def show_curves(self, curves: tuple[StageCurve, ...], unit: str, decimal_mark: str, empty: str) -> None:
        """Show two tests, or say why there are none."""
        if curves is self.curves and curves and decimal_mark == self._decimal_mark:
            return
        self.curves, self._decimal_mark = curves, decimal_mark
        self.show_empty(empty)
        for at in range(len(TONES)):
            curve = curves[at] if at < len(curves) else None
            for number, item in enumerate(self._lines[at]):
                there = curve is not None and number < len(curve.lines)
                x, y = curve.lines[number] if curve is not None and there else (np.zeros(0), np.zeros(0))
                item.setData(x, y)
            self._points[at].setData(
                x=curve.points_x if curve is not None else np.zeros(0),
                y=curve.points_y if curve is not None else np.zeros(0),
            )
        self.foot.setText(say("leakage flow, {unit}", unit=unit))
        words = [f"{sign} {curve.title}" for sign, curve in zip(("●", "◆"), curves, strict=False)]
        self.foot_right.setText("   ".join([*words, say("envelope pressure, Pa")]) if words else "")
        x = np.concatenate([curve.points_x for curve in curves]) if curves else np.array([1.0, 1.8])
        y = np.concatenate([curve.points_y for curve in curves]) if curves else np.array([2.0, 3.0])
        self.show_ranges(_around(x), _around(y))
        self._range_changed()

    def ticks(self, axis: str, low: float, high: float, length_px: float) -> Sequence[Tick]:
        """Return round pressures and flows."""
        return (
            log_ticks(low, high, length_px, 46 if axis == "bottom" else 26, self._decimal_mark) if self.curves else ()
        )

    def recolour(self) -> None:
        """Take the colours of the theme."""
        super().recolour()
        for at, tone in enumerate(TONES[: len(self._lines)]):
            colour = self.look.colour(tone)
            for item in self._lines[at]:
                item.setPen(pg.mkPen(colour, width=LINE_WIDTH))
            self._points[at].setPen(pg.mkPen(self.look.theme.panel, width=1))
            self._points[at].setBrush(pg.mkBrush(colour))


def _around(values: np.ndarray) -> tuple[float, float]:
    low, high = float(values.min()), float(values.max())
    room = max(MARGIN * (high - low), 0.02)
    return low - room, high + room
