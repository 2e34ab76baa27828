"""The office on a page: its texts, its logo."""

from __future__ import annotations

from acquisition.languages import Language
from acquisition.office import Letterhead
from acquisition.report.names import Json
from acquisition.report.photos import wrapped
from acquisition.report.typeface import printable

LOGO = "logo.svg"


def office_words(office: Letterhead | None, language: Language) -> Json | None:
    """Return what the page prints of the office."""
    if office is None:
        return None
    return {
        "name": printable(office.name),
        "logo-alt": language.say("Logo of {office}", office=printable(office.name)),
        "lines": [printable(line) for line in office.address],
        "closing": printable(office.closing),
        "logo": LOGO if office.logo else "",
    }


def head_files(office: Letterhead | None) -> dict[str, bytes]:
    """Return the files that the texts name."""
    return {LOGO: wrapped(office.logo)} if office is not None and office.logo else {}
