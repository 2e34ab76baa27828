"""How the flow of this house answers to the wind at its walls, learnt while nobody touches a leak.

What the taps of the walls read apart from each other holds the wind and not the pressure of the house. Over a quiet
record the changes of the levelled flow are regressed on the changes of those differences; later the answer is taken
off. Changes are those between means of neighbouring windows: the slow wander that seals are hidden by is in them, the
flutter of single readings is not. Needs two outdoor taps; takes no time.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import reduce

import numpy as np

from analysis.sealing.levelled import Floats, Levelling, Trace, differences

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


@dataclass(frozen=True, slots=True)
class _Lesson:
    """Sums over the rows of changes in a quiet stretch: what they teach adds up, and any part can be left out again."""

    seconds: int
    level: float
    levelled: int
    rows: int
    flow: float
    flow_squared: float
    apart: Floats
    apart_flow: Floats
    apart_apart: Floats

    @classmethod
    def of(cls, stretch: Trace) -> _Lesson:
        """Return what a stretch teaches."""
        columns = np.column_stack([stretch.flow_m3_h, stretch.apart_pa])
        rows = differences(columns, BEFORE_S, AFTER_S) if len(columns) >= BEFORE_S + AFTER_S else columns[:0]
        rows = rows[np.isfinite(rows).all(axis=1)]
        flow, apart = rows[:, 0], rows[:, 1:]
        known = stretch.flow_m3_h[np.isfinite(stretch.flow_m3_h)]
        return cls(
            seconds=len(columns),
            level=float(known.sum()),
            levelled=len(known),
            rows=len(rows),
            flow=float(flow.sum()),
            flow_squared=float(flow @ flow),
            apart=apart.sum(axis=0),
            apart_flow=apart.T @ flow,
            apart_apart=apart.T @ apart,
        )

    def and_also(self, other: _Lesson, sign: int = 1) -> _Lesson:
        """Return both lessons together, or this one without the other (`sign` -1)."""
        return _Lesson(*(getattr(self, name) + sign * getattr(other, name) for name in self.__slots__))

    def answer(self, levelling: Levelling) -> WindAnswer:
        """Return the answer that was learnt, an empty one from too little."""
        taps = len(self.apart)
        if taps < 2 or self.seconds < SHORTEST_S or not self.rows:
            return WindAnswer()
        usual = USUAL_SHARE * levelling.exponent * self.level / self.levelled / levelling.reference_pa
        answer: Floats = np.zeros(taps)
        left = self._left(answer)
        for _ in range(ROUNDS):
            # Neighbouring differences share most of their seconds: so many rows count as one.
            ridge = (BEFORE_S + AFTER_S) * left / usual**2
            normal = self.apart_apart + ridge * np.eye(taps)
            answer = np.asarray(np.linalg.solve(normal, self.apart_flow), np.float64)
            left = self._left(answer)
        return WindAnswer(tuple(float(value) for value in answer))

    def _left(self, answer: Floats) -> float:
        """Return the variance of the changes of the flow that an answer leaves."""
        squares = self.flow_squared - 2.0 * answer @ self.apart_flow + answer @ self.apart_apart @ answer
        mean = (self.flow - self.apart @ answer) / self.rows
        return max(float(squares) / self.rows - float(mean) ** 2, 0.0)


def _together(lessons: Sequence[_Lesson]) -> _Lesson:
    return reduce(_Lesson.and_also, lessons)


def wind_answer(stretches: Sequence[Trace], levelling: Levelling) -> WindAnswer:
    """Return the answer that quiet stretches teach."""
    return _together([_Lesson.of(item) for item in stretches]).answer(levelling) if stretches else WindAnswer()


def calmed_crosswise(stretches: Sequence[Trace], levelling: Levelling) -> list[Trace]:
    """Return quiet stretches in pieces, each calmed by the answer that the others teach.

    What is left in them is what will be left later: an answer looks better on what taught it.
    """
    pieces = [piece for stretch in stretches for piece in _cut(stretch)]
    if not pieces or pieces[0].apart_pa.shape[1] < 2:
        return pieces
    lessons = [_Lesson.of(piece) for piece in pieces]
    all_of_them = _together(lessons)
    return [
        all_of_them.and_also(lesson, -1).answer(levelling).calmed(piece)
        for piece, lesson in zip(pieces, lessons, strict=True)
    ]


def _cut(stretch: Trace) -> list[Trace]:
    length = len(stretch.flow_m3_h) / FOLDS
    return [
        stretch.span(stretch.start_s + round(at * length), stretch.start_s + round((at + 1) * length))
        for at in range(FOLDS)
    ]
