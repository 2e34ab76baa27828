"""The air in the house, and in its zones: what comes in, what goes out, the pressure and the cold that this makes.

Arrays have the houses in the leading axis B.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from simulators.air import FloatArray
from simulators.envelope import LeakPaths
from simulators.fan import fan_flow
from simulators.house import House
from simulators.house_air import HouseAir
from simulators.zones import Zones

MIXING_S = 0.999
MOST_PASSES = 20
FINE_PA = 0.25
"""A linearised step that changes the pressure by less is good enough."""


@dataclass(frozen=True, slots=True)
class RunningFan:
    """The fan during one step, all (B,): `open` is 0 behind a shut shutter, `facade_pa` the wind on its other side."""

    direction: FloatArray
    speed: FloatArray
    open: FloatArray
    loss: FloatArray
    facade_pa: FloatArray


class Interior:
    """Pressures, flows and the air on both sides of the envelope."""

    def __init__(self, houses: Sequence[House]) -> None:
        """Begin at the pressure of the outside."""
        self.leaks = LeakPaths(houses)
        self.air = HouseAir(houses)
        self.zones = Zones(houses)
        self._has_zones = any(house.zones for house in houses)
        self._storage_m3_pa = np.array([h.volume_m3 / (h.air_stiffness * h.climate.barometric_pa) for h in houses])
        self._all = np.ones(len(houses), dtype=np.bool_)
        self.pressure_pa: FloatArray = np.zeros(len(houses))
        """Indoor minus outdoor at gauge height."""
        self.flow_m3_s: FloatArray = np.zeros(len(houses))
        """Flow through the fan, at the density of the air that passes it; backwards is negative."""
        self.further_flows_m3_s: list[FloatArray] = []
        """Flow through each further fan."""
        self.exhaust_m3_s = 0.0
        """What a kitchen hood or a bath fan of the house blows out, whatever the pressure."""
        self.fan_density: FloatArray = self.air.indoor_density
        self._unmixed_s = 0.0
        self.breathe()

    def breathe(self) -> None:
        """Tell the leaks what air passes them; needed whenever the air or the leaks have changed."""
        air = self.air
        self.leaks.breathe((air.indoor_density, air.indoor_viscosity), (air.outdoor_density, air.outdoor_viscosity))

    @property
    def storage_kg_pa(self) -> FloatArray:
        """Air that the house takes up for each pascal that its pressure rises."""
        return self._storage_m3_pa * self.air.indoor_density

    def mix(self, dt_s: float, direction: FloatArray, facade_pa: FloatArray) -> None:
        """Let the air that came from outside cool the house, once a second: temperatures are slow."""
        if self.leaks.softness.can_tear and self.leaks.strain(dt_s, self.pressure_pa, facade_pa):
            self.breathe()
        self._unmixed_s += dt_s
        if self._unmixed_s < MIXING_S:
            return
        all_m3_s = sum(self.further_flows_m3_s, self.flow_m3_s)
        blown = np.maximum(direction * self.fan_density * all_m3_s, 0.0)
        inflow = self.leaks.inflow(self.pressure_pa, facade_pa) + blown
        if self._has_zones:
            air = self.air
            between, _ = self.zones.from_house(self.pressure_pa, air.indoor_density, air.outdoor_density)
            inflow = inflow - np.minimum(between, 0.0).sum(axis=1)
        self.air.exchange(self._unmixed_s, inflow)
        self._unmixed_s = 0.0
        self.breathe()

    def move(self, dt_s: float, fan: RunningFan, facade_pa: FloatArray, further: Sequence[RunningFan] = ()) -> None:
        """One step of the air: backward Euler, linearised: no time constant is too short for it.

        One pass does where little changes; when a door opens, or the step is long, it is repeated until it fits.
        Further fans blow the same way as the first.
        """
        density = np.where(fan.direction > 0.0, self.air.outdoor_density, self.air.indoor_density)
        storage = self.storage_kg_pa / dt_s
        start_pa = self.pressure_pa
        zones_start_pa = self.zones.pressure_pa
        moving = self._all
        passes = 0
        while True:
            outflow, leak_slope = self.leaks.outflow(self.pressure_pa, facade_pa)
            if self.exhaust_m3_s:
                outflow = outflow + self.air.indoor_density * self.exhaust_m3_s
            back_pa = fan.direction * (self.pressure_pa - fan.facade_pa)
            flow, fan_slope = fan_flow(fan.speed, back_pa, density, fan.loss)
            flow, fan_slope = flow * fan.open, fan_slope * fan.open
            beside = []
            for item in further:
                more, slope = fan_flow(item.speed, back_pa, density, item.loss)
                beside.append((more * item.open, slope * item.open))
                outflow = outflow - fan.direction * density * beside[-1][0]
                leak_slope = leak_slope - density * beside[-1][1]
            missing = storage * (start_pa - self.pressure_pa) + fan.direction * density * flow - outflow
            stiffness = storage + leak_slope - density * fan_slope
            if self._has_zones:
                air, zones = self.air, self.zones
                between = zones.from_house(self.pressure_pa, air.indoor_density, air.outdoor_density)
                flows = between, zones.to_outside(facade_pa, air.outdoor_density)
                zone_storage = zones.storage_m3_pa * air.outdoor_density[:, None] / dt_s
                wanted = zones.solve(zone_storage, zones_start_pa, flows, (missing, stiffness), moving)
            else:
                wanted = missing / stiffness
            change = wanted if moving is self._all else np.where(moving, wanted, 0.0)
            self.pressure_pa = self.pressure_pa + change
            moving = np.abs(change) > FINE_PA
            passes += 1
            if passes == MOST_PASSES or not moving.any():
                break
        self.fan_density = density
        # The flow that belongs to the new pressure, in the same linearisation: what flows is what is stored.
        self.flow_m3_s = flow + fan_slope * fan.direction * change
        self.further_flows_m3_s = [more + slope * fan.direction * change for more, slope in beside]
