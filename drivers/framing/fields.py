"""A line to the values in it: named fields, columns, or a pattern of the profile's own. Pure."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from enum import Enum

from drivers.framing.scpi import decimal, is_ordinary, scpi_number

Splitter = Callable[[str], dict[str, str] | None]
"""Takes a line, returns the texts by channel name, None when the line is not made that way."""


class Over(Enum):
    """What an instrument says that reads over range without saying at which end."""

    RANGE = "over range"


ALIKE = str.maketrans("123456789-", "000000000+")
RawValue = float | Over
"""NaN when nothing is connected, infinite when over range at a known end."""


@dataclass(frozen=True, slots=True)
class ReplyFormat:
    """How the values stand in a line.

    A line counts only when every one of `names` is in it: half a line is no line. `over_range` and `not_a_number` are
    the words that an instrument writes instead of a number; with `scpi_specials` the special SCPI numbers count too.
    With `even` all other numbers of a line are written in one form, with equally many digits: what protects a line
    without a checksum from a byte lost in the middle of a number (all but a leading minus sign).
    """

    split: Splitter
    names: tuple[str, ...]
    over_range: tuple[str, ...] = ()
    not_a_number: tuple[str, ...] = ()
    scpi_specials: bool = False
    even: bool = False

    def values(self, line: str) -> dict[str, RawValue] | None:
        """Return the raw values by name, None when the line is anything else."""
        texts = self.split(line)
        if texts is None:
            return None
        values: dict[str, RawValue] = {}
        for name in self.names:
            value = self._value(texts.get(name, ""))
            if value is None:
                return None
            values[name] = value
        return values if not self.even or self._is_even(texts.values()) else None

    def _value(self, text: str) -> RawValue | None:
        if text in self.over_range:
            return Over.RANGE
        if text in self.not_a_number:
            return math.nan
        return scpi_number(text) if self.scpi_specials else decimal(text)

    def _is_even(self, texts: Iterable[str]) -> bool:
        """Tell whether the ordinary numbers of a line are written alike."""
        return len({_form(text) for text in texts if is_ordinary(text)}) <= 1


def _form(text: str) -> str:
    """Return how a number is written: its characters after the point, in scientific notation all but the sign."""
    form = text.upper().lstrip("+-").translate(ALIKE)
    return form if "E" in form else form.partition(".")[2]


def named_fields(line: str) -> dict[str, str] | None:
    """Split a line like `p1=-50.12 p2=103.40`."""
    texts: dict[str, str] = {}
    for part in line.split():
        name, mark, text = part.partition("=")
        if not (name and mark and text) or name in texts:
            return None
        texts[name] = text
    return texts


def only(known: frozenset[str]) -> Splitter:
    """Split a line of named fields that has no other names than these.

    A line that was cut may run together with the next one and pass its checksum by chance: `p1=0.00 p2p1=-50.12`.
    """

    def split(line: str) -> dict[str, str] | None:
        texts = named_fields(line)
        return texts if texts is not None and texts.keys() <= known else None

    return split


def columns(names: tuple[str, ...], separator: str) -> Splitter:
    """Split a line with exactly one text per name."""

    def split(line: str) -> dict[str, str] | None:
        texts = [text.strip() for text in line.split(separator)]
        return dict(zip(names, texts, strict=True)) if len(texts) == len(names) else None

    return split


def pattern(expression: re.Pattern[str]) -> Splitter:
    """Split a whole line by the named groups of an expression."""

    def split(line: str) -> dict[str, str] | None:
        found = expression.fullmatch(line)
        return None if found is None else {name: (text or "").strip() for name, text in found.groupdict().items()}

    return split
