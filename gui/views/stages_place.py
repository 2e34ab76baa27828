"""The Stages place: the tests of the job against their targets, two of them over each other, what lies between."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QSizePolicy, QWidget

from gui.look import Look, tabular
from gui.plots.stages_plot import StagesPlot
from gui.theme import BODY, GAP_12, GAP_16, Tone
from gui.viewmodels.stages_place import StageBar, StagesPicture
from gui.views.choices import Names
from gui.views.parts import Panel, button, column, row, set_text, wrapped
from gui.views.scrolled import scrolled
from gui.views.tables_view import TablesView
from gui.words import say

LINE = 30
NAME_SHARE, MOST_NAME = 0.42, 320.0


class StageChart(QWidget):
    """Every test as a dot with its interval, its target as an upright mark, on one scale from zero."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self._look = look
        self._bars: tuple[StageBar, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say("Results of all stages against their targets"))
        look.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        """Return room for all lines."""
        return QSize(240, max(len(self._bars), 1) * LINE)

    def minimumSizeHint(self) -> QSize:
        """Never less high."""
        return QSize(160, max(len(self._bars), 1) * LINE)

    def show_bars(self, bars: tuple[StageBar, ...]) -> None:
        """Show the tests."""
        if bars != self._bars:
            self._bars = bars
            self.updateGeometry()
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        font = tabular(self.font(), BODY)
        painter.setFont(font)
        metrics = QFontMetricsF(font)
        name = min(NAME_SHARE * self.width(), MOST_NAME)
        left, width = name + 12.0, self.width() - name - 20.0
        for at, bar in enumerate(self._bars):
            middle = at * LINE + LINE / 2
            painter.setPen(self._look.ink(Tone.PLAIN))
            words = metrics.elidedText(bar.title, Qt.TextElideMode.ElideRight, name)
            painter.drawText(QRectF(0, at * LINE, name, LINE), Qt.AlignmentFlag.AlignVCenter, words)
            painter.setPen(QPen(self._look.colour(Tone.QUIET), 1))
            painter.drawLine(QPointF(left, middle), QPointF(left + width, middle))
            colour = self._look.colour(bar.tone)
            painter.setPen(QPen(colour, 4))
            painter.drawLine(QPointF(left + bar.low * width, middle), QPointF(left + bar.high * width, middle))
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour)
            painter.drawEllipse(QPointF(left + bar.value * width, middle), 6, 6)
            if bar.target is not None:
                painter.setPen(QPen(self._look.colour(Tone.PLAIN), 3))
                spot = left + bar.target * width
                painter.drawLine(QPointF(spot, middle - 11), QPointF(spot, middle + 11))
        painter.end()


class StagesPlace(QWidget):
    """The place. `pair_chosen` carries the numbers of the two tests; `noted` what changed on site."""

    pair_chosen = Signal(int, int)
    noted = Signal(str)

    def __init__(self, look: Look) -> None:
        """Lay it out."""
        super().__init__()
        self.chart = StageChart(look)
        self.table = TablesView(say("All stages"), titled=False)
        self.foot = wrapped("small")
        self.before, self.after = Names(), Names()
        for view, words in ((self.before, say("Earlier test")), (self.after, say("Later test"))):
            view.setAccessibleName(words)
            view.activated.connect(self._chosen)
        self.note = QLineEdit()
        self.note.setProperty("role", "slim")
        self.note.setAccessibleName(say("What changed on site"))
        self.note.setPlaceholderText(say("What changed on site before the later test"))
        self.keep = button(say("Keep"), "slim")
        self.keep.clicked.connect(self._noted)
        self.note.returnPressed.connect(self._noted)
        self.plot = StagesPlot(look)
        self.between = TablesView(say("Between the two tests"))
        stages = Panel(say("Stages against their targets"))
        lines = column(0)
        lines.addWidget(self.chart)
        lines.addStretch(1)
        stages.body.addWidget(scrolled(lines, say("Results of all stages")), 40)
        stages.body.addWidget(self.foot)
        stages.body.addWidget(self.table, 60)
        pair = Panel(say("Between two tests"))
        pair.body.addLayout(row(self.before, self.after))
        noted = row(self.note, self.keep)
        noted.setStretch(0, 1)
        pair.body.addLayout(noted)
        pair.body.addWidget(self.between, 1)
        left = column(GAP_12)
        left.addWidget(stages, 50)
        left.addWidget(self.plot, 50)
        sides = QHBoxLayout()
        sides.setContentsMargins(GAP_16, GAP_12, GAP_16 + 4, GAP_12)
        sides.setSpacing(GAP_12)
        for inside, share in ((left, 52), (None, 48)):
            holder = pair if inside is None else QWidget()
            if inside is not None:
                holder.setLayout(inside)
            holder.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            sides.addWidget(holder, share)
        self.setLayout(sides)

    def show_picture(self, picture: StagesPicture, decimal_mark: str) -> None:
        """Show a moment."""
        self.chart.show_bars(picture.bars)
        self.chart.setVisible(bool(picture.bars))
        set_text(
            self.foot,
            say("dot and bar: result with its 95 % interval, {unit}; upright mark: target", unit=picture.unit),
        )
        self.foot.setVisible(bool(picture.bars))
        self.table.show_tables((picture.table,))
        for view, number in ((self.before, picture.before), (self.after, picture.after)):
            shown = tuple((view.itemData(at), view.itemText(at)) for at in range(view.count()))
            if shown != picture.choices:
                view.clear()
                for value, words in picture.choices:
                    view.addItem(words, value)
            view.setCurrentIndex(view.findData(number))
            view.setEnabled(len(picture.choices) > 1)
        there = picture.after is not None
        self.note.setEnabled(there)
        self.keep.setEnabled(there)
        if not self.note.hasFocus() and self.note.text() != picture.note:
            self.note.setText(picture.note)
        self.plot.show_curves(picture.curves, picture.flow_unit, decimal_mark, picture.empty)
        self.between.show_tables(picture.tables)

    def _chosen(self) -> None:
        before, after = self.before.currentData(), self.after.currentData()
        if before is not None and after is not None:
            self.pair_chosen.emit(before, after)

    def _noted(self) -> None:
        self.noted.emit(self.note.text())
