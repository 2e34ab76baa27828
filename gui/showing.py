"""Which test of the job is on show: the running one, the one chosen, or the last. Knows no Qt."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from acquisition.engine import Engine
from acquisition.job import Job, LoadedTest, TestRecord
from acquisition.snapshot import Severity, Snapshot
from gui.errands import Errands
from gui.viewmodels.errors import error_words
from gui.viewmodels.shown import ShownTest, live_test, recorded_test
from gui.words import say


class ShowingDesk(Protocol):
    """What showing a test needs of the desk that it belongs to."""

    job: Job | None
    changed: int
    errands: Errands

    @property
    def engine(self) -> Engine | None:
        """The engine of the connected rig."""

    @property
    def busy(self) -> bool:
        """Whether a test is under way."""

    def tests(self) -> tuple[TestRecord, ...]:
        """The tests of the job."""

    def tell(self, severity: Severity, sentence: str) -> None:
        """Tell the person at the screen."""


class Showing:
    """Belongs to the desk. A test of the file is read in the background and kept while it is on show."""

    def __init__(self, desk: ShowingDesk) -> None:
        """Show nothing yet."""
        self._desk = desk
        self._live: int | None = None
        self._chosen: int | None = None
        self._loaded: ShownTest | None = None
        self._loading: int | None = None

    def number(self) -> int | None:
        """Return the number of the test to show, None without any."""
        tests = self._desk.tests()
        if self._desk.busy and self._live is not None:
            return self._live
        if self._chosen is not None and any(record.id == self._chosen for record in tests):
            return self._chosen
        return tests[-1].id if tests else None

    def test(self, snapshot: Snapshot | None) -> ShownTest | None:
        """Return the test to show, None while it is being read."""
        job, number = self._desk.job, self.number()
        if job is None or number is None:
            return None
        if number == self._live and snapshot is not None:
            record = next(record for record in self._desk.tests() if record.id == number)
            return live_test(record, snapshot)
        if self._loaded is None or self._loaded.number != number:
            self._load(job, number)
        return self._loaded if self._loaded is not None and self._loaded.number == number else None

    def points_loaded(self, number: int) -> int | None:
        """Return how many points of a test count, None while it is not read."""
        return self._loaded.points_taken if self._loaded is not None and self._loaded.number == number else None

    def choose(self, number: int) -> None:
        """Show another test of the job."""
        self._chosen = number

    def follow(self, number: int) -> None:
        """Show the test that the engine has begun, or goes on with."""
        self._live, self._chosen, self._loaded = number, None, None

    def part(self) -> None:
        """The rig is gone: what ran is a test of the file like any other."""
        self._live = None

    def forget(self) -> None:
        """Another job lies on the desk."""
        self._live, self._chosen, self._loaded, self._loading = None, None, None, None

    def amend(self, live: Callable[[Engine], None], kept: Callable[[Job, int], None]) -> None:
        """Change what points of the test on show say: by the engine while it has the test, else in the file."""
        job, number, engine = self._desk.job, self.number(), self._desk.engine
        if job is None or number is None:
            return
        if number == self._live and engine is not None:
            live(engine)
            self._desk.changed += 1
            return

        def amended() -> LoadedTest:
            kept(job, number)
            return job.load(number)

        def done(test: LoadedTest) -> None:
            self._loaded = recorded_test(test)
            self._desk.changed += 1

        def failed(error: Exception) -> None:
            self._desk.tell(
                Severity.ATTENTION, say("The point could not be changed: {error}.", error=error_words(error))
            )

        self._desk.errands.run(amended, done, failed)

    def _load(self, job: Job, number: int) -> None:
        if self._loading == number:
            return
        self._loading = number

        def loaded(test: ShownTest) -> None:
            self._loading = None
            if job is self._desk.job:
                self._loaded = test
                self._desk.changed += 1

        def failed(error: Exception) -> None:
            self._desk.tell(
                Severity.ALARM,
                say("Test {number} could not be read: {error}.", number=number, error=error_words(error)),
            )

        self._desk.errands.run(lambda: recorded_test(job.load(number)), loaded, failed)
