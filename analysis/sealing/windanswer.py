"""How the flow of this house answers to the wind at its walls, learnt while nobody touches a leak.

What the taps of the walls read apart from each other holds the wind and not the pressure of the house. Over a quiet
record the changes of the levelled flow are regressed on the changes of those differences; later the answer is taken
off. Changes are those between means of neighbouring windows: the slow wander that seals are hidden by is in them, the
flutter of single readings is not. Needs two outdoor taps; takes no time.

What the fan feels by its own curve besides the pressure at the taps is wind too, and serves even a single tap: at 6 m/s
it halves what is left. Only roughly is it free of the house, since the slope of the curve is a guess, so what is calmed
by it tells whether something changed, and only with `unsure_share` how much.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import reduce

import numpy as np

from analysis.sealing.levelled import FAN_SLOPE, FAN_SLOPE_UNSURE, Floats, Levelling, Trace, differences

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
    """m3/h for each Pa that a tap stands apart from the mean of all; empty where that cannot be told.

    `per_fan_pa` is the same for what the fan felt besides the induced pressure, counted from `fan_level_pa`.
    """

    per_pa: tuple[float, ...] = ()
    per_fan_pa: float = 0.0
    fan_level_pa: float = 0.0

    def calmed(self, trace: Trace) -> Trace:
        """Return a trace without what the house answers to the wind."""
        flow = trace.flow_m3_h
        if self.per_pa:
            flow = flow - trace.apart_pa @ np.asarray(self.per_pa, np.float64)
        if self.per_fan_pa and trace.fan_pa is not None:
            flow = flow - self.per_fan_pa * (trace.fan_pa - self.fan_level_pa)
        return trace if flow is trace.flow_m3_h else replace(trace, flow_m3_h=flow)

    def unsure_share(self, flow_m3_h: float, levelling: Levelling) -> float:
        """Return which share of a change of the flow the fan's part may take or add (95 %): its slope is a guess."""
        per_off = self.per_fan_pa * levelling.reference_pa / (FAN_SLOPE * flow_m3_h)
        return abs(per_off) * FAN_SLOPE_UNSURE / (levelling.exponent - FAN_SLOPE)


@dataclass(frozen=True, slots=True)
class _Lesson:
    """Sums over the rows of changes in a quiet stretch: what they teach adds up, and any part can be left out again."""

    seconds: int
    level: float
    levelled: int
    fan_level: float
    rows: int
    flow: float
    flow_squared: float
    apart: Floats
    apart_flow: Floats
    apart_apart: Floats

    @classmethod
    def of(cls, stretch: Trace, *, by_fan: bool) -> _Lesson:
        """Return what a stretch teaches."""
        columns = np.column_stack([stretch.flow_m3_h, _aparts(stretch, by_fan=by_fan)])
        rows = differences(columns, BEFORE_S, AFTER_S) if len(columns) >= BEFORE_S + AFTER_S else columns[:0]
        rows = rows[np.isfinite(rows).all(axis=1)]
        flow, apart = rows[:, 0], rows[:, 1:]
        known = columns[np.isfinite(columns).all(axis=1)]
        return cls(
            seconds=len(columns),
            level=float(known[:, 0].sum()),
            levelled=len(known),
            fan_level=float(known[:, -1].sum()),
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

    def answer(self, levelling: Levelling, *, by_fan: bool) -> WindAnswer:
        """Return the answer that was learnt, an empty one from too little."""
        columns = len(self.apart)
        if not columns or self.seconds < SHORTEST_S or not self.rows:
            return WindAnswer()
        usual = USUAL_SHARE * levelling.exponent * self.level / self.levelled / levelling.reference_pa
        answer: Floats = np.zeros(columns)
        left = self._left(answer)
        for _ in range(ROUNDS):
            # Neighbouring differences share most of their seconds: so many rows count as one.
            ridge = (BEFORE_S + AFTER_S) * left / usual**2
            normal = self.apart_apart + ridge * np.eye(columns)
            answer = np.asarray(np.linalg.solve(normal, self.apart_flow), np.float64)
            left = self._left(answer)
        learnt = tuple(float(value) for value in answer)
        return WindAnswer(learnt[:-1], learnt[-1], self.fan_level / self.levelled) if by_fan else WindAnswer(learnt)

    def _left(self, answer: Floats) -> float:
        """Return the variance of the changes of the flow that an answer leaves."""
        squares = self.flow_squared - 2.0 * answer @ self.apart_flow + answer @ self.apart_apart @ answer
        mean = (self.flow - self.apart @ answer) / self.rows
        return max(float(squares) / self.rows - float(mean) ** 2, 0.0)


def _aparts(stretch: Trace, *, by_fan: bool) -> Floats:
    """Return what a stretch can teach from (count, columns): a single tap stands apart from nothing."""
    taps = stretch.apart_pa if stretch.apart_pa.shape[1] > 1 else stretch.apart_pa[:, :0]
    return np.column_stack([taps, stretch.fan_pa]) if by_fan and stretch.fan_pa is not None else taps


def _together(lessons: Sequence[_Lesson]) -> _Lesson:
    return reduce(_Lesson.and_also, lessons)


def wind_answer(stretches: Sequence[Trace], levelling: Levelling, *, by_fan: bool = False) -> WindAnswer:
    """Return the answer that quiet stretches teach; `by_fan` with what the fan felt, which all of them have then."""
    if not stretches:
        return WindAnswer()
    return _together([_Lesson.of(item, by_fan=by_fan) for item in stretches]).answer(levelling, by_fan=by_fan)


def calmed_crosswise(stretches: Sequence[Trace], levelling: Levelling, *, by_fan: bool = False) -> list[Trace]:
    """Return quiet stretches in pieces, each calmed by the answer that the others teach.

    What is left in them is what will be left later: an answer looks better on what taught it.
    """
    pieces = [piece for stretch in stretches for piece in _cut(stretch)]
    if not pieces or (pieces[0].apart_pa.shape[1] < 2 and not by_fan):
        return pieces
    lessons = [_Lesson.of(piece, by_fan=by_fan) for piece in pieces]
    all_of_them = _together(lessons)
    return [
        all_of_them.and_also(lesson, -1).answer(levelling, by_fan=by_fan).calmed(piece)
        for piece, lesson in zip(pieces, lessons, strict=True)
    ]


def _cut(stretch: Trace) -> list[Trace]:
    length = len(stretch.flow_m3_h) / FOLDS
    return [
        stretch.span(stretch.start_s + round(at * length), stretch.start_s + round((at + 1) * length))
        for at in range(FOLDS)
    ]
