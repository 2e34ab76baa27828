"""What is mended from the window: a test that goes on, points, flow ranges, and what of it is taken back."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Protocol

from acquisition.engine import Engine
from acquisition.job import Job, RecordState, TestRecord
from acquisition.snapshot import EngineState, PointState, PointView, Severity, Snapshot
from acquisition.takeup import cut_short, take_up
from analysis.errors import InvalidInput
from gui.connection import Connection
from gui.replaying import Replaying
from gui.showing import Showing
from gui.viewmodels.errors import error_words, sentence
from gui.words import say


class MendableDesk(Protocol):
    """What a repair needs of the desk that it belongs to."""

    job: Job | None
    job_opened: int
    changed: int
    connection: Connection
    showing: Showing
    replaying: Replaying

    @property
    def engine(self) -> Engine | None:
        """The engine of the connected rig."""

    @property
    def busy(self) -> bool:
        """Whether a test is under way."""

    def now(self) -> datetime:
        """The date and time of the clock."""

    def snapshot(self) -> Snapshot | None:
        """What the engine says."""

    def tests(self) -> tuple[TestRecord, ...]:
        """The tests of the job."""

    def follow(self, number: int) -> None:
        """Show a test that runs."""

    def tell(self, severity: Severity, sentence: str) -> None:
        """Tell the person at the screen."""


Act = tuple[Callable[[Engine], None], Callable[[Job, int], None]]
"""One change of points: by the engine that has the test, and in the file."""


@dataclass(frozen=True, slots=True)
class _Change:
    forth: Act
    back: Act


class Repairs:
    """Belongs to the desk. Knows no Qt."""

    def __init__(self, desk: MendableDesk) -> None:
        """Nothing has been mended yet."""
        self._desk = desk
        self._left: tuple[int, int] | None = None
        """Opened job and number of an interrupted test that somebody does not want to go on with."""
        self._done: list[_Change] = []
        self._undone: list[_Change] = []

    def interrupted(self) -> str:
        """Return what a crash left, as long as the interrupted test is the last one and is not to be left."""
        job, desk = self._desk.job, self._desk
        tests = job.tests() if job is not None else ()
        if job is None or not tests or tests[-1].state is not RecordState.INTERRUPTED:
            return ""
        number = tests[-1].id
        if self._left == (desk.job_opened, number) or not job.runs(number) or tests[-1].plan.hold:
            return ""
        when, taken = f"{tests[-1].started.astimezone():%d.%m. %H:%M}", desk.showing.points_loaded(number)
        points = (
            ""
            if taken is None
            else say(" with 1 point taken")
            if taken == 1
            else say(" with {count} points taken", count=taken)
        )
        return say(
            "Test {number} of {when} was interrupted{points}; every reading up to then is safe.",
            number=number,
            when=when,
            points=points,
        )

    def leave(self) -> None:
        """Do not go on with the interrupted test."""
        tests = self._desk.tests()
        self._left = (self._desk.job_opened, tests[-1].id) if tests else None
        self._desk.changed += 1

    def go_on(self) -> bool:
        """Go on with the newest test of the job, which was cut short; return whether it does."""
        desk = self._desk
        engine, rig, job = desk.engine, desk.connection.rig, desk.job
        if engine is None or rig is None or job is None or engine.busy:
            self._tell(say("A rig has to be connected, and no test may be running."))
            return False
        try:
            again = take_up(job, rig.spec, desk.now())
            engine.begin(again.plan, job.resume(again.number), again.standing)
        except InvalidInput as error:
            self._tell(say("The test cannot go on: {error}.", error=error_words(error)))
            return False
        desk.follow(again.number)
        return True

    def can_go_on(self) -> bool:
        """Whether the newest test of the job was cut short."""
        return self._desk.job is not None and cut_short(self._desk.job) is not None

    def take_again(self, window: int | None) -> None:
        """Take a point once more; without one begin the point anew that is being taken."""
        desk, snapshot = self._desk, self._desk.snapshot()
        if self._of_a_record():
            return
        if desk.engine is None or not desk.busy or snapshot is None:
            self._tell(say("A point can be taken again only while its test runs."))
            return
        if window is None and snapshot.state is not EngineState.RUNNING:
            self._tell(say("Choose in the table which point is to be taken again."))
            return
        desk.engine.take_again(window)
        if window is not None:
            self._tell(
                say("The point is taken again next; the old one is left out and stays in the record."), Severity.NOTE
            )

    def fit_range(self, name: str) -> None:
        """Fit another flow range: a running fan is stopped for it."""
        if self._desk.engine is None:
            self._tell(say("No rig is connected."))
            return
        if self._of_a_record():
            return
        try:
            self._desk.engine.fit_range(name.strip())
        except InvalidInput as error:
            self._tell(sentence(error))
        self._desk.changed += 1

    def _of_a_record(self) -> bool:
        rig = self._desk.connection.rig
        if rig is None or rig.script is None:
            return False
        self._tell(say("A recorded test is played back: what was measured stays as it was."))
        return True

    def strike(self, windows: Sequence[int], reason: str) -> None:
        """Leave points of the shown test out of its result."""
        self._change(
            _judged({window: reason.strip() or "no reason given" for window in windows}), self._reasons(windows)
        )

    def restore(self, windows: Sequence[int]) -> None:
        """Take struck points of the shown test back."""
        self._change(_judged(dict.fromkeys(windows)), self._reasons(windows))

    def correct_range(self, windows: Sequence[int], name: str, fan: int = 0) -> None:
        """Work points of the shown test out anew with the flow range that they were read with."""
        if self._of_a_record():
            return
        shown = self._desk.showing.test(self._desk.snapshot())
        try:
            if shown is not None and name:
                shown.rig.with_fitted(fan, name)
        except InvalidInput as error:
            self._tell(sentence(error))
            return
        before = {window: _corrected_on(self._point(window), fan) for window in windows}
        undone = [_with_range([w for w in windows if before[w] == old], old, fan) for old in set(before.values())]
        self._change(_with_range(windows, name, fan), _all(undone))

    def undo(self) -> bool:
        """Take the last change of points back; return whether there was one."""
        return self._step(self._done, self._undone, lambda change: change.back)

    def redo(self) -> bool:
        """Do it again; return whether there was one."""
        return self._step(self._undone, self._done, lambda change: change.forth)

    def forget(self) -> None:
        """Another test is on show: what was changed in the last one is not taken back here."""
        self._done.clear()
        self._undone.clear()

    def _change(self, forth: Act, back: Act) -> None:
        self._done.append(_Change(forth, back))
        self._undone.clear()
        self._do(forth)

    def _do(self, act: Act) -> None:
        self._desk.showing.amend(*act)
        self._desk.replaying.wake()

    def _step(self, taken_from: list[_Change], kept_in: list[_Change], act_of: Callable[[_Change], Act]) -> bool:
        if not taken_from:
            return False
        change = taken_from.pop()
        kept_in.append(change)
        self._do(act_of(change))
        return True

    def _reasons(self, windows: Sequence[int]) -> Act:
        """Return what brings points back to how they are judged now."""
        views = {window: self._point(window) for window in windows}
        return _judged(
            {
                window: view.struck_reason if view is not None and view.state is PointState.STRUCK else None
                for window, view in views.items()
            }
        )

    def _point(self, window: int) -> PointView | None:
        shown = self._desk.showing.test(self._desk.snapshot())
        points = [point for run in shown.runs for point in run.points] if shown is not None else []
        return next((point for point in points if point.window == window), None)

    def _tell(self, sentence: str, severity: Severity = Severity.ATTENTION) -> None:
        self._desk.tell(severity, sentence)


def _judged(reasons: Mapping[int, str | None]) -> Act:
    """Return what strikes points for their reasons, or puts those without one back."""

    def live(engine: Engine) -> None:
        for window, reason in reasons.items():
            if reason is None:
                engine.restore(window)
            else:
                engine.strike(window, reason)

    def kept(job: Job, number: int) -> None:
        for window, reason in reasons.items():
            if reason is None:
                job.restore(number, window)
            else:
                job.strike(number, window, reason)

    return live, kept


def _with_range(windows: Sequence[int], name: str, fan: int) -> Act:
    """Return what works points out with a flow range, or as entered without a name."""
    return (
        lambda engine: engine.correct_range(windows, name, fan),
        lambda job, number: job.correct_range(number, windows, name, fan),
    )


def _all(acts: Sequence[Act]) -> Act:
    def live(engine: Engine) -> None:
        for act, _ in acts:
            act(engine)

    def kept(job: Job, number: int) -> None:
        for _, act in acts:
            act(job, number)

    return live, kept


def _corrected_on(view: PointView | None, fan: int) -> str:
    """Return the name of the flow range that a point was corrected to on a fan, empty as entered."""
    corrected = view.corrected if view is not None else ()
    return next((item.flow_range.name for item in corrected if item.fan == fan), "")
