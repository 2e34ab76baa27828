"""Zones between the house and the outside, each with its own air: an attached garage, an attic, a crawl space.

Each zone leaks to the house and to the outside; zones do not leak to each other. None is heated: its air is that of
outside. Arrays have the houses in the leading axis B and the zones in the last axis Z; a house with fewer zones than
its neighbours in the batch has some whose leaks are 0.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from simulators.air import GRAVITY_M_S2, REFERENCE_DENSITY_KG_M3, FloatArray
from simulators.envelope import LAMINAR_PA
from simulators.house import FACADES, House, Zone

BISECTIONS = 60
SEALED_OFF = Zone("none", 60.0, 0.0, 0.62, 0.0, 0.62, FACADES[0])
NAMED = ("inner_m3_s_pa_n", "inner_exponent", "outer_m3_s_pa_n", "outer_exponent", "volume_m3")


class Zones:
    """The leaks of all zones to the house and to the outside, and the pressures in between."""

    def __init__(self, houses: Sequence[House]) -> None:
        """Take the zones of the houses."""
        most = max(len(house.zones) for house in houses)
        rows = [house.zones + (SEALED_OFF,) * (most - len(house.zones)) for house in houses]
        self.names = tuple(zone.name for zone in houses[0].zones)
        columns = (np.array([[getattr(zone, name) for zone in row] for row in rows]) for name in NAMED)
        columns = (column.reshape(len(houses), most) for column in columns)
        self.inner, self._inner_exponent, self.outer, self._outer_exponent, volume_m3 = columns
        self.door: FloatArray = np.ones((len(houses), most))
        """What the outer leaks are multiplied by; 1 with the zone's door shut."""
        facades = np.array([[FACADES.index(zone.facade) for zone in row] for row in rows], dtype=np.intp)
        self._facade_index = np.arange(len(houses))[:, None], facades.reshape(len(houses), most)
        rises = [[_rise_m(zone, house) for zone in row] for house, row in zip(houses, rows, strict=True)]
        self._rise_m = np.array(rises).reshape(len(houses), most)
        stiffness = np.array([[house.air_stiffness * house.climate.barometric_pa] for house in houses])
        self.storage_m3_pa: FloatArray = volume_m3 / stiffness
        self.pressure_pa: FloatArray = np.zeros((len(houses), most))
        """Zone minus outdoor at gauge height."""

    def open(self, name: str, times: float) -> None:
        """Let the outside leaks of a zone pass so many times as much; raises `ValueError` for a zone there is not."""
        if name not in self.names:
            have = ", ".join(self.names) or "none"
            raise ValueError(f"zone is {name!r}: this house has: {have}")
        self.door[:, self.names.index(name)] = times

    def from_house(
        self, house_pa: FloatArray, indoor_density: FloatArray, outdoor_density: FloatArray
    ) -> tuple[FloatArray, FloatArray]:
        """Return what goes from the house into each zone, kg/s, and its slope by the pressure between them (B, Z)."""
        stack_pa = (outdoor_density - indoor_density)[:, None] * GRAVITY_M_S2 * self._rise_m
        across = house_pa[:, None] - self.pressure_pa + stack_pa
        density = np.where(across > 0.0, indoor_density[:, None], outdoor_density[:, None])
        return _mass_flow(across, self.inner, self._inner_exponent, density)

    def to_outside(self, facade_pa: FloatArray, outdoor_density: FloatArray) -> tuple[FloatArray, FloatArray]:
        """Return what goes from each zone to the outside, kg/s, and its slope by the zone's pressure (B, Z)."""
        across = self.pressure_pa - facade_pa[self._facade_index]
        return _mass_flow(across, self.door * self.outer, self._outer_exponent, outdoor_density[:, None])

    def solve(
        self,
        storage_dt: FloatArray,
        start_pa: FloatArray,
        flows: tuple[tuple[FloatArray, FloatArray], tuple[FloatArray, FloatArray]],
        house: tuple[FloatArray, FloatArray],
        moving: npt.NDArray[np.bool_],
    ) -> FloatArray:
        """Change the zones' pressures and return the wanted change of the house's (B,).

        One linear system, solved in closed form.

        `flows` are those from the house and to the outside with their slopes, `house` the mass that the house misses
        and its stiffness without the zones, `storage_dt` the air that a zone takes up for a pascal over the step, and
        `start_pa` the zones' pressures at its beginning. Each zone touches only the house, so that it is eliminated by
        itself.
        """
        (between, between_slope), (out, out_slope) = flows
        missing = storage_dt * (start_pa - self.pressure_pa) + between - out
        stiffness = storage_dt + between_slope + out_slope
        follows = between_slope / stiffness
        house_missing = house[0] - between.sum(axis=1) + (follows * missing).sum(axis=1)
        house_stiffness = house[1] + (between_slope * (1.0 - follows)).sum(axis=1)
        wanted: FloatArray = house_missing / house_stiffness
        change = missing / stiffness + follows * wanted[:, None]
        self.pressure_pa = self.pressure_pa + np.where(moving[:, None], change, 0.0)
        return wanted

    def true_flow_m3_s(self, induced_pa: float) -> FloatArray:
        """Return what leaks by way of the zones in reference air without wind: two leaks in series, (B,), positive."""
        size = abs(induced_pa)
        low, high = np.zeros_like(self.inner), np.full_like(self.inner, size)
        for _ in range(BISECTIONS):
            middle = (low + high) / 2.0
            enters = self.inner * (size - middle) ** self._inner_exponent
            leaves = self.door * self.outer * middle**self._outer_exponent
            low, high = np.where(enters > leaves, middle, low), np.where(enters > leaves, high, middle)
        flows: FloatArray = (self.inner * (size - low) ** self._inner_exponent).sum(axis=1)
        return flows


def _rise_m(zone: Zone, house: House) -> float:
    return 0.0 if zone.inner_height_m is None else zone.inner_height_m - house.gauge_height_m


def _mass_flow(
    across: FloatArray, coefficient: FloatArray, exponent: FloatArray, density: FloatArray
) -> tuple[FloatArray, FloatArray]:
    square = across * across
    smooth = square + LAMINAR_PA**2
    thin = (REFERENCE_DENSITY_KG_M3 / density) ** (1.0 - exponent)
    conductance = density * coefficient * thin * smooth ** ((exponent - 1.0) / 2.0)
    return conductance * across, conductance * (1.0 + (exponent - 1.0) * square / smooth)
