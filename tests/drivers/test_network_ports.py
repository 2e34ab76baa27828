"""Ports over a network and half messages: what pyserial's other back ends do when things go wrong."""

from __future__ import annotations

import os
import socket
import struct
import threading
from collections.abc import Iterator
from contextlib import closing, contextmanager
from functools import partial
from pathlib import Path

import pytest
import serial
from serial import rfc2217

from drivers.clock import WallClock
from drivers.device import Gauge, connect
from drivers.errors import LinkLost, PortMissing, WriteBlocked
from drivers.instrument import LinkState
from drivers.profile import load_profile
from drivers.serialport import SLICE_S, open_url
from drivers.transport import Transport
from tests.drivers.terminals import WALL, Terminal, eventually

IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"
REPLY = b"-5.01200E+01,1.03400E+02,9.91E37,9.91E37,2.10400E+01,1.12300E+01,1.01325E+05,4.50000E+01\n"
DESCRIPTORS = Path("/proc/self/fd")


@contextmanager
def listening() -> Iterator[tuple[socket.socket, str]]:
    with closing(socket.create_server(("127.0.0.1", 0))) as server:
        server.settimeout(5.0)
        yield server, f"127.0.0.1:{server.getsockname()[1]}"


@contextmanager
def serving(server: socket.socket, reset: threading.Event) -> Iterator[None]:
    """Answer one client after the other as a gauge; drop a client hard when `reset` is set."""
    server.settimeout(0.02)
    clients: list[socket.socket] = []

    def pump(now_ns: int) -> int:
        if not clients:
            try:
                client, _ = server.accept()
            except TimeoutError:
                return now_ns
            client.settimeout(0.02)
            clients.append(client)
        client = clients[0]
        try:
            message = client.recv(100)
            if message:
                client.sendall(IDENTITY if message == b"*IDN?\n" else REPLY)
        except TimeoutError:
            message = b"?"
        if reset.is_set():
            # No lingering: the other side sees a reset, not an end.
            client.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
        if reset.is_set() or not message:
            reset.clear()
            clients.clear()
            client.close()
        return now_ns

    hosted = WALL.host(pump, "test server")
    try:
        yield
    finally:
        assert hosted.stop()
        for client in clients:
            client.close()


def test_a_gauge_behind_a_network_port_is_read_lost_and_found_again() -> None:
    reset = threading.Event()
    with listening() as (server, address), serving(server, reset):
        gauge = connect("gauge", load_profile("scpi-gauge"), open_url(f"socket://{address}"), WallClock())
        assert isinstance(gauge, Gauge)
        gauge.start()
        try:
            assert eventually(lambda: gauge.status().readings > 2)
            reset.set()
            assert eventually(lambda: gauge.status().state is LinkState.LOST)
            assert gauge.status().sentence.startswith(f"socket://{address} went away")
            assert eventually(lambda: gauge.status().reconnects == 1), gauge.status()
        finally:
            gauge.close()


@pytest.mark.skipif(not DESCRIPTORS.is_dir(), reason="this system does not list open descriptors")
def test_a_reset_connection_costs_no_descriptor() -> None:
    with listening() as (server, address):
        before = len(list(DESCRIPTORS.iterdir()))
        for _ in range(2):
            port = open_url(f"socket://{address}")
            port.open()
            client, _ = server.accept()
            client.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
            client.close()
            assert eventually(partial(is_lost, port))
            port.close()
        assert len(list(DESCRIPTORS.iterdir())) == before


def is_lost(port: Transport) -> bool:
    try:
        port.read(SLICE_S)
    except LinkLost:
        return True
    return False


def test_what_came_before_the_end_of_a_connection_is_still_read() -> None:
    with listening() as (server, address):
        port = open_url(f"socket://{address}")
        port.open()
        client, _ = server.accept()
        client.sendall(REPLY)
        client.close()
        WALL.wait_until(WALL.now_ns() + 20_000_000)
        assert port.read(SLICE_S) == REPLY
        with pytest.raises(LinkLost):
            port.read(SLICE_S)
        port.close()


@pytest.mark.filterwarnings("ignore:set(Daemon|Name)\\(\\) is deprecated:DeprecationWarning")
def test_a_port_of_rfc_2217_is_opened_and_read() -> None:
    """The open standard for serial ports over a network; the server side is pyserial's own."""
    with listening() as (server, address):
        served = threading.Thread(target=serve_rfc2217, args=(server,), name="test rfc2217")
        served.start()
        port = open_url(f"rfc2217://{address}")
        try:
            port.open()
            port.write(b"*IDN?\n")
            heard = bytearray()

            def whole() -> bool:
                heard.extend(port.read(SLICE_S))
                return bytes(heard).endswith(b"\n")

            assert eventually(whole)
            assert bytes(heard) == IDENTITY
        finally:
            port.close()
            served.join(5.0)


def serve_rfc2217(server: socket.socket) -> None:
    client, _ = server.accept()
    client.settimeout(0.05)
    with closing(client), closing(serial.serial_for_url("loop://", timeout=0)) as device:
        tracks = rfc2217.PortManager(device, Sender(client))
        while True:
            try:
                data = client.recv(1024)
            except TimeoutError:
                continue
            except OSError:
                return
            if not data:
                return
            if b"*IDN?" in b"".join(tracks.filter(data)):
                client.sendall(b"".join(tracks.escape(IDENTITY)))


class Sender:
    """The way back of the server side."""

    def __init__(self, client: socket.socket) -> None:
        """Take the connection."""
        self.write = client.sendall


@pytest.mark.parametrize("url", ["rfc2217://127.0.0.1:1", "socket://127.0.0.1:1", "socket://127.0.0.1", "loop:///?x=y"])
def test_a_network_port_that_nobody_serves_is_missing(url: str) -> None:
    port = open_url(url)
    with pytest.raises(PortMissing, match=r"no port address|does not answer|is not there"):
        port.open()
    port.close()


def test_a_full_loop_takes_no_more_bytes() -> None:
    port = open_url("loop://")
    port.open()
    with pytest.raises(WriteBlocked):
        port.write(b"x" * 5000)
    port.close()


def test_after_half_a_message_the_next_one_begins_on_its_own_line(tmp_path: Path) -> None:
    """Glued to the rest of a message that was cut off, a safe state would be an undefined header."""
    with Terminal(tmp_path / "port") as terminal:
        port = open_url(terminal.url)
        port.open()
        message = b"y" * 4000 + b"\n"
        with pytest.raises(WriteBlocked):
            flood(port, message)
        terminal.answer = lambda line: None
        assert eventually(lambda: terminal.heard)
        port.write(b"FAN:SPEED 0;SPEED?\n")
        assert eventually(lambda: terminal.heard[-1] == b"FAN:SPEED 0;SPEED?\n"), terminal.heard[-1][-60:]
        port.close()


def flood(port: Transport, message: bytes) -> None:
    """Write until it is refused."""
    while True:
        port.write(message)


def test_the_reason_of_a_loss_is_in_words_or_left_out(tmp_path: Path) -> None:
    with Terminal(tmp_path / "port") as terminal:
        port = open_url(terminal.url)
        port.open()
        terminal.unplug()
        with pytest.raises(LinkLost) as caught:
            port.read(0.0)
        assert str(caught.value) == f"{terminal.url} went away while it was read ({os.strerror(5)})."
        with pytest.raises(LinkLost) as caught:
            port.read(SLICE_S)
        assert "Exception" not in str(caught.value)
        port.close()
