"""The leak paths of a house: how much air passes each, with wind and stack, and how steeply that rises with pressure.

All arrays have the houses in the leading axis B and the paths in the last axis N.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from simulators.air import GRAVITY_M_S2, REFERENCE_DENSITY_KG_M3, REFERENCE_VISCOSITY_PA_S, FloatArray
from simulators.house import FACADES, WALLS, Facade, House, Leak

LAMINAR_PA = 0.05
"""Below about this pressure the flow is laminar; it keeps the slope finite at zero."""
PILLOW_PA = 25.0
DISCHARGE = 0.62
"""Discharge coefficient of a sharp-edged opening (textbook)."""
OPENINGS = tuple(Leak(f"opening, {wall}", wall, 0.0, 0.5, 1.0) for wall in WALLS)
"""A window or door in each wall, shut."""


class LeakPaths:
    """Leak paths of one or more houses with the same layout of facades."""

    def __init__(self, houses: Sequence[House]) -> None:
        """Take coefficients that give each house its n50 in reference air."""
        self.names = tuple(leak.name for leak in houses[0].leaks)
        leaks = [(*house.leaks, *OPENINGS) for house in houses]
        self.exponent = np.array([[leak.exponent for leak in row] for row in leaks])
        self.pillowing = np.array([[leak.pillowing for leak in row] for row in leaks])
        shares = np.array([[leak.share for leak in row] for row in leaks])
        flow50_m3_s = np.array([[house.n50_per_h * house.volume_m3 / 3600.0] for house in houses])
        self._built = shares * flow50_m3_s / 50.0**self.exponent
        self.coefficient = self._built.copy()
        """m3/s at 1 Pa in reference air: as built, less what was sealed, and what stands open."""
        self.above_gauge_m = np.array(
            [[leak.height_m - h.gauge_height_m for leak in row] for h, row in zip(houses, leaks, strict=True)]
        )
        self.facade_index = np.array([FACADES.index(leak.facade) for leak in leaks[0]])
        self._half = (self.exponent - 1.0) / 2.0
        self._soft = bool(np.any(self.pillowing))
        self._out = self._in = self._stack_pa = np.zeros_like(self.exponent)

    def open(self, facade: Facade, area_m2: float) -> None:
        """Open a window or door of this area in a wall, in every house; 0 shuts it. Then `breathe`."""
        orifice = DISCHARGE * area_m2 * math.sqrt(2.0 / REFERENCE_DENSITY_KG_M3)
        self.coefficient[:, len(self.names) + WALLS.index(facade)] = orifice

    def seal(self, share: float, names: Sequence[str] = ()) -> None:
        """Seal a share of each named leak as built, of all of them when none is named. Then `breathe`.

        An unknown name raises `ValueError`.
        """
        for name in names or self.names:
            if name not in self.names:
                raise ValueError(f"leak is {name!r}: this house has: {', '.join(self.names)}")
            column = self.names.index(name)
            self.coefficient[:, column] = (1.0 - share) * self._built[:, column]

    def breathe(self, indoor: tuple[FloatArray, FloatArray], outdoor: tuple[FloatArray, FloatArray]) -> None:
        """Take the air on both sides: density in kg/m3 and viscosity in Pa s, each of shape (B,)."""
        self._out = self._mass_coefficient(*indoor)
        self._in = self._mass_coefficient(*outdoor)
        lighter = (outdoor[0] - indoor[0])[:, None]
        self._stack_pa = lighter * GRAVITY_M_S2 * self.above_gauge_m

    def _mass_coefficient(self, density: FloatArray, viscosity: FloatArray) -> FloatArray:
        """Return kg/s at 1 Pa of air from one side.

        Power-law coefficient against density and viscosity as in Carrié 2014 (35th AIVC conference).
        """
        thin = (REFERENCE_DENSITY_KG_M3 / density)[:, None] ** (1.0 - self.exponent)
        slippery = (REFERENCE_VISCOSITY_PA_S / viscosity)[:, None] ** (2.0 * self.exponent - 1.0)
        at_one_pascal: FloatArray = density[:, None] * self.coefficient * thin * slippery
        return at_one_pascal

    def outflow(self, indoor_pa: FloatArray, facade_pa: FloatArray) -> tuple[FloatArray, FloatArray]:
        """Return what leaves the house, kg/s, and its slope, kg/(s Pa); both of shape (B,).

        `indoor_pa` (B,) is the interior pressure at gauge height, `facade_pa` (B, F) the wind pressure on each facade.
        """
        across = indoor_pa[:, None] + self._stack_pa - facade_pa[:, self.facade_index]
        mass, slope = self._each(across)
        return mass.sum(axis=1), slope.sum(axis=1)

    def inflow(self, indoor_pa: FloatArray, facade_pa: FloatArray) -> FloatArray:
        """Return what comes in through those leaks through which air comes in, kg/s, positive (B,)."""
        across = indoor_pa[:, None] + self._stack_pa - facade_pa[:, self.facade_index]
        mass, _ = self._each(across)
        entering: FloatArray = -np.minimum(mass, 0.0).sum(axis=1)
        return entering

    def _each(self, across: FloatArray) -> tuple[FloatArray, FloatArray]:
        square = across * across
        smooth = square + LAMINAR_PA**2
        coefficient = np.where(across > 0.0, self._out, self._in)
        if not self._soft:
            conductance = coefficient * smooth**self._half
            slope = conductance * (1.0 + 2.0 * self._half * square / smooth)
            return conductance * across, slope
        swell = np.tanh(across / PILLOW_PA)
        conductance = coefficient * smooth**self._half
        opened = 1.0 + self.pillowing * swell
        steeper = self.pillowing / PILLOW_PA * (1.0 - swell * swell) * across
        slope = conductance * (opened * (1.0 + 2.0 * self._half * square / smooth) + steeper)
        return conductance * opened * across, slope

    def true_flow_m3_s(self, induced_pa: float) -> FloatArray:
        """Return the flow (B,), positive, at one pressure all over the envelope, in reference air.

        The sign of the pressure is indoor minus outdoor.
        """
        size = abs(induced_pa)
        opened = 1.0 + self.pillowing * np.tanh(induced_pa / PILLOW_PA)
        flows: FloatArray = np.sum(self.coefficient * opened * size**self.exponent, axis=1)
        return flows
