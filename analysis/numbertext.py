"""Numbers as people write and read them: decimal comma or point, true minus, thin space between thousands."""

from __future__ import annotations

import math
import re

from analysis.errors import InvalidInput

MINUS = "\N{MINUS SIGN}"
THIN_SPACE = "\N{THIN SPACE}"
_SPACES = re.compile("[ '\u00a0\u2009\u202f\u2019]")
_NUMBER = re.compile(r"[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d{1,3})?", re.IGNORECASE)
_GROUPED = re.compile(r"[+-]?\d{1,3}((,\d{3}){2,}(\.\d*)?|,\d{3}\.\d*|(\.\d{3}){2,}(,\d*)?|\.\d{3},\d*)")
_MARK_BEFORE_THREE = re.compile(r"[+-]?[1-9]\d{0,2}([,.])\d{3}")


def parse_number(text: str, field: str, decimal_mark: str = ".") -> float:
    """Return the number that a person wrote; raises `InvalidInput` where it is none or could mean two things.

    Comma and point both pass as decimal mark. Only the one that is not the person's own is refused before exactly three
    digits, where it may as well mark thousands. Spaces and apostrophes between digits are ignored.
    """
    plain = _SPACES.sub("", text.strip()).replace(MINUS, "-").replace("\N{EN DASH}", "-")
    doubtful = _MARK_BEFORE_THREE.fullmatch(plain)
    if doubtful is not None and doubtful[1] != decimal_mark:
        whole, rest = plain.split(doubtful[1])
        raise InvalidInput(field, text, f"it can mean two things, write {whole}{rest} or {whole}{decimal_mark}{rest}")
    if _GROUPED.fullmatch(plain):
        plain = _without_groups(plain)
    plain = plain.replace(",", ".")
    number = float(plain) if _NUMBER.fullmatch(plain) else math.nan
    if not math.isfinite(number):
        shown = "" if text.strip() else "empty"
        raise InvalidInput(field, text, "a number is needed, such as 12.5 or 12,5", shown=shown)
    return number


def format_number(value: float, decimals: int, decimal_mark: str = ".") -> str:
    """Return the value with so many decimals; below 0 they round to tens, hundreds and so on.

    What is not finite is a dash: there is nothing to show.
    """
    if not math.isfinite(value):
        return "\N{EN DASH}"
    text = f"{round(value, decimals):,.{max(decimals, 0)}f}"
    if not text.strip("-0.,"):
        text = text.removeprefix("-")
    whole, point, rest = text.replace(",", THIN_SPACE).replace("-", MINUS).partition(".")
    return whole + (decimal_mark + rest if point else "")


def decimals_for(uncertainty: float) -> int | None:
    """Return how many decimals a value with this uncertainty carries, None where it has none to tell by.

    The uncertainty keeps two digits when they are 10 to 35, else one; from 95 it counts as 100 (rule of the Particle
    Data Group, from memory).
    """
    if not math.isfinite(uncertainty) or uncertainty <= 0:
        return None
    power = math.floor(math.log10(uncertainty))
    leading = round(uncertainty / 10.0 ** (power - 2))
    return 1 - power if leading < 355 else -power


def significant_decimals(value: float, digits: int) -> int:
    """Return the decimals that show a value with so many significant digits."""
    if value == 0 or not math.isfinite(value):
        return 0
    return digits - 1 - math.floor(math.log10(abs(value)))


def _without_groups(plain: str) -> str:
    """Return a number without its thousands marks; a last mark that differs from the others is the decimal one."""
    marks = [letter for letter in plain if letter in ",."]
    if marks[-1] == marks[0]:
        return plain.replace(marks[0], "")
    return plain.replace(marks[0], "").replace(marks[-1], ".")
