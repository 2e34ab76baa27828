"""A pressure that is being held: what leaks this moment, what changed since a mark, what each seal brought so far.

The readings of each look are added to the trace, so that a look costs as much after two hours as after five minutes.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from acquisition.derive import pressure_of, taps_read, taps_together
from acquisition.job.leaks import SealingMark, SealingMarkKind
from acquisition.plan import TestPlan
from acquisition.progress import RunInProgress
from acquisition.rig import RigSpec
from acquisition.sealing.held import (
    UNJUDGED_S,
    SealedLook,
    Understood,
    fan_speed,
    leak_flow,
    seal_spans,
    sealed_looks,
    understood,
    without_breaks,
)
from acquisition.sealing.zeros import (
    NEWEST_AIR_S,
    ReadZero,
    age_of,
    crossing_m3_h,
    read_zero,
    stack_in,
    unsure_m3_h,
    zero_windows,
)
from analysis.records import Estimate
from analysis.sealing.change import (
    AFTER_S,
    FEWEST_AFTER_S,
    FEWEST_BEFORE_S,
    LONGEST_AFTER_S,
    TOO_WINDY_SHARE,
    Change,
    Record,
    change_in,
    judged,
    smallest_m3_h,
)
from analysis.sealing.levelled import Levelling, Trace, levelled_trace
from analysis.sealing.unrest import SHORTEST_S, Unrest, Windows
from analysis.sealing.watch import Step, StepKind
from analysis.sealing.zeroage import ZeroAge, joined, put_right
from analysis.student import COVERAGE
from drivers.clock import NS_PER_S

USUAL_REFERENCE_PA, LOWEST_LEVELLED_PA = 50.0, 30.0
"""Flows are brought to 50 Pa, but not from below 30 Pa: that far the exponent is not known well enough (our choice)."""
JUDGED_S = 1800.0
"""The wind is learnt from the last half hour: what it was long ago says little, and a look stays quick."""
LEARNT_EVERY_S = 5.0
"""Neither the wind nor what is a step is known better a second later: so often it is learnt anew."""
AGAIN_S = 12.0
"""Seconds that are levelled again with each look, for the change of pressure at the end of the trace."""
NEWEST_S = 10
BEFORE_MARK_S = 60
FARTHEST_S = 900
"""From so far apart on two means wander no further from each other than the record shows."""
_NEW = ZeroAge()


@dataclass(frozen=True, slots=True)
class Level:
    """The flow between two changes, at the reference pressure in m3/h."""

    start_s: float
    end_s: float
    flow_m3_h: Estimate


@dataclass(frozen=True, slots=True)
class HoldLook:
    """What a held pressure says now; times are seconds of the clock of the run, flows m3/h at the reference pressure.

    `unrest`, and all that follows from it, is None before a quiet minute. `since` is the change from the minute before
    `since_s` to now.
    """

    levelling: Levelling
    held_pa: float
    trace: Trace
    unrest: Unrest | None
    now_m3_h: Estimate | None
    since: Change | None
    since_s: float
    smallest_m3_h: float | None
    steps: tuple[Step, ...]
    sealed: tuple[SealedLook, ...]
    levels: tuple[Level, ...]
    final: tuple[SealedLook, ...]
    """Those of `sealed` of which nothing more will be learnt."""
    zero: ZeroAge = _NEW
    """How old the zero-flow pressure is; what it may have moved by is in the intervals."""

    @property
    def windy(self) -> bool:
        """Whether the wind hides what a seal usually brings."""
        now, least = self.now_m3_h, self.smallest_m3_h
        return now is not None and least is not None and least > TOO_WINDY_SHARE * now.value


class HoldWatch:
    """Follows one stretch in which one pressure is held in one direction."""

    def __init__(
        self,
        run: RunInProgress,
        target_pa: float,
        began_ns: int,
        plan: TestPlan,
        rig: RigSpec,
        exponent: tuple[float, float],
    ) -> None:
        """Begin at a stamp of the run's clock; the zero-flow pressure of the run has been read by then.

        `exponent` comes with how far it may be off (95 %).
        """
        self._run = run
        self._plan = plan
        self._rig = rig
        self._fitted = rig.fitted_ranges
        self._next_ns = began_ns
        self._began_ns = began_ns
        self.held_pa = abs(target_pa)
        self._from_ns = began_ns
        self._zeros = [self._read_zero()]
        building = plan.building
        self._levelling = Levelling(
            run.direction,
            self._zeros[-1].mean_pa,
            building.volume_m3,
            exponent[0],
            pressure_of(plan.air, building),
            USUAL_REFERENCE_PA if self.held_pa >= LOWEST_LEVELLED_PA else self.held_pa,
            exponent[1],
        )
        taps = len(taps_read(run.data))
        self._raw = Trace(float(began_ns // NS_PER_S), np.zeros(0), np.zeros((0, taps)))
        self._settled: dict[SealingMark, SealedLook] = {}
        self._understood = Understood((), None, ())
        self._steps: tuple[Step, ...] = ()
        self._learnt_s = -math.inf
        self._age = ZeroAge()
        self._breaks: list[tuple[float, float]] = []

    @property
    def run(self) -> RunInProgress:
        """The run that is followed."""
        return self._run

    @property
    def began_ns(self) -> int:
        """Stamp from which on the pressure is held without a break."""
        return self._from_ns

    def go_on(self, began_ns: int) -> None:
        """Go on from a stamp on, when the same pressure is held again after a break.

        Where the zero-flow pressure was read anew, what it moved by is taken to have come evenly, and is taken off the
        flows since it was read before.
        """
        former, zero = self._zeros[-1], self._read_zero()
        if zero.end_s > former.end_s:
            moved_pa = zero.mean_pa - former.mean_pa
            self._raw = put_right(self._raw, self._levelling, self.held_pa, former.end_s, zero.start_s, moved_pa)
            self._levelling = replace(self._levelling, zero_pa=zero.mean_pa)
            self._zeros.append(zero)
            self._breaks.append((self._raw.end_s, began_ns / NS_PER_S))
        self._from_ns = self._next_ns = began_ns
        self._learnt_s = -math.inf

    def look(self, marks: Sequence[SealingMark], since: SealingMark | None = None) -> HoldLook:
        """Return what is to be said now; `since` is the mark from which the change is counted, None: the beginning."""
        self._take()
        if self._understood.unrest is None or self._raw.end_s - self._learnt_s >= LEARNT_EVERY_S:
            self._learn(marks)
        unrest, steps = self._understood.unrest, self._steps
        records = self._understood.records(self._raw)
        trace = records[0].trace if records else self._raw
        self._age = replace(self._age, seconds=max(trace.end_s - self._zeros[-1].end_s, 0.0))
        sealed = self._sealed(records, marks, steps)
        since_s = self._since_s(since, sealed, marks)
        return HoldLook(
            levelling=self._levelling,
            held_pa=self.held_pa,
            trace=trace,
            unrest=unrest,
            now_m3_h=None if unrest is None else newest(trace, unrest, self._unsure(unrest)),
            since=self._since(records, since_s, [look.done_s for look in sealed]),
            since_s=since_s,
            smallest_m3_h=smallest_m3_h(records[-1].unrest) if records else None,
            steps=steps,
            sealed=sealed,
            levels=() if unrest is None else levels_of(trace, unrest, steps, sealed),
            final=tuple(self._settled.values()),
            zero=self._age,
        )

    def _since(self, records: Sequence[Record], since_s: float, done_s: Sequence[float]) -> Change | None:
        """Return the change since a moment; over a long time the fan's part has no say, since drives drift."""
        if not records:
            return None
        unsure = self._unsure(records[0].unrest, since_s)
        usable = records if self._raw.end_s - since_s < FARTHEST_S else records[:1]
        return change_in(
            usable, lambda item: change_since(item.trace, item.unrest, since_s, done_s, unsure, item.doubts.share)
        )

    def _unsure(self, unrest: Unrest, since_s: float | None = None) -> float:
        return unsure_m3_h(self._zeros, self._age, unrest.mean_m3_h, self._levelling, self.held_pa, since_s)

    def _read_zero(self) -> ReadZero:
        """Return the newest zero-flow pressure of the run."""
        windows = zero_windows(tuple(self._run.windows))
        return read_zero(self._run.data, windows[-1], self._plan.air, self._plan.building)

    def _learn(self, marks: Sequence[SealingMark]) -> None:
        """Learn the wind and the steps from the record as it is now."""
        recent = self._raw.span(self._raw.end_s - JUDGED_S, self._raw.end_s)
        self._understood = understood(recent, self._levelling, seal_spans(marks))
        steps = without_breaks(self._understood.steps, self._breaks)
        # Where the record that is judged begins in the middle of the trace, its first minute was judged before.
        known_s = recent.start_s + BEFORE_MARK_S if recent.start_s > self._raw.start_s else self._raw.start_s
        older = [step for step in self._steps if step.at_s < known_s]
        self._steps = (*older, *(step for step in steps if step.at_s >= known_s))
        self._learnt_s = self._raw.end_s
        air, building, end_ns = self._plan.air, self._plan.building, round(self._raw.end_s * NS_PER_S)
        stack_pa = stack_in(self._run.data, air, building, end_ns - round(NEWEST_AIR_S * NS_PER_S), end_ns)
        records = self._understood.records(self._raw)
        self._age = age_of(self._zeros[-1], stack_pa, records[0].trace if records else self._raw, self._levelling)

    def _take(self) -> None:
        """Bring the readings since the last look into the trace, the last seconds of it once more."""
        from_ns = max(self._next_ns - round(AGAIN_S * NS_PER_S), self._from_ns)
        data = self._run.data
        times_ns, taps_pa = taps_together(data, taps_read(data), from_ns, 2**62)
        if not len(times_ns) or taps_pa.shape[1] != self._raw.apart_pa.shape[1]:
            return
        flow = leak_flow(
            self._run.direction, self._plan.air, data, times_ns, self._fitted, self._plan.building,
            self._levelling.exponent,
        )  # fmt: skip
        speed = fan_speed(data, times_ns, self._run.fitted(self._rig))
        newer = levelled_trace(np.asarray(times_ns / NS_PER_S, np.float64), taps_pa, flow, self._levelling, speed)
        # The first second of a piece is not whole, and its change of pressure knows nothing of what came before.
        keep_s = newer.start_s if from_ns == self._from_ns else newer.start_s + AGAIN_S / 2
        newer = newer.span(keep_s, math.floor(times_ns[-1] / NS_PER_S))
        self._raw = joined(self._raw, newer)
        self._next_ns = int(times_ns[-1])

    def _sealed(
        self, records: Sequence[Record], marks: Sequence[SealingMark], steps: Sequence[Step]
    ) -> tuple[SealedLook, ...]:
        """Return the seals of this stretch; what was learnt of one for good stays as it was told then."""
        here = [mark for mark in marks if mark.t_ns >= self._began_ns]
        self._settled = {mark: look for mark, look in self._settled.items() if mark in here}

        def further(start_s: float, end_s: float) -> float:
            flow = records[0].unrest.mean_m3_h if records else 0.0
            return crossing_m3_h(self._zeros, start_s, end_s, flow, self._levelling, self.held_pa)

        end_s = self._raw.end_s
        looks = sealed_looks(records, end_s, here, steps, further)
        starts = [mark.t_ns / NS_PER_S for mark in here if mark.kind is SealingMarkKind.STARTS]
        for look in looks:
            over = end_s >= look.done_s + LONGEST_AFTER_S or any(
                at_s > look.done_s and end_s >= at_s for at_s in starts
            )
            if over and look.mark not in self._settled and records:
                self._settled[look.mark] = look
        return tuple(self._settled.get(look.mark, look) for look in looks)

    def _since_s(self, since: SealingMark | None, sealed: Sequence[SealedLook], marks: Sequence[SealingMark]) -> float:
        if since is not None and since.t_ns >= self._began_ns:
            return since.t_ns / NS_PER_S
        first_s = self._raw.start_s + BEFORE_MARK_S
        begun = [mark.t_ns / NS_PER_S for mark in marks if mark.kind is SealingMarkKind.STARTS]
        edges = [*(at for at in begun if at >= self._raw.start_s), *(look.started_s for look in sealed)]
        return min([first_s, *edges])


def newest(trace: Trace, unrest: Unrest, further_m3_h: float = 0.0) -> Estimate | None:
    """Return the flow of the last seconds; `further_m3_h` adds to how far such a mean wanders around it."""
    last = trace.between(trace.end_s - NEWEST_S, trace.end_s)
    if not len(last):
        return None
    half = math.hypot(unrest.limit_m3_h(Windows(BEFORE_MARK_S, NEWEST_S), COVERAGE), further_m3_h)
    value = float(last.mean())
    return Estimate(value, value - half, value + half)


def change_since(
    trace: Trace,
    unrest: Unrest,
    since_s: float,
    done_s: Sequence[float] = (),
    further_m3_h: float = 0.0,
    unsure_share: float = 0.0,
) -> Change | None:
    """Return the change from the minute before a moment to the last half minute, None where one of them is empty.

    The minute before begins no earlier than the last of the seals before it was done.
    """
    begin_s = max([since_s - BEFORE_MARK_S, *(at for at in done_s if at < since_s)])
    before = trace.between(begin_s, since_s)
    after = trace.between(max(trace.end_s - AFTER_S, since_s), trace.end_s)
    if len(before) < FEWEST_BEFORE_S or len(after) < FEWEST_AFTER_S:
        return None
    gap = min(max(round(trace.end_s - AFTER_S - since_s), 0), FARTHEST_S)
    windows = Windows(len(before), len(after), gap)
    means = float(before.mean()), float(after.mean())
    return judged(*means, windows, unrest, COVERAGE, further_m3_h, unsure_share)


def levels_of(trace: Trace, unrest: Unrest, steps: Sequence[Step], sealed: Sequence[SealedLook]) -> tuple[Level, ...]:
    """Return the flow between the changes, each with how far such a mean wanders."""
    edges = [(look.started_s, look.done_s) for look in sealed]
    known = list(edges)
    edges += [
        (step.at_s, step.at_s)
        for step in steps
        if step.kind is not StepKind.PASSING and not any(one - 20.0 <= step.at_s <= two + 20.0 for one, two in known)
    ]
    if steps and trace.end_s - steps[-1].at_s < UNJUDGED_S:
        # Whether it goes back, as a door does, is not known yet: the level now is drawn, not a mean of both.
        edges.append((steps[-1].at_s, max(steps[-1].at_s, trace.end_s - AFTER_S)))
    edges.sort()
    levels = []
    begin_s = trace.start_s
    for start_s, done_s in [*edges, (trace.end_s, trace.end_s)]:
        flow = trace.between(begin_s, start_s)
        if len(flow) >= FEWEST_AFTER_S:
            length = min(len(flow), FARTHEST_S)
            half = unrest.limit_m3_h(Windows(length, length), COVERAGE) / math.sqrt(2.0)
            value = float(flow.mean())
            levels.append(Level(begin_s, start_s, Estimate(value, value - half, value + half)))
        begin_s = max(done_s, begin_s)
    return tuple(levels)


def seconds_to_learn(look: HoldLook | None) -> int:
    """Return how long the wind has to be watched yet before anything can be told."""
    if look is None:
        return int(SHORTEST_S)
    if look.unrest is not None:
        return 0
    known = int(np.count_nonzero(np.isfinite(look.trace.flow_m3_h)))
    return max(int(SHORTEST_S) - known, 1)
