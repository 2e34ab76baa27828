"""Reads the catalogues: one TOML file for each language, English message on the left, its translation on the right."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Mapping
from functools import cache
from importlib.resources import files
from typing import Any

from acquisition.languages.language import ENGLISH, NO_BREAK, Language, Pattern
from analysis.errors import InvalidInput

TAGS = ("de", "fr")
"""The languages that have a catalogue, by the names of its files."""
NARROW = "\N{NARROW NO-BREAK SPACE}"
HEAD, SAID = "language", "said"
_KEYS = {"name", "decimal_mark", "thousands", "narrow_before", "narrow_after"}
_PLACE = re.compile(r"\{(\w+)\}")
_UNITS = re.compile(r"(?<=[\d}]) (?=(?:Pa|%|°C|m|m²|m³|cm²|kg|s|h|K|J|N)(?!\w))")
_GROUPS = re.compile(r"(?<=\d) (?=\d{3}(?!\d))")


@cache
def read_catalogue(tag: str) -> Language:
    """Return the language of a catalogue. Raises `ValueError` for a key or a message that stands there twice."""
    document = tomllib.loads(files(__package__).joinpath(f"{tag}.toml").read_text("utf-8"))
    head: dict[str, str] = document.pop(HEAD)
    if set(head) != _KEYS:
        raise ValueError(f"{tag}.toml, {HEAD}: {', '.join(sorted(_KEYS ^ set(head)))} is unknown or missing")
    messages: dict[str, str] = {}
    for message, words in _entries(document):
        if message in messages:
            raise ValueError(f"{tag}.toml: '{message}' stands there twice")
        messages[message] = _spaced(words, head)
    patterns = tuple(
        Pattern(chapter, _pattern(message), messages[message])
        for chapter, table in document.get(SAID, {}).items()
        for message, _ in _entries(table)
        if _PLACE.search(message)
    )
    return Language(tag, head["name"], head["decimal_mark"], head["thousands"], messages, patterns)


def _entries(table: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    """Yield message and translation of a chapter and of the chapters in it."""
    for key, value in table.items():
        if isinstance(value, str):
            yield key, value
        else:
            yield from _entries(value)


def _pattern(message: str) -> re.Pattern[str]:
    """Return what finds a message with values in it."""
    parts = _PLACE.split(message)
    found = (f"(?P<{part}>.+?)" if at % 2 else re.escape(part) for at, part in enumerate(parts))
    return re.compile("".join(found), re.DOTALL)


def _spaced(words: str, head: Mapping[str, str]) -> str:
    """Return words with the spaces at which no line may break: so a catalogue is written with plain ones."""
    words = _UNITS.sub(NO_BREAK, _GROUPS.sub(head["thousands"], words))
    if head["narrow_before"]:
        words = re.sub(f" (?=[{re.escape(head['narrow_before'])}])", NARROW, words)
    if head["narrow_after"]:
        words = re.sub(f"(?<=[{re.escape(head['narrow_after'])}]) ", NARROW, words)
    return words


def language_of(tag: str, field: str = "language") -> Language:
    """Return a language by its tag, English for an empty one; raises `InvalidInput` that lists those there are."""
    if not tag or tag == ENGLISH.tag:
        return ENGLISH
    if tag not in TAGS:
        raise InvalidInput(field, tag, f"one of {', '.join((ENGLISH.tag, *TAGS))} is needed")
    return read_catalogue(tag)


def languages() -> tuple[Language, ...]:
    """Return all of them, the one that is taken where none was chosen in front."""
    return (ENGLISH, *(read_catalogue(tag) for tag in TAGS))
