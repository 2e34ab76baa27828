"""Which flow range is fitted on which fan, at which moment of a test."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from analysis.records import FlowRange


@dataclass(frozen=True, slots=True)
class RangeChange:
    """From `t_ns` on the fan number `fan` (from 0) has another range."""

    t_ns: int
    fan: int
    flow_range: FlowRange


@dataclass(frozen=True, slots=True)
class Corrected:
    """A point was read with this range on a fan (from 0), whatever had been entered."""

    fan: int
    flow_range: FlowRange


@dataclass(frozen=True, slots=True)
class Fitted:
    """The range of each fan at the start, and the changes since, oldest first."""

    ranges: tuple[FlowRange, ...]
    changes: tuple[RangeChange, ...] = ()

    def at(self, t_ns: int) -> tuple[FlowRange, ...]:
        """Return the range of each fan at a moment."""
        ranges = list(self.ranges)
        for change in self.changes:
            if change.t_ns <= t_ns:
                ranges[change.fan] = change.flow_range
        return tuple(ranges)

    @property
    def now(self) -> tuple[FlowRange, ...]:
        """The range of each fan after all changes."""
        return self.at(2**63 - 1)

    def changed(self, change: RangeChange) -> Fitted:
        """Return this with one more change."""
        return replace(self, changes=(*self.changes, change))

    def corrected(self, corrections: Sequence[Corrected]) -> Fitted:
        """Return this as it was for a point whose range was corrected afterwards."""
        if not corrections:
            return self
        right = {item.fan: item.flow_range for item in corrections}
        return Fitted(
            tuple(right.get(fan, item) for fan, item in enumerate(self.ranges)),
            tuple(change for change in self.changes if change.fan not in right),
        )


def corrected_words(entered: Fitted, start_ns: int, corrections: Sequence[Corrected]) -> str:
    """Return with which flow range a point that began then was read, which had been entered; empty where the same."""
    sentences = []
    for item in corrections:
        name, old = item.flow_range.name, entered.at(start_ns)[item.fan].name
        if name == old:
            continue
        if len(entered.ranges) > 1:
            text = f"Worked out with flow range {name} on fan {item.fan + 1}; {old} had been entered."
        else:
            text = f"Worked out with flow range {name}; {old} had been entered."
        sentences.append(text)
    return " ".join(sentences)


RESTING_PA = 1.0
"""A further fan whose flow element shows less is at rest behind its shutter; no range is calibrated so low."""


def as_fitted(flow_range: FlowRange | Fitted) -> Fitted:
    """Return one range as that of one fan, which keeps it."""
    return Fitted((flow_range,)) if isinstance(flow_range, FlowRange) else flow_range
