"""The files of a report, and what the typesetter makes of them."""

from __future__ import annotations

import json
from typing import Literal

from acquisition.report.certificate import code_of
from acquisition.report.content import ReportContent
from acquisition.report.curves import report_curves
from acquisition.report.document import report_document
from acquisition.report.figure import leakage_figure
from acquisition.report.letterhead import head_files
from acquisition.report.photos import wrapped
from acquisition.report.typesetting import template, typeset_pdf
from analysis.units import Display, Quantity, System, unit_symbol

Units = Literal["SI", "US"] | Display
"""A system of units with decimal points, or how a person wants to see numbers."""

HEIGHT_TWO_MM, HEIGHT_ONE_MM = 66.0, 62.0
"""Of the figure: with two directions, with one."""
TEMPLATES = ("words.typ", "certificate.typ", "technical.typ", "annex.typ")


def report_pdf(content: ReportContent, units: Units = "SI") -> bytes:
    """Return the report as PDF/A-3 with the test and the result attached; the same content gives the same bytes."""
    return typeset_pdf(_sources(content, _display(units)), content.date)


def _display(units: Units) -> Display:
    if isinstance(units, Display):
        return units
    return Display(System.US if units == "US" else System.SI)


def _sources(content: ReportContent, display: Display) -> dict[str, bytes]:
    height_mm = HEIGHT_TWO_MM if len(content.runs) > 1 else HEIGHT_ONE_MM
    language = content.language
    display = language.display(display)
    axis = language.say("envelope flow, {unit}", unit=unit_symbol(Quantity.FLOW, display))
    return {
        "main.typ": template("report.typ"),
        **{name: template(name) for name in TEMPLATES},
        "data.json": json.dumps(report_document(content, display), ensure_ascii=False).encode(),
        "figure.svg": leakage_figure(report_curves(content, display), axis, height_mm, language),
        "code.svg": code_of(content)[0],
        "test.json": content.test_json(),
        "result.json": content.result_json(),
        **{photo.file: wrapped(photo.content) for photo in content.file.photos},
        **head_files(content.file.office),
    }
