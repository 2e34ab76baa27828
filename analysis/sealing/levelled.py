"""Readings of a held house brought to one pressure, so that flows of different moments compare.

`q50(t) = (q - V/(1.2 p) dP/dt) (50/dp)**n`: what the air of the house stores is taken off, and the leakage line carries
the rest to the reference pressure. Means over seconds are what everything later works on.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import uniform_filter1d

from analysis.air import REFERENCE_DENSITY_KG_M3
from analysis.bounds import above_zero, within
from analysis.errors import InvalidInput
from analysis.flow import envelope_factor
from analysis.records import Direction

Floats = NDArray[np.float64]

USUAL_EXPONENT = 0.65
"""Mean of many houses (Sherman and Dickerhoff 1998, from memory); serves until a test has measured the house's own."""
USUAL_UNSURE = 0.16
"""How far the exponent of a house may lie from the usual one (95 %): twice its spread over houses (from memory)."""
STORAGE_EXPONENT = 1.2
"""Between slow (1.0) and fast (1.4) compression, as for the points of a test."""
NEAR_SHARE = 0.5
"""Readings further from the held pressure than this share of it are not levelled: the line was not measured there."""
FAN_SLOPE, FAN_SLOPE_UNSURE = -0.3, 0.4
"""Change of ln(flow) of a fan of kept speed for one of ln(pressure), and how far off that may be (our choice).

For `p = s**2 p0 - k q**2` it is `-p/(2 (s**2 p0 - p))`: -0.25 where the fan could do three times the pressure, -1 where
one and a half times.
"""
SLOPE_S = 9
"""Seconds over which the change of pressure is taken; about the time constant of the tightest houses."""
_SECONDS_PER_HOUR = 3600.0


@dataclass(frozen=True, slots=True)
class Levelling:
    """What brings readings to the reference pressure.

    `zero_pa` is the zero-flow pressure. `volume_m3` None leaves the storage in. `exponent_unsure` is how far the
    exponent may be off (95 %). Raises `InvalidInput` for what cannot be.
    """

    direction: Direction
    zero_pa: float
    volume_m3: float | None
    exponent: float = USUAL_EXPONENT
    barometric_pa: float = 101_325.0
    reference_pa: float = 50.0
    exponent_unsure: float = USUAL_UNSURE

    def __post_init__(self) -> None:
        """Check every number."""
        within(self.exponent, 0.3, 1.2, "exponent")
        above_zero(self.reference_pa, "reference_pa")
        above_zero(self.barometric_pa, "barometric_pa")
        if self.volume_m3 is not None:
            above_zero(self.volume_m3, "volume_m3")
        if not math.isfinite(self.zero_pa):
            raise InvalidInput("zero_pa", self.zero_pa, "a finite number is needed")

    @property
    def storage_m3_h_per_pa_s(self) -> float:
        """Flow into the air of the house for each Pa/s that its pressure rises."""
        return _SECONDS_PER_HOUR * (self.volume_m3 or 0.0) / (STORAGE_EXPONENT * self.barometric_pa)


@dataclass(frozen=True, slots=True)
class Trace:
    """Flow at the reference pressure (m3/h), one mean each second from `start_s` on; NaN where there is none.

    `apart_pa` (count, taps) is how far each outdoor tap stood from the mean of all: what the wind did at the walls.
    `held_pa` (count,) is the induced pressure, `fan_pa` (count,) what the fan felt besides it (`fan_apart_pa`), None
    where that is not known.
    """

    start_s: float
    flow_m3_h: Floats
    apart_pa: Floats
    held_pa: Floats | None = None
    fan_pa: Floats | None = None

    @property
    def end_s(self) -> float:
        """Where the last second ends."""
        return self.start_s + len(self.flow_m3_h)

    def span(self, start_s: float, end_s: float) -> Trace:
        """Return the seconds that lie wholly in a span."""
        first = min(max(math.ceil(start_s - self.start_s - 1e-9), 0), len(self.flow_m3_h))
        last = max(math.floor(end_s - self.start_s + 1e-9), first)
        held, fan = (None if item is None else item[first:last] for item in (self.held_pa, self.fan_pa))
        return Trace(self.start_s + first, self.flow_m3_h[first:last], self.apart_pa[first:last], held, fan)

    def between(self, start_s: float, end_s: float) -> Floats:
        """Return the flows (count,) of a span, without the seconds that hold nothing."""
        values = self.span(start_s, end_s).flow_m3_h
        return np.asarray(values[np.isfinite(values)])


def levelled_trace(
    times_s: Floats, taps_pa: Floats, flow_m3_h: Floats, levelling: Levelling, speed: Floats | None = None
) -> Trace:
    """Return the trace of readings taken at one moment each, times rising.

    `times_s` and `flow_m3_h` (`through_leaks`) are (count,), `taps_pa` is the envelope pressure at each outdoor tap
    (count, taps), `speed` (count,) that of the fan, 0 to 1, where it is known. The change of pressure is taken over
    several seconds: over a short while it is noise and gusts.
    """
    if not len(times_s):
        nothing = np.zeros(0)
        return Trace(0.0, nothing, np.zeros((0, taps_pa.shape[1])), nothing, None if speed is None else nothing)
    start_s = math.floor(float(times_s[0]))
    second = np.floor(times_s).astype(np.int64) - start_s
    taps = np.stack([_means(second, column) for column in taps_pa.T], axis=1)
    pressure = taps.mean(axis=1)
    flow = _means(second, flow_m3_h)
    held_pa = levelling.direction.sign * (pressure - levelling.zero_pa)
    ratio = held_pa / levelling.reference_pa
    near = np.abs(ratio - 1.0) <= NEAR_SHARE
    stored = levelling.storage_m3_h_per_pa_s * _slope(pressure)
    leaking = flow - levelling.direction.sign * stored
    at_reference = leaking * np.where(near, ratio, np.nan) ** -levelling.exponent
    fan = None if speed is None else fan_apart_pa(flow, held_pa, _means(second, speed), levelling.reference_pa)
    apart, held = np.asarray(taps - pressure[:, None]), np.where(near, held_pa, np.nan)
    return Trace(float(start_s), np.asarray(at_reference, np.float64), apart, np.asarray(held, np.float64), fan)


def fan_apart_pa(flow_m3_h: Floats, held_pa: Floats, speed: Floats, reference_pa: float) -> Floats:
    """Return how far the pressure that the fan works against stands from the induced pressure, but for a constant.

    By the fan laws (textbook of fans) flow over speed is a function of pressure over the square of the speed, whatever
    leaks: a seal moves along that curve, what the wind does at the fan or at the outdoor tap moves off it. So the fan
    is one more tap. All are (count,); NaN where the fan stands or blows back.
    """
    runs = (speed > 0.0) & (flow_m3_h > 0.0) & (held_pa > 0.0)
    flow, held, turns = (np.where(runs, item, np.nan) for item in (flow_m3_h, held_pa, speed))
    off = np.log(flow / turns) - FAN_SLOPE * np.log(held / reference_pa / turns**2)
    return np.asarray(off * reference_pa / FAN_SLOPE, np.float64)


def _slope(pressure: Floats) -> Floats:
    """Return how fast the pressure rises (Pa/s), 0 where its neighbours hold nothing."""
    if len(pressure) < 2:
        return np.zeros(len(pressure))
    steps = np.nan_to_num(np.gradient(pressure))
    return np.asarray(uniform_filter1d(steps, SLOPE_S, mode="nearest"), np.float64)


def through_leaks(
    fan_flow_m3_h: Floats, direction: Direction, indoor_kg_m3: float, outdoor_kg_m3: float, exponent: float
) -> Floats:
    """Return the flow through the leaks in reference air (count,) that a flow through the fan amounts to.

    Mass balance, and ISO 9972's `(rho_x/rho_0)**(1 - n)` for the air that enters the leaks (from memory). The air in
    the fan cools while the house is held: without it the flow would creep.
    """
    entering = outdoor_kg_m3 if direction is Direction.DEPRESSURIZE else indoor_kg_m3
    to_reference = (entering / REFERENCE_DENSITY_KG_M3) ** (1.0 - exponent)
    return np.asarray(fan_flow_m3_h * envelope_factor(direction, indoor_kg_m3, outdoor_kg_m3) * to_reference)


def differences(values: Floats, before_s: int, after_s: int) -> Floats:
    """Return the mean of the last seconds less that of those before, from the first full pair on; NaN is left out.

    `values` is (count,) or (count, columns), one row each second; so is what comes back.
    """
    ends = np.arange(before_s + after_s, len(values) + 1)
    zeros = np.zeros((1, *values.shape[1:]))
    sums = np.concatenate([zeros, np.cumsum(np.nan_to_num(values), axis=0)])
    counts = np.concatenate([zeros, np.cumsum(np.isfinite(values), axis=0)])

    def mean(first: NDArray[np.int64], last: NDArray[np.int64]) -> Floats:
        held = counts[last] - counts[first]
        return np.where(held > 0, (sums[last] - sums[first]) / np.maximum(held, 1), np.nan)

    middle = ends - after_s
    return np.asarray(mean(middle, ends) - mean(middle - before_s, middle))


def differences_within(stretches: Sequence[Floats], before_s: int, after_s: int) -> Floats:
    """Return the `differences` of several stretches (count,), none of which reaches from one into the next."""
    if not stretches:
        return np.zeros(0)
    found = differences(np.concatenate(stretches), before_s, after_s)
    number = np.repeat(np.arange(len(stretches)), [len(item) for item in stretches])
    last = number[before_s + after_s - 1 :]
    return np.asarray(found[number[: len(last)] == last])


def _means(second: NDArray[np.int64], values: Floats) -> Floats:
    """Return the mean of each second, NaN for one without a reading."""
    usable = np.isfinite(values)
    length = int(second[-1]) + 1
    count = np.bincount(second[usable], minlength=length)
    total = np.bincount(second[usable], values[usable], minlength=length)
    return np.where(count > 0, total / np.maximum(count, 1), np.nan)
