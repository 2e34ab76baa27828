"""What every command does with its output: units, tables, files."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from acquisition.told.table import Table, table_lines
from analysis.effective import effective_quantity
from analysis.errors import InvalidInput
from analysis.limits import shipped_limits
from analysis.numbertext import parse_number
from analysis.records import Limit
from analysis.units import Display, System


def display_of(units: str) -> Display:
    """Return a display system by its id."""
    return Display(System(units))


def write(path: Path, content: bytes, what: str) -> None:
    """Write a file; raises `InvalidInput` when that is not possible."""
    try:
        path.write_bytes(content)
    except OSError as error:
        raise InvalidInput(what, str(path), f"it cannot be written ({error.strerror})") from error


def show(table: Table) -> None:
    """Print a table with an empty line before it."""
    print("", *table_lines(table), sep="\n")


def limits_of(texts: Sequence[str]) -> tuple[Limit, ...]:
    """Return limits by the id of a published one, or as `QUANTITY=VALUE` in the unit that it is stored in."""
    return tuple(_limit(text) for text in texts)


def _limit(text: str) -> Limit:
    quantity, sign, number = text.partition("=")
    if not sign:
        return shipped_limits().limit(text, "--limit").limit
    value = parse_number(number, "--limit", ".")
    if value <= 0:
        raise InvalidInput("--limit", text, "a value above 0 is needed")
    return Limit(text, effective_quantity(quantity.strip(), "--limit").id, value)
