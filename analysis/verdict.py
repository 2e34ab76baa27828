"""Verdicts: how probable it is that the true value is within a limit, and what would settle it where none can be told.

The rule is that of JCGM 106 (conformity by probability, from memory); from which probability on a limit counts as met
is our choice.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from analysis.bounds import above_zero
from analysis.records import Estimate, Improvement, Settling, UncertaintyPart
from analysis.say import Say, in_english
from analysis.student import t_multiplier, t_probability

MEETS, DOES_NOT_MEET, CANNOT_TELL = "meets", "does not meet", "cannot tell"
CONFORMITY = 0.95
"""Probability from which a limit counts as met, or as not met."""
MOST_TESTS = 20
"""More tests than this nobody makes to settle a verdict (our choice)."""

_ONE_SIDED = 2.0 * CONFORMITY - 1.0
REMEDIES = {
    "fit": "more points, or longer averages at each of them",
    "zero": "longer records of the zero-flow pressure",
    "zero-drift": "zero-flow pressure recorded between the points too",
    "wind": "a calmer hour, or more outdoor pressure taps",
    "gauge": "a pressure gauge with a better calibration",
    "flow-element": "a flow element with a better calibration",
    "method": "a method that converts to reference air by density and viscosity",
    "temperature": "temperatures measured through the whole test",
    "volume": "the volume measured anew",
    "envelope-area": "the envelope area measured anew",
    "floor-area": "the floor area measured anew",
}
"""What brings a part of the uncertainty down (common practice, no source)."""


def probability_within(estimate: Estimate, limit: float, dof: float = math.inf) -> float:
    """Return the probability that the true value is at most the limit.

    The logarithm is taken as distributed by Student's t with `dof` degrees of freedom, with the scale that the interval
    has on the side of the limit; an estimate that may be below 0 is taken so itself. Without an interval nothing is
    known: 0.5.
    """
    distance = _distance(estimate, limit, dof)
    return 0.5 if distance is None else t_probability(distance, dof)


def conformity(probability: float) -> str:
    """Return the three-way verdict of a probability."""
    if probability >= CONFORMITY:
        return MEETS
    return DOES_NOT_MEET if probability <= 1.0 - CONFORMITY else CANNOT_TELL


def settling(
    estimate: Estimate, limit: float, dof: float = math.inf, parts: Sequence[UncertaintyPart] = ()
) -> Settling | None:
    """Return what would settle the verdict, None where it is settled or where no interval says how far off it is.

    `parts` make up the interval, each independent of the others; without them all of it is taken as repeatable.
    """
    above_zero(limit, "limit")
    distance = _distance(estimate, limit, dof)
    if distance is None or conformity(t_probability(distance, dof)) != CANNOT_TELL:
        return None
    narrowing = abs(distance) / t_multiplier(dof, _ONE_SIDED)
    known = tuple(parts) or (UncertaintyPart("all", 1.0),)
    total = math.fsum(part.ln_u**2 for part in known)
    allowed = total * narrowing**2
    return Settling(narrowing, _tests(known, allowed), _improvements(known, total, allowed) if parts else ())


def settling_words(found: Settling, say: Say = in_english) -> str:
    """Return in one sentence what would settle a verdict."""
    if found.narrowing < 0.01:
        return say("The value is the limit itself: no narrower interval would tell on which side the building is.")
    share = say(
        "If the value stays, the interval has to shrink to {percent} % of its width",
        percent=f"{100 * found.narrowing:.0f}",
    )
    ways = [_remedy(item.part.id, say) for item in found.improvements[:2]]
    if found.tests is not None:
        ways.append(say("the mean of {count} tests like this one", count=found.tests))
    if not ways:
        return say("{share}; no single improvement would do.", share=share)
    return say("{share}: {ways}.", share=share, ways=say(", or ").join(ways))


def _remedy(part: str, say: Say) -> str:
    return say(REMEDIES[part]) if part in REMEDIES else say("a smaller uncertainty of {part}", part=part)


def _distance(estimate: Estimate, limit: float, dof: float) -> float | None:
    """Return how many scales the limit lies above the value; None without an interval."""
    edge = estimate.high if limit >= estimate.value else estimate.low
    if dof <= 0 or not (math.isfinite(estimate.low) and math.isfinite(estimate.high)):
        return None
    if estimate.low > 0 and limit > 0:
        gap, half = math.log(limit / estimate.value), abs(math.log(edge / estimate.value))
    else:
        gap, half = limit - estimate.value, abs(edge - estimate.value)
    if half == 0.0:
        return math.inf if gap >= 0 else -math.inf
    return gap / half * t_multiplier(dof)


def _tests(parts: Sequence[UncertaintyPart], allowed: float) -> int | None:
    """Return how many tests have a mean of the allowed variance; what does not repeat is not averaged away."""
    anew = math.fsum(part.ln_u**2 for part in parts if part.repeatable)
    left = allowed - math.fsum(part.ln_u**2 for part in parts if not part.repeatable)
    if left <= 0.0 or anew > MOST_TESTS * left:
        return None
    return max(math.ceil(anew / left), 2)


def _improvements(parts: Sequence[UncertaintyPart], total: float, allowed: float) -> tuple[Improvement, ...]:
    found = []
    for part in parts:
        needed = allowed - (total - part.ln_u**2)
        if needed > 0.0 and part.ln_u > 0.0:
            found.append(Improvement(part, math.sqrt(needed)))
    return tuple(sorted(found, key=lambda item: item.part.ln_u / item.ln_u_needed))
