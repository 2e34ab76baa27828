"""The plant: house, weather, fan, flow element and gauge as one thing that is stepped through time.

It knows no wire and no clock: `step(dt, inputs)` and nothing else moves it, and one seed gives one course of events.
Arrays have the houses in the leading axis B; there is one house in a rig.

Signs: the interior pressure is indoor minus outdoor at gauge height; direction +1 pressurizes, -1 depressurizes.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from simulators.air import FloatArray
from simulators.element import FlowElement
from simulators.envelope import LeakPaths
from simulators.fan import Motor
from simulators.gauge import CHANNELS, PRESSURE_CHANNELS, Gauge
from simulators.hoses import Hoses
from simulators.house import FACADES, House
from simulators.interior import Interior, RunningFan
from simulators.weather import Weather

SETTLING_STEPS = 60
SETTLING_DT_S = 60.0


@dataclass(frozen=True, slots=True)
class PlantInputs:
    """What people and drives do to the plant: commanded fan speed 0..1 and direction +1 or -1, both (B,)."""

    speed: FloatArray
    direction: FloatArray


Action = Callable[["Plant", float], None]
"""Something that happens to a plant; told how far it has come, 0 to 1."""


@dataclass(frozen=True, slots=True)
class Event:
    """An action from one time of the plant to another; what it has done then stays."""

    start_s: float
    end_s: float
    action: Action


class Plant:
    """One or more houses with their rigs."""

    def __init__(self, houses: Sequence[House], seed: int, wind_m_s: float | None = None) -> None:
        """Bring every house to rest with its fan closed. `wind_m_s` replaces the wind of the house files."""
        of_weather, of_element, of_gauge, of_hoses = np.random.default_rng(seed).spawn(4)
        self.houses = tuple(houses)
        self.time_s = 0.0
        self.interior = Interior(houses)
        winds = [house.climate.wind_m_s if wind_m_s is None else wind_m_s for house in houses]
        self.weather = Weather(houses, winds, of_weather)
        self.motor = Motor(len(houses))
        self.element = FlowElement([house.fitted for house in houses], of_element)
        self._fan_facade = np.array([FACADES.index(house.fan_facade) for house in houses])
        self._rows = np.arange(len(houses))
        self._come_to_rest()
        self._true = np.zeros((len(houses), len(CHANNELS)))
        self._show(np.zeros(len(houses)))
        self.hoses = Hoses(self._true[:, :PRESSURE_CHANNELS], of_hoses)
        self._events: list[Event] = []
        self.gauge = Gauge(self._true, of_gauge)

    def step(self, dt_s: float, inputs: PlantInputs) -> None:
        """Advance by `dt_s` under these inputs."""
        self.time_s += dt_s
        if self._events:
            self._happen()
        self.weather.step(dt_s, self.interior.air.outdoor_density)
        self.motor.step(dt_s, inputs.speed)
        self._move_air(dt_s, inputs.direction)
        self.interior.mix(dt_s, inputs.direction, self.weather.facade_pa)
        self._show(self.element.step(dt_s, self.interior.flow_m3_s, self.interior.fan_density))
        pressures = self._true[:, :PRESSURE_CHANNELS]
        pressures[:] = self.hoses.carry(dt_s, pressures)
        self.gauge.step(dt_s, self._true)

    def schedule(self, event: Event) -> None:
        """Let something happen; its times count from the start of the plant."""
        self._events.append(event)

    @property
    def leaks(self) -> LeakPaths:
        """The leak paths."""
        return self.interior.leaks

    @property
    def pressure_pa(self) -> FloatArray:
        """Interior pressure (B,), indoor minus outdoor at gauge height."""
        return self.interior.pressure_pa

    @property
    def flow_m3_s(self) -> FloatArray:
        """Flow through the fan (B,), at the density of the air that passes it; backwards is negative."""
        return self.interior.flow_m3_s

    def true_flow_m3_h(self, induced_pa: float) -> FloatArray:
        """Return what leaks at a pressure, indoor minus outdoor, in reference air without wind and stack (B,)."""
        flow = self.leaks.true_flow_m3_s(induced_pa)
        if self.interior.garage is not None:
            flow = flow + self.interior.garage.true_flow_m3_s(induced_pa)
        return 3600.0 * flow

    def _happen(self) -> None:
        for event in [event for event in self._events if event.start_s <= self.time_s]:
            past = self.time_s >= event.end_s
            fraction = 1.0 if past else (self.time_s - event.start_s) / (event.end_s - event.start_s)
            event.action(self, fraction)
            if past:
                self._events.remove(event)

    def _come_to_rest(self) -> None:
        """Find the pressure at which as much leaks in as out while the fan is closed."""
        self.weather.step(0.1, self.interior.air.outdoor_density)
        for _ in range(SETTLING_STEPS):
            self._move_air(SETTLING_DT_S, -np.ones(len(self.houses)))

    def _move_air(self, dt_s: float, direction: FloatArray) -> None:
        fan_facade_pa = self.weather.facade_pa[self._rows, self._fan_facade]
        fan = RunningFan(direction, self.motor.speed, self.motor.open, self.element.loss, fan_facade_pa)
        self.interior.move(dt_s, fan, self.weather.facade_pa)

    def _show(self, element_pa: FloatArray) -> None:
        """Lay the true values of the gauge's channels side by side."""
        air = self.interior.air
        pressure_pa = self.interior.pressure_pa - self.weather.tap_pa
        channels = (pressure_pa, element_pa, air.indoor_c, air.outdoor_c, air.barometric_pa, 100.0 * air.indoor_rh)
        for column, values in enumerate(channels):
            self._true[:, column] = values
