"""The multipoint procedure: zero, points, zero, in one direction or in both. A plain generator of steps."""

from __future__ import annotations

import math

from acquisition.plan import TestPlan
from acquisition.steps import (
    Approach,
    Ask,
    Average,
    BeginRun,
    Checkpoint,
    EndRun,
    GoTo,
    Mark,
    MeasureZero,
    Procedure,
    SetTargets,
    Settle,
    StopFan,
    WindowKind,
)
from analysis.records import Direction, Point, ZeroFlow

LOWEST_PA = 10.0
ZERO_MULTIPLE = 5.0
"""ISO 9972: the lowest pressure is at least 10 Pa and five times the zero-flow pressure (from memory)."""
MARGIN = 1.1
"""The zero-flow pressure after the points may be a little larger than the one before."""
FEWEST_POINTS = 5

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


def multipoint(plan: TestPlan, *, shutter: bool = False, turns: bool = False) -> Procedure:
    """Yield the steps of a multipoint test.

    `shutter`: the fan closes by itself at rest, nobody has to cover it. `turns`: the fan changes direction by itself.
    """
    answer = yield SAFETY
    if answer == DO_NOT_TEST:
        yield Mark("not tested", "The safety questions were answered: do not test.")
        return
    for index, direction in enumerate(plan.directions):
        if index:
            yield _turn(direction, turns=turns)
        yield BeginRun(direction)
        yield from _run(plan, direction, shutter=shutter)
        yield EndRun()


def _run(plan: TestPlan, direction: Direction, *, shutter: bool) -> Procedure:
    """Yield the steps of one direction."""
    yield Checkpoint()
    if not shutter:
        yield Ask("cover-fan", "Cover the fan so that no air can pass through it.", ("The fan is covered",))
    before = yield MeasureZero(WindowKind.ZERO_BEFORE, plan.zero_s)
    assert isinstance(before, ZeroFlow)
    if not shutter:
        text = "Take the cover off the fan. Keep all doors and windows to the outside closed."
        yield Ask("uncover-fan", text, ("The fan is open",))
    targets = usable_targets(plan.targets_pa, before)
    if targets != plan.targets_pa:
        yield Mark("targets", f"The lowest target was raised to {targets[-1]:g} Pa: five times the zero-flow pressure.")
    yield SetTargets(tuple(direction.sign * target for target in targets))
    yield Checkpoint()
    yield Approach(direction.sign * targets[0])
    yield from _points(targets, direction, before, plan.average_s)
    yield Checkpoint()
    yield StopFan()
    if not shutter:
        yield Ask("cover-fan", "Cover the fan again for the closing zero-flow pressure.", ("The fan is covered",))
    yield MeasureZero(WindowKind.ZERO_AFTER, plan.zero_s)


def _points(targets: tuple[float, ...], direction: Direction, before: ZeroFlow, average_s: float) -> Procedure:
    """Yield the points; targets beyond the reach that the first one showed are left out."""
    remaining = list(targets)
    while remaining:
        target = remaining.pop(0)
        yield Checkpoint()
        yield GoTo(direction.sign * target)
        settled = yield Settle()
        point = yield Average(average_s)
        assert isinstance(point, Point)
        reached = direction.sign * (point.envelope_pa - before.mean_pa)
        if not settled and reached < 0.95 * target:
            remaining = [lower for lower in remaining if lower < 0.97 * reached]
            reachable = tuple(direction.sign * lower for lower in remaining)
            yield Mark("reach", f"The fan reaches {reached:.0f} Pa; higher targets were left out.")
            yield SetTargets(reachable)


def _turn(direction: Direction, *, turns: bool) -> Ask:
    if turns:
        text = f"The fan turns by itself to {direction.value}. Look whether the outdoor hose lies out of its jet."
        return Ask("turn-fan", text, ("The hose lies well",))
    text = (
        f"Turn the fan round to {direction.value}. Lay the hoses for this direction and keep the outdoor end out of "
        "the fan's jet."
    )
    return Ask("turn-fan", text, ("The fan is turned",))


def usable_targets(targets_pa: tuple[float, ...], before: ZeroFlow) -> tuple[float, ...]:
    """Return the targets that the zero-flow pressure allows, the lowest raised to five times it where needed."""
    means = [before.mean_pa, before.positive_mean_pa or 0.0, before.negative_mean_pa or 0.0]
    floor = max(LOWEST_PA, math.ceil(MARGIN * ZERO_MULTIPLE * max(abs(mean) for mean in means) * 2) / 2)
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
