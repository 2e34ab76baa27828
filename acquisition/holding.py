"""Holding a pressure for as long as somebody wants it: to find leaks, to seal them, to show what a house does."""

from __future__ import annotations

import math
from collections.abc import Generator
from dataclasses import replace

from acquisition.multipoint import DO_NOT_TEST, SAFETY, turn
from acquisition.plan import TestPlan
from acquisition.steps import (
    Approach,
    Ask,
    BeginRun,
    Checkpoint,
    EndRun,
    GoTo,
    Hold,
    Mark,
    MeasureZero,
    Procedure,
    SetTargets,
    Settle,
    Step,
    StepResult,
    StopFan,
    WindowKind,
    Wish,
)
from analysis.records import Direction

HOLD_ZERO_S = 30.0
HOLD_SETTLE_S = 45.0


def holding(plan: TestPlan, *, shutter: bool = False, turns: bool = False) -> Procedure:
    """Yield the steps that hold the first target of a plan until a wish ends it.

    A wish for another pressure is followed at once; one for the other direction stops the fan and begins a new run.
    """
    if plan.safety:
        yield Mark("safety", plan.safety)
    else:
        answer = yield SAFETY
        if answer == DO_NOT_TEST:
            yield Mark("not tested", "The safety questions were answered: do not test.")
            return
    direction, target_pa = plan.directions[0], plan.allowed_targets_pa[0]
    while True:
        yield BeginRun(direction)
        wish = yield from _run(plan, direction, target_pa, shutter=shutter)
        yield StopFan()
        yield EndRun()
        if wish.target_pa is None:
            return
        direction, target_pa = direction_of(wish.target_pa), abs(wish.target_pa)
        yield turn(direction, turns=turns)


def direction_of(target_pa: float) -> Direction:
    """Return the direction that a target with its sign asks for."""
    return Direction.DEPRESSURIZE if target_pa < 0 else Direction.PRESSURIZE


def allowed_pa(plan: TestPlan, target_pa: float, held_pa: float) -> float:
    """Return the target that a wish comes to within the limits of the safety answers; both with their sign."""
    if plan.pressurize_only and target_pa < 0:
        return held_pa
    if plan.cap_pa is not None and abs(target_pa) > plan.cap_pa:
        return math.copysign(plan.cap_pa, target_pa)
    return target_pa


def _run(plan: TestPlan, direction: Direction, target_pa: float, *, shutter: bool) -> Generator[Step, StepResult, Wish]:
    """Yield the steps of one direction; return the wish that ended it."""
    signed_pa = direction.sign * target_pa
    yield SetTargets((signed_pa,))
    yield Checkpoint()
    yield from _zero(plan, shutter=shutter)
    approached = False
    while True:
        wish: StepResult = None
        if not approached:
            yield Checkpoint()
            wish = yield Approach(signed_pa)
        if not isinstance(wish, Wish):
            approached = True
            yield Checkpoint()
            yield GoTo(signed_pa)
            wish = yield Settle(HOLD_SETTLE_S)
        if not isinstance(wish, Wish):
            wish = yield Hold()
        assert isinstance(wish, Wish)
        if wish.zero:
            yield Checkpoint()
            yield StopFan()
            yield from _zero(plan, shutter=shutter)
            continue
        if wish.target_pa is not None:
            within_pa = allowed_pa(plan, wish.target_pa, signed_pa)
            if within_pa != wish.target_pa:
                text = f"{wish.target_pa:g} Pa was asked for; the safety answers allow {within_pa:g} Pa."
                yield Mark("safety", text)
            wish = replace(wish, target_pa=within_pa)
        if wish.target_pa is None or direction_of(wish.target_pa) is not direction:
            return wish
        signed_pa = wish.target_pa
        yield SetTargets((signed_pa,))


def _zero(plan: TestPlan, *, shutter: bool) -> Generator[Step, StepResult, None]:
    """Yield the steps that read the zero-flow pressure with the fan closed."""
    if not shutter:
        yield Ask("cover-fan", "Cover the fan so that no air can pass through it.", ("The fan is covered",))
    yield MeasureZero(WindowKind.ZERO_BEFORE, min(plan.zero_s, HOLD_ZERO_S))
    if not shutter:
        text = "Take the cover off the fan. Keep all doors and windows to the outside closed."
        yield Ask("uncover-fan", text, ("The fan is open",))


def held_plan(plan: TestPlan, target_pa: float) -> TestPlan:
    """Return the plan that holds a pressure, its sign that of the direction."""
    return replace(plan, hold=True, directions=(direction_of(target_pa),), targets_pa=(abs(target_pa),))
