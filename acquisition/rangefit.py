"""Which flow range points were read with: a wrong one puts them off the line by the factor between ranges.

Pure. A plate changed and not entered, or entered and not changed, spoils all points on one side of that moment.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from acquisition.planning.reach import flow_of
from acquisition.snapshot import PointState, PointView
from analysis.records import FlowRange

FEWEST_POINTS = 4
OFF_BEFORE, OFF_AFTER, CALMER = 0.10, 0.03, 0.2
"""Root mean square of ln(flow) off the line: from how much on it is asked, what a right range leaves, and its share."""
LOWEST_EXPONENT, HIGHEST_EXPONENT = 0.45, 1.05
"""An exponent outside of 0.5 to 1 is no leakage line (ISO 9972, from memory); a little more for noise."""


@dataclass(frozen=True, slots=True)
class Line:
    """How straight points lie: `off` is the root mean square of ln(flow) off the line through them."""

    off: float
    exponent: float


@dataclass(frozen=True, slots=True)
class Suggestion:
    """Points that would lie on the line of the others with another flow range."""

    windows: tuple[int, ...]
    targets_pa: tuple[float, ...]
    entered: tuple[str, ...]
    """Names of the ranges that they are worked out with."""
    name: str
    line: Line
    before: Line

    @property
    def sentence(self) -> str:
        """What is noticed."""
        targets, old = ", ".join(f"{target:.0f}" for target in self.targets_pa), " and ".join(self.entered)
        return (
            f"With flow range {self.name} instead of {old} the points at {targets} Pa would lie on the line of the "
            "others: which range were they read with?"
        )


def told_points(points: Sequence[PointView]) -> list[PointView]:
    """Return the points that count and tell which range they were worked out with."""
    return [item for item in points if item.state is PointState.TAKEN and item.flow_range and _logs(item, 0.0)]


def line_with(
    points: Sequence[PointView],
    zero_pa: float,
    ranges: Sequence[FlowRange],
    windows: Sequence[int] = (),
    name: str = "",
) -> Line | None:
    """Return the line through the points, some of them read with another range; None where there are too few."""
    told = told_points(points)
    if len(told) < FEWEST_POINTS:
        return None
    known = {item.name: item for item in ranges}
    logs = np.array([_logs(item, zero_pa) for item in told])
    for at, item in enumerate(told):
        if item.window in windows and name in known and item.flow_range in known and item.element_pa:
            logs[at, 1] += math.log(
                flow_of(known[name], item.element_pa) / flow_of(known[item.flow_range], item.element_pa)
            )
    pressures, flows = logs.T
    if float(np.ptp(pressures)) <= 0.0:
        return None
    exponent, level = np.polyfit(pressures, flows, 1)
    off = flows - exponent * pressures - level
    return Line(math.sqrt(float(off @ off) / (len(told) - 2)), float(exponent))


@lru_cache(maxsize=16)
def suggestions(points: tuple[PointView, ...], zero_pa: float, ranges: tuple[FlowRange, ...]) -> tuple[Suggestion, ...]:
    """Return what would make the line straight, the straightest first: the first points or the last, another range.

    Kept, since a window asks at every picture.
    """
    told, before = told_points(points), line_with(points, zero_pa, ranges)
    if before is None or before.off < OFF_BEFORE:
        return ()
    # One point on either side makes no line: with fewer than two the others are the ones to be asked about.
    groups = [told[:at] for at in range(1, len(told))] + [told[at:] for at in range(1, len(told))]
    found = []
    for group in groups:
        windows = tuple(item.window for item in group if item.window is not None)
        entered = tuple(dict.fromkeys(item.flow_range for item in group))
        for flow_range in ranges:
            line = line_with(points, zero_pa, ranges, windows, flow_range.name)
            if line is not None and flow_range.name not in entered and _straight(line, before):
                targets = tuple(item.target_pa for item in group)
                found.append(Suggestion(windows, targets, entered, flow_range.name, line, before))
    return tuple(sorted(found, key=lambda item: item.line.off))


def _straight(line: Line, before: Line) -> bool:
    calm = line.off < min(OFF_AFTER, CALMER * before.off)
    return calm and LOWEST_EXPONENT <= line.exponent <= HIGHEST_EXPONENT


def _logs(point: PointView, zero_pa: float) -> tuple[float, float] | None:
    """Return the logarithms of induced pressure and flow, None for a point that has none."""
    if point.envelope_pa is None or point.flow_m3_h is None or point.flow_m3_h <= 0.0:
        return None
    induced_pa = abs(point.envelope_pa - zero_pa)
    return None if induced_pa <= 0.0 else (math.log(induced_pa), math.log(point.flow_m3_h))
