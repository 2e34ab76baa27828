"""What a job file holds, as frozen records."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Literal

from acquisition.derive import derive_run, derive_test
from acquisition.plan import TestPlan
from acquisition.rig import RigSpec
from acquisition.series import RunData, WindowRecord
from acquisition.snapshot import Flag
from analysis.records import Air, Building, Direction, Test

Ending = Literal["complete", "stopped", "faulted"]
"""How a run or test ends: all steps done, stopped by a person, or ended by a fault."""


class RecordState(StrEnum):
    """State of a run or test in the file. INTERRUPTED: the program or the machine went down while it recorded."""

    RECORDING = "recording"
    COMPLETE = "complete"
    STOPPED = "stopped"
    FAULTED = "faulted"
    INTERRUPTED = "interrupted"


@dataclass(frozen=True, slots=True)
class JobDetails:
    """Administrative data: edited freely, every edit logged."""

    name: str
    site: str = ""
    client: str = ""
    tester: str = ""
    note: str = ""
    number: str = ""
    """The office's number of the job."""
    place: str = ""
    """Id of the place whose codes hold there."""
    zone: str = ""
    """Climate zone of that place."""


@dataclass(frozen=True, slots=True)
class BuildingVersion:
    """The building as it was known from `utc` on, and why it was changed."""

    utc: datetime
    reason: str
    building: Building


@dataclass(frozen=True, slots=True)
class Edit:
    """One entry of the edit log."""

    utc: datetime
    subject: str
    field: str
    old: str
    new: str


@dataclass(frozen=True, slots=True)
class TestRecord:
    """A test in the file; `result_json` and `result_gap` as last stored (one of them is empty once it has ended)."""

    id: int
    started: datetime
    program: str
    plan: TestPlan
    rig: RigSpec
    state: RecordState
    ended: datetime | None = None
    result_json: str = ""
    result_gap: str = ""


@dataclass(frozen=True, slots=True)
class RunRecord:
    """One direction of a test in the file; `digest` (64 hexadecimal digits) is empty while it records."""

    id: int
    test_id: int
    direction: Direction
    air: Air
    started: datetime
    started_ns: int
    state: RecordState
    ended: datetime | None = None
    ended_ns: int | None = None
    digest: str = ""


@dataclass(frozen=True, slots=True)
class MarkRecord:
    """A remark, with its time on the clock of the run."""

    t_ns: int
    utc: datetime
    kind: str
    text: str


@dataclass(frozen=True, slots=True)
class AnswerRecord:
    """What a person was asked, and the label chosen."""

    t_ns: int
    utc: datetime
    ask_id: str
    text: str
    choice: str


@dataclass(frozen=True, slots=True)
class StrikeRecord:
    """A point taken out of the result, or put back (`struck` false)."""

    window_id: int
    utc: datetime
    struck: bool
    reason: str


@dataclass(frozen=True, slots=True)
class FanRecord:
    """A commanded fan speed 0..1 from its time on."""

    t_ns: int
    fraction: float


@dataclass(frozen=True, slots=True)
class LoadedRun:
    """One run with everything that was read in it."""

    record: RunRecord
    data: RunData
    windows: tuple[WindowRecord, ...]
    fan: tuple[FanRecord, ...]


@dataclass(frozen=True, slots=True)
class LoadedTest:
    """A test out of the file."""

    record: TestRecord
    runs: tuple[LoadedRun, ...]
    marks: tuple[MarkRecord, ...]
    flags: tuple[Flag, ...]
    answers: tuple[AnswerRecord, ...]
    strikes: tuple[StrikeRecord, ...]

    def test(self) -> Test:
        """Return the test for the analysis, derived from the readings; raises `InvalidInput` without any point."""
        return test_of(self.record, [(run.record, run.data, run.windows) for run in self.runs])


@dataclass(frozen=True, slots=True)
class Verification:
    """One thing held against what the file says of itself. `ok` is None where there is nothing to hold it against."""

    subject: str
    ok: bool | None
    sentence: str


def test_of(record: TestRecord, runs: Sequence[tuple[RunRecord, RunData, Sequence[WindowRecord]]]) -> Test:
    """Return the test for the analysis; the same for a test that is being recorded and one out of the file."""
    building, flow_range = record.plan.building, record.rig.fitted_ranges
    return derive_test(
        record.plan,
        [
            derive_run(run.direction, run.air, data, windows, flow_range, building, run.started)
            for run, data, windows in runs
        ],
    )
