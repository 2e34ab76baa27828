"""A wire in memory: a `Transport` to a simulated instrument, on any clock, with faults to order.

The port is the thing on the wall, plugged or not, used by one at a time; a transport is what one user holds of it.
"""

from __future__ import annotations

import threading
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass

from drivers.clock import Clock, seconds
from drivers.errors import LinkLost, PortBusy, PortMissing
from simulators.instruments.device import Device
from simulators.pace import clock_ns, clock_rate, real_seconds

BUFFER_BYTES = 4096
"""What is kept of bytes that nobody reads; later ones are lost, as with a real port."""
SHORTEST_WAIT_S = 0.0002


@dataclass(frozen=True, slots=True)
class Faults:
    """What is wrong with the wire.

    `split`: a read returns at most so many bytes. `delay_s`: bytes from the instrument come late by so much.
    `drop_every` / `corrupt_every`: each so-manieth byte from the instrument is lost / has one bit turned over.
    `deaf`: nothing that is written reaches the instrument. `mute`: nothing of what it says arrives.
    """

    split: int | None = None
    delay_s: float = 0.0
    drop_every: int | None = None
    corrupt_every: int | None = None
    deaf: bool = False
    mute: bool = False


class MemoryPort:
    """A port with an instrument at its other end. Thread-safe."""

    def __init__(self, url: str, device: Device, clock: Clock) -> None:
        """Have it plugged in and without faults."""
        self.url = url
        self._device = device
        self._clock = clock
        self._rate = clock_rate(clock)
        self._lock = threading.RLock()
        self._moved = threading.Event()
        self._plugged = True
        self._busy = False
        self._faults = Faults()
        self._user: MemoryTransport | None = None
        self._coming: deque[tuple[int, bytes]] = deque()
        self._read = bytearray()
        self._passed = 0
        self._script: list[tuple[int, Callable[[], object]]] = []

    @property
    def faults(self) -> Faults:
        """What is wrong with the wire at present; set it to change it."""
        return self._faults

    @faults.setter
    def faults(self, faults: Faults) -> None:
        with self._lock:
            self._faults = faults
            self._passed = 0

    def unplug(self) -> None:
        """Pull the instrument off: whoever uses the port loses it, opening fails."""
        with self._lock:
            self._plugged = False
            self._forget()

    def replug(self) -> None:
        """Plug the instrument in again."""
        with self._lock:
            self._plugged = True

    def occupy(self, busy: bool) -> None:
        """Let another program hold the port, or give it back."""
        with self._lock:
            self._busy = busy

    def at(self, time_s: float, action: Callable[[], object]) -> None:
        """Do something when the clock comes to `time_s` seconds from now, as soon as the port is then used."""
        with self._lock:
            self._script.append((self._clock.now_ns() + seconds(time_s), action))
            self._script.sort(key=lambda item: item[0])

    def attach(self, user: MemoryTransport) -> None:
        """Open for a user; raises `PortMissing` or `PortBusy`."""
        with self._lock:
            self._run_script()
            if not self._plugged:
                raise PortMissing(f"There is no port {self.url}.")
            if self._busy or (self._user is not None and self._user is not user):
                raise PortBusy(f"{self.url} is in use by another program or was only just released.")
            self._user = user
            self._forget()

    def detach(self, user: MemoryTransport) -> None:
        """Close for a user."""
        with self._lock:
            if self._user is user:
                self._user = None
                self._forget()

    def take(self, user: MemoryTransport) -> bytes:
        """Return what has arrived by now; raises `LinkLost`."""
        with self._lock:
            self._check(user)
            now_ns = self._clock.now_ns()
            self._let_through(self._device.send(now_ns), now_ns)
            while self._coming and self._coming[0][0] <= now_ns:
                self._read += self._coming.popleft()[1]
            del self._read[BUFFER_BYTES:]
            count = len(self._read) if self._faults.split is None else self._faults.split
            data = bytes(self._read[:count])
            del self._read[:count]
            return data

    def give(self, user: MemoryTransport, data: bytes) -> None:
        """Carry bytes to the instrument; raises `LinkLost`."""
        with self._lock:
            self._check(user)
            if not self._faults.deaf:
                self._device.receive(data, self._clock.now_ns())

    def await_bytes(self, user: MemoryTransport, timeout_s: float) -> bytes:
        """Return what arrives within so many real seconds; at once on virtual time, which waiting does not move."""
        data = self.take(user)
        if self._rate is None:
            return data
        end_ns = self._clock.now_ns() + clock_ns(timeout_s, self._rate)
        while not data and (now_ns := self._clock.now_ns()) < end_ns:
            with self._lock:
                known = [time_ns for time_ns in (self._device.next_ns(), self._first_coming_ns()) if time_ns]
            wait_s = real_seconds(min([end_ns, *known]) - now_ns, self._rate)
            self._moved.wait(max(wait_s, SHORTEST_WAIT_S))
            self._moved.clear()
            data = self.take(user)
        return data

    def _check(self, user: MemoryTransport) -> None:
        self._run_script()
        if self._user is not user:
            raise LinkLost(f"{self.url} is closed.")
        if not self._plugged:
            raise LinkLost(f"{self.url} is gone.")

    def _run_script(self) -> None:
        while self._script and self._script[0][0] <= self._clock.now_ns():
            self._script.pop(0)[1]()

    def _first_coming_ns(self) -> int | None:
        return self._coming[0][0] if self._coming else None

    def _let_through(self, data: bytes, now_ns: int) -> None:
        faults = self._faults
        arriving = b"" if faults.mute else data
        if faults.drop_every or faults.corrupt_every:
            arriving = self._damaged(arriving)
        if arriving:
            self._coming.append((now_ns + seconds(faults.delay_s), arriving))

    def _damaged(self, data: bytes) -> bytes:
        faults = self._faults
        arriving = bytearray()
        for byte in data:
            self._passed += 1
            if faults.drop_every and self._passed % faults.drop_every == 0:
                continue
            turned = faults.corrupt_every and self._passed % faults.corrupt_every == 0
            arriving.append(byte ^ 0x04 if turned else byte)
        return bytes(arriving)

    def _forget(self) -> None:
        """Lose what is on its way, and what the instrument says while nobody listens."""
        self._device.send(self._clock.now_ns())
        self._coming.clear()
        self._read.clear()
        self._moved.set()


class MemoryTransport:
    """One user's hold on a port."""

    def __init__(self, port: MemoryPort) -> None:
        """Open nothing yet."""
        self.port = port

    @property
    def url(self) -> str:
        """The port's address."""
        return self.port.url

    def open(self) -> None:
        """Open; raises `PortMissing` or `PortBusy`."""
        self.port.attach(self)

    def close(self) -> None:
        """Close; may be called twice."""
        self.port.detach(self)

    def read(self, timeout_s: float) -> bytes:
        """Return what arrives within `timeout_s` real seconds (at once on virtual time); raises `LinkLost`."""
        return self.port.await_bytes(self, timeout_s)

    def write(self, data: bytes) -> None:
        """Send; raises `LinkLost`."""
        self.port.give(self, data)
