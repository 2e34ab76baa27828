"""A fan drive with SCPI: takes speed and direction, and stops by itself when it hears nothing for a while."""

from __future__ import annotations

from drivers.clock import seconds
from simulators.instruments.scpi import ScpiError, ScpiInstrument, no_parameter, number_in
from simulators.world import World

IDENTITY = "AIRSEAM DEMO,SCPI-FAN,SF-0003,1.0"
FURTHER_IDENTITY = "AIRSEAM DEMO,SCPI-FAN,SF-{:04d},1.0"
FURTHER_SERIALS = (8, 11, 15)
DEFAULT_TIMEOUT_S = 2.0
SHORTEST_TIMEOUT_S, LONGEST_TIMEOUT_S = 0.1, 60.0
DIRECTIONS = {"OUT": -1, "IN": 1}
"""OUT blows air out of the house (depressurizes), IN into it."""


class ScpiFan(ScpiInstrument):
    """Drives the fan of the world's plant, or a further one; their direction is one."""

    def __init__(self, world: World, seat: int = 0) -> None:
        """Stand still, blowing out; `seat` counts the fans from 0."""
        self._seat = seat
        identity = FURTHER_IDENTITY.format(FURTHER_SERIALS[seat - 1]) if seat else IDENTITY
        commands = {
            "FAN:SPEED": self._set_speed,
            "FAN:SPEED?": no_parameter(lambda: f"{self._speed:.4f}"),
            "FAN:DIRECTION": self._set_direction,
            "FAN:DIRECTION?": no_parameter(self._direction),
            "SYSTem:COMMunicate:TIMEOUT": self._set_timeout,
            "SYSTem:COMMunicate:TIMEOUT?": no_parameter(lambda: f"{self._timeout_s:.1f}"),
        }
        super().__init__(world, identity, commands)
        self._timeout_s = DEFAULT_TIMEOUT_S
        self._heard_ns: int | None = None
        world.attach(self)

    def heard(self, now_ns: int) -> None:
        """Restart the time that may pass without a message."""
        self._heard_ns = now_ns

    def follow(self, now_ns: int) -> None:
        """Stop when nothing was heard for too long."""
        if self._heard_ns is None or now_ns - self._heard_ns >= seconds(self._timeout_s):
            self._world.speeds[self._seat] = 0.0

    @property
    def _speed(self) -> float:
        return self._world.speeds[self._seat]

    def _set_speed(self, parameter: str) -> None:
        self._world.speeds[self._seat] = number_in(parameter, 0.0, 1.0)

    def _set_direction(self, parameter: str) -> None:
        if not parameter:
            raise ScpiError(-109)
        direction = DIRECTIONS.get(parameter.upper())
        if direction is None:
            raise ScpiError(-224)
        if direction == self._world.direction:
            return
        if self._speed > 0.0 or not self._world.plant.motor.at_rest:
            raise ScpiError(-221)
        self._world.direction = direction

    def _direction(self) -> str:
        return next(word for word, sign in DIRECTIONS.items() if sign == self._world.direction)

    def _set_timeout(self, parameter: str) -> None:
        self._timeout_s = number_in(parameter, SHORTEST_TIMEOUT_S, LONGEST_TIMEOUT_S)
