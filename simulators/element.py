"""The flow element: five ranges of our own demonstration sheet (invented), and the turbulence of its signal."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from simulators.air import REFERENCE_DENSITY_KG_M3, FloatArray
from simulators.fan import CURVE_B, CURVE_K, SHUT_OFF_PA
from simulators.noise import Noise

LOWEST_PA = 8.0
HIGHEST_PA = 250.0
TURBULENCE = 0.012
TURBULENCE_S = 0.3
OBSTRUCTION_LOSS = 150.0
OBSTRUCTION_EXCESS = 0.3
DESIGN_PA = 60.0
"""Against this pressure the fan at full speed gives the top flow of each range."""


@dataclass(frozen=True, slots=True)
class ElementRange:
    """A flow range: `Q = coefficient * dp**exponent`, m3/s in reference air, from `LOWEST_PA` to `HIGHEST_PA`."""

    name: str
    top_m3_s: float
    exponent: float

    @property
    def coefficient(self) -> float:
        """m3/s at 1 Pa."""
        return float(self.top_m3_s / HIGHEST_PA**self.exponent)

    @property
    def loss(self) -> float:
        """What its plate adds to the fan curve, Pa/(m3/s)2, so that the fan's full speed is the end of the range."""
        free = SHUT_OFF_PA - DESIGN_PA - CURVE_B * self.top_m3_s
        return max(free / self.top_m3_s**2 - CURVE_K, 0.0)


RANGES = (
    ElementRange("wide", 2.2, 0.500),
    ElementRange("middle", 0.80, 0.498),
    ElementRange("narrow", 0.30, 0.502),
    ElementRange("slim", 0.10, 0.505),
    ElementRange("trickle", 0.035, 0.510),
)


def range_named(name: str) -> ElementRange:
    """Return a range; an unknown name raises `ValueError` that lists those there are."""
    for item in RANGES:
        if item.name == name:
            return item
    raise ValueError(f"flow range is {name!r}: one of these is needed: {', '.join(item.name for item in RANGES)}")


def _opening(fitted: ElementRange) -> float:
    """Return what the opening of a fan with its plate lets through at a pressure of 1 Pa across both, m3/s."""
    return float((fitted.loss + CURVE_K) ** -0.5)


class FlowElement:
    """The fitted range of each fan, and the pressure that its flow makes."""

    def __init__(self, fitted: Sequence[str], rng: np.random.Generator, calibration: FloatArray | float = 1.0) -> None:
        """Fit a range to each fan. `calibration` is true over stated coefficient, one for all or one each."""
        self._calibration = calibration
        self._unrest: FloatArray = rng.standard_normal(len(fitted))
        self._noise = Noise(rng, len(fitted))
        self._clear = 1.0
        self._fitted_ranges = [range_named(name) for name in fitted]
        self.fit(fitted)

    def fit(self, fitted: Sequence[str], share: float = 1.0) -> None:
        """Change the ranges, or be so far on the way to them: the opening of the plate grows or shrinks evenly."""
        before, after = self._fitted_ranges, [range_named(name) for name in fitted]
        if share >= 1.0:
            self._fitted_ranges = before = after
        opening, coefficient = (
            (1.0 - share) * np.array([of(item) for item in before]) + share * np.array([of(item) for item in after])
            for of in (_opening, lambda item: item.coefficient)
        )
        self._plate_loss = 1.0 / opening**2 - CURVE_K
        self._coefficient = coefficient * self._calibration
        self._power = 1.0 / np.array([item.exponent for item in after])
        self.obstruct(self._clear)

    @property
    def fitted(self) -> tuple[str, ...]:
        """The range of each fan; one that is being changed counts until another is fitted."""
        return tuple(item.name for item in self._fitted_ranges)

    def obstruct(self, clear: float) -> None:
        """Leave only a part of the intake clear (1: all): more loss, and a disturbed flow that reads too high."""
        self._clear = clear
        self.loss: FloatArray = self._plate_loss / clear**2 + OBSTRUCTION_LOSS * (1.0 / clear - 1.0)

    def pressure(self, flow_m3_s: FloatArray, density: FloatArray) -> FloatArray:
        """Return the mean pressure in Pa that a flow of this density makes; backwards is negative."""
        disturbed = 1.0 + OBSTRUCTION_EXCESS * (1.0 - self._clear)
        reference = np.abs(flow_m3_s) * disturbed / self._coefficient * np.sqrt(density / REFERENCE_DENSITY_KG_M3)
        return np.copysign(reference**self._power, flow_m3_s)

    def step(self, dt_s: float, flow_m3_s: FloatArray, density: FloatArray) -> FloatArray:
        """Return the pressure at the taps, turbulence included."""
        kept = math.exp(-dt_s / TURBULENCE_S)
        self._unrest = kept * self._unrest + math.sqrt(1.0 - kept * kept) * self._noise.step()
        return self.pressure(flow_m3_s, density) * (1.0 + TURBULENCE * self._unrest)
