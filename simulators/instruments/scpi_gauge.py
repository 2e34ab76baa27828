"""Polled gauges with SCPI: one with four pressure inputs, one with eight for several outdoor taps and zones."""

from __future__ import annotations

import math
from collections.abc import Sequence

from simulators.gauge import FURTHER_ELEMENTS, PRESSURE_END_PA
from simulators.instruments.scpi import ScpiInstrument, no_parameter
from simulators.world import World

IDENTITY = "AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0"
IDENTITY_SECOND = "AIRSEAM DEMO,SCPI-GAUGE,SG-0019,1.0"
IDENTITY_8 = "AIRSEAM DEMO,SCPI-GAUGE-8,SG-0031,1.0"
AIR_FIELDS = ("t1", "t2", "b1", "h1")
FIELDS = ("p1", "p2", "p3", "p4", *AIR_FIELDS)
FIELDS_8 = ("p1", "p2", "p3", "p4", "p5", "p6", "p7", "p8", *AIR_FIELDS)
NOT_A_NUMBER = "9.91E37"
OVER_RANGE = "9.9E37"


class ScpiGauge(ScpiInstrument):
    """`READ?` reads all channels at once, `CAL:ZERO` zeroes the pressures."""

    def __init__(self, world: World, identity: str = IDENTITY, fields: Sequence[str] = FIELDS) -> None:
        """Read the gauge of the world's plant; `fields` are the channels in the order in which it sends them."""
        columns = world.plant.gauge.columns
        self._fields = [(name.startswith("p"), columns.get(name)) for name in fields]
        """Of each field whether it is a pressure, and its column; None where the gauge has no hose on it."""
        commands = {"READ?": no_parameter(self._read), "CALibration:ZERO": no_parameter(self._zero)}
        super().__init__(world, identity, commands)

    def _read(self) -> str:
        shown = self._world.readings()
        return ",".join(
            NOT_A_NUMBER if column is None else _written(shown[column], pressure) for pressure, column in self._fields
        )

    def _zero(self) -> None:
        self._world.plant.gauge.zero()


def _written(value: float, pressure: bool) -> str:
    if math.isnan(value):
        return NOT_A_NUMBER
    if pressure and abs(value) >= PRESSURE_END_PA:
        return OVER_RANGE if value > 0 else f"-{OVER_RANGE}"
    return f"{value + 0.0:.5E}"


def second_gauge(world: World) -> ScpiGauge:
    """Return the gauge at the flow elements of further fans: on its first inputs, nothing on the others."""
    nothing = ["-"] * (len(FIELDS) - len(FURTHER_ELEMENTS))
    return ScpiGauge(world, IDENTITY_SECOND, (*FURTHER_ELEMENTS, *nothing))


def eight_channel_gauge(world: World) -> ScpiGauge:
    """Return the gauge with eight pressure inputs."""
    return ScpiGauge(world, IDENTITY_8, FIELDS_8)
