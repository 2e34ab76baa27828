"""A job: one file, one building, every test made of it."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import Self, TypeVar

from acquisition.fitted import Corrected
from acquisition.job.encoding import utc_text
from acquisition.job.house import House, HouseContents, read_house
from acquisition.job.issues import IssueContents, Issues, read_issues
from acquisition.job.leaks import LeakRegister, RegisterContents, read_register
from acquisition.job.ledger import Contents, Ledger
from acquisition.job.loading import StoredReading, compute_digest, read_contents, read_readings, read_test
from acquisition.job.recorder import Recorder
from acquisition.job.records import (
    Amendment,
    BuildingVersion,
    Edit,
    JobDetails,
    LoadedTest,
    RecordState,
    RunRecord,
    TestRecord,
    Verification,
    amended,
)
from acquisition.job.results import result_text
from acquisition.job.schema import create_database, open_database
from acquisition.job.verify import verify_file, verify_issue, verify_result, verify_run
from acquisition.job.writer import Writer
from acquisition.plan import TestPlan
from acquisition.rig import RigSpec
from acquisition.stages import Stages
from acquisition.version import PROGRAM_VERSION
from analysis.errors import InvalidInput
from analysis.records import Air, Building
from drivers.clock import Clock

SUFFIX = ".airseam"
T = TypeVar("T")


class Job:
    """An open job file. Everything may be called from any thread; edits are visible at once and never wait.

    Reading a test (`load`, `readings`, `verify`) first brings what is queued to the disk.
    """

    def __init__(
        self,
        path: Path,
        clock: Clock,
        writer: Writer,
        contents: Contents,
        house: HouseContents,
        register: RegisterContents,
        issues: IssueContents,
        *,
        read_only: bool,
    ) -> None:
        """Use `create` or `open`."""
        self.path = path
        self.read_only = read_only
        self._clock = clock
        self._writer = writer
        self._ledger = Ledger(contents, writer)
        self._house = House(house, writer)
        self._leaks = LeakRegister(register, writer)
        self._issues = Issues(issues, writer)

    @classmethod
    def create(cls, path: Path, clock: Clock, name: str, language: str = "") -> Self:
        """Make a new job with its reports in a language (a tag, empty for English).

        Raises `InvalidInput` when the file exists or cannot be made.
        """
        connection = create_database(path)
        writer = Writer(connection, clock, path)
        about = [("format", "airseam-job-1"), ("created_utc", utc_text(clock.utc())), ("program", PROGRAM_VERSION)]
        writer.post("INSERT INTO about VALUES (?, ?)", about)
        details = [("name", name)] + ([("language", language)] if language else [])
        writer.post("INSERT INTO details VALUES (?, ?)", details)
        kept = Contents(JobDetails(name, language=language)), HouseContents(), RegisterContents(), IssueContents()
        job = cls(path, clock, writer, *kept, read_only=False)
        if not writer.flush():
            sentence = writer.alarm(clock.now_ns())
            connection.close()
            path.unlink()
            raise InvalidInput("job file", str(path), f"it cannot be written: {sentence}")
        writer.start()
        return job

    @classmethod
    def open(cls, path: Path, clock: Clock, *, read_only: bool = False) -> Self:
        """Open a job; a run that a crash left open is sealed as it stands.

        Raises `InvalidInput` when the file is no job, is damaged, is open elsewhere or comes from a newer version.
        With `read_only` nothing in the file changes.
        """
        connection = open_database(path, read_only=read_only)
        try:
            contents, house = read_contents(connection), read_house(connection)
            register, issues = read_register(connection), read_issues(connection)
        except (sqlite3.Error, ValueError, TypeError) as error:
            connection.close()
            raise InvalidInput("job file", str(path), f"it is damaged ({error})") from error
        writer = Writer(connection, clock, path)
        job = cls(path, clock, writer, contents, house, register, issues, read_only=read_only)
        if not read_only:
            job._seal_interrupted()
            writer.start()
        return job

    @property
    def details(self) -> JobDetails:
        """Administrative data."""
        return self._ledger.details

    def edit_details(self, details: JobDetails) -> None:
        """Replace the administrative data; each changed field is logged."""
        self._check_writable()
        self._ledger.edit_details(details, self._clock.utc())

    @property
    def house(self) -> House:
        """The geometry, what was done to the building, and pictures, to look at."""
        return self._house

    def edit_house(self) -> House:
        """Return the same to change; raises `InvalidInput` where the job is open for reading only."""
        self._check_writable()
        return self._house

    @property
    def leaks(self) -> LeakRegister:
        """The leaks, marks and what sealing brought, to look at."""
        return self._leaks

    def edit_leaks(self) -> LeakRegister:
        """Return the same to change; raises `InvalidInput` where the job is open for reading only."""
        self._check_writable()
        return self._leaks

    @property
    def issues(self) -> Issues:
        """The reports that were issued, to look at."""
        return self._issues

    def edit_issues(self) -> Issues:
        """Return the same to add to; raises `InvalidInput` where the job is open for reading only."""
        self._check_writable()
        return self._issues

    def printed(self) -> tuple[object, ...]:
        """Return what a report prints beside test and details: when it differs, the report does."""
        leaks = self._leaks
        return (self._house.photos, self._house.entries, leaks.leaks, leaks.drops, len(self.edits))

    @property
    def edits(self) -> tuple[Edit, ...]:
        """The edit log, oldest first."""
        return self._ledger.edits

    @property
    def building(self) -> Building | None:
        """The building as it is known now; None before the first version."""
        versions = self._ledger.buildings
        return versions[-1].building if versions else None

    @property
    def building_versions(self) -> tuple[BuildingVersion, ...]:
        """All versions of the building, oldest first."""
        return self._ledger.buildings

    def add_building(self, building: Building, reason: str) -> None:
        """Add a version of the building; tests keep the one that they were made with."""
        self._check_writable()
        self._ledger.add_building(BuildingVersion(self._clock.utc(), reason, building))

    def draft(self) -> TestPlan:
        """Return the next test as it is being prepared."""
        draft = self._ledger.draft
        return draft if draft is not None else TestPlan(self.building or Building(""), Air(20.0, 10.0))

    def set_draft(self, plan: TestPlan) -> None:
        """Keep the next test as it is being prepared."""
        self._check_writable()
        self._ledger.set_draft(plan)

    @property
    def stages(self) -> Stages:
        """What is remembered of each stage."""
        return self._ledger.stages

    def set_stages(self, stages: Stages) -> None:
        """Keep what is remembered of each stage."""
        self._check_writable()
        self._ledger.set_stages(stages)

    def tests(self) -> tuple[TestRecord, ...]:
        """Return all tests, oldest first."""
        return self._ledger.tests

    def runs(self, test_id: int) -> tuple[RunRecord, ...]:
        """Return the runs of a test, oldest first."""
        return tuple(run for run in self._ledger.runs if run.test_id == test_id)

    def interrupted(self) -> tuple[RunRecord, ...]:
        """Return the runs that a crash cut short, oldest first."""
        unfinished = {RecordState.INTERRUPTED} | ({RecordState.RECORDING} if self.read_only else set())
        return tuple(run for run in self._ledger.runs if run.state in unfinished)

    def record(self, plan: TestPlan, rig: RigSpec, started: datetime | None = None) -> Recorder:
        """Begin a test and return what records it; it begins now, or at the time of a hand-written record."""
        self._check_writable()
        record = self._ledger.begin_test(plan, rig, started or self._clock.utc())
        return Recorder(record, self._ledger, self._writer, self._clock)

    def resume(self, test_id: int) -> Recorder:
        """Take up a test that was cut short, and return what records the rest of it.

        Raises `InvalidInput` for a test that is complete or being recorded.
        """
        self._check_writable()
        state = self._record(test_id).state
        if state in (RecordState.COMPLETE, RecordState.RECORDING):
            raise InvalidInput("test", test_id, f"a test that was cut short is needed (state of this one: {state})")
        loaded = self.load(test_id)
        windows = self._read(lambda db: _window_ids(db, test_id))
        record = self._ledger.resume_test(test_id, self._clock.utc())
        return Recorder(record, self._ledger, self._writer, self._clock, loaded.runs, windows)

    def load(self, test_id: int) -> LoadedTest:
        """Return a test with all its readings; raises `InvalidInput` when there is none of this number."""
        record = self._record(test_id)
        return self._read(lambda db: read_test(db, record))

    def readings(self, run_id: int) -> list[StoredReading]:
        """Return the readings of a run in the order in which they came."""
        return self._read(lambda db: list(read_readings(db, run_id)))

    def strike(self, test_id: int, window_id: int, reason: str) -> None:
        """Take a point of an ended test out of the result; raises `InvalidInput` without a reason."""
        if not reason.strip():
            raise InvalidInput("reason", reason, "say why the point is struck")
        self._judge(test_id, window_id, reason.strip())

    def restore(self, test_id: int, window_id: int) -> None:
        """Put a struck point of an ended test back."""
        self._judge(test_id, window_id, None)

    def correct_range(self, test_id: int, window_ids: Sequence[int], name: str, fan: int = 0) -> None:
        """Take it that points of an ended test were read with a flow range of its rig, whatever had been entered.

        With an empty name they are taken as entered again. Raises `InvalidInput` for a range that the rig has not.
        """
        rig = self._record(test_id).rig
        right = Corrected(fan, rig.with_fitted(fan, name).fitted_ranges.now[fan]) if name else None
        utc = self._clock.utc()
        self._amend(
            test_id,
            window_ids,
            lambda window: window.read_with(fan, right),
            lambda number: self._ledger.add_correction(number, utc, fan, right),
        )

    def verify(self) -> tuple[Verification, ...]:
        """Hold the file against itself: its structure, the digest of every run, the result of every test."""
        found = [self._read(verify_file)]
        for record in self.tests():
            found += [self._read(partial(verify_run, run=run)) for run in self.runs(record.id)]
            found.append(self._read(partial(verify_result, record=record)))
        found += [self._read(partial(verify_issue, issue=issue)) for issue in self._issues.all]
        return tuple(found)

    def alarm(self) -> str:
        """Return a sentence when the disk does not take the data, else an empty text."""
        return self._writer.alarm(self._clock.now_ns())

    def flush(self) -> bool:
        """Bring everything queued to the disk; false when it does not take it."""
        return self._writer.flush()

    def copy_to(self, path: Path) -> None:
        """Write a copy of the whole job as it is now; raises `InvalidInput` or `OSError`."""
        path.unlink(missing_ok=True)

        def copied(db: sqlite3.Connection) -> None:
            target = sqlite3.connect(path)
            try:
                db.backup(target)
                target.execute("PRAGMA journal_mode = DELETE")
            finally:
                target.close()

        self._read(copied)

    def close(self, rescue_folder: Path | None = None) -> str:
        """Bring everything to the disk and close the file.

        Returns a sentence when the disk did not take it: a copy of the whole job then is in `rescue_folder` (the
        system's folder for temporary files). Else an empty text.
        """
        return self._writer.close(rescue_folder)

    def _record(self, test_id: int) -> TestRecord:
        tests = {record.id: record for record in self._ledger.tests}
        if test_id not in tests:
            known = ", ".join(str(number) for number in tests) or "none yet"
            raise InvalidInput("test", test_id, f"the number of a test is needed, there are: {known}")
        return tests[test_id]

    def _judge(self, test_id: int, window_id: int, struck_reason: str | None) -> None:
        utc, struck = self._clock.utc(), struck_reason is not None
        self._amend(
            test_id,
            (window_id,),
            lambda window: window.judged(struck_reason),
            lambda number: self._ledger.add_strike(number, utc, struck_reason or "", struck=struck),
        )

    def _amend(self, test_id: int, window_ids: Sequence[int], amend: Amendment, keep: Callable[[int], None]) -> None:
        """Amend windows of an ended test, `keep` each by its id in the file, and store the result that comes of it."""
        self._check_writable()
        loaded = self.load(test_id)
        if loaded.record.state is RecordState.RECORDING:
            raise InvalidInput("test", test_id, "it is being recorded, strike there")
        known = self._read(lambda db: _window_ids(db, test_id))
        for window_id in window_ids:
            if window_id not in known:
                numbers = ", ".join(str(number) for number in known) or "none"
                raise InvalidInput("window", window_id, f"the number of a window is needed, there are: {numbers}")
        runs = loaded.runs
        for window_id in window_ids:
            keep(known[window_id])
            runs = tuple(amended(run, window_id, amend) for run in runs)
        document, gap = result_text(loaded.record, replace(loaded, runs=runs).test)
        self._ledger.add_result(test_id, document, gap, self._clock.utc())

    def _seal_interrupted(self) -> None:
        utc = self._clock.utc()
        for run in self._ledger.runs:
            if run.state is RecordState.RECORDING:
                self._ledger.seal_interrupted(run.id, self._read(partial(compute_digest, run=run)), utc)
        for record in self._ledger.tests:
            if record.state is RecordState.RECORDING:
                document, gap = result_text(record, self.load(record.id).test)
                self._ledger.add_result(record.id, document, gap, utc)
                self._ledger.interrupt_test(record.id, utc)

    def _check_writable(self) -> None:
        if self.read_only:
            raise InvalidInput("job file", str(self.path), "it was opened for reading only")

    def _read(self, query: Callable[[sqlite3.Connection], T]) -> T:
        try:
            return self._writer.read(query)
        except sqlite3.Error as error:
            raise InvalidInput("job file", str(self.path), f"it is damaged ({error})") from error


def _window_ids(db: sqlite3.Connection, test_id: int) -> dict[int, int]:
    """Return the ids of the windows of a test by their numbers."""
    sql = "SELECT number, span.id FROM averaging_window AS span JOIN run ON run.id = span.run WHERE run.test = ?"
    return dict(db.execute(sql, (test_id,)).fetchall())
