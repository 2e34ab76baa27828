"""Instruments behind real pseudo-terminals, read with the serial library that the program uses."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest
import serial

from drivers.clock import ScaledClock, VirtualClock, seconds
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from simulators.server import WireServer, serve_pty
from tests.simulators.rigs import virtual_rig

pytestmark = pytest.mark.skipif(os.name != "posix", reason="pseudo-terminals are for Linux and macOS")

IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"


def new_rig(protocol: str = "scpi", factor: float = 20.0) -> SimulatedRig:
    return SimulatedRig(load_house("mill-row"), 1, ScaledClock(factor), protocol=protocol)


@pytest.fixture
def rig() -> SimulatedRig:
    return new_rig()


@pytest.fixture
def server(rig: SimulatedRig, tmp_path: Path) -> Iterator[WireServer]:
    server = serve_pty(rig, tmp_path)
    yield server
    server.close()


def port(server: WireServer, name: str) -> serial.Serial:
    return serial.Serial(server[name], 9600, timeout=2.0, write_timeout=2.0, exclusive=True)


def ask(client: serial.Serial, message: bytes) -> bytes:
    client.write(message)
    return bytes(client.read_until(b"\n"))


def test_every_instrument_answers_on_its_terminal(server: WireServer) -> None:
    assert set(server) == {"gauge", "fan"}
    with port(server, "gauge") as gauge, port(server, "fan") as fan:
        assert ask(gauge, b"*IDN?\n") == IDENTITY
        assert ask(fan, b"FAN:SPEED 0.4520;SPEED?\n") == b"0.4520\n"


def test_without_a_folder_the_address_is_the_terminal_itself(rig: SimulatedRig) -> None:
    server = serve_pty(rig)
    try:
        assert Path(server["gauge"]).is_char_device()
        with port(server, "gauge") as gauge:
            assert ask(gauge, b"*IDN?\n") == IDENTITY
    finally:
        server.close()


def test_a_client_that_sets_nothing_up_still_gets_raw_bytes(server: WireServer) -> None:
    client = os.open(server["gauge"], os.O_RDWR | os.O_NOCTTY)
    try:
        os.write(client, b"*IDN?\r\n")
        received = b""
        while not received.endswith(b"\n"):
            received += os.read(client, 100)
        assert received == IDENTITY
        # Nor did the terminal echo the reply to the instrument, which would have taken it for a command.
        os.write(client, b"SYST:ERR?\n")
        assert os.read(client, 100) == b'0,"No error"\n'
    finally:
        os.close(client)


def test_a_client_may_go_and_come_back(server: WireServer) -> None:
    for _ in range(5):
        with port(server, "gauge") as gauge:
            assert ask(gauge, b"*IDN?\n") == IDENTITY


def test_the_last_words_of_a_client_are_heard(rig: SimulatedRig, server: WireServer) -> None:
    with port(server, "fan") as fan:
        ask(fan, b"FAN:SPEED 0.5;SPEED?\n")
        fan.write(b"SYST:COMM:TIMEOUT 33\n")
    with port(server, "fan") as fan:
        assert ask(fan, b"SYST:COMM:TIMEOUT?\n") == b"33.0\n"


def test_pulled_and_put_back_the_port_has_its_old_name(server: WireServer) -> None:
    gauge = port(server, "gauge")
    assert ask(gauge, b"*IDN?\n") == IDENTITY
    server.unplug("gauge")
    assert not Path(server["gauge"]).exists()
    with pytest.raises((serial.SerialException, OSError)):
        ask(gauge, b"*IDN?\n")
    gauge.close()
    with pytest.raises(serial.SerialException):
        port(server, "gauge")
    with port(server, "fan") as fan:
        assert ask(fan, b"FAN:SPEED?\n") == b"0.0000\n"
    server.replug("gauge")
    with port(server, "gauge") as gauge:
        assert ask(gauge, b"*IDN?\n") == IDENTITY


def test_a_client_that_does_not_read_holds_nobody_up(tmp_path: Path) -> None:
    rig = new_rig("lines", factor=200.0)
    server = serve_pty(rig, tmp_path)
    try:
        with port(server, "gauge"), port(server, "fan") as fan:
            # More lines than any buffer of a terminal keeps: 240 s of them are 100 kB.
            start_s = rig.plant.time_s
            while rig.plant.time_s < start_s + 240.0:
                assert ask(fan, b"FAN:SPEED?\n") == b"0.0000\n"
                rig.clock.wait_until(rig.clock.now_ns() + seconds(4.0))
            server.unplug("gauge")
            assert not Path(server["gauge"]).is_symlink()
            server.replug("gauge")
        with port(server, "gauge") as gauge:
            assert gauge.read_until(b"\r\n") != b""
    finally:
        server.close()


def test_lines_come_ten_times_a_second_of_the_scaled_clock(tmp_path: Path) -> None:
    rig = new_rig("lines")
    server = serve_pty(rig, tmp_path)
    try:
        with port(server, "gauge") as gauge:
            gauge.read_until(b"\r\n")
            start_ns = rig.clock.now_ns()
            lines = [gauge.read_until(b"\r\n") for _ in range(40)]
            took_s = (rig.clock.now_ns() - start_ns) / 1e9
        assert all(line.startswith(b"p1=") for line in lines)
        assert 2.0 < took_s < 12.0
    finally:
        server.close()


def test_the_drive_stops_when_its_client_is_gone(rig: SimulatedRig, server: WireServer) -> None:
    with port(server, "fan") as fan:
        assert ask(fan, b"FAN:SPEED 0.5;SPEED?\n") == b"0.5000\n"
    rig.clock.wait_until(rig.clock.now_ns() + seconds(4.0))
    with port(server, "fan") as fan:
        assert ask(fan, b"FAN:SPEED?\n") == b"0.0000\n"


def test_closing_leaves_no_link_behind(rig: SimulatedRig, tmp_path: Path) -> None:
    server = serve_pty(rig, tmp_path)
    server.close()
    server.close()
    assert list(tmp_path.iterdir()) == []


def test_virtual_time_has_no_wires() -> None:
    rig = virtual_rig()
    assert isinstance(rig.clock, VirtualClock)
    with pytest.raises(ValueError, match="runs by itself"):
        serve_pty(rig)
