"""A test out of a file, whichever kind of file that is: a job, or a test as JSON."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path

from acquisition.job import Job, LoadedTest, TestRecord
from acquisition.progress import recorded_run
from acquisition.regimes import regimes_of, regimes_sentence
from acquisition.snapshot import PointState, PointView
from analysis.errors import InvalidInput
from analysis.meaning import Surroundings
from analysis.methods import analyse
from analysis.records import Direction, Kit, Limit, Point, Test, TestResult
from analysis.testjson import read_test
from analysis.units import Display
from drivers.clock import Clock

_JOB_BEGINS = b"SQLite format 3\x00"
LARGEST_FILE_BYTES = 50_000_000


@dataclass(frozen=True, slots=True)
class StoredTest:
    """A test with what it was made for. `record` is None for a test that is no part of a job."""

    test: Test
    method: str = "iso9972"
    limits: tuple[Limit, ...] = ()
    kit: Kit = field(default_factory=Kit)
    surroundings: Surroundings = field(default_factory=Surroundings)
    record: TestRecord | None = None
    points: tuple[tuple[Direction, tuple[PointView, ...]], ...] = ()
    """The points of each run as they were taken, struck ones in their places."""

    def regimes(self, result: TestResult, display: Display) -> tuple[str, ...]:
        """Return a sentence for each run in which something came off or closed between two points."""
        found = [
            (outcome.direction, regimes_of(points, outcome))
            for direction, points in self.points
            for outcome in result.runs
            if outcome.direction is direction
        ]
        return tuple(regimes_sentence(item, direction, display) for direction, item in found if item is not None)

    def result(self, method: str | None = None, fit: str | None = None, limits: Sequence[Limit] = ()) -> TestResult:
        """Return the result by its own method or another, held against its own limits and further ones.

        Raises `InvalidInput`.
        """
        return analyse(self.test, method or self.method, fit, (*self.limits, *limits), self.kit)


def is_job(path: Path) -> bool:
    """Tell whether a file is a job, by what it begins with; raises `InvalidInput` when it cannot be read."""
    try:
        with path.open("rb") as file:
            return file.read(len(_JOB_BEGINS)) == _JOB_BEGINS or path.suffix == ".airseam"
    except OSError as error:
        raise InvalidInput("file", str(path), f"it cannot be read ({error.strerror})") from error


def load_stored_test(path: Path, clock: Clock, number: int | None = None) -> StoredTest:
    """Read a test; `number` chooses one of a job, its newest by default. Raises `InvalidInput`."""
    if is_job(path):
        job = Job.open(path, clock, read_only=True)
        try:
            loaded = job.load(chosen(job, number))
            plan = loaded.record.plan
            return StoredTest(
                loaded.test(), plan.method, plan.limits, plan.kit, plan.surroundings, loaded.record, _points(loaded)
            )
        finally:
            job.close()
    if number is not None:
        raise InvalidInput("test", number, f"a number chooses among the tests of a job, and {path.name} is no job")
    size = path.stat().st_size
    if size > LARGEST_FILE_BYTES:
        raise InvalidInput(str(path), f"{size} bytes long", f"a test has at most {LARGEST_FILE_BYTES} bytes")
    test = read_test(path.read_bytes())
    points = tuple((run.direction, tuple(map(_view, run.points))) for run in test.runs)
    return StoredTest(test, points=points)


def chosen(job: Job, number: int | None) -> int:
    """Return the number of a test of a job, of its newest by default; raises `InvalidInput` when there is none."""
    tests = job.tests()
    if not tests:
        raise InvalidInput("job file", str(job.path), "there is no test in it yet")
    return tests[-1].id if number is None else number


def _points(loaded: LoadedTest) -> tuple[tuple[Direction, tuple[PointView, ...]], ...]:
    record = loaded.record
    return tuple((run.record.direction, recorded_run(run, record.plan, record.rig).views) for run in loaded.runs)


def _view(point: Point) -> PointView:
    target_pa = point.envelope_pa if point.target_pa is None else point.target_pa
    return PointView(target_pa, PointState.TAKEN, None, point.envelope_pa, point.flow_m3_h)
