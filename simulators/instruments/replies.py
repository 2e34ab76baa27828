"""Replies of an instrument that thinks for a moment before it answers."""

from __future__ import annotations

from collections import deque

from drivers.clock import seconds
from simulators.world import World

LATENCY_NS = seconds(0.005)


class Replies:
    """What was answered and has not gone out yet, in order. Asking for what is due moves the world on to now."""

    def __init__(self, world: World) -> None:
        """Start with nothing answered."""
        self._world = world
        self._waiting: deque[tuple[int, bytes]] = deque()

    def put(self, reply: bytes, now_ns: int) -> None:
        """Answer a request that was understood now; the caller holds the lock of the world."""
        self._waiting.append((now_ns + LATENCY_NS, reply))

    def due(self, now_ns: int) -> bytes:
        """Return the replies whose time has come."""
        with self._world.lock:
            self._world.advance(now_ns)
            due = bytearray()
            while self._waiting and self._waiting[0][0] <= now_ns:
                due += self._waiting.popleft()[1]
            return bytes(due)

    def next_ns(self) -> int | None:
        """Return when the next reply goes out, None where none waits."""
        with self._world.lock:
            return self._waiting[0][0] if self._waiting else None
