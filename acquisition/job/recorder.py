"""Records one test while it runs. Called from the engine's loop; never waits for the disk."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from datetime import datetime

from acquisition.fitted import Corrected, RangeChange
from acquisition.job.digest import RunDigest, digest_inputs
from acquisition.job.encoding import document_text
from acquisition.job.ledger import Ledger, ReadingRow
from acquisition.job.pieces import joined_all
from acquisition.job.records import (
    Amendment,
    AnswerRecord,
    Ending,
    FanRecord,
    LoadedRun,
    MarkRecord,
    RunRecord,
    TestRecord,
    amended,
    test_of,
)
from acquisition.job.results import result_text
from acquisition.job.writer import Writer
from acquisition.rig import RigSpec, Role
from acquisition.series import RunData, WindowRecord
from acquisition.snapshot import Flag, RecordingView
from analysis.errors import InvalidInput
from analysis.records import Air, Direction, Test
from drivers.clock import NS_PER_S, Clock
from drivers.reading import Reading


class _OpenRun:
    """What the recorder keeps of the run in hand."""

    def __init__(self, record: RunRecord) -> None:
        self.record = record
        self.data = RunData()
        self.digest = RunDigest()
        self.windows: list[WindowRecord] = []
        self.changes: list[RangeChange] = []
        self.series: dict[tuple[Role, str], int] = {}
        self.ended = False

    def loaded(self) -> LoadedRun:
        """Return the run as it would come out of the file."""
        return LoadedRun(self.record, self.data, tuple(self.windows), self.fan, tuple(self.changes))

    @property
    def fan(self) -> tuple[FanRecord, ...]:
        """What the fan was told."""
        times_ns, fractions = self.data.told
        return tuple(map(FanRecord, times_ns.tolist(), fractions.tolist()))


class Recorder:
    """One test: runs are begun and ended one after the other, then the test is ended.

        --begin_run--> recording --end_run--> between runs --begin_run--> ... --end_test--> ended

    Readings and fan commands between runs are not kept. Striking and restoring works until the end and after it.
    """

    def __init__(
        self,
        record: TestRecord,
        ledger: Ledger,
        writer: Writer,
        clock: Clock,
        earlier: Sequence[LoadedRun] = (),
        window_ids: Mapping[int, int] | None = None,
    ) -> None:
        """Take over a test that the ledger has begun.

        One that goes on after an interruption has `earlier` runs; `window_ids` are the ids of their windows in the
        file, by number.
        """
        self._record = record
        self._ledger = ledger
        self._writer = writer
        self._clock = clock
        self._started_ns = clock.now_ns()
        self._ended_ns: int | None = None
        self._runs: list[_OpenRun] = []
        self._earlier = list(earlier)
        self._window_ids: dict[int, int] = dict(window_ids or {})

    @property
    def test_id(self) -> int:
        """Number of the test in the job."""
        return self._record.id

    @property
    def earlier(self) -> tuple[LoadedRun, ...]:
        """What was recorded of this test before it was interrupted."""
        return tuple(self._earlier)

    @property
    def data(self) -> RunData:
        """The readings of the run in hand, kept once for everybody."""
        if self._open is None:
            raise self._misuse("show readings")
        return self._open.data

    @property
    def rig(self) -> RigSpec:
        """The rig as it was at the beginning of the test."""
        return self._record.rig

    def begin_run(
        self, direction: Direction, air: Air, now_ns: int, utc: datetime, continues: int | None = None
    ) -> RunRecord:
        """Begin to record one direction, or go on with an earlier run of it; `air` as entered by hand."""
        self._check(self._open is None, "begin a run while one is recorded")
        record = self._ledger.begin_run(self._record.id, direction, air, utc, now_ns, continues)
        self._runs.append(_OpenRun(record))
        return record

    def readings(self, batch: Sequence[tuple[Role, Reading]]) -> None:
        """Keep readings of the run in hand, in this order."""
        run = self._open
        if run is None or not batch:
            return
        self._ledger.add_readings([self._keep(run, role, reading) for role, reading in batch])

    def fan(self, now_ns: int, fraction: float) -> None:
        """Keep a fan command; one that repeats the last is not kept again."""
        run = self._open
        if run is not None and run.data.drive(now_ns, float(fraction)):
            self._ledger.add_fan(run.record.id, now_ns, float(fraction))

    def window(self, window: WindowRecord) -> None:
        """Keep an averaging window that is complete."""
        run = self._open
        if run is None or window.id in self._window_ids:
            raise self._misuse(f"keep window {window.id}")
        run.windows.append(window)
        self._window_ids[window.id] = self._ledger.add_window(run.record.id, window)

    def range_change(self, change: RangeChange) -> None:
        """Keep that another flow range is fitted."""
        run = self._open
        if run is None:
            raise self._misuse("change the flow range")
        run.changes.append(change)
        self._ledger.add_range_change(run.record.id, change)

    def strike(self, window_id: int, reason: str) -> None:
        """Take a point out of the result; raises `InvalidInput` without a reason."""
        if not reason.strip():
            raise InvalidInput("reason", reason, "say why the point is struck")
        self._judge(window_id, reason.strip())

    def restore(self, window_id: int) -> None:
        """Put a struck point back."""
        self._judge(window_id, None)

    def correct_range(self, window_id: int, fan: int, right: Corrected | None) -> None:
        """Take it that a point was read with another flow range than entered, or as entered again."""
        number = self._amend(window_id, lambda window: window.read_with(fan, right))
        self._ledger.add_correction(number, self._clock.utc(), fan, right)
        if self._ended_ns is not None:
            self._store_result()

    def mark(self, now_ns: int, utc: datetime, kind: str, text: str) -> None:
        """Keep a remark."""
        self._ledger.add_mark(self._record.id, self._run_id, MarkRecord(now_ns, utc, kind, text))

    def flag(self, flag: Flag) -> None:
        """Keep a flag."""
        self._ledger.add_flag(self._record.id, self._run_id, flag)

    def answer(self, now_ns: int, utc: datetime, ask_id: str, text: str, choice: str) -> None:
        """Keep what a person was asked and answered."""
        self._ledger.add_answer(self._record.id, self._run_id, AnswerRecord(now_ns, utc, ask_id, text, choice))

    def end_run(self, state: Ending, now_ns: int, utc: datetime) -> None:
        """End the run in hand and seal it with its digest."""
        run = self._open
        if run is None:
            raise self._misuse("end a run")
        run.ended = True
        plan_text, rig_text = document_text(self._record.plan), document_text(self._record.rig)
        before = self._ledger.digest_of(run.record.continues)
        inputs = digest_inputs(run.record, plan_text, rig_text, document_text(run.record.air), before)
        digest = run.digest.finish(run.fan, run.windows, inputs, run.changes)
        self._ledger.end_run(run.record.id, state, utc, now_ns, digest)

    def end_test(self, state: Ending) -> None:
        """End the test and store its result; a run still in hand ends with it."""
        now_ns, utc = self._clock.now_ns(), self._clock.utc()
        self._check(self._ended_ns is None, "end the test")
        if self._open is not None:
            self.end_run(state, now_ns, utc)
        self._ended_ns = now_ns
        self._store_result()
        self._ledger.end_test(self._record.id, state, utc)

    def test(self) -> Test:
        """Return the test so far for the analysis; raises `InvalidInput` without any point."""
        return test_of(self._record, joined_all([*self._earlier, *(run.loaded() for run in self._runs)]))

    def recording(self) -> RecordingView:
        """Return the state of the record on the disk."""
        now_ns = self._clock.now_ns()
        end_ns = now_ns if self._ended_ns is None else self._ended_ns
        elapsed_s = (end_ns - self._started_ns) / NS_PER_S
        return RecordingView(elapsed_s, self._writer.saved_utc, self._writer.alarm(now_ns))

    @property
    def _open(self) -> _OpenRun | None:
        return self._runs[-1] if self._runs and not self._runs[-1].ended else None

    @property
    def _run_id(self) -> int | None:
        return self._open.record.id if self._open is not None else None

    def _keep(self, run: _OpenRun, role: Role, reading: Reading) -> ReadingRow:
        key = (role, reading.channel)
        if key not in run.series:
            run.series[key] = self._ledger.add_series(run.record.id, role, reading.channel)
        # The file keeps what was shown; the correction stands in the rig, and is done again when the job is read.
        value = None if math.isnan(reading.as_shown) else float(reading.as_shown)
        rest = (reading.round_trip_s, reading.quality.value, reading.sequence)
        run.data.append(reading, role)
        run.digest.reading(role.value, reading.channel, reading.monotonic_ns, reading.utc_ns, value, *rest)
        return (run.series[key], reading.monotonic_ns, reading.utc_ns, value, *rest)

    def _judge(self, window_id: int, struck_reason: str | None) -> None:
        """Strike or restore a window in memory and in the file."""
        number = self._amend(window_id, lambda window: window.judged(struck_reason))
        struck = struck_reason is not None
        self._ledger.add_strike(number, self._clock.utc(), struck_reason or "", struck=struck)
        if self._ended_ns is not None:
            self._store_result()

    def _amend(self, window_id: int, amend: Amendment) -> int:
        """Amend a window in memory; return its id in the file."""
        if window_id not in self._window_ids:
            known = ", ".join(str(number) for number in self._window_ids) or "none yet"
            raise InvalidInput("window", window_id, f"the number of a window is needed, there are: {known}")
        for run in self._runs:
            run.windows = [amend(window) if window.id == window_id else window for window in run.windows]
        self._earlier = [amended(run, window_id, amend) for run in self._earlier]
        return self._window_ids[window_id]

    def _store_result(self) -> None:
        document, gap = result_text(self._record, self.test)
        self._ledger.add_result(self._record.id, document, gap, self._clock.utc())

    def _check(self, condition: bool, what: str) -> None:
        if not condition:
            raise self._misuse(what)

    def _misuse(self, what: str) -> RuntimeError:
        return RuntimeError(f"test {self._record.id}: cannot {what} now")
