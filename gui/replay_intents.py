"""What is asked for to play a recorded test back."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject

from acquisition.job import RecordState, TestRecord
from acquisition.snapshot import Severity
from gui.actions import Actions
from gui.desk import Desk
from gui.files import Files
from gui.screen import Screen
from gui.viewmodels.errors import error_words
from gui.viewmodels.moment import Place
from gui.viewmodels.report_place import title_of
from gui.views.rig_place import REPLAY
from gui.window import Window
from gui.words import mark, say

PATTERN = mark("Jobs (*.airseam)")


class ReplayIntents(QObject):
    """Hears the page of the Rig place on which a recorded test is chosen; `played` is told the job it plays into."""

    def __init__(
        self, desk: Desk, screen: Screen, window: Window, actions: Actions, files: Files, played: Callable[[Path], None]
    ) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._files = files
        self._played = played
        self._path: Path | None = None
        page = window.rig.replay
        page.choose_asked.connect(lambda: files.ask_open(say("Play back a job"), PATTERN, self.choose))
        page.asked.connect(self.play)
        window.rig.page_chosen.connect(self._page_chosen)
        actions.replay.triggered.connect(self.show)

    def show(self) -> None:
        """Show the page."""
        self._screen.go_to(Place.RIG)
        self._window.rig.choose_page(REPLAY)

    def choose(self, path: Path) -> None:
        """Offer the tests of a job that have ended."""
        looking = self._desk.replaying.looking(path)

        def look() -> tuple[TestRecord, ...]:
            with looking as job:
                return tuple(item for item in job.tests() if item.state is not RecordState.RECORDING)

        def seen(records: tuple[TestRecord, ...]) -> None:
            self._path = path
            self._window.rig.replay.show_tests(path, [(item.id, title_of(item)) for item in records])
            if not records:
                self._desk.tell(Severity.ATTENTION, say("{name} holds no test that has ended.", name=path.name))

        def failed(error: Exception) -> None:
            self._desk.tell(
                Severity.ATTENTION,
                say("{name} cannot be played back: {error}.", name=path.name, error=error_words(error)),
            )

        self._desk.errands.run(look, seen, failed)

    def play(self, test: int, speed: float) -> None:
        """Play a test of the chosen job back, and show it."""
        if self._path is None:
            return

        def begun(into: Path) -> None:
            self._played(into)
            self._screen.go_to(Place.TEST)

        self._desk.replaying.play(self._path, test, speed, begun)

    def _page_chosen(self, at: int) -> None:
        job = self._desk.job
        if at == REPLAY and self._path is None and job is not None and job.tests():
            self.choose(job.path)
