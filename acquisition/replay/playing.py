"""A rig that gives the readings of a recorded test again, each at its time, and the steps that close its windows.

The clock is put to the time of the record, so that stamps and windows are those of the record and the result comes
out the same to the digit. What the fan was told is noted again too; nothing is commanded: there is no fan.
"""

from __future__ import annotations

import json
import math
from collections import deque
from collections.abc import Iterator

from acquisition.job import Job, LoadedRun, LoadedTest, RecordState
from acquisition.job.loading import StoredReading
from acquisition.job.results import analyse_record
from acquisition.openrig import OpenRig
from acquisition.register import Register
from acquisition.rig import Role
from acquisition.snapshot import Severity
from acquisition.steps import BeginRun, Checkpoint, EndRun, FitRange, Mark, PlayUntil, Procedure, Step
from analysis.errors import InvalidInput
from analysis.records import TestResult
from analysis.resultjson import result_document
from drivers.clock import Clock, ShiftedClock, seconds
from drivers.reading import Reading

LEAD_S = 1.0
"""The program runs for so long before the first reading comes."""


class PlayedRig(OpenRig):
    """The instruments of a record: `take` gives what had come by now."""

    def __init__(self, job: Job, loaded: LoadedTest, clock: Clock) -> None:
        """Take a test of a job; raises `InvalidInput` for one that has not ended, or in which nothing was read."""
        if loaded.record.state is RecordState.RECORDING or not loaded.runs:
            raise InvalidInput("test", loaded.record.id, "a test that has ended, with readings, is needed")
        super().__init__(loaded.record.rig, (), ())
        self.loaded = loaded
        self._clock = clock
        self._readings = [_playable(job.readings(run.record.id)) for run in loaded.runs]
        self._playing = 0
        """How many runs have begun."""
        self._given = [0] * len(loaded.runs)
        self._told = [deque(run.fan) for run in loaded.runs]
        self._seen: list[tuple[Role, Reading]] = []
        self.script = self._steps

    def take(self) -> list[tuple[Role, Reading]]:
        """Return the readings of the run that plays, up to now."""
        if not self._playing:
            return []
        at, now_ns = self._playing - 1, self._clock.now_ns()
        readings, first = self._readings[at], self._given[at]
        end = first
        while end < len(readings) and readings[end][1].monotonic_ns <= now_ns:
            end += 1
        self._given[at] = end
        self._seen += readings[first:end]
        return readings[first:end]

    def told(self) -> list[tuple[int, float]]:
        """Return what the fan was told in the run that plays, up to now."""
        if not self._playing:
            return []
        waiting, now_ns, due = self._told[self._playing - 1], self._clock.now_ns(), []
        while waiting and waiting[0].t_ns <= now_ns:
            told = waiting.popleft()
            due.append((told.t_ns, told.fraction))
        return due

    def watch(self) -> list[tuple[Role, Reading]]:
        """Return what was given since the last call."""
        seen, self._seen = self._seen, []
        return seen

    def equip(self, register: Register) -> None:
        """Stay as it was at the time of the record, whatever the register says today."""

    def _steps(self) -> Procedure:
        yield Mark("replay", f"Played back from test {self.loaded.record.id} of {self.loaded.record.started:%Y-%m-%d}.")
        for at, run in enumerate(self.loaded.runs):
            yield PlayUntil(run.record.started_ns)
            yield BeginRun(run.record.direction)
            self._playing = at + 1
            # Who pauses the play-back goes on where the record stood.
            yield Checkpoint()
            for _, step in sorted(_events(self.loaded, run), key=lambda item: item[0]):
                yield step
                yield Checkpoint()
            yield PlayUntil(_end_ns(run))
            yield EndRun()


def play_clock(loaded: LoadedTest, clock: Clock) -> ShiftedClock:
    """Return `clock` with its hands put to shortly before the first reading of a test; raises `InvalidInput`."""
    if not loaded.runs:
        raise InvalidInput("test", loaded.record.id, "a test with readings is needed")
    first = loaded.runs[0].record
    if any(later.record.started_ns < first.started_ns for later in loaded.runs):
        raise InvalidInput("test", loaded.record.id, "its runs were recorded on different clocks: play one of its own")
    return ShiftedClock(clock, first.started_ns - seconds(LEAD_S), first.started)


def same_result(loaded: LoadedTest, result: TestResult | None) -> bool:
    """Tell whether a result is that of the record, to the digit."""
    if result is None:
        return not loaded.record.result_json
    own = result_document(analyse_record(loaded.record, loaded.test()))
    return json.dumps(own, sort_keys=True) == json.dumps(result_document(result), sort_keys=True)


def _playable(stored: list[StoredReading]) -> list[tuple[Role, Reading]]:
    """Return readings as they came, in the order of their times; what was no number is none again."""
    made = [
        (
            item.role,
            Reading(
                item.channel,
                math.nan if item.value is None else item.value,
                item.t_ns,
                item.utc_ns,
                item.round_trip_s,
                item.quality,
                item.sequence,
            ),
        )
        for item in stored
    ]
    # Stable: of one moment they stay in the order in which they were kept.
    return sorted(made, key=lambda pair: pair[1].monotonic_ns)


def _events(loaded: LoadedTest, run: LoadedRun) -> Iterator[tuple[int, Step]]:
    """Yield what happened in a run, with its time: windows that were closed, ranges, marks, what was noticed."""
    for window in run.windows:
        what = (window.kind, window.start_ns, window.target_pa, window.struck_reason, window.corrected)
        yield window.end_ns, PlayUntil(window.end_ns, *what)
    for change in run.changes:
        yield change.t_ns, PlayUntil(change.t_ns)
        yield change.t_ns, FitRange(change.fan, change.flow_range.name)
    said = {mark.text for mark in loaded.marks}
    start_ns, end_ns = run.record.started_ns, _end_ns(run)
    for mark in loaded.marks:
        if start_ns <= mark.t_ns < end_ns:
            yield mark.t_ns, PlayUntil(mark.t_ns)
            yield mark.t_ns, Mark(mark.kind, mark.text)
    for flag in loaded.flags:
        t_ns = start_ns + round((flag.utc - run.record.started).total_seconds() * 1e9)
        if flag.severity is not Severity.NOTE and flag.sentence not in said and start_ns <= t_ns < end_ns:
            yield t_ns, PlayUntil(t_ns)
            yield t_ns, Mark(flag.id, flag.sentence, notable=True)


def _end_ns(run: LoadedRun) -> int:
    last = max((window.end_ns for window in run.windows), default=run.record.started_ns)
    return max(run.record.ended_ns or last, last)
