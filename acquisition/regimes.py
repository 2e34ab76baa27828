"""Two regimes in a run: what came off, or closed, between two points, as the points that were taken show it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache

from acquisition.languages import ENGLISH, Language
from acquisition.snapshot import PointState, PointView
from analysis.numbertext import format_number
from analysis.records import Direction, RunResult
from analysis.regimes import TwoRegimes, find_regimes
from analysis.units import Display, Quantity, format_estimate, unit_symbol

BEFORE_STEP, AFTER_STEP = "before the lasting step", "after the lasting step"
"""Reasons for which points are struck that still tell of the other regime."""


def told_points(points: Iterable[PointView]) -> list[PointView]:
    """Return the points that tell of the two regimes, in the order in which they were taken."""
    return [
        point
        for point in points
        if point.envelope_pa is not None
        and point.flow_m3_h is not None
        and (point.state is PointState.TAKEN or point.struck_reason in (BEFORE_STEP, AFTER_STEP))
    ]


def regimes_of(points: Sequence[PointView], result: RunResult) -> TwoRegimes | None:
    """Return the two lines of a run, as flows through the envelope; None where one will do."""
    told, factor = told_points(points), envelope_factor(points, result)
    pressures = [result.direction.sign * ((point.envelope_pa or 0.0) - result.zero_pa) for point in told]
    flows = [(point.flow_m3_h or 0.0) * factor for point in told]
    return regimes_through(pressures, flows)


def regimes_through(pressures_pa: Sequence[float], flows_m3_h: Sequence[float]) -> TwoRegimes | None:
    """Return the two lines through points in their order, sizes of induced pressure and flow; None where one will do.

    None too where a gust turned a pressure or a flow round.
    """
    if any(value <= 0.0 for value in (*pressures_pa, *flows_m3_h)):
        return None
    return _found(tuple(pressures_pa), tuple(flows_m3_h))


@lru_cache(maxsize=32)
def _found(pressures_pa: tuple[float, ...], flows_m3_h: tuple[float, ...]) -> TwoRegimes | None:
    """Search once: a window draws the same points many times a second."""
    return find_regimes(pressures_pa, flows_m3_h)


def envelope_factor(points: Sequence[PointView], result: RunResult | None) -> float:
    """Return the ratio of the flow through the envelope to that through the fan; 1 before there is a result."""
    first = next((point.flow_m3_h for point in points if point.state is PointState.TAKEN), None)
    if result is None or not result.envelope_flow_m3_h or not first:
        return 1.0
    return result.envelope_flow_m3_h[0] / first


def regimes_sentence(found: TwoRegimes, direction: Direction, display: Display, language: Language = ENGLISH) -> str:
    """Return what the two lines say."""
    step = format_estimate(found.step_m3_h, Quantity.FLOW, display)
    sign = "+" if found.step_m3_h.value > 0 else ""
    n = format_number(found.n.value, 2, display.decimal_mark)
    return language.say(
        "Two regimes ({direction}): after point {point} the house leaks {step} {unit} at {pressure} Pa (95 %: {low} to "
        "{high}); one exponent for both, {exponent}. The official fit uses the points that are not struck.",
        direction=language.say(direction.value),
        point=found.changed_at,
        step=f"{sign}{step.value}",
        unit=unit_symbol(Quantity.FLOW, display),
        pressure=language.number(f"{found.at_pa:g}"),
        low=step.low,
        high=step.high,
        exponent=n,
    )
