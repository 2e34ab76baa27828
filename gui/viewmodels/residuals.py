"""How far each point lies off the leakage line, in percent of the flow."""

from __future__ import annotations

import math
from dataclasses import dataclass

from acquisition.regimes import envelope_factor
from acquisition.snapshot import PointState
from analysis.records import Direction
from gui.viewmodels.flow_plot import (
    STANDARD_ERRORS,
    flow_picture,
    induced_pa,
    result_of,
    runs_by_direction,
)
from gui.viewmodels.moment import Moment
from gui.words import say

SMALLEST_PCT = 1.0
"""The scale never shows less than this on either side."""


@dataclass(frozen=True, slots=True)
class Offset:
    """A point: log10 of the pressure in Pa, percent off the line, half length of the error bar in percent."""

    x: float
    percent: float
    error_pct: float


@dataclass(frozen=True, slots=True)
class OffsetCurve:
    """The points of one direction; those struck apart."""

    direction: Direction
    taken: tuple[Offset, ...]
    struck: tuple[Offset, ...]


@dataclass(frozen=True, slots=True)
class ResidualPicture:
    """The whole plot."""

    curves: tuple[OffsetCurve, ...]
    x_range: tuple[float, float]
    y_range: tuple[float, float]
    note: str
    empty: str


def residual_picture(moment: Moment) -> ResidualPicture:
    """Return the plot of the test that is shown."""
    shown = moment.shown
    x_range = flow_picture(moment).x_range
    curves = []
    if shown is not None and shown.result is not None:
        for run in runs_by_direction(shown):
            result = result_of(shown.result.runs, run.direction)
            if result is None:
                continue
            factor = envelope_factor(run.points, result)
            groups: dict[PointState, list[Offset]] = {PointState.TAKEN: [], PointState.STRUCK: []}
            for point in run.points:
                pressure = induced_pa(point, run, result)
                if point.state not in groups or not pressure or pressure <= 0 or not point.flow_m3_h:
                    continue
                line = result.c_env_m3_h_pa_n.value * pressure**result.n.value
                percent = 100 * (point.flow_m3_h * factor / line - 1)
                error = STANDARD_ERRORS * (point.flow_error_pct or 0.0)
                groups[point.state].append(Offset(math.log10(pressure), percent, error))
            taken, struck = tuple(groups[PointState.TAKEN]), tuple(groups[PointState.STRUCK])
            curves.append(OffsetCurve(run.direction, taken, struck))
    reach = [abs(dot.percent) + dot.error_pct for curve in curves for dot in (*curve.taken, *curve.struck)]
    half = 1.15 * max([SMALLEST_PCT, *reach])
    return ResidualPicture(
        curves=tuple(curves),
        x_range=x_range,
        y_range=(-half, half),
        note=_note(curves),
        empty="" if curves else say("There is no line yet to be off."),
    )


def _note(curves: list[OffsetCurve]) -> str:
    offsets = [abs(dot.percent) for curve in curves for dot in curve.taken]
    return say("farthest off the line: {share} %", share=f"{max(offsets):.1f}") if offsets else ""
