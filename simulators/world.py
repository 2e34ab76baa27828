"""Joins the plant to its instruments: one plant, one clockwork, whoever asks first moves it.

The plant advances in fixed steps on a grid of its own, never to the moment at which bytes happen to come, so that what
happens does not depend on when somebody asks. Instruments may be served by different threads; each takes the lock.
"""

from __future__ import annotations

import math
import threading
from typing import Protocol

import numpy as np

from drivers.clock import seconds
from simulators.plant import Plant, PlantInputs

STEP_S = 0.1
STEP_NS = seconds(STEP_S)
LONGEST_GAP_NS = seconds(30.0)
"""Nobody asked for longer than this: the time before is skipped, or a sleeping computer would wake to hours of work."""


class Follower(Protocol):
    """An instrument that does something by itself."""

    def follow(self, now_ns: int) -> None:
        """Take notice that the plant has come to `now_ns`."""
        ...


class World:
    """The plant on a clock, and what the drive tells it. Every method but `lock` is called with the lock held."""

    def __init__(self, plant: Plant, now_ns: int) -> None:
        """Start the grid at `now_ns`."""
        self.plant = plant
        self.lock = threading.RLock()
        self.speeds = [0.0] * plant.rigging.fans
        """Commanded speed 0..1 of each fan."""
        self.direction = -1
        """+1 blows into the house, -1 out of it."""
        self.pace = 1.0
        """How fast time passes in the house, against the clock: 0 stands still. `go_at` changes it."""
        self._followers: list[Follower] = []
        self._next_ns = now_ns + STEP_NS
        self._told = (tuple(self.speeds), self.direction)
        self._inputs = self._new_inputs()

    @property
    def speed(self) -> float:
        """Commanded speed of the first fan."""
        return self.speeds[0]

    @speed.setter
    def speed(self, speed: float) -> None:
        self.speeds[0] = speed

    def attach(self, follower: Follower) -> None:
        """Tell an instrument about every step that the plant has taken."""
        self._followers.append(follower)

    @property
    def next_ns(self) -> int:
        """The time of the next step."""
        return self._next_ns

    def go_at(self, pace: float, now_ns: int) -> None:
        """Let time in the house pass so many times faster than on the clock from now on; 0 lets it stand still."""
        self.advance(now_ns)
        self.pace = pace
        self._next_ns = now_ns + self._step_ns

    @property
    def _step_ns(self) -> int:
        return round(STEP_NS / self.pace) if self.pace > 0.0 else STEP_NS

    def advance(self, now_ns: int) -> None:
        """Bring the plant to the last step at or before `now_ns`."""
        if self._next_ns > now_ns and self.pace > 0.0:
            return
        step_ns = self._step_ns
        if self.pace <= 0.0:
            self._next_ns = now_ns + step_ns
            return
        missed = (now_ns - self._next_ns - LONGEST_GAP_NS) // step_ns
        if missed > 0:
            self._next_ns += missed * step_ns
        while self._next_ns <= now_ns:
            told = (tuple(self.speeds), self.direction)
            if told != self._told:
                self._told, self._inputs = told, self._new_inputs()
            self.plant.step(STEP_S, self._inputs)
            for follower in self._followers:
                follower.follow(self._next_ns)
            self._next_ns += step_ns

    def reading(self, channel: str) -> float:
        """Return what the gauge shows on a channel; not a number without a hose on it and while it zeroes itself."""
        column = self.plant.gauge.columns.get(channel)
        return math.nan if column is None else float(self.plant.gauge.shown[0, column])

    def readings(self) -> list[float]:
        """Return what the gauge shows on all its channels, in the order of its columns."""
        shown: list[float] = self.plant.gauge.shown[0].tolist()
        return shown

    def _new_inputs(self) -> PlantInputs:
        first, *further = (np.array([speed]) for speed in self.speeds)
        return PlantInputs(first, np.array([float(self.direction)]), tuple(further))
