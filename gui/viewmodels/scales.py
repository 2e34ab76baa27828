"""Scales of plots: where the ticks stand and what they say. Logarithms are taken here, never by the plot."""

from __future__ import annotations

import itertools
import math

from analysis.numbertext import format_number

Tick = tuple[float, str]
"""Position on the (possibly logarithmic) axis, and its text."""

_MANTISSAS: tuple[tuple[float, ...], ...] = (
    tuple(1 + 0.1 * step for step in range(90)),
    tuple(1 + 0.5 * step for step in range(18)),
    (1, 2, 3, 4, 5, 6, 7),
    (1, 1.5, 2, 3, 5),
    (1, 2, 5),
    (1, 3),
    (1,),
)
"""From the closest ticks to the widest."""


def log_ticks(low: float, high: float, length_px: float, apart_px: float, decimal_mark: str = ".") -> tuple[Tick, ...]:
    """Return the ticks of a logarithmic axis between the log10 values `low` and `high`.

    Of the usual sets of round numbers the closest is taken whose ticks stand at least `apart_px` apart.
    """
    if not low < high:
        return ()
    for mantissas in _MANTISSAS:
        values = _round_values(low, high, mantissas)
        if len(values) > 1 and _fits([math.log10(value) for value in values], low, high, length_px, apart_px):
            return tuple((math.log10(value), round_text(value, decimal_mark)) for value in values)
    values = _round_values(low, high, (1,))
    return tuple((math.log10(value), round_text(value, decimal_mark)) for value in values)


def linear_ticks(
    low: float, high: float, length_px: float, apart_px: float, decimal_mark: str = "."
) -> tuple[Tick, ...]:
    """Return ticks at 1, 2 or 5 times a power of ten, at least `apart_px` apart."""
    if not low < high or length_px <= 0:
        return ()
    least = (high - low) * apart_px / length_px
    power = 10.0 ** math.floor(math.log10(least))
    step = next(power * factor for factor in (1, 2, 5, 10) if power * factor >= least * 0.999)
    decimals = max(0, -math.floor(math.log10(step) + 1e-9))
    first, last = math.ceil(low / step - 1e-6), math.floor(high / step + 1e-6)
    return tuple((at * step, format_number(at * step, decimals, decimal_mark)) for at in range(first, last + 1))


def time_ticks(
    low_s: float, high_s: float, length_px: float, apart_px: float = 64, zero: str = "now"
) -> tuple[Tick, ...]:
    """Return ticks of an axis in seconds at whole seconds, half minutes, minutes and so on: `−2:00`; 0 is `zero`."""
    if not low_s < high_s or length_px <= 0:
        return ()
    least = (high_s - low_s) * apart_px / length_px
    steps = (1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 1200, 1800, 3600)
    step = next((candidate for candidate in steps if candidate >= least), 7200)
    first, last = math.ceil(low_s / step - 1e-6), math.floor(high_s / step + 1e-6)
    return tuple((float(at * step), _minutes(at * step) if at else zero) for at in range(first, last + 1))


def round_text(value: float, decimal_mark: str = ".") -> str:
    """Return a round number with no more decimals than it has: 10, 1.5, 1 500."""
    for decimals in range(7):
        if math.isclose(value, round(value, decimals), rel_tol=1e-6):
            return format_number(value, decimals, decimal_mark)
    return format_number(value, 7, decimal_mark)


def _round_values(low: float, high: float, mantissas: tuple[float, ...]) -> list[float]:
    decades = range(math.floor(low), math.ceil(high) + 1)
    values = [mantissa * 10.0**decade for decade in decades for mantissa in mantissas]
    return [value for value in values if low - 1e-9 <= math.log10(value) <= high + 1e-9]


def _fits(positions: list[float], low: float, high: float, length_px: float, apart_px: float) -> bool:
    gaps = [after - before for before, after in itertools.pairwise(positions)]
    return min(gaps) / (high - low) * length_px >= apart_px


def _minutes(seconds: int) -> str:
    sign = "−" if seconds < 0 else ""
    whole = abs(seconds)
    return f"{sign}{whole // 60}:{whole % 60:02d}"
