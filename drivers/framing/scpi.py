"""Numbers in the replies of SCPI instruments (SCPI-99, values of the special numbers from memory)."""

from __future__ import annotations

import math
import re

NOT_A_NUMBER = 9.91e37
INFINITY = 9.9e37

_NUMBER = re.compile(r"[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?")


def numbers(line: str, count: int) -> tuple[float, ...] | None:
    """Return exactly `count` comma-separated numbers, or None when the line is anything else.

    Not-a-number comes back as NaN, the special infinities as plus or minus infinity.
    """
    parts = [part.strip() for part in line.split(",")]
    if len(parts) != count or not all(_NUMBER.fullmatch(part) for part in parts):
        return None
    return tuple(_special(float(part)) for part in parts)


def _special(value: float) -> float:
    if math.isclose(abs(value), NOT_A_NUMBER, rel_tol=1e-4):
        return math.nan
    if math.isclose(abs(value), INFINITY, rel_tol=1e-4) or math.isinf(value):
        return math.copysign(math.inf, value)
    return value
