"""What all plots share: a panel with a title, themed axes with our own ticks, zoom that keeps its limits, saving.

Everything drawn is made once; afterwards only `setData`. The plot library knows no logarithm here: values and tick
texts come from the view models.
"""

from __future__ import annotations

from collections.abc import Sequence

import pyqtgraph as pg
from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QSize, Qt, Signal
from PySide6.QtGui import QAction, QColor, QPainter
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QMenu

from gui.look import Look, tabular
from gui.plots.items import Item, Plot
from gui.theme import GAP_4, SMALL, Tone
from gui.viewmodels.scales import Tick
from gui.views.parts import Panel, label, row
from gui.words import say

AXIS_WIDTH, AXIS_HEIGHT = 52, 24
Range = tuple[float, float]


class PlotPanel(Panel):
    """A panel with one plot. `save_asked` carries `png`, `svg` or `csv`."""

    save_asked = Signal(str)

    def __init__(self, title: str, look: Look, limits: dict[str, float]) -> None:
        """Make an empty plot; `limits` bound what can be zoomed and dragged to."""
        super().__init__(title)
        self.look = look
        self.touched = False
        """Whether somebody zoomed or dragged: the plot then no longer follows by itself."""
        self._wanted: tuple[Range, Range] = ((0.0, 1.0), (0.0, 1.0))
        self.plot: Plot = pg.PlotWidget(enableMenu=False)
        self.plot.setAccessibleName(title)
        self.plot.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.plot.setFrameShape(self.plot.Shape.NoFrame)
        self.item: Item = self.plot.getPlotItem()
        # The library keeps a menu of its own without a parent; with one it goes when the plot goes.
        self.item.ctrlMenu.setParent(self.plot, self.item.ctrlMenu.windowFlags())
        self.item.hideButtons()
        self.box: Item = self.item.getViewBox()
        self.box.setDefaultPadding(0.0)
        self.box.disableAutoRange()
        self.box.setLimits(**limits)
        self.box.sigRangeChanged.connect(self._range_changed)
        self.box.sigRangeChangedManually.connect(self._touched)
        self.box.sigResized.connect(self._range_changed)
        for name, size in (("left", AXIS_WIDTH), ("bottom", AXIS_HEIGHT)):
            axis = self.item.getAxis(name)
            axis.setStyle(tickLength=0, tickTextOffset=6)
            axis.setWidth(size) if name == "left" else axis.setHeight(size)
        self.empty = label(role="quiet")
        self.empty.setParent(self.plot)
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.empty.setWordWrap(True)
        self.empty.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.empty.hide()
        self.foot = label(role="small")
        self.foot_right = label(role="small")
        self.plot.setSizePolicy(self.sizePolicy())
        self.plot.setMinimumSize(QSize(160, 90))
        self.body.setSpacing(GAP_4)
        self.body.addWidget(self.plot, 1)
        foot = row(self.foot, self.foot_right)
        foot.setStretch(0, 1)
        self.body.addLayout(foot)
        self.plot.scene().sigMouseClicked.connect(self._clicked)
        self.plot.installEventFilter(self)
        look.changed.connect(self.recolour)
        self.recolour()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Keep the words of the empty plot in its middle."""
        if watched is self.plot and event.type() is QEvent.Type.Resize:
            self._place_empty()
        return bool(super().eventFilter(watched, event))

    def _place_empty(self) -> None:
        self.empty.setGeometry(self.plot.rect().adjusted(AXIS_WIDTH, 0, 0, -AXIS_HEIGHT))

    def show_ranges(self, x_range: Range, y_range: Range) -> None:
        """Show these ranges, unless somebody zoomed."""
        if (x_range, y_range) == self._wanted:
            return
        self._wanted = (x_range, y_range)
        if not self.touched:
            self.show_all()

    def show_all(self) -> None:
        """Show everything and follow again."""
        self.touched = False
        self.box.setRange(xRange=self._wanted[0], yRange=self._wanted[1], padding=0, disableAutoRange=True)

    def show_empty(self, words: str) -> None:
        """Say why there is nothing to see; an empty text takes the words away."""
        self.empty.setText(words)
        self.empty.setVisible(bool(words))

    def ticks(self, axis: str, low: float, high: float, length_px: float) -> Sequence[Tick]:
        """Return the ticks of an axis for what is in view; each plot has its own."""
        raise NotImplementedError

    def recolour(self) -> None:
        """Take the colours of the theme."""
        theme = self.look.theme
        self.plot.setBackground(QColor(theme.panel))
        font = tabular(self.font(), SMALL)
        for name in ("left", "bottom"):
            axis = self.item.getAxis(name)
            axis.setPen(pg.mkPen(theme.line, width=1))
            axis.setTextPen(pg.mkPen(theme.ink(Tone.QUIET)))
            axis.setTickPen(pg.mkPen(theme.line, width=1))
            axis.setStyle(tickFont=font)
            axis.setGrid(255)

    def save_picture(self, path: str, kind: str) -> None:
        """Write the plot as it stands; raises `OSError` when the file cannot be written."""
        if kind == "png":
            if not self.grab().save(path):
                raise OSError(f"{path} cannot be written")
            return
        drawing = QSvgGenerator()
        drawing.setFileName(path)
        drawing.setSize(self.size())
        drawing.setViewBox(QRect(QPoint(0, 0), self.size()))
        drawing.setTitle(self.title.full)
        painter = QPainter()
        if not painter.begin(drawing):
            raise OSError(f"{path} cannot be written")
        self.render(painter, QPoint(0, 0))
        painter.end()

    def _touched(self, _: object) -> None:
        self.touched = True

    def _range_changed(self, *_: object) -> None:
        (x_low, x_high), (y_low, y_high) = self.box.viewRange()
        for name, low, high, length in (
            ("bottom", x_low, x_high, self.box.width()),
            ("left", y_low, y_high, self.box.height()),
        ):
            if length > 0:
                self.item.getAxis(name).setTicks([list(self.ticks(name, low, high, length))])
        self.on_range(x_low, x_high, y_low, y_high)

    def on_range(self, x_low: float, x_high: float, y_low: float, y_high: float) -> None:
        """Move what stands at the edge of the view."""

    def _clicked(self, event: Item) -> None:
        if event.double():
            self.show_all()
        elif event.button() is Qt.MouseButton.RightButton:
            event.accept()
            self.menu().popup(event.screenPos().toPoint())

    def menu(self) -> QMenu:
        """Return the menu of the right button."""
        made = QMenu(self)
        made.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for kind, words in (
            ("png", say("Save as PNG…")),
            ("svg", say("Save as SVG…")),
            ("csv", say("Save the numbers as CSV…")),
        ):
            action = QAction(words, made)
            action.setData(kind)
            made.addAction(action)
        made.addSeparator()
        everything = QAction(say("Show all"), made)
        everything.setShortcut("A")
        made.addAction(everything)
        made.triggered.connect(self._chosen)
        return made

    def _chosen(self, action: QAction) -> None:
        kind = action.data()
        if kind:
            self.save_asked.emit(str(kind))
        else:
            self.show_all()
