"""SCPI with a stranger on the other side: PyVISA with PyVISA-py reads and steers our simulated instruments."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
import pyvisa

from drivers.clock import WallClock, seconds
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from simulators.server import WireServer, serve_pty, serve_tcp

CLOCK = WallClock()
UNCONNECTED = 9.91e37
"""What SCPI writes for not a number (SCPI-99, volume 1, 7.2.1.5, from memory)."""


@contextmanager
def instrument(resource: str) -> Iterator[Any]:
    """Open an instrument as any program with this library does; lines end in a line feed."""
    visa: Any = pyvisa.ResourceManager("@py")
    try:
        device = visa.open_resource(resource, read_termination="\n", write_termination="\n", timeout=2000)
        yield device
        device.close()
    finally:
        visa.close()


def socket_resource(url: str) -> str:
    host, port = url.removeprefix("socket://").rsplit(":", 1)
    return f"TCPIP0::{host}::{port}::SOCKET"


def port_resource(path: str) -> str:
    return f"ASRL{path}::INSTR"


@contextmanager
def served(over: str, folder: Path, taps: int = 1) -> Iterator[dict[str, str]]:
    """Serve a house and yield the resource names of its instruments."""
    rig = SimulatedRig(load_house("mill-row"), 1, CLOCK, taps=taps)
    server: WireServer = serve_tcp(rig) if over == "tcp" else serve_pty(rig, folder)
    try:
        name = socket_resource if over == "tcp" else port_resource
        yield {item: name(url) for item, url in server.items()}
    finally:
        server.close()


WIRES = [
    "tcp",
    pytest.param("pty", marks=pytest.mark.skipif(sys.platform == "win32", reason="Windows has no pseudo-terminals")),
]


@pytest.mark.parametrize("over", WIRES)
def test_a_stranger_reads_the_gauge(over: str, tmp_path: Path) -> None:
    with served(over, tmp_path) as resources, instrument(resources["gauge"]) as gauge:
        assert gauge.query("*IDN?") == "AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0"
        values = gauge.query_ascii_values("READ?")
        assert len(values) == 8
        assert abs(values[0]) < 10.0
        assert values[2] == values[3] == UNCONNECTED
        # Indoor temperature and air pressure of the house file.
        assert values[4] == pytest.approx(21.0, abs=0.5)
        assert values[6] == pytest.approx(101_325.0, abs=100.0)
        gauge.write("CALibration:ZERO")
        assert gauge.query("READ?").startswith("9.91E37")
        gauge.write("NO:SUCH:THING 5")
        assert gauge.query("SYSTem:ERRor?") == '-113,"Undefined header"'
        assert gauge.query("syst:err?") == '0,"No error"'


@pytest.mark.parametrize("over", WIRES)
def test_a_stranger_steers_the_fan(over: str, tmp_path: Path) -> None:
    with served(over, tmp_path) as resources, instrument(resources["fan"]) as fan:
        assert fan.query("*IDN?") == "AIRSEAM DEMO,SCPI-FAN,SF-0003,1.0"
        assert float(fan.query("SYST:COMM:TIMEOUT 0.3;TIMEOUT?")) == 0.3
        assert float(fan.query("FAN:SPEED 0.25;SPEED?")) == 0.25
        assert fan.query("FAN:DIRECTION?;:SYST:ERR?") == 'OUT;0,"No error"'
        fan.write("FAN:SPEED 2")
        assert fan.query("SYST:ERR?") == '-222,"Data out of range"'
        # Told nothing for longer than its time-out the drive stands still, whoever steers it.
        CLOCK.wait_until(CLOCK.now_ns() + seconds(0.6))
        assert float(fan.query("FAN:SPEED?")) == 0.0


def test_a_stranger_reads_eight_pressures(tmp_path: Path) -> None:
    with served("tcp", tmp_path, taps=4) as resources, instrument(resources["gauge"]) as gauge:
        assert gauge.query("*IDN?").split(",")[1] == "SCPI-GAUGE-8"
        values = gauge.query_ascii_values("READ?")
        assert len(values) == 12
        assert all(abs(value) < 10.0 for value in values[2:5])
