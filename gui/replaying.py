"""A recorded test played back through the window, into a job of its own. Knows no Qt."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager, nullcontext
from pathlib import Path
from typing import Protocol

from acquisition.engine import Engine
from acquisition.job import SUFFIX, Job, LoadedTest, RecordState, TestRecord
from acquisition.replay import PlayedRig, play_clock, same_result
from acquisition.snapshot import EngineState, Severity, Snapshot
from analysis.errors import InvalidInput
from drivers.clock import Clock, ScaledClock, ShiftedClock, WallClock, seconds
from gui.connection import Connection
from gui.viewmodels.errors import error_words
from gui.words import say

MOST_NAMES = 1000
AWAKE_S = 0.3


class ReplayDesk(Protocol):
    """What a play-back needs of the desk that it belongs to."""

    job: Job | None
    connection: Connection

    @property
    def engine(self) -> Engine | None:
        """The engine of the connected rig."""

    def snapshot(self) -> Snapshot | None:
        """What the engine says."""

    def tests(self) -> tuple[TestRecord, ...]:
        """The tests of the job."""

    def new_job(self, path: Path, name: str) -> bool:
        """Make a job and open it; return whether it is open."""

    def follow(self, number: int) -> None:
        """Show a test that runs."""

    def tell(self, severity: Severity, sentence: str) -> None:
        """Tell the person at the screen."""


class Replaying:
    """Plays one recorded test at a time; `clock` makes the clock that runs so many times faster than real time."""

    def __init__(self, desk: ReplayDesk) -> None:
        """Play nothing yet."""
        self._desk = desk
        self._loaded: LoadedTest | None = None
        self._clock: ShiftedClock | None = None
        self._awake_ns = 0
        self.clock: Callable[[float], Clock] = ScaledClock

    @property
    def playing(self) -> bool:
        """Whether the connected rig is a record that plays."""
        return self._loaded is not None

    def play(self, path: Path, test: int, speed: float, begun: Callable[[Path], None]) -> None:
        """Play a test of a job; `begun` is told the job that it is played into."""
        opened: list[tuple[LoadedTest, ShiftedClock]] = []
        look = self.looking(path)

        def open_it() -> tuple[PlayedRig, Clock]:
            with look as job:
                loaded = job.load(test)
                clock = play_clock(loaded, self.clock(speed))
                opened.append((loaded, clock))
                return PlayedRig(job, loaded, clock), clock

        def connected() -> None:
            into = self._begin(path, *opened[0])
            if into is not None:
                begun(into)

        self._desk.connection.connect_opened(open_it, connected)

    def looking(self, path: Path) -> AbstractContextManager[Job]:
        """Return a job to look into: the one on the desk if it is that, which nobody else can open meanwhile."""
        job = self._desk.job
        if job is None or job.path.resolve() != path.resolve():
            return _opened(path)
        job.flush()
        return nullcontext(job)

    def _begin(self, path: Path, loaded: LoadedTest, clock: ShiftedClock) -> Path | None:
        desk, plan = self._desk, loaded.record.plan
        self._loaded, self._clock = loaded, clock
        if not desk.new_job(into := _free(path), f"{path.stem} played back"):
            desk.connection.disconnect()
            return None
        job, engine = desk.job, desk.engine
        assert job is not None
        assert engine is not None
        job.set_draft(plan)
        try:
            recorder = job.record(plan, loaded.record.rig)
            engine.begin(plan, recorder)
        except InvalidInput as error:
            desk.tell(Severity.ATTENTION, say("The test cannot be played back: {error}.", error=error_words(error)))
            desk.connection.disconnect()
            return None
        desk.follow(recorder.test_id)
        return into

    def tend(self, snapshot: Snapshot) -> None:
        """Let the record stand still while its play-back is paused."""
        if self._clock is not None and snapshot.state is EngineState.PAUSED and snapshot.now_ns >= self._awake_ns:
            self._clock.hold()

    def wake(self) -> None:
        """Let a record that stands still go on long enough for the engine to hear what is asked of it."""
        if self._clock is not None:
            self._clock.go_on()
            self._awake_ns = self._clock.now_ns() + seconds(AWAKE_S)

    def ended(self) -> None:
        """Say whether the result is that of the record, and part with the record."""
        loaded, snapshot = self._loaded, self._desk.snapshot()
        if loaded is None or snapshot is None:
            return
        complete = self._desk.tests()[-1].state is RecordState.COMPLETE
        if not complete:
            self._desk.tell(Severity.NOTE, say("The test was not played back to its end."))
        elif same_result(loaded, snapshot.result):
            self._desk.tell(Severity.NOTE, say("Played back: the result is the same to the digit as in the record."))
        else:
            self._desk.tell(Severity.ATTENTION, say("Played back: the result is not that of the record."))
        self._desk.connection.disconnect()

    def parted(self) -> None:
        """Forget the record: its rig is gone."""
        self._loaded, self._clock, self._awake_ns = None, None, 0


@contextmanager
def _opened(path: Path) -> Iterator[Job]:
    job = Job.open(path, WallClock(), read_only=True)
    try:
        yield job
    finally:
        job.close()


def _free(path: Path) -> Path:
    """Return a path beside a job that no file has yet."""
    names = [f"{path.stem} played back{SUFFIX}"]
    names += [f"{path.stem} played back {number}{SUFFIX}" for number in range(2, MOST_NAMES)]
    return next((path.with_name(name) for name in names if not path.with_name(name).exists()), path.with_name(names[0]))
