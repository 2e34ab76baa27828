"""What is left to a target: how much has to go, what the leaks found could bring, and where sealing ends."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from analysis.bounds import above_zero, not_negative
from analysis.records import Estimate

GUESS_FACTOR = 3.0
"""A size guessed by hand or fog lies within this factor of the true one, 19 times in 20 (our choice)."""


@dataclass(frozen=True, slots=True)
class OpenLeak:
    """A leak that is not sealed yet: its number, and the flow at the reference pressure that it may bring (m3/h)."""

    number: int
    flow_m3_h: Estimate
    sealable: bool = True


@dataclass(frozen=True, slots=True)
class Yield:
    """What was sealed so far: the flow that went (m3/h), the minutes it took and what it cost."""

    drop_m3_h: Estimate
    minutes: float
    cost: float

    @property
    def drop_per_hour_m3_h(self) -> float | None:
        """Flow that went in each hour of work, None before any."""
        return 60.0 * self.drop_m3_h.value / self.minutes if self.minutes > 0.0 else None

    @property
    def drop_per_cost_m3_h(self) -> float | None:
        """Flow that went for each unit of money, None where nothing was paid."""
        return self.drop_m3_h.value / self.cost if self.cost > 0.0 else None


@dataclass(frozen=True, slots=True)
class Remaining:
    """The way to a target, all flows at the reference pressure in m3/h.

    `to_go` is below 0 where the target is met. `listed` is what all sealable leaks of the list bring together, and
    `chosen` the fewest of them, largest first, whose sum is expected to reach it; `reachable` says whether one is.
    `floor` is what stays when all of the list is sealed; `beyond_sealing` the part of it that no sealing reaches.
    """

    to_go_m3_h: Estimate
    listed_m3_h: Estimate
    chosen: tuple[int, ...]
    chosen_m3_h: Estimate
    reachable: bool
    floor_m3_h: Estimate
    beyond_sealing_m3_h: Estimate


def guessed(flow_m3_h: float) -> Estimate:
    """Return a guessed size with its wide interval."""
    above_zero(flow_m3_h, "size_guess_m3_h")
    return Estimate(flow_m3_h, flow_m3_h / GUESS_FACTOR, flow_m3_h * GUESS_FACTOR)


def together(parts: Sequence[Estimate]) -> Estimate:
    """Return the sum of independent estimates; each side of the interval adds in quadrature (JCGM 100 5.1)."""
    value = math.fsum(part.value for part in parts)
    low = math.hypot(*(part.value - part.low for part in parts)) if parts else 0.0
    high = math.hypot(*(part.high - part.value for part in parts)) if parts else 0.0
    return Estimate(value, value - low, value + high)


def yield_of(drops_m3_h: Sequence[Estimate], minutes: float, cost: float) -> Yield:
    """Return what sealing brought; a drop is above 0 where the flow fell. Raises `InvalidInput`."""
    return Yield(together(drops_m3_h), not_negative(minutes, "minutes"), not_negative(cost, "cost"))


def remaining(flow_m3_h: Estimate, target_m3_h: float, leaks: Sequence[OpenLeak]) -> Remaining:
    """Return the way from the flow now to a target; raises `InvalidInput` for a target that is not above 0."""
    above_zero(target_m3_h, "target_m3_h")
    to_go = Estimate(flow_m3_h.value - target_m3_h, flow_m3_h.low - target_m3_h, flow_m3_h.high - target_m3_h)
    sealable = sorted((leak for leak in leaks if leak.sealable), key=lambda leak: (-leak.flow_m3_h.value, leak.number))
    listed = together([leak.flow_m3_h for leak in sealable])
    chosen: list[OpenLeak] = []
    for leak in sealable:
        if together([item.flow_m3_h for item in chosen]).value >= to_go.value:
            break
        chosen.append(leak)
    bring = together([leak.flow_m3_h for leak in chosen])
    fixed = together([leak.flow_m3_h for leak in leaks if not leak.sealable])
    return Remaining(
        to_go_m3_h=to_go,
        listed_m3_h=listed,
        chosen=tuple(leak.number for leak in chosen),
        chosen_m3_h=bring,
        reachable=bring.value >= to_go.value,
        floor_m3_h=_less(flow_m3_h, listed),
        beyond_sealing_m3_h=fixed,
    )


def _less(flow: Estimate, part: Estimate) -> Estimate:
    """Return a flow without a part of it, none of it below 0."""
    value = flow.value - part.value
    low = value - math.hypot(flow.value - flow.low, part.high - part.value)
    high = value + math.hypot(flow.high - flow.value, part.value - part.low)
    return Estimate(max(value, 0.0), max(low, 0.0), max(high, 0.0))
