"""Symbols and quantities of the results, and how their numbers are written."""

from __future__ import annotations

from analysis.numbertext import format_number
from analysis.records import Check
from analysis.units import Display, EstimateText, Quantity, to_display

Json = dict[str, object]
Symbol = tuple[str, str]
"""A letter and its index."""

SYMBOLS: dict[str, Symbol] = {
    "n50_per_h": ("n", "50"),
    "q50_m3_h": ("q", "50"),
    "qe50_m3_h_m2": ("q", "E50"),
    "qf50_m3_h_m2": ("q", "F50"),
}
KINDS = {
    "n50_per_h": Quantity.AIR_CHANGE,
    "q50_m3_h": Quantity.FLOW,
    "qe50_m3_h_m2": Quantity.FLOW_PER_AREA,
    "qf50_m3_h_m2": Quantity.FLOW_PER_AREA,
}
BLANK = "–"


def interval_text(text: EstimateText) -> str:
    """Return the interval of an estimate, a dash where it has none."""
    return f"{text.low} to {text.high}" if text.low else BLANK


def limit_text(value: float, kind: Quantity, display: Display) -> str:
    """Return a limit with the digits that it was given with, one decimal at least."""
    shown = to_display(value, kind, display)
    _, _, decimals = f"{shown:.4g}".partition(".")
    return format_number(shown, max(len(decimals), 1), display.decimal_mark)


def share_decimals(value: float) -> int:
    """Return the decimals that show that a value is not quite 1."""
    return 5 if 0.999 < value < 1.0 else 4


def check_value(check: Check, display: Display) -> str:
    """Return what a check found, in the unit of the requirement; empty where it found nothing."""
    if check.value is None:
        return ""
    if float(check.value).is_integer():
        decimals = 0
    elif check.unit == "":
        decimals = share_decimals(check.value)
    else:
        decimals = 1 if abs(check.value) >= 10 else 2
    return f"{format_number(check.value, decimals, display.decimal_mark)} {check.unit}".strip()
