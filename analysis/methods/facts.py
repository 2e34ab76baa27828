"""A run as far as it has been worked out: what the checks of a method look at."""

from __future__ import annotations

from dataclasses import dataclass

from analysis.records import Building, Direction, PowerLaw, Run, ZeroFlow


@dataclass(frozen=True, slots=True)
class RunFacts:
    """One run with its zero-flow correction, induced pressures (magnitudes) and fitted line."""

    building: Building
    run: Run
    zero_pa: float
    pressures_pa: tuple[float, ...]
    line: PowerLaw
    directions: frozenset[Direction] = frozenset()
    """Those in which the test has a run."""

    @property
    def open(self) -> bool:
        """True while points may still come: the closing zero-flow record is not there yet."""
        return self.run.zero_after is None

    @property
    def zeros(self) -> tuple[ZeroFlow, ...]:
        """The zero-flow records there are."""
        return tuple(zero for zero in (self.run.zero_before, self.run.zero_after) if zero is not None)
