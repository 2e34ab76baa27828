"""The standard error of a mean of readings that hang together."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import NDArray

from analysis.statistics import autocovariance, standard_error_of_mean


def gusty(records: int, count: int, dt_s: float, tau_s: float, seed: int) -> NDArray[np.float64]:
    """Return records of an Ornstein-Uhlenbeck process of variance 1, shape (records, count)."""
    rng = np.random.default_rng(seed)
    keep = math.exp(-dt_s / tau_s)
    noise = rng.normal(size=(count, records))
    values = np.empty_like(noise)
    values[0] = noise[0]
    for at in range(1, count):
        values[at] = keep * values[at - 1] + math.sqrt(1 - keep**2) * noise[at]
    return values.T


@pytest.mark.parametrize(("seconds", "tau_s", "tolerance"), [(60.0, 1.0, 0.10), (60.0, 3.0, 0.15), (20.0, 0.3, 0.10)])
def test_gusty_readings_give_the_error_that_theory_gives(seconds: float, tau_s: float, tolerance: float) -> None:
    """SD of a mean over T of a process of time constant tau: sqrt(2 tau/T (1 - (1 - exp(-T/tau)) tau/T)), textbook."""
    records = gusty(400, round(seconds / 0.1), 0.1, tau_s, seed=11)
    share = tau_s / seconds
    theory = math.sqrt(2 * share * (1 - (1 - math.exp(-1 / share)) * share))
    estimated = math.sqrt(np.mean([standard_error_of_mean(record) ** 2 for record in records]))
    assert estimated == pytest.approx(theory, rel=tolerance)


def test_independent_readings_give_the_textbook_error() -> None:
    records = np.random.default_rng(5).normal(size=(300, 200))
    estimated = math.sqrt(np.mean([standard_error_of_mean(record) ** 2 for record in records]))
    assert estimated == pytest.approx(1 / math.sqrt(200), rel=0.1)


def test_autocovariance_is_the_sum_of_products_at_each_lag() -> None:
    readings = np.random.default_rng(3).normal(size=37)
    about = readings - readings.mean()
    expected = [float(about[: 37 - lag] @ about[lag:]) / 37 for lag in range(37)]
    assert autocovariance(readings) == pytest.approx(expected, abs=1e-12)


def test_readings_that_are_all_the_same_have_no_error() -> None:
    assert standard_error_of_mean([3.7] * 50) == 0.0


def test_one_reading_says_nothing_of_its_error() -> None:
    assert math.isnan(standard_error_of_mean([1.0]))


@given(st.lists(st.floats(-100, 100), min_size=2, max_size=60), st.floats(0.1, 10), st.floats(-50, 50))
def test_scaling_and_shifting_readings_scales_the_error(values: list[float], factor: float, shift: float) -> None:
    base = standard_error_of_mean(values)
    moved = standard_error_of_mean([factor * value + shift for value in values])
    assert moved == pytest.approx(factor * base, rel=1e-3, abs=1e-6)
