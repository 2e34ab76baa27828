"""The procedure of a test that goes on after it was cut short: what has to be looked at again, then the rest of it."""

from __future__ import annotations

from datetime import datetime

from acquisition.multipoint import Outfit, directions, safe, to_the_end, turn, usable_targets
from acquisition.plan import TestPlan
from acquisition.planning.outlook import foresee
from acquisition.planning.rounds import rounds
from acquisition.points import Course, zero_again
from acquisition.repair import LONG_GAP_S
from acquisition.sleep import lasting_words
from acquisition.standing import Standing
from acquisition.steps import Ask, BeginRun, Checkpoint, EndRun, FitRange, Mark, Procedure, SetTargets, StopFan

AS_BEFORE, ANEW = "All is as it was", "Begin this direction again"


def resuming(plan: TestPlan, standing: Standing, now: datetime, outfit: Outfit) -> Procedure:
    """Yield what is left of an interrupted test.

    The safety questions are asked again unless their answers still count; a person looks at the set-up, and says which
    flow range is fitted where record and rig differ. After a long gap the zero-flow pressure is read once more.
    """
    gap_s = max((now - standing.since).total_seconds(), 0.0)
    if not (yield from safe(plan)):
        return
    direction = standing.direction
    if direction is None:
        yield Mark("time-gap", _gap_words(standing, gap_s), notable=True)
        yield from directions(plan, standing.following, outfit, turn_first=True)
        return
    fitted = outfit.fitted.name if outfit.fitted is not None else ""
    answer = yield Ask("set-up-again", _look_again(standing, gap_s, outfit), (AS_BEFORE, ANEW))
    if answer == ANEW or standing.before is None:
        yield from directions(plan, (direction, *standing.following), outfit)
        return
    was = standing.fitted[0]
    if outfit.fitted is not None and len(standing.fitted) == 1 and fitted != was:
        text = f"Flow range {was} was fitted last; the rig now says {fitted}. Which one is fitted?"
        fitted = str((yield Ask("which-range", text, (fitted, was))))
        yield FitRange(0, fitted)
    yield BeginRun(direction, continues=True)
    yield Mark("time-gap", _gap_words(standing, gap_s), notable=True)
    yield from _rest_of(plan, standing, gap_s, outfit, fitted)
    yield EndRun()
    if standing.following:
        yield turn(standing.following[0], turns=outfit.turns)
        yield from directions(plan, standing.following, outfit)


def _rest_of(plan: TestPlan, standing: Standing, gap_s: float, outfit: Outfit, fitted: str) -> Procedure:
    """Yield what is left of the direction that was cut short."""
    assert standing.direction is not None
    assert standing.before is not None
    targets = usable_targets(plan.allowed_targets_pa, standing.before)
    course = Course(
        plan=plan,
        direction=standing.direction,
        before=standing.before,
        outlook=foresee(plan, targets, standing.before),
        shutter=outfit.shutter,
        ranges=outfit.ranges,
        fits=outfit.fits,
        fitted=next((item for item in outfit.ranges if item.name == fitted), outfit.fitted),
        steered=outfit.steered,
        taken=list(standing.taken),
    )
    left = course.left_of([target for part in rounds(targets, plan.zeros_between) for target in part])
    yield SetTargets(course.signed(left))
    if gap_s > LONG_GAP_S and left:
        yield Checkpoint()
        yield StopFan()
        yield from zero_again(course, "Cover the fan: after such a gap the zero-flow pressure is read once more.")
    yield from to_the_end(course, left)


def _look_again(standing: Standing, gap_s: float, outfit: Outfit) -> str:
    assert standing.direction is not None
    ranges = ", ".join(standing.fitted)
    fitted = f", flow range {ranges} fitted" if outfit.ranges else ""
    return (
        f"{_gap_words(standing, gap_s)} Look again: windows and outside doors closed, seals in place, hoses where they "
        f"were, the fan set to {standing.direction.value}{fitted}. If anything is not, put it right or begin again."
    )


def _gap_words(standing: Standing, gap_s: float) -> str:
    return f"The test was interrupted with {standing.words}; nothing was recorded for {lasting_words(gap_s)}."
