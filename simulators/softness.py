"""Leaks that are not stiff: membranes that pillow, flaps that open one way, sheeting that tears.

Arrays have the houses in the leading axis B and the paths in the last axis N.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from simulators.air import FloatArray
from simulators.house import Leak

PILLOW_PA = 25.0
FLAP_PA = 3.0
"""Over about so many pascals a flap goes from shut to open (our own figure)."""
TEARING_S = 0.5
"""A pressure has to last so long to tear something (our own figure)."""


class Softness:
    """How much larger than when at rest each leak is at a pressure across it, and what has been torn."""

    def __init__(self, leaks: Sequence[Sequence[Leak]]) -> None:
        """Take the leaks of each house, equally many; nothing is torn yet."""
        self._pillowing = np.array([[leak.pillowing for leak in row] for row in leaks])
        self._flap = np.array([[leak.flap for leak in row] for row in leaks])
        self._flap_pa = np.array([[leak.flap_opens_pa for leak in row] for row in leaks])
        self._way = np.sign(self._flap_pa)
        self._tears_pa = np.array([[leak.tears_pa or np.inf for leak in row] for row in leaks])
        self._torn = np.array([[leak.torn for leak in row] for row in leaks])
        self._strained_s = np.zeros_like(self._torn)
        self.is_torn = np.zeros(self._torn.shape, dtype=np.bool_)
        """Which leaks have been torn (B, N)."""
        self.has_any = bool(np.any(self._pillowing) or np.any(self._flap))
        self.can_tear = bool(np.isfinite(self._tears_pa).any())

    def opened(self, across: FloatArray | float) -> tuple[FloatArray, FloatArray]:
        """Return the factor on each leak at a pressure across it, and the derivative of that factor by it."""
        swell = np.tanh(np.asarray(across) / PILLOW_PA)
        blown = np.tanh((across - self._flap_pa) / FLAP_PA)
        factor = 1.0 + self._pillowing * swell + 0.5 * self._flap * (1.0 + self._way * blown)
        steeper = self._pillowing / PILLOW_PA * (1.0 - swell * swell)
        steeper = steeper + 0.5 * self._flap * self._way / FLAP_PA * (1.0 - blown * blown)
        return factor, steeper

    def strain(self, dt_s: float, across: FloatArray) -> FloatArray | None:
        """Pull at the sheeting for a while; return the factors (B, N) by which leaks have just grown, None if none."""
        self._strained_s = np.where(np.abs(across) > self._tears_pa, self._strained_s + dt_s, 0.0)
        tearing = (self._strained_s >= TEARING_S) & ~self.is_torn
        if not tearing.any():
            return None
        self.is_torn |= tearing
        return np.where(tearing, 1.0 + self._torn, 1.0)
