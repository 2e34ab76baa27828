"""Values that a person reads from a gauge and types: the keyboard as a gauge."""

from __future__ import annotations

import math
import threading
from collections import deque

from drivers.answering import COLUMNS

HAND = "hand:"
"""How the address of such a gauge begins."""
MOST_WAITING = 1000


class Keyboard:
    """Takes values from any thread and hands each out once, oldest first."""

    def __init__(self, place: str) -> None:
        """`place` is what stands behind `hand:` in the rig file."""
        self._place = place
        self._lock = threading.Lock()
        self._waiting: dict[str, deque[float]] = {name: deque(maxlen=MOST_WAITING) for name in COLUMNS}

    @property
    def name(self) -> str:
        """What it answers to `who`."""
        return f"BY-HAND,{self._place}"

    def enter(self, channel: str, value: float) -> None:
        """Take a value in the unit of the profile; raises `ValueError` for another channel or what is no number."""
        if channel not in self._waiting:
            raise ValueError(f"channel is {channel!r}: one of these is needed: {', '.join(COLUMNS)}")
        if not math.isfinite(value):
            raise ValueError(f"{channel} is {value!r}: a number is needed")
        with self._lock:
            self._waiting[channel].append(float(value))

    def open(self) -> None:
        """Nothing has to be got ready."""

    def row(self) -> dict[str, float]:
        """Return the oldest value of each channel that waits."""
        with self._lock:
            return {name: waiting.popleft() for name, waiting in self._waiting.items() if waiting}
