"""The number in front: which quantity it is by the method of the test, and the interval that holds everything."""

from __future__ import annotations

from acquisition.told.titles import method_title
from analysis.effective import QUANTITIES, effective
from analysis.methods import method_of
from analysis.records import Building, Estimate, Limit, RunResult, TestResult
from analysis.say import Say, in_english

USUAL = ("n50_per_h", "q50_m3_h", "qe50_m3_h_m2", "qf50_m3_h_m2")
"""The quantities that every result has a field for, as far as the building says what they need."""
NO_AREA = "{method} puts {symbol} in front; it needs the envelope area, which is not stated."


def in_order(method: str) -> tuple[str, ...]:
    """Return the quantities that a method reports, then the usual ones that it does not name."""
    return tuple(dict.fromkeys((*method_of(method).reports, *USUAL)))


def front_of(method: str, building: Building, limit: Limit | None) -> str:
    """Return the quantity that stands in front: the first of those that the method reports and the building allows.

    A limit on one of these goes first: it is what the test is made for. One on any other quantity leaves the order.
    """
    reports = [item for item in method_of(method).reports if _allowed(item, building)]
    if limit is not None and limit.quantity in reports:
        return limit.quantity
    return reports[0] if reports else "q50_m3_h"


def headline(result: TestResult, building: Building, limit: Limit | None) -> tuple[str, Estimate]:
    """Return the quantity in front and its official value."""
    quantity = front_of(result.method, building, limit)
    value = official(result, building, quantity)
    return ("q50_m3_h", result.mean.q50_m3_h) if value is None else (quantity, value)


def official(result: TestResult, building: Building, quantity: str) -> Estimate | None:
    """Return the official value of a quantity as the mean of the runs, None where there is none."""
    if quantity in USUAL:
        mean: Estimate | None = getattr(result.mean, quantity)
        return mean
    return _of_lines(result.runs, building, quantity)


def of_run(run: RunResult, building: Building, quantity: str) -> Estimate | None:
    """Return the official value of a quantity in one direction, None where there is none."""
    if quantity in USUAL:
        own: Estimate | None = getattr(run, quantity)
        return own
    return _of_lines((run,), building, quantity)


def total_of(result: TestResult, quantity: str) -> Estimate | None:
    """Return a quantity with the interval of everything that makes it uncertain, None where that was not worked out."""
    return next((item.total for item in result.budgets if item.quantity == quantity), None)


def lacking(method: str, building: Building, say: Say = in_english) -> str:
    """Say that the envelope area is missing where the method's first quantity needs it, empty where all is there.

    The usual quantities need no words: they have a place of their own, which is seen to be empty.
    """
    first = QUANTITIES[method_of(method).reports[0]]
    if first.id in USUAL or first.divisor != "envelope_area_m2" or _allowed(first.id, building):
        return ""
    return say(NO_AREA, method=method_title(method), symbol=first.symbol)


def _allowed(quantity: str, building: Building) -> bool:
    divisor = QUANTITIES[quantity].divisor
    return divisor is None or getattr(building, divisor) is not None


def _of_lines(runs: tuple[RunResult, ...], building: Building, quantity: str) -> Estimate | None:
    lines = [line for run in runs if (line := run.reference_line) is not None]
    if len(lines) < len(runs) or not _allowed(quantity, building):
        return None
    return effective(lines, building, QUANTITIES[quantity], "a quantity").estimate
