"""The table of a class: a line for each student."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence

from acquisition.marking.judging import Marking
from acquisition.told.table import Row, Table, Tone

HEADS = (
    "student", "job", "exercise", "points", "of", "result_m3_h", "low_m3_h", "high_m3_h", "true_m3_h", "direction",
    "minutes", "noticed", "missed", "wrong",
)  # fmt: skip


def class_csv(markings: Sequence[Marking]) -> str:
    """Return the table as CSV with a line of heads; what is not known is empty."""
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\n")
    writer.writerow(HEADS)
    for item in markings:
        estimate = item.result
        flows = ("", "", "") if estimate is None else (estimate.value, estimate.low, estimate.high)
        writer.writerow(
            [
                _safe(item.student),
                _safe(item.job),
                item.exercise,
                f"{item.points:g}",
                f"{item.of:g}",
                *(f"{flow:.1f}" if flow != "" else "" for flow in flows),
                "" if item.true_m3_h is None else f"{item.true_m3_h:.1f}",
                item.direction,
                "" if item.minutes is None else f"{item.minutes:.1f}",
                len(item.noticed),
                len(item.missed),
                _safe(" ".join(item.wrong)),
            ]
        )
    return text.getvalue()


def class_table(markings: Sequence[Marking]) -> Table:
    """Return the table for people, the best first."""
    rows = []
    for item in sorted(markings, key=lambda marking: -marking.points):
        result = "none" if item.result is None else f"{item.result.value:.0f}"
        true = "" if item.true_m3_h is None else f"{item.true_m3_h:.0f}"
        cells = (item.student, f"{item.points:g} of {item.of:g}", result, true, f"{len(item.missed)}")
        tone = Tone.GOOD if item.points == item.of else Tone.PLAIN
        rows.append(Row(cells, " ".join(item.wrong), tone))
    heads = ("student", "points", "result, m³/h", "true, m³/h", "missed")
    return Table("Class", heads, tuple(rows), empty="Nobody yet.")


def _safe(text: str) -> str:
    """Return a text that no spreadsheet takes for a formula."""
    return f"'{text}" if text[:1] in ("=", "+", "-", "@", "\t", "\r") else text
