"""The leak paths of a house: how much air passes each, with wind and stack, and how steeply that rises with pressure.

All arrays have the houses in the leading axis B and the paths in the last axis N.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from simulators.air import GRAVITY_M_S2, REFERENCE_DENSITY_KG_M3, REFERENCE_VISCOSITY_PA_S, FloatArray
from simulators.house import FACADES, Facade, House, Leak
from simulators.softness import Softness

LAMINAR_PA = 0.05
"""Below about this pressure the flow is laminar; it keeps the slope finite at zero."""
DISCHARGE = 0.62
"""Discharge coefficient of a sharp-edged opening (textbook)."""
OPENING_HEIGHT_M = 1.0
ABSENT = Leak("none", Facade.NORTH, 0.0, 0.65, 0.0)


class LeakPaths:
    """Leak paths of one or more houses; a house with fewer leaks than its neighbours has some that let nothing pass."""

    def __init__(self, houses: Sequence[House]) -> None:
        """Take coefficients that give each house its n50 in reference air."""
        most = max(len(house.leaks) for house in houses)
        self.names = tuple(leak.name for leak in houses[0].leaks)
        self._houses = tuple(houses)
        self._leaks = [list(house.leaks) + [ABSENT] * (most - len(house.leaks)) for house in houses]
        self._openings: dict[Facade, int] = {}
        shares = np.array([[leak.share for leak in row] for row in self._leaks])
        flow50_m3_s = np.array([[house.n50_per_h * house.volume_m3 / 3600.0] for house in houses])
        exponents = np.array([[leak.exponent for leak in row] for row in self._leaks])
        self._built = shares * flow50_m3_s / 50.0**exponents
        self.coefficient = self._built.copy()
        """m3/s at 1 Pa in reference air: as built, less what was sealed, and what stands open."""
        self._lay_out()

    def _lay_out(self) -> None:
        """Set what follows from which leaks there are."""
        self.exponent = np.array([[leak.exponent for leak in row] for row in self._leaks])
        heights = zip(self._houses, self._leaks, strict=True)
        self.above_gauge_m = np.array(
            [[leak.height_m - house.gauge_height_m for leak in row] for house, row in heights]
        )
        facades = np.array([[FACADES.index(leak.facade) for leak in row] for row in self._leaks])
        self._facade_index = np.arange(len(facades))[:, None], facades
        self._half = (self.exponent - 1.0) / 2.0
        self._twice_half = 2.0 * self._half
        self.softness = Softness(self._leaks)
        self._out = self._in = self._stack_pa = np.zeros_like(self.exponent)

    def open(self, facade: Facade, area_m2: float) -> None:
        """Open a window, door or flue of this area in a part of the envelope, in every house; 0 shuts it.

        Then `breathe`. An opening in the roof is at the height of the eaves: a flue.
        """
        if facade not in self._openings:
            self._openings[facade] = self.exponent.shape[1]
            torn = self.softness.is_torn
            for house, row in zip(self._houses, self._leaks, strict=True):
                height_m = house.height_m if facade is Facade.ROOF else OPENING_HEIGHT_M
                row.append(Leak(f"opening, {facade}", facade, 0.0, 0.5, height_m))
            nothing = np.zeros((len(self._houses), 1))
            self._built = np.hstack([self._built, nothing])
            self.coefficient = np.hstack([self.coefficient, nothing])
            self._lay_out()
            self.softness.is_torn[:, :-1] = torn
        orifice = DISCHARGE * area_m2 * math.sqrt(2.0 / REFERENCE_DENSITY_KG_M3)
        self.coefficient[:, self._openings[facade]] = orifice

    def multiply(self, factor: float, names: Sequence[str] = ()) -> None:
        """Let each named leak pass so many times what it did as built, all of them when none is named. Then `breathe`.

        An unknown name raises `ValueError`.
        """
        for name in names or self.names:
            if name not in self.names:
                raise ValueError(f"leak is {name!r}: this house has: {', '.join(self.names)}")
            column = self.names.index(name)
            self.coefficient[:, column] = factor * self._built[:, column]

    def strain(self, dt_s: float, indoor_pa: FloatArray, facade_pa: FloatArray) -> bool:
        """Pull at loose sheeting for a while; return whether something has torn: then `breathe`."""
        grown = self.softness.strain(dt_s, self._across(indoor_pa, facade_pa))
        if grown is None:
            return False
        self.coefficient = self.coefficient * grown
        return True

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
        across = self._across(indoor_pa, facade_pa)
        mass, slope = self._each(across)
        return np.add.reduce(mass, axis=1), np.add.reduce(slope, axis=1)

    def each(self, indoor_pa: FloatArray, facade_pa: FloatArray) -> FloatArray:
        """Return what leaves the house through each path, kg/s, what comes in negative (B, N)."""
        mass, _ = self._each(self._across(indoor_pa, facade_pa))
        return mass

    @property
    def times(self) -> FloatArray:
        """How many times what they did as built the leaks pass (B, N); for an opening, 0 or 1."""
        built = self._built > 0.0
        times: FloatArray = np.where(built, self.coefficient / np.where(built, self._built, 1.0), self.coefficient > 0)
        return times

    @property
    def paths(self) -> tuple[Leak, ...]:
        """The leaks and openings of the first house, in the order of the paths."""
        return tuple(self._leaks[0])

    def inflow(self, indoor_pa: FloatArray, facade_pa: FloatArray) -> FloatArray:
        """Return what comes in through those leaks through which air comes in, kg/s, positive (B,)."""
        across = self._across(indoor_pa, facade_pa)
        mass, _ = self._each(across)
        entering: FloatArray = -np.minimum(mass, 0.0).sum(axis=1)
        return entering

    def _across(self, indoor_pa: FloatArray, facade_pa: FloatArray) -> FloatArray:
        across: FloatArray = indoor_pa[:, None] + self._stack_pa - facade_pa[self._facade_index]
        return across

    def _each(self, across: FloatArray) -> tuple[FloatArray, FloatArray]:
        square = across * across
        smooth = square + LAMINAR_PA**2
        conductance = np.where(across > 0.0, self._out, self._in) * smooth**self._half
        slope = conductance * (1.0 + self._twice_half * square / smooth)
        if not self.softness.has_any:
            return conductance * across, slope
        opened, steeper = self.softness.opened(across)
        return conductance * opened * across, slope * opened + conductance * steeper * across

    def true_flow_m3_s(self, induced_pa: float) -> FloatArray:
        """Return the flow (B,), positive, at one pressure all over the envelope, in reference air.

        The sign of the pressure is indoor minus outdoor.
        """
        opened, _ = self.softness.opened(induced_pa)
        flows: FloatArray = np.sum(self.coefficient * opened * abs(induced_pa) ** self.exponent, axis=1)
        return flows
