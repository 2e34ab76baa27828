"""What is asked for about the house: its rooms and surfaces, how it is set up and put back."""

from __future__ import annotations

from PySide6.QtCore import QObject

from acquisition.job import PreparationKind
from acquisition.setup.board import LEFT, SET_UP, WHOLE_JOB
from gui.desk import Desk
from gui.files import Files
from gui.screen import Screen
from gui.viewmodels.rooms import Part
from gui.window import Window
from gui.words import say


class HouseIntents(QObject):
    """Hears the pages about the house and calls the desk."""

    def __init__(self, desk: Desk, screen: Screen, window: Window, files: Files) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._files = files
        self._setup = window.setup
        self._setup.noted.connect(self.note)
        self._setup.photo_asked.connect(self.ask_photo)
        self._setup.checked_by.connect(self.check)
        self._setup.sheet.clicked.connect(files.save_preparation_sheet)
        self._page = window.job.rooms
        for table in self._page.tables.values():
            table.typed.connect(self.type_cell)
            table.included.connect(self.include)
            table.added.connect(self.add)
            table.removed.connect(self.remove)
            table.pasted.connect(self.paste)
        self._page.how_chosen.connect(self.say_how)
        self._page.keep_asked.connect(self.keep_version)
        window.job.page_asked.connect(self._page_asked)

    @property
    def typing_rooms(self) -> bool:
        """Whether the tables are on show, so that an undo is meant for them."""
        return self._screen.rooms_shown and self._screen.rooms is not None

    def show_page(self, *, rooms: bool) -> None:
        """Show the tables, or the sheet."""
        self._screen.rooms_shown = rooms
        self._screen.touch()

    def type_cell(self, part: Part, at: int, column: int, text: str) -> None:
        """Take what was typed into a cell."""
        rooms = self._screen.rooms
        self._kept(rooms is not None and rooms.type_cell(part, at, column, text, self._screen.display))

    def include(self, part: Part, at: int, included: bool) -> None:
        """Have a part count or not."""
        rooms = self._screen.rooms
        self._kept(rooms is not None and rooms.include(part, at, included=included))

    def add(self, part: Part) -> None:
        """Add a part."""
        rooms = self._screen.rooms
        self._kept(rooms is not None and rooms.add(part))

    def remove(self, part: Part, at: int) -> None:
        """Take a part away."""
        rooms = self._screen.rooms
        self._kept(rooms is not None and rooms.remove(part, at))

    def paste(self, part: Part, text: str) -> None:
        """Add what was copied out of a spreadsheet."""
        rooms = self._screen.rooms
        self._kept(rooms is not None and rooms.paste(part, text, self._screen.display))

    def say_how(self, how: str) -> None:
        """Say how it was measured."""
        rooms = self._screen.rooms
        self._kept(rooms is not None and rooms.say_how(how))

    def keep_version(self, name: str, reason: str) -> None:
        """Keep the geometry as a version."""
        if self._desk.keep_geometry(name, reason):
            self._page.version_kept()
        self._screen.touch()

    def note(self, kind: str, subject: str, state: str) -> None:
        """Keep what was done to the building, or answered about it."""
        if self._desk.note(PreparationKind(kind), subject, state, self._setup.reason.text()):
            self._setup.reason.clear()
        self._screen.touch()

    def check(self, who: str) -> None:
        """Keep that a second person looked it over."""
        if self._desk.note(PreparationKind.CHECK, SET_UP, "looked over", who=who):
            self._setup.entered()
        self._screen.touch()

    def leave(self, reason: str) -> bool:
        """Keep why the job is closed before everything is put back; return whether it was."""
        return self._desk.note(PreparationKind.RESTORE, WHOLE_JOB, LEFT, reason)

    def ask_photo(self, subject: str) -> None:
        """Ask for a picture of an opening, and put it into the job."""
        pattern = say("Pictures (*.png *.jpg *.jpeg)")
        self._files.ask_open(say("A photo of it"), pattern, lambda path: self._desk.add_photo(subject, path))

    def undo(self) -> None:
        """Take the last edit back."""
        rooms = self._screen.rooms
        self._kept(rooms is not None and rooms.undo())

    def redo(self) -> None:
        """Do it again."""
        rooms = self._screen.rooms
        self._kept(rooms is not None and rooms.redo())

    def _kept(self, changed: bool) -> None:
        if changed and self._screen.rooms is not None:
            self._desk.edit_geometry(self._screen.rooms.geometry)
        self._screen.touch()

    def _page_asked(self, rooms: bool) -> None:
        self.show_page(rooms=rooms)
