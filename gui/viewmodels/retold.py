"""What others say in English, in the language on the screen: the test, its methods, data files and tables.

Test, methods and data files know no language: what they say is kept in job files, printed on a terminal and compared
in tests. The window recognises their sentences by those that are marked in `sentences`, `notes`, `wires`, `refusals`
and `borrowed`, and by the catalogues of the report; any other stays English. What people typed may come through here
too: so a piece of a sentence (`parts`) is known only inside one.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache, lru_cache

from acquisition.languages import language_of
from acquisition.told.texts import sentence
from gui.viewmodels.notes import NOTES
from gui.viewmodels.parts import PARTS
from gui.viewmodels.refusals import REFUSALS
from gui.viewmodels.sentences import SENTENCES
from gui.viewmodels.sheets import SHEETS
from gui.viewmodels.wires import WIRES
from gui.words import Language, say, spoken

_PLACE = re.compile(r"\{(\w+)\}")
_BETWEEN = re.compile(r"(?<=[.?!]) (?=[A-Z“0-9])")
_REFUSED = re.compile(r"(?P<field>.+?) is (?P<shown>.+?): (?P<allowed>.+?)(?P<stop>\.?)", re.DOTALL)
_FIGURE = r"[+\-\u2212]?\d[\d.,\u2009\u202f]*(?: ?%)?"
_INTERVAL = re.compile(rf"(?P<low>{_FIGURE}) to (?P<high>{_FIGURE})")
_DECIMAL = re.compile(r"[+\-\u2212]?\d+\.\d+(?: ?%)?")
KEPT = 4096


@dataclass(frozen=True, slots=True)
class _Pattern:
    """A sentence with values in it; the fixed letters are looked for first, since that costs next to nothing."""

    message: str
    fixed: tuple[str, ...]
    english: re.Pattern[str]


def retold(text: str) -> str:
    """Return a finished English text of the test in the language on the screen, what is not known as it is."""
    language = spoken()
    return text if language is Language.ENGLISH or not text else _retold(language, text, inside=False)


def retold_part(text: str) -> str:
    """Return a piece of a sentence, which nobody typed, in the language on the screen."""
    language = spoken()
    return text if language is Language.ENGLISH or not text else _retold(language, text, inside=True)


@lru_cache(KEPT)
def _retold(language: Language, text: str, *, inside: bool) -> str:
    catalogue = language_of(language.value)
    if _DECIMAL.fullmatch(text):
        return text.replace(".", catalogue.decimal_mark) if inside else text
    words = say(text)
    if words == text:
        words = catalogue.messages.get(text, text)
    if words != text:
        return words
    for pattern in _patterns(inside=inside):
        found = pattern.english.fullmatch(text) if all(part in text for part in pattern.fixed) else None
        if found is not None:
            return _with_values(language, pattern.message, found)
    words = catalogue.said(text)
    if words != text:
        return words
    parts = _BETWEEN.split(text)
    if len(parts) > 1:
        return " ".join(_retold(language, part, inside=inside) for part in parts)
    if text.endswith(".") and text[0].isupper():
        # Words that were made a sentence on the way (`told.texts.sentence`).
        words = text[0].lower() + text[1:-1]
        said = _retold(language, words, inside=inside)
        if said != words:
            return sentence(said)
    return _pieced(language, text)


def _pieced(language: Language, text: str) -> str:
    """Return an interval, or an input that was refused as far as what is allowed is known."""
    found = _INTERVAL.fullmatch(text)
    if found is not None:
        return say("{low} to {high}", **found.groupdict())
    found = _REFUSED.fullmatch(text)
    if found is None or _retold(language, found["allowed"], inside=True) == found["allowed"]:
        return text
    return _with_values(language, "{field} is {shown}: {allowed}", found) + found["stop"]


def _with_values(language: Language, message: str, found: re.Match[str]) -> str:
    values = {name: _retold(language, part, inside=True) for name, part in found.groupdict().items()}
    return say(message, **values)


@cache
def _patterns(*, inside: bool) -> tuple[_Pattern, ...]:
    """Return what finds a sentence with values in it, those with the most fixed letters first."""
    messages = (*SENTENCES, *NOTES, *WIRES, *REFUSALS, *SHEETS, *(PARTS if inside else ()))
    with_values = sorted((item for item in messages if "{" in item), key=lambda item: -len(_PLACE.sub("", item)))
    return tuple(_pattern(item) for item in with_values)


def _pattern(message: str) -> _Pattern:
    parts = _PLACE.split(message)
    found_by = "".join(f"(?P<{part}>.+?)" if at % 2 else re.escape(part) for at, part in enumerate(parts))
    return _Pattern(message, tuple(filter(None, parts[::2])), re.compile(found_by, re.DOTALL))
