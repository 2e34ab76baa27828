"""A gauge that talks by itself: ten lines a second, each closed by a checksum, whether anybody listens or not."""

from __future__ import annotations

import math
from collections import deque

from simulators.gauge import PRESSURE_END_PA
from simulators.world import World

NAME = "LINE-GAUGE"
SERIAL = "LG-0007"
FIELDS = ("p1", "p2", "t1", "t2")
LONGEST_QUEUE = 50
"""Lines kept when nobody takes them off; older ones are gone, as they are on a wire."""
LONGEST_QUESTION = 16


class LineGauge:
    """Sends a line at every step of the world; answers `?` with its identity."""

    def __init__(self, world: World, serial: str = SERIAL) -> None:
        """Follow the world."""
        self._world = world
        self.serial = serial
        self._lines: deque[bytes] = deque(maxlen=LONGEST_QUEUE)
        self._received = bytearray()
        self._asked = False
        world.attach(self)

    def receive(self, data: bytes, now_ns: int) -> None:
        """Take bytes; all that is understood is a `?` on a line of its own."""
        with self._world.lock:
            self._world.advance(now_ns)
            for byte in data:
                if byte == 0x0A:
                    self._asked = self._asked or bytes(self._received).strip() == b"?"
                    self._received.clear()
                elif len(self._received) < LONGEST_QUESTION:
                    self._received.append(byte)

    def send(self, now_ns: int) -> bytes:
        """Return the lines since the last call."""
        with self._world.lock:
            self._world.advance(now_ns)
            lines = b"".join(self._lines)
            self._lines.clear()
            return lines

    def next_ns(self) -> int | None:
        """Return when the next line goes out."""
        with self._world.lock:
            return self._world.next_ns

    def follow(self, now_ns: int) -> None:
        """Write the line of this step, and the identity behind it when it was asked for."""
        self._lines.append(framed(" ".join(f"{name}={self._field(name)}" for name in FIELDS)))
        if self._asked:
            self._asked = False
            self._lines.append(framed(f"id={NAME},{self.serial}"))

    def _field(self, name: str) -> str:
        value = self._world.reading(name)
        if math.isnan(value) or (name.startswith("p") and abs(value) >= PRESSURE_END_PA):
            return "OVER"
        return f"{value + 0.0:.2f}"


def framed(text: str) -> bytes:
    """Return a line as it goes out: text, `;`, the exclusive or of its bytes as two hexadecimal digits, line end."""
    body = text.encode("ascii")
    check = 0
    for byte in body:
        check ^= byte
    return body + b";%02X\r\n" % check
