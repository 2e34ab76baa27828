"""The flow of a held pressure over time: readings, the levels between the changes, the marks."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from acquisition.job import SealingMark, SealingMarkKind
from acquisition.sealing.hold import HoldLook
from acquisition.sealing.leaks import Leak
from acquisition.sealing.session import COUNTED_FROM
from analysis.sealing.watch import Step, StepKind
from analysis.units import Display, Quantity, to_display, unit_symbol
from drivers.clock import NS_PER_S
from gui.viewmodels.leak_words import part_words
from gui.viewmodels.retold import retold_part
from gui.words import say

Values = NDArray[np.float64]
SHOWN_S = 600.0
AHEAD_S = 8.0
LEAST_SPAN_SHARE = 0.04
"""The scale shows at least this share of the flow, so that a quiet house looks quiet."""
LONGEST_WORDS = 22
NEAR_SEAL_S = 30.0


@dataclass(frozen=True, slots=True)
class Flagged:
    """A mark on the time axis; `mine` is true for one that a person set."""

    at_s: float
    words: str
    mine: bool


@dataclass(frozen=True, slots=True, eq=False)
class HuntTrace:
    """The trace in the unit of the display; times are seconds before now. Bands are (start, end, low, high)."""

    x_s: Values
    flow: Values
    levels: tuple[tuple[float, float, float], ...]
    bands: tuple[tuple[float, float, float, float], ...]
    flags: tuple[Flagged, ...]
    x_range: tuple[float, float]
    y_range: tuple[float, float]
    unit: str


def hunt_trace(
    look: HoldLook, marks: Sequence[SealingMark], leaks: Mapping[int, Leak], display: Display
) -> HuntTrace | None:
    """Return the trace of a look, None before the first whole second."""
    trace = look.trace
    if not np.isfinite(trace.flow_m3_h).any():
        return None
    factor = to_display(1.0, Quantity.FLOW, display)
    x = np.arange(len(trace.flow_m3_h)) + 0.5 + trace.start_s - trace.end_s
    flow = trace.flow_m3_h * factor
    levels = tuple(
        (item.start_s - trace.end_s, item.end_s - trace.end_s, item.flow_m3_h.value * factor) for item in look.levels
    )
    bands = tuple(
        (start, end, item.flow_m3_h.low * factor, item.flow_m3_h.high * factor)
        for item, (start, end, _) in zip(look.levels, levels, strict=True)
    )
    return HuntTrace(
        x_s=np.asarray(x, np.float64),
        flow=np.asarray(flow, np.float64),
        levels=levels,
        bands=bands,
        flags=tuple(_flags(look, marks, leaks)),
        x_range=(-SHOWN_S, AHEAD_S),
        y_range=_range(flow[x >= -SHOWN_S]),
        unit=unit_symbol(Quantity.FLOW, display),
    )


def _range(seen: Values) -> tuple[float, float]:
    seen = seen[np.isfinite(seen)]
    if not len(seen):
        return 0.0, 1.0
    low, high = (float(item) for item in np.quantile(seen, (0.005, 0.995)))
    least = LEAST_SPAN_SHARE * abs(float(np.median(seen)))
    middle, half = (low + high) / 2, max(0.65 * (high - low), least / 2)
    step = 10.0 ** np.floor(np.log10(max(half, 1e-6)))
    return float(np.floor((middle - half) / step) * step), float(np.ceil((middle + half) / step) * step)


def _flags(look: HoldLook, marks: Sequence[SealingMark], leaks: Mapping[int, Leak]) -> list[Flagged]:
    end_s = look.trace.end_s
    made = []
    begun = {mark.leak for mark in marks if mark.kind is SealingMarkKind.STARTS}
    for mark in marks:
        at_s = mark.t_ns / NS_PER_S
        # A leak that is sealed is named where its seal is done.
        words = "" if mark.kind is SealingMarkKind.NEW_LEAK and mark.leak in begun else _words(mark, leaks)
        if words and at_s >= look.trace.start_s:
            made.append(Flagged(at_s - end_s, words, mine=True))
    seals = [(item.started_s - NEAR_SEAL_S, item.done_s + NEAR_SEAL_S) for item in look.sealed]
    made += [
        Flagged(step.at_s - end_s, _told(step), mine=False)
        for step in look.steps
        if not any(begin <= step.at_s <= end for begin, end in seals)
    ]
    return sorted(made, key=lambda item: item.at_s)


def _words(mark: SealingMark, leaks: Mapping[int, Leak]) -> str:
    leak = leaks.get(mark.leak) if mark.leak is not None else None
    name = "" if leak is None else leak.room or part_words(leak)
    words = {
        SealingMarkKind.STARTS: "",
        SealingMarkKind.DONE: f"{mark.leak} {name}",
        SealingMarkKind.NOTE: say("from here") if mark.text == COUNTED_FROM else mark.text,
        SealingMarkKind.NEW_LEAK: say("found {leak}", leak=mark.leak),
    }[mark.kind]
    return words if len(words) <= LONGEST_WORDS else f"{words[: LONGEST_WORDS - 1]}…"


def _told(step: Step) -> str:
    return say("looks like a seal") if step.kind is StepKind.SEAL else retold_part(step.kind.value)
