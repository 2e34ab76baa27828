"""How much pressure and flow of this test move by themselves, learned while nothing happens. Pure."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

PRIOR_WEIGHT = 6.0
CLIP_SIGMAS = 3.0


class QuietMoves:
    """Covariance of what the means of two neighbouring blocks differ by: (pressure in Pa, ln of the flow).

    Starts from a guess that weighs like `PRIOR_WEIGHT` differences. A difference far outside is taken in shortened, so
    that an event that nobody noticed does not make the watch blind.
    """

    def __init__(self, pressure_pa: float, flow_share: float) -> None:
        """Guess the standard deviations of the two differences."""
        self._sum: Floats = PRIOR_WEIGHT * np.diag([pressure_pa**2, flow_share**2])
        self._weight = PRIOR_WEIGHT

    @property
    def sigmas(self) -> Floats:
        """Standard deviations (2,): Pa, and a share of the flow."""
        spread: Floats = np.sqrt(np.diag(self._sum) / self._weight)
        return spread

    def learn(self, moved: Floats) -> None:
        """Take in a difference (2,) between two blocks of a quiet time."""
        far = self.distance(moved)
        kept = moved if far <= CLIP_SIGMAS else moved * (CLIP_SIGMAS / far)
        self._sum = self._sum + np.outer(kept, kept)
        self._weight += 1.0

    def distance(self, moved: Floats) -> float:
        """Return how many standard deviations a difference (2,) is away from none (Mahalanobis)."""
        return float(np.sqrt(moved @ np.linalg.solve(self._sum / self._weight, moved)))


class Typical:
    """A typical size of something positive: the median of what was seen lately, and how far it scatters upwards."""

    def __init__(self, keep: int = 60) -> None:
        """Know nothing."""
        self._seen: list[float] = []
        self._keep = keep

    def learn(self, size: float) -> None:
        """Take in one more."""
        self._seen.append(size)
        del self._seen[: -self._keep]

    def known(self, least: int = 4) -> bool:
        """Tell whether enough was seen to judge by."""
        return len(self._seen) >= least

    @property
    def median(self) -> float:
        """What is usual."""
        return float(np.median(self._seen))

    @property
    def high(self) -> float:
        """What was the most so far."""
        return max(self._seen)

    @property
    def low(self) -> float:
        """What was the least so far."""
        return min(self._seen)
