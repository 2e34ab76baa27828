"""The trainer's window: a second one, so that students and beamer see the normal program alone."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QMainWindow, QSizePolicy, QStackedWidget, QWidget

from analysis.errors import InvalidInput
from analysis.units import Display, System
from gui.beside import Beside
from gui.classroom.class_page import ClassPage
from gui.classroom.exercise_page import ExercisePage
from gui.classroom.faults_page import FaultsPage
from gui.classroom.house_page import HousePage
from gui.classroom.house_view import HouseView
from gui.classroom.timeline_page import TimelinePage
from gui.classroom.trainer import Trainer
from gui.look import Look
from gui.theme import GAP_8, GAP_12, GAP_16
from gui.viewmodels.errors import error_words
from gui.views.file_dialog import FileDialog
from gui.views.parts import Panel, button, column, label, row, set_text, wrapped
from gui.words import mark, say
from simulators.classroom.server import DRIVE

PERIOD_MS = 100
KEEP_EVERY = 100
EXERCISE, CLASS, HOUSE, FAULTS, TIMELINE = 0, 1, 2, 3, 4
PAGES = (mark("Exercise"), mark("Class"), mark("House"), mark("Faults"), mark("Timeline"))
TELLING = (EXERCISE, FAULTS, TIMELINE)
"""Pages that tell the truth: a cover lies over them."""
COVER = mark("The truth is covered. T uncovers it.")
LEAST_WIDTH, LEAST_HEIGHT = 1024, 700
EXERCISES = mark("Exercises (*.toml)")
SOURCES = mark("Exercises and jobs (*.toml *.airseam)")


class ClassWindow(QMainWindow):
    """Draws what the trainer model holds, ten times a second, and hears what is asked."""

    closed = Signal()

    def __init__(self, look: Look, trainer: Trainer, folder: Path, beside: Beside | None = None) -> None:
        """Lay it out; `folder` is where truths are kept and files looked for, `beside` the normal window."""
        super().__init__()
        self.trainer = trainer
        self._beside = beside
        self._display = Display()
        self._folder = folder
        self._dialog: FileDialog | None = None
        self._ticks = 0
        self._checked: str | None = None
        self.setWindowTitle(say("Airseam class"))
        self.setMinimumSize(LEAST_WIDTH, LEAST_HEIGHT)
        self.house = HouseView(look)
        self.exercise = ExercisePage(look, trainer.exercises())
        self.room = ClassPage(trainer.addresses())
        self.leaks = HousePage()
        self.faults = FaultsPage()
        self.pages = QStackedWidget()
        self.timeline = TimelinePage()
        for page in (self.exercise, self.room, self.leaks, self.faults, self.timeline):
            self.pages.addWidget(page)
        self.hidden = label(say(COVER), "quiet")
        self.hidden.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.front = QStackedWidget()
        self.front.addWidget(self.pages)
        self.front.addWidget(self.hidden)
        self.cover, self.freeze = (
            button(say("Cover the truth (T)"), "slim"),
            button(say("Freeze the picture (F)"), "slim"),
        )
        for made in (self.cover, self.freeze):
            made.setCheckable(True)
        self.said = wrapped("next")
        self._group = QButtonGroup(self)
        self._lay_out()
        self._connect()
        self._timer = QTimer(self)
        self._timer.setInterval(PERIOD_MS)
        self._timer.timeout.connect(self.tick)
        self._timer.start()
        self.tick()

    def choose_page(self, at: int) -> None:
        """Show a page."""
        self.pages.setCurrentIndex(at)
        self._group.button(at).setChecked(True)

    def tick(self) -> None:
        """Draw the moment."""
        trainer = self.trainer
        picture = trainer.picture()
        trainer.display = self.display
        self.house.show_picture(picture, trainer.display, covered=trainer.covered)
        self.leaks.set_display(trainer.display)
        server = trainer.server
        address = "" if server is None else "{}:{}".format(*server.address)
        where = say("Host and port for the students: {address}", address=address) if address else ""
        self.room.show_class(trainer.seats(), where, trainer.chosen, may_join=self._beside is not None)
        self.room.show_marks(trainer.markings, trainer.display, covered=trainer.covered)
        if self.pages.currentIndex() == HOUSE:
            self.leaks.show_house(picture, trainer.pace, covered=trainer.covered)
        if self.pages.currentIndex() == FAULTS or not self.faults.lines:
            self.faults.show_faults([(fault, trainer.state_of(fault)) for fault in trainer.faults()])
        if self.pages.currentIndex() == TIMELINE:
            self.timeline.show_timeline(trainer.timeline())
        self._check()
        self.front.setCurrentIndex(int(trainer.covered and self.pages.currentIndex() in TELLING))
        set_text(self.said, trainer.shown)
        self._ticks += 1
        if server is not None and server.error is not None:
            trainer.said = say("The class ended by a mistake of the program ({error}).", error=server.error)
        if server is not None and self._ticks % KEEP_EVERY == 0:
            self._keep()

    @property
    def display(self) -> Display:
        """How numbers are shown: as in the normal window beside, if there is one."""
        return self._display if self._beside is None else self._beside.display()

    def set_display(self, display: Display) -> None:
        """Show numbers otherwise, where no other window says how."""
        self._display = display
        self.tick()

    def _swap_units(self) -> None:
        other = System.SI if self._display.system is System.US else System.US
        self.set_display(replace(self._display, system=other))

    def _check(self) -> None:
        """Look over the exercise when its text has changed."""
        text = self.trainer.text
        if text == self._checked:
            return
        self._checked = text
        self.exercise.show_text(text, self.trainer.name)
        line, sentence = self.trainer.problem()
        sound = ""
        if not sentence:
            exercise = self.trainer.exercise()
            sound = say(
                "{title}: {minutes} minutes, {points} points.",
                title=exercise.scenario.title,
                minutes=f"{exercise.minutes:g}",
                points=f"{exercise.points:g}",
            )
        self.exercise.show_problem(line, sentence, sound)

    def _keep(self) -> None:
        try:
            self.trainer.keep_truths(self._folder / "truths")
        except OSError as error:
            self.trainer.said = say("The truth of the houses cannot be kept: {reason}.", reason=error_words(error))

    # --- what is asked --------------------------------------------------------------------------------------------

    def open_class(self, host: str, port: int, students: int, shared: bool) -> None:
        """Open the class, and look at the house."""
        if self.trainer.open_class(host, port, students, shared=shared):
            self.tick()

    def close_class(self) -> None:
        """Close the class; what was true in its houses is kept."""
        self._keep()
        self.trainer.close_class()
        self.tick()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Close the class with the window."""
        self._timer.stop()
        self.trainer.keep_draft(self._folder)
        self.close_class()
        event.accept()
        self.closed.emit()

    def _pick(self, name: str) -> None:
        self.trainer.keep_draft(self._folder)
        self.trainer.choose(name)

    def load(self, path: Path) -> None:
        """Take a file into the editor."""
        self.trainer.keep_draft(self._folder)
        self.trainer.load(path)

    def _ask_jobs(self) -> None:
        title = say("The job of a student")
        self._ask(FileDialog.to_open(self, title, self._folder, say("Jobs (*.airseam)")), self.mark_beside)

    def mark_beside(self, path: Path) -> None:
        """Mark a job, and those that lie beside it."""
        try:
            markings = self.trainer.mark(sorted(path.parent.glob("*.airseam")))
        except (InvalidInput, ValueError) as error:
            self.trainer.said = say("The jobs could not be marked: {error}.", error=error_words(error))
            return
        place = path.parent.name
        self.trainer.said = (
            say("1 job in {folder} marked.", folder=place)
            if len(markings) == 1
            else say("{count} jobs in {folder} marked.", count=len(markings), folder=place)
        )

    def write_sheets(self, folder: Path) -> None:
        """Write the sheets and the table."""
        try:
            self.trainer.write_marks(folder)
        except InvalidInput as error:
            self.trainer.said = say("The sheets could not be written: {error}.", error=error_words(error))

    def _ask(self, dialog: FileDialog, picked: Callable[[Path], object]) -> None:
        self._dialog = dialog
        # No fan belongs to this window: it stands beside the normal one, which has the button.
        dialog.stop.hide()
        dialog.picked.connect(lambda path: picked(Path(path)))
        dialog.open()

    def _join_in(self) -> None:
        server = self.trainer.server
        if self._beside is None or server is None:
            return
        if server.shared:
            self._beside.take_rig(server.rig_files()[DRIVE])
            self.trainer.said = say("The program beside drives the fan; the students watch.")
            return
        self._beside.join("{}:{}".format(*server.address), "Beamer")
        self.trainer.said = say("The program beside joins as Beamer.")

    def _throw(self, at: int, after_s: float) -> None:
        self.trainer.throw(self.trainer.faults()[at], after_s)

    def _connect(self) -> None:
        trainer = self.trainer
        self.exercise.picked.connect(self._pick)
        self.exercise.edited.connect(lambda text: setattr(trainer, "text", text))
        self.exercise.load_asked.connect(
            lambda: self._ask(
                FileDialog.to_open(self, say("Load an exercise, or a job as one"), self._folder, say(SOURCES)),
                self.load,
            )
        )
        self.exercise.save_asked.connect(
            lambda: self._ask(
                FileDialog.to_save(
                    self, say("Save the exercise"), self._folder / f"{trainer.name}.toml", say(EXERCISES)
                ),
                trainer.save,
            )
        )
        self.room.open_asked.connect(self.open_class)
        self.room.close_asked.connect(self.close_class)
        self.room.chosen.connect(trainer.look_at)
        self.room.mark_asked.connect(self._ask_jobs)
        self.room.sheets_asked.connect(
            lambda: self._ask(
                FileDialog.to_folder(self, say("Write the sheets into a folder"), self._folder), self.write_sheets
            )
        )
        self.room.join_asked.connect(self._join_in)
        self.room.files_asked.connect(
            lambda: self._ask(
                FileDialog.to_folder(self, say("Write the rig files into a folder"), self._folder),
                trainer.write_rig_files,
            )
        )
        self.timeline.back_asked.connect(trainer.take_back)
        self.leaks.leak_asked.connect(trainer.resize)
        self.leaks.wind_asked.connect(trainer.blow)
        self.leaks.heat_asked.connect(trainer.heat)
        self.leaks.pace_asked.connect(trainer.go_at)
        self.faults.throw_asked.connect(self._throw)
        self.faults.mend_asked.connect(lambda at: trainer.mend(trainer.faults()[at]))
        self.faults.plug_asked.connect(lambda on: trainer.plug(plugged=on))
        self.faults.everybody_asked.connect(lambda on: setattr(trainer, "everybody", on))
        self.cover.toggled.connect(lambda on: setattr(trainer, "covered", on))
        self.freeze.toggled.connect(lambda on: trainer.freeze(on=on))
        for key, made in (("T", self.cover), ("F", self.freeze)):
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.activated.connect(made.toggle)
        if self._beside is None:
            QShortcut(QKeySequence("Ctrl+U"), self).activated.connect(self._swap_units)

    def _lay_out(self) -> None:
        left, right = Panel(say("The house")), Panel(say("The class"))
        left.head.addWidget(self.cover)
        left.head.addWidget(self.freeze)
        left.body.addWidget(self.house, 1)
        tabs = row()
        for at, words in enumerate(PAGES):
            made = button(say(words), "tab")
            made.setCheckable(True)
            made.setChecked(at == EXERCISE)
            self._group.addButton(made, at)
            tabs.addWidget(made, 1)
        self._group.idClicked.connect(self.choose_page)
        right.body.removeItem(right.head)
        right.title.hide()
        right.note.hide()
        right.body.addLayout(tabs)
        right.body.addWidget(self.front, 1)
        right.setFixedWidth(430)
        right.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        middle = QHBoxLayout()
        middle.setSpacing(GAP_12)
        middle.addWidget(left, 1)
        middle.addWidget(right)
        bar = QWidget()
        bar.setProperty("role", "bar")
        bar.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        inside = row(self.said)
        inside.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        bar.setLayout(inside)
        bar.setMinimumHeight(52)
        top = column(GAP_8)
        top.setContentsMargins(GAP_16, GAP_16, GAP_16, GAP_12)
        top.addLayout(middle, 1)
        everything = column(0)
        everything.addLayout(top, 1)
        everything.addWidget(bar)
        ground = QWidget()
        ground.setProperty("role", "ground")
        ground.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        ground.setLayout(everything)
        self.setCentralWidget(ground)
