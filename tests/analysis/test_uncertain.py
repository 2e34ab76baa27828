"""Numbers with a standard uncertainty, carried through formulas."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.uncertain import Measured, check_measured, gathered, measured, scattered

NORMAL_95 = 1.959963985
"""Two-sided 95 % multiplier of the normal distribution (textbook table)."""


@given(st.floats(-100.0, 100.0), st.floats(0.001, 50.0))
def test_a_number_alone_keeps_its_normal_interval(value: float, u: float) -> None:
    (draws,) = scattered(Measured(value, u))
    estimate = gathered(draws)
    assert estimate.value == value
    assert estimate.low == pytest.approx(value - NORMAL_95 * u, abs=2e-3 * u)
    assert estimate.high == pytest.approx(value + NORMAL_95 * u, abs=2e-3 * u)


def test_uncertainties_of_a_sum_add_in_quadrature() -> None:
    """JCGM 100, law of propagation: 3 and 4 make 5."""
    one, other = scattered(Measured(10.0, 3.0), Measured(20.0, 4.0))
    estimate = gathered(one + other)
    assert estimate.value == 30.0
    assert estimate.half_width == pytest.approx(NORMAL_95 * 5.0, rel=0.01)


def test_relative_uncertainties_of_a_product_add_in_quadrature() -> None:
    one, other = scattered(Measured(100.0, 3.0, logarithmic=True), Measured(50.0, 2.0, logarithmic=True))
    estimate = gathered(one * other)
    assert math.log(estimate.high / estimate.value) == pytest.approx(NORMAL_95 * 0.05, rel=0.01)
    assert math.log(estimate.value / estimate.low) == pytest.approx(NORMAL_95 * 0.05, rel=0.01)


@pytest.mark.parametrize("count", range(1, 9))
def test_numbers_are_drawn_independently_of_each_other(count: int) -> None:
    draws = np.array([array[1:] for array in scattered(*[Measured(0.0, 1.0)] * count)])
    correlation = np.atleast_2d(np.corrcoef(draws))
    assert np.abs(correlation - np.eye(count)).max() < 0.06


def test_the_digits_are_the_same_each_time() -> None:
    first, second = (scattered(Measured(3.0, 0.2), Measured(5.0, 0.1)) for _ in range(2))
    assert all(np.array_equal(one, other) for one, other in zip(first, second, strict=True))


def test_a_number_without_uncertainty_has_an_interval_of_no_width() -> None:
    (draws,) = scattered(Measured(7.0))
    assert gathered(draws * 2) == Estimate(14.0, 14.0, 14.0)


def test_an_interval_is_open_where_the_formula_runs_into_a_wall() -> None:
    (draws,) = scattered(Measured(1.0, 0.5))
    below = np.where(draws < 1.5, 1.0 / (1.5 - np.minimum(draws, 1.49)), math.inf)
    assert gathered(below).high == math.inf


@given(st.floats(0.1, 1e4), st.floats(1.0, 3.0))
def test_an_estimate_and_the_number_made_of_it_have_the_same_interval(value: float, factor: float) -> None:
    (draws,) = scattered(measured(Estimate(value, value / factor, value * factor), "flow"))
    again = gathered(draws)
    assert again.low == pytest.approx(value / factor, rel=2e-3)
    assert again.high == pytest.approx(value * factor, rel=2e-3)


def test_an_estimate_without_interval_is_refused() -> None:
    with pytest.raises(InvalidInput, match=r"^q50 is without interval: a value above 0 with an interval is needed$"):
        measured(Estimate(100.0, 0.0, math.inf), "q50")


@pytest.mark.parametrize(
    ("item", "sentence"),
    [
        (Measured(0.0), "zone_pa is 0.0: a number greater than 0 is needed"),
        (Measured(math.nan), "zone_pa is nan: a number greater than 0 is needed"),
        (
            Measured(5.0, -1.0),
            "zone_pa, standard uncertainty is -1.0: a number of at least 0 (and below 1e9) is needed",
        ),
        (
            Measured(5.0, math.inf),
            "zone_pa, standard uncertainty is inf: a number of at least 0 (and below 1e9) is needed",
        ),
    ],
)
def test_a_number_that_cannot_be_is_named(item: Measured, sentence: str) -> None:
    with pytest.raises(InvalidInput) as refused:
        check_measured(item, "zone_pa")
    assert str(refused.value) == sentence
