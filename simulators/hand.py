"""A person at the knob of a fan that no program drives: hears what is said, and does it after a moment, not exactly."""

from __future__ import annotations

import math
from collections import deque

import numpy as np

from drivers.clock import NS_PER_S
from simulators.world import World

REACTION_S = 0.7
SLOW_PER_S = 0.012
OFF_PER_S = 0.25
START_SPEED = 0.08
"""Below this the fan does not turn: the knob is first turned so far."""
HASTE = 0.3
"""How much faster or slower one order is obeyed than another (standard deviation of its logarithm)."""
ORDERS = ("raise", "lower", "hold", "off")


class Hand:
    """Turns the fan of a world. Everything is decided by the seed."""

    def __init__(self, world: World, seed: int) -> None:
        """Hold the knob of a fan at rest."""
        self._world = world
        self._rng = np.random.default_rng(seed)
        self._heard: deque[tuple[int, str]] = deque()
        self._last = self._doing = "off"
        self.reaction_s, self.slow_per_s = REACTION_S, SLOW_PER_S
        self._pace = self.slow_per_s
        self._at_ns: int | None = None
        world.attach(self)

    def hear(self, order: str, now_ns: int) -> None:
        """Hear an order, one of `ORDERS`; raises `ValueError` for another. One that is repeated changes nothing."""
        if order not in ORDERS:
            raise ValueError(f"order is {order!r}: one of these is needed: {', '.join(ORDERS)}")
        if order != self._last:
            self._last = order
            self._heard.append((now_ns + round(self.reaction_s * NS_PER_S), order))

    def follow(self, now_ns: int) -> None:
        """Turn the knob for the time since the last step of the world."""
        past_s = 0.0 if self._at_ns is None else (now_ns - self._at_ns) / NS_PER_S
        self._at_ns = now_ns
        while self._heard and self._heard[0][0] <= now_ns:
            self._doing = self._heard.popleft()[1]
            self._pace = self.slow_per_s * math.exp(HASTE * float(self._rng.standard_normal()))
        world = self._world
        match self._doing:
            case "raise":
                world.speed = min(max(world.speed, START_SPEED) + self._pace * past_s, 1.0)
            case "lower":
                world.speed = max(world.speed - self._pace * past_s, START_SPEED)
            case "off":
                world.speed = max(world.speed - OFF_PER_S * past_s, 0.0)
