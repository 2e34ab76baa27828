"""A run in which a pressure was held: its flow at that pressure, what changed, and what each marked seal brought."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from acquisition.derive import air_in, fan_flows, pressure_of, taps_read, taps_together
from acquisition.fitted import Fitted
from acquisition.job.leaks import SealingMark, SealingMarkKind
from acquisition.sealing.zeros import ReadZero, crossing_m3_h, read_zero, zero_windows
from acquisition.series import RunData, WindowRecord
from analysis.air import moist_air_density
from analysis.records import Air, Building, Direction
from analysis.sealing.change import AFTER_S, BEFORE_S, Change, Record, change_at, change_in
from analysis.sealing.learnt import Learnt, learnt_from
from analysis.sealing.levelled import USUAL_EXPONENT, Levelling, Trace, levelled_trace, through_leaks
from analysis.sealing.unrest import Unrest, unrest_of
from analysis.sealing.watch import Step, steps_in
from analysis.sealing.zeroage import joined, put_right
from drivers.clock import NS_PER_S, seconds

Floats = NDArray[np.float64]
Span = tuple[float, float]

FAN_LATE_NS = seconds(1.4)
"""How late a fan follows what it is told, on the whole: it calms the wind a little less where that is not so."""
PIECE_S = 10
"""Over which the temperature of the air in the fan is taken as one."""
STEADY_S, STEADY_SHARE = 20, 0.1
"""The pressure counts as held from where it stays this near to what is wished for so long."""
ROUNDS = 3
OWN_STEP_S = 20.0
"""A step that is found as late as this after a seal is still its own (our choice)."""
BESIDE_S = 15.0
"""Seconds before a change, and after it, that are not quiet."""
UNJUDGED_S = BEFORE_S + AFTER_S + BESIDE_S
"""So long after a step no other one is found."""


@dataclass(frozen=True, slots=True)
class SealedLook:
    """A marked seal and what it brought; `change` is None where it is too early or nothing was quiet before."""

    mark: SealingMark
    started_s: float
    done_s: float
    change: Change | None


@dataclass(frozen=True, slots=True)
class HeldLook:
    """A held run as it stands; times are seconds of the clock of the run.

    `trace` is the flow through the leaks at the pressure held. `unrest` is None before a minute was quiet.
    """

    levelling: Levelling
    trace: Trace
    unrest: Unrest | None
    steps: tuple[Step, ...]
    sealed: tuple[SealedLook, ...]
    keen: Unrest | None
    """The unrest by which it is told whether something changed."""


def held_look(
    direction: Direction,
    held_pa: float,
    air: Air,
    data: RunData,
    windows: Sequence[WindowRecord],
    fitted: Fitted,
    building: Building,
    marks: Sequence[SealingMark] = (),
    exponent: float = USUAL_EXPONENT,
) -> HeldLook | None:
    """Return what a held run says, None while the pressure was never held or no zero-flow pressure is known.

    `held_pa` is the induced pressure without its sign; `exponent` that of the last test.
    """
    raw: Trace | None = None
    former: ReadZero | None = None
    breaks: list[tuple[float, float]] = []
    levelling = Levelling(direction, 0.0, building.volume_m3, exponent, pressure_of(air, building), held_pa)
    read = zero_windows(windows)
    for window, until_ns in zip(read, [*(item.start_ns for item in read[1:]), 2**62], strict=True):
        zero = read_zero(data, window, air, building)
        levelling = replace(levelling, zero_pa=zero.mean_pa)
        if raw is not None and former is not None:
            raw = put_right(raw, levelling, held_pa, former.end_s, zero.start_s, zero.mean_pa - former.mean_pa)
        times_ns, taps_pa = taps_together(data, taps_read(data), window.end_ns, until_ns)
        held = _held_in(times_ns, direction.sign * (taps_pa.mean(axis=1) - zero.mean_pa), held_pa)
        former = zero
        if held is not None:
            times_ns, taps_pa = times_ns[held], taps_pa[held]
            flow = leak_flow(direction, air, data, times_ns, fitted, building, exponent)
            speed = fan_speed(data, times_ns, fitted)
            trace = levelled_trace(np.asarray(times_ns / NS_PER_S, np.float64), taps_pa, flow, levelling, speed)
            if raw is not None:
                breaks.append((raw.end_s, trace.start_s))
            raw = trace if raw is None else joined(raw, trace)
    if raw is None:
        return None
    found = understood(raw, levelling, seal_spans(marks))
    steps = without_breaks(found.steps, breaks)
    records = found.records(raw)
    trace = records[0].trace if records else raw
    mean_m3_h = float(np.nanmean(trace.flow_m3_h))
    known = [read_zero(data, item, air, building) for item in read]

    def further(start_s: float, end_s: float) -> float:
        return crossing_m3_h(known, start_s, end_s, mean_m3_h, levelling, held_pa)

    sealed = sealed_looks(records, trace.end_s, marks, steps, further)
    return HeldLook(levelling, trace, found.unrest, steps, sealed, records[-1].unrest if records else None)


def _held_in(times_ns: NDArray[np.int64], induced_pa: Floats, held_pa: float) -> slice | None:
    """Return the readings from the first stretch of `STEADY_S` that is near to what is wished for to the last near."""
    far = np.abs(induced_pa / held_pa - 1.0) > STEADY_SHARE
    beginnings = np.concatenate([[0], np.flatnonzero(far) + 1])
    ends = np.concatenate([np.flatnonzero(far), [len(far)]])
    for begin, end in zip(beginnings, ends, strict=True):
        if end > begin and times_ns[end - 1] - times_ns[begin] >= STEADY_S * NS_PER_S:
            return slice(int(begin), int(np.flatnonzero(~far)[-1]) + 1)
    return None


def leak_flow(
    direction: Direction, air: Air, data: RunData, times_ns: NDArray[np.int64], fitted: Fitted, building: Building,
    exponent: float,
) -> Floats:  # fmt: skip
    """Return the flow through the leaks at each stamp (n,), the air in the fan as it was at the time."""
    flow = np.full(len(times_ns), np.nan)
    piece = (times_ns - times_ns[0]) // (PIECE_S * NS_PER_S)
    for number in np.unique(piece):
        here = np.flatnonzero(piece == number)
        start_ns, end_ns = int(times_ns[here[0]]), int(times_ns[here[-1]]) + 1
        then = air_in(air, data, start_ns, end_ns, latest=True)
        pressure_pa = pressure_of(then, building)
        indoor = moist_air_density(then.indoor_c, then.indoor_rh, pressure_pa)
        outdoor = moist_air_density(then.outdoor_c, then.outdoor_rh, pressure_pa)
        flow_ns, fan = fan_flows(direction, then, data, start_ns, end_ns, fitted, building)
        if len(flow_ns):
            leaking = through_leaks(fan, direction, indoor, outdoor, exponent)
            flow[here] = np.interp(times_ns[here], flow_ns, leaking)
    return flow


def fan_speed(data: RunData, times_ns: NDArray[np.int64], fitted: Fitted) -> Floats | None:
    """Return the speed of the fan at each stamp (n,) by what it was told; None where it follows no single curve."""
    if len(fitted.ranges) > 1 or fitted.changes:
        return None
    speed = data.speed(times_ns, FAN_LATE_NS)
    return speed if bool(np.any(speed > 0.0)) else None


@dataclass(frozen=True, slots=True)
class Understood:
    """What a held record teaches: `learnt` as in `learnt_from`, `unrest` of the plain one, and the steps in it."""

    learnt: tuple[Learnt, ...]
    unrest: Unrest | None
    steps: tuple[Step, ...]

    def records(self, raw: Trace) -> tuple[Record, ...]:
        """Return the record with what was learnt taken off, the plain one first; empty where nothing is known."""
        if self.learnt:
            return tuple(item.record(raw) for item in self.learnt)
        return () if self.unrest is None else (Record(raw, self.unrest),)


def understood(raw: Trace, levelling: Levelling, seals: Sequence[Span] = ()) -> Understood:
    """Return how the flow answers to the wind, what unrest is left then, and the steps.

    Quiet is what lies between the steps, and outside of the spans in which somebody sealed. What follows a step is not
    known to be quiet before a next step would have been found: a door that was shut again would pass for wind.
    """
    found = Understood((), unrest_of([raw], mostly=True), ())
    for _ in range(ROUNDS):
        records = found.records(raw)
        if not records:
            break
        steps = steps_in(records[-1].trace, records[-1].unrest)
        changes = [*((step.at_s, step.at_s) for step in steps), *seals]
        if steps and raw.end_s - steps[-1].at_s < UNJUDGED_S:
            changes.append((steps[-1].at_s, raw.end_s))
        quiet = _between(raw, changes)
        learnt = learnt_from(quiet, levelling)
        if not learnt:
            return Understood(found.learnt, found.unrest, steps)
        found = Understood(learnt, learnt[0].unrest, steps)
    return found


def without_breaks(steps: Sequence[Step], breaks: Sequence[tuple[float, float]]) -> tuple[Step, ...]:
    """Return the steps but those at a break in which the zero-flow pressure was read anew: its error looks like one."""
    return tuple(
        step
        for step in steps
        if not any(start_s - OWN_STEP_S <= step.at_s <= end_s + OWN_STEP_S for start_s, end_s in breaks)
    )


def _between(raw: Trace, changes: Sequence[Span]) -> list[Trace]:
    """Return the stretches that no change touches."""
    quiet = []
    begin_s = raw.start_s
    for start_s, end_s in [*sorted(changes), (raw.end_s + BESIDE_S, raw.end_s)]:
        if start_s - BESIDE_S > begin_s:
            quiet.append(raw.span(begin_s, start_s - BESIDE_S))
        begin_s = max(begin_s, end_s + BESIDE_S)
    return [span for span in quiet if len(span.flow_m3_h)]


def seal_spans(marks: Sequence[SealingMark]) -> list[Span]:
    """Return from when to when each seal was made by its marks (s); one that is being made has not ended."""
    spans: list[Span] = []
    started_s: float | None = None
    for mark in marks:
        at_s = mark.t_ns / NS_PER_S
        if mark.kind is SealingMarkKind.STARTS:
            started_s = at_s
        elif mark.kind is SealingMarkKind.DONE:
            spans.append((at_s if started_s is None else started_s, at_s))
            started_s = None
    return spans if started_s is None else [*spans, (started_s, math.inf)]


def sealed_looks(
    records: Sequence[Record],
    end_s: float,
    marks: Sequence[SealingMark],
    steps: Sequence[Step] = (),
    further: Callable[[float, float], float] = lambda start_s, end_s: 0.0,
) -> tuple[SealedLook, ...]:
    """Return a look at each seal that was marked as done; it began at the mark before it that says so.

    `further` says what something else than the unrest adds to the interval of a change between two moments (m3/h).

    The flow before a seal reaches back to the change before it, whether that was marked or is a step.
    """
    looks: list[SealedLook] = []
    started_s: float | None = None
    later = [mark.t_ns / NS_PER_S for mark in marks if mark.kind is SealingMarkKind.STARTS]
    for mark in marks:
        at_s = mark.t_ns / NS_PER_S
        if mark.kind is SealingMarkKind.STARTS:
            started_s = at_s
        elif mark.kind is SealingMarkKind.DONE:
            begun_s = at_s if started_s is None else started_s
            # What the next seal does is not this one's.
            next_s = [other for other in later if other > at_s]
            next_s += [step.at_s - 1.0 for step in steps if step.at_s > at_s + OWN_STEP_S]
            until_s = min(next_s, default=end_s)
            over_s = [item.done_s for item in looks]
            over_s += [step.at_s + BESIDE_S for step in steps if step.at_s + BESIDE_S < begun_s]
            look = _at_seal(begun_s, at_s, min(until_s, end_s), max(over_s, default=-math.inf), further(begun_s, at_s))
            change = change_in(records, look) if records else None
            looks.append(SealedLook(mark, begun_s, at_s, change))
            started_s = None
    return tuple(looks)


def _at_seal(
    begun_s: float, done_s: float, now_s: float, not_before_s: float, further_m3_h: float
) -> Callable[[Record], Change | None]:
    """Return how any record is asked what a seal brought."""
    return lambda record: change_at(
        record.trace,
        done_s,
        record.unrest,
        started_s=begun_s,
        now_s=now_s,
        not_before_s=not_before_s,
        further_m3_h=further_m3_h,
        doubts=record.doubts,
    )
