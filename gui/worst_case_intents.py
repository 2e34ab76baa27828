"""What is asked for on the page of the worst case of exhaust fans."""

from __future__ import annotations

from PySide6.QtCore import QObject

from acquisition.job import PreparationKind
from acquisition.rig import Role
from acquisition.snapshot import Severity
from acquisition.worstcase import ALL_OFF, READ_S, mean_of, situation_entry, worst_case
from analysis.errors import InvalidInput
from gui.actions import Actions
from gui.desk import Desk
from gui.screen import Screen
from gui.viewmodels.errors import sentence
from gui.viewmodels.over import Over
from gui.viewmodels.worst_case import SUGGESTED, WorstCasePicture, worst_case_picture
from gui.window import Window
from gui.words import say


class WorstCaseIntents(QObject):
    """Hears the page and fills it."""

    def __init__(self, desk: Desk, screen: Screen, window: Window, actions: Actions) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._page = window.worst_case
        actions.worst_case.triggered.connect(self.open)
        self._page.read_asked.connect(self.read)

    def open(self) -> None:
        """Show the page."""
        if self._desk.job is None:
            self._desk.tell(Severity.ATTENTION, say("Open a job first: the readings are kept in it."))
            return
        self._screen.show_over(Over.WORST_CASE)
        self._page.situation.setFocus()

    def picture(self) -> WorstCasePicture:
        """Return the page."""
        entries = self._desk.job.house.entries if self._desk.job is not None else ()
        read = self._mean()
        live_pa = None if read is None else read[0]
        return worst_case_picture(worst_case(entries), live_pa, busy=self._desk.busy, display=self._screen.display)

    def read(self, words: str) -> None:
        """Keep the mean of the last seconds as the pressure of a situation."""
        job, read = self._desk.job, self._mean()
        if job is None or read is None or self._desk.busy:
            return
        # A suggestion is kept in English, whatever language it was shown in.
        known = {say(item): item for item in SUGGESTED}
        said = known.get(words.strip(), words)
        if said != ALL_OFF and worst_case(job.house.entries).off is None:
            self._desk.tell(Severity.ATTENTION, say("Read the pressure with everything off first."))
            return
        try:
            entry = situation_entry(said, *read, self._desk.now(), job.details.tester)
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
            return
        self._desk.note(PreparationKind.EXHAUST, entry.subject, entry.state, who=entry.who)
        self._screen.touch()

    def _mean(self) -> tuple[float, float] | None:
        engine, snapshot = self._desk.engine, self._desk.snapshot()
        if engine is None or snapshot is None:
            return None
        _, values = engine.live.window(Role.ENVELOPE, READ_S, snapshot.now_ns)
        return mean_of(values)
