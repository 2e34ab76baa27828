"""Check functions that several methods share: each measures one thing on a run and holds it against a requirement."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from analysis.methods.facts import RunFacts
from analysis.methods.requirement import Requirement
from analysis.records import Check
from analysis.zeroflow import signed_means_pa

Measure = Callable[[RunFacts, Requirement], Check]

STILL_TO_COME = "still to come"
_NO_ZERO = "there is no zero-flow record"


def zero_before(facts: RunFacts, rule: Requirement) -> Check:
    """Is there a zero-flow record before the points? It cannot be made up for."""
    zero = facts.run.zero_before
    if zero is None:
        return rule.check(None, ok=False, text=f"{rule.text}: not recorded")
    return rule.check(zero.mean_pa, ok=True)


def zero_after(facts: RunFacts, rule: Requirement) -> Check:
    """Is there a zero-flow record after the points?"""
    zero = facts.run.zero_after
    return rule.unknown(STILL_TO_COME) if zero is None else rule.check(zero.mean_pa, ok=True)


def zero_count(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the smaller number of readings in a zero-flow record against the requirement."""
    counts = [zero.count for zero in facts.zeros]
    return rule.judge(min(counts)) if counts else rule.unknown(_NO_ZERO)


def zero_seconds(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the shorter zero-flow record against the requirement."""
    if not facts.zeros:
        return rule.unknown(_NO_ZERO)
    known = [zero.seconds for zero in facts.zeros if zero.seconds is not None]
    shortest = rule.judge(min(known)) if known else None
    if shortest is not None and (shortest.ok is False or len(known) == len(facts.zeros)):
        return shortest
    return rule.unknown("how long the readings took is not given")


def zero_within(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the means of positive and of negative readings, before and after, against the requirement.

    Where a record holds nothing but its mean, that alone can break the limit but not keep it.
    """
    if not facts.zeros:
        return rule.unknown(_NO_ZERO)
    means = [mean for zero in facts.zeros for mean in (*signed_means_pa(zero), zero.mean_pa)]
    farthest = rule.judge(max(means, key=abs))
    if farthest.ok and not all(signed_means_pa(zero) for zero in facts.zeros):
        return rule.unknown("the means of the positive and of the negative readings are not given", farthest.value)
    return farthest


def point_count(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the number of points against the requirement; while the run is open, more may come."""
    count = len(facts.pressures_pa)
    check = rule.judge(count)
    return rule.unknown(f"{count} so far", count) if not check.ok and facts.open else check


def point_spacing(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the largest step between neighbouring induced pressures against the requirement."""
    ordered = sorted(facts.pressures_pa)
    gap = max(high - low for low, high in pairwise(ordered))
    check = rule.judge(gap)
    return rule.unknown(f"{gap:.1f} Pa so far", gap) if not check.ok and facts.open else check


def lowest_pressure(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the lowest induced pressure against the fixed floor and a multiple of the zero-flow pressure.

    The zero-flow pressure that counts is the largest of the means of positive and of negative readings.
    """
    lowest = min(facts.pressures_pa)
    means = [abs(mean) for zero in facts.zeros for mean in (*signed_means_pa(zero), zero.mean_pa)]
    floor = max([rule.at_least or 0.0, *(rule.numbers["zero_multiple"] * mean for mean in means)])
    check = rule.judge(lowest, at_least=floor)
    return check if means or not check.ok else rule.unknown(_NO_ZERO, lowest, floor)


def highest_pressure(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the highest induced pressure against the requirement; a lower one is allowed with a statement."""
    highest = max(facts.pressures_pa)
    check = rule.judge(highest)
    floor = rule.numbers["with_statement"]
    if check.ok:
        return check
    if facts.open:
        return rule.unknown(f"{highest:.1f} Pa so far", highest)
    if highest >= floor:
        text = f"{rule.text}, or {floor:g} Pa in a large building if the report says why: it has to say so here"
        return rule.judge(highest, at_least=floor, text=text)
    return check


def exponent(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the flow exponent against the requirement."""
    return rule.judge(facts.line.n)


def determination(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the coefficient of determination (of ln q on ln dp) against the requirement."""
    return rule.judge(facts.line.r2)


def temperature_height(facts: RunFacts, rule: Requirement) -> Check:
    """Hold temperature difference times height of the building against the requirement."""
    height = facts.building.height_m
    if height is None:
        return rule.unknown("the height of the building is not given")
    return rule.judge(abs(facts.run.air.indoor_c - facts.run.air.outdoor_c) * height)


def wind(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the wind against the limit near the ground; between that and the one at a station it cannot be told."""
    speed = facts.run.air.wind_m_s
    if speed is None:
        return rule.unknown("the wind speed is not given")
    station = rule.numbers["at_station"]
    check = rule.judge(speed)
    if not check.ok and speed <= station:
        return rule.unknown(f"a reading from a weather station may be up to {station:g} m/s", speed)
    return check
