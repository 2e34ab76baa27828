"""A language: what it calls the things of a report, and how it writes numbers and days."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date, datetime

from analysis.numbertext import THIN_SPACE
from analysis.units import Display

MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November",
    "December",
)  # fmt: skip
NO_BREAK = "\N{NO-BREAK SPACE}"
_NUMBER = re.compile(r"[+\-\u2212]?\d+(\.\d+)?")
_DAY = re.compile(r"\d{4}-\d\d-\d\d")
_GROUPED = re.compile(rf"(?<=\d){THIN_SPACE}(?=\d{{3}})")


@dataclass(frozen=True, slots=True)
class Pattern:
    """A sentence with values in it: the chapter it stands in, what finds it in English, and what it is called."""

    chapter: str
    english: re.Pattern[str]
    words: str


@dataclass(frozen=True, slots=True, eq=False)
class Language:
    """A language. English has no messages: it is what the program says itself.

    `decimal_mark` holds in every report in it, whatever the window shows; `thousands` stands between groups of digits.
    """

    tag: str
    name: str
    decimal_mark: str = "."
    thousands: str = THIN_SPACE
    messages: Mapping[str, str] = field(default_factory=dict)
    patterns: tuple[Pattern, ...] = ()

    def say(self, message: str, /, **values: object) -> str:
        """Return a message of the program with its values filled in; one that has no translation stays English."""
        words = self.messages.get(message, message)
        return words.format(**values) if values else words

    def said(self, sentence: str, chapter: str = "") -> str:
        """Return a finished English sentence, which may hold values; one that is not known stays as it is.

        So records that keep sentences, and checks that come with theirs, can be told in another language later. With a
        `chapter` of the catalogue nothing else is taken for a sentence of the program: a person may have typed it.
        """
        known = self.messages.get(sentence)
        if known is not None:
            return known
        for pattern in self.patterns:
            found = pattern.english.fullmatch(sentence) if chapter in ("", pattern.chapter) else None
            if found is not None:
                return pattern.words.format(**{name: self._value(text) for name, text in found.groupdict().items()})
        return sentence

    def display(self, display: Display) -> Display:
        """Return how numbers are shown in this language."""
        return replace(display, decimal_mark=self.decimal_mark)

    def grouped(self, text: str) -> str:
        """Return a text with this language's mark between groups of digits."""
        return _GROUPED.sub(self.thousands, text)

    def day(self, day: date | datetime) -> str:
        """Return a date with the name of its month."""
        month = self.say(MONTHS[day.month - 1])
        return self.say("{day} {month} {year}", day=self.say(str(day.day)), month=month, year=day.year)

    def short_day(self, day: date | datetime) -> str:
        """Return a date in digits."""
        return self.say("{year}-{month}-{day}", year=day.year, month=f"{day.month:02}", day=f"{day.day:02}")

    def number(self, text: str) -> str:
        """Return a number that was written with a decimal point, and perhaps with its unit, as one word."""
        return text if self.decimal_mark == "." else text.replace(".", self.decimal_mark).replace(" ", NO_BREAK)

    def _value(self, text: str) -> str:
        """Return a value out of a sentence: a number with this language's mark, a day, words that are known."""
        if _NUMBER.fullmatch(text):
            return self.number(text)
        return self.short_day(date.fromisoformat(text)) if _DAY.fullmatch(text) else self.said(text)


ENGLISH = Language("en", "English")
