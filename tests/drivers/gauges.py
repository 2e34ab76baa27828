"""Gauges on a wire in memory, and what is asked of them again and again in the tests of links."""

from __future__ import annotations

from drivers.device import Gauge, connect
from drivers.instrument import LinkState
from drivers.profile import load_profile
from drivers.reading import Reading
from tests.drivers.wires import Answer, Wire, with_checksum

IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"
OTHER = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0099,1.0\n"
FAN = b"AIRSEAM DEMO,SCPI-FAN,SF-0003,1.0\n"
LINE_IDENTITY = with_checksum("id=LINE-GAUGE,LG-0007")
SETTLED_S = 0.1


def values(p1: float, p2: str = "1.03400E+02") -> bytes:
    return f"{p1:.5E},{p2},9.91E37,9.91E37,2.10400E+01,1.12300E+01,1.01325E+05,4.50000E+01\n".encode()


def counting(identity: bytes = IDENTITY) -> Answer:
    """Answer as a gauge whose p1 counts the requests."""
    count = iter(range(1, 100_000))
    return lambda message: identity if message == b"*IDN?\n" else values(float(next(count)))


def gauge_on(wire: Wire, profile_id: str = "scpi-gauge", serial: str = "") -> Gauge:
    gauge = connect("gauge", load_profile(profile_id), wire, wire.clock, serial=serial)
    assert isinstance(gauge, Gauge)
    return gauge


def started(wire: Wire, serial: str = "") -> Gauge:
    gauge = gauge_on(wire, serial=serial)
    gauge.start()
    return gauge


def state_of(gauge: Gauge) -> LinkState:
    return gauge.status().state


def p1_of(readings: list[Reading] | tuple[Reading, ...]) -> list[float]:
    return [reading.value for reading in readings if reading.channel == "gauge.p1"]


def taken(gauge: Gauge) -> list[float]:
    return p1_of(list(gauge.take()))


def is_sentence(text: str) -> bool:
    return len(text) > 12 and text.endswith(".") and " " in text
