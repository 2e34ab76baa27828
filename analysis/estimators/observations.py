"""What an estimator sees: magnitudes of pressure and flow, and how sure each point is as far as that is wanted."""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class PointNoise:
    """Standard uncertainties of the points of a run.

    `pressure_u_pa` and `ln_flow_u` belong to each point alone; `zero_u_pa` is that of the zero-flow pressure, which all
    points share.
    """

    pressure_u_pa: tuple[float, ...]
    ln_flow_u: tuple[float, ...]
    zero_u_pa: float


@dataclass(frozen=True, slots=True)
class Observations:
    """Points of one run, pressures and flows above 0; `noise` is there for estimators that ask for it."""

    pressure_pa: tuple[float, ...]
    flow_m3_h: tuple[float, ...]
    noise: PointNoise | None = None

    def logarithms(self) -> tuple[list[float], list[float]]:
        """Return ln dp and ln q."""
        return [math.log(value) for value in self.pressure_pa], [math.log(value) for value in self.flow_m3_h]

    def known_noise(self) -> PointNoise:
        """Return the noise; an estimator that asks for it is never called without."""
        if self.noise is None:
            raise ValueError("a weighted estimator was given points without their noise")
        return self.noise
