"""The hoses between house and gauge, and what becomes of a pressure in one that is not as it should be.

Arrays have the houses in the leading axis B and the two pressure channels in the last one.
"""

from __future__ import annotations

import math
from enum import StrEnum

import numpy as np

from simulators.air import FloatArray
from simulators.gauge import PRESSURE_CHANNELS


class Hose(StrEnum):
    """The state of a hose."""

    SOUND = "sound"
    OFF = "off"
    """It slipped off: the gauge reads one side against the same side."""
    KINKED = "kinked"
    WET = "wet"
    FROZEN = "frozen"
    """Ice in it: the pressure stands still."""


KINKED_S = 25.0
WATER_PA, WATER_S = 4.0, 20.0


class Hoses:
    """The hoses of the two pressure channels, envelope and flow element."""

    def __init__(self, start: FloatArray, rng: np.random.Generator) -> None:
        """Be sound, with the pressures `start` (B, 2) in them."""
        self._rng = rng
        self._states = [Hose.SOUND] * PRESSURE_CHANNELS
        self._carried = start.copy()
        self._water: FloatArray = rng.standard_normal(start.shape)

    def become(self, channel: int, state: Hose) -> None:
        """Change the state of a hose: 0 envelope, 1 flow element."""
        self._states[channel] = state

    def carry(self, dt_s: float, true: FloatArray) -> FloatArray:
        """Return what comes out at the gauge (B, 2)."""
        carried = true.copy()
        for channel, state in enumerate(self._states):
            match state:
                case Hose.SOUND:
                    pass
                case Hose.OFF:
                    carried[:, channel] = 0.0
                case Hose.KINKED:
                    before = self._carried[:, channel]
                    carried[:, channel] = before - (true[:, channel] - before) * math.expm1(-dt_s / KINKED_S)
                case Hose.WET:
                    carried[:, channel] += self._slugs(dt_s, channel)
                case Hose.FROZEN:
                    carried[:, channel] = self._carried[:, channel]
        self._carried = carried
        return carried

    def _slugs(self, dt_s: float, channel: int) -> FloatArray:
        kept = math.exp(-dt_s / WATER_S)
        noise = self._rng.standard_normal(len(self._water))
        self._water[:, channel] = kept * self._water[:, channel] + math.sqrt(1.0 - kept * kept) * noise
        return WATER_PA * self._water[:, channel]
