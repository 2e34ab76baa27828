"""The corrections of a gauge as one line of text: `0 0; 50 50.4`, or `p1: 0 0; 50 50.4 | p2: 0.1; 1.002`.

Pairs are a table of the pressure shown and the true one; single numbers are a polynomial of the pressure shown.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from acquisition.correction import Correction, check_correction
from analysis.errors import InvalidInput
from analysis.numbertext import parse_number
from gui.viewmodels.typed import figure

WORDS = "pairs of shown and true Pa, such as 0 0; 50 50.4, or a polynomial, such as 0.1; 1.002, are needed"


def correction_text(corrections: Sequence[Correction]) -> str:
    """Return corrections as they are typed."""
    return " | ".join(f"{item.channel}: {_numbers(item)}" if item.channel else _numbers(item) for item in corrections)


def read_corrections(text: str, calibrated: date | None, mark: str) -> tuple[Correction, ...]:
    """Return what was typed; raises `InvalidInput`."""
    parts = [part.strip() for part in text.split("|") if part.strip()]
    if parts and calibrated is None:
        raise InvalidInput("day of the correction", None, "the day on the certificate is needed, such as 2026-05-04")
    found = [] if calibrated is None else [_one(part, calibrated, mark) for part in parts]
    channels = [item.channel for item in found]
    if len(set(channels)) < len(channels) or ("" in channels and len(channels) > 1):
        allowed = "one for all channels, or one for each with its name in front, is needed"
        raise InvalidInput("correction", text, allowed, shown=text)
    return tuple(found)


def _one(text: str, calibrated: date, mark: str) -> Correction:
    head, colon, numbers = text.rpartition(":")
    rows = [
        [parse_number(word, "correction", mark) for word in part.split()] for part in numbers.split(";") if part.strip()
    ]
    channel = head.strip() if colon else ""
    if rows and all(len(row) == 2 for row in rows):
        made = Correction(channel, calibrated, table=tuple((shown, true) for shown, true in rows))
    elif rows and all(len(row) == 1 for row in rows):
        made = Correction(channel, calibrated, polynomial=tuple(row[0] for row in rows))
    else:
        raise InvalidInput("correction", text, WORDS, shown=text)
    check_correction(made, "correction")
    return made


def _numbers(item: Correction) -> str:
    if item.polynomial:
        return "; ".join(figure(factor) for factor in item.polynomial)
    return "; ".join(f"{figure(shown)} {figure(true)}" for shown, true in item.table)
