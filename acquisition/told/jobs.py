"""The jobs of a folder in rows."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from acquisition.office.catalogue import JobLine
from acquisition.told.table import Row, Table
from acquisition.told.texts import BLANK
from analysis.numbertext import format_number


def jobs_table(lines: Sequence[JobLine], decimal_mark: str = ".") -> Table:
    """Return a row for each test, newest first."""
    heads = ("Job", "Site", "Client", "Number", "Test", "Date", "Stage", "n50, 1/h", "Verdict", "Issued as")
    rows = tuple(_row(line, decimal_mark) for line in lines)
    return Table("Jobs", heads, rows, (), "No job has these words.", text_columns=10)


def _row(line: JobLine, decimal_mark: str) -> Row:
    n50 = BLANK if line.n50_per_h is None else format_number(line.n50_per_h, 2, decimal_mark)
    cells = (
        line.name or Path(line.file).stem,
        line.site,
        line.client,
        line.number,
        BLANK if line.test is None else str(line.test),
        line.started[:10] or BLANK,
        line.stage,
        n50,
        line.verdict,
        line.issued,
    )
    return Row(cells, f"{line.file}: {line.trouble}" if line.trouble else "")
