"""Numbers as SCPI instruments write them: decimal text, and the special values (SCPI-99, from memory)."""

from __future__ import annotations

import math
import re

NOT_A_NUMBER = 9.91e37
INFINITY = 9.9e37
ORDINARY = 9.8e37
"""A number of a smaller size is none of the special ones."""
SPECIAL_TOLERANCE = 1e-4
"""The two special values are 0.1 % apart; an instrument may print them with few digits."""

_DECIMAL = re.compile(r"[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?", re.ASCII)


def decimal(text: str) -> float | None:
    """Return a number in plain or scientific notation, None for anything else (also `nan`, `inf`, `1_000`)."""
    return float(text) if _DECIMAL.fullmatch(text) else None


def scpi_number(text: str) -> float | None:
    """Return a number; not-a-number comes back as NaN, the special infinities as plus or minus infinity."""
    value = decimal(text)
    if value is None or -ORDINARY < value < ORDINARY:
        return value
    if math.isclose(abs(value), NOT_A_NUMBER, rel_tol=SPECIAL_TOLERANCE):
        return math.nan
    if math.isclose(abs(value), INFINITY, rel_tol=SPECIAL_TOLERANCE) or math.isinf(value):
        return math.copysign(math.inf, value)
    return value


def is_ordinary(text: str) -> bool:
    """Tell whether a text is a number and none of the special ones."""
    value = decimal(text)
    return value is not None and (-ORDINARY < value < ORDINARY or scpi_number(text) == value)
