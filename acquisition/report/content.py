"""What a report says, before it is put into words and units."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime

from acquisition.derive import derive_point, has_readings
from acquisition.job import Job, JobDetails, LoadedRun, LoadedTest, RecordState
from acquisition.job.issues import IssueMark
from acquisition.job.results import analyse_record
from acquisition.languages import ENGLISH, Language, language_of
from acquisition.office import Letterhead
from acquisition.register.records import Register
from acquisition.report.casefile import CaseFile, case_file
from acquisition.rig import RigSpec
from acquisition.setup import said_of_setup
from acquisition.snapshot import Flag, Severity
from acquisition.steps import WindowKind
from acquisition.version import PROGRAM_VERSION
from analysis.records import Point, Run, RunResult, Test, TestResult
from analysis.resultjson import result_document
from analysis.testjson import write_test

UNDATED = datetime(1970, 1, 1, tzinfo=UTC)
"""Stands in the file's head where no time was recorded; never printed."""


@dataclass(frozen=True, slots=True)
class PointRow:
    """A row in the table of points. `point` is None where the window held no usable reading.

    `off_line` is the relative distance of the flow from the line. `struck_reason` is None unless struck. `read_with`
    holds the flow range of a point that was worked out with another one than entered, and the one entered.
    """

    target_pa: float | None
    point: Point | None
    induced_pa: float | None
    envelope_flow_m3_h: float | None
    off_line: float | None
    struck_reason: str | None = None
    read_with: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class RunContent:
    """One direction. `digest` is empty where there is none."""

    run: Run
    result: RunResult
    rows: tuple[PointRow, ...]
    digest: str = ""


@dataclass(frozen=True, slots=True)
class ReportContent:
    """Everything that a report prints. What is not known is empty or None, and the report says so."""

    test: Test
    result: TestResult
    runs: tuple[RunContent, ...]
    details: JobDetails
    started: datetime | None
    ended: datetime | None
    state: RecordState
    test_number: int | None = None
    rig: RigSpec | None = None
    flags: tuple[Flag, ...] = ()
    file: CaseFile = field(default_factory=CaseFile)
    setup: tuple[str, ...] = ()
    """How the building was set up, as far as that was noted before the test, in sentences."""
    program: str = PROGRAM_VERSION
    language: Language = ENGLISH

    @property
    def simulated(self) -> bool:
        """Whether the readings come from a simulated house."""
        return self.rig is not None and self.rig.simulated

    @property
    def typed(self) -> bool:
        """Whether the points were typed from a hand-written record."""
        return self.rig is not None and self.rig.typed

    @property
    def from_job(self) -> bool:
        """Whether there is a job to issue it from."""
        return self.test_number is not None

    @property
    def date(self) -> datetime:
        """The date of the document: when the test ended."""
        return self.ended or self.started or UNDATED

    def test_json(self) -> bytes:
        """Return the test in the format airseam-test-1."""
        return _json(write_test(self.test))

    def result_json(self) -> bytes:
        """Return the result in the format airseam-result-1."""
        return _json(result_document(self.result))

    def data_digest(self) -> str:
        """Return the SHA-256 of the attached test, in 64 hexadecimal digits."""
        return hashlib.sha256(self.test_json()).hexdigest()


def content_of(
    job: Job,
    test_id: int,
    *,
    office: Letterhead | None = None,
    register: Register | None = None,
    mark: IssueMark | None = None,
    language: Language | None = None,
) -> ReportContent:
    """Return the content of a report on a recorded test; raises `InvalidInput` where it has no result.

    Without a `mark` it is a draft, without a `language` it is written in that of the job.
    """
    loaded = job.load(test_id)
    spoken = language or language_of(job.details.language)
    record = loaded.record
    test = loaded.test()
    result = analyse_record(record, test)
    pairs = zip(test.runs, result.runs, strict=True)
    return ReportContent(
        test=test,
        result=result,
        runs=tuple(_recorded_run(loaded, run, outcome) for run, outcome in pairs),
        details=job.details,
        started=record.started,
        ended=record.ended,
        state=record.state,
        test_number=record.id,
        rig=record.rig,
        file=case_file(
            job,
            record.plan.kind,
            record.rig,
            record.started.date(),
            office=office,
            register=register,
            mark=mark,
            language=spoken,
        ),
        flags=tuple(flag for flag in loaded.flags if flag.severity is not Severity.NOTE),
        setup=said_of_setup(record.plan, job.house.entries, record.started, spoken),
        program=record.program,
        language=spoken,
    )


def content_of_test(test: Test, result: TestResult, language: Language = ENGLISH) -> ReportContent:
    """Return the content of a report on a test that comes without a job file."""
    started = [run.started for run in test.runs if run.started is not None]
    return ReportContent(
        test=test,
        result=result,
        runs=tuple(
            RunContent(run, outcome, tuple(_rows(run.points, outcome)))
            for run, outcome in zip(test.runs, result.runs, strict=True)
        ),
        details=JobDetails(test.building.name),
        started=min(started, default=None),
        ended=None,
        state=RecordState.COMPLETE,
        language=language,
    )


def _recorded_run(loaded: LoadedTest, run: Run, result: RunResult) -> RunContent:
    source = next(
        item
        for item in reversed(loaded.runs)
        if item.record.direction is run.direction and item.record.started == run.started
    )
    return RunContent(run, result, tuple(_recorded_rows(loaded, source, run, result)), source.record.digest)


def _recorded_rows(loaded: LoadedTest, source: LoadedRun, run: Run, result: RunResult) -> list[PointRow]:
    """Return a row for every point window, the struck and the empty ones in their places."""
    kept = iter(_rows(run.points, result))
    rows: list[PointRow] = []
    for window in source.windows:
        if window.kind is not WindowKind.POINT:
            continue
        if not has_readings(source.data, window):
            reason = window.struck_reason if window.struck else "no usable readings"
            rows.append(PointRow(window.target_pa, None, None, None, None, reason))
        elif window.struck:
            flow_range, building = source.fitted(loaded.record.rig), loaded.record.plan.building
            point = derive_point(run.direction, source.record.air, source.data, window, flow_range, building)
            induced_pa, factor = point.envelope_pa - result.zero_pa, _flow_factor(run, result)
            rows.append(_row(point, induced_pa, factor, result, window.struck_reason))
        else:
            rows.append(next(kept))
        entered = source.fitted(loaded.record.rig).at(window.start_ns)
        pairs = [(item.flow_range.name, entered[item.fan].name) for item in window.corrected]
        rows[-1] = replace(rows[-1], read_with=tuple((name, old) for name, old in pairs if name != old))
    return rows


def _rows(points: Sequence[Point], result: RunResult) -> list[PointRow]:
    return [
        _row(point, induced_pa, flow_m3_h / point.flow_m3_h, result)
        for point, induced_pa, flow_m3_h in zip(points, result.induced_pa, result.envelope_flow_m3_h, strict=True)
    ]


def _row(
    point: Point, induced_pa: float, factor: float, result: RunResult, struck_reason: str | None = None
) -> PointRow:
    """Return the row of a point whose flow through the envelope is `factor` times that through the fan."""
    flow_m3_h = point.flow_m3_h * factor
    line_m3_h = result.c_env_m3_h_pa_n.value * abs(induced_pa) ** result.n.value
    off_line = flow_m3_h / line_m3_h - 1 if line_m3_h > 0 else None
    return PointRow(point.target_pa, point, induced_pa, flow_m3_h, off_line, struck_reason)


def _flow_factor(run: Run, result: RunResult) -> float:
    """Return the ratio of the flow through the envelope to that through the fan; one number for a run."""
    return result.envelope_flow_m3_h[0] / run.points[0].flow_m3_h


def _json(document: object) -> bytes:
    return (json.dumps(document, indent=1, ensure_ascii=False, sort_keys=True) + "\n").encode()
