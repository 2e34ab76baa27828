"""Zero-flow pressure: what the envelope pressure is with the fan covered, and what is taken off the points for it."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from analysis.errors import InvalidInput
from analysis.records import ZeroFlow


def zero_flow(readings_pa: Sequence[float], seconds: float | None = None, field: str = "readings_pa") -> ZeroFlow:
    """Return mean, mean of the positive and mean of the negative readings (Pa).

    `field` names the readings in the sentence of an `InvalidInput`, which is raised for none or one that is no number.
    """
    readings = tuple(map(float, readings_pa))
    if not readings:
        raise InvalidInput(field, readings, "at least one reading is needed", shown="empty")
    if not math.isfinite(math.fsum(readings)):
        at = next(i for i, value in enumerate(readings) if not math.isfinite(value))
        raise InvalidInput(f"{field}[{at}]", readings[at], "a finite number in Pa is needed")
    return ZeroFlow(
        mean_pa=math.fsum(readings) / len(readings),
        positive_mean_pa=_mean_or_none([value for value in readings if value > 0]),
        negative_mean_pa=_mean_or_none([value for value in readings if value < 0]),
        count=len(readings),
        seconds=seconds,
        readings_pa=readings,
    )


def zero_spread_pa(zero: ZeroFlow) -> float | None:
    """Return the standard deviation of the readings (Pa), None without at least two of them."""
    count = len(zero.readings_pa)
    if count < 2:
        return None
    return math.sqrt(math.fsum((value - zero.mean_pa) ** 2 for value in zero.readings_pa) / (count - 1))


def signed_means_pa(zero: ZeroFlow) -> tuple[float, ...]:
    """Return the means of the positive and of the negative readings as far as there are any.

    Readings that are all zero give one mean of zero; a record that holds nothing but its mean gives none.
    """
    means = tuple(mean for mean in (zero.positive_mean_pa, zero.negative_mean_pa) if mean is not None)
    return means or ((0.0,) if zero.mean_pa == 0 else ())


def zero_correction_pa(before: ZeroFlow | None, after: ZeroFlow | None) -> float:
    """Return what is taken off every envelope pressure: the mean of both records, of one, or 0 without any."""
    means = [zero.mean_pa for zero in (before, after) if zero is not None]
    return math.fsum(means) / len(means) if means else 0.0


def zero_over_time_pa(
    record_s: Sequence[float], means_pa: Sequence[float], error_pa: float, times_s: Sequence[float]
) -> tuple[float, ...]:
    """Return the zero-flow pressure at some times from at least two records, each with the time of its middle.

    It follows the straight line between neighbouring records only as far as they differ by more than their own
    standard error makes them: the rest is taken from the mean of all (shrinkage, James and Stein, from memory).
    """
    mean = math.fsum(means_pa) / len(means_pa)
    variance = math.fsum((value - mean) ** 2 for value in means_pa) / (len(means_pa) - 1)
    followed = max(1.0 - error_pa**2 / variance, 0.0) if variance > 0 else 0.0
    line = np.interp(np.asarray(times_s, np.float64), record_s, means_pa)
    return tuple((mean + followed * (line - mean)).tolist())


def _mean_or_none(values: list[float]) -> float | None:
    return math.fsum(values) / len(values) if values else None
