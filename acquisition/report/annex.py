"""The annex: equipment with its calibration, uncertainty, leaks, photos, what was edited."""

from __future__ import annotations

from collections.abc import Sequence

from acquisition.job.records import Edit
from acquisition.languages import Language
from acquisition.report import wording
from acquisition.report.casefile import ReportPhoto
from acquisition.report.content import ReportContent
from acquisition.report.names import BLANK, Json
from acquisition.report.typeface import printable
from acquisition.told.budget import budget_table
from acquisition.told.sealing import leak_table
from acquisition.told.table import Table
from acquisition.told.worstcase import worst_case_tables
from acquisition.told.zones import kept_zone_tables
from analysis.units import Display


def leak_parts(content: ReportContent, display: Display) -> list[Json]:
    """Return the list of leaks and their photos."""
    file = content.file
    if not file.leaks:
        return []
    parts = [section(leak_table(file.leaks, file.drops, display, content.language), (0, 3, 0, 1, 2))]
    photos = [photo for photo in file.photos if photo.leak is not None]
    return [*parts, *_pictures(content.language.say("Photos of the leaks"), photos, content.language)]


def annex_parts(content: ReportContent, display: Display) -> list[Json]:
    """Return everything else, each part only where there is something to say."""
    parts: list[Json] = []
    if content.result.budgets:
        parts.append(section(budget_table(content.result, display, language=content.language), (3, 1, 1)))
    if content.file.worst_case is not None:
        tables = worst_case_tables(content.file.worst_case, display, content.language)
        parts += [section(table, (4, 2, 2)) for table in tables]
    parts += [section(table, (4, 2, 2)) for table in kept_zone_tables(content.file.zones, display, content.language)]
    if content.file.equipment:
        parts.append(_equipment(content))
    photos = [photo for photo in content.file.photos if photo.leak is None]
    parts += _pictures(content.language.say("Photos of the openings"), photos, content.language)
    if content.file.edits:
        parts.append(_edits(content))
    return parts


def section(table: Table, widths: Sequence[int]) -> Json:
    """Return a table for the page; a width of 0 takes what its texts need."""
    return {
        "head": printable(table.title),
        "heads": [printable(head) for head in table.heads],
        "widths": list(widths),
        "text-columns": table.text_columns,
        "rows": [{"cells": [printable(cell) for cell in row.cells], "note": printable(row.note)} for row in table.rows],
        "notes": [printable(note) for note in table.notes],
        "empty": table.empty,
    }


def _pictures(head: str, photos: Sequence[ReportPhoto], language: Language) -> list[Json]:
    if not photos:
        return []
    items = [
        {
            "file": photo.file,
            "alt": language.say("Photo: {about}", about=printable(photo.about)),
            "words": printable(photo.about),
            "note": language.say(
                "{taken}, SHA-256 of the original {digest}…", taken=photo.taken, digest=photo.sha256[:16]
            ),
        }
        for photo in photos
    ]
    return [{"head": head, "photos": items}]


def _equipment(content: ReportContent) -> Json:
    say = content.language.say
    return {
        "head": say("Equipment and calibration on the day of the test"),
        "heads": [say(head) for head in ("What", "Number", "Calibrated", "Due", "Status")],
        "widths": [3, 2, 2, 1, 2],
        "text-columns": 5,
        "rows": [
            {
                "cells": [
                    printable(text) or BLANK
                    for text in (
                        line.what[:1].upper() + line.what[1:],
                        line.serial,
                        line.calibrated,
                        line.due,
                        line.status,
                    )
                ],
                "note": "",
            }
            for line in content.file.equipment
        ],
        "notes": [],
        "empty": "",
    }


def _edits(content: ReportContent) -> Json:
    language, say = content.language, content.language.say
    return {
        "head": say("What was edited in the job"),
        "heads": [say(head) for head in ("When, UTC", "What", "Before", "After")],
        "widths": [0, 1, 2, 2],
        "text-columns": 4,
        "rows": [
            {
                "cells": [
                    f"{language.short_day(edit.utc)} {edit.utc:%H:%M}",
                    printable(f"{language.said(edit.subject)}, {say(edit.field)}"),
                    printable(_value(edit, edit.old, language)) or BLANK,
                    printable(_value(edit, edit.new, language)) or BLANK,
                ],
                "note": "",
            }
            for edit in content.file.edits
        ],
        "notes": [say(wording.EDITS)],
        "empty": "",
    }


def _value(edit: Edit, text: str, language: Language) -> str:
    """Return what a field held: words of the program in the language of the report, what people typed as typed."""
    return language.say(text) if edit.field == "state" else text
