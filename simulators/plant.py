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
from simulators.gauge import MOST_FANS, Gauge
from simulators.hoses import HoseColumns, Hoses
from simulators.house import FACADES, House
from simulators.interior import Interior, RunningFan
from simulators.rigging import Rigging
from simulators.weather import ONE_TAP, Weather

SETTLING_STEPS = 60
SETTLING_DT_S = 60.0


@dataclass(frozen=True, slots=True)
class PlantInputs:
    """What people and drives do to the plant: commanded fan speed 0..1 and direction +1 or -1, both (B,).

    `further_speeds`, (B,) each, are those of the further fans of a rig, which blow the same way; None: as the first.
    """

    speed: FloatArray
    direction: FloatArray
    further_speeds: tuple[FloatArray, ...] | None = None


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

    def __init__(
        self,
        houses: Sequence[House],
        seed: int,
        wind_m_s: float | Sequence[float] | None = None,
        rigging: Rigging = ONE_TAP,
    ) -> None:
        """Bring every house to rest with its fan closed. `wind_m_s` replaces the wind of the house files."""
        of_weather, of_element, of_gauge, of_hoses, of_calibration, *of_further = _streams(seed)
        self.houses = tuple(houses)
        self.rigging = rigging
        self.time_s = 0.0
        self.interior = Interior(houses)
        self.weather = Weather(houses, _winds(houses, wind_m_s), of_weather, rigging)
        self.motor = Motor(len(houses))
        calibration = 1.0 + rigging.element_sd * of_calibration.standard_normal(len(houses))
        self.element = FlowElement([house.fitted for house in houses], of_element, calibration)
        self.further_motors = tuple(Motor(len(houses)) for _ in range(rigging.fans - 1))
        self.further_elements = tuple(
            FlowElement([house.fitted for house in houses], stream) for stream in of_further[: rigging.fans - 1]
        )
        self._fan_facade = np.array([FACADES.index(house.fan_facade) for house in houses])
        self._rows = np.arange(len(houses))
        self._come_to_rest()
        channels = rigging.gauge.channels(rigging.taps, rigging.zones, rigging.fans)
        gain = np.zeros((len(houses), len(channels)))
        pressures = rigging.taps + rigging.zones + rigging.fans
        gain[:, :pressures] = rigging.gauge.gain_sd * of_calibration.standard_normal((len(houses), pressures))
        self._true = np.zeros((len(houses), len(channels)))
        self._columns = HoseColumns(houses, rigging)
        self._show(np.zeros(len(houses)), [])
        self.hoses = Hoses(self._true[:, :pressures], of_hoses)
        self._events: list[Event] = []
        model = rigging.gauge
        self.gauge = Gauge(self._true, of_gauge, gain, channels, model.output_s, model.lost_share)

    def step(self, dt_s: float, inputs: PlantInputs) -> None:
        """Advance by `dt_s` under these inputs."""
        self.time_s += dt_s
        if self._events:
            self._happen()
        self.weather.step(dt_s, self.interior.air.outdoor_density)
        self.motor.step(dt_s, inputs.speed)
        for at, motor in enumerate(self.further_motors):
            motor.step(dt_s, inputs.speed if inputs.further_speeds is None else inputs.further_speeds[at])
        self._move_air(dt_s, inputs.direction)
        self.interior.mix(dt_s, inputs.direction, self.weather.facade_pa)
        density = self.interior.fan_density
        further_pa = [
            element.step(dt_s, flow_m3_s, density)
            for element, flow_m3_s in zip(self.further_elements, self.interior.further_flows_m3_s, strict=True)
        ]
        self._show(self.element.step(dt_s, self.interior.flow_m3_s, density), further_pa)
        pressures = self._true[:, : self.gauge.pressures]
        if self.hoses.all_well:
            self.hoses.pass_on(pressures)
        else:
            jet = np.where(inputs.direction < 0.0, self.motor.open * self.motor.speed * self.motor.speed, 0.0)
            pressures[:] = self.hoses.carry(dt_s, pressures, jet)
        self.gauge.step(dt_s, self._true)

    def schedule(self, event: Event) -> None:
        """Let something happen; its times count from the start of the plant."""
        self._events.append(event)

    def call_off(self, event: Event) -> bool:
        """Let an event not happen that has not begun; false where it is too late for that."""
        if event not in self._events or event.start_s <= self.time_s:
            return False
        self._events.remove(event)
        return True

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

    @property
    def envelope_pa(self) -> FloatArray:
        """Interior pressure against the end of each outdoor hose (B, K), as sound hoses carry it."""
        air = self.interior.air
        return self.pressure_pa[:, None] - self.weather.tap_pa - self._columns.pressure_pa(air.outdoor_density)

    @property
    def zone_pa(self) -> FloatArray:
        """House minus zone (B, Z)."""
        return self.pressure_pa[:, None] - self.interior.zones.pressure_pa

    def channel(self, name: str) -> int:
        """Return where a pressure channel is found in `gauge.shown`; raises `ValueError` for one that is not in use."""
        column = self.gauge.columns.get(name)
        if column is None or column >= self.gauge.pressures:
            raise ValueError(
                f"channel is {name!r}: this gauge has: {', '.join(list(self.gauge.columns)[: self.gauge.pressures])}"
            )
        return column

    def true_flow_m3_h(self, induced_pa: float) -> FloatArray:
        """Return what leaks at a pressure, indoor minus outdoor, in reference air without wind and stack (B,)."""
        return 3600.0 * (self.leaks.true_flow_m3_s(induced_pa) + self.interior.zones.true_flow_m3_s(induced_pa))

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
        further = [
            RunningFan(direction, motor.speed, motor.open, element.loss, fan_facade_pa)
            for motor, element in zip(self.further_motors, self.further_elements, strict=True)
        ]
        self.interior.move(dt_s, fan, self.weather.facade_pa, further)

    def _show(self, element_pa: FloatArray, further_pa: Sequence[FloatArray]) -> None:
        """Lay the true values of the gauge's channels side by side."""
        taps, zones, air = self.rigging.taps, self.rigging.zones, self.interior.air
        envelope_pa = self.envelope_pa
        self._true[:, 0] = envelope_pa[:, 0]
        self._true[:, 1] = element_pa
        if taps > 1:
            self._true[:, 2 : 1 + taps] = envelope_pa[:, 1:]
        first = 1 + taps
        if zones:
            self._true[:, first : first + zones] = self.zone_pa[:, :zones]
        for at, pressure_pa in enumerate(further_pa):
            self._true[:, first + zones + at] = pressure_pa
        first += zones + self.rigging.fans - 1
        self._true[:, first], self._true[:, first + 1] = air.indoor_c, air.outdoor_c
        self._true[:, first + 2], self._true[:, first + 3] = air.barometric_pa, 100.0 * air.indoor_rh


def _streams(seed: int) -> list[np.random.Generator]:
    """Return the sources of noise, each of its own; those of further fans come last."""
    return np.random.default_rng(seed).spawn(4 + MOST_FANS)


def _winds(houses: Sequence[House], wind_m_s: float | Sequence[float] | None) -> Sequence[float]:
    match wind_m_s:
        case None:
            return [house.climate.wind_m_s for house in houses]
        case float() | int():
            return [wind_m_s] * len(houses)
        case _:
            return wind_m_s
