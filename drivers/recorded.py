"""Readings from a table in a file, played back at their own pace."""

from __future__ import annotations

import csv
import io
import math
from collections.abc import Mapping
from itertools import pairwise
from pathlib import Path

from drivers.answering import COLUMNS
from drivers.clock import NS_PER_S, Clock
from drivers.errors import PortMissing
from drivers.framing.scpi import decimal

TIME = "t_s"
MOST_ROWS_A_SECOND = 40.0
LARGEST_FILE_BYTES = 200_000_000


class Recording:
    """A file of readings: a heading `t_s,p1,...`, then rows of seconds and values."""

    def __init__(self, path: str, clock: Clock) -> None:
        """Nothing is read yet."""
        self._path = path
        self._clock = clock
        self._rows: list[tuple[float, dict[str, float]]] | None = None
        self._next = 0
        self._begin_ns = 0

    @property
    def name(self) -> str:
        """What it answers to `who`."""
        return f"RECORDED,{Path(self._path).name}"

    def open(self) -> None:
        """Read the file and begin to play it, once; raises `PortMissing` with line and column of a mistake."""
        if self._rows is None:
            self._rows = read_rows(_text(self._path), self._path)
            self._begin_ns = self._clock.now_ns()

    def row(self) -> Mapping[str, float]:
        """Return the next row when its time has come; rows that came due together come one at a time."""
        rows = self._rows or []
        played_s = (self._clock.now_ns() - self._begin_ns) / NS_PER_S
        if self._next == len(rows) or rows[self._next][0] - rows[0][0] > played_s:
            return {}
        self._next += 1
        return rows[self._next - 1][1]

    @property
    def at_end(self) -> bool:
        """Whether all has been played."""
        return self._rows is not None and self._next == len(self._rows)


def read_rows(text: str, file: str) -> list[tuple[float, dict[str, float]]]:
    """Return seconds and values of each row; raises `PortMissing` naming file, line, column and what is allowed."""
    table = csv.reader(io.StringIO(text))
    try:
        heading = [name.strip() for name in next(table, [])]
        _check_heading(heading, file)
        rows = [_row(cells, heading, f"{file}, line {table.line_num}") for cells in table if cells]
    except csv.Error as error:
        raise PortMissing(f"{file}, line {table.line_num}: a table with commas is needed ({error}).") from error
    if not rows:
        raise PortMissing(f"{file}: there are no rows below the heading.")
    for number, (earlier, later) in enumerate(pairwise(rows), start=3):
        if later[0] < earlier[0]:
            raise PortMissing(f"{file}, row {number}: {TIME}: it goes back, from {earlier[0]:g} to {later[0]:g}.")
    if len(rows) - 1 > MOST_ROWS_A_SECOND * max(rows[-1][0] - rows[0][0], 1.0):
        raise PortMissing(f"{file}: at most {MOST_ROWS_A_SECOND:g} rows a second can be played.")
    return rows


def _check_heading(heading: list[str], file: str) -> None:
    allowed = f"{TIME}, then channels of {', '.join(COLUMNS)}, each once"
    known = heading[:1] == [TIME] and len(heading) > 1 and set(heading[1:]) <= set(COLUMNS)
    if not known or len(set(heading)) != len(heading):
        raise PortMissing(f"{file}, line 1: the heading needs {allowed}; it reads “{','.join(heading)[:80]}”.")


def _row(cells: list[str], heading: list[str], where: str) -> tuple[float, dict[str, float]]:
    if len(cells) != len(heading):
        raise PortMissing(f"{where}: {len(heading)} cells are needed, there are {len(cells)}.")
    values: dict[str, float] = {}
    for name, cell in zip(heading, cells, strict=True):
        if not cell.strip() and name != TIME:
            continue
        value = decimal(cell.strip())
        if value is None or math.isinf(value):
            raise PortMissing(f"{where}: {name}: a number is needed, not “{cell[:40]}”.")
        values[name] = value
    return values.pop(TIME), values


def _text(path: str) -> str:
    try:
        if Path(path).stat().st_size > LARGEST_FILE_BYTES:
            raise PortMissing(f"{path}: a file of readings has at most {LARGEST_FILE_BYTES // 1_000_000} MB.")
        return Path(path).read_bytes().decode("utf-8-sig")
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "no text in UTF-8"
        raise PortMissing(f"{path}: the recorded readings cannot be read ({reason}).") from error
