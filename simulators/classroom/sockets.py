"""The ports of a class: one listener each, what comes over them, and how much of it is taken.

Everything is non-blocking. What a client does not read is lost, as it is on a wire; what it sends too fast stays with
it; who says nothing makes room for who comes.
"""

from __future__ import annotations

import contextlib
import os
import selectors
import socket
from collections.abc import Callable
from dataclasses import dataclass

from drivers.clock import NS_PER_S
from simulators.classroom.address import is_private
from simulators.instruments.device import Device

BACKLOG = 128
"""So many may knock at one moment: who has to knock again waits for a second."""
CHUNK_BYTES = 1024
"""Taken from a client in one round."""
BYTES_PER_S = 16_384
"""Taken from a client in the long run: a program asks for some hundred bytes a second."""
BURST_BYTES = 8_192
LEAST_BYTES = 32
"""What one look at a client costs of that, however little it brought: single bytes are no way round it."""
MOST_RESTS = 10
"""Who sends too fast so often, one time after the other, is sent away."""
KEPT_BYTES = 4096
AWAY_S = 2.0
"""Who was sent away for it finds the port shut for so long."""
SILENT_S = 3.0
"""A client that said nothing for so long gives way to one that comes: its computer may have gone."""


@dataclass(slots=True, eq=False)
class Client:
    """Who is at a port. `heard_ns` is when bytes last came."""

    connection: socket.socket
    peer: str
    heard_ns: int
    budget: float = BURST_BYTES
    filled_ns: int = 0
    unsent: bytes = b""
    resting: bool = False
    """Whether it sent too fast: for a moment nothing more is taken from it."""
    rests: int = 0
    """How often that was so without a pause to breathe."""

    def may_send(self, now_ns: int) -> bool:
        """Tell whether a chunk may be taken now; less is not worth a look, which would be one after the other."""
        passed_s = max(now_ns - self.filled_ns, 0) / NS_PER_S
        self.budget = min(self.budget + passed_s * BYTES_PER_S, BURST_BYTES)
        if self.budget == BURST_BYTES:
            self.rests = 0
        self.filled_ns = now_ns
        return self.budget >= CHUNK_BYTES


def listen(host: str, port: int) -> socket.socket:
    """Return a listener; raises `OSError` when the port is taken."""
    listener = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    try:
        if os.name == "posix":
            listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        listener.bind((host, port))
        listener.listen(BACKLOG)
        listener.setblocking(False)
    except OSError:
        listener.close()
        raise
    return listener


def answer(listener: socket.socket) -> tuple[socket.socket, str] | None:
    """Take who knocks, with its address; who comes from no private network is sent away."""
    try:
        connection, (peer, _) = listener.accept()
    except OSError:
        return None
    if not is_private(peer):
        connection.close()
        return None
    connection.setblocking(False)
    connection.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
    connection.setsockopt(socket.SOL_SOCKET, socket.SO_KEEPALIVE, 1)
    return connection, peer


def _send(client: Client) -> bool:
    """Send what the client takes; false when it is gone."""
    try:
        client.unsent = client.unsent[client.connection.send(client.unsent) :]
    except BlockingIOError:
        pass
    except OSError:
        return False
    return True


class InstrumentPort:
    """An instrument at a port: one client at a time, or any number with `fresh`, which makes an instrument for each."""

    def __init__(
        self,
        name: str,
        device: Device,
        listener: socket.socket,
        selector: selectors.BaseSelector,
        fresh: Callable[[], Device] | None = None,
        most: int = 1,
    ) -> None:
        """Wait for clients."""
        self.name = name
        self._device = device
        self._listener = listener
        self._selector = selector
        self._fresh = fresh
        self._most = most
        self._talks = device.next_ns() is not None
        self.plugged = True
        self.owner = ""
        """The address from which the student of this house said a name: nobody from elsewhere keeps it away."""
        self.clients: dict[Client, Device] = {}
        self._away: dict[str, int] = {}
        """Who was sent away, and until when."""
        selector.register(listener, selectors.EVENT_READ, self._knocked)

    @property
    def place(self) -> tuple[str, int]:
        """Address and port."""
        host, port = self._listener.getsockname()
        return str(host), int(port)

    def _knocked(self, now_ns: int) -> None:
        came = answer(self._listener)
        if came is None:
            return
        connection, peer = came
        if now_ns < self._away.get(peer, now_ns):
            connection.close()
            return
        if self.plugged and len(self.clients) >= self._most:
            self._make_room(peer, now_ns)
        if not self.plugged or len(self.clients) >= self._most:
            connection.close()
            return
        client = Client(connection, peer, now_ns, filled_ns=now_ns)
        self.clients[client] = self._device if self._fresh is None else self._fresh()
        self._listen_to(client)

    def _listen_to(self, client: Client) -> None:
        client.resting = False
        self._selector.register(client.connection, selectors.EVENT_READ, lambda at_ns: self._heard(client, at_ns))

    def _make_room(self, peer: str, now_ns: int) -> None:
        """Send away who has been silent; an instrument that talks by itself is listened to in silence."""
        for client in list(self.clients):
            silent = now_ns - client.heard_ns > SILENT_S * NS_PER_S
            usurped = peer == self.owner != client.peer
            if usurped or (silent and not self._talks) or (self._talks and client.peer == peer):
                self.hang_up(client)
                return

    def _heard(self, client: Client, now_ns: int) -> None:
        if not client.may_send(now_ns):
            client.resting, client.rests = True, client.rests + 1
            if client.rests > MOST_RESTS:
                self._away[client.peer] = now_ns + round(AWAY_S * NS_PER_S)
                self.hang_up(client)
                return
            self._selector.unregister(client.connection)
            return
        try:
            data = client.connection.recv(CHUNK_BYTES)
        except BlockingIOError:
            return
        except OSError:
            data = b""
        if not data:
            self.hang_up(client)
            return
        client.budget -= max(len(data), LEAST_BYTES)
        client.heard_ns = now_ns
        self.clients[client].receive(data, now_ns)

    def tend(self, now_ns: int) -> int | None:
        """Send what the instruments have to say; return when they next have something."""
        due: int | None = None
        if not self.clients:
            self._device.send(now_ns)
        for client, device in list(self.clients.items()):
            if client.resting and client.may_send(now_ns):
                self._listen_to(client)
            client.unsent = (client.unsent + device.send(now_ns))[:KEPT_BYTES]
            if client.unsent and not _send(client):
                self.hang_up(client)
                continue
            next_ns = device.next_ns()
            if next_ns is not None:
                due = next_ns if due is None else min(due, next_ns)
        return due

    def hang_up(self, client: Client) -> None:
        """Part with a client; what it left half said is forgotten."""
        device = self.clients.pop(client, None)
        if device is None:
            return
        with contextlib.suppress(KeyError, ValueError):
            self._selector.unregister(client.connection)
        client.connection.close()
        device.receive(b"\n", client.heard_ns)

    def close(self) -> None:
        """Send everybody away and listen no more."""
        for client in list(self.clients):
            self.hang_up(client)
        with contextlib.suppress(KeyError, ValueError):
            self._selector.unregister(self._listener)
        self._listener.close()
