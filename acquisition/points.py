"""The points of a run: one target after the other, with what somebody wants again and what the flow ranges ask for."""

from __future__ import annotations

import math
from collections.abc import Generator, Iterable
from dataclasses import dataclass, field

from acquisition.plan import TestPlan, stations
from acquisition.planning.outlook import GOOD_ENOUGH_SHARE, Outlook, held_against
from acquisition.planning.reach import Proposal, better_range, range_doubt
from acquisition.planning.spacing import halfway, lowest_target_pa, respaced
from acquisition.progress import TAKEN_AGAIN
from acquisition.steps import (
    Approach,
    Ask,
    Average,
    Checkpoint,
    FitRange,
    GoTo,
    Heard,
    Listen,
    Mark,
    MeasureZero,
    Procedure,
    SetTargets,
    Settle,
    Step,
    StepResult,
    StopFan,
    StrikeLast,
    WindowKind,
)
from analysis.records import Direction, FlowRange, Point, ZeroFlow

FROM_REST_S = 45.0
"""For the way up after a stop; from point to point the usual time will do."""
MOST_TRIES = 2
"""So often somebody who shut something has a target out of reach tried once more."""
SHUT_NOW = "It is shut now: try once more"
REACHED_SHARE, BELOW_REACH_SHARE = 0.95, 0.97
FIT_RANGE = "fit-range"


@dataclass(frozen=True, slots=True)
class Taken:
    """A point that is there: target and what was reached of it (magnitudes), and the flow."""

    target_pa: float
    reached_pa: float
    flow_m3_h: float
    out_of_reach: bool = False
    """Whether the fan did not come near the target."""


@dataclass(slots=True)
class Course:
    """What the points of one direction are taken by, and those taken so far.

    `fits` says that somebody or something can fit another flow range in the middle.
    """

    plan: TestPlan
    direction: Direction
    before: ZeroFlow
    outlook: Outlook
    shutter: bool
    ranges: tuple[FlowRange, ...] = ()
    fits: bool = False
    fitted: FlowRange | None = None
    steered: bool = True
    taken: list[Taken] = field(default_factory=list)
    declined: set[str] = field(default_factory=set)
    """Ranges that somebody did not want to fit."""
    tries: int = 0
    """How often a target out of reach was tried once more."""

    def left_of(self, targets_pa: Iterable[float]) -> list[float]:
        """Return the targets that are still to be taken, those beyond the reach of the fan left out."""
        counted = [item.target_pa for item in self.taken]
        if self.repeats:
            targets_pa, counted = self.reachable(targets_pa), self.reachable(counted)
        left = []
        for target in targets_pa:
            if target in counted:
                counted.remove(target)
            else:
                left.append(target)
        return left if self.repeats else within_reach(left, self.taken)

    @property
    def repeats(self) -> bool:
        """Whether the method wants several readings at the same pressure."""
        return stations(self.plan.targets_pa)

    def reachable(self, targets_pa: Iterable[float]) -> list[float]:
        """Return repeated targets, those beyond the reach of the fan as near to it as it surely comes."""
        reach_pa = min((item.reached_pa for item in self.taken if item.out_of_reach), default=math.inf)
        surely_pa = reach_pa if math.isinf(reach_pa) else math.floor(2.0 * REACHED_SHARE * reach_pa) / 2.0
        return [min(target, surely_pa) for target in targets_pa]

    def signed(self, targets_pa: Iterable[float]) -> tuple[float, ...]:
        """Return targets with the sign of the direction."""
        return tuple(self.direction.sign * target for target in targets_pa)

    def gap(self, point: Taken) -> float | None:
        """Return the target between a point and the next higher one, where they were not meant to be so far apart."""
        above = [item for item in self.taken if item.reached_pa > point.reached_pa]
        upper = min(above, key=lambda item: item.reached_pa, default=None)
        if upper is None or halfway(self.plan.method, upper.target_pa, point.target_pa) is not None:
            return None
        return halfway(self.plan.method, upper.reached_pa, point.reached_pa)

    def proposal(self, targets_pa: list[float]) -> Proposal | None:
        """Return the range that should be fitted before the next of the targets, None where all is well."""
        if not self.fits or self.fitted is None or not self.taken or not targets_pa:
            return None
        last = self.taken[-1]
        found = better_range(self.fitted, self.ranges, last.flow_m3_h, last.reached_pa, targets_pa)
        return None if found is None or found.flow_range.name in self.declined else found


def within_reach(targets_pa: list[float], taken: Iterable[Taken]) -> list[float]:
    """Return the targets below what was reached where the fan did not come to its target."""
    for point in taken:
        if point.out_of_reach:
            targets_pa = [target for target in targets_pa if target < BELOW_REACH_SHARE * point.reached_pa]
    return targets_pa


def points(course: Course, targets_pa: list[float], turns_at: Iterable[float] = ()) -> Procedure:
    """Yield the points, the fan standing at the approach of the first; a zero-flow record before those in `turns_at`.

    Targets beyond the reach that a point shows are left out, what somebody wants again comes next.
    """
    remaining, records_before = list(targets_pa), set(turns_at)
    first = standing = True
    rested = False
    while True:
        wanted = yield from listen(course)
        if wanted:
            remaining = [*wanted, *remaining]
            yield SetTargets(course.signed(remaining))
        if not remaining:
            return
        target = remaining[0]
        settle = Settle(FROM_REST_S) if rested else Settle()
        rested = False
        if target in records_before and not standing:
            records_before.discard(target)
            yield from _zero_between(course)
            settle = Settle(FROM_REST_S)
        changed = yield from _suit_range(course, remaining)
        if changed:
            settle = Settle(FROM_REST_S)
        remaining.pop(0)
        standing = False
        point = yield from _point(course, target, settle)
        if point.out_of_reach:
            rested = True
            if (yield from _try_again(course, point)):
                remaining.insert(0, target)
                continue
        course.taken.append(point)
        if course.fitted is not None and course.proposal([target]) is not None:
            yield StrikeLast(f"outside flow range {course.fitted.name}")
            remaining.insert(0, target)
            continue
        remaining = yield from _those_to_come(course, point, remaining)
        if first:
            first = False
            for kind, text in _first_point(course, point, remaining):
                yield Mark(kind, text)


def _those_to_come(course: Course, point: Taken, targets_pa: list[float]) -> Generator[Step, StepResult, list[float]]:
    """Return the targets to come as a point leaves them: not beyond the reach, no gap too wide."""
    if point.out_of_reach and course.repeats:
        lowered = course.reachable(targets_pa)
        if lowered != targets_pa:
            text = (
                f"The fan reaches {point.reached_pa:.0f} Pa; the readings that are left are taken at {lowered[0]:g} Pa."
            )
            yield Mark("reach", text, notable=True)
            yield SetTargets(course.signed(lowered))
        return lowered
    if point.out_of_reach:
        targets_pa = respaced(within_reach(targets_pa, [point]), point.reached_pa, lowest_target_pa(course.before))
        yield Mark("reach", f"The fan reaches {point.reached_pa:.0f} Pa; higher targets were left out.", notable=True)
        yield SetTargets(course.signed(targets_pa))
    between = course.gap(point) if course.steered else None
    if between is not None:
        targets_pa = [between, *targets_pa]
        yield Mark("spacing", f"One point more, at {between:g} Pa: two stand further apart than the method allows.")
        yield SetTargets(course.signed(targets_pa))
    return targets_pa


def _try_again(course: Course, point: Taken) -> Generator[Step, StepResult, bool]:
    """Ask what a target out of reach means; return whether something was open and the point is taken once more."""
    if any(item.out_of_reach for item in course.taken) or course.tries >= MOST_TRIES:
        return False
    yield Checkpoint()
    text = (
        f"The pressure comes to {point.reached_pa:.0f} Pa; {point.target_pa:.0f} Pa was wanted. "
        "Is a door, window or damper open, or something before the fan? If not, the points go up to what it reaches, "
        "and the flow at 50 Pa is extrapolated."
    )
    answer = yield Ask("reach", text, (f"Take the points up to {point.reached_pa:.0f} Pa", SHUT_NOW))
    if answer != SHUT_NOW:
        return False
    course.tries += 1
    yield StrikeLast(TAKEN_AGAIN)
    return True


def listen(course: Course) -> Generator[Step, StepResult, tuple[float, ...]]:
    """Return the targets that somebody wants again; learn which range is fitted now."""
    heard = yield Listen()
    if not isinstance(heard, Heard):
        return ()
    if len(heard.fitted) == 1:
        course.fitted = heard.fitted[0]
    return heard.again_pa


def _point(course: Course, target_pa: float, settle: Settle) -> Generator[Step, StepResult, Taken]:
    """Yield the steps of one point, and return it."""
    plan, sign = course.plan, course.direction.sign
    yield Checkpoint()
    yield GoTo(sign * target_pa)
    settled = yield settle
    point = yield Average(plan.average_s, plan.longest_average_s, GOOD_ENOUGH_SHARE)
    assert isinstance(point, Point)
    reached_pa = sign * (point.envelope_pa - course.before.mean_pa)
    short = not settled and reached_pa < REACHED_SHARE * target_pa
    return Taken(target_pa, reached_pa, point.flow_m3_h, short)


def _suit_range(course: Course, targets_pa: list[float]) -> Generator[Step, StepResult, bool]:
    """Have another flow range fitted where the next target needs it; return whether it was."""
    found = course.proposal(targets_pa)
    if found is None or course.fitted is None:
        return False
    name, old = found.flow_range.name, course.fitted.name
    yield Checkpoint()
    yield StopFan()
    fitted, stay = f"Range {name} is fitted", f"Go on with range {old}"
    answer = yield Ask(FIT_RANGE, f"{found.sentence} Fit range {name} while the fan stands still.", (fitted, stay))
    if answer != fitted:
        course.declined.add(name)
        yield Mark(FIT_RANGE, f"{found.sentence} Range {name} was not fitted.", notable=True)
    else:
        yield FitRange(0, name)
        course.fitted = found.flow_range
    yield Checkpoint()
    yield Approach(course.direction.sign * targets_pa[0])
    return True


def _zero_between(course: Course) -> Procedure:
    """Yield the steps of a zero-flow record between two points."""
    yield Checkpoint()
    yield StopFan()
    yield from zero_again(course, "Cover the fan for a zero-flow record between the points.")


def zero_again(course: Course, cover: str) -> Procedure:
    """Yield the steps of a further zero-flow record with the fan at rest; `cover` asks a person to cover it."""
    if not course.shutter:
        yield Ask("cover-fan", cover, ("The fan is covered",))
    yield MeasureZero(WindowKind.ZERO_AFTER, course.plan.zero_s)
    if not course.shutter:
        yield Ask("uncover-fan", "Take the cover off the fan again for the next points.", ("The fan is open",))


def _first_point(course: Course, point: Taken, targets_pa: list[float]) -> list[tuple[str, str]]:
    """Return what the first point lets foresee: kind and text of remarks."""
    suits, flow, reached = "", point.flow_m3_h, point.reached_pa
    if course.fitted is not None:
        suits = range_doubt(course.fitted, flow, reached, targets_pa)
    tells = held_against(course.plan, course.outlook, flow, reached)
    return [item for item in (("range", suits), ("limit", tells)) if item[1]]
