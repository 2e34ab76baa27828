"""What was issued of a job, in rows."""

from __future__ import annotations

from collections.abc import Sequence

from acquisition.job.issues import Issue
from acquisition.told.table import Row, Table
from acquisition.told.texts import BLANK


def issued_table(issues: Sequence[Issue]) -> Table:
    """Return the issued reports, oldest first."""
    rows = [
        Row(
            (
                str(item.id),
                item.mark.number or BLANK,
                str(item.mark.revision),
                "no test" if item.test_id is None else f"test {item.test_id}",
                f"{item.mark.utc:%Y-%m-%d %H:%M}",
                item.mark.signed_by,
                item.sha256[:16],
            ),
            f"Issued again: {item.mark.reason}" if item.mark.reason else "",
        )
        for item in issues
    ]
    heads = ("ID", "Number", "Revision", "Of", "Issued, UTC", "Signed by", "SHA-256")
    return Table("Issued reports", heads, tuple(rows), (), "None was issued yet.", text_columns=7)
