"""Data files of the trade: entries in TOML, each with its source. Every mistake is named by its exact place."""

from __future__ import annotations

import tomllib
from importlib.resources import files

from analysis.errors import InvalidInput
from analysis.fields import Fields
from analysis.provenance import CONFIDENCES, Provenance


def shipped_text(package: str, name: str) -> str:
    """Return the text of a data file that belongs to a package of ours."""
    return files(package).joinpath(name).read_text("utf-8")


def read_entries(text: str, name: str, *tables: str) -> dict[str, list[Fields]]:
    """Return the entries of the named tables of a TOML text, `name` standing for the file in an `InvalidInput`.

    A table that is not there is empty; any other one is refused.
    """
    try:
        document = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise InvalidInput(name, text[:60], str(error), shown="not TOML") from error
    unknown = [key for key in document if key not in tables]
    if unknown:
        raise InvalidInput(f"{name}: {unknown[0]}", None, f"known tables here are {', '.join(tables)}", shown="unknown")
    return {table: _entries(document.get(table, []), f"{name}: {table}", name) for table in tables}


def take_provenance(fields: Fields) -> Provenance:
    """Return source, confidence and `verified` of an entry; all three must be there."""
    return Provenance(
        source=fields.text("source"),
        confidence=fields.choice("confidence", CONFIDENCES),
        verified=fields.flag("verified"),
    )


def refuse_doubles(ids: list[str], name: str) -> None:
    """Raise `InvalidInput` where two entries of a file share their id."""
    for at, item in enumerate(ids):
        if item in ids[:at]:
            raise InvalidInput(f"{name}: id", item, "every entry needs an id of its own", shown=f"{item!r} twice")


def _entries(value: object, path: str, name: str) -> list[Fields]:
    if not isinstance(value, list) or not all(isinstance(item, dict) for item in value):
        raise InvalidInput(path, value, "a list of tables is needed", shown="no list")
    return [Fields(item, f"{path}[{at}]", name) for at, item in enumerate(value)]
