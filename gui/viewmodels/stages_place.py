"""The Stages place: all tests against their targets, two of them laid over each other, what lies between."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from acquisition.told import Table
from acquisition.told.stages import StageTest, in_front, stage_table
from analysis.powerlaw import flow_at
from analysis.records import Test, TestResult
from analysis.units import Display, Quantity, to_display, unit_symbol
from gui.theme import Tone
from gui.viewmodels.outcome import unit_words
from gui.viewmodels.retold import retold
from gui.words import say

Values = NDArray[np.float64]
TONES = {"meets": Tone.GOOD, "does not meet": Tone.BAD, "cannot tell": Tone.ATTENTION}
STEPS = 40


@dataclass(frozen=True, slots=True)
class StageBar:
    """A test on the scale of the chart, shares 0..1; `target` is None where it has none in this unit."""

    title: str
    low: float
    value: float
    high: float
    target: float | None
    tone: Tone


@dataclass(frozen=True, slots=True, eq=False)
class StageCurve:
    """The curves of one test as log10 of pressure (Pa) and flow (unit of the display), with the points."""

    title: str
    lines: tuple[tuple[Values, Values], ...]
    points_x: Values
    points_y: Values


@dataclass(frozen=True, slots=True, eq=False)
class StagesPicture:
    """The whole place. `before` and `after` are None where there are no two tests."""

    table: Table
    bars: tuple[StageBar, ...]
    unit: str
    choices: tuple[tuple[int, str], ...]
    before: int | None
    after: int | None
    curves: tuple[StageCurve, ...]
    tables: tuple[Table, ...]
    note: str
    flow_unit: str
    empty: str


def chosen_pair(tests: Sequence[StageTest], before: int | None, after: int | None) -> tuple[int | None, int | None]:
    """Return the two tests that are compared: the chosen ones, or the last and the one before."""
    numbers = [test.record.id for test in tests]
    last = after if after in numbers else numbers[-1] if numbers else None
    earlier = [number for number in numbers if number != last]
    first = before if before in earlier else earlier[-1] if earlier else None
    return first, last


def stage_bars(tests: Sequence[StageTest]) -> tuple[StageBar, ...]:
    """Return the tests on one scale: that of the first quantity of their method that every test has."""
    name = _scale(tests)
    estimates = [test.rates[name] for test in tests]
    targets = [test.target[1] if test.target is not None and test.target[0] == name else None for test in tests]
    top = 1.08 * max([*(item.high for item in estimates), *(item for item in targets if item is not None)], default=1.0)
    return tuple(
        StageBar(
            retold(test.title),
            max(item.low, 0.0) / top,
            item.value / top,
            min(item.high, top) / top,
            None if target is None else target / top,
            TONES.get(test.verdict, Tone.PRESSURE),
        )
        for test, item, target in zip(tests, estimates, targets, strict=True)
    )


def _scale(tests: Sequence[StageTest]) -> str:
    return next((name for name in in_front(tests) if all(name in test.rates for test in tests)), "q50_m3_h")


def stage_curve(title: str, test: Test, result: TestResult, display: Display) -> StageCurve:
    """Return the curves of a test in reference air."""
    factor = to_display(1.0, Quantity.FLOW, display)
    lines, xs, ys = [], [], []
    for run in result.runs:
        line = run.reference_line
        if line is None or run.line is None:
            continue
        pressures = np.geomspace(line.low_pa, line.high_pa, STEPS)
        flows = [factor * flow_at(line, float(pressure)).value for pressure in pressures]
        lines.append((np.log10(pressures), np.log10(flows)))
        # The points stand where the line was laid through them, moved with it into reference air.
        ratio = factor * math.exp(line.ln_c - run.line.ln_c)
        xs += [math.log10(abs(value)) for value in run.induced_pa]
        ys += [math.log10(ratio * value) for value in run.envelope_flow_m3_h]
    return StageCurve(title, tuple(lines), np.array(xs), np.array(ys))


def stages_picture(
    tests: Sequence[StageTest],
    notes: Mapping[int, str],
    pair: tuple[int | None, int | None],
    between: tuple[tuple[StageCurve, ...], tuple[Table, ...]] | None,
    display: Display,
) -> StagesPicture:
    """Return the place; `between` is None while it is being worked out, or where there are no two tests."""
    before, after = pair
    if not tests:
        empty = say("No result yet: the first test begins the list.")
    elif before is None:
        empty = say("One test so far: after the next both stand here.")
    else:
        empty = "" if between is not None else say("The two tests are being laid over each other.")
    return StagesPicture(
        table=stage_table(tests, notes, display),
        bars=stage_bars(tests),
        unit=unit_words(_scale(tests), display),
        choices=tuple((test.record.id, retold(test.title)) for test in tests),
        before=before,
        after=after,
        curves=between[0] if between is not None else (),
        tables=between[1] if between is not None else (),
        note=notes.get(after, "") if after is not None else "",
        flow_unit=unit_symbol(Quantity.FLOW, display),
        empty=empty,
    )
