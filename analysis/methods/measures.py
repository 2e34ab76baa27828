"""Check functions that several methods share: each measures one thing on a run and holds it against a requirement."""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise

from analysis.methods.facts import RunFacts
from analysis.methods.requirement import Requirement
from analysis.powerlaw import ln_flow_variance
from analysis.records import Check, Direction
from analysis.student import t_multiplier
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


def both_directions(facts: RunFacts, rule: Requirement) -> Check:
    """Is there a run in each direction?"""
    count = len(facts.directions)
    check = rule.judge(count)
    return rule.unknown(f"{count} so far", count) if not check.ok and facts.open else check


def only_depressurized(facts: RunFacts, rule: Requirement) -> Check:
    """Was the building depressurized?"""
    return rule.check(None, ok=facts.run.direction is Direction.DEPRESSURIZE)


def top_pressure(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the highest induced pressure against the requirement, which leaves no way out."""
    highest = max(facts.pressures_pa)
    check = rule.judge(highest)
    return rule.unknown(f"{highest:.1f} Pa so far", highest) if not check.ok and facts.open else check


def bottom_pressure(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the lowest induced pressure against the requirement alone."""
    lowest = min(facts.pressures_pa)
    check = rule.judge(lowest)
    wait = facts.open and rule.at_most is not None and lowest > rule.at_most
    return rule.unknown(f"{lowest:.1f} Pa so far", lowest) if not check.ok and wait else check


def point_seconds(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the shortest average against the requirement."""
    known = [point.seconds for point in facts.run.points if point.seconds is not None]
    shortest = rule.judge(min(known)) if known else None
    if shortest is not None and (shortest.ok is False or len(known) == len(facts.run.points)):
        return shortest
    return rule.unknown("how long each point was averaged is not given")


def near_pressure(facts: RunFacts, rule: Requirement) -> Check:
    """Hold every induced pressure against the requirement: the one that lies farthest from its middle counts."""
    low, high = rule.at_least or 0.0, rule.at_most or 0.0
    return rule.judge(max(facts.pressures_pa, key=lambda pressure: abs(pressure - (low + high) / 2.0)))


def near_or_highest(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the induced pressure against its band; a lower one passes as the highest that the fan reached."""
    check = near_pressure(facts, rule)
    floor, pressure = rule.numbers["fallback"], min(facts.pressures_pa)
    if check.ok or not floor <= pressure < (rule.at_least or 0.0):
        return check
    text = f"{rule.text}: {pressure:.1f} Pa counts only if the fan did not reach more, which has to be said"
    return rule.judge(pressure, at_least=floor, text=text)


def station_readings(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the smaller number of readings at one of two stations against the requirement."""
    ordered = sorted(facts.pressures_pa)
    steps = [high / low for low, high in pairwise(ordered)]
    cut = steps.index(max(steps)) + 1 if steps else len(ordered)
    count = min(cut, len(ordered) - cut)
    check = rule.judge(count)
    return rule.unknown(f"{count} so far", count) if not check.ok and facts.open else check


def correlation(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the correlation coefficient of ln q on ln dp against the requirement."""
    return rule.judge(math.sqrt(facts.line.r2))


def flow_error(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the error of the flow at a pressure, in percent, against the requirement.

    `numbers` say at which `pressure_pa`, and with `interval` = 1 that half of the 95 % interval is meant instead of the
    standard error.
    """
    variance = ln_flow_variance(facts.line, rule.numbers["pressure_pa"])
    if not math.isfinite(variance):
        return rule.unknown("two points leave no scatter to tell it")
    wide = t_multiplier(facts.line.dof) if rule.numbers.get("interval") else 1.0
    return rule.judge(100.0 * math.expm1(wide * math.sqrt(variance)))


def zero_share(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the zero-flow pressure, in percent of the lowest induced pressure, against the requirement."""
    if not facts.zeros:
        return rule.unknown(_NO_ZERO)
    largest = max(abs(zero.mean_pa) for zero in facts.zeros)
    return rule.judge(100.0 * largest / min(facts.pressures_pa))


def outdoor_air(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the outdoor temperature against the requirement."""
    return rule.judge(facts.run.air.outdoor_c)


def wind_plain(facts: RunFacts, rule: Requirement) -> Check:
    """Hold the wind against the requirement."""
    speed = facts.run.air.wind_m_s
    return rule.unknown("the wind speed is not given") if speed is None else rule.judge(speed)
