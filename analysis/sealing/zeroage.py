"""How far the zero-flow pressure may have moved since it was read, and flows put right once it is read again.

A held pressure is counted from the zero-flow pressure at its beginning. Hours later it is colder outdoors or the wind
has risen: the house is then held at another pressure than is thought, and its flow seems to change by `n dz/dp`.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np

from analysis.sealing.levelled import Floats, Levelling, Trace, differences
from analysis.sealing.unrest import MEDIAN_OF_SQUARES

GRAVITY_M_S2 = 9.81
USUAL_HEIGHT_M = 5.0
STACK_SHARE = 0.5
"""Of the stack pressure over the height of a house, what a gauge at one end sees: the neutral level is half way up."""
PER_HOUR_PA = 0.2
"""For what nothing shows: the gauge itself, the weather (our choice)."""
WIND_GAIN = 3.0
"""How much the zero-flow pressure moves with the wind for what its unrest moves; tuned on simulated houses."""
ROUGH_S = 10
OLD_S = 1800.0
FAR_PA = 0.5
"""From this age on, or for so much movement, it is to be read again (our choice)."""


class ZeroDoubt(StrEnum):
    """Why a zero-flow pressure is to be read again."""

    AGE = "age"
    TEMPERATURE = "temperature"
    WIND = "wind"


@dataclass(frozen=True, slots=True)
class ZeroAge:
    """How old a zero-flow pressure is, and how far it may have moved (95 %, Pa) by temperature and by wind."""

    seconds: float = 0.0
    temperature_pa: float = 0.0
    wind_pa: float = 0.0

    @property
    def drift_pa(self) -> float:
        """How far it may have moved altogether (95 %)."""
        return math.hypot(self.temperature_pa, self.wind_pa, PER_HOUR_PA * self.seconds / 3600.0)

    @property
    def doubts(self) -> tuple[ZeroDoubt, ...]:
        """What speaks for reading it again, the weightiest first; empty while it is good."""
        found = []
        if self.temperature_pa > FAR_PA:
            found.append((self.temperature_pa, ZeroDoubt.TEMPERATURE))
        if self.wind_pa > FAR_PA:
            found.append((self.wind_pa, ZeroDoubt.WIND))
        ordered = [doubt for _, doubt in sorted(found, reverse=True)]
        return (*ordered, ZeroDoubt.AGE) if self.seconds > OLD_S else tuple(ordered)


def stack_pa(height_m: float | None, indoor_kg_m3: float, outdoor_kg_m3: float) -> float:
    """Return the stack pressure at one end of a house: g h/2 (rho_out - rho_in), general building physics."""
    height = USUAL_HEIGHT_M if height_m is None else height_m
    return STACK_SHARE * GRAVITY_M_S2 * height * (outdoor_kg_m3 - indoor_kg_m3)


def roughness_pa(trace: Trace, levelling: Levelling) -> float | None:
    """Return how far means of ten seconds stand apart, as pressure of the held house; None of a short trace.

    The median of the squares counts: seals are few.
    """
    squares = np.square(differences(trace.flow_m3_h, ROUGH_S, ROUGH_S))
    squares = squares[np.isfinite(squares)]
    if len(squares) < 6 * ROUGH_S:
        return None
    apart = math.sqrt(float(np.median(squares)) / MEDIAN_OF_SQUARES)
    return apart * levelling.reference_pa / (levelling.exponent * float(np.nanmean(trace.flow_m3_h)))


def wind_moved_pa(then_pa: float | None, now_pa: float | None) -> float:
    """Return how far the wind may have moved the zero-flow pressure, by its roughness then and now."""
    return 0.0 if then_pa is None or now_pa is None else WIND_GAIN * abs(now_pa - then_pa)


def as_flow_m3_h(pressure_pa: float, flow_m3_h: float, levelling: Levelling, held_pa: float) -> float:
    """Return the flow that an error of the zero-flow pressure looks like: `n q dz/dp`."""
    return levelling.exponent * abs(flow_m3_h) * pressure_pa / held_pa


def put_right(
    trace: Trace, levelling: Levelling, held_pa: float, since_s: float, until_s: float, moved_pa: float
) -> Trace:
    """Return a trace as if its zero-flow pressure had moved evenly by `moved_pa` from one moment to the other."""
    middle_s = trace.start_s + np.arange(len(trace.flow_m3_h)) + 0.5
    share = np.clip((middle_s - since_s) / max(until_s - since_s, 1.0), 0.0, 1.0)
    true_pa = held_pa - levelling.direction.sign * moved_pa * share
    return replace(trace, flow_m3_h=trace.flow_m3_h * (true_pa / held_pa) ** -levelling.exponent)


def joined(older: Trace, newer: Trace) -> Trace:
    """Return two traces as one, with nothing in the seconds between them; the newer one counts where both have some."""
    older = older.span(older.start_s, newer.start_s)
    if not len(older.flow_m3_h):
        return newer
    gap = round(newer.start_s - older.end_s)

    def laid(first: Floats, last: Floats) -> Floats:
        return np.concatenate([first, np.full((gap, *last.shape[1:]), np.nan), last])

    def known(first: Floats | None, last: Floats | None) -> Floats | None:
        return None if first is None or last is None else laid(first, last)

    return Trace(
        older.start_s,
        laid(older.flow_m3_h, newer.flow_m3_h),
        laid(older.apart_pa, newer.apart_pa),
        known(older.held_pa, newer.held_pa),
        known(older.fan_pa, newer.fan_pa),
    )
