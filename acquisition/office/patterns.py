"""How reports are numbered and files are named: a text with names in braces, such as {year}-{count:03}."""

from __future__ import annotations

import re
import string
from collections.abc import Mapping
from datetime import datetime

from analysis.errors import InvalidInput

NUMBER_FIELDS = ("year", "month", "day", "count", "job")
NAME_FIELDS = ("name", "job", "number", "client", "site", "stage", "test", "date")
LONGEST_NAME = 120
_WIDTH = re.compile(r"0?[1-9]?")


def check_pattern(pattern: str, names: tuple[str, ...], field: str) -> str:
    """Return the pattern; raises `InvalidInput` for a name that there is not, or one that is not closed."""
    try:
        parts = list(string.Formatter().parse(pattern))
    except ValueError as error:
        raise InvalidInput(field, pattern, "every brace that opens has to close") from error
    for _, name, width, conversion in parts:
        if name is None:
            continue
        if name not in names or conversion or not _WIDTH.fullmatch(width or ""):
            known = ", ".join(f"{{{item}}}" for item in names)
            allowed = f"the names in braces are {known}; a width of digits such as :03 may follow count"
            raise InvalidInput(field, pattern, allowed)
        if width and name != "count":
            raise InvalidInput(field, pattern, "only count takes a number of digits")
    if not pattern.strip():
        raise InvalidInput(field, pattern, "a text is needed", shown="empty")
    return pattern


def certificate_number(pattern: str, count: int, moment: datetime, job: str) -> str:
    """Return the number of a certificate; raises `InvalidInput` for a pattern that cannot be used."""
    check_pattern(pattern, NUMBER_FIELDS, "number pattern")
    values = {"year": f"{moment:%Y}", "month": f"{moment:%m}", "day": f"{moment:%d}", "count": count, "job": job}
    return pattern.format(**values).strip()


def file_name(pattern: str, values: Mapping[str, str]) -> str:
    """Return a file name without ending that every system takes; raises `InvalidInput` for an unusable pattern.

    `values` has every name of `NAME_FIELDS`; what is empty leaves no gap.
    """
    check_pattern(pattern, NAME_FIELDS, "name pattern")
    plain = {name: re.sub(r"[^\w.]+", "-", values[name]).strip("-.") for name in NAME_FIELDS}
    made = re.sub(r"[-_.]{2,}", "-", re.sub(r"[^\w.-]+", "-", pattern.format(**plain)))
    return made.strip("-._")[:LONGEST_NAME] or "job"
