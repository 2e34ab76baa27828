"""Watching without marks: where the flow changed, and whether that looks like a seal or like something else.

A seal takes seconds to minutes, lets the flow fall and lasts. A door lets it jump and goes back; what jumps up and
stays came open; what falls at once and a lot was shut, not sealed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from analysis.sealing.change import AFTER_S, BEFORE_S, WATCH_COVERAGE, Change, judged
from analysis.sealing.levelled import Trace, differences
from analysis.sealing.unrest import Unrest, Windows

SUDDEN_S = 4
"""A change that is through within this many seconds is no work of hands (our choice)."""
SUDDEN_SHARE = 0.08
"""A sudden fall by more than this share of the flow is something shut, not sealed (our choice)."""
PASSING_S = 120.0
"""What goes back within this time was a door or a gust (our choice)."""
BACK_SHARE = 0.4
_OUTSIDE_S = 20


class StepKind(StrEnum):
    """What a change of the flow looks like."""

    SEAL = "seal"
    CAME_OPEN = "something came open"
    SHUT = "something was shut"
    PASSING = "a door or a gust"


@dataclass(frozen=True, slots=True)
class Step:
    """A change that stands out, at `at_s`."""

    at_s: float
    change: Change
    kind: StepKind
    sudden: bool


def steps_in(trace: Trace, unrest: Unrest, shown_from_s: float | None = None) -> tuple[Step, ...]:
    """Return what changed in a trace, oldest first; the windows before a step do not reach over the one before it."""
    flow = trace.flow_m3_h
    found: list[Step] = []
    begin = 0
    while (at := _first_outside(flow, begin, unrest)) is not None:
        edge = _edge(flow, at, begin)
        before, after = flow[max(edge - BEFORE_S, begin) : edge], flow[edge : edge + AFTER_S]
        before, after = before[np.isfinite(before)], after[np.isfinite(after)]
        if len(before) and len(after):
            windows = Windows(len(before), len(after))
            change = judged(float(before.mean()), float(after.mean()), windows, unrest, WATCH_COVERAGE)
            sudden = _is_sudden(flow, edge, change)
            kind = _kind(change, sudden=sudden)
            found.append(Step(trace.start_s + edge, change, kind, sudden))
        begin = max(edge, begin + 1)
        if begin + AFTER_S > len(flow):
            break
        begin = _settled(flow, begin, at)
    told = _with_passing(found)
    return tuple(step for step in told if shown_from_s is None or step.at_s >= shown_from_s)


def _first_outside(flow: NDArray[np.float64], begin: int, unrest: Unrest) -> int | None:
    """Return the second at which the newest window first stands out against the one before it."""
    values = differences(flow[begin:], BEFORE_S, AFTER_S)
    outside = np.flatnonzero(np.abs(values) > unrest.limit_m3_h(Windows(BEFORE_S, AFTER_S), WATCH_COVERAGE))
    return None if not len(outside) else begin + BEFORE_S + AFTER_S + int(outside[0]) - 1


def _edge(flow: NDArray[np.float64], at: int, begin: int) -> int:
    """Return where the record splits best into two levels, near the second that stood out."""
    low, high = max(at - AFTER_S - _OUTSIDE_S, begin + 1), min(at + _OUTSIDE_S, len(flow) - 1)
    first, last = max(low - BEFORE_S, begin), min(high + AFTER_S, len(flow))
    finite = np.isfinite(flow[first:last])
    counts = np.concatenate([[0], np.cumsum(finite)])
    sums = np.concatenate([[0.0], np.cumsum(np.where(finite, flow[first:last], 0.0))])
    at_edges = np.arange(low, high + 1) - first
    one, other = counts[at_edges], counts[-1] - counts[at_edges]
    known = (one > 0) & (other > 0)
    apart = (sums[-1] - sums[at_edges]) / np.maximum(other, 1) - sums[at_edges] / np.maximum(one, 1)
    gain = np.where(known, np.square(apart) * one * other / (one + other), -1.0)
    return low + int(np.argmax(gain)) if len(gain) else low


def _settled(flow: NDArray[np.float64], edge: int, at: int) -> int:
    """Return from where on the level after a step is looked at as the new level before."""
    return min(max(edge, at - AFTER_S), len(flow))


def _is_sudden(flow: NDArray[np.float64], edge: int, change: Change) -> bool:
    """Tell whether most of a change happened within a few seconds."""
    first = flow[max(edge - SUDDEN_S, 0) : max(edge - SUDDEN_S // 2, 1)]
    last = flow[edge + SUDDEN_S // 2 : edge + SUDDEN_S]
    first, last = first[np.isfinite(first)], last[np.isfinite(last)]
    if not len(first) or not len(last):
        return True
    return abs(float(last.mean() - first.mean())) > 0.7 * abs(change.difference_m3_h.value)


def _kind(change: Change, *, sudden: bool) -> StepKind:
    if change.difference_m3_h.value > 0.0:
        return StepKind.CAME_OPEN
    return StepKind.SHUT if sudden and change.share.value < -SUDDEN_SHARE else StepKind.SEAL


def _with_passing(steps: Sequence[Step]) -> list[Step]:
    """Return the steps with those that the next one takes back told as passing."""
    kinds = [step.kind for step in steps]
    for at in range(len(steps) - 1):
        one, other = steps[at], steps[at + 1]
        there, back = one.change.difference_m3_h.value, other.change.difference_m3_h.value
        close = other.at_s - one.at_s <= PASSING_S and (one.sudden or other.sudden)
        if close and there * back < 0.0 and abs(there + back) <= BACK_SHARE * max(abs(there), abs(back)):
            kinds[at] = kinds[at + 1] = StepKind.PASSING
    return [Step(step.at_s, step.change, kind, step.sudden) for step, kind in zip(steps, kinds, strict=True)]
