"""From the content of a report to the curves of its figure."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from acquisition.languages import Language
from acquisition.report import wording
from acquisition.report.content import ReportContent, RunContent
from acquisition.report.figure import Curve
from analysis.powerlaw import flow_at
from analysis.units import Display, Quantity, to_display

LOWEST_PA, HIGHEST_PA = 10.0, 60.0
"""The scale shows at least these pressures."""
_MARGIN = 1.16
_STEPS = 61


def report_curves(content: ReportContent, display: Display) -> list[Curve]:
    """Return the curve of each direction, over the pressures of both."""
    taken = [abs(row.induced_pa) for run in content.runs for row in run.rows if row.induced_pa]
    low_pa = min(LOWEST_PA, *taken) / _MARGIN
    high_pa = max(HIGHEST_PA, *taken) * _MARGIN
    return [_curve(run, np.geomspace(low_pa, high_pa, _STEPS), display, content.language) for run in content.runs]


def _curve(run: RunContent, line_pa: NDArray[np.float64], display: Display, language: Language) -> Curve:
    rows = [row for row in run.rows if row.induced_pa and row.envelope_flow_m3_h and row.envelope_flow_m3_h > 0]
    line, low, high = _line(run, line_pa)

    def flows(values_m3_h: list[float]) -> NDArray[np.float64]:
        return np.array([to_display(value, Quantity.FLOW, display) for value in values_m3_h])

    kept = [row for row in rows if row.struck_reason is None]
    struck = [row for row in rows if row.struck_reason is not None]
    return Curve(
        name=language.say(wording.DIRECTIONS[run.run.direction]),
        points_pa=np.array([abs(row.induced_pa or 0.0) for row in kept]),
        points_flow=flows([row.envelope_flow_m3_h or 0.0 for row in kept]),
        struck_pa=np.array([abs(row.induced_pa or 0.0) for row in struck]),
        struck_flow=flows([row.envelope_flow_m3_h or 0.0 for row in struck]),
        line_pa=line_pa,
        line_flow=flows(line),
        low_flow=flows(low),
        high_flow=flows(high),
    )


def _line(run: RunContent, line_pa: NDArray[np.float64]) -> tuple[list[float], list[float], list[float]]:
    """Return line, lower and upper bound of its band in m3/h; the band is the line where there is no interval."""
    result = run.result
    if result.line is None:
        flow = [result.c_env_m3_h_pa_n.value * pressure_pa**result.n.value for pressure_pa in line_pa.tolist()]
        return flow, flow, flow
    estimates = [flow_at(result.line, pressure_pa) for pressure_pa in line_pa.tolist()]
    known = [math.isfinite(estimate.high) for estimate in estimates]
    return (
        [estimate.value for estimate in estimates],
        [estimate.low if ok else estimate.value for estimate, ok in zip(estimates, known, strict=True)],
        [estimate.high if ok else estimate.value for estimate, ok in zip(estimates, known, strict=True)],
    )
