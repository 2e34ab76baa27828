"""A gauge's own calibration: from the pressure that it shows to the true one. Pressures in Pa."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise

from analysis.errors import InvalidInput

FURTHEST_OFF_PA, FURTHEST_OFF_SHARE = 5.0, 0.2
"""A correction beyond this is a number mistyped, or a gauge that needs repair (our choice)."""
CHECKED_PA = (-100.0, -50.0, -25.0, -10.0, -2.0, 0.0, 2.0, 10.0, 25.0, 50.0, 100.0)
"""A polynomial is held against this span: that of a test."""


@dataclass(frozen=True, slots=True)
class Correction:
    """What a certificate says of one channel, or of all pressures of a gauge where `channel` is empty.

    Either `table`, pairs of the pressure shown and the true one, both rising: straight lines between them, and beyond
    the ends the last difference; a table without negative pressures holds for both signs. Or `polynomial`,
    `c0 + c1 x + c2 x**2 ...` of the pressure shown with its sign.
    """

    channel: str
    calibrated: date
    table: tuple[tuple[float, float], ...] = ()
    polynomial: tuple[float, ...] = ()

    def true_pa(self, shown_pa: float) -> float:
        """Return the true pressure; what is no number stays none."""
        if not math.isfinite(shown_pa):
            return shown_pa
        if self.polynomial:
            return math.fsum(factor * shown_pa**power for power, factor in enumerate(self.polynomial))
        if shown_pa < 0.0 <= self.table[0][0]:
            return -_between(self.table, -shown_pa)
        return _between(self.table, shown_pa)

    @property
    def words(self) -> str:
        """What it does, in a few words for a table of equipment."""
        if self.polynomial:
            terms = [f"{factor:g}{('', ' x', f' x^{power}')[min(power, 2)]}" for power, factor in self._terms()]
            return "true = " + " + ".join(terms).replace("+ -", "- ")
        low, high = self.table[0], self.table[-1]
        ends = f"{low[1] - low[0]:+.3g} Pa at {low[0]:g} Pa to {high[1] - high[0]:+.3g} Pa at {high[0]:g} Pa"
        return f"table of {len(self.table)} points, {ends}"

    def _terms(self) -> list[tuple[int, float]]:
        return [(power, factor) for power, factor in enumerate(self.polynomial) if factor] or [(0, 0.0)]


def check_correction(item: Correction, where: str) -> None:
    """Refuse what is no gauge's calibration; raises `InvalidInput`."""
    if bool(item.table) == bool(item.polynomial):
        raise InvalidInput(where, "table and polynomial", "exactly one of the two is needed")
    if not item.table:
        _check_rising([(shown, item.true_pa(shown)) for shown in CHECKED_PA], f"{where}.polynomial")
        return
    if len(item.table) < 2:
        raise InvalidInput(f"{where}.table", len(item.table), "at least two points are needed")
    _check_rising(item.table, f"{where}.table")
    first = item.table[0]
    if first[0] == 0.0 and first[1] != 0.0:
        allowed = "a table that holds for both signs gives 0 at 0; for an offset give negative pressures too"
        raise InvalidInput(f"{where}.table", list(first), allowed)


def _check_rising(points: Sequence[tuple[float, float]], where: str) -> None:
    for low, high in pairwise(points):
        if not (low[0] < high[0] and low[1] < high[1]):
            raise InvalidInput(where, [list(low), list(high)], "shown and true pressures that both rise are needed")
    for shown, true in points:
        allowed_pa = FURTHEST_OFF_PA + FURTHEST_OFF_SHARE * abs(shown)
        if abs(true - shown) > allowed_pa:
            allowed = f"at {shown:g} Pa a true pressure within {allowed_pa:g} Pa of it is needed"
            raise InvalidInput(where, true, allowed)


def _between(table: Sequence[tuple[float, float]], shown_pa: float) -> float:
    """Return the true pressure by straight lines; from zero to the first point where the table has one sign."""
    points = table if table[0][0] <= 0.0 else ((0.0, 0.0), *table)
    low, high = points[0], points[-1]
    if not low[0] < shown_pa < high[0]:
        end = low if shown_pa <= low[0] else high
        return shown_pa + (end[1] - end[0])
    (x0, y0), (x1, y1) = next(pair for pair in pairwise(points) if shown_pa <= pair[1][0])
    return y0 + (shown_pa - x0) * (y1 - y0) / (x1 - x0)
