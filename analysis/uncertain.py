"""Numbers with a standard uncertainty, carried through a formula that may bend.

The distribution is propagated, not its slope (JCGM 101): formulas of the trade run into walls, a zone pressure near
that of the house for one, and there the interval has to open up. The draws are not random: they fill space evenly by
the additive recurrence with the generalized golden ratio (Roberts 2018, from memory), so that the digits are the same
each time.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtri

from analysis.bounds import not_negative
from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.student import COVERAGE, t_multiplier

Values = NDArray[np.float64]
DRAWS = 8192


@dataclass(frozen=True, slots=True)
class Measured:
    """A value with its standard uncertainty, in the unit of its field.

    `logarithmic` makes the logarithm normal instead of the value: for flows and coefficients, which cannot go below 0.
    """

    value: float
    u: float = 0.0
    logarithmic: bool = False


def measured(estimate: Estimate, field: str) -> Measured:
    """Return an estimate above 0 as a number with a logarithmic standard uncertainty.

    Raises `InvalidInput` for one without an interval: what follows from it could not have one either.
    """
    if not 0.0 < estimate.low <= estimate.high < math.inf:
        raise InvalidInput(
            field, estimate.value, "a value above 0 with an interval is needed", shown="without interval"
        )
    half = math.log(estimate.high / estimate.low) / 2
    return Measured(estimate.value, estimate.value * half / t_multiplier(math.inf), logarithmic=True)


def check_measured(item: Measured, field: str) -> None:
    """Raise `InvalidInput` unless value and uncertainty are finite, the value above 0 and the uncertainty not below."""
    if not 0.0 < item.value < math.inf:
        raise InvalidInput(field, item.value, "a number greater than 0 is needed")
    not_negative(item.u, f"{field}, standard uncertainty")


def scattered(*items: Measured) -> tuple[Values, ...]:
    """Return an array for each number: its value first, then `DRAWS` draws of it, each number independent."""
    even = _even_points(len(items))
    return tuple(np.concatenate(([item.value], _draws(item, even[at]))) for at, item in enumerate(items))


def gathered(results: Values, *, extrapolated: bool = False) -> Estimate:
    """Return the estimate that the results of a formula on scattered arrays make: value first, then draws.

    The interval lies between the draws that leave 2.5 % outside on either side; where that is infinite it is open.
    """
    value, draws = float(results[0]), np.sort(results[1:])
    tail = (1.0 - COVERAGE) / 2
    low, high = draws[math.floor(tail * len(draws))], draws[math.ceil((1.0 - tail) * len(draws)) - 1]
    return Estimate(value, min(float(low), value), max(float(high), value), extrapolated)


def _draws(item: Measured, even: Values) -> Values:
    if item.logarithmic:
        return np.asarray(item.value * np.exp(even * (item.u / item.value)))
    return np.asarray(item.value + even * item.u)


@lru_cache(maxsize=16)
def _even_points(dimensions: int) -> Values:
    """Return standard normal draws, one row for each dimension; each row alone holds the normal quantiles exactly."""
    ratio = 2.0
    for _ in range(60):  # converges to the root of x**(d + 1) = x + 1
        ratio = (1.0 + ratio) ** (1.0 / (dimensions + 1))
    steps = ratio ** -np.arange(1.0, dimensions + 1)
    points = (0.5 + np.outer(steps, np.arange(1, DRAWS + 1))) % 1.0
    ranks = np.argsort(np.argsort(points, axis=1), axis=1)
    normal: Values = ndtri((ranks + 0.5) / DRAWS)
    normal.setflags(write=False)
    return normal
