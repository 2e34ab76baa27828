"""What a test is to do: chosen in the window or on the command line, stored with the test."""

from __future__ import annotations

from dataclasses import dataclass

from analysis.methods.quantities import RATE_DIVISORS, divisor
from analysis.records import Air, Building, Direction, Limit

STANDARD_TARGETS_PA = (60.0, 54.0, 48.0, 43.0, 38.0, 33.0, 28.0, 23.0, 18.0, 13.0)
"""Highest first: it shows a loose seal at once (common practice, no source); steps of at most 10 Pa."""


@dataclass(frozen=True, slots=True)
class TestPlan:
    """A test before it starts. Targets are magnitudes in the order in which they are taken."""

    building: Building
    air: Air
    method: str = "iso9972"
    stage: str = ""
    limit: Limit | None = None
    directions: tuple[Direction, ...] = (Direction.DEPRESSURIZE,)
    targets_pa: tuple[float, ...] = STANDARD_TARGETS_PA
    zero_s: float = 60.0
    average_s: float = 20.0

    @property
    def limits(self) -> tuple[Limit, ...]:
        """The limit as far as it can be held against a result: a rate needs the volume or area it is divided by."""
        limit = self.limit
        if limit is None or (limit.quantity in RATE_DIVISORS and divisor(self.building, limit.quantity) is None):
            return ()
        return (limit,)
