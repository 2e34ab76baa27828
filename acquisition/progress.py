"""The test as far as it has come: readings, windows, points, flags and the result, recomputed from the readings.

Everything that is noted here goes to the recorder too, in the same order, and every number comes out of the same
functions that read a job file: the live result and a replay have the same digits.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime

from acquisition.derive import derive_point, derive_run, derive_test, envelope_pressures, has_readings
from acquisition.fitted import RESTING_PA, Corrected, Fitted, RangeChange, corrected_words
from acquisition.job.pieces import moved_to
from acquisition.job.recorder import Recorder
from acquisition.job.records import Amendment, Ending, LoadedRun
from acquisition.leakline import TYPICAL_EXPONENT
from acquisition.plan import TestPlan
from acquisition.planning.outlook import Outlook
from acquisition.rangefit import suggestions
from acquisition.register.validity import check_validity
from acquisition.rig import FAN_FLOWS, RigSpec, Role
from acquisition.series import RunData, WindowRecord
from acquisition.snapshot import Flag, PointState, PointView, Severity, WindowView
from acquisition.steps import Ask, WindowKind
from acquisition.unswung import without_swing
from analysis.errors import InvalidInput
from analysis.methods import analyse
from analysis.records import Direction, Point, Run, Test, TestResult, ZeroFlow
from analysis.statistics import standard_error_of_mean
from drivers.clock import Clock
from drivers.reading import Reading

TAKEN_AGAIN = "taken again"
"""Reason for which a point is struck that somebody wants once more: until then it counts as not taken."""
NO_FLOW = "no flow through the fan"
"""Reason for which the program strikes a point that cannot lie on a line."""
ZERO_LIMIT_PA = 5.0
"""Zero-flow pressure up to which ISO 9972 calls a test valid (from memory)."""
ZERO_DRIFT_PA = 1.0
"""Change between the two zero-flow records that is worth a word (common practice, no source)."""


@dataclass(slots=True)
class RunInProgress:
    """One direction being recorded."""

    direction: Direction
    started: datetime
    data: RunData = field(default_factory=RunData)
    windows: list[WindowRecord] = field(default_factory=list)
    open_window: WindowView | None = None
    run: Run | None = None
    complete: bool = False
    changes: list[RangeChange] = field(default_factory=list)
    """Flow ranges that were fitted in the middle, oldest first."""
    suggested: set[str] = field(default_factory=set)
    """Names of flow ranges that were suggested for points already taken."""
    points: dict[int, Point] = field(default_factory=dict)
    """The point of each window that ever gave one, struck or not."""
    views: tuple[PointView, ...] = ()
    """The points as they are shown, in the order in which they were taken."""

    def fitted(self, spec: RigSpec) -> Fitted:
        """Return which range was fitted when; `spec` is the rig at the beginning of the test."""
        return Fitted(spec.fitted_ranges.ranges, tuple(self.changes))

    @property
    def zero_pa(self) -> float:
        """The zero-flow pressure before the points, 0 until it is known."""
        return self.run.zero_before.mean_pa if self.run is not None and self.run.zero_before is not None else 0.0

    def derive(self, plan: TestPlan, spec: RigSpec) -> None:
        """Derive the run from its readings."""
        fitted = self.fitted(spec)
        self.run = derive_run(self.direction, plan.air, self.data, self.windows, fitted, plan.building, self.started)
        used = [
            item.id
            for item in self.windows
            if item.kind is WindowKind.POINT and not item.struck and has_readings(self.data, item)
        ]
        self.points.update(zip(used, self.run.points, strict=True))
        for item in self.windows:
            if item.struck and item.corrected and item.id in self.points:
                self.points[item.id] = derive_point(self.direction, plan.air, self.data, item, fitted, plan.building)
        self.views = tuple(self._view(item, spec) for item in self.windows if item.id in self.points)

    def _view(self, window: WindowRecord, spec: RigSpec) -> PointView:
        point, entered = self.points[window.id], self.fitted(spec)
        element = Role.FLOW_ELEMENT if not spec.further and not self.data.count(Role.FLOW) else None
        _, element_pa = self.data.slice(element or Role.FLOW, window.start_ns, window.end_ns)
        read_with = entered.corrected(window.corrected).at(window.start_ns)
        return PointView(
            target_pa=window.target_pa if window.target_pa is not None else point.envelope_pa,
            state=PointState.STRUCK if window.struck else PointState.TAKEN,
            window=window.id,
            envelope_pa=point.envelope_pa,
            flow_m3_h=point.flow_m3_h,
            flow_error_pct=self._flow_error_pct(point, window),
            seconds=point.seconds,
            struck_reason=window.struck_reason or "",
            flow_range=read_with[0].name if element is not None and read_with else "",
            element_pa=float(element_pa.mean()) if element is not None and len(element_pa) else None,
            corrected=window.corrected,
            corrected_words=corrected_words(entered, window.start_ns, window.corrected),
        )

    def _flow_error_pct(self, point: Point, window: WindowRecord) -> float | None:
        """Return the standard error of a point along the flow axis in percent, None when it cannot be told.

        The scatter of the pressure counts with the exponent of the line (a typical one will do for a display), as the
        standard error of an autocorrelated mean; that of the flow with its independent turbulence.
        """
        times_ns, envelope_pa = envelope_pressures(self.data, window.start_ns, window.end_ns)
        induced_pa = abs(point.envelope_pa - self.zero_pa)
        if len(envelope_pa) < 10 or induced_pa < 1.0 or point.flow_m3_h <= 0 or point.flow_sd_m3_h is None:
            return None
        steady_pa = without_swing(self.data, times_ns, envelope_pa)
        pressure_share = TYPICAL_EXPONENT * standard_error_of_mean(steady_pa) / induced_pa
        flow_share = point.flow_sd_m3_h / point.flow_m3_h / math.sqrt(max(point.count or 1, 1))
        return 100.0 * math.hypot(pressure_share, flow_share)


def recorded_run(run: LoadedRun, plan: TestPlan, spec: RigSpec) -> RunInProgress:
    """Return a run out of the job file as the engine had it, with the points of struck windows too."""
    unstruck = [replace(item, struck_reason=None) for item in run.windows]
    progress = RunInProgress(run.record.direction, run.record.started, run.data, unstruck, changes=list(run.changes))
    progress.derive(plan, spec)
    progress.windows = list(run.windows)
    progress.derive(plan, spec)
    return progress


class TestProgress:
    """One test from its first question to its end. Lives in the engine's loop only."""

    def __init__(self, plan: TestPlan, spec: RigSpec, recorder: Recorder, clock: Clock) -> None:
        """Begin with nothing read, or with what was read before an interruption.

        `spec` is the rig as it was at the beginning of the test.
        """
        self.plan = plan
        self.spec = spec
        self.recorder = recorder
        self.runs = [recorded_run(item, plan, spec) for item in recorder.earlier]
        self.flags: list[Flag] = []
        self.test: Test | None = None
        self.result: TestResult | None = None
        self.result_gap = "Nothing has been read yet."
        self.ended: Ending | None = None
        self.outlook: Outlook | None = None
        self._clock = clock
        self._recording = False
        self._flags_before = 0
        self._next_window = 1 + max((item.id for run in self.runs for item in run.windows), default=0)

    @property
    def current(self) -> RunInProgress | None:
        """The run that is being recorded, None between runs."""
        return self.runs[-1] if self._recording else None

    def begin_run(self, direction: Direction, now_ns: int, *, continues: bool = False) -> None:
        """Start to record a direction, or go on with what there is of it."""
        utc = self._clock.utc()
        if continues:
            earlier = self.recorder.earlier[-1]
            record = self.recorder.begin_run(direction, self.plan.air, now_ns, utc, earlier.record.id)
            self.runs[len(self.recorder.earlier) - 1] = recorded_run(moved_to(earlier, record), self.plan, self.spec)
        else:
            self.recorder.begin_run(direction, self.plan.air, now_ns, utc)
            self.runs.append(RunInProgress(direction, utc, self.recorder.data))
        self._recording = True

    def keep_fitted(self, spec: RigSpec, now_ns: int) -> None:
        """Write down what is now fitted on the fans where it is another range than before."""
        run = self.current
        if run is None:
            return
        before = run.fitted(self.spec).now
        for fan, (old, new) in enumerate(zip(before, spec.fitted_ranges.now, strict=True)):
            if old != new:
                change = RangeChange(now_ns, fan, new)
                run.changes.append(change)
                self.recorder.range_change(change)
                of_fan = f" on fan {fan + 1}" if self.spec.further else ""
                self.mark(
                    "range-changed", f"Flow range {new.name} is fitted{of_fan}; before it was {old.name}.", now_ns
                )

    def end_run(self, ending: Ending, now_ns: int) -> None:
        """End the recording of the direction, if one is being recorded."""
        run = self.current
        if run is None:
            return
        run.open_window = None
        run.complete = ending == "complete"
        self._recording = False
        self.recorder.end_run(ending, now_ns, self._clock.utc())
        self._recompute()

    def end_test(self, ending: Ending, now_ns: int) -> None:
        """End run and test."""
        self.end_run(ending, now_ns)
        self.ended = ending
        self.recorder.end_test(ending)

    def note(self, batch: Sequence[tuple[Role, Reading]]) -> None:
        """Take the readings of a tick."""
        run = self.current
        if run is None or not batch:
            return
        self.recorder.readings(batch)
        if run.data is not self.recorder.data:  # one that goes on with an earlier run holds the readings of both
            for role, reading in batch:
                run.data.append(reading, role)

    def fan(self, fraction: float, now_ns: int) -> None:
        """Note what the fan is commanded, 0 to 1."""
        run = self.current
        if run is not None:
            self.recorder.fan(now_ns, fraction)
            run.data.drive(now_ns, fraction)

    def open_window(self, kind: WindowKind, now_ns: int, target_pa: float | None) -> None:
        """Show that averaging has begun."""
        self._flags_before = len(self.flags)
        if self.current is not None:
            self.current.open_window = WindowView(kind, now_ns, None, target_pa)

    def drop_open_window(self) -> None:
        """Forget an averaging that was interrupted; its readings stay in the record."""
        if self.current is not None:
            self.current.open_window = None

    def close_zero(self, kind: WindowKind, start_ns: int, end_ns: int) -> ZeroFlow | None:
        """Close a zero-flow window and return what it gave, None when there was no reading in it."""
        run = self._close(kind, start_ns, end_ns, None).run
        assert run is not None
        before, after = run.zero_before, run.zero_after
        zero = before if kind is WindowKind.ZERO_BEFORE else after
        if zero is not None and abs(zero.mean_pa) > ZERO_LIMIT_PA:
            text = f"The zero-flow pressure {_when(kind)} is {zero.mean_pa:+.1f} Pa: more than {ZERO_LIMIT_PA:g} Pa."
            self.flag("zero-high", Severity.ATTENTION, text)
        if kind is WindowKind.ZERO_AFTER and before is not None and after is not None:
            drift = after.mean_pa - before.mean_pa
            if abs(drift) > ZERO_DRIFT_PA:
                text = f"The zero-flow pressure moved by {drift:+.1f} Pa during the points."
                self.flag("zero-drift", Severity.ATTENTION, text)
        return zero

    def close_point(self, start_ns: int, end_ns: int, target_pa: float | None) -> Point | None:
        """Close the window of a point and return the point, None when there was no reading in it."""
        run = self._close(WindowKind.POINT, start_ns, end_ns, target_pa)
        point = run.points.get(run.windows[-1].id)
        if point is not None:
            self._look_at_range(run, start_ns, end_ns)
            if point.flow_m3_h <= 0.0:
                # No line goes through it, and with it there would be no result at all.
                text = "A point without flow through the fan is left out: look at the hose of the flow element."
                self.flag("no-flow", Severity.ATTENTION, text)
                self.strike(run.windows[-1].id, NO_FLOW)
            self._look_at_line(run)
        return point

    def strike(self, window: int, reason: str) -> None:
        """Leave a point out of the result, with a reason; it stays in the record."""
        if self._amend(window, lambda item: item.judged(reason)):
            self.recorder.strike(window, reason)
            self._recompute()

    def points_since(self, from_ns: int) -> tuple[int, ...]:
        """Return the points of the current run that count and ended since then."""
        windows = self.current.windows if self.current is not None else ()
        return tuple(w.id for w in windows if w.kind is WindowKind.POINT and not w.struck and w.end_ns >= from_ns)

    def points_until(self, to_ns: int) -> tuple[int, ...]:
        """Return the points of the current run that count and ended before."""
        windows = self.current.windows if self.current is not None else ()
        return tuple(w.id for w in windows if w.kind is WindowKind.POINT and not w.struck and w.end_ns <= to_ns)

    def strike_to_repeat(self, window: int, reason: str = TAKEN_AGAIN) -> float | None:
        """Strike a point of the current run because it is taken again; return its target, None without one."""
        run = self.current
        found = None if run is None else next((item for item in run.windows if item.id == window), None)
        if found is None or found.kind is not WindowKind.POINT or found.target_pa is None:
            return None
        if not found.struck:
            self.strike(window, reason)
        return found.target_pa

    def restore(self, window: int) -> None:
        """Take a struck point back."""
        if self._amend(window, lambda item: item.judged(None)):
            self.recorder.restore(window)
            self._recompute()

    def correct_range(self, windows: Sequence[int], fan: int, name: str, now_ns: int) -> None:
        """Take it that points were read with a flow range, whatever had been entered; as entered without a name."""
        flow_range = self.spec.with_fitted(fan, name).fitted_ranges.now[fan] if name else None
        right = None if flow_range is None else Corrected(fan, flow_range)
        amended = [window for window in windows if self._amend(window, lambda item: item.read_with(fan, right))]
        for window in amended:
            self.recorder.correct_range(window, fan, right)
        if amended:
            numbers = ", ".join(str(window) for window in amended)
            text = f"Points worked out anew with the flow range as entered: {numbers}."
            if name:
                text = f"Points worked out anew with flow range {name}: {numbers}."
            self.mark("range-corrected", text, now_ns)
            self._recompute()

    def mark(self, kind: str, text: str, now_ns: int, *, notable: bool = False) -> None:
        """Write a remark into the record; one that is notable stands in the report too."""
        self.recorder.mark(now_ns, self._clock.utc(), kind, text)
        self.flag(kind, Severity.ATTENTION if notable else Severity.NOTE, text)

    def foretell(self, outlook: Outlook, now_ns: int) -> None:
        """Show what the test can be expected to know, and write it into the record."""
        self.outlook = outlook
        self.mark("outlook", f"{outlook.sentence} {outlook.advice}".strip(), now_ns)

    def answer(self, ask: Ask, choice: str, now_ns: int) -> None:
        """Write down what a person answered."""
        self.recorder.answer(now_ns, self._clock.utc(), ask.id, ask.text, choice)

    def flag(self, flag_id: str, severity: Severity, sentence: str) -> None:
        """Raise a flag."""
        flag = Flag(flag_id, severity, sentence, self._clock.utc())
        self.flags.append(flag)
        self.recorder.flag(flag)

    def points_taken(self) -> int:
        """Return how many points the current run has, struck ones included."""
        run = self.current
        return 0 if run is None else sum(item.kind is WindowKind.POINT for item in run.windows)

    def windows(self) -> tuple[WindowView, ...]:
        """Return the averaging windows of all runs, the open one last."""
        closed = [
            WindowView(item.kind, item.start_ns, item.end_ns, item.target_pa)
            for run in self.runs
            for item in run.windows
        ]
        opened = [run.open_window for run in self.runs if run.open_window is not None]
        return (*closed, *opened)

    def _close(self, kind: WindowKind, start_ns: int, end_ns: int, target_pa: float | None) -> RunInProgress:
        run = self.current
        if run is None:
            raise RuntimeError("a window closes only inside a run")
        run.open_window = None
        record = WindowRecord(self._next_window, kind, start_ns, end_ns, target_pa)
        self._next_window += 1
        run.windows.append(record)
        self.recorder.window(record)
        self._recompute()
        return run

    def _amend(self, window: int, amend: Amendment) -> bool:
        """Amend a window; return whether that changed anything."""
        for run in self.runs:
            for at, item in enumerate(run.windows):
                if item.id == window and amend(item) != item:
                    run.windows[at] = amend(item)
                    return True
        return False

    def _recompute(self) -> None:
        """Derive runs, test and result from the readings."""
        for item in self.runs:
            item.derive(self.plan, self.spec)
        with_points = [item.run for item in self.runs if item.run is not None and item.run.points]
        if not with_points:
            self.test, self.result, self.result_gap = None, None, "No point has been taken yet."
            return
        try:
            self.test = derive_test(self.plan, with_points)
            self.result, self.result_gap = (
                analyse(self.test, self.plan.method, limits=self.plan.limits, kit=self.plan.kit),
                "",
            )
        except InvalidInput as gap:
            self.result, self.result_gap = None, str(gap)

    def _look_at_line(self, run: RunInProgress) -> None:
        """Say once which points another range would bring onto the line of the others."""
        found = suggestions(run.views, run.zero_pa, self.spec.ranges)
        if found and found[0].name not in run.suggested:
            self.flag("range-mixed", Severity.ATTENTION, found[0].sentence)
            run.suggested |= {item.name for item in found}

    def _look_at_range(self, run: RunInProgress, start_ns: int, end_ns: int) -> None:
        """Flag a point whose element pressure lies outside the calibrated range, and name the range that would fit."""
        now = run.fitted(self.spec).now
        if any(flag.id == "out-of-range" for flag in self.flags[self._flags_before :]):
            return  # said while the point was averaged
        for number, ((_, element), fitted) in enumerate(zip(FAN_FLOWS, now, strict=False), 1):
            _, values = run.data.slice(element, start_ns, end_ns)
            if not len(values) or (number > 1 and float(values.mean()) < RESTING_PA):
                continue
            found = check_validity(float(values.mean()), fitted, self.spec.ranges)
            if not found.inside:
                of_fan = f"Fan {number}: " if self.spec.further else ""
                self.flag("out-of-range", Severity.ATTENTION, f"{of_fan}{found.sentence}")


def _when(kind: WindowKind) -> str:
    return "before the points" if kind is WindowKind.ZERO_BEFORE else "after the points"
