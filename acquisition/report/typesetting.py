"""The typesetter: files in, pages out, with the typeface that comes along and nothing of the machine."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from importlib.resources import files

import typst

from acquisition.report.typeface import FOLDER

ARCHIVAL = ("a-3a", "ua-1")
"""PDF/A-3 with accessible structure, and PDF/UA-1: the typesetter refuses to make a file that breaks them."""

# The typesetter takes a project of several files as a mapping, which its type hints do not say.
_typeset: Callable[..., object] = typst.compile


def template(name: str) -> bytes:
    """Return a page layout that is shipped with the program."""
    return files(__package__).joinpath(name).read_bytes()


def typeset_pdf(sources: Mapping[str, bytes], date: datetime) -> bytes:
    """Return `main.typ` of the sources as PDF; the same sources and date give the same bytes."""
    made = _typeset(
        dict(sources),
        font_paths=[FOLDER],
        ignore_system_fonts=True,
        timestamp=int(date.timestamp()),
        format="pdf",
        pdf_standards=list(ARCHIVAL),
    )
    assert isinstance(made, bytes)
    return made
