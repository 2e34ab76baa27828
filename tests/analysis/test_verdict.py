"""Verdicts by probability, and what would settle one that cannot be told."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.powerlaw import log_estimate
from analysis.records import Estimate, UncertaintyPart
from analysis.student import t_multiplier
from analysis.verdict import conformity, probability_within, settling, settling_words

VALUES = st.floats(0.1, 100.0)
SPREADS = st.floats(0.001, 0.4)
DOFS = st.sampled_from([1.0, 4.0, 8.0, 30.0, math.inf])


@given(VALUES, SPREADS, DOFS)
def test_the_ends_of_the_interval_leave_two_and_a_half_percent_outside(value: float, u: float, dof: float) -> None:
    estimate = log_estimate(value, u**2, dof)
    assert probability_within(estimate, estimate.high, dof) == pytest.approx(0.975, abs=1e-9)
    assert probability_within(estimate, estimate.low, dof) == pytest.approx(0.025, abs=1e-9)
    assert probability_within(estimate, value, dof) == pytest.approx(0.5)


@given(VALUES, SPREADS, DOFS, VALUES, st.floats(1.0, 3.0))
def test_a_laxer_limit_is_at_least_as_probably_met(
    value: float, u: float, dof: float, limit: float, factor: float
) -> None:
    estimate = log_estimate(value, u**2, dof)
    assert probability_within(estimate, limit, dof) <= probability_within(estimate, limit * factor, dof)


@given(VALUES, SPREADS, DOFS, st.floats(0.8, 1.25), st.floats(0.01, 100.0))
def test_the_unit_of_value_and_limit_does_not_matter(
    value: float, u: float, dof: float, ratio: float, unit: float
) -> None:
    one = probability_within(log_estimate(value, u**2, dof), ratio * value, dof)
    other = probability_within(log_estimate(unit * value, u**2, dof), unit * ratio * value, dof)
    assert other == pytest.approx(one, abs=1e-9)


@given(VALUES, SPREADS, st.floats(1.0, 2.0))
def test_a_wider_interval_is_never_more_certain(value: float, u: float, ratio: float) -> None:
    narrow, wide = (probability_within(log_estimate(value, v**2, 8.0), ratio * value, 8.0) for v in (u, 1.5 * u))
    assert 0.5 <= wide <= narrow


def test_an_interval_of_no_width_decides_outright() -> None:
    exact = Estimate(3.0, 3.0, 3.0)
    assert [probability_within(exact, limit) for limit in (2.9, 3.0, 3.1)] == [0.0, 1.0, 1.0]


def test_without_interval_nothing_is_known() -> None:
    open_one = log_estimate(3.0, 0.01, 0.0)
    assert probability_within(open_one, 100.0, 0.0) == 0.5
    assert settling(open_one, 3.1, 0.0) is None


def test_a_value_that_may_be_below_zero_is_taken_as_it_is() -> None:
    """Normal distribution: a change of -1 with 95 % from -3.92 to 1.92 is at most 0 with 74.9 % (z = 0.671)."""
    change = Estimate(-1.0, -1.0 - 2.92, -1.0 + 2.92)
    assert probability_within(change, 0.0) == pytest.approx(0.749, abs=5e-4)


@pytest.mark.parametrize(
    ("probability", "verdict"),
    [(1.0, "meets"), (0.95, "meets"), (0.949, "cannot tell"), (0.051, "cannot tell"), (0.05, "does not meet")],
)
def test_ninety_five_percent_decide(probability: float, verdict: str) -> None:
    assert conformity(probability) == verdict


# what would settle it


@given(VALUES, SPREADS, DOFS, st.floats(0.9, 1.1))
def test_an_interval_narrowed_as_told_just_settles_it(value: float, u: float, dof: float, ratio: float) -> None:
    estimate = log_estimate(value, u**2, dof)
    found = settling(estimate, ratio * value, dof)
    if found is None:
        assert conformity(probability_within(estimate, ratio * value, dof)) != "cannot tell"
        return
    assert 0.0 <= found.narrowing < 1.0
    if found.narrowing < 1e-6:
        return
    narrowed = log_estimate(value, (found.narrowing * u) ** 2, dof)
    decided = probability_within(narrowed, ratio * value, dof)
    assert max(decided, 1.0 - decided) == pytest.approx(0.95, abs=1e-9)


def test_a_value_at_the_limit_is_settled_by_nothing() -> None:
    estimate = log_estimate(1.5, 0.02**2, 8.0)
    found = settling(estimate, 1.5, 8.0)
    assert found is not None
    assert (found.narrowing, found.tests, found.improvements) == (0.0, None, ())
    assert settling_words(found).startswith("The value is the limit itself")


PARTS = (
    UncertaintyPart("fit", 0.010),
    UncertaintyPart("wind", 0.020),
    UncertaintyPart("flow-element", 0.010, repeatable=False),
)
TOTAL = math.sqrt(0.0006)


def limit_for(narrowing: float) -> float:
    """Return the limit above 1 for which the interval of the parts has to shrink to this share."""
    return math.exp(narrowing * t_multiplier(math.inf, 0.90) * TOTAL)


def test_equal_tests_average_what_repeats_and_not_the_calibration() -> None:
    """Variances 5 of 6 repeat: half the width (1.5 of 6) leaves 0.5 for them, ten tests; a third (0.67) nothing."""
    estimate = log_estimate(1.0, TOTAL**2, math.inf)
    half, third = (settling(estimate, limit_for(share), parts=PARTS) for share in (0.5001, 1 / 3))
    assert half is not None
    assert third is not None
    assert (half.tests, third.tests) == (10, None)


def test_the_parts_that_would_settle_it_alone_come_least_demanding_first() -> None:
    """Variances 1, 4, 1: 5 allowed is reached by removing any one of them, the wind has to shrink least."""
    estimate = log_estimate(1.0, TOTAL**2, math.inf)
    found = settling(estimate, limit_for(math.sqrt(5.2 / 6)), parts=PARTS)
    assert found is not None
    assert [item.part.id for item in found.improvements] == ["wind", "fit", "flow-element"]
    assert found.improvements[0].ln_u_needed == pytest.approx(math.sqrt(3.2e-4), rel=1e-6)
    assert found.tests == 2


def test_the_sentence_names_the_two_easiest_ways_and_the_tests() -> None:
    estimate = log_estimate(1.0, TOTAL**2, math.inf)
    found = settling(estimate, limit_for(0.9), parts=PARTS)
    assert found is not None
    assert settling_words(found) == (
        "If the value stays, the interval has to shrink to 90 % of its width: a calmer hour, or more outdoor pressure "
        "taps, or the mean of 2 tests like this one."
    )


def test_the_sentence_says_so_where_no_single_way_does() -> None:
    estimate = log_estimate(1.0, TOTAL**2, math.inf)
    found = settling(estimate, limit_for(0.1), parts=PARTS)
    assert found is not None
    assert settling_words(found) == (
        "If the value stays, the interval has to shrink to 10 % of its width; no single improvement would do."
    )


def test_a_part_without_a_known_remedy_is_named() -> None:
    estimate = log_estimate(1.0, 1e-4, math.inf)
    found = settling(estimate, math.exp(0.01), parts=[UncertaintyPart("stack", 0.01, repeatable=False)])
    assert found is not None
    assert "a smaller uncertainty of stack." in settling_words(found)


@pytest.mark.parametrize("limit", [0.0, -1.0, math.nan, math.inf])
def test_a_limit_is_a_number_above_zero(limit: float) -> None:
    with pytest.raises(InvalidInput, match=r"^limit is .*: a number greater than 0"):
        settling(log_estimate(1.0, 1e-4, math.inf), limit)
