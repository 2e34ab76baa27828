"""Setting the page: content and figure go to the typesetter as data, never as markup."""

from __future__ import annotations

import json
from collections.abc import Callable
from importlib.resources import files
from typing import Literal

import typst

from acquisition.report.certificate import code_of
from acquisition.report.content import ReportContent
from acquisition.report.curves import report_curves
from acquisition.report.document import report_document
from acquisition.report.figure import leakage_figure
from acquisition.report.photos import LOGO, wrapped
from acquisition.report.typeface import FOLDER
from analysis.units import Display, Quantity, System, unit_symbol

Units = Literal["SI", "US"] | Display
"""A system of units with decimal points, or how a person wants to see numbers."""

ARCHIVAL = ("a-3a", "ua-1")
"""PDF/A-3 with accessible structure, and PDF/UA-1: the typesetter refuses to make a file that breaks them."""

HEIGHT_TWO_MM, HEIGHT_ONE_MM = 66.0, 62.0
"""Of the figure: with two directions, with one."""

TEMPLATES = ("words.typ", "certificate.typ", "technical.typ", "annex.typ")

# The typesetter takes a project of several files as a mapping, which its type hints do not say.
_typeset: Callable[..., object] = typst.compile


def report_pdf(content: ReportContent, units: Units = "SI") -> bytes:
    """Return the report as PDF/A-3 with the test and the result attached; the same content gives the same bytes."""
    sources = _sources(content, _display(units))
    return _set(sources, content, format="pdf", pdf_standards=list(ARCHIVAL))[0]


def report_pages(content: ReportContent, ppi: float = 110.0, units: Units = "SI") -> list[bytes]:
    """Return the pages of the same report as PNG."""
    return _set(_sources(content, _display(units)), content, format="png", ppi=ppi)


def _display(units: Units) -> Display:
    if isinstance(units, Display):
        return units
    return Display(System.US if units == "US" else System.SI)


def _set(sources: dict[str, bytes], content: ReportContent, **options: object) -> list[bytes]:
    """Return what the typesetter makes: one document, or its pages."""
    made = _typeset(
        sources,
        font_paths=[FOLDER],
        ignore_system_fonts=True,
        timestamp=int(content.date.timestamp()),
        **options,
    )
    # One page comes without a list.
    pages = made if isinstance(made, list) else [made]
    return [page for page in pages if isinstance(page, bytes)]


def _sources(content: ReportContent, display: Display) -> dict[str, bytes]:
    """Return the files of the report."""
    height_mm = HEIGHT_TWO_MM if len(content.runs) > 1 else HEIGHT_ONE_MM
    axis = f"envelope flow, {unit_symbol(Quantity.FLOW, display)}"
    sources = {
        "main.typ": files(__package__).joinpath("report.typ").read_bytes(),
        **{name: files(__package__).joinpath(name).read_bytes() for name in TEMPLATES},
        "data.json": json.dumps(report_document(content, display), ensure_ascii=False).encode(),
        "figure.svg": leakage_figure(report_curves(content, display), axis, height_mm),
        "code.svg": code_of(content)[0],
        "test.json": content.test_json(),
        "result.json": content.result_json(),
        **{photo.file: wrapped(photo.content) for photo in content.file.photos},
    }
    office = content.file.office
    if office is not None and office.logo:
        sources[LOGO] = wrapped(office.logo)
    return sources
