"""The test that the window shows, wherever its numbers come from: the running engine or the job file."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from acquisition.job import LoadedRun, LoadedTest, RecordState, TestRecord
from acquisition.job.results import analyse_record
from acquisition.plan import TestPlan
from acquisition.progress import recorded_run
from acquisition.rig import RigSpec, Role
from acquisition.series import RunData
from acquisition.snapshot import EngineState, Flag, RunView, Snapshot, WindowView
from analysis.errors import InvalidInput
from analysis.methods import analyse
from analysis.records import Test, TestResult
from gui.viewmodels.errors import sentence

_LAST_NS = 2**63 - 1


OFFICIAL = ""
"""Stands for the method and the fit that the test was made for."""


@dataclass(frozen=True, slots=True)
class Reading:
    """How somebody looks at a result: by another method or fit than the test was made for."""

    method: str = OFFICIAL
    fit: str = OFFICIAL

    @property
    def own(self) -> bool:
        """Whether it is looked at as it was made."""
        return self.method == OFFICIAL and self.fit == OFFICIAL


@dataclass(frozen=True, slots=True)
class RecordedRun:
    """The readings of a run out of the job file, for the trace; `end_ns` is the end of its last window or reading.

    `flags` are those of the whole test; `started_ns` is the moment `started` on the clock of the readings.
    """

    data: RunData
    windows: tuple[WindowView, ...]
    end_ns: int
    started: datetime
    started_ns: int
    flags: tuple[Flag, ...] = ()


@dataclass(frozen=True, slots=True)
class ShownTest:
    """A test as far as it has come. `recorded` is empty while its readings are in the live buffer."""

    number: int
    started: datetime
    state: RecordState
    plan: TestPlan
    rig: RigSpec
    runs: tuple[RunView, ...]
    test: Test | None
    result: TestResult | None
    gap: str
    live: bool
    recorded: tuple[RecordedRun, ...] = ()
    seen: Reading = Reading()

    @property
    def points_taken(self) -> int:
        """Points that count, in all directions."""
        return sum(point.state == "taken" for run in self.runs for point in run.points)


def live_test(record: TestRecord, snapshot: Snapshot) -> ShownTest:
    """Return the test that the engine has in hand, or had last."""
    state = RecordState.RECORDING if snapshot.state is not EngineState.IDLE else record.state
    return ShownTest(
        number=record.id,
        started=record.started,
        state=state,
        plan=record.plan,
        rig=record.rig,
        runs=snapshot.runs,
        test=snapshot.test,
        result=snapshot.result,
        gap=snapshot.result_gap,
        live=True,
    )


def recorded_test(loaded: LoadedTest) -> ShownTest:
    """Return a test out of the job file."""
    record = loaded.record
    test, result, gap = None, None, ""
    try:
        test = loaded.test()
        result = analyse_record(record, test)
    except InvalidInput as reason:
        gap = sentence(reason)
    return ShownTest(
        number=record.id,
        started=record.started,
        state=record.state,
        plan=record.plan,
        rig=record.rig,
        runs=tuple(_run_view(run, record) for run in loaded.runs),
        test=test,
        result=result,
        gap=gap,
        live=False,
        recorded=tuple(_recorded(run, loaded.flags) for run in loaded.runs),
    )


def seen_by(shown: ShownTest, reading: Reading) -> ShownTest:
    """Return the test as looked at; where that gives no result, the gap says why."""
    if reading.own or shown.test is None:
        return shown
    plan = shown.plan
    try:
        result = analyse(shown.test, reading.method or plan.method, reading.fit or None, plan.limits, plan.kit)
    except InvalidInput as error:
        return replace(shown, result=None, gap=sentence(error), seen=reading)
    return replace(shown, result=result, gap="", seen=reading)


def _run_view(run: LoadedRun, record: TestRecord) -> RunView:
    progress = recorded_run(run, record.plan, record.rig)
    derived = progress.run
    before = derived.zero_before if derived is not None else None
    after = derived.zero_after if derived is not None else None
    return RunView(
        direction=run.record.direction,
        points=progress.views,
        zero_before_pa=before.mean_pa if before is not None else None,
        zero_after_pa=after.mean_pa if after is not None else None,
        complete=run.record.state is RecordState.COMPLETE,
    )


def _recorded(run: LoadedRun, flags: tuple[Flag, ...]) -> RecordedRun:
    windows = tuple(WindowView(item.kind, item.start_ns, item.end_ns, item.target_pa) for item in run.windows)
    stamps, _ = run.data.slice(Role.ENVELOPE, run.record.started_ns, _LAST_NS)
    ends = [run.record.started_ns, *(item.end_ns for item in run.windows)]
    if len(stamps):
        ends.append(int(stamps[-1]))
    record = run.record
    return RecordedRun(run.data, windows, max(ends), record.started, record.started_ns, flags)
