"""Flow against envelope pressure on logarithmic scales: points, the leakage line and its band."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from acquisition.rangefit import suggestions
from acquisition.regimes import envelope_factor, regimes_of
from acquisition.snapshot import PointState, PointView, RunView
from analysis.numbertext import decimals_for, format_number
from analysis.powerlaw import flow_at
from analysis.records import Direction, Estimate, RunResult, TestResult
from analysis.units import Display, Quantity, to_display, unit_symbol
from gui.viewmodels.moment import Moment
from gui.viewmodels.shown import ShownTest
from gui.words import mark, say

LOWEST_PA, HIGHEST_PA = 10.0, 60.0
"""The scale shows at least these pressures."""
LOW_MARGIN, HIGH_MARGIN = 0.8, 1.32
LINE_STEPS = 48
WIDE_BAND = 3.0
"""A band that reaches further than this factor from its line says nothing yet and is not drawn."""
STANDARD_ERRORS = 2.0
_EDGES = (1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 10.0)


@dataclass(frozen=True, slots=True)
class Dot:
    """A point on the logarithmic axes; `up` and `down` are the lengths of its error bar."""

    x: float
    y: float
    up: float = 0.0
    down: float = 0.0
    tip: str = ""


@dataclass(frozen=True, slots=True)
class Curve:
    """One direction. Line and band are empty before there is a result; log10 of Pa and of the shown flow unit."""

    direction: Direction
    taken: tuple[Dot, ...] = ()
    struck: tuple[Dot, ...] = ()
    averaging: Dot | None = None
    x: tuple[float, ...] = ()
    line: tuple[float, ...] = ()
    low: tuple[float, ...] = ()
    high: tuple[float, ...] = ()
    other: tuple[tuple[float, ...], ...] = ()
    """Where something came off or closed between two points: the line before it and the one after it."""


@dataclass(frozen=True, slots=True)
class FlowPicture:
    """The whole plot; ranges in log10, targets still to come in log10 of Pa."""

    curves: tuple[Curve, ...]
    x_range: tuple[float, float]
    y_range: tuple[float, float]
    targets: tuple[float, ...]
    note: str
    hidden: str
    empty: str
    y_label: str
    x_label: str = mark("envelope pressure, Pa")


def flow_picture(moment: Moment) -> FlowPicture:
    """Return the plot of the test that is shown."""
    display, shown = moment.display, moment.shown
    targets = _targets(moment)
    curves: tuple[Curve, ...] = ()
    hidden = 0
    if shown is not None:
        made = [_curve(shown, run, moment) for run in runs_by_direction(shown)]
        curves, hidden = tuple(curve for curve, _ in made), sum(count for _, count in made)
    pressures = [dot.x for curve in curves for dot in (*curve.taken, *curve.struck)] + [math.log10(t) for t in targets]
    x_range = (
        min([math.log10(LOWEST_PA), *pressures]) + math.log10(LOW_MARGIN),
        max([math.log10(HIGHEST_PA), *pressures]) + math.log10(HIGH_MARGIN),
    )
    result = shown.result if shown is not None else None
    if shown is not None and result is not None:
        curves = tuple(_with_line(curve, result_of(result.runs, curve.direction), x_range, display) for curve in curves)
        curves = tuple(
            _with_regimes(curve, run, result, display)
            for curve, run in zip(curves, runs_by_direction(shown), strict=True)
        )
    return FlowPicture(
        curves=curves,
        x_range=x_range,
        y_range=_y_range(curves),
        targets=tuple(math.log10(target) for target in targets),
        note=_note(result.runs if result is not None else (), display),
        hidden=_hidden_words(hidden) or _range_words(shown) or _regimes_words(curves, shown, display),
        empty="" if any(_dots(curve) for curve in curves) else say("The line grows here, point by point."),
        y_label=say("flow, {unit}", unit=unit_symbol(Quantity.FLOW, display)),
    )


def runs_by_direction(shown: ShownTest) -> tuple[RunView, ...]:
    """Return the runs that count: of several in one direction the last with points."""
    chosen: dict[Direction, RunView] = {}
    for run in shown.runs:
        has_points = any(point.envelope_pa is not None for point in run.points)
        if run.direction not in chosen or has_points:
            chosen[run.direction] = run
    return tuple(chosen.values())


def result_of(runs: Sequence[RunResult], direction: Direction) -> RunResult | None:
    """Return the result of a direction."""
    return next((run for run in runs if run.direction is direction), None)


def induced_pa(point: PointView, run: RunView, result: RunResult | None) -> float | None:
    """Return the induced pressure of a point, positive where it has the sign of the run."""
    if point.envelope_pa is None:
        return None
    zero_pa = result.zero_pa if result is not None else run.zero_before_pa or 0.0
    return run.direction.sign * (point.envelope_pa - zero_pa)


def _curve(shown: ShownTest, run: RunView, moment: Moment) -> tuple[Curve, int]:
    """Return the points of a run, and how many cannot stand on a logarithmic axis."""
    result = result_of(shown.result.runs, run.direction) if shown.result is not None else None
    factor = envelope_factor(run.points, result)
    groups: dict[PointState, list[Dot]] = {state: [] for state in PointState}
    hidden = 0
    for point in run.points:
        pressure = induced_pa(point, run, result)
        if pressure is None or point.flow_m3_h is None:
            continue
        if pressure <= 0 or point.flow_m3_h <= 0:
            hidden += 1
            continue
        flow = to_display(point.flow_m3_h * factor, Quantity.FLOW, moment.display)
        groups[point.state].append(_dot(pressure, flow, point.flow_error_pct))
    averaging = groups[PointState.AVERAGING]
    return (
        Curve(
            direction=run.direction,
            taken=tuple(groups[PointState.TAKEN]),
            struck=tuple(groups[PointState.STRUCK]),
            averaging=averaging[-1] if averaging else None,
        ),
        hidden,
    )


def _dot(pressure_pa: float, flow: float, error_pct: float | None) -> Dot:
    share = min(STANDARD_ERRORS * (error_pct or 0.0) / 100, 0.9)
    return Dot(math.log10(pressure_pa), math.log10(flow), math.log10(1 + share), -math.log10(1 - share))


def _with_line(curve: Curve, result: RunResult | None, x_range: tuple[float, float], display: Display) -> Curve:
    if result is None or result.line is None or not curve.taken:
        return curve
    line = result.line
    step = (x_range[1] - x_range[0]) / LINE_STEPS
    x = tuple(x_range[0] + step * at for at in range(LINE_STEPS + 1))
    flows = [flow_at(line, 10.0**at) for at in x]
    # A band far wider than the plot would only tell that two points make no line yet.
    sure = all(math.isfinite(flow.high) and flow.high < WIDE_BAND * flow.value for flow in flows)
    return Curve(
        direction=curve.direction,
        taken=curve.taken,
        struck=curve.struck,
        averaging=curve.averaging,
        x=x,
        line=_logs([flow.value for flow in flows], display),
        low=_logs([flow.low for flow in flows], display) if sure else (),
        high=_logs([flow.high for flow in flows], display) if sure else (),
    )


def _with_regimes(curve: Curve, run: RunView, result: TestResult, display: Display) -> Curve:
    """Add the two lines of a run in which something came off or closed."""
    outcome = result_of(result.runs, curve.direction)
    found = regimes_of(run.points, outcome) if outcome is not None and curve.x else None
    if found is None:
        return curve
    flows = [[found.flow_m3_h(10.0**at, after=after) for at in curve.x] for after in (False, True)]
    return replace(curve, other=tuple(_logs(line, display) for line in flows))


def _logs(flows_m3_h: list[float], display: Display) -> tuple[float, ...]:
    return tuple(math.log10(to_display(flow, Quantity.FLOW, display)) for flow in flows_m3_h)


def _dots(curve: Curve) -> list[Dot]:
    return [*curve.taken, *curve.struck, *([curve.averaging] if curve.averaging is not None else [])]


def _y_range(curves: Sequence[Curve]) -> tuple[float, float]:
    """Return round ends that hold every point and the line."""
    values = [end for curve in curves for dot in _dots(curve) for end in (dot.y - dot.down, dot.y + dot.up)]
    values += [end for curve in curves for end in (*curve.line, *curve.low, *curve.high)]
    if not values:
        return 2.0, 3.5
    low, high = _edge_below(min(values) - 0.02), _edge_above(max(values) + 0.02)
    return (low, high) if high - low > 0.3 else (low - 0.15, high + 0.15)


def _edge_below(value: float) -> float:
    decade = math.floor(value)
    return max(decade + math.log10(edge) for edge in _EDGES if decade + math.log10(edge) <= value + 1e-9)


def _edge_above(value: float) -> float:
    decade = math.floor(value)
    return min(decade + math.log10(edge) for edge in _EDGES if decade + math.log10(edge) >= value - 1e-9)


def _targets(moment: Moment) -> tuple[float, ...]:
    """Return the targets still to come, as magnitudes."""
    shown = moment.shown
    if shown is None:
        return moment.job.plan.targets_pa if moment.job is not None else ()
    if not shown.live or not shown.runs:
        return ()
    return tuple(
        abs(point.target_pa)
        for point in shown.runs[-1].points
        if point.state in (PointState.PENDING, PointState.AVERAGING) and point.target_pa
    )


def _note(runs: Sequence[RunResult], display: Display) -> str:
    if len(runs) == 1:
        return f"n = {estimate_text(runs[0].n, display)}"
    return say(" and ").join(f"n = {format_number(run.n.value, 3, display.decimal_mark)}" for run in runs)


def estimate_text(estimate: Estimate, display: Display) -> str:
    """Return a plain number with its interval: `0.642 ± 0.021`."""
    decimals = decimals_for(estimate.half_width)
    value = format_number(estimate.value, 3 if decimals is None else decimals, display.decimal_mark)
    if decimals is None:
        return value
    return f"{value} ± {format_number(estimate.half_width, decimals, display.decimal_mark)}"


def _range_words(shown: ShownTest | None) -> str:
    """Return a question where another flow range would make a line straight, else an empty text."""
    runs = runs_by_direction(shown) if shown is not None else ()
    if shown is not None and any(suggestions(run.points, run.zero_before_pa or 0.0, shown.rig.ranges) for run in runs):
        return say("Read with another flow range? Shift+F")
    return ""


def _regimes_words(curves: Sequence[Curve], shown: ShownTest | None, display: Display) -> str:
    """Return what the two lines of a run say, empty without any."""
    if shown is None or shown.result is None or not any(curve.other for curve in curves):
        return ""
    for run in runs_by_direction(shown):
        outcome = result_of(shown.result.runs, run.direction)
        found = regimes_of(run.points, outcome) if outcome is not None else None
        if found is not None:
            ends = (found.step_m3_h.value, found.step_m3_h.half_width)
            step, half = (to_display(item, Quantity.FLOW, display) for item in ends)
            unit = unit_symbol(Quantity.FLOW, display)
            return say(
                "flow, {unit}; dotted: {step} ± {half} at 50 Pa after point {changed_at}",
                unit=unit,
                step=f"{step:+.0f}",
                half=f"{half:.0f}",
                changed_at=found.changed_at,
            )
    return ""


def _hidden_words(count: int) -> str:
    if not count:
        return ""
    if count == 1:
        return say("1 point is not shown: pressure or flow is not above 0.")
    return say("{count} points are not shown: pressure or flow is not above 0.", count=count)
