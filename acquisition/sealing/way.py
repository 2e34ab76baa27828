"""The way to the target of a stage while leaks are sealed: what is left, what could bring it, whether to go on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from acquisition.plan import TestPlan
from acquisition.sealing.hold import HoldLook
from acquisition.sealing.leaks import Drop, Leak, LeakStatus
from analysis.effective import QUANTITIES
from analysis.records import Direction, Estimate
from analysis.sealing.change import ChangeSizes, sizes_of
from analysis.sealing.levelled import Levelling
from analysis.sealing.parts import part_of
from analysis.sealing.remaining import OpenLeak, Remaining, Yield, guessed, remaining, yield_of

TARGET_PA = 50.0


def target_flow_m3_h(plan: TestPlan) -> float | None:
    """Return the flow at 50 Pa that the limit of the stage allows, None where it limits something else."""
    limit = plan.limit
    if limit is None or limit.quantity not in QUANTITIES:
        return None
    quantity = QUANTITIES[limit.quantity]
    divisor = 1.0 if quantity.divisor is None else getattr(plan.building, quantity.divisor)
    if quantity.pressure_pa != TARGET_PA or divisor is None:
        return None
    return float(limit.value * divisor / quantity.factor)


def at_50_pa(flow: Estimate, look: HoldLook) -> Estimate:
    """Return a flow at the reference pressure of a hold as one at 50 Pa."""
    factor = (TARGET_PA / look.levelling.reference_pa) ** look.levelling.exponent
    return Estimate(flow.value * factor, flow.low * factor, flow.high * factor, flow.extrapolated or factor != 1.0)


@dataclass(frozen=True, slots=True)
class Way:
    """Where a house stands on the way to its target, flows in m3/h at 50 Pa.

    `remaining` is None without a target or without a flow; `unsized` are leaks that nobody guessed the size of.
    """

    target_m3_h: float | None
    flow_m3_h: Estimate | None
    remaining: Remaining | None
    gone: Yield
    unsized: tuple[int, ...]

    @property
    def hours_to_go(self) -> float | None:
        """Hours of work that the rest takes at the pace so far, None where that cannot be told."""
        pace = self.gone.drop_per_hour_m3_h
        if self.remaining is None or pace is None or pace <= 0.0:
            return None
        return max(self.remaining.to_go_m3_h.value, 0.0) / pace

    @property
    def cost_to_go(self) -> float | None:
        """Cost of the rest at the price so far, None where that cannot be told."""
        price = self.gone.drop_per_cost_m3_h
        if self.remaining is None or price is None or price <= 0.0:
            return None
        return max(self.remaining.to_go_m3_h.value, 0.0) / price


def way_of(
    target_m3_h: float | None,
    flow_m3_h: Estimate | None,
    leaks: Mapping[int, Leak],
    drops: Mapping[int, Drop],
    exponent: float,
) -> Way:
    """Return where the house stands; drops of leaks that are sealed count as what went."""
    done = {number: leak for number, leak in leaks.items() if leak.status in (LeakStatus.SEALED, LeakStatus.VERIFIED)}
    sealed = tuple(done.values())
    gone = [_fall_at_50(drops[number], exponent) for number in done if number in drops]
    open_leaks = [
        OpenLeak(number, guessed(leak.size_guess_m3_h), part_of(leak.part).sealable and leak.status is LeakStatus.FOUND)
        for number, leak in leaks.items()
        if leak.size_guess_m3_h and leak.status in (LeakStatus.FOUND, LeakStatus.LEFT)
    ]
    left = None
    if target_m3_h is not None and flow_m3_h is not None:
        left = remaining(flow_m3_h, target_m3_h, open_leaks)
    unsized = (number for number, leak in leaks.items() if leak.status is LeakStatus.FOUND and not leak.size_guess_m3_h)
    return Way(
        target_m3_h,
        flow_m3_h,
        left,
        yield_of(gone, sum(leak.minutes or 0.0 for leak in sealed), sum(leak.cost or 0.0 for leak in sealed)),
        tuple(unsized),
    )


def sizes_of_drop(drop: Drop, exponent: float, volume_m3: float | None) -> ChangeSizes:
    """Return what sealing brought as areas and air changes, by the exponent of the house."""
    levelling = Levelling(Direction.DEPRESSURIZE, 0.0, volume_m3, exponent, reference_pa=drop.reference_pa)
    return sizes_of(drop.difference_m3_h, levelling)


def _fall_at_50(drop: Drop, exponent: float) -> Estimate:
    """Return how far the flow fell at 50 Pa, above 0 for a fall."""
    factor = (TARGET_PA / drop.reference_pa) ** exponent
    change = drop.difference_m3_h
    return Estimate(-change.value * factor, -change.high * factor, -change.low * factor)
