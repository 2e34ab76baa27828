"""What others say in English, in the language on the screen: the test, its methods, data files and tables.

Test, methods and data files know no language: what they say is kept in job files, printed on a terminal and compared
in tests. The window recognises their sentences by those that are marked in `sentences` and `borrowed`, and by the
catalogues of the report; any other stays English.
"""

from __future__ import annotations

import re
from functools import cache, lru_cache

from acquisition.languages import language_of
from gui.viewmodels.sentences import SENTENCES
from gui.words import Language, say, spoken

_PLACE = re.compile(r"\{(\w+)\}")
_BETWEEN = re.compile(r"(?<=[.?!]) (?=[A-Z“0-9])")
KEPT = 4096


def retold(text: str) -> str:
    """Return a finished English text of the test in the language on the screen, what is not known as it is."""
    language = spoken()
    return text if language is Language.ENGLISH or not text else _retold(language, text)


@lru_cache(KEPT)
def _retold(language: Language, text: str) -> str:
    words = say(text)
    if words != text:
        return words
    for pattern, message in _patterns():
        found = pattern.fullmatch(text)
        if found is not None:
            return say(message, **{name: _retold(language, part) for name, part in found.groupdict().items()})
    words = language_of(language.value).said(text)
    if words != text:
        return words
    parts = _BETWEEN.split(text)
    return " ".join(_retold(language, part) for part in parts) if len(parts) > 1 else text


@cache
def _patterns() -> tuple[tuple[re.Pattern[str], str], ...]:
    """Return what finds a sentence with values in it, those with the most fixed letters first."""
    with_values = sorted((item for item in SENTENCES if "{" in item), key=lambda item: -len(_PLACE.sub("", item)))
    return tuple((re.compile(_found_by(item), re.DOTALL), item) for item in with_values)


def _found_by(message: str) -> str:
    parts = _PLACE.split(message)
    return "".join(f"(?P<{part}>.+?)" if at % 2 else re.escape(part) for at, part in enumerate(parts))
