"""An attached garage: a second zone between the house and the outside, with its own air.

A house without one has coefficients of zero. Arrays have the shape (B,). The garage is not heated: its air is that of
outside.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from simulators.air import REFERENCE_DENSITY_KG_M3, FloatArray
from simulators.envelope import LAMINAR_PA
from simulators.house import FACADES, Garage, House

BISECTIONS = 60
NO_GARAGE = Garage(60.0, 0.0, 0.62, 0.0, 0.62, FACADES[0])


class GarageZone:
    """The leaks to the house and to the outside, and the pressure in between."""

    def __init__(self, houses: Sequence[House]) -> None:
        """Take the garages of the houses."""
        garages = [house.garage or NO_GARAGE for house in houses]
        self.inner = np.array([garage.inner_m3_s_pa_n for garage in garages])
        self.outer = np.array([garage.outer_m3_s_pa_n for garage in garages])
        """Leaks to the house and to the outside, m3/s at 1 Pa in reference air."""
        self.door = 1.0
        """What the outer leaks are multiplied by; 1 with the garage door shut."""
        self._inner_exponent = np.array([garage.inner_exponent for garage in garages])
        self._outer_exponent = np.array([garage.outer_exponent for garage in garages])
        self._facade_index = np.array([FACADES.index(garage.facade) for garage in garages])
        self._rows = np.arange(len(houses))
        self.storage_m3_pa = np.array(
            [
                garage.volume_m3 / (house.air_stiffness * house.climate.barometric_pa)
                for garage, house in zip(garages, houses, strict=True)
            ]
        )
        self.pressure_pa: FloatArray = np.zeros(len(houses))
        """Garage minus outdoor at gauge height."""

    def from_house(
        self, house_pa: FloatArray, indoor_density: FloatArray, outdoor_density: FloatArray
    ) -> tuple[FloatArray, FloatArray]:
        """Return what goes from the house into the garage, kg/s, and its slope by the pressure between them."""
        across = house_pa - self.pressure_pa
        density = np.where(across > 0.0, indoor_density, outdoor_density)
        return _mass_flow(across, self.inner, self._inner_exponent, density)

    def to_outside(self, facade_pa: FloatArray, outdoor_density: FloatArray) -> tuple[FloatArray, FloatArray]:
        """Return what goes from the garage to the outside, kg/s, and its slope by the garage's pressure."""
        across = self.pressure_pa - facade_pa[self._rows, self._facade_index]
        return _mass_flow(across, self.door * self.outer, self._outer_exponent, outdoor_density)

    def true_flow_m3_s(self, induced_pa: float) -> FloatArray:
        """Return what leaks by way of the garage in reference air without wind: two leaks in series, (B,), positive."""
        size = abs(induced_pa)
        low, high = np.zeros_like(self.inner), np.full_like(self.inner, size)
        for _ in range(BISECTIONS):
            middle = (low + high) / 2.0
            enters = self.inner * (size - middle) ** self._inner_exponent
            leaves = self.door * self.outer * middle**self._outer_exponent
            low, high = np.where(enters > leaves, middle, low), np.where(enters > leaves, high, middle)
        flows: FloatArray = self.inner * (size - low) ** self._inner_exponent
        return flows


def _mass_flow(
    across: FloatArray, coefficient: FloatArray, exponent: FloatArray, density: FloatArray
) -> tuple[FloatArray, FloatArray]:
    square = across * across
    smooth = square + LAMINAR_PA**2
    thin = (REFERENCE_DENSITY_KG_M3 / density) ** (1.0 - exponent)
    conductance = density * coefficient * thin * smooth ** ((exponent - 1.0) / 2.0)
    return conductance * across, conductance * (1.0 + (exponent - 1.0) * square / smooth)
