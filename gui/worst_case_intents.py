"""What is asked for on the page of the worst case of exhaust fans."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QObject

from acquisition.job import Entry, PreparationKind
from acquisition.rig import Role
from acquisition.snapshot import Severity
from acquisition.told import Table
from acquisition.told.worstcase import worst_case_tables
from acquisition.worstcase import ALL_OFF, LEAST_READINGS, READ_S, WorstCase, mean_of, situation_entry, worst_case
from analysis.errors import InvalidInput
from analysis.units import Display
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
        self._told: tuple[tuple[Entry, ...], Display, WorstCase, tuple[Table, ...]] | None = None
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
        entries, display = self._desk.job.house.entries if self._desk.job is not None else (), self._screen.display
        # What was read tells the same until there is more of it: a picture is drawn thirty times a second.
        if self._told is None or self._told[:2] != (entries, display):
            found = worst_case(entries)
            self._told = entries, display, found, worst_case_tables(found, display)
        values = self._readings()
        live_pa = float(values.mean()) if len(values) >= LEAST_READINGS else None
        return worst_case_picture(*self._told[2:], live_pa, busy=self._desk.busy, display=display)

    def read(self, words: str) -> None:
        """Keep the mean of the last seconds as the pressure of a situation."""
        job, read = self._desk.job, mean_of(self._readings())
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

    def _readings(self) -> NDArray[np.float64]:
        """Return the pressures of the last seconds (Pa, shape (n,)), none without a gauge that reads."""
        engine, snapshot = self._desk.engine, self._desk.snapshot()
        if engine is None or snapshot is None:
            return np.empty(0)
        return engine.live.window(Role.ENVELOPE, READ_S, snapshot.now_ns)[1]
