"""Holding one pressure after another without anybody there."""

from __future__ import annotations

from collections.abc import Sequence

from acquisition.engine import Engine
from acquisition.snapshot import Snapshot


class HeldInTurn:
    """Pressures that are held one after the other, each for as long, without anybody there."""

    def __init__(self, engine: Engine, targets_pa: Sequence[float], seconds: float) -> None:
        """Hold the first of the targets at the beginning; the others follow."""
        self._engine = engine
        self._next = list(targets_pa[1:])
        self._seconds = seconds
        self._wished = False

    def look(self, shown: Snapshot) -> None:
        """Ask for the next pressure, or for the end, when the time is over."""
        if shown.held is None or shown.held.seconds < self._seconds:
            self._wished = False
        elif not self._wished:
            self._wished = True
            if self._next:
                self._engine.hold_at(self._next.pop(0))
            else:
                self._engine.end_hold()
