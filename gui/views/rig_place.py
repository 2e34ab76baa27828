"""The Rig place: choose a simulated house, or put instruments together; see what they read."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QGridLayout, QHBoxLayout, QSizePolicy, QStackedWidget, QWidget

from gui.look import Look
from gui.theme import GAP_8, GAP_12, GAP_16, Tone
from gui.viewmodels.rig_place import RigPicture
from gui.viewmodels.rig_sheet import ProfileChoice
from gui.viewmodels.teach import LETTERS
from gui.views.field_check_panel import FieldCheckPanel
from gui.views.join_page import JoinPage
from gui.views.lessons import Lessons
from gui.views.parts import Panel, button, column, set_text, set_tone, wrapped
from gui.views.register_detail import RegisterDetail
from gui.views.register_page import RegisterPage
from gui.views.replay_page import ReplayPage
from gui.views.rig_editor import RigEditor
from gui.views.rig_live import RigLive
from gui.views.rig_sources import RigSources, set_text_of
from gui.views.scan_page import ScanPage
from gui.views.teach_page import TeachPage
from gui.words import mark, say

SIMULATED, OWN, TEACH, EQUIPMENT, JOIN, REPLAY = 0, 1, 2, 3, 4, 5
LIVE, DETAIL, CHECK = 0, 1, 2
PAGES_IN_A_ROW = 2
PAGES = (
    mark("Simulated house"),
    mark("Own instruments"),
    mark("Teach a gauge"),
    mark("Equipment register"),
    mark("Join a class"),
    mark("Recorded test"),
)


class OwnRig(QWidget):
    """The page for one's own instruments."""

    def __init__(self, profiles: Sequence[ProfileChoice]) -> None:
        """Lay it out."""
        super().__init__()
        self.editor = RigEditor(profiles)
        self.problem = wrapped("quiet")
        self.identify = button(say("Find instruments"))
        self.identify.setToolTip(say("Ask at every port who is there; only questions are sent"))
        self.ports = button(say("Look for ports"))
        self.load = button(say("Load a rig file"))
        self.save = button(say("Save as rig file"))
        self.connect_button = button(say("Connect"))
        box = column(GAP_8)
        for pair in ((self.identify, self.ports), (self.load, self.save)):
            beside = QHBoxLayout()
            beside.setSpacing(GAP_8)
            for view in pair:
                beside.addWidget(view, 1)
            box.addLayout(beside)
        box.addWidget(self.editor, 1)
        box.addWidget(self.problem)
        box.addWidget(self.connect_button)
        self.setLayout(box)

    def show_picture(self, picture: RigPicture) -> None:
        """Show a moment."""
        set_text(self.problem, picture.problem)
        set_tone(self.problem, Tone.ATTENTION if picture.problem else Tone.QUIET)
        self.problem.setVisible(bool(picture.problem))
        set_text_of(self.connect_button, picture.own_button)
        self.connect_button.setEnabled(picture.enabled and not picture.problem)


class RigPlace(QWidget):
    """The place."""

    page_chosen = Signal(int)

    def __init__(self, look: Look, profiles: Sequence[ProfileChoice]) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: RigPicture | None = None
        self.sources = RigSources()
        self.own = OwnRig(profiles)
        self.live = RigLive(look)
        self.pages = QStackedWidget()
        self.pages.addWidget(self.sources)
        self.pages.addWidget(self.own)
        self.teach = TeachPage(look, tuple(LETTERS))
        self.scan = ScanPage(tuple(LETTERS))
        self.lessons = Lessons(self.teach, self.scan)
        self.pages.addWidget(self.lessons)
        self.register = RegisterPage()
        self.pages.addWidget(self.register)
        self.join = JoinPage()
        self.pages.addWidget(self.join)
        self.replay = ReplayPage()
        self.pages.addWidget(self.replay)
        self.detail = RegisterDetail(look, profiles)
        self.check = FieldCheckPanel()
        self.side = QStackedWidget()
        for panel in (self.live, self.detail, self.check):
            self.side.addWidget(panel)
        self._group = QButtonGroup(self)
        choice = Panel(say("Choose a rig"))
        ways = QGridLayout()
        ways.setSpacing(GAP_8)
        for at, words in enumerate(PAGES):
            made = button(say(words), "speed")
            made.setCheckable(True)
            made.setChecked(at == SIMULATED)
            self._group.addButton(made, at)
            ways.addWidget(made, *divmod(at, PAGES_IN_A_ROW))
        self._group.idClicked.connect(self.choose_page)
        choice.body.addLayout(ways)
        choice.body.addWidget(self.pages, 1)
        box = QHBoxLayout()
        box.setContentsMargins(GAP_16, GAP_16, GAP_16 + 4, GAP_12)
        box.setSpacing(GAP_12)
        for side in (choice, self.side):
            side.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            box.addWidget(side, 1)
        self.setLayout(box)

    def choose_page(self, at: int) -> None:
        """Show a page: houses, one's own instruments, a gauge to teach, the register, a class, or a record."""
        self.pages.setCurrentIndex(at)
        self.side.setCurrentIndex(DETAIL if at == EQUIPMENT else LIVE)
        self._group.button(at).setChecked(True)
        self.page_chosen.emit(at)

    def show_check(self, *, on: bool) -> None:
        """Show the field check beside the register, or the chosen item."""
        self.side.setCurrentIndex(CHECK if on else DETAIL)

    def show_picture(self, picture: RigPicture) -> None:
        """Show a moment."""
        if picture == self._shown:
            return
        self._shown = picture
        self.sources.show_picture(picture)
        self.own.show_picture(picture)
        self.replay.show_enabled(possible=picture.enabled)
        self.live.show_picture(picture)
