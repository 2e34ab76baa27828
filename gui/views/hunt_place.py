"""The Hunt place: hold a pressure, see what leaks and what changed, and below what the chosen tab shows."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QLineEdit, QPushButton, QStackedWidget, QWidget

from acquisition.told import Table
from analysis.records import Direction
from gui.look import Look
from gui.plots.hunt_plot import HuntPlot
from gui.theme import GAP_4, GAP_8, GAP_12, GAP_16
from gui.viewmodels.hunt import HuntPicture, HuntTab
from gui.viewmodels.hunt_trace import HuntTrace
from gui.viewmodels.leak_sheet import LeakPicture
from gui.viewmodels.prompt import Prompt
from gui.viewmodels.zone_walk import ZonePicture
from gui.views.hunt_figures import AfarPanel, FlowPanel, SincePanel
from gui.views.hunt_pages import LookPage, LookPicture, PhonePanel, PhonePicture, ZonePage
from gui.views.leak_page import LeakPage
from gui.views.parts import Panel, button, column, row
from gui.views.prompt_panel import PromptPanel
from gui.views.tables_view import TablesView
from gui.words import mark, say

PRESETS_PA = (15, 25, 50, 60)
LOW = 620
"""Below this height not everything has room."""
EMPTY = mark("The flow is drawn here while a pressure is held, with the marks (S, D, N, L) and the level between them.")


@dataclass(frozen=True, slots=True, eq=False)
class HuntPlacePicture:
    """Everything in the place. `target` and `direction` are what would be held next, or are held."""

    figures: HuntPicture
    trace: HuntTrace | None
    prompt: Prompt | None
    tab: HuntTab
    tabs: tuple[str, ...]
    afar: bool
    target_pa: float
    direction: Direction
    decimal_mark: str
    leaks: LeakPicture | None = None
    left: tuple[Table, ...] = ()
    look: LookPicture | None = None
    zones: ZonePicture | None = None
    phone: PhonePicture | None = None
    tone: bool = False
    photo: Callable[[int], bytes | None] = lambda number: None
    """Gives the content of a photo."""


class HoldControls(QWidget):
    """Pressure, direction, start and end. `target_chosen` carries Pa without a sign, `typed` what was typed."""

    target_chosen = Signal(float)
    typed = Signal(str)
    direction_chosen = Signal(object)

    def __init__(self) -> None:
        """Make it."""
        super().__init__()
        self._presets = QButtonGroup(self)
        self._ways = QButtonGroup(self)
        line = row(gap=GAP_4)
        for at, pressure in enumerate(PRESETS_PA):
            view = _tab(f"{pressure} Pa")
            self._presets.addButton(view, at)
            line.addWidget(view)
        self.entry = QLineEdit()
        self.entry.setProperty("role", "slim")
        self.entry.setAccessibleName(say("Pressure to hold, Pa"))
        self.entry.setPlaceholderText("Pa")
        self.entry.setFixedWidth(64)
        line.addWidget(self.entry)
        line.addSpacing(GAP_8)
        for at, way in enumerate(Direction):
            view = _tab(say(way.value))
            self._ways.addButton(view, at)
            line.addWidget(view)
        line.addStretch(1)
        self.tone = _tab(say("Tone"))
        self.tone.setToolTip(say("A tone that falls as the flow falls"))
        self.afar = _tab(say("From afar (F11)"))
        self.end = button(say("End the hold"), "slim")
        self.begin = button(say("Hold"), "slim")
        for part in (self.tone, self.afar, self.begin, self.end):
            line.addWidget(part)
        self.setLayout(line)
        self._presets.idClicked.connect(lambda at: self.target_chosen.emit(float(PRESETS_PA[at])))
        self._ways.idClicked.connect(lambda at: self.direction_chosen.emit(list(Direction)[at]))
        self.entry.returnPressed.connect(lambda: self.typed.emit(self.entry.text()))

    def show_choice(self, target_pa: str, direction: Direction, *, holding: bool, afar: bool) -> None:
        """Show what is chosen, the pressure as it may be typed."""
        self._presets.setExclusive(False)
        for at, pressure in enumerate(PRESETS_PA):
            self._presets.button(at).setChecked(f"{pressure:g}" == target_pa)
        self._presets.setExclusive(True)
        self._ways.button(list(Direction).index(direction)).setChecked(True)
        if not self.entry.hasFocus():
            self.entry.setText("" if self._presets.checkedId() >= 0 else target_pa)
        self.begin.setVisible(not holding)
        self.end.setVisible(holding)
        self.afar.setChecked(afar)


class HuntPlace(QWidget):
    """The place. `tab_chosen` carries what is to stand below the figures."""

    tab_chosen = Signal(object)

    def __init__(self, look: Look) -> None:
        """Lay it out."""
        super().__init__()
        self.prompt = PromptPanel()
        self.controls = HoldControls()
        self.flow = FlowPanel(look)
        self.since = SincePanel(look)
        self.trace = HuntPlot(look)
        self.afar = AfarPanel(look)
        self.pages = QStackedWidget()
        self.leaks = LeakPage(look)
        self.left = TablesView(say("What is left to the target"), stacked=False)
        left = Panel()
        left.title.hide()
        left.note.hide()
        left.body.addWidget(self.left, 1)
        self.look, self.zones, self.phone = LookPage(), ZonePage(), PhonePanel()
        for page in (self.trace, self.leaks, left, self.look, self.zones, self.phone):
            self.pages.addWidget(page)
        self.tabs = QButtonGroup(self)
        tabs = row(gap=GAP_4)
        for at, tab in enumerate(HuntTab):
            view = _tab(tab.word)
            self.tabs.addButton(view, at)
            tabs.addWidget(view)
        self.note = QLineEdit()
        self.note.setProperty("role", "slim")
        self.note.setAccessibleName(say("Note"))
        self.note.setPlaceholderText(say("Note (N), kept with the time at which it was begun"))
        tabs.addSpacing(GAP_8)
        tabs.addWidget(self.note, 1)
        figures = QHBoxLayout()
        figures.setSpacing(GAP_12)
        figures.addWidget(self.flow, 58)
        figures.addWidget(self.since, 42)
        near = column(GAP_8)
        self._near_lines = near
        near.addLayout(figures, 50)
        near.addLayout(tabs)
        near.addWidget(self.pages, 50)
        self._near = QWidget()
        self._near.setLayout(near)
        self.views = QStackedWidget()
        self.views.addWidget(self._near)
        self.views.addWidget(self.afar)
        box = column(GAP_8)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16 + 4, GAP_12)
        box.addWidget(self.prompt)
        box.addWidget(self.controls)
        box.addWidget(self.views, 1)
        self.setLayout(box)
        self.tabs.idClicked.connect(lambda at: self.tab_chosen.emit(list(HuntTab)[at]))

    def show_picture(self, picture: HuntPlacePicture) -> None:
        """Show a moment."""
        self.prompt.show_prompt(picture.prompt)
        self._make_room()
        figures = picture.figures
        target_pa = f"{picture.target_pa:g}".replace(".", picture.decimal_mark)
        self.controls.show_choice(target_pa, picture.direction, holding=figures.under_way, afar=picture.afar)
        self.controls.tone.setChecked(picture.tone)
        self.views.setCurrentIndex(1 if picture.afar else 0)
        if picture.afar:
            self.afar.show_picture(figures)
            return
        self.flow.show_picture(figures)
        self.since.show_picture(figures)
        for at, (tab, words) in enumerate(zip(HuntTab, picture.tabs, strict=True)):
            view = self.tabs.button(at)
            view.setChecked(tab is picture.tab)
            if view.text() != words:
                view.setText(words)
        self.pages.setCurrentIndex(list(HuntTab).index(picture.tab))
        share = 50 if picture.tab is HuntTab.TRACE else 28
        self._near_lines.setStretch(0, share)
        self._near_lines.setStretch(2, 100 - share)
        self._show_page(picture)

    def _show_page(self, picture: HuntPlacePicture) -> None:
        match picture.tab:
            case HuntTab.TRACE:
                self.trace.show_picture(picture.trace, picture.decimal_mark, say(EMPTY))
            case HuntTab.LEAKS:
                if picture.leaks is not None:
                    self.leaks.show_picture(picture.leaks, picture.photo)
            case HuntTab.LEFT:
                self.left.show_tables(picture.left)
            case HuntTab.LOOK:
                if picture.look is not None:
                    self.look.show_picture(picture.look)
            case HuntTab.ZONES:
                if picture.zones is not None:
                    self.zones.show_picture(picture.zones)
            case HuntTab.PHONE:
                if picture.phone is not None:
                    self.phone.show_picture(picture.phone)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave out what has no room."""
        super().resizeEvent(event)
        self._make_room()

    def _make_room(self) -> None:
        """On a low screen a question takes the room of what stands below the figures."""
        self.pages.setVisible(not (self.height() < LOW and self.prompt.prompt is not None))


def _tab(words: str) -> QPushButton:
    made = button(words, "tab")
    made.setCheckable(True)
    return made
