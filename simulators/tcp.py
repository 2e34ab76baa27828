"""A simulated instrument behind a TCP port, like one on a network adapter: one client at a time."""

from __future__ import annotations

import contextlib
import os
import select
import socket

from drivers.clock import Clock
from simulators.instruments.device import Device
from simulators.wire import CHUNK_BYTES, WirePort


class TcpPort(WirePort):
    """Serves an instrument on a TCP port; whoever comes while a client is there is sent away."""

    def __init__(self, name: str, device: Device, clock: Clock, host: str, port: int) -> None:
        """Open nothing yet. Port 0 takes a free one and keeps it."""
        super().__init__(name, device, clock)
        self._host = host
        self._port = port
        self._listener: socket.socket | None = None
        self._client: socket.socket | None = None

    @property
    def address(self) -> str:
        """The port as a URL."""
        return f"socket://{self._host}:{self._port}"

    @property
    def _is_there(self) -> bool:
        return self._listener is not None

    def _begin(self) -> None:
        listener = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
        try:
            if os.name == "posix":
                listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
            listener.bind((self._host, self._port))
            listener.listen(1)
            listener.setblocking(False)
        except OSError:
            listener.close()
            raise
        self._port = listener.getsockname()[1]
        self._listener = listener

    def _end(self) -> None:
        self._hang_up()
        if self._listener is not None:
            self._listener.close()
            self._listener = None

    def _wait(self, timeout_s: float) -> bytes | None:
        if self._listener is None:
            return None
        if self._client is None:
            ready, _, _ = select.select([self._listener], [], [], timeout_s)
            if ready:
                self._client = self._answer()
            return None if self._client is None else b""
        ready, _, _ = select.select([self._client, self._listener], [], [], timeout_s)
        received = self._read(self._client) if self._client in ready else b""
        if received is None:
            self._hang_up()
        elif self._listener in ready and (other := self._answer()) is not None:
            other.close()
        return received

    def _answer(self) -> socket.socket | None:
        if self._listener is None:
            return None
        try:
            client, _ = self._listener.accept()
        except OSError:
            return None
        client.setblocking(False)
        client.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        return client

    @staticmethod
    def _read(client: socket.socket) -> bytes | None:
        try:
            return client.recv(CHUNK_BYTES) or None
        except BlockingIOError:
            return b""
        except OSError:
            return None

    def _write(self, data: bytes) -> int:
        with contextlib.suppress(OSError):
            if self._client is not None:
                return self._client.send(data)
        return 0

    def _hang_up(self) -> None:
        if self._client is not None:
            self._client.close()
            self._client = None
