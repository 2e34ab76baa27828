"""The fan: its curve by the fan laws, its motor with all that makes it slow, and its self-closing shutter.

The figures are our own invention. Arrays have the shape (B,).
"""

from __future__ import annotations

from collections import deque

import numpy as np

from simulators.air import FloatArray

SHUT_OFF_PA = 400.0
CURVE_B = 10.0
CURVE_K = 65.0
CURVE_DENSITY_KG_M3 = 1.2
QUANTUM = 0.002
DEAD_BAND = 0.05
LATENCY_S = 0.3
"""From the beginning of the step in which a command comes; at 10 Hz 0.2 to 0.3 s from the command itself."""
RISE_LAG_S = 0.9
COAST_LAG_S = 1.6
RAMP_PER_S = 0.35
REST_SPEED = 0.03
"""Below this the fan counts as run down: the shutter falls shut, the direction may be changed."""


def fan_flow(
    speed: FloatArray, back_pa: FloatArray, density: FloatArray, loss: FloatArray
) -> tuple[FloatArray, FloatArray]:
    """Return the flow in m3/s against a back pressure, and its derivative by that pressure.

    `loss` is what the plate of the fitted flow range adds to the curve, Pa/(m3/s)2. A fan too slow for its back
    pressure is blown through backwards: the flow is then negative.
    """
    k = CURVE_K + loss
    drive = speed * speed * SHUT_OFF_PA - CURVE_DENSITY_KG_M3 * back_pa / density
    turning = CURVE_B * speed
    root = np.sqrt(turning * turning + 4.0 * k * np.abs(drive) + 1e-3)
    flow = np.copysign((root - turning) / (2.0 * k), drive)
    return flow, -CURVE_DENSITY_KG_M3 / (density * root)


class Motor:
    """Speed of the fan: commands are quantised, come late, and are followed slowly; coasting down slower still."""

    def __init__(self, size: int) -> None:
        """Stand still, `size` fans."""
        self.speed: FloatArray = np.zeros(size)
        self.open: FloatArray = np.zeros(size)
        """1 where the shutter is open, 0 where it is shut."""
        self.tripped = False
        """Whether the drives have switched themselves off, whatever they are told."""
        self._goal: FloatArray = np.zeros(size)
        self._time_s = 0.0
        self._heard: FloatArray | None = None
        """The newest command that was followed; one that is repeated changes nothing."""
        self._dt_s = 0.0
        self._rises = self._coasts = np.empty(0)
        self._coming: deque[tuple[float, FloatArray]] = deque()

    def step(self, dt_s: float, command: FloatArray) -> None:
        """Follow the command (0..1) for a while."""
        self._coming.append((self._time_s + LATENCY_S - dt_s / 2, command))
        while self._coming and self._coming[0][0] <= self._time_s:
            newest = self._coming.popleft()[1]
            if newest is not self._heard:
                self._heard = newest
                taken = np.round(newest / QUANTUM) * QUANTUM
                self._goal = np.where(taken < DEAD_BAND, 0.0, np.minimum(taken, 1.0))
        self._time_s += dt_s
        if self.tripped:
            self._goal, self._heard = np.zeros_like(self._goal), None
        if dt_s != self._dt_s:
            self._dt_s = dt_s
            self._rises, self._coasts = (-np.expm1(-dt_s / np.array([lag_s])) for lag_s in (RISE_LAG_S, COAST_LAG_S))
        gap = self._goal - self.speed
        most = RAMP_PER_S * dt_s
        change = np.minimum(np.maximum(gap * np.where(gap > 0.0, self._rises, self._coasts), -most), most)
        self.speed = self.speed + change
        self.open = ((self._goal > 0.0) | (self.speed > REST_SPEED)).astype(np.float64)

    @property
    def at_rest(self) -> bool:
        """Whether every fan has run down and is commanded to stand."""
        return not bool(self.open.any())
