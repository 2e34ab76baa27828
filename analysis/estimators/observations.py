"""What an estimator sees: magnitudes of pressure and flow, and how sure each point is as far as that is wanted."""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class ZeroParts:
    """Independent standard uncertainties (Pa) of the zero-flow pressure that is taken off all points of a run.

    `scatter` of the records; `drift`, their difference, which may have come anywhere between them; `wind`, what the
    running fan may change of how wind and stack act on the leaks.
    """

    scatter: float
    drift: float
    wind: float

    @property
    def together(self) -> float:
        """All parts."""
        return math.hypot(self.scatter, self.drift, self.wind)


@dataclass(frozen=True, slots=True)
class PointNoise:
    """Standard uncertainties of the points of a run.

    `pressure_u_pa` and `ln_flow_u` belong to each point alone; `zero` is that of the zero-flow pressure, which all
    points share.
    """

    pressure_u_pa: tuple[float, ...]
    ln_flow_u: tuple[float, ...]
    zero: ZeroParts

    @property
    def zero_u_pa(self) -> float:
        """All parts of the zero-flow pressure together."""
        return self.zero.together


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
