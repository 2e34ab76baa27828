"""The envelope pressure of the last minutes."""

from __future__ import annotations

from collections.abc import Sequence

import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor

from gui.look import Look, tabular
from gui.plots.canvas import PlotPanel
from gui.plots.items import Item, Spans
from gui.plots.mark_words import MarkWords
from gui.theme import SMALL, Tone
from gui.viewmodels.scales import Tick, linear_ticks, time_ticks
from gui.viewmodels.trace import TracePicture
from gui.words import say

SPAN_ALPHA = 30
LIMITS = {
    "xMin": -86_400.0,
    "xMax": 86_400.0,
    "yMin": -500.0,
    "yMax": 500.0,
    "minXRange": 2.0,
    "minYRange": 0.5,
    "maxXRange": 86_400.0,
    "maxYRange": 1000.0,
}


class TracePlot(PlotPanel):
    """The trace with the spans that are averaged and the targets."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        self._decimal_mark = "."
        self.curve: Item = None
        self._targets: Item = None
        self._spans = Spans()
        super().__init__(say("Last 3 minutes"), look, LIMITS)
        self.picture: TracePicture | None = None
        self.box.addItem(self._spans, ignoreBounds=True)
        self._marks = MarkWords(self.plot, self.box)
        self._targets = self.plot.plot(connect="finite")
        self._targets.setZValue(5)
        self.curve = self.plot.plot(connect="finite")
        # Only after the curve is in the plot: set earlier it is lost.
        for item in (self.curve, self._targets):
            item.setDownsampling(auto=True, method="peak")
            item.setClipToView(True)
        self.recolour()

    def show_picture(self, picture: TracePicture | None, decimal_mark: str) -> None:
        """Show a moment; None without any reading to show."""
        self._decimal_mark = decimal_mark
        self.picture = picture
        self.show_empty("" if picture is not None else say("The pressure is drawn here once a rig is connected."))
        if picture is None:
            self.curve.setData([], [])
            self._targets.setData([], [])
            self._spans.show_spans(())
            self._marks.show_marks((), self.look)
            self.foot.setText("")
            self._range_changed()
            return
        self.title.show_text(picture.title)
        self.curve.setData(picture.x_s, picture.y_pa)
        self._targets.setData(picture.target_x_s, picture.target_y_pa)
        self._spans.show_spans([(span.start_s, span.end_s) for span in picture.spans])
        self._marks.show_marks(picture.marks, self.look)
        self.foot.setText(say("envelope pressure, Pa"))
        self.foot_right.setText(picture.note)
        if self.box.yInverted() is not picture.inverted:
            self.box.invertY(picture.inverted)
        self.show_ranges(picture.x_range, picture.y_range)

    def ticks(self, axis: str, low: float, high: float, length_px: float) -> Sequence[Tick]:
        """Return minutes and round pressures."""
        if axis == "bottom":
            live = self.picture is None or self.picture.follows
            return time_ticks(low, high, length_px, zero=say("now") if live else "0:00")
        return linear_ticks(low, high, length_px, 34, self._decimal_mark)

    def on_range(self, x_low: float, x_high: float, y_low: float, y_high: float) -> None:
        """Keep the words of the marks at the upper edge."""
        if self.curve is not None:
            self._marks.place()

    def recolour(self) -> None:
        """Take the colours of the theme."""
        super().recolour()
        pressure = self.look.colour(Tone.PRESSURE)
        fill = QColor(pressure)
        fill.setAlpha(SPAN_ALPHA)
        self._spans.recolour(fill)
        if self.curve is not None:
            self.curve.setPen(pg.mkPen(pressure, width=self.look.theme.line_width))
            quiet = self.look.ink(Tone.QUIET)
            self._marks.recolour(self.look, tabular(self.font(), SMALL))
            self._targets.setPen(pg.mkPen(quiet, width=self.look.theme.line_width, style=Qt.PenStyle.DashLine))
