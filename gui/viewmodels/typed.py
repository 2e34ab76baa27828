"""Days and numbers as somebody types them."""

from __future__ import annotations

from datetime import date, datetime

from analysis.errors import InvalidInput


def day_of(text: str, words: str) -> date:
    """Return a day of the calendar; raises `InvalidInput`."""
    for form in ("%Y-%m-%d", "%d.%m.%Y"):
        try:
            return datetime.strptime(text, form).date()  # noqa: DTZ007 - a calendar day has no zone
        except ValueError:
            continue
    raise InvalidInput(words, text or None, "a day such as 2026-05-04 is needed", shown=text)


def figure(value: float) -> str:
    """Return a calibration number so that it reads back as the same."""
    return repr(value).removesuffix(".0")
