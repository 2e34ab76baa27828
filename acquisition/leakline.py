"""The leakage line as far as the points of a run have shown it. Pure; for expectations, never for a result."""

from __future__ import annotations

import numpy as np

TYPICAL_EXPONENT = 0.65
LOWEST_EXPONENT, HIGHEST_EXPONENT = 0.5, 1.0
WIDE_ENOUGH = 0.5
"""Spread of ln(pressure) from which the points show an exponent of their own."""


class LeakLine:
    """Points (induced pressure in Pa, flow in m3/h), and the power law through them."""

    def __init__(self) -> None:
        """Know no point."""
        self._points: list[tuple[float, float]] = []
        self._found: tuple[float, float] | None = None

    def __len__(self) -> int:
        """So many points."""
        return len(self._points)

    def add(self, pressure_pa: float, flow_m3_h: float) -> None:
        """Take in a point; one without pressure or flow is left out."""
        if pressure_pa > 0 and flow_m3_h > 0:
            self._points.append((pressure_pa, flow_m3_h))
            self._found = None

    def copy(self) -> LeakLine:
        """Return a line through the same points."""
        same = LeakLine()
        for pressure_pa, flow_m3_h in self._points:
            same.add(pressure_pa, flow_m3_h)
        return same

    def clear(self) -> None:
        """Forget every point."""
        self._points.clear()
        self._found = None

    def exponent(self) -> float:
        """Return the exponent, a typical one as long as the points lie too close together to tell."""
        return self._law()[0]

    def pressure_pa(self, flow_m3_h: float) -> float | None:
        """Return the pressure that goes with a flow, None before the first point."""
        if not self._points or flow_m3_h <= 0:
            return None
        exponent, level = self._law()
        return float(np.exp((np.log(flow_m3_h) - level) / exponent))

    def flow_m3_h(self, pressure_pa: float) -> float | None:
        """Return the flow that goes with a pressure, None before the first point."""
        if not self._points or pressure_pa <= 0:
            return None
        exponent, level = self._law()
        return float(np.exp(level + exponent * np.log(pressure_pa)))

    def _law(self) -> tuple[float, float]:
        """Return exponent and logarithm of the coefficient; asked for at every tick, worked out with every point."""
        if self._found is None:
            self._found = self._fitted()
        return self._found

    def _fitted(self) -> tuple[float, float]:
        if not self._points:
            return TYPICAL_EXPONENT, 0.0
        pressures, flows = np.log(np.array(self._points)).T
        exponent = TYPICAL_EXPONENT
        if len(self._points) > 2 and float(np.ptp(pressures)) > WIDE_ENOUGH:
            slope = float(np.polyfit(pressures, flows, 1)[0])
            exponent = min(max(slope, LOWEST_EXPONENT), HIGHEST_EXPONENT)
        return exponent, float(np.mean(flows - exponent * pressures))
