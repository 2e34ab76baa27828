"""Menus with their keys: everything that can be asked for without the mouse."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from enum import StrEnum
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

from analysis.units import System
from gui.theme import Mode
from gui.viewmodels.moment import Place
from gui.words import mark, say

MODES = {
    Mode.SYSTEM: mark("Theme as the system"),
    Mode.DARK: mark("Dark theme"),
    Mode.LIGHT: mark("Light theme (daylight)"),
    Mode.SUNLIGHT: mark("Sunlight theme (black on white)"),
}
UNITS = {System.SI: mark("SI units"), System.US: mark("US units")}
Choice = TypeVar("Choice", bound=StrEnum)
SPACE = QKeySequence(Qt.Key.Key_Space)


class Actions(QObject):
    """The actions. Those that carry a choice have a signal; the others are connected one by one."""

    mode_chosen = Signal(object)
    units_chosen = Signal(object)
    place_chosen = Signal(object)
    recent_chosen = Signal(str)

    def __init__(self, window: QMainWindow) -> None:
        """Put the menus into the window."""
        super().__init__(window)
        self._window = window
        self.commands: list[QAction] = []
        """Everything in the menus, but for the recent jobs."""
        bar = window.menuBar()
        self._file, self._test, self._view, self._help = (
            bar.addMenu(name) for name in (say("&File"), say("&Test"), say("&View"), say("&Help"))
        )
        self.new = self._action(self._file, say("New job…"), "Ctrl+N")
        self.open = self._action(self._file, say("Open a job…"), "Ctrl+O")
        self._recent: QMenu = self._file.addMenu(say("Recent jobs"))
        self._recent.triggered.connect(self._recent_triggered)
        self._file.addSeparator()
        self.undo = self._action(self._file, say("Undo the last edit"), "Ctrl+Z")
        self.redo = self._action(self._file, say("Redo it"), "Ctrl+Shift+Z")
        self._file.addSeparator()
        self.save = self._action(self._file, say("Save the report as PDF…"), "Ctrl+S")
        self.csv = self._action(self._file, say("Export the tables as CSV…"), "Ctrl+E")
        self.json = self._action(self._file, say("Export the test as JSON…"), "Ctrl+Shift+E")
        self._file.addSeparator()
        self._add_office()
        self.quit = self._action(self._file, say("Close Airseam"), "Ctrl+Q")
        self._add_hunt()
        self._add_repair()
        self._places = self._choices({place: place.word for place in Place}, self._place_triggered, keys="123456789")
        self._view.addSeparator()
        self.residuals = self._action(self._view, say("How far the points lie off the line"), "R")
        self.corrections = self._action(self._view, say("From the readings to the line"), "C")
        self.all = self._action(self._view, say("Show all in the plots"), "A")
        self.strike = self._action(self._view, say("Strike or restore the chosen point"), "X")
        self._view.addSeparator()
        self._units = self._choices(UNITS, self._units_triggered)
        self.comma = self._action(self._view, say("Decimal comma"), "")
        self.comma.setCheckable(True)
        self.swap_units = self._action(self._view, say("Change the units"), "Ctrl+U")
        self._view.addSeparator()
        self._modes = self._choices(MODES, self._mode_triggered)
        self.next_mode = self._action(self._view, say("Next theme"), "Ctrl+T")
        self.full_screen = self._action(self._view, say("Whole screen, in Hunt the distance view"), "F11")
        self.trainer = self._action(self._view, say("Window of the trainer of a class"), "Ctrl+L")
        self.trainer.setVisible(False)
        self.keys = self._action(self._help, say("Keys"), "F1")
        self.palette = self._action(self._help, say("Find a command…"), "Ctrl+K")
        self.primary = QAction(say("Press the big button"), window)
        self.primary.setShortcut(SPACE)
        self.primary.setAutoRepeat(False)
        window.addAction(self.primary)

    def _add_office(self) -> None:
        self.hpxml = self._action(self._file, say("Export the air infiltration as HPXML…"), "")
        self.copy_points = self._action(self._file, say("Copy the points for a spreadsheet"), "Ctrl+Shift+C")
        self.copy_results = self._action(self._file, say("Copy the results for a spreadsheet"), "")
        self._file.addSeparator()
        self.jobs = self._action(self._file, say("Find a job in a folder…"), "Ctrl+J")
        self.backup = self._action(self._file, say("Copy the job into the backup folder"), "Ctrl+B")
        self.worst_case = self._action(self._test, say("Worst case of the exhaust fans…"), "")
        self.typed = self._action(self._test, say("Type in a hand-written test…"), "")
        self.settings = self._action(self._file, say("Settings"), "Ctrl+,")
        self.associate = self._action(self._file, say("Open job files with this program"), "")
        self.print_keys = self._action(self._help, say("Save the key sheet for printing…"), "")
        self.bundle = self._action(self._help, say("Save a bundle for support…"), "")

    def _add_hunt(self) -> None:
        self.hold = self._action(self._test, say("Hold a pressure"), "H")
        self.hold_more = self._action(self._test, say("Hold 5 Pa more"), "+")
        self.hold_less = self._action(self._test, say("Hold 5 Pa less"), "-")
        self.hold_other_way = self._action(self._test, say("Hold it in the other direction"), "Shift+D")
        self.zero_again = self._action(self._test, say("Read the zero-flow pressure again"), "Z")
        self.hold_end = self._action(self._test, say("End the hold"), "Shift+H")
        self._test.addSeparator()
        self.seal_starts = self._action(self._test, say("Sealing starts"), "S")
        self.seal_done = self._action(self._test, say("Sealing is done"), "D")
        self.note = self._action(self._test, say("Note of this moment"), "N")
        self.new_leak = self._action(self._test, say("New leak"), "L")
        self.count_from_here = self._action(self._test, say("Count the change from here"), "M")

    def _add_repair(self) -> None:
        self._test.addSeparator()
        self.again = self._action(self._test, say("Take the chosen point again"), "P")
        self.fit_range = self._action(self._test, say("Another flow range is fitted…"), "F")
        self.correct_range = self._action(self._test, say("Correct the flow range of points…"), "Shift+F")
        self.go_on = self._action(self._test, say("Go on with the test that was cut short"), "G")
        self._test.addSeparator()
        self.replay = self._action(self._test, say("Play a recorded test back"), "")

    def show_choices(self, mode: Mode, units: System, place: Place, *, comma: bool) -> None:
        """Tick what is chosen."""
        self._modes[mode].setChecked(True)
        self._units[units].setChecked(True)
        self._places[place].setChecked(True)
        self.comma.setChecked(comma)

    def show_recent(self, paths: Sequence[str]) -> None:
        """List the recent jobs; those that are gone are grey."""
        self._recent.clear()
        for text in paths:
            path = Path(text)
            action = QAction(path.name, self._recent)
            action.setToolTip(text)
            action.setData(text)
            action.setEnabled(path.exists())
            self._recent.addAction(action)
        self._recent.setToolTipsVisible(True)
        self._recent.setEnabled(bool(paths))

    def _action(self, menu: QMenu, words: str, keys: str) -> QAction:
        made = QAction(say(words), self._window)
        if keys:
            made.setShortcut(QKeySequence(keys))
        made.setAutoRepeat(False)
        menu.addAction(made)
        self.commands.append(made)
        return made

    def _choices(
        self, words: Mapping[Choice, str], triggered: Callable[[QAction], None], keys: str = ""
    ) -> dict[Choice, QAction]:
        group = QActionGroup(self._window)
        made = {}
        for at, (value, text) in enumerate(words.items()):
            action = self._action(self._view, text, keys[at : at + 1])
            action.setCheckable(True)
            action.setData(value)
            group.addAction(action)
            made[value] = action
        group.triggered.connect(triggered)
        return made

    def _mode_triggered(self, action: QAction) -> None:
        self.mode_chosen.emit(Mode(action.data()))

    def _units_triggered(self, action: QAction) -> None:
        self.units_chosen.emit(System(action.data()))

    def _place_triggered(self, action: QAction) -> None:
        self.place_chosen.emit(Place(action.data()))

    def _recent_triggered(self, action: QAction) -> None:
        self.recent_chosen.emit(str(action.data()))
