"""The job file: one SQLite file per building, written while the test runs. schema.sql describes it."""

from acquisition.job.house import Entry, GeometryVersion, House, Photo, PreparationKind
from acquisition.job.job import SUFFIX, Job
from acquisition.job.leaks import LeakRegister, SealingMark, SealingMarkKind
from acquisition.job.recorder import Recorder
from acquisition.job.records import (
    AnswerRecord,
    BuildingVersion,
    Edit,
    Ending,
    FanRecord,
    JobDetails,
    LoadedRun,
    LoadedTest,
    MarkRecord,
    RecordState,
    RunRecord,
    StrikeRecord,
    TestRecord,
    Verification,
)

__all__ = [
    "SUFFIX",
    "AnswerRecord",
    "BuildingVersion",
    "Edit",
    "Ending",
    "Entry",
    "FanRecord",
    "GeometryVersion",
    "House",
    "Job",
    "JobDetails",
    "LeakRegister",
    "LoadedRun",
    "LoadedTest",
    "MarkRecord",
    "Photo",
    "PreparationKind",
    "RecordState",
    "Recorder",
    "RunRecord",
    "SealingMark",
    "SealingMarkKind",
    "StrikeRecord",
    "TestRecord",
    "Verification",
]
