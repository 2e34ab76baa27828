"""Why both directions of a test differ: within their scatter, a soft membrane, a flap, or something that moved.

A membrane that bellies out opens or closes its leaks with the pressure: the exponents of both directions part in
opposite ways, and one of them leaves the usual range. A flap lets more through in one direction at like exponents.
Figures from simulated houses (pillowing of all leaks by 0.3: exponents 0.52 and 0.73, flows 1.8 apart); the bounds are
our choice.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from analysis.records import Direction, RunResult

USUAL = (0.5, 0.7)
"""Exponents of most houses."""
LEAST_RATIO = 1.05
"""Flows that differ by less are as alike as tests in both directions usually are (our choice)."""
LEAST_EXPONENT_STEP = 0.06


class Cause(StrEnum):
    """What the difference looks like; `words` say it."""

    NONE = "alike"
    MEMBRANE = "soft membrane"
    FLAP = "flap"

    @property
    def words(self) -> str:
        """Return a sentence of the trade."""
        match self:
            case Cause.NONE:
                return "Both directions leak alike."
            case Cause.MEMBRANE:
                return (
                    "The exponents part in opposite ways: the signature of a membrane or sheet that bellies and opens "
                    "or closes its leaks. Look for loose sheeting, fix it, or keep the pressure low."
                )
            case Cause.FLAP:
                return (
                    "One direction leaks more at a like exponent: a flap, damper or seal that opens one way, the "
                    "outdoor hose in the jet while the fan blew out, or something that changed between the runs. Look "
                    "at flaps, temporary seals and the hose, then repeat."
                )


@dataclass(frozen=True, slots=True)
class Asymmetry:
    """Flow at 50 Pa pressurizing over that depressurizing, the step of the exponent, and what it looks like."""

    ratio: float
    exponent_step: float
    cause: Cause


def asymmetry(runs: tuple[RunResult, ...]) -> Asymmetry | None:
    """Return how both directions differ, None where there are not two.

    The exponents have to differ by more than their intervals allow before a membrane is named.
    """
    by_way = {run.direction: run for run in runs}
    if len(by_way) < 2:
        return None
    out, into = by_way[Direction.DEPRESSURIZE], by_way[Direction.PRESSURIZE]
    ratio = into.q50_m3_h.value / out.q50_m3_h.value
    step = into.n.value - out.n.value
    unsure = math.hypot(into.n.half_width, out.n.half_width)
    unusual = any(not USUAL[0] <= run.n.value <= USUAL[1] for run in (out, into))
    if abs(step) > max(LEAST_EXPONENT_STEP, unsure) and unusual:
        cause = Cause.MEMBRANE
    elif max(ratio, 1.0 / ratio) > LEAST_RATIO:
        cause = Cause.FLAP
    else:
        cause = Cause.NONE
    return Asymmetry(ratio, step, cause)
