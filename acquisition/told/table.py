"""A table of texts, and how a terminal prints it."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum

WIDTH = 110


class Tone(StrEnum):
    """What a row says at a glance; its words say it too."""

    PLAIN = "plain"
    GOOD = "good"
    BAD = "bad"
    OPEN = "open"


SIGNS = {Tone.PLAIN: "", Tone.GOOD: "+", Tone.BAD: "!", Tone.OPEN: "?"}


@dataclass(frozen=True, slots=True)
class Row:
    """A row; `note` explains it, a sentence or a source."""

    cells: tuple[str, ...]
    note: str = ""
    tone: Tone = Tone.PLAIN


@dataclass(frozen=True, slots=True)
class Table:
    """A table. The first columns are text, the others numbers; `empty` stands there when it has no rows."""

    title: str
    heads: tuple[str, ...]
    rows: tuple[Row, ...]
    notes: tuple[str, ...] = ()
    empty: str = ""
    text_columns: int = 1


def table_lines(table: Table) -> Iterator[str]:
    """Yield a table for a terminal: title, columns side by side, the notes of its rows below them."""
    yield table.title
    if not table.rows:
        yield f"  {table.empty}"
    columns = list(zip(table.heads, *(row.cells for row in table.rows), strict=True))
    widths = [max(map(len, column)) for column in columns]
    if table.rows and any(table.heads):
        yield f"  {_line(table, table.heads, widths)}"
    for row in table.rows:
        sign = SIGNS[row.tone]
        yield f"{sign:<2}{_line(table, row.cells, widths)}".rstrip()
        if row.note:
            yield from textwrap.wrap(row.note, WIDTH, initial_indent="      ", subsequent_indent="      ")
    for note in table.notes:
        yield from textwrap.wrap(note, WIDTH, initial_indent="  ", subsequent_indent="  ")


def _line(table: Table, cells: tuple[str, ...], widths: list[int]) -> str:
    return "  ".join(
        text.ljust(width) if at < table.text_columns else text.rjust(width)
        for at, (text, width) in enumerate(zip(cells, widths, strict=True))
    ).rstrip()
