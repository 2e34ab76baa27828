"""A polled gauge with SCPI: eight channels, two of its pressure inputs with no hose on them."""

from __future__ import annotations

import math

from simulators.gauge import CHANNEL_NAMES, PRESSURE_END_PA
from simulators.instruments.scpi import ScpiInstrument, no_parameter
from simulators.world import World

IDENTITY = "AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0"
FIELDS = ("p1", "p2", "p3", "p4", "t1", "t2", "b1", "h1")
NOT_A_NUMBER = "9.91E37"
OVER_RANGE = "9.9E37"


class ScpiGauge(ScpiInstrument):
    """`READ?` reads all channels at once, `CAL:ZERO` zeroes the pressures."""

    def __init__(self, world: World, identity: str = IDENTITY) -> None:
        """Read the gauge of the world's plant."""
        commands = {"READ?": no_parameter(self._read), "CALibration:ZERO": no_parameter(self._zero)}
        super().__init__(world, identity, commands)

    def _read(self) -> str:
        return ",".join(self._field(name) for name in FIELDS)

    def _field(self, name: str) -> str:
        if name not in CHANNEL_NAMES:
            return NOT_A_NUMBER
        value = self._world.reading(name)
        if math.isnan(value):
            return NOT_A_NUMBER
        if name.startswith("p") and abs(value) >= PRESSURE_END_PA:
            return OVER_RANGE if value > 0 else f"-{OVER_RANGE}"
        return f"{value + 0.0:.5E}"

    def _zero(self) -> None:
        self._world.plant.gauge.zero()
