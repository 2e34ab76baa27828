"""What a job file holds, as frozen records."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from enum import StrEnum
from typing import Literal

from acquisition.derive import derive_run, derive_test
from acquisition.fitted import Fitted, RangeChange
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
    language: str = ""
    """Tag of the language of its reports, such as "de"; English where it is empty."""


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
    """One direction of a test in the file; `digest` (64 hexadecimal digits) is empty while it records.

    `continues` is the number of the run that it goes on with after an interruption.
    """

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
    continues: int | None = None


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
class Piece:
    """A run as it was recorded, part of a measurement that was interrupted; its clock shows `shift_ns` less."""

    record: RunRecord
    shift_ns: int = 0


@dataclass(frozen=True, slots=True)
class LoadedRun:
    """One direction with everything that was read in it.

    Where it was interrupted and gone on with, all is on the clock of the last of its `pieces`, and `record` is that of
    the first piece with the end and the digest of the last one, which seals all.
    """

    record: RunRecord
    data: RunData
    windows: tuple[WindowRecord, ...]
    fan: tuple[FanRecord, ...]
    changes: tuple[RangeChange, ...] = ()
    """Flow ranges that were fitted in the middle, oldest first."""
    pieces: tuple[Piece, ...] = ()

    def fitted(self, rig: RigSpec) -> Fitted:
        """Return which range was fitted when."""
        return Fitted(rig.fitted_ranges.ranges, self.changes)


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
        return test_of(self.record, self.runs)


@dataclass(frozen=True, slots=True)
class Verification:
    """One thing held against what the file says of itself. `ok` is None where there is nothing to hold it against."""

    subject: str
    ok: bool | None
    sentence: str


Amendment = Callable[[WindowRecord], WindowRecord]
"""What becomes of a window that is struck, put back, or read with another flow range."""


def amended(run: LoadedRun, window_id: int, amend: Amendment) -> LoadedRun:
    """Return a run with a window of it amended."""
    if all(item.id != window_id for item in run.windows):
        return run
    return replace(run, windows=tuple(amend(item) if item.id == window_id else item for item in run.windows))


def test_of(record: TestRecord, runs: Sequence[LoadedRun]) -> Test:
    """Return the test for the analysis; the same for a test that is being recorded and one out of the file."""
    building = record.plan.building
    return derive_test(
        record.plan,
        [
            derive_run(
                run.record.direction,
                run.record.air,
                run.data,
                run.windows,
                run.fitted(record.rig),
                building,
                run.record.started,
            )
            for run in runs
        ],
    )
