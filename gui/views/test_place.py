"""The Test place: the line that grows, the trace, the result, the points, the checks."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QStackedWidget, QWidget

from gui.look import Look
from gui.plots.flow_plot import FlowPlot
from gui.plots.residual_plot import ResidualPlot
from gui.plots.trace_plot import TracePlot
from gui.theme import GAP_12, GAP_16
from gui.viewmodels.checks import CheckPicture
from gui.viewmodels.flow_plot import FlowPicture
from gui.viewmodels.outcome import OutcomePicture
from gui.viewmodels.points import TablePicture
from gui.viewmodels.prompt import Prompt
from gui.viewmodels.residuals import ResidualPicture
from gui.viewmodels.trace import TracePicture
from gui.views.check_list import CheckList
from gui.views.parts import column
from gui.views.points_table import PointsTable
from gui.views.prompt_panel import PromptPanel
from gui.views.result_panel import ResultPanel

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
    checks: CheckPicture
    prompt: Prompt | None
    tests: tuple[tuple[int, str], ...]
    chosen: int | None
    decimal_mark: str


class TestPlace(QWidget):
    """The place."""

    def __init__(self, look: Look) -> None:
        """Lay it out."""
        super().__init__()
        self.prompt = PromptPanel()
        self.flow = FlowPlot(look)
        self.residuals = ResidualPlot(look)
        self.trace = TracePlot(look)
        self.result = ResultPanel(look)
        self.points = PointsTable(look)
        self.checks = CheckList()
        look.changed.connect(self.points.recolour)
        self._checks_wanted = False
        self._folded = (False, False)
        self.points.unfold.clicked.connect(self._show_points)
        self.checks.unfold.clicked.connect(self._show_checks)
        self.plots = QStackedWidget()
        self.plots.addWidget(self.flow)
        self.plots.addWidget(self.residuals)
        left = column(GAP_12)
        left.addWidget(self.prompt)
        left.addWidget(self.plots, 58)
        left.addWidget(self.trace, 42)
        right = column(GAP_12)
        right.addWidget(self.result)
        right.addWidget(self.points, 58)
        right.addWidget(self.checks, 42)
        self.result.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        sides = QHBoxLayout()
        sides.setContentsMargins(GAP_16, GAP_16, GAP_16 + 4, GAP_12)
        sides.setSpacing(GAP_12)
        for side, stretch in ((left, 51), (right, 49)):
            holder = QWidget()
            holder.setLayout(side)
            holder.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            sides.addWidget(holder, stretch)
        self.setLayout(sides)

    def show_picture(self, picture: TestPicture) -> None:
        """Show a moment."""
        self.prompt.show_prompt(picture.prompt)
        self._make_room()
        if self.plots.currentWidget() is self.flow:
            self.flow.show_picture(picture.flow, picture.decimal_mark)
        else:
            self.residuals.show_picture(picture.residuals, picture.decimal_mark)
        self.trace.show_picture(picture.trace, picture.decimal_mark)
        self.result.show_picture(picture.outcome)
        self.points.show_picture(picture.table, picture.tests, picture.chosen)
        self.checks.show_picture(picture.checks)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fold what there is no room for."""
        super().resizeEvent(event)
        self._make_room()

    def _make_room(self) -> None:
        """On a low screen the checks fold away while the points are shown, and the trace while something is asked."""
        low = self.height() < LOW
        self.trace.setVisible(not (low and self.prompt.prompt is not None))
        folded = (low and self._checks_wanted, low and not self._checks_wanted)
        if folded != self._folded:
            self._folded = folded
            self.points.set_folded(folded[0])
            self.checks.set_folded(folded[1])

    def _show_points(self) -> None:
        self._checks_wanted = False
        self._make_room()

    def _show_checks(self) -> None:
        self._checks_wanted = True
        self._make_room()

    def toggle_residuals(self) -> None:
        """Change between the line and how far the points lie off it."""
        self.plots.setCurrentIndex(1 - self.plots.currentIndex())

    def show_all(self) -> None:
        """Show everything in all plots."""
        for plot in (self.flow, self.residuals, self.trace):
            plot.show_all()
