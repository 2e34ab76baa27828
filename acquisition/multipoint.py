"""The multipoint procedure: zero, points, zero, in one direction or in both. A plain generator of steps."""

from __future__ import annotations

from collections.abc import Generator, Iterable
from dataclasses import dataclass

from acquisition.plan import FEWEST_POINTS, TestPlan, stations
from acquisition.planning.outlook import Outlook, foresee
from acquisition.planning.rounds import between_pays, rounds
from acquisition.planning.spacing import lowest_target_pa
from acquisition.points import Course, listen, points
from acquisition.steps import (
    Approach,
    Ask,
    BeginRun,
    CheckHoses,
    Checkpoint,
    EndRun,
    Foretell,
    Mark,
    MeasureZero,
    Procedure,
    SetTargets,
    Step,
    StepResult,
    StopFan,
    WindowKind,
)
from analysis.records import Direction, FlowRange, ZeroFlow

TEST_TODAY, NOT_TODAY = "Go on today", "End the test here"
COVER_BETWEEN, NOT_BETWEEN = "Cover it each time", "Leave these records out"
CHECK_AGAIN, ALL_THE_SAME = "It is mended: check again", "Go on all the same"
MOST_HOSE_CHECKS = 3
GO_ON, DO_NOT_TEST = "All of this is so", "Do not test"
SAFETY = Ask(
    id="safety",
    text=(
        "Before the fan starts: every flame is out and nothing can fire by itself; ashes are cold, removed or covered; "
        "no asbestos, mould or loose sheeting lies in the path of the air; everybody in the building knows of the test."
    ),
    choices=(GO_ON, DO_NOT_TEST),
    caution=(
        "The fan can draw flue gas into rooms and lift ceilings and sheeting. Local codes and licensed practice decide "
        "who may do this and how; this list does not replace them."
    ),
)


@dataclass(frozen=True, slots=True)
class Outfit:
    """What the fan of a rig can do, and its flow ranges.

    `shutter`: it closes by itself at rest, nobody has to cover it. `turns`: it changes direction by itself. `fitted` is
    the range in it: whether it suits the house is told from the first point; with `fits` another one of `ranges` can
    take its place in the middle. One that is not `steered` is turned by a person, who comes near a target, not to it.
    """

    shutter: bool = False
    turns: bool = False
    fitted: FlowRange | None = None
    ranges: tuple[FlowRange, ...] = ()
    fits: bool = False
    steered: bool = True


def multipoint(plan: TestPlan, outfit: Outfit) -> Procedure:
    """Yield the steps of a multipoint test."""
    if not (yield from safe(plan)):
        return
    yield from directions(plan, plan.directions, outfit)


def safe(plan: TestPlan) -> Generator[Step, StepResult, bool]:
    """Yield the safety questions, or the mark that they were answered; return whether a test may be made."""
    if plan.safety:
        yield Mark("safety", plan.safety)
        return True
    answer = yield SAFETY
    if answer == DO_NOT_TEST:
        yield Mark("not tested", "The safety questions were answered: do not test.")
        return False
    return True


def directions(plan: TestPlan, wanted: tuple[Direction, ...], outfit: Outfit, *, turn_first: bool = False) -> Procedure:
    """Yield the steps of one direction after the other, each from its beginning."""
    for index, direction in enumerate(wanted):
        if index or turn_first:
            yield turn(direction, turns=outfit.turns)
        yield BeginRun(direction)
        going_on = yield from _run(plan, direction, outfit, first=not index)
        yield EndRun()
        if not going_on:
            return


def _run(plan: TestPlan, direction: Direction, outfit: Outfit, *, first: bool) -> Generator[Step, StepResult, bool]:
    """Yield the steps of one direction; return whether the test goes on."""
    shutter = outfit.shutter
    yield Checkpoint()
    if not shutter:
        yield Ask("cover-fan", "Cover the fan so that no air can pass through it.", ("The fan is covered",))
    before = yield MeasureZero(WindowKind.ZERO_BEFORE, plan.zero_s)
    assert isinstance(before, ZeroFlow)
    allowed = plan.allowed_targets_pa
    targets = usable_targets(allowed, before)
    outlook = foresee(plan, targets, before)
    yield Foretell(outlook)
    if outlook.doubts and first:
        answer = yield Ask("outlook", f"{' '.join(outlook.doubts)} Go on today?", (TEST_TODAY, NOT_TODAY))
        if answer == NOT_TODAY:
            yield Mark("not tested", "The test was ended before the points: today is not the day.")
            return False
    if not shutter:
        text = "Take the cover off the fan. Keep all doors and windows to the outside closed."
        yield Ask("uncover-fan", text, ("The fan is open",))
    if allowed != plan.targets_pa:
        yield Mark("cap", f"The pressure is kept at or below {plan.cap_pa:g} Pa; higher targets were left out.")
    if targets != allowed:
        yield Mark("targets", f"The lowest target was raised to {targets[-1]:g} Pa: five times the zero-flow pressure.")
    between = yield from _between(plan, outlook, targets, shutter=shutter)
    parts = rounds(targets, between)
    fitting = outfit.ranges, outfit.fits, outfit.fitted, outfit.steered
    course = Course(plan, direction, before, outlook, shutter, *fitting)
    order = [target for part in parts for target in part]
    yield SetTargets(course.signed(order))
    if plan.hose_check:
        yield from _hoses()
    elif plan.hose_check_reason:
        yield Mark("hoses", f"The hoses were not checked before the points: {plan.hose_check_reason}.")
    yield from to_the_end(course, order, [part[0] for part in parts[1:]])
    return True


def to_the_end(course: Course, targets_pa: list[float], turns_at: Iterable[float] = ()) -> Procedure:
    """Yield the points and the closing zero-flow record, and both again while somebody wants a point once more."""
    while True:
        if targets_pa:
            yield Checkpoint()
            yield Approach(course.direction.sign * targets_pa[0])
            yield from points(course, targets_pa, turns_at)
        yield Checkpoint()
        yield StopFan()
        if not course.shutter:
            text = "Cover the fan again for the closing zero-flow pressure."
            yield Ask("cover-fan", text, ("The fan is covered",))
        yield MeasureZero(WindowKind.ZERO_AFTER, course.plan.zero_s)
        targets_pa, turns_at = list((yield from listen(course))), ()
        if not targets_pa:
            return
        if not course.shutter:
            yield Ask("uncover-fan", "Take the cover off the fan for the point once more.", ("The fan is open",))
        yield SetTargets(course.signed(targets_pa))


def _hoses() -> Procedure:
    """Yield the check of the hoses, again as often as somebody who mended something wants it, within reason."""
    doubt: StepResult = ""
    for _ in range(MOST_HOSE_CHECKS):
        yield Checkpoint()
        doubt = yield CheckHoses()
        if not isinstance(doubt, str) or not doubt:
            return
        yield StopFan()
        answer = yield Ask("hoses", doubt, (CHECK_AGAIN, ALL_THE_SAME))
        if answer == ALL_THE_SAME:
            break
    yield Mark("hoses", f"The test went on all the same after the check of the hoses. {doubt}")


def _between(
    plan: TestPlan, outlook: Outlook, targets: tuple[float, ...], *, shutter: bool
) -> Generator[Step, StepResult, int]:
    """Return how many zero-flow records are made between the points: none where the air is too calm for them to pay."""
    if not plan.zeros_between:
        return 0
    if not between_pays(plan, outlook.unrest, targets):
        yield Mark(
            "zeros-between", "Zero-flow records between the points would bring next to nothing today and are left out."
        )
        return 0
    if shutter:
        return plan.zeros_between
    text = (
        f"In this wind {plan.zeros_between} zero-flow records between the points pay. The fan stops for each, and "
        "somebody has to cover it and take the cover off again."
    )
    answer = yield Ask("zeros-between", text, (COVER_BETWEEN, NOT_BETWEEN))
    return plan.zeros_between if answer == COVER_BETWEEN else 0


def turn(direction: Direction, *, turns: bool) -> Ask:
    """Return what is asked of a person between two directions."""
    if turns:
        text = f"The fan turns by itself to {direction.value}. Look whether the outdoor hose lies out of its jet."
        return Ask("turn-fan", text, ("The hose lies well",))
    text = (
        f"Turn the fan round to {direction.value}. Lay the hoses for this direction and keep the outdoor end out of "
        "the fan's jet."
    )
    return Ask("turn-fan", text, ("The fan is turned",))


def usable_targets(targets_pa: tuple[float, ...], before: ZeroFlow) -> tuple[float, ...]:
    """Return the targets that the zero-flow pressure allows, the lowest raised to five times it where needed.

    Stations stay: their method names them.
    """
    if stations(targets_pa):
        return targets_pa
    floor = lowest_target_pa(before)
    top = max(targets_pa)
    kept = [target for target in targets_pa if target >= floor]
    if len(kept) == len(targets_pa):
        return targets_pa
    if floor < top and (not kept or min(kept) - floor > 2.0):
        kept.append(floor)
    if len(kept) < FEWEST_POINTS and floor < top:
        step = (top - floor) / (FEWEST_POINTS - 1)
        kept = [round(top - i * step, 1) for i in range(FEWEST_POINTS)]
    return tuple(kept) if kept else (top,)
