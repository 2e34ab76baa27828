"""Whether the fan still moves what it moved before at such a speed and against such a pressure. Pure.

By the fan laws flow over speed depends on pressure over speed squared alone. In one house the two keep to a short piece
of one curve, whatever the target; a fan that something lies before, or that turns slower than it is told, leaves it.
"""

from __future__ import annotations

import math

import numpy as np

LEAST_POINTS = 2
WIDE_ENOUGH = 0.15
STEEPEST = -2.0


class FanLaw:
    """Flow per speed against pressure per speed squared, from the points of a run."""

    def __init__(self) -> None:
        """Know no point."""
        self._points: list[tuple[float, float]] = []

    def add(self, speed: float, pressure_pa: float, flow_m3_h: float) -> None:
        """Take in a point; one without speed, pressure or flow is left out."""
        if speed > 0 and pressure_pa > 0 and flow_m3_h > 0:
            self._points.append((math.log(pressure_pa / speed**2), math.log(flow_m3_h / speed)))

    def clear(self) -> None:
        """Forget every point."""
        self._points.clear()

    def deviation(self, speed: float, pressure_pa: float, flow_m3_h: float) -> float | None:
        """Return ln of the flow over the one expected; None before there are points, or without speed or pressure."""
        if len(self._points) < LEAST_POINTS or not (speed > 0 and pressure_pa > 0 and flow_m3_h > 0):
            return None
        loads, flows = np.array(self._points).T
        slope = 0.0
        if len(self._points) > LEAST_POINTS and float(np.ptp(loads)) > WIDE_ENOUGH:
            slope = min(max(float(np.polyfit(loads, flows, 1)[0]), STEEPEST), 0.0)
        load, flow = math.log(pressure_pa / speed**2), math.log(flow_m3_h / speed)
        if not slope:
            # The newest point is the nearest one; how steep the curve is there the points do not say.
            further = load - float(loads[-1])
            most, least = sorted((0.0, STEEPEST * further), reverse=True)
            off = flow - float(flows[-1])
            return off - min(max(off, least), most)
        return flow - float(np.mean(flows - slope * loads)) - slope * load
