"""The loop between one operating system port and one simulated instrument, the same for terminals and sockets.

A client that goes away, comes back or does not read must never hold up the plant: everything is non-blocking, and
what a full port does not take is lost, as it is on a wire.
"""

from __future__ import annotations

import threading
from abc import ABC, abstractmethod

from drivers.clock import Clock, Hosted
from simulators.instruments.device import Device
from simulators.pace import clock_ns, clock_rate, real_seconds

LONGEST_WAIT_S = 0.02
"""Real seconds: how soon the loop notices that it is to end, or to unplug."""
FINEST_WAIT_S = 0.002
"""Shorter waits are left to the clock, which wakes more precisely than the operating system's poll."""
CHUNK_BYTES = 4096


class WirePort(ABC):
    """Serves one instrument on one port. But for begin and end, the hosted loop alone touches the port."""

    def __init__(self, name: str, device: Device, clock: Clock) -> None:
        """Open nothing yet. Virtual time raises `ValueError`: a wire needs a clock that runs by itself."""
        rate = clock_rate(clock)
        if rate is None:
            raise ValueError("a wire server needs a clock that runs by itself; virtual time has the in-memory ports")
        self.name = name
        self._device = device
        self._clock = clock
        self._rate = rate
        self._plugged = True
        self._obeyed = threading.Condition()
        self._unsent = b""
        self._hosted: Hosted | None = None

    @property
    @abstractmethod
    def address(self) -> str:
        """What a client opens."""

    def start(self) -> None:
        """Make the port and begin to serve it; raises `OSError` when the port cannot be made."""
        self._begin()
        self._hosted = self._clock.host(self._pump, f"wire {self.name}")

    def unplug(self) -> None:
        """Take the port away, as if somebody had pulled the plug; returns when it is gone."""
        self._plug(False)

    def replug(self) -> None:
        """Bring the port back; returns when it is there."""
        self._plug(True)

    def close(self) -> None:
        """End the loop and remove the port."""
        if self._hosted is not None:
            self._hosted.stop()
            self._hosted = None
        if self._is_there:
            self._end()

    def _plug(self, plugged: bool) -> None:
        with self._obeyed:
            self._plugged = plugged
            self._obeyed.wait_for(lambda: self._is_there == plugged, timeout=5.0)

    def _pump(self, now_ns: int) -> int:
        """Serve the port once; return when to come back."""
        self._obey()
        received = self._wait(self._patience_s(now_ns)) if self._is_there else None
        now_ns = self._clock.now_ns()
        if received is None:
            # Nobody is there: the instrument talks to itself.
            self._device.send(now_ns)
            self._unsent = b""
            return now_ns + clock_ns(LONGEST_WAIT_S, self._rate)
        if received:
            self._device.receive(received, now_ns)
        self._send(self._device.send(now_ns))
        soon_ns, due_ns = now_ns + 1, self._device.next_ns()
        if due_ns is None or real_seconds(due_ns - now_ns, self._rate) >= FINEST_WAIT_S:
            return soon_ns
        return max(due_ns, soon_ns)

    def _patience_s(self, now_ns: int) -> float:
        """Return how long to wait for a client: not beyond what the instrument says by itself."""
        due_ns = self._device.next_ns()
        if due_ns is None:
            return LONGEST_WAIT_S
        wait_s = real_seconds(due_ns - now_ns, self._rate) - FINEST_WAIT_S / 2
        return min(max(wait_s, 0.0), LONGEST_WAIT_S)

    def _obey(self) -> None:
        with self._obeyed:
            if self._plugged == self._is_there:
                return
            if self._plugged:
                self._begin()
            else:
                self._end()
            self._obeyed.notify_all()

    def _send(self, data: bytes) -> None:
        self._unsent = (self._unsent + data)[:CHUNK_BYTES]
        if self._unsent:
            self._unsent = self._unsent[self._write(self._unsent) :]

    @property
    @abstractmethod
    def _is_there(self) -> bool:
        """Whether the port exists at present."""

    @abstractmethod
    def _begin(self) -> None:
        """Make the port."""

    @abstractmethod
    def _end(self) -> None:
        """Remove the port."""

    @abstractmethod
    def _wait(self, timeout_s: float) -> bytes | None:
        """Return what a client has sent, waiting so many real seconds at most; None when there is no client."""

    @abstractmethod
    def _write(self, data: bytes) -> int:
        """Send what the port takes without waiting; return how many bytes that was."""
