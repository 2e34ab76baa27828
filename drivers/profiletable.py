"""Reads one table of a profile, and knows the line of each key for the sentence about what is wrong with it."""

from __future__ import annotations

import math
import re
import sys
from collections.abc import Callable, Mapping
from typing import NoReturn, Self

from drivers.errors import ProfileError

Encode = Callable[[str], bytes]
"""Makes bytes of a message; raises `ValueError` with what is allowed."""


class Table:
    """One TOML table with typed access; `finish` complains about what nobody asked for."""

    def __init__(self, content: Mapping[str, object], file: str, text: str, header: str, index: int = 0) -> None:
        """`header` is the table's name with its dots, empty at the top; `index` counts tables of an array."""
        self._content = content
        self._file = file
        self._text = text
        self._header = header
        self._index = index
        self._asked: set[str] = set()

    def fail(self, key: str, allowed: str) -> NoReturn:
        """Raise the error about a key."""
        name = f"{self._header}.{key}" if self._header else key
        raise ProfileError(self._file, self._line_of(key), name, allowed)

    def has(self, key: str) -> bool:
        """Tell whether the key is there."""
        self._asked.add(key)
        return key in self._content

    def text(self, key: str, default: str | None = None) -> str:
        """Return a text; without a default it may not be empty."""
        value = self._get(key, default)
        if not isinstance(value, str) or (default is None and not value):
            self.fail(key, f"a text in quotes is needed, {_shown(value)}")
        return value

    def texts(self, key: str, default: tuple[str, ...] | None = None) -> tuple[str, ...]:
        """Return a list of texts, not empty."""
        value = self._get(key, None)
        if value is None and default is not None:
            return default
        if not isinstance(value, list) or not value or not all(isinstance(item, str) and item for item in value):
            self.fail(key, f"a list of texts is needed, {_shown(value)}")
        return tuple(value)

    def boolean(self, key: str, default: bool) -> bool:
        """Return true or false."""
        value = self._get(key, default)
        if not isinstance(value, bool):
            self.fail(key, f"true or false is needed, {_shown(value)}")
        return value

    def number(
        self,
        key: str,
        default: float | None = None,
        *,
        above: float = -math.inf,
        at_least: float = -math.inf,
        at_most: float = math.inf,
    ) -> float:
        """Return a finite number within the bounds."""
        value = self._get(key, default)
        # Compared before it becomes a float: a whole number of a thousand digits is none.
        if isinstance(value, int | float) and not isinstance(value, bool):
            within = at_least <= value <= at_most and above < value
            if within and abs(value) <= sys.float_info.max:
                return float(value)
        return self.fail(key, f"{_bounds('a number', above, at_least, at_most)} is needed, {_shown(value)}")

    def whole(self, key: str, default: int, *, at_least: int, at_most: int) -> int:
        """Return a whole number within the bounds."""
        value = self._get(key, default)
        if isinstance(value, int) and not isinstance(value, bool) and at_least <= value <= at_most:
            return value
        bounds = _bounds("a whole number", -math.inf, at_least, at_most)
        return self.fail(key, f"{bounds} is needed, {_shown(value)}")

    def choice(self, key: str, allowed: tuple[str, ...], default: str | None = None) -> str:
        """Return one of the allowed texts."""
        value = self._get(key, default)
        if not isinstance(value, str) or value not in allowed:
            shown = ", ".join(item if item.isprintable() else repr(item) for item in allowed)
            self.fail(key, f"one of these is needed: {shown}; {_shown(value)}")
        return value

    def message(self, key: str, encode: Encode) -> bytes:
        """Return a message to the instrument as it goes over the wire."""
        try:
            return encode(self.text(key))
        except ValueError as error:
            self.fail(key, str(error))

    def messages(self, key: str, encode: Encode) -> tuple[bytes, ...]:
        """Return messages to the instrument as they go over the wire, one at least."""
        try:
            return tuple(encode(text) for text in self.texts(key))
        except ValueError as error:
            self.fail(key, str(error))

    def pattern(self, key: str, groups: tuple[str, ...]) -> re.Pattern[str]:
        """Return a regular expression with the named groups."""
        try:
            pattern = re.compile(self.text(key))
        except re.error as error:
            self.fail(key, f"a regular expression is needed ({error})")
        for group in groups:
            if group not in pattern.groupindex:
                self.fail(key, f"the group (?P<{group}>...) is missing")
        return pattern

    def table(self, key: str) -> Self:
        """Return a table inside this one."""
        value = self._get(key, None)
        header = f"{self._header}.{key}" if self._header else key
        if not isinstance(value, dict):
            self.fail(key, f"a table [{header}] is needed")
        return type(self)(value, self._file, self._text, header)

    def tables(self, key: str) -> list[Self]:
        """Return the tables of an array, none when it is missing."""
        value = self._get(key, None)
        if value is None:
            return []
        if not isinstance(value, list) or not all(isinstance(item, dict) for item in value):
            self.fail(key, f"tables [[{key}]] are needed")
        return [type(self)(item, self._file, self._text, key, index) for index, item in enumerate(value)]

    def finish(self) -> None:
        """Complain about keys that nobody asked for."""
        for key in self._content:
            if key not in self._asked:
                self.fail(key, f"unknown; the keys here are: {', '.join(sorted(self._asked))}")

    def _get(self, key: str, default: object) -> object:
        self._asked.add(key)
        return self._content.get(key, default)

    def _line_of(self, key: str) -> int | None:
        return line_of(self._text, self._header, self._index, key)


def line_of(text: str, header: str, index: int, key: str) -> int | None:
    """Return the line of a key, or of what opens its table when the key is not there.

    A table may have a header, be written on one line (`link = { baud = 9600 }`), or key by key (`link.baud = 9600`).
    """
    here, seen, header_line = header == "", -1, None
    for number, line in enumerate(text.splitlines(), start=1):
        opened = re.match(r"\s*\[\[?\s*([^\]]+?)\s*\]", line)
        if opened:
            seen += opened.group(1) == header
            here = opened.group(1) == header and seen == index
            header_line = number if here else header_line
        elif here and re.match(rf"\s*\"?{re.escape(key)}\"?\s*=", line):
            return number
    if header_line is not None or not header:
        return header_line
    parent, _, own = header.rpartition(".")
    return line_of(text, parent, 0, f"{own}.{key}") or line_of(text, parent, 0, own)


def _bounds(what: str, above: float, at_least: float, at_most: float) -> str:
    limits = [f"greater than {above:g}"] if above > -math.inf else []
    limits += [f"at least {at_least:g}"] if at_least > -math.inf else []
    limits += [f"at most {at_most:g}"] if at_most < math.inf else []
    return " ".join([what, " and ".join(limits)]).strip()


def _shown(value: object) -> str:
    if value is None:
        return "it is missing"
    # Python refuses to print whole numbers of thousands of digits.
    shown = "a number too long to print" if isinstance(value, int) and value.bit_length() > 200 else repr(value)[:60]
    return f"not {shown}"
