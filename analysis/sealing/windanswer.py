"""How the flow of this house answers to the wind at its walls, learnt while nobody touches a leak.

What the taps of the walls read apart from each other holds the wind and not the pressure of the house. Over a quiet
record the changes of the levelled flow are regressed on the changes of those differences; later the answer is taken
off. Changes are those between means of neighbouring windows: the slow wander that seals are hidden by is in them, the
flutter of single readings is not. Needs two outdoor taps; takes no time.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from analysis.sealing.levelled import Levelling, Trace, differences

BEFORE_S, AFTER_S = 20, 10
USUAL_SHARE = 0.35
"""How much of a change at one tap the house itself may feel as a change of its outdoor pressure (our choice).

It keeps an answer that the record hardly shows near none.
"""
SHORTEST_S = 120
"""A quiet record shorter than this teaches nothing (our choice): a few gusts would be learnt by heart."""
FOLDS = 3
ROUNDS = 3


@dataclass(frozen=True, slots=True)
class WindAnswer:
    """m3/h for each Pa that a tap stands apart from the mean of all; empty where that cannot be told."""

    per_pa: tuple[float, ...] = ()

    def calmed(self, trace: Trace) -> Trace:
        """Return a trace without what the house answers to the wind."""
        if not self.per_pa:
            return trace
        return replace(trace, flow_m3_h=trace.flow_m3_h - trace.apart_pa @ np.asarray(self.per_pa, np.float64))


def wind_answer(stretches: Sequence[Trace], levelling: Levelling) -> WindAnswer:
    """Return the answer that quiet stretches teach."""
    taps = stretches[0].apart_pa.shape[1] if stretches else 0
    if taps < 2 or sum(len(item.flow_m3_h) for item in stretches) < SHORTEST_S:
        return WindAnswer()
    moved = [
        differences(np.column_stack([item.flow_m3_h, item.apart_pa]), BEFORE_S, AFTER_S)
        for item in stretches
        if len(item.flow_m3_h) >= BEFORE_S + AFTER_S
    ]
    rows = np.concatenate(moved) if moved else np.zeros((0, taps + 1))
    rows = rows[np.isfinite(rows).all(axis=1)]
    if not len(rows):
        return WindAnswer()
    flow, apart = rows[:, 0], rows[:, 1:]
    level = float(np.nanmean(np.concatenate([item.flow_m3_h for item in stretches])))
    usual = USUAL_SHARE * levelling.exponent * level / levelling.reference_pa
    left, answer = float(np.var(flow)), np.zeros(taps)
    for _ in range(ROUNDS):
        # Neighbouring differences share most of their seconds: so many rows count as one.
        ridge = (BEFORE_S + AFTER_S) * left / usual**2
        answer = np.linalg.solve(apart.T @ apart + ridge * np.eye(taps), apart.T @ flow)
        left = float(np.var(flow - apart @ answer))
    return WindAnswer(tuple(float(value) for value in answer))


def calmed_crosswise(stretches: Sequence[Trace], levelling: Levelling) -> list[Trace]:
    """Return quiet stretches in pieces, each calmed by the answer that the others teach.

    What is left in them is what will be left later: an answer looks better on what taught it.
    """
    pieces = [piece for stretch in stretches for piece in _cut(stretch)]
    return [wind_answer([other for other in pieces if other is not piece], levelling).calmed(piece) for piece in pieces]


def _cut(stretch: Trace) -> list[Trace]:
    length = len(stretch.flow_m3_h) / FOLDS
    return [
        stretch.span(stretch.start_s + round(at * length), stretch.start_s + round((at + 1) * length))
        for at in range(FOLDS)
    ]
