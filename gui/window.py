"""The window: ribbon, rail, places, next bar. Passive; the bridge fills it and hears what was asked."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QMimeData, QSize, Qt, Signal
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QMainWindow, QScrollArea, QStackedWidget, QWidget

from acquisition.job import SUFFIX
from gui.look import Look
from gui.theme import GAP_16
from gui.viewmodels.moment import Place
from gui.viewmodels.over import Over
from gui.viewmodels.rig_sheet import profile_choices
from gui.views.hunt_place import HuntPlace
from gui.views.job_place import JobPlace
from gui.views.jobs_page import JobsPage
from gui.views.keys_page import KeysPage
from gui.views.next_bar import NextBar
from gui.views.notice_bar import NoticeBar
from gui.views.parts import column
from gui.views.prompt_panel import PromptPanel
from gui.views.rail import Rail
from gui.views.report_place import ReportPlace
from gui.views.ribbon import Ribbon
from gui.views.rig_place import RigPlace
from gui.views.settings_page import SettingsPage
from gui.views.setup_place import SetupPlace
from gui.views.stages_place import StagesPlace
from gui.views.test_place import TestPlace
from gui.views.typed_page import TypedPage
from gui.views.worst_case_page import WorstCasePage

RIG_SUFFIX = ".toml"
LEAST_WIDTH, LEAST_HEIGHT = 1024, 700
"""Of a window in which nothing needs scrolling; a smaller one scrolls its place between ribbon and big button."""
SMALLEST = QSize(640, 360)
"""A screen of 1920 by 1080 at 300 %."""
BARS = 24 + 64 + 1 + 68 + 60
"""Heights of menu, ribbon, next step, and a notice."""
BESIDE = 80
"""What a place can do without beside it: a screen of 1920 by 1080 at 200 % then scrolls up and down only."""


class Window(QMainWindow):
    """The frame with its places. It closes only when `may_close` was set; before, `close_asked` tells of the wish."""

    close_asked = Signal()
    dropped = Signal(object)
    """Carries the path of a job or rig file that was dropped on the window."""

    def __init__(self, look: Look) -> None:
        """Lay everything out."""
        super().__init__()
        self.look = look
        self.may_close = False
        self.setAcceptDrops(True)
        self.setMinimumSize(SMALLEST)
        self.setWindowTitle("Airseam")
        self.ribbon = Ribbon(look)
        self.rail = Rail(look)
        self.notices = NoticeBar()
        self.close_prompt = PromptPanel()
        self.next_bar = NextBar()
        self.job = JobPlace()
        self.setup = SetupPlace()
        self.rig = RigPlace(look, profile_choices())
        self.test = TestPlace(look)
        self.hunt = HuntPlace(look)
        self.stages = StagesPlace(look)
        self.report = ReportPlace()
        self.keys = KeysPage()
        self.settings = SettingsPage()
        self.jobs = JobsPage()
        self.typed = TypedPage()
        self.worst_case = WorstCasePage()
        self.over: dict[Over, QWidget] = {
            Over.SETTINGS: self.settings,
            Over.JOBS: self.jobs,
            Over.TYPED: self.typed,
            Over.WORST_CASE: self.worst_case,
        }
        self.places: dict[Place, QWidget] = {
            Place.JOB: self.job,
            Place.SETUP: self.setup,
            Place.RIG: self.rig,
            Place.TEST: self.test,
            Place.HUNT: self.hunt,
            Place.STAGES: self.stages,
            Place.REPORT: self.report,
        }
        self.stack = QStackedWidget()
        for place in (*self.places.values(), self.keys, *self.over.values()):
            self.stack.addWidget(place)
        self._lay_out()

    def show_place(self, place: Place, *, keys: bool, over: Over | None = None) -> None:
        """Show a place, or the key sheet, or a page that lies over the place."""
        wanted = self.keys if keys else self.places[place] if over is None else self.over[over]
        if self.stack.currentWidget() is not wanted:
            self.stack.setCurrentWidget(wanted)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Welcome one job or rig file."""
        if dropped_file(event.mimeData()) is not None:
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Hand on what was dropped."""
        path = dropped_file(event.mimeData())
        if path is not None:
            event.acceptProposedAction()
            self.dropped.emit(path)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Ask first whether the window may go."""
        if self.may_close:
            event.accept()
            return
        event.ignore()
        self.close_asked.emit()

    def _lay_out(self) -> None:
        bars = column(0)
        bars.setContentsMargins(GAP_16, 0, GAP_16 + 4, 0)
        self.close_prompt.setProperty("top", "true")
        bars.addWidget(self.close_prompt)
        bars.addWidget(self.notices)
        main = column(0)
        main.addLayout(bars)
        main.addWidget(Roomy(self.stack, QSize(LEAST_WIDTH - BESIDE - self.rail.width(), LEAST_HEIGHT - BARS)), 1)
        main.addWidget(self.next_bar)
        middle = QHBoxLayout()
        middle.setContentsMargins(0, 0, 0, 0)
        middle.setSpacing(1)
        middle.addWidget(self.rail)
        middle.addLayout(main, 1)
        everything = column(1)
        everything.addWidget(self.ribbon)
        everything.addLayout(middle, 1)
        ground = QWidget()
        ground.setProperty("role", "frame")
        ground.setLayout(everything)
        self.setCentralWidget(ground)
        main.setSpacing(0)


class Roomy(QScrollArea):
    """Shows the places, scrolled where the window is too small for them."""

    def __init__(self, stack: QStackedWidget, least: QSize) -> None:
        """Never make the places smaller than `least`."""
        super().__init__()
        self._stack, self._least = stack, least
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        stack.setProperty("role", "scrolled")
        self.setWidget(stack)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the places all the room there is."""
        super().resizeEvent(event)
        self._stack.resize(self.viewport().size().expandedTo(self._least))


def dropped_file(data: QMimeData) -> Path | None:
    """Return the one job or rig file that is dragged, None for anything else."""
    paths = [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]
    return paths[0] if len(paths) == 1 and paths[0].suffix.lower() in (SUFFIX, RIG_SUFFIX) else None
