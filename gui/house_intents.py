"""What is asked for about the house: its rooms and surfaces, and their versions."""

from __future__ import annotations

from PySide6.QtCore import QObject

from gui.desk import Desk
from gui.screen import Screen
from gui.viewmodels.rooms import Part
from gui.window import Window


class HouseIntents(QObject):
    """Hears the pages about the house and calls the desk."""

    def __init__(self, desk: Desk, screen: Screen, window: Window) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
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
