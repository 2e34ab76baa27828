"""What is asked for about the leaks: new ones, their fields, pictures and pins, notes."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from acquisition.snapshot import Severity
from gui.actions import Actions
from gui.desk import Desk
from gui.files import Files
from gui.report_pages import write_new
from gui.screen import Screen
from gui.viewmodels.errors import sentence
from gui.viewmodels.hunt import HuntTab
from gui.viewmodels.leak_sheet import PLAN, with_pin
from gui.viewmodels.moment import Place
from gui.views.leak_page import dropped_picture
from gui.window import Window
from gui.words import mark, say

PATTERN = mark("Pictures (*.png *.jpg *.jpeg)")


class LeakIntents(QObject):
    """Hears the page of the leaks and its keys."""

    def __init__(self, desk: Desk, screen: Screen, window: Window, actions: Actions, files: Files) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._files = files
        self._hunting = desk.hunting
        self._place = window.hunt
        page = self._page = window.hunt.leaks
        actions.new_leak.triggered.connect(self.new_leak)
        actions.note.triggered.connect(self.begin_note)
        self._place.note.returnPressed.connect(self.keep_note)
        page.add.clicked.connect(self.new_leak)
        page.chosen.connect(self.choose)
        page.committed.connect(self.type_field)
        page.photo.clicked.connect(self.ask_photo)
        page.plan.clicked.connect(self.ask_plan)
        page.paste.clicked.connect(self.paste_photo)
        page.photo_dropped.connect(self.take_photo)
        page.pinned.connect(self.set_pin)
        page.turned.connect(self.turn)
        page.hand_out.clicked.connect(self.ask_hand_out)
        page.done_today.clicked.connect(self.ask_done_today)
        window.report.trades.clicked.connect(self.ask_hand_out)
        window.report.done.clicked.connect(self.ask_done_today)

    def new_leak(self) -> None:
        """Add a leak and begin to describe it."""
        number = self._hunting.new_leak()
        if number is not None:
            self.choose(number)
            self._screen.hunt.tab = HuntTab.LEAKS
            self._screen.go_to(Place.HUNT)
        self._screen.touch()

    def choose(self, number: int) -> None:
        """Describe another leak."""
        self._screen.hunt.chosen = number
        self._screen.leaks.photo_at = 0
        self._screen.touch()

    def type_field(self, name: str, text: str) -> None:
        """Take what was typed into a field."""
        number = self._screen.hunt.chosen
        if number is not None:
            sheet, display = self._screen.leaks, self._screen.display
            self._hunting.edit(number, lambda leak: sheet.typed(number, leak, name, text, display))
        self._screen.touch()

    def begin_note(self) -> None:
        """Begin a note: its moment is now."""
        self._hunting.begin_note()
        self._screen.go_to(Place.HUNT)
        self._screen.hunt.afar = False
        self._place.note.setFocus()

    def keep_note(self) -> None:
        """Keep the note that was typed."""
        if self._hunting.note(self._place.note.text()):
            self._place.note.clear()
            self._place.note.clearFocus()
        self._screen.touch()

    def ask_photo(self) -> None:
        """Ask for a photo of the leak."""
        self._files.ask_open(say("A photo of the leak"), PATTERN, lambda path: self._read(path, plan=False))

    def ask_plan(self) -> None:
        """Ask for a plan, on which every leak may have its pin."""
        self._files.ask_open(say("A plan for the pins"), PATTERN, lambda path: self._read(path, plan=True))

    def paste_photo(self) -> None:
        """Take the picture that was copied."""
        found = dropped_picture(QApplication.clipboard().mimeData())
        if found is None:
            self._desk.tell(Severity.ATTENTION, say("What was copied is no picture."))
        else:
            self.take_photo(*found)
        self._screen.touch()

    def take_photo(self, name: str, content: bytes) -> None:
        """Put a picture to the chosen leak."""
        number = self._screen.hunt.chosen
        if number is None:
            self._desk.tell(Severity.ATTENTION, say("Choose the leak first that the picture is of."))
        else:
            self._hunting.add_photo(number, f"leak {number}", name, content)
        self._screen.touch()

    def set_pin(self, photo: int, across: float, down: float) -> None:
        """Put the pin of the chosen leak on a picture."""
        number = self._screen.hunt.chosen
        if number is not None:
            self._hunting.edit(number, lambda leak: with_pin(leak, photo, across, down))
        self._screen.touch()

    def turn(self, step: int) -> None:
        """Show the next picture, or the one before."""
        self._screen.leaks.photo_at = max(self._screen.leaks.photo_at + step, 0)
        self._screen.touch()

    def ask_hand_out(self) -> None:
        """Ask for a folder, then write the leaks of each trade into it."""
        self._files.ask_folder(say("Hand-outs: into which folder?"), lambda folder: self._write(folder, done=False))

    def ask_done_today(self) -> None:
        """Ask for a folder, then write what was done today into it."""
        self._files.ask_folder(say("Done today: into which folder?"), lambda folder: self._write(folder, done=True))

    def _write(self, folder: Path, *, done: bool) -> None:
        job, display, now = self._desk.job, self._screen.display, self._desk.now()
        if job is None:
            return

        def work() -> list[Path]:
            # The typesetter is loaded when somebody wants a page.
            from acquisition.report.handout import done_handout, trade_handouts

            if done:
                made = [done_handout(job, now.astimezone().date(), display, now)]
            else:
                made = trade_handouts(job, display, now)
            return [write_new(folder / f"{item.stem}.pdf", item.pdf()) for item in made]

        def told(paths: list[Path]) -> None:
            names = ", ".join(path.name for path in paths)
            self._desk.tell(Severity.NOTE, say("Saved in {folder}: {names}.", folder=folder, names=names))

        def failed(error: Exception) -> None:
            self._desk.tell(Severity.ATTENTION, sentence(error))

        self._desk.errands.run(work, told, failed)

    def _read(self, path: Path, *, plan: bool) -> None:
        try:
            content = path.read_bytes()
        except OSError as error:
            self._desk.tell(
                Severity.ATTENTION,
                say("The picture cannot be read ({reason}): {path}.", reason=error.strerror, path=path),
            )
            return
        if plan:
            self._hunting.add_photo(None, PLAN, path.name, content)
        else:
            self.take_photo(path.name, content)
