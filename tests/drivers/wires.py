"""A wire of the tests: an in-memory transport that holds a link to a script of byte pairs, on virtual time."""

from __future__ import annotations

import heapq
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass, field

from drivers.clock import VirtualClock, seconds
from drivers.errors import InstrumentError, LinkLost, PortMissing, WriteBlocked

Answer = Callable[[bytes], bytes | None]
"""What a whole message is answered with, None for silence."""


@dataclass(frozen=True, slots=True)
class Pair:
    """One exchange: the message that has to come, what it is answered with and after how long."""

    sent: bytes
    reply: bytes = b""
    after_s: float = 0.005


@dataclass(slots=True)
class Wire:
    """A transport whose other end is a script, or a function for messages that come at times of their own.

    With `script` each message has to be the next one of it; `finished` fails on leftovers and on what was not expected.
    A mistake is noted, not raised: the link under test catches what a port throws.
    """

    clock: VirtualClock
    script: deque[Pair] = field(default_factory=deque)
    answer: Answer | None = None
    latency_s: float = 0.005
    url: str = "test:wire"
    plugged: bool = True
    blocked: bool = False
    refusal: InstrumentError | None = None
    split: int | None = None
    written: list[tuple[int, bytes]] = field(default_factory=list)
    opened_ns: list[int] = field(default_factory=list)
    reads: int = 0
    mistakes: list[str] = field(default_factory=list)
    is_open: bool = False
    _coming: list[tuple[int, int, bytes]] = field(default_factory=list)
    _arrived: bytearray = field(default_factory=bytearray)
    _count: int = 0

    # --- the link's side ------------------------------------------------------------------------------------------

    def open(self) -> None:
        """Open; fails while unplugged or refused."""
        self.opened_ns.append(self.clock.now_ns())
        if self.refusal is not None:
            raise self.refusal
        if not self.plugged:
            raise PortMissing(f"{self.url} is not there.")
        self.is_open = True
        self._coming.clear()
        self._arrived.clear()

    def close(self) -> None:
        """Close."""
        self.is_open = False

    def read(self, timeout_s: float) -> bytes:
        """Return what has arrived by now, at most `split` bytes of it."""
        self._check()
        self.reads += 1
        while self._coming and self._coming[0][0] <= self.clock.now_ns():
            self._arrived += heapq.heappop(self._coming)[2]
        count = len(self._arrived) if self.split is None else self.split
        data = bytes(self._arrived[:count])
        del self._arrived[:count]
        return data

    def write(self, data: bytes) -> None:
        """Take a message and have its answer come."""
        self._check()
        if self.blocked:
            raise WriteBlocked(f"{self.url} does not take the bytes.")
        self.written.append((self.clock.now_ns(), data))
        if self.answer is not None:
            self.say(self.answer(data) or b"", self.latency_s)
        elif not self.script:
            self.mistakes.append(f"nothing more was expected, {data!r} came")
        elif self.script[0].sent != data:
            self.mistakes.append(f"{self.script[0].sent!r} was expected, {data!r} came")
        else:
            pair = self.script.popleft()
            self.say(pair.reply, pair.after_s)

    # --- the test's side ------------------------------------------------------------------------------------------

    def say(self, data: bytes, after_s: float = 0.0) -> None:
        """Have bytes arrive after a while, asked or not."""
        if data:
            self._count += 1
            heapq.heappush(self._coming, (self.clock.now_ns() + seconds(after_s), self._count, data))

    def unplug(self) -> None:
        """Pull the plug."""
        self.plugged = False

    def replug(self) -> None:
        """Put it back."""
        self.plugged = True

    def sent(self, message: bytes) -> list[int]:
        """Return the times at which a message came."""
        return [time_ns for time_ns, data in self.written if data == message]

    def messages(self) -> list[bytes]:
        """Return the messages that came."""
        return [data for _, data in self.written]

    def finished(self) -> None:
        """Fail on what came unexpected and on what did not come."""
        assert not self.mistakes, "; ".join(self.mistakes)
        assert not self.script, f"{self.script[0].sent!r} was expected and did not come"

    def _check(self) -> None:
        if not self.is_open:
            self.mistakes.append("the port was used while closed")
            raise LinkLost(f"{self.url} is not open.")
        if not self.plugged:
            raise LinkLost(f"{self.url} went away.")


def run(clock: VirtualClock, duration_s: float) -> None:
    """Let virtual time pass."""
    clock.wait_until(clock.now_ns() + seconds(duration_s))


def with_checksum(body: str) -> bytes:
    """Return a line of the line gauge: body, `;`, exclusive or of the body's bytes in hexadecimal, line end."""
    value = 0
    for byte in body.encode("ascii"):
        value ^= byte
    return f"{body};{value:02X}\r\n".encode("ascii")
