"""The Test place: the line that grows, the trace, the result, the points, the checks."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QStackedWidget, QWidget

from acquisition.told import Table
from gui.look import Look
from gui.plots.flow_plot import FlowPlot
from gui.plots.residual_plot import ResidualPlot
from gui.plots.trace_plot import TracePlot
from gui.theme import GAP_12, GAP_16
from gui.viewmodels.by_hand import ByHandPicture
from gui.viewmodels.details import Detail, DetailPicture
from gui.viewmodels.flow_plot import FlowPicture
from gui.viewmodels.outcome import OutcomePicture
from gui.viewmodels.points import TablePicture
from gui.viewmodels.prompt import Prompt
from gui.viewmodels.residuals import ResidualPicture
from gui.viewmodels.trace import TracePicture
from gui.views.by_hand_panel import ByHandPanel
from gui.views.detail_panel import DetailPanel
from gui.views.parts import Panel, column
from gui.views.points_table import PointsTable
from gui.views.prompt_panel import PromptPanel
from gui.views.result_panel import ResultPanel
from gui.views.tables_view import TablesView
from gui.words import say

LINE, RESIDUALS, CORRECTIONS = range(3)
"""The pages at the upper left."""
LOW = 620
"""Below this height not everything has room."""


@dataclass(frozen=True, slots=True, eq=False)
class TestPicture:
    """Everything in the place."""

    flow: FlowPicture
    residuals: ResidualPicture
    trace: TracePicture | None
    outcome: OutcomePicture
    table: TablePicture
    details: DetailPicture
    corrections: tuple[Table, ...]
    prompt: Prompt | None
    tests: tuple[tuple[int, str], ...]
    chosen: int | None
    decimal_mark: str
    by_hand: ByHandPicture | None = None


class TestPlace(QWidget):
    """The place."""

    def __init__(self, look: Look) -> None:
        """Lay it out."""
        super().__init__()
        self.prompt = PromptPanel()
        self.by_hand = ByHandPanel()
        self.flow = FlowPlot(look)
        self.residuals = ResidualPlot(look)
        self.trace = TracePlot(look)
        self.result = ResultPanel(look)
        self.points = PointsTable(look)
        self.details = DetailPanel()
        look.changed.connect(self.points.recolour)
        self._details_wanted = False
        self._chosen = Detail.CHECKS
        self._folded = (False, False)
        self.points.unfold.clicked.connect(self._show_points)
        self.details.chosen.connect(self._show_details)
        self.corrections = TablesView(say("Corrections, line by line"), stacked=False)
        sheet = Panel(say("From the readings to the line"))
        sheet.body.addWidget(self.corrections, 1)
        self.plots = QStackedWidget()
        for page in (self.flow, self.residuals, sheet):
            self.plots.addWidget(page)
        left = column(GAP_12)
        left.addWidget(self.prompt)
        left.addWidget(self.by_hand)
        left.addWidget(self.plots, 58)
        left.addWidget(self.trace, 42)
        right = column(GAP_12)
        right.addWidget(self.result)
        right.addWidget(self.points, 58)
        right.addWidget(self.details, 42)
        self.result.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        sides = QHBoxLayout()
        sides.setContentsMargins(GAP_16, GAP_16, GAP_16 + 4, GAP_12)
        sides.setSpacing(GAP_12)
        for side, stretch in ((left, 49), (right, 51)):
            holder = QWidget()
            holder.setLayout(side)
            holder.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            sides.addWidget(holder, stretch)
        self.setLayout(sides)

    def show_picture(self, picture: TestPicture) -> None:
        """Show a moment."""
        self.prompt.show_prompt(picture.prompt)
        self.by_hand.show_picture(picture.by_hand)
        self._chosen = picture.details.chosen
        self._make_room()
        if self.plots.currentWidget() is self.flow:
            self.flow.show_picture(picture.flow, picture.decimal_mark)
        elif self.plots.currentWidget() is self.residuals:
            self.residuals.show_picture(picture.residuals, picture.decimal_mark)
        else:
            self.corrections.show_tables(picture.corrections)
        self.trace.show_picture(picture.trace, picture.decimal_mark)
        self.result.show_picture(picture.outcome)
        self.points.show_picture(picture.table, picture.tests, picture.chosen)
        self.details.show_picture(picture.details)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fold what there is no room for."""
        super().resizeEvent(event)
        self._make_room()

    def _make_room(self) -> None:
        """Fold what there is no room for.

        On a low screen either the points or what stands below them is folded, and the trace while something is asked.
        Long tables take the room of the points on any screen.
        """
        low = self.height() < LOW
        self.trace.setVisible(not (low and (self.prompt.prompt is not None or not self.by_hand.isHidden())))
        long = self._chosen is not Detail.CHECKS
        folded = (self._details_wanted and (low or long), low and not self._details_wanted)
        if folded != self._folded:
            self._folded = folded
            self.points.set_folded(folded[0])
            self.details.set_folded(folded[1])

    def _show_points(self) -> None:
        self._details_wanted = False
        self._make_room()

    def _show_details(self) -> None:
        self._details_wanted = True
        self._make_room()

    def show_page(self, page: int) -> int:
        """Show one of the pages; the one that is shown already gives way to the line. Return the page."""
        self.plots.setCurrentIndex(LINE if self.plots.currentIndex() == page else page)
        return self.plots.currentIndex()

    def show_all(self) -> None:
        """Show everything in all plots."""
        for plot in (self.flow, self.residuals, self.trace):
            plot.show_all()
