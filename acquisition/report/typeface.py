"""The typeface of the report, shipped with the program so that every machine makes the same page."""

from __future__ import annotations

import re
import unicodedata
from functools import cache
from importlib.resources import files
from pathlib import Path

from matplotlib.ft2font import FT2Font

FAMILY = "Inter"
FOLDER = Path(str(files(__package__).joinpath("fonts")))
FONT_FILES = tuple(FOLDER / f"Inter-{weight}.otf" for weight in ("Regular", "SemiBold", "Bold"))

MISSING = "?"
_BLANKS = re.compile("[^\\S\u00a0\u2009\u202f]+")
"""Blanks at which a line may break; spaces within a number and before a mark stay what they are."""


@cache
def _glyphs() -> frozenset[int]:
    """The characters that every weight has."""
    return frozenset.intersection(*(frozenset(FT2Font(path).get_charmap()) for path in FONT_FILES))


def printable(text: str) -> str:
    """Return `text` on one line, composed, with a question mark for each character that the typeface lacks."""
    line = _BLANKS.sub(" ", unicodedata.normalize("NFC", text)).strip(" ")
    return "".join(character if ord(character) in _glyphs() else MISSING for character in line)
