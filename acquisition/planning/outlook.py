"""What a test will know, said before its first point: expected interval, schedules side by side, doubts."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from acquisition.plan import SCHEDULES, TestPlan
from analysis.methods import method_of
from analysis.outlook import EXPONENT, Effort, Unrest, expected_half_width, kit_u, unrest
from analysis.records import ZeroFlow
from analysis.student import t_multiplier, t_probability

BETWEEN_POINTS_S = 12.0
"""Until the pressure stands at the next target; with the first approach and the stop this is the time that is not
averaged (measured on simulated houses)."""
AROUND_POINTS_S = 35.0
WIDEST_SHARE = 0.10
"""ISO 9972: in most calm cases a test is within 10 % (from memory). Beyond that an interval settles little."""
LIKELY = 0.5
MIDDLE_PA = 30.0
GOOD_ENOUGH_SHARE = 0.005
"""Standard error of the flow at a target up to which an averaging of open length ends."""
PAYS_SHARE = 0.75
"""A longer schedule is recommended where it brings the interval, instruments and all, to this share or less."""
ENOUGH_SHARE = 1.1
"""A shorter one where it widens it by no more than this."""


@dataclass(frozen=True, slots=True)
class Prospect:
    """What a schedule would give: half of the 95 % interval of q50 as a share of it, and minutes for a direction.

    `half_width` is what the readings hold, `with_kit` counts gauge and flow element too.
    """

    schedule: str
    half_width: float
    with_kit: float
    minutes: float


@dataclass(frozen=True, slots=True)
class Outlook:
    """What a test can be expected to know.

    `sentence` says it, `advice` which schedule pays, `doubts` why today may not be the day (none when all is well).
    """

    unrest: Unrest
    chosen: Prospect
    schedules: tuple[Prospect, ...]
    sentence: str
    advice: str
    doubts: tuple[str, ...] = ()


def foresee(plan: TestPlan, targets_pa: Sequence[float], before: ZeroFlow) -> Outlook:
    """Return the outlook of a test from its first zero-flow record; `targets_pa` are the magnitudes to be taken."""
    air = unrest(before)
    chosen = _prospect(plan, plan.schedule, targets_pa, air)
    others = tuple(_prospect(plan.on_schedule(name), name, targets_pa, air) for name in SCHEDULES)
    # Records between the points are offered, not recommended: they bring about what longer averages bring, and somebody
    # may have to cover the fan for each.
    proven = tuple(item for item in others if not SCHEDULES[item.schedule].zeros_between)
    return Outlook(
        unrest=air,
        chosen=chosen,
        schedules=others,
        sentence=_sentence(chosen),
        advice=_advice(chosen, proven),
        doubts=tuple(_doubts(plan, before, air, chosen)),
    )


def _prospect(plan: TestPlan, name: str, targets_pa: Sequence[float], air: Unrest) -> Prospect:
    zeros = 2 + plan.zeros_between
    average_s = _average_s(plan, air)
    effort = Effort(plan.zero_s, average_s, len(plan.directions), zeros)
    own = expected_half_width(air, targets_pa, effort)
    with_kit = math.hypot(own, t_multiplier(math.inf) * kit_u(plan.kit))
    points_s = len(targets_pa) * (average_s + BETWEEN_POINTS_S)
    return Prospect(name, own, with_kit, (zeros * plan.zero_s + points_s + AROUND_POINTS_S * (zeros - 1)) / 60.0)


def _average_s(plan: TestPlan, air: Unrest) -> float:
    """Return how long a point will be averaged: as long as a middle target needs where the plan leaves it open."""
    if plan.longest_average_s is None:
        return plan.average_s
    share = EXPONENT * air.sd_pa / MIDDLE_PA / GOOD_ENOUGH_SHARE
    return min(max(air.independent_s * share**2, plan.average_s), plan.longest_average_s)


def _sentence(chosen: Prospect) -> str:
    return (
        f"Expected before the points: the flow at 50 Pa to ±{percent(chosen.half_width)} by the readings, "
        f"±{percent(chosen.with_kit)} with gauge and flow element, in about {chosen.minutes:.0f} min a direction."
    )


def _advice(chosen: Prospect, others: Sequence[Prospect]) -> str:
    """Return which schedule pays, empty where the chosen one is right."""
    longer = [item for item in others if item.minutes > 1.15 * chosen.minutes]
    best = min(longer, key=lambda item: item.half_width, default=None)
    if best is not None and best.with_kit < PAYS_SHARE * chosen.with_kit:
        return f"The {best.schedule} schedule pays today: ±{percent(best.with_kit)} in {best.minutes:.0f} min."
    shorter = [item for item in others if item.minutes < 0.85 * chosen.minutes]
    enough = [item for item in shorter if item.with_kit <= ENOUGH_SHARE * chosen.with_kit]
    if enough:
        short = min(enough, key=lambda item: item.minutes)
        return f"The {short.schedule} schedule would do: ±{percent(short.with_kit)} in {short.minutes:.0f} min."
    return ""


def _doubts(plan: TestPlan, before: ZeroFlow, air: Unrest, chosen: Prospect) -> list[str]:
    found = []
    limit_pa = zero_limit_pa(plan.method)
    if limit_pa is not None:
        worst = max(
            abs(mean) for mean in (before.mean_pa, before.positive_mean_pa, before.negative_mean_pa) if mean is not None
        )
        likely = 1.0 - t_probability((limit_pa - worst) / (2.0 * air.error_pa(plan.zero_s)), math.inf)
        if worst > limit_pa:
            found.append(
                f"The zero-flow pressure is {worst:.1f} Pa and {method_of(plan.method).title} allows {limit_pa:g} Pa: "
                "the result will not be valid."
            )
        elif likely > LIKELY / 2:
            found.append(
                f"The zero-flow pressure ({worst:.1f} Pa) is near the {limit_pa:g} Pa that "
                f"{method_of(plan.method).title} allows: in this wind the closing record may well be beyond."
            )
    if chosen.with_kit > WIDEST_SHARE:
        held = f"a limit within {percent(chosen.with_kit)} of the result cannot be decided"
        found.append(f"The interval will be ±{percent(chosen.with_kit)}: {held}.")
    return found


def zero_limit_pa(method_id: str) -> float | None:
    """Return what the method allows the zero-flow pressure to be, None where it names no figure in Pa."""
    rules = {rule.id: rule for rule in method_of(method_id).requirements()}
    rule = rules.get("zero-flow-limit")
    return None if rule is None else rule.at_most


def held_against(plan: TestPlan, outlook: Outlook, flow_m3_h: float, pressure_pa: float) -> str:
    """Return in a sentence whether this test is likely to decide its limit, empty where it is or there is none.

    `flow_m3_h` at `pressure_pa` is the first point: what the house leaks about, before any fit.
    """
    if plan.limit is None or not plan.limits or plan.limits[0] != plan.limit or pressure_pa <= 0:
        return ""
    name, bound = plan.limit.quantity, plan.limit.value
    divisor = {"n50_per_h": plan.building.volume_m3, "qe50_m3_h_m2": plan.building.envelope_area_m2,
               "qf50_m3_h_m2": plan.building.floor_area_m2, "q50_m3_h": 1.0}.get(name)  # fmt: skip
    if not divisor or bound <= 0 or flow_m3_h <= 0:
        return ""
    guess = flow_m3_h * (50.0 / pressure_pa) ** 0.65 / divisor
    measures = {"n50_per_h": plan.kit.volume, "qe50_m3_h_m2": plan.kit.envelope_area,
                "qf50_m3_h_m2": plan.kit.floor_area}  # fmt: skip
    whole = math.hypot(outlook.chosen.with_kit, t_multiplier(math.inf) * measures.get(name, 0.0))
    off = abs(math.log(guess / bound))
    if off > whole:
        return ""
    return (
        f"The first point gives about {guess:.3g} and the limit is {bound:g}: with ±{percent(whole)} this test will "
        "probably not tell on which side the building is."
    )


def percent(share: float) -> str:
    """Return a share in percent with two figures, such as 0.52 % or 12 %."""
    value = 100.0 * share
    return f"{value:.2f} %" if value < 1 else f"{value:.1f} %" if value < 10 else f"{value:.0f} %"


def with_targets(outlook: Outlook, plan: TestPlan, targets_pa: Sequence[float], before: ZeroFlow) -> Outlook:
    """Return the outlook for the targets that the fan reaches, known after the first point; the doubts stay."""
    return replace(foresee(plan, targets_pa, before), doubts=outlook.doubts)
