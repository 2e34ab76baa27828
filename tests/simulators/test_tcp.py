"""Instruments behind TCP ports."""

from __future__ import annotations

import socket
from collections.abc import Iterator
from urllib.parse import urlsplit

import pytest

from drivers.clock import ScaledClock
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from simulators.server import WireServer, serve_tcp

IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"


@pytest.fixture
def server() -> Iterator[WireServer]:
    server = serve_tcp(SimulatedRig(load_house("mill-row"), 1, ScaledClock(20.0)))
    yield server
    server.close()


def client(server: WireServer, name: str = "gauge") -> socket.socket:
    address = urlsplit(server[name])
    assert address.scheme == "socket"
    return socket.create_connection((address.hostname, address.port or 0), timeout=5.0)


def ask(connection: socket.socket, message: bytes) -> bytes:
    connection.sendall(message)
    received = b""
    while not received.endswith(b"\n"):
        data = connection.recv(1000)
        if not data:
            break
        received += data
    return received


def test_clients_come_one_after_the_other(server: WireServer) -> None:
    for _ in range(5):
        with client(server) as connection:
            assert ask(connection, b"*IDN?\n") == IDENTITY


def test_a_second_client_is_sent_away_while_one_is_there(server: WireServer) -> None:
    with client(server) as first:
        assert ask(first, b"*IDN?\n") == IDENTITY
        with client(server) as second:
            assert second.recv(100) == b""
        assert ask(first, b"*IDN?\n") == IDENTITY


def test_gauge_and_fan_have_ports_of_their_own(server: WireServer) -> None:
    with client(server, "gauge") as gauge, client(server, "fan") as fan:
        assert ask(fan, b"FAN:SPEED 0.5;SPEED?\n") == b"0.5000\n"
        assert ask(gauge, b"READ?\n").count(b",") == 7


def test_only_this_machine_is_served_unless_asked_otherwise(server: WireServer) -> None:
    assert all(urlsplit(address).hostname == "127.0.0.1" for address in server.values())


def test_unplugging_hangs_up_and_replugging_keeps_the_address(server: WireServer) -> None:
    address = server["gauge"]
    with client(server) as connection:
        assert ask(connection, b"*IDN?\n") == IDENTITY
        server.unplug("gauge")
        assert connection.recv(100) == b""
    with pytest.raises(ConnectionRefusedError):
        client(server)
    server.replug("gauge")
    assert server["gauge"] == address
    with client(server) as connection:
        assert ask(connection, b"*IDN?\n") == IDENTITY


def test_a_taken_port_is_an_error_that_leaves_nothing_open() -> None:
    with socket.create_server(("127.0.0.1", 0)) as holder:
        taken = holder.getsockname()[1]
        rig = SimulatedRig(load_house("mill-row"), 1, ScaledClock(20.0))
        with pytest.raises(OSError, match="in use"):
            serve_tcp(rig, "127.0.0.1", taken)
