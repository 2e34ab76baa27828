"""Pieces of text that several tables share."""

from __future__ import annotations

from collections.abc import Iterable

from acquisition.languages import ENGLISH, Language
from analysis.numbertext import MINUS, format_number
from analysis.records import Estimate
from analysis.units import Display, Quantity, format_estimate, to_display

BLANK = "–"
EXTRAPOLATED = "extrapolated: outside the pressures that were measured"


def plus_minus(estimate: Estimate | None, kind: Quantity, display: Display) -> str:
    """Return a value with half of its interval, a dash where there is none."""
    if estimate is None:
        return BLANK
    text = format_estimate(estimate, kind, display)
    return f"{text.value} ± {text.plus_minus}" if text.plus_minus else text.value


def interval(estimate: Estimate | None, kind: Quantity, display: Display, language: Language = ENGLISH) -> str:
    """Return the 95 % interval as text, a dash where it has none."""
    if estimate is None:
        return BLANK
    text = format_estimate(estimate, kind, display)
    return language.say("{low} to {high}", low=text.low, high=text.high) if text.low else BLANK


def with_unit(title: str, unit: str) -> str:
    """Return a heading with its unit."""
    return f"{title}, {unit}" if unit else title


def extrapolated(estimates: Iterable[Estimate | None]) -> str:
    """Return the remark that belongs to estimates outside of what was measured."""
    return EXTRAPOLATED if any(item is not None and item.extrapolated for item in estimates) else ""


def percent(share: float, decimals: int = 1, language: Language = ENGLISH) -> str:
    """Return a share in percent with its sign."""
    return language.number(f"{100 * share:+.{decimals}f} %").replace("-", MINUS)


def limit_text(value: float, kind: Quantity, display: Display) -> str:
    """Return a limit with the digits that it was given with, one decimal at least."""
    shown = to_display(value, kind, display)
    _, _, decimals = f"{shown:.4g}".partition(".")
    return format_number(shown, max(len(decimals), 1), display.decimal_mark)


def sentence(words: str) -> str:
    """Return words as a sentence: a capital in front, a full stop behind where no other mark is, the rest untouched."""
    ended = words if words.endswith(("?", "!")) else f"{words.rstrip('.')}."
    return f"{ended[:1].upper()}{ended[1:]}"
