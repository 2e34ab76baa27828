"""Works out what lies between two tests of the job, beside the window, and draws the Stages place."""

from __future__ import annotations

from PySide6.QtCore import QObject

from acquisition.job import Job
from acquisition.job.results import analyse_record
from acquisition.snapshot import Severity
from acquisition.told import Table
from acquisition.told.stages import between_tables, site_note, site_notes, stage_tests
from analysis.errors import InvalidInput
from analysis.units import Display
from gui.desk import Desk
from gui.screen import Screen
from gui.viewmodels.errors import error_words, sentence
from gui.viewmodels.moment import Moment
from gui.viewmodels.stages_place import StageCurve, chosen_pair, stage_curve, stages_picture
from gui.window import Window
from gui.words import say

Between = tuple[tuple[StageCurve, ...], tuple[Table, ...]]
Key = tuple[object, ...]


class Stages(QObject):
    """Hears the place and draws it."""

    def __init__(self, desk: Desk, screen: Screen, window: Window) -> None:
        """Listen; draw nothing yet."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._pair: tuple[int | None, int | None] = (None, None)
        self._key: Key = ()
        self._between: Between | None = None
        window.stages.pair_chosen.connect(self.choose)
        window.stages.noted.connect(self.note)

    def choose(self, before: int, after: int) -> None:
        """Compare two other tests."""
        self._pair = (before, after)
        self._screen.touch()

    def note(self, text: str) -> None:
        """Keep what changed on site before the later test."""
        job = self._desk.job
        if job is None:
            return
        _, after = chosen_pair(stage_tests(job.tests()), *self._pair)
        try:
            if after is not None:
                job.edit_house().note(site_note(after, text, self._desk.now(), job.details.tester))
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
        self._window.stages.note.clearFocus()
        self._screen.touch()

    def draw(self, moment: Moment) -> None:
        """Draw the place."""
        job = self._desk.job
        tests = stage_tests(job.tests()) if job is not None else ()
        pair = chosen_pair(tests, *self._pair)
        before, after = pair
        if job is not None and before is not None and after is not None:
            marks, results = len(job.leaks.marks), tuple(test.record.result_json for test in tests)
            key = (self._desk.job_opened, pair, moment.display, marks, results, len(job.house.entries))
            if key != self._key:
                self._key = key
                self._work_out(job, before, after, moment.display, key)
        else:
            self._key, self._between = (), None
        notes = site_notes(job.house.entries) if job is not None else {}
        picture = stages_picture(tests, notes, pair, self._between, moment.display)
        self._window.stages.show_picture(picture, moment.display.decimal_mark)

    def _work_out(self, job: Job, before: int, after: int, display: Display, key: Key) -> None:
        self._between = None

        def work() -> Between:
            curves = []
            for number in (before, after):
                loaded = job.load(number)
                test = loaded.test()
                curves.append(
                    stage_curve(say("test {number}", number=number), test, analyse_record(loaded.record, test), display)
                )
            return tuple(curves), between_tables(job, before, after, display)

        def done(between: Between) -> None:
            if key == self._key:
                self._between = between
                self._screen.touch()

        self._desk.errands.run(work, done, self._failed)

    def _failed(self, error: Exception) -> None:
        self._desk.tell(Severity.ATTENTION, say("The two tests cannot be compared: {error}.", error=error_words(error)))
