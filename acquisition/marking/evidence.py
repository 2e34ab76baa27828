"""What a job shows of the work of a student: which test counts, when the fan first turned, what was written down."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

from acquisition.job import Job, LoadedRun, LoadedTest, RecordState
from acquisition.job.house import Entry
from acquisition.job.results import analyse_record
from acquisition.marking.truth import Truth
from acquisition.rig import Role
from acquisition.series import WindowRecord
from acquisition.steps import WindowKind
from analysis.errors import InvalidInput
from analysis.records import Test, TestResult
from analysis.units import Display

TURNS = 0.02
"""A fan above this share of its full speed turns."""


@dataclass(frozen=True, slots=True)
class Said:
    """Something that the student wrote; `utc` is None where only the last state is known."""

    text: str
    utc: datetime | None


@dataclass(frozen=True, slots=True)
class Given:
    """The test that counts: the newest one with a result, a complete one before one that was ended early."""

    loaded: LoadedTest
    test: Test
    result: TestResult


@dataclass(frozen=True, slots=True)
class Work:
    """What a student did. `fan_utc` is None where the fan never turned; `given` where there is no result.

    `display` is how its sheet shows numbers.
    """

    student: str
    job: str
    tests: tuple[LoadedTest, ...]
    given: Given | None
    fan_utc: datetime | None
    entries: tuple[Entry, ...]
    said: tuple[Said, ...]
    display: Display

    def seconds(self, moment: datetime) -> float:
        """Return the time of a moment on the watch of the exercise: from when the fan first turned."""
        return 0.0 if self.fan_utc is None else (moment - self.fan_utc).total_seconds()

    def points(self) -> Iterator[tuple[LoadedRun, WindowRecord, float]]:
        """Yield the points of the result that counts: run, window, and the time of its middle."""
        for run in self.given.loaded.runs if self.given is not None else ():
            for window in run.windows:
                if window.kind is WindowKind.POINT and not window.struck:
                    middle_ns = (window.start_ns + window.end_ns) // 2
                    yield run, window, self.seconds(moment_of(run, middle_ns))


def moment_of(run: LoadedRun, t_ns: int) -> datetime:
    """Return the time of day of a moment on the clock of a run."""
    return run.record.started + timedelta(microseconds=(t_ns - run.record.started_ns) / 1000)


def element_pa(run: LoadedRun, window: WindowRecord) -> float | None:
    """Return the mean pressure of the flow element over a window, None without usable readings."""
    _, values = run.data.slice(Role.FLOW_ELEMENT, window.start_ns, window.end_ns)
    return float(values.mean()) if len(values) else None


def work_of(job: Job, display: Display) -> Work:
    """Read what a student did; raises `InvalidInput` for a file that is damaged."""
    tests = tuple(job.load(record.id) for record in job.tests())
    turned = [
        moment_of(run, item.t_ns) for test in tests for run in test.runs for item in run.fan if item.fraction > TURNS
    ]
    return Work(
        student=job.details.tester or job.path.stem,
        job=job.path.name,
        tests=tests,
        given=_given(tests),
        fan_utc=min(turned, default=None),
        entries=job.house.entries,
        said=tuple(_said(job, tests)),
        display=display,
    )


def doubted(work: Work, words: tuple[str, ...]) -> str:
    """Return what the student wrote with one of these words in it, empty where there is nothing."""
    return next((item.text for item in work.said if holds(item.text, words)), "")


def holds(text: str, words: tuple[str, ...]) -> bool:
    """Tell whether one of the words stands in a text, in whatever case."""
    folded = text.casefold()
    return any(word.casefold() in folded for word in words)


def directions_of(given: Given) -> str:
    """Return the directions of a test in words."""
    return " and ".join(dict.fromkeys(run.direction.value for run in given.test.runs))


def true_flow_m3_h(truth: Truth, given: Given, time_s: float) -> float:
    """Return the true flow at 50 Pa that the result stands for: the mean over the directions that were tested."""
    flows = truth.span_at(time_s).flow50_m3_h
    tested = {run.direction for run in given.test.runs}
    return sum(flows[item] for item in tested) / len(tested)


def _given(tests: tuple[LoadedTest, ...]) -> Given | None:
    usable = [test for test in tests if not test.record.plan.hold]
    complete = [test for test in usable if test.record.state is RecordState.COMPLETE]
    for loaded in (*reversed(complete), *reversed(usable)):
        try:
            test = loaded.test()
            return Given(loaded, test, analyse_record(loaded.record, test))
        except InvalidInput:
            continue
    return None


def _said(job: Job, tests: tuple[LoadedTest, ...]) -> Iterator[Said]:
    edits = [edit for edit in job.edits if edit.new == job.details.note]
    if job.details.note:
        yield Said(job.details.note, edits[-1].utc if edits else None)
    for test in tests:
        for strike in test.strikes:
            if strike.struck:
                yield Said(strike.reason, strike.utc)
        if test.record.plan.stage:
            yield Said(test.record.plan.stage, test.record.started)
    for mark in job.leaks.marks:
        if mark.text:
            yield Said(mark.text, mark.utc)
    for leak in job.leaks.leaks.values():
        text = " ".join(part for part in (leak.note, leak.room, leak.part) if part)
        if text:
            yield Said(text, None)
    for entry in job.house.entries:
        if entry.note:
            yield Said(entry.note, entry.utc)
