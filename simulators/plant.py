"""The plant: house, weather, fan, flow element and gauge as one thing that is stepped through time.

It knows no wire and no clock: `step(dt, inputs)` and nothing else moves it, and one seed gives one course of events.
Arrays have the houses in the leading axis B; there is one house in a rig.

Signs: the interior pressure is indoor minus outdoor at gauge height; direction +1 pressurizes, -1 depressurizes.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from simulators.air import FloatArray, density, viscosity
from simulators.element import FlowElement
from simulators.envelope import LeakPaths
from simulators.fan import Motor, fan_flow
from simulators.gauge import Gauge
from simulators.house import FACADES, House
from simulators.weather import Weather

MOST_PASSES = 20
FINE_PA = 0.25
"""A linearised step that changes the pressure by less is good enough."""
SETTLING_STEPS = 60
SETTLING_DT_S = 60.0


@dataclass(frozen=True, slots=True)
class PlantInputs:
    """What people and drives do to the plant: commanded fan speed 0..1 and direction +1 or -1, both (B,)."""

    speed: FloatArray
    direction: FloatArray


class Plant:
    """One or more houses with their rigs."""

    def __init__(self, houses: Sequence[House], seed: int, wind_m_s: float | None = None) -> None:
        """Bring every house to rest with its fan closed. `wind_m_s` replaces the wind of the house files."""
        of_weather, of_element, of_gauge = np.random.default_rng(seed).spawn(3)
        self.houses = tuple(houses)
        self.time_s = 0.0
        self.leaks = LeakPaths(houses)
        self._breathe()
        winds = [house.climate.wind_m_s if wind_m_s is None else wind_m_s for house in houses]
        self.weather = Weather(houses, winds, of_weather)
        self.motor = Motor(len(houses))
        self.element = FlowElement([house.fitted for house in houses], of_element)
        self._fan_facade = np.array([FACADES.index(house.fan_facade) for house in houses])
        self._rows = np.arange(len(houses))
        self._all = np.ones(len(houses), dtype=np.bool_)
        self._storage_m3_pa = np.array([h.volume_m3 / (h.air_stiffness * h.climate.barometric_pa) for h in houses])
        self.pressure_pa: FloatArray = np.zeros(len(houses))
        self.flow_m3_s: FloatArray = np.zeros(len(houses))
        """Flow through the fan, at the density of the air that passes it; backwards is negative."""
        self.fan_density: FloatArray = self.indoor_density
        self._come_to_rest()
        self._true = np.zeros((len(houses), 6))
        self._show(self.flow_m3_s)
        self.gauge = Gauge(self._true, of_gauge)

    def step(self, dt_s: float, inputs: PlantInputs) -> None:
        """Advance by `dt_s` under these inputs."""
        self.time_s += dt_s
        self.weather.step(dt_s, self.outdoor_density)
        self.motor.step(dt_s, inputs.speed)
        self._move_air(dt_s, inputs.direction)
        self._show(self.element.step(dt_s, self.flow_m3_s, self.fan_density))
        self.gauge.step(dt_s, self._true)

    def true_flow_m3_h(self, induced_pa: float) -> FloatArray:
        """Return what leaks at a pressure, indoor minus outdoor, in reference air without wind and stack (B,)."""
        return 3600.0 * self.leaks.true_flow_m3_s(induced_pa)

    @property
    def leak_flow_m3_s(self) -> FloatArray:
        """What leaves through the leaks at present, at the density of indoor air; negative when air comes in."""
        mass, _ = self.leaks.outflow(self.pressure_pa, self.weather.facade_pa)
        return mass / self.indoor_density

    def _breathe(self) -> None:
        climates = [house.climate for house in self.houses]
        indoor_c = np.array([climate.indoor_c for climate in climates])
        outdoor_c = np.array([climate.outdoor_c for climate in climates])
        barometric_pa = np.array([climate.barometric_pa for climate in climates])
        self.indoor_density = density(indoor_c, np.array([climate.indoor_rh for climate in climates]), barometric_pa)
        self.outdoor_density = density(outdoor_c, np.array([climate.outdoor_rh for climate in climates]), barometric_pa)
        self.leaks.breathe((self.indoor_density, viscosity(indoor_c)), (self.outdoor_density, viscosity(outdoor_c)))

    def _come_to_rest(self) -> None:
        """Find the pressure at which as much leaks in as out while the fan is closed."""
        self.weather.step(0.1, self.outdoor_density)
        for _ in range(SETTLING_STEPS):
            self._move_air(SETTLING_DT_S, -np.ones(len(self.houses)))

    def _move_air(self, dt_s: float, direction: FloatArray) -> None:
        """One step of the air in the house: backward Euler, linearised: no time constant is too short for it.

        One pass does where little changes; when a door opens, or the step is long, it is repeated until it fits.
        """
        start_pa, facade_pa = self.pressure_pa, self.weather.facade_pa
        fan_pa = facade_pa[self._rows, self._fan_facade]
        density = np.where(direction > 0.0, self.outdoor_density, self.indoor_density)
        storage = self._storage_m3_pa * self.indoor_density / dt_s
        moving = self._all
        passes = 0
        while True:
            outflow, leak_slope = self.leaks.outflow(self.pressure_pa, facade_pa)
            back_pa = direction * (self.pressure_pa - fan_pa)
            flow, fan_slope = fan_flow(self.motor.speed, back_pa, density, self.element.loss)
            flow, fan_slope = flow * self.motor.open, fan_slope * self.motor.open
            missing = storage * (start_pa - self.pressure_pa) + direction * density * flow - outflow
            change = np.where(moving, missing / (storage + leak_slope - density * fan_slope), 0.0)
            self.pressure_pa = self.pressure_pa + change
            moving = np.abs(change) > FINE_PA
            passes += 1
            if passes == MOST_PASSES or not moving.any():
                break
        self.fan_density = density
        # The flow that belongs to the new pressure, in the same linearisation: what flows is what is stored.
        self.flow_m3_s = flow + fan_slope * direction * change

    def _show(self, element_pa: FloatArray) -> None:
        """Lay the true values of the gauge's channels side by side."""
        for row, house in enumerate(self.houses):
            air = house.climate
            self._true[row, 2:] = air.indoor_c, air.outdoor_c, air.barometric_pa, 100.0 * air.indoor_rh
        self._true[:, 0] = self.pressure_pa - self.weather.tap_pa
        self._true[:, 1] = element_pa
