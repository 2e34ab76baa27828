"""A test out of a file, whichever kind of file that is: a job, or a test as JSON."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path

from acquisition.job import Job, TestRecord
from analysis.errors import InvalidInput
from analysis.meaning import Surroundings
from analysis.methods import analyse
from analysis.records import Kit, Limit, Test, TestResult
from analysis.testjson import read_test
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
            return StoredTest(loaded.test(), plan.method, plan.limits, plan.kit, plan.surroundings, loaded.record)
        finally:
            job.close()
    if number is not None:
        raise InvalidInput("test", number, f"a number chooses among the tests of a job, and {path.name} is no job")
    size = path.stat().st_size
    if size > LARGEST_FILE_BYTES:
        raise InvalidInput(str(path), f"{size} bytes long", f"a test has at most {LARGEST_FILE_BYTES} bytes")
    return StoredTest(read_test(path.read_bytes()))


def chosen(job: Job, number: int | None) -> int:
    """Return the number of a test of a job, of its newest by default; raises `InvalidInput` when there is none."""
    tests = job.tests()
    if not tests:
        raise InvalidInput("job file", str(job.path), "there is no test in it yet")
    return tests[-1].id if number is None else number
