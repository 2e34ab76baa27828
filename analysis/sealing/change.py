"""What a seal brought: the mean flow after it against the mean before, judged by the house's own unrest.

A moment that a mark names is looked at once, thirty seconds later; before that, and where nobody says when, a
difference has to stand out more, because many looks find something by chance.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np

from analysis.hole import SHARP_EDGED, hole_cm2_per_m3_h
from analysis.records import Estimate
from analysis.sealing.levelled import Levelling, Trace
from analysis.sealing.unrest import Unrest, Windows
from analysis.student import COVERAGE, t_multiplier

BEFORE_S, AFTER_S = 60, 30
BEFORES_S = (30, 60, 120, 240)
"""How far back the flow before a known moment may be taken; in calm a longer mean is surer, in wind a near one."""
FEWEST_BEFORE_S, FEWEST_AFTER_S = 20, 8
LONGEST_AFTER_S = 120
LOOKS_IN_A_WATCH, EARLY_LOOKS = 2000, 400
"""Looks that nine minutes of watching amount to, in wind that grows and falls, and those before a known moment is old
enough; one each second, most of their seconds shared; tuned by simulation."""
WATCH_COVERAGE, EARLY_COVERAGE = (1.0 - (1.0 - COVERAGE) / looks for looks in (LOOKS_IN_A_WATCH, EARLY_LOOKS))
"""So that less than one quiet watch of nine minutes in twenty raises a false alarm (Bonferroni)."""
POWER = 0.95
TOO_WINDY_SHARE = 0.03
"""Above this share of the flow the wind hides what a seal usually brings (our choice)."""


class Sureness(StrEnum):
    """What can be said of a change."""

    SURE = "sure"
    NOT_SURE = "not sure"
    TOO_WINDY = "too windy to tell"


@dataclass(frozen=True, slots=True)
class Change:
    """A change of the flow at the reference pressure (m3/h): after less before, so that a seal brings a fall.

    `smallest_m3_h` is the least change that would be told now with a probability of 95 %.
    """

    before_m3_h: float
    after_m3_h: float
    difference_m3_h: Estimate
    smallest_m3_h: float
    sureness: Sureness
    after_s: int

    @property
    def share(self) -> Estimate:
        """The change as a share of the flow before."""
        return _scaled(self.difference_m3_h, 1.0 / self.before_m3_h)


@dataclass(frozen=True, slots=True)
class Doubts:
    """What else makes the size of a change uncertain, in a record of kept noise (95 %).

    `share` is a share of the change itself; `exponent` is how far the exponent may be off that levels a pressure which
    moved with the change, as it does where nobody sets the fan again.
    """

    share: float = 0.0
    exponent: float = 0.0


NO_DOUBTS = Doubts()


@dataclass(frozen=True, slots=True)
class Record:
    """A trace with the unrest that is left in it, and what else makes changes in it uncertain."""

    trace: Trace
    unrest: Unrest
    doubts: Doubts = NO_DOUBTS


@dataclass(frozen=True, slots=True)
class ChangeSizes:
    """The same change as areas and air changes; areas by the leakage line's exponent, so extrapolated."""

    ela4_cm2: Estimate
    eqla10_cm2: Estimate
    n50_per_h: Estimate | None


def change_at(
    trace: Trace,
    done_s: float,
    unrest: Unrest,
    *,
    started_s: float | None = None,
    now_s: float | None = None,
    not_before_s: float = -math.inf,
    further_m3_h: float = 0.0,
    doubts: Doubts = NO_DOUBTS,
) -> Change | None:
    """Return what the seal that was done at `done_s` brought, as far as it can be told; None while it is too early.

    The flow before is taken up to `started_s`, when the sealing began, and from `not_before_s` on, when the change
    before it was over. From `AFTER_S` on the moment is looked at as a known one. `further_m3_h` and `doubts` add to the
    interval.
    """
    end_s = min(trace.end_s if now_s is None else now_s, done_s + LONGEST_AFTER_S)
    start_s = done_s if started_s is None else min(started_s, done_s)
    before = trace.between(max(start_s - BEFORES_S[-1], not_before_s), start_s)
    after = trace.between(done_s, end_s)
    if len(before) < FEWEST_BEFORE_S or len(after) < FEWEST_AFTER_S:
        return None
    windows = best_windows(unrest, len(after), round(done_s - start_s), len(before))
    before = before[-windows.before_s :]
    coverage = COVERAGE if len(after) >= AFTER_S - 1 else EARLY_COVERAGE
    moved = _moved(trace.span(start_s - windows.before_s, start_s), trace.span(done_s, end_s))
    further_m3_h = math.hypot(further_m3_h, doubts.exponent * moved * float(before.mean()))
    return judged(float(before.mean()), float(after.mean()), windows, unrest, coverage, further_m3_h, doubts.share)


def change_in(records: Sequence[Record], look: Callable[[Record], Change | None]) -> Change | None:
    """Return what a look at the same moment in one or two records of it says together.

    The first record is plain. In the second something is taken off that calms it but may take or add a share of the
    change: it says whether there is one, and how large where its interval is the narrower. Where both contradict each
    other something else than a leak has moved, such as the mains of the fan, and the plain one counts.
    """
    plain = look(records[0])
    keen = look(records[1]) if len(records) > 1 else None
    if plain is None or keen is None:
        return plain
    one, other = plain.difference_m3_h, keen.difference_m3_h
    if abs(one.value - other.value) > math.hypot(one.half_width, other.half_width):
        return plain
    told = replace(plain, smallest_m3_h=keen.smallest_m3_h, sureness=keen.sureness)
    if other.half_width >= one.half_width:
        return told
    return replace(told, after_m3_h=plain.before_m3_h + other.value, difference_m3_h=other)


def _moved(before: Trace, after: Trace) -> float:
    """Return how much ln(pressure) changed between two spans, 0 where the pressure is not known."""
    if before.held_pa is None or after.held_pa is None:
        return 0.0
    one, other = (item[np.isfinite(item)] for item in (before.held_pa, after.held_pa))
    return abs(math.log(float(other.mean() / one.mean()))) if len(one) and len(other) else 0.0


def best_windows(unrest: Unrest, after_s: int = AFTER_S, gap_s: int = 0, longest_before_s: int = 10**6) -> Windows:
    """Return the windows whose difference wanders least in this house."""
    lengths = {min(length, longest_before_s) for length in BEFORES_S}
    return min((Windows(length, after_s, gap_s) for length in sorted(lengths)), key=unrest.sd_m3_h)


def judged(
    before_m3_h: float,
    after_m3_h: float,
    windows: Windows,
    unrest: Unrest,
    coverage: float,
    further_m3_h: float = 0.0,
    unsure_share: float = 0.0,
) -> Change:
    """Return the change between two means; `coverage` is the probability of a quiet house to stay below the limit.

    `further_m3_h` is what something else than the unrest adds to the interval (95 %), `unsure_share` a share of the
    change that is one: of what stands out from the unrest.
    """
    difference = after_m3_h - before_m3_h
    unrest_m3_h = unrest.limit_m3_h(windows, COVERAGE)
    half = math.hypot(unrest_m3_h, further_m3_h, unsure_share * max(abs(difference) - unrest_m3_h, 0.0))
    limit = math.hypot(unrest.limit_m3_h(windows, coverage), further_m3_h)
    smallest = math.hypot(smallest_m3_h(unrest, windows, coverage), further_m3_h)
    if abs(difference) > limit:
        sureness = Sureness.SURE
    elif smallest > TOO_WINDY_SHARE * before_m3_h:
        sureness = Sureness.TOO_WINDY
    else:
        sureness = Sureness.NOT_SURE
    interval = Estimate(difference, difference - half, difference + half)
    return Change(before_m3_h, after_m3_h, interval, smallest, sureness, windows.after_s)


def smallest_m3_h(unrest: Unrest, windows: Windows | None = None, coverage: float = COVERAGE) -> float:
    """Return the least change that is told from none with a probability of 95 %."""
    windows = windows or best_windows(unrest)
    one_sided = t_multiplier(unrest.dof(windows), 2.0 * POWER - 1.0) * unrest.sd_m3_h(windows)
    return unrest.limit_m3_h(windows, coverage) + one_sided


def sizes_of(difference_m3_h: Estimate, levelling: Levelling) -> ChangeSizes:
    """Return a change of flow as areas (effective at 4 Pa, Cd 1; equivalent at 10 Pa, Cd 0.611) and air changes."""
    four = (4.0 / levelling.reference_pa) ** levelling.exponent * hole_cm2_per_m3_h(4.0, 1.0)
    ten = (10.0 / levelling.reference_pa) ** levelling.exponent * hole_cm2_per_m3_h(10.0, SHARP_EDGED)
    at_50 = (50.0 / levelling.reference_pa) ** levelling.exponent
    volume = levelling.volume_m3
    return ChangeSizes(
        ela4_cm2=_scaled(difference_m3_h, four, extrapolated=True),
        eqla10_cm2=_scaled(difference_m3_h, ten, extrapolated=True),
        n50_per_h=None if volume is None else _scaled(difference_m3_h, at_50 / volume),
    )


def _scaled(estimate: Estimate, factor: float, *, extrapolated: bool = False) -> Estimate:
    return Estimate(estimate.value * factor, estimate.low * factor, estimate.high * factor, extrapolated)
