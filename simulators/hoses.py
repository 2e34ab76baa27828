"""The hoses between house and gauge, and what becomes of a pressure in one that is not as it should be.

Arrays have the houses in the leading axis B and the pressure channels of the gauge in the last one.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum

import numpy as np

from simulators.air import GRAVITY_M_S2, FloatArray, density
from simulators.house import House
from simulators.rigging import Rigging


class Hose(StrEnum):
    """The state of a hose."""

    SOUND = "sound"
    OFF = "off"
    """It slipped off: the gauge reads one side against the same side."""
    KINKED = "kinked"
    WET = "wet"
    FROZEN = "frozen"
    """Ice in it: the pressure stands still."""
    REVERSED = "reversed"
    """On the wrong one of the two nipples: the sign is turned over."""
    FLAPPING = "flapping"
    """Its end moves in the wind."""


KINKED_S = 25.0
WATER_PA, WATER_S = 4.0, 20.0
FLAPPING_PA, FLAPPING_S = 3.0, 0.4


class Hoses:
    """The hoses of the pressure channels: envelope, flow element, further taps and zones."""

    def __init__(self, start: FloatArray, rng: np.random.Generator) -> None:
        """Be sound, with the pressures `start` (B, channels) in them."""
        self._rng = rng
        self._states = [Hose.SOUND] * start.shape[1]
        self._all_sound = True
        self._carried = start.copy()
        self.jet_pa = np.zeros(start.shape[1])
        """What the jet of the fan at full speed adds at the far end of each hose."""
        self.swapped = False
        """Whether the hoses of envelope and flow element are on each other's inputs."""
        self._moving: FloatArray = rng.standard_normal(start.shape)

    def become(self, channel: int, state: Hose) -> None:
        """Change the state of a hose: 0 envelope, 1 flow element, then further taps and zones."""
        self._states[channel] = state
        self._all_sound = set(self._states) == {Hose.SOUND}

    @property
    def all_well(self) -> bool:
        """Whether every hose is sound, where it belongs, and out of the jet."""
        return self._all_sound and not self.swapped and not self.jet_pa.any()

    def pass_on(self, true: FloatArray) -> None:
        """Carry pressures through hoses that are all well: what comes out is what goes in."""
        self._carried[:] = true

    def carry(self, dt_s: float, true: FloatArray, blowing_out: FloatArray | None = None) -> FloatArray:
        """Return what comes out at the gauge (B, channels).

        `blowing_out` (B,) is the dynamic pressure of the fan's jet outdoors, 1 at full speed.
        """
        carried = true.copy()
        if blowing_out is not None and self.jet_pa.any():
            # More pressure outdoors at the tap: less between indoors and outdoors.
            carried -= blowing_out[:, None] * self.jet_pa
        if self.swapped:
            carried[:, [0, 1]] = carried[:, [1, 0]]
        for channel, state in enumerate(self._states):
            match state:
                case Hose.SOUND:
                    pass
                case Hose.OFF:
                    carried[:, channel] = 0.0
                case Hose.KINKED:
                    before = self._carried[:, channel]
                    carried[:, channel] = before - (carried[:, channel] - before) * math.expm1(-dt_s / KINKED_S)
                case Hose.WET:
                    carried[:, channel] += WATER_PA * self._unrest(dt_s, channel, WATER_S)
                case Hose.FLAPPING:
                    carried[:, channel] += FLAPPING_PA * self._unrest(dt_s, channel, FLAPPING_S)
                case Hose.REVERSED:
                    carried[:, channel] = -carried[:, channel]
                case Hose.FROZEN:
                    carried[:, channel] = self._carried[:, channel]
        self._carried = carried
        return carried

    def _unrest(self, dt_s: float, channel: int, time_s: float) -> FloatArray:
        kept = math.exp(-dt_s / time_s)
        noise = self._rng.standard_normal(len(self._moving))
        self._moving[:, channel] = kept * self._moving[:, channel] + math.sqrt(1.0 - kept * kept) * noise
        return self._moving[:, channel]


class HoseColumns:
    """What the air in hoses that run up a wall weighs more or less than the air beside them."""

    def __init__(self, houses: Sequence[House], rigging: Rigging) -> None:
        """Take the hoses of every house; all are alike."""
        self._rise_m = np.array(rigging.hose_rise_m or (0.0,) * rigging.taps)
        self._density: FloatArray | None = None
        self._nothing = np.zeros((len(houses), rigging.taps))
        if rigging.hose_c is not None and self._rise_m.any():
            celsius = np.full(len(houses), rigging.hose_c)
            humidity = np.array([house.climate.outdoor_rh for house in houses])
            pressure_pa = np.array([house.climate.barometric_pa for house in houses])
            self._density = density(celsius, humidity, pressure_pa)

    def pressure_pa(self, outdoor_density: FloatArray) -> FloatArray:
        """Return what each hose adds to the pressure of its tap (B, K): `(rho_hose - rho_out) g dz`."""
        if self._density is None:
            return self._nothing
        columns: FloatArray = (self._density - outdoor_density)[:, None] * GRAVITY_M_S2 * self._rise_m
        return columns
