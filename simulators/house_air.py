"""The air on both sides of the envelope: its temperature indoors falls while the fan draws cold air in.

Arrays have the shape (B,).
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from simulators.air import FloatArray, density, viscosity
from simulators.house import House

WALLS_S = 240.0
"""Within this time the walls bring the air back to their own temperature (our own figure)."""


class HouseAir:
    """Temperatures, densities and viscosities. Outdoors and the walls change only when told."""

    def __init__(self, houses: Sequence[House]) -> None:
        """Have stood for long: the walls are as warm as the air indoors."""
        climates = [house.climate for house in houses]
        self.indoor_c = np.array([climate.indoor_c for climate in climates])
        self.outdoor_c = np.array([climate.outdoor_c for climate in climates])
        self.barometric_pa = np.array([climate.barometric_pa for climate in climates])
        self.indoor_rh = np.array([climate.indoor_rh for climate in climates])
        self.walls_c = self.indoor_c.copy()
        """To this the air comes back by itself; heating changes it."""
        self._volume_m3 = np.array([house.volume_m3 for house in houses])
        self._outdoor_rh = np.array([climate.outdoor_rh for climate in climates])
        self.turn(self.outdoor_c)
        self._weigh()

    def turn(self, outdoor_c: FloatArray) -> None:
        """Let it become warmer or colder outdoors (B,)."""
        self.outdoor_c = outdoor_c
        self.outdoor_density: FloatArray = density(outdoor_c, self._outdoor_rh, self.barometric_pa)
        self.outdoor_viscosity: FloatArray = viscosity(outdoor_c)

    def exchange(self, dt_s: float, inflow_kg_s: FloatArray) -> None:
        """Mix in what came from outside for a while; what it replaced went out at indoor temperature."""
        renewed = dt_s * inflow_kg_s / (self.indoor_density * self._volume_m3)
        warmed = dt_s / WALLS_S
        mixed = self.indoor_c + renewed * self.outdoor_c + warmed * self.walls_c
        self.indoor_c = mixed / (1.0 + renewed + warmed)
        self._weigh()

    def _weigh(self) -> None:
        self.indoor_density: FloatArray = density(self.indoor_c, self.indoor_rh, self.barometric_pa)
        self.indoor_viscosity: FloatArray = viscosity(self.indoor_c)
