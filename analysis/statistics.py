"""Statistics of a record of readings: what the mean of readings that hang together is worth."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import ArrayLike, NDArray


def standard_error_of_mean(values: ArrayLike) -> float:
    """Return the standard error of the mean of equally spaced readings, autocorrelation allowed for.

    The autocovariance is summed over pairs of lags until a pair is no longer positive (initial positive sequence,
    Geyer 1992, from memory); what the removal of the sample's own mean takes from the variance is given back. Unit of
    the values; 0 for readings that are all the same, NaN for fewer than two.
    """
    readings = np.asarray(values, dtype=np.float64).ravel()
    return mean_error_and_correlation(readings)[0] if readings.size > 1 else math.nan


def mean_error_and_correlation(values: ArrayLike) -> tuple[float, float]:
    """Return the standard error of the mean of at least two readings, and how many of them count as one."""
    readings = np.asarray(values, dtype=np.float64).ravel()
    variance, correlated = _variance_and_correlation(readings)
    independent = max(readings.size / correlated, 1.5)
    return math.sqrt(variance / (independent - 1.0)), correlated


def readings_per_independent_one(values: ArrayLike) -> float:
    """Return how many neighbouring readings count as one: 1 for independent or unchanging ones, NaN for fewer than two.

    Times the interval between readings it is twice the integral time scale.
    """
    readings = np.asarray(values, dtype=np.float64).ravel()
    return _variance_and_correlation(readings)[1] if readings.size > 1 else math.nan


def autocovariance(readings: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return the (biased) autocovariance of a record of shape (count,) at lags 0 to count - 1."""
    count = readings.size
    size = 1 << (2 * count - 1).bit_length()
    spectrum = np.fft.rfft(readings - readings.mean(), size)
    power = spectrum.real**2 + spectrum.imag**2
    covariance: NDArray[np.float64] = np.fft.irfft(power, size)[:count] / count
    return covariance


def _variance_and_correlation(readings: NDArray[np.float64]) -> tuple[float, float]:
    """Return the (biased) variance, 0 where it is rounding only, and how many readings count as one."""
    covariance = autocovariance(readings)
    variance = float(covariance[0])
    if variance <= (1e-14 * float(np.abs(readings).max())) ** 2:
        return 0.0, 1.0
    return variance, _correlation_time(covariance / variance)


def _correlation_time(correlation: NDArray[np.float64]) -> float:
    """Return the number of readings that count as one: 1 for independent ones."""
    even = correlation.size // 2 * 2
    pairs = correlation[:even:2] + correlation[1:even:2]
    below = np.flatnonzero(pairs <= 0)
    kept = pairs[: below[0]] if below.size else pairs
    return max(2.0 * float(kept.sum()) - 1.0, 1.0)
