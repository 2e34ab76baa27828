"""The words on the screen in the language of the person. Plain Python: views and view models both use it.

The English text is the name of a message. What the catalogue does not know stays English.
"""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum

Catalogue = Callable[[str], str]
"""Takes an English message, returns it in the language on the screen, or as it was."""


class Language(StrEnum):
    """A language of the window, by its ISO 639-1 code."""

    SYSTEM = "system"
    ENGLISH = "en"
    GERMAN = "de"
    FRENCH = "fr"


def _english(text: str) -> str:
    return text


class _Spoken:
    """What is spoken now; one for the program, as its window is one."""

    language = Language.ENGLISH
    catalogue: Catalogue = staticmethod(_english)


def speak(language: Language, catalogue: Catalogue = _english) -> None:
    """Have every message from now on looked up in this catalogue."""
    _Spoken.language, _Spoken.catalogue = language, staticmethod(catalogue)


def spoken() -> Language:
    """Return the language on the screen."""
    return _Spoken.language


def say(text: str, /, **values: object) -> str:
    """Return a message in the language on the screen, with `{names}` replaced by the values where there are any."""
    words = _Spoken.catalogue(text)
    return words.format(**values) if values else words


def mark(text: str) -> str:
    """Return the text as it is, but have it translated: for what is defined once and said later."""
    return text


def within(name: str) -> str:
    """Return the name of a thing as it is written inside a sentence: German nouns keep their capital."""
    return name if _Spoken.language is Language.GERMAN else name.lower()
