"""Reading a JSON document field by field: every mistake is named by its exact path."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping
from datetime import datetime

from analysis.errors import InvalidInput

LARGEST_BYTES = 32 * 1024 * 1024


def parse_document(content: str | bytes, name: str) -> Fields:
    """Return the object that a JSON text holds; `name` stands for the document in an `InvalidInput`."""
    text = _text(content, name)
    if not text.strip():
        raise InvalidInput(name, "", "a JSON object is needed", shown="empty")
    try:
        document = json.loads(text, object_pairs_hook=_without_doubles)
    except json.JSONDecodeError as error:
        allowed = f"{error.msg} at line {error.lineno}, column {error.colno}"
        raise InvalidInput(name, text[:60], allowed, shown="not JSON") from error
    except RecursionError as error:
        raise InvalidInput(name, text[:60], "at most a few levels are needed", shown="nested too deeply") from error
    except ValueError as error:
        if isinstance(error, InvalidInput):
            raise
        raise InvalidInput(name, text[:60], "a number in it has too many digits", shown="not usable") from error
    if not isinstance(document, dict):
        raise InvalidInput(name, document, "a JSON object is needed", shown=_kind(document))
    return Fields(document, "", name)


class Fields:
    """One object of a document. Fields are taken one by one; `finish` refuses what nobody took."""

    def __init__(self, values: Mapping[str, object], path: str, name: str) -> None:
        """Start with nothing taken; `path` is empty for the document itself, which is called `name`."""
        self._values = values
        self._path = path
        self._name = name
        self._known: list[str] = []

    def path(self, key: str) -> str:
        """Return the full path of a field."""
        return f"{self._path}.{key}" if self._path else key

    def has(self, key: str) -> bool:
        """Return whether the field is there and not null."""
        return self._values.get(key) is not None

    def number(self, key: str) -> float:
        """Return a number that must be there."""
        value = self.number_or_none(key)
        if value is None:
            raise InvalidInput(self.path(key), None, "a number is needed")
        return value

    def number_or_none(self, key: str) -> float | None:
        """Return a number, None where it is missing or null."""
        value = self._take(key)
        return None if value is None else as_number(value, self.path(key))

    def count(self, key: str) -> int:
        """Return a whole number that must be there."""
        value = self.count_or_none(key)
        if value is None:
            raise InvalidInput(self.path(key), None, "a whole number is needed")
        return value

    def count_or_none(self, key: str) -> int | None:
        """Return a whole number, None where it is missing or null."""
        value = self._take(key)
        if value is None:
            return None
        if isinstance(value, bool) or not isinstance(value, int | float) or value != value // 1:
            raise InvalidInput(self.path(key), value, "a whole number is needed")
        return int(value)

    def text(self, key: str, default: str | None = None) -> str:
        """Return a text; `default` where it is missing or null, which is an error without a default."""
        value = self._take(key)
        if value is None and default is not None:
            return default
        if not isinstance(value, str):
            raise InvalidInput(self.path(key), value, "a text is needed")
        return value

    def choice(self, key: str, allowed: Collection[str]) -> str:
        """Return a text that must be one of those allowed."""
        value = self._take(key)
        if not isinstance(value, str) or value not in allowed:
            raise InvalidInput(self.path(key), value, f"one of {', '.join(allowed)} is needed")
        return value

    def flag(self, key: str, default: bool | None = None) -> bool:
        """Return true or false; `default` where it is missing or null, which is an error without a default."""
        value = self._take(key)
        if value is None and default is not None:
            return default
        if not isinstance(value, bool):
            raise InvalidInput(self.path(key), value, "true or false is needed")
        return value

    def texts(self, key: str) -> tuple[str, ...]:
        """Return a list of texts, empty where it is missing or null."""
        if not self.has(key):
            self._take(key)
            return ()
        items = self._list(key, "a list of texts")
        for at, item in enumerate(items):
            if not isinstance(item, str):
                raise InvalidInput(f"{self.path(key)}[{at}]", item, "a text is needed")
        return tuple(str(item) for item in items)

    def time_or_none(self, key: str) -> datetime | None:
        """Return a time with its zone, None where it is missing or null."""
        value = self._take(key)
        if value is None:
            return None
        allowed = "a time with its zone is needed, such as 2026-05-04T09:12:00Z"
        try:
            time = datetime.fromisoformat(value) if isinstance(value, str) else None
        except ValueError as error:
            raise InvalidInput(self.path(key), value, allowed) from error
        if time is None or time.tzinfo is None:
            raise InvalidInput(self.path(key), value, allowed)
        return time

    def record(self, key: str) -> Fields:
        """Return an object that must be there."""
        value = self.record_or_none(key)
        if value is None:
            raise InvalidInput(self.path(key), None, "a JSON object is needed")
        return value

    def record_or_none(self, key: str) -> Fields | None:
        """Return an object, None where it is missing or null."""
        value = self._take(key)
        return None if value is None else self._record(value, self.path(key))

    def records(self, key: str) -> list[Fields]:
        """Return a list of objects that must be there."""
        items = self._list(key, "a list of JSON objects")
        return [self._record(item, f"{self.path(key)}[{at}]") for at, item in enumerate(items)]

    def numbers(self, key: str) -> tuple[float, ...]:
        """Return a list of numbers that must be there."""
        items = self._list(key, "a list of numbers")
        return tuple(as_number(item, f"{self.path(key)}[{at}]") for at, item in enumerate(items))

    def finish(self) -> None:
        """Raise `InvalidInput` for a field that was never asked for."""
        for key in self._values:
            if key not in self._known:
                shown = f"known fields here are {', '.join(self._known)}"
                raise InvalidInput(self.path(key), self._values[key], shown, shown="unknown")

    def _take(self, key: str) -> object:
        self._known.append(key)
        return self._values.get(key)

    def _list(self, key: str, allowed: str) -> list[object]:
        value = self._take(key)
        if not isinstance(value, list):
            shown = "" if value is None else _kind(value)
            raise InvalidInput(self.path(key), value, f"{allowed} is needed", shown=shown)
        return value

    def _record(self, value: object, path: str) -> Fields:
        if not isinstance(value, dict):
            raise InvalidInput(path, value, "a JSON object is needed")
        return Fields(value, path, self._name)


def as_number(value: object, path: str) -> float:
    """Return the value as a finite float; raises `InvalidInput` for anything that is none."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise InvalidInput(path, value, "a number is needed")
    try:
        number = float(value)
    except OverflowError:
        number = float("inf")
    if number - number != 0.0:
        raise InvalidInput(path, number, "a finite number is needed")
    return number


def _text(content: str | bytes, name: str) -> str:
    size = len(content)
    if size > LARGEST_BYTES:
        allowed = f"at most {LARGEST_BYTES // 2**20} MiB can be read"
        raise InvalidInput(name, size, allowed, shown=f"{size / 2**20:.0f} MiB long")
    if isinstance(content, str):
        return content.removeprefix("\ufeff")
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise InvalidInput(name, content[:16], "JSON in UTF-8 is needed", shown="not text") from error


def _without_doubles(pairs: list[tuple[str, object]]) -> dict[str, object]:
    values = dict(pairs)
    if len(values) != len(pairs):
        keys = [key for key, _ in pairs]
        double = next(key for at, key in enumerate(keys) if key in keys[:at])
        raise InvalidInput(double, values[double], "a field may appear only once in an object", shown="there twice")
    return values


def _kind(value: object) -> str:
    match value:
        case dict():
            return "an object"
        case list():
            return "a list"
        case str():
            return "a text"
        case bool():
            return "true or false"
        case int() | float():
            return "a number"
        case _:
            return "null"
