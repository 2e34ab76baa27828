"""Symbols and quantities of the results, and how their numbers are written."""

from __future__ import annotations

from acquisition.languages import ENGLISH, Language
from analysis.effective import QUANTITIES
from analysis.numbertext import format_number
from analysis.records import Check
from analysis.units import Display, EstimateText

Json = dict[str, object]
Symbol = tuple[str, str]
"""A letter and its index."""


def _symbol(text: str) -> Symbol:
    letters = text.rstrip("0123456789")
    index = letters[-1] if letters[-1] in "EF" else ""
    return letters.removesuffix(index), index + text.removeprefix(letters)


SYMBOLS = {name: _symbol(item.symbol) for name, item in QUANTITIES.items()}
KINDS = {name: item.kind for name, item in QUANTITIES.items()}
BLANK = "–"


def interval_text(text: EstimateText, language: Language = ENGLISH) -> str:
    """Return the interval of an estimate, a dash where it has none."""
    return language.say("{low} to {high}", low=text.low, high=text.high) if text.low else BLANK


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
