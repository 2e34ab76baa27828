"""Zero-flow statistics."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.records import ZeroFlow
from analysis.zeroflow import signed_means_pa, zero_correction_pa, zero_flow, zero_spread_pa


def test_positive_and_negative_readings_have_their_own_means() -> None:
    zero = zero_flow([-1.0, -3.0, 2.0, 0.0])
    assert (zero.mean_pa, zero.positive_mean_pa, zero.negative_mean_pa, zero.count) == (-0.5, 2.0, -2.0, 4)


def test_a_side_without_readings_has_no_mean() -> None:
    zero = zero_flow([-1.1, -0.9, -1.3])
    assert zero.positive_mean_pa is None
    assert zero.negative_mean_pa == pytest.approx(-1.1)
    assert signed_means_pa(zero) == (zero.negative_mean_pa,)


def test_readings_of_zero_only_have_one_mean_of_zero() -> None:
    assert signed_means_pa(zero_flow([0.0, 0.0])) == (0.0,)


def test_a_record_of_nothing_but_its_mean_has_no_signed_means() -> None:
    assert signed_means_pa(ZeroFlow(-1.0, None, None, 20)) == ()


def test_no_readings_are_refused_in_one_sentence() -> None:
    with pytest.raises(InvalidInput, match=r"^readings_pa is empty: at least one reading is needed$"):
        zero_flow([])


@pytest.mark.parametrize("bad", [math.nan, math.inf, -math.inf])
def test_a_reading_that_is_no_number_is_named(bad: float) -> None:
    with pytest.raises(InvalidInput, match=r"^readings_pa\[2\] is -?(nan|inf): a finite number in Pa is needed$"):
        zero_flow([0.1, 0.2, bad])


def test_spread_is_the_standard_deviation_of_the_readings() -> None:
    assert zero_spread_pa(zero_flow([1.0, 2.0, 3.0, 4.0])) == pytest.approx(math.sqrt(5.0 / 3.0))
    assert zero_spread_pa(zero_flow([1.0])) is None
    assert zero_spread_pa(ZeroFlow(-1.0, None, None, 20)) is None


def test_points_are_corrected_by_the_mean_of_both_records() -> None:
    before, after = zero_flow([-1.0]), zero_flow([-2.0])
    assert zero_correction_pa(before, after) == -1.5
    assert zero_correction_pa(before, None) == -1.0
    assert zero_correction_pa(None, after) == -2.0
    assert zero_correction_pa(None, None) == 0.0


@given(st.lists(st.floats(-50, 50), min_size=1, max_size=50))
def test_statistics_do_not_depend_on_the_order_of_the_readings(readings: list[float]) -> None:
    one, other = zero_flow(readings), zero_flow(readings[::-1])
    assert (one.mean_pa, one.positive_mean_pa, one.negative_mean_pa) == (
        other.mean_pa,
        other.positive_mean_pa,
        other.negative_mean_pa,
    )
