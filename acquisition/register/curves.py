"""Calibration curves of flow elements: power law, polynomial, table. Pressures in Pa, flows in m3/h."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from analysis.errors import InvalidInput
from analysis.records import FlowRange

FIT_POINTS = 64


@dataclass(frozen=True, slots=True)
class PowerLaw:
    """`q = coefficient * dp**exponent`."""

    coefficient_m3_h_pa_n: float
    exponent: float

    def flow_m3_h(self, pa: float) -> float:
        """Return the flow at an element pressure."""
        return float(self.coefficient_m3_h_pa_n * pa**self.exponent)


@dataclass(frozen=True, slots=True)
class Polynomial:
    """`q = c0 + c1 x + c2 x**2 ...` with x the element pressure, or its square root when `of_root`."""

    coefficients: tuple[float, ...]
    of_root: bool = False

    def flow_m3_h(self, pa: float) -> float:
        """Return the flow at an element pressure."""
        x = math.sqrt(pa) if self.of_root else pa
        return float(sum(coefficient * x**power for power, coefficient in enumerate(self.coefficients)))


@dataclass(frozen=True, slots=True)
class Table:
    """Points of element pressure and flow, both rising; between them a power law from each to the next."""

    points: tuple[tuple[float, float], ...]

    def flow_m3_h(self, pa: float) -> float:
        """Return the flow at an element pressure; beyond the ends the last power law goes on."""
        upper = next((at for at, point in enumerate(self.points) if point[0] >= pa), len(self.points) - 1)
        (p0, q0), (p1, q1) = self.points[max(upper, 1) - 1], self.points[max(upper, 1)]
        exponent = math.log(q1 / q0) / math.log(p1 / p0)
        return float(q0 * (pa / p0) ** exponent)


Curve = PowerLaw | Polynomial | Table


def check_curve(curve: Curve, min_pa: float, max_pa: float, where: str) -> None:
    """Refuse a curve that is no flow element's within its range; raises `InvalidInput`."""
    if isinstance(curve, Table):
        if len(curve.points) < 2:
            raise InvalidInput(f"{where}.table", len(curve.points), "at least two points are needed")
        for low, high in pairwise(curve.points):
            if not (0 < low[0] < high[0] and 0 < low[1] < high[1]):
                raise InvalidInput(f"{where}.table", [low, high], "pressures and flows above 0 that both rise")
        first, last = curve.points[0][0], curve.points[-1][0]
        if min_pa < first or max_pa > last:
            allowed = f"a range within the table, {first:g} to {last:g} Pa, is needed"
            raise InvalidInput(f"{where}.min_pa and max_pa", [min_pa, max_pa], allowed)
    flows = [curve.flow_m3_h(float(pa)) for pa in np.geomspace(min_pa, max_pa, FIT_POINTS)]
    if not all(math.isfinite(flow) for flow in flows) or flows[0] <= 0 or any(b <= a for a, b in pairwise(flows)):
        raise InvalidInput(f"{where}.curve", curve, f"the flow has to rise from {min_pa:g} to {max_pa:g} Pa, above 0")


def as_flow_range(
    name: str, curve: Curve, min_pa: float, max_pa: float, density_kg_m3: float
) -> tuple[FlowRange, float]:
    """Return the power law nearest to a curve within its range, and how far it is off at worst (fraction of flow).

    Least squares of the logarithms over the range, evenly in the logarithm of the pressure. A power law is itself.
    """
    if isinstance(curve, PowerLaw):
        return FlowRange(name, curve.coefficient_m3_h_pa_n, curve.exponent, min_pa, max_pa, density_kg_m3), 0.0
    log_pa = np.linspace(math.log(min_pa), math.log(max_pa), FIT_POINTS)
    log_q = np.log([curve.flow_m3_h(math.exp(x)) for x in log_pa])
    exponent, log_c = np.polyfit(log_pa, log_q, 1)
    worst = float(np.max(np.abs(np.exp(log_c + exponent * log_pa - log_q) - 1.0)))
    return FlowRange(name, float(math.exp(log_c)), float(exponent), min_pa, max_pa, density_kg_m3), worst
