"""Records as JSON texts in the job file: read back with one sentence for what cannot be understood."""

from __future__ import annotations

import json
from typing import Any

from analysis.errors import InvalidInput


def table_of(name: str, text: str) -> dict[str, Any]:
    """Return the table that a text holds; raises `InvalidInput`."""
    try:
        table = json.loads(text)
    except json.JSONDecodeError as error:
        raise unreadable(name, error) from error
    if not isinstance(table, dict):
        raise unreadable(name, TypeError("no table"))
    return table


def unreadable(name: str, error: Exception) -> InvalidInput:
    """Return the error for a record that this version cannot read."""
    return InvalidInput(f"job file, {name}", "unreadable", f"a {name} that this version knows is needed ({error})")
