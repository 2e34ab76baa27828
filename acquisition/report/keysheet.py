"""The key sheet as a page to print."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import UTC, datetime

from acquisition.report.typeface import printable
from acquisition.report.typesetting import template, typeset_pdf

DATED = datetime(2026, 1, 1, tzinfo=UTC)
"""The sheet is the same whenever it is saved."""


def key_sheet_pdf(
    title: str, groups: Sequence[tuple[str, Sequence[tuple[str, str]]]], cautions: Sequence[str], tag: str = "en"
) -> bytes:
    """Return the sheet as PDF: groups of keys with what they do, then the cautions; `tag` names the language."""
    document = {
        "title": printable(title),
        "language": tag,
        "groups": [
            {"head": printable(head), "keys": [[printable(key), printable(words)] for key, words in keys]}
            for head, keys in groups
        ],
        "cautions": [printable(words) for words in cautions],
    }
    data = json.dumps(document, ensure_ascii=False).encode()
    return typeset_pdf({"main.typ": template("keysheet.typ"), "data.json": data}, DATED)
