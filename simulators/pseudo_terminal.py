"""A simulated instrument behind a pseudo-terminal: to a client it is a serial port like any other (Linux, macOS)."""

from __future__ import annotations

import contextlib
import os
import select
import tty
from pathlib import Path

from drivers.clock import Clock
from simulators.instruments.device import Device
from simulators.wire import CHUNK_BYTES, WirePort


class PseudoTerminal(WirePort):
    """Serves an instrument on a pseudo-terminal.

    With a `link` the port has that name for good: a symbolic link that goes away with the plug and comes back with it.
    """

    def __init__(self, name: str, device: Device, clock: Clock, link: Path | None = None) -> None:
        """Open nothing yet."""
        super().__init__(name, device, clock)
        self._link = link
        self._master: int | None = None
        self._terminal = ""
        self._poll = select.poll()

    @property
    def address(self) -> str:
        """Path of the terminal or of its link."""
        return self._terminal if self._link is None else str(self._link)

    @property
    def _is_there(self) -> bool:
        return self._master is not None

    def _begin(self) -> None:
        master, client = os.openpty()
        tty.setraw(client)
        os.set_blocking(master, False)
        self._terminal = os.ttyname(client)
        # Not kept open: so the end of the last client shows, and its settings stay with the terminal.
        os.close(client)
        if self._link is not None:
            fresh = self._link.with_name(self._link.name + ".new")
            fresh.unlink(missing_ok=True)
            fresh.symlink_to(self._terminal)
            fresh.replace(self._link)
        self._poll.register(master, select.POLLIN)
        self._master = master

    def _end(self) -> None:
        master = self._master
        if master is None:
            return
        if self._link is not None:
            self._link.unlink(missing_ok=True)
        self._poll.unregister(master)
        self._master = None
        os.close(master)

    def _wait(self, timeout_s: float) -> bytes | None:
        events = self._poll.poll(int(timeout_s * 1000.0))
        if self._master is None:
            return None
        if not events:
            return b""
        if events[0][1] & select.POLLIN:
            # A terminal that no client has open ends a read with an error, after what the last one had sent.
            with contextlib.suppress(OSError):
                return os.read(self._master, CHUNK_BYTES)
        return None

    def _write(self, data: bytes) -> int:
        with contextlib.suppress(OSError):
            if self._master is not None:
                return os.write(self._master, data)
        return 0
