"""What every document prints alike: words of the page itself, its number and revision, digits in groups."""

from __future__ import annotations

from typing import Any

from acquisition.job.issues import IssueMark
from acquisition.languages import Language
from acquisition.report.names import Json
from acquisition.report.typeface import printable


def page_words(language: Language) -> Json:
    """Return the words that the layout itself needs; the typesetter counts the pages."""
    say = language.say
    return {
        "page": say("Page {page} of {pages}", page="{page}", pages="{pages}"),
        "limit": say("Limit:"),
        "colon": say(": "),
    }


def marked(title: str, mark: IssueMark | None, language: Language) -> str:
    """Return what a report is called, with its number and revision where it was issued."""
    if mark is None:
        return title
    number = f" {printable(mark.number)}" if mark.number else ""
    revision = language.say(", revision {number}", number=mark.revision) if mark.revision else ""
    return f"{title}{number}{revision}"


def grouped(document: Json, language: Language) -> Json:
    """Return a document with the mark of the language between groups of digits."""
    return {name: _grouped(value, language) for name, value in document.items()}


def _grouped(value: Any, language: Language) -> Any:  # noqa: ANN401 - whatever JSON holds
    if isinstance(value, str):
        return language.grouped(value)
    if isinstance(value, dict):
        return {name: _grouped(item, language) for name, item in value.items()}
    if isinstance(value, list | tuple):
        return [_grouped(item, language) for item in value]
    return value
