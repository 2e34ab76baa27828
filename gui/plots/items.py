"""Things to put into a plot that the plot library does not have: shaded spans, sticks, points with a cross."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainterPath, QPen
from PySide6.QtWidgets import QGraphicsPathItem

from gui.viewmodels.flow_plot import Dot

FAR = 1e4
POINT_PX = 10

Plot = Any
"""A plot widget of the plot library."""
Item = Any
"""One of its items."""
Values = Sequence[float] | NDArray[np.float64]
Symbol = str | QPainterPath


class Spans(QGraphicsPathItem):
    """Shaded stretches of the horizontal axis, from bottom to top."""

    def __init__(self) -> None:
        """Make it empty, behind everything else."""
        super().__init__()
        self.setPen(QPen(Qt.PenStyle.NoPen))
        self.setZValue(-20)

    def show_spans(self, spans: Sequence[tuple[float, float]]) -> None:
        """Shade these."""
        path = QPainterPath()
        for start, end in spans:
            path.addRect(QRectF(start, -FAR, end - start, 2 * FAR))
        self.setPath(path)

    def recolour(self, colour: QColor) -> None:
        """Take a colour."""
        self.setBrush(QBrush(colour))


def stick() -> QPainterPath:
    """Return the mark of a target: a stick that stands on the axis."""
    path = QPainterPath()
    path.addRect(QRectF(-0.08, -1.0, 0.16, 1.0))
    return path


def line_item(plot: Plot, z: float = 0) -> Item:
    """Return a line in a plot, for the bounds of a band or the line itself."""
    made = pg.PlotCurveItem()
    made.setZValue(z)
    plot.addItem(made)
    return made


def scatter_item(plot: Plot, symbol: Symbol, size: float = POINT_PX, z: float = 10) -> Item:
    """Return a set of points in a plot."""
    made = pg.ScatterPlotItem(symbol=symbol, size=size, pxMode=True)
    made.setZValue(z)
    plot.addItem(made)
    return made


def error_bars(plot: Plot, z: float = 5) -> Item:
    """Return a set of upright error bars in a plot."""
    made = pg.ErrorBarItem(x=np.zeros(0), y=np.zeros(0), top=np.zeros(0), bottom=np.zeros(0))
    made.setZValue(z)
    plot.addItem(made)
    return made


def put_dots(points: Item, bars: Item | None, dots: Sequence[Dot]) -> None:
    """Show points, and their error bars where there are any."""
    x, y = np.array([dot.x for dot in dots]), np.array([dot.y for dot in dots])
    points.setData(x=x, y=y)
    if bars is not None:
        put_bars(bars, x, y, np.array([dot.up for dot in dots]), np.array([dot.down for dot in dots]))


def put_bars(bars: Item, x: Values, y: Values, top: Values, bottom: Values) -> None:
    """Show error bars; the library cannot draw a set of none, so that one is hidden."""
    bars.setVisible(len(x) > 0)
    if len(x):
        bars.setData(x=x, y=y, top=top, bottom=bottom)
