"""White noise drawn ahead: the same numbers as drawn step by step, without the cost of so many small calls."""

from __future__ import annotations

import numpy as np

from simulators.air import FloatArray

AT_ONCE = 4096
"""So many numbers at most are drawn ahead, at least those of one step."""


class Noise:
    """Standard normal numbers, equally many for each step. Nobody else may draw from the generator meanwhile."""

    def __init__(self, rng: np.random.Generator, count: int) -> None:
        """Draw nothing yet; `count` numbers make a step."""
        self._rng = rng
        self._count = count
        self._steps = max(AT_ONCE // count, 1)
        self._ahead: FloatArray = np.empty((0, count))
        self._at = 0

    def step(self) -> FloatArray:
        """Return the numbers of the next step (count,)."""
        if self._at == len(self._ahead):
            self._ahead = self._rng.standard_normal((self._steps, self._count))
            self._at = 0
        numbers: FloatArray = self._ahead[self._at]
        self._at += 1
        return numbers
