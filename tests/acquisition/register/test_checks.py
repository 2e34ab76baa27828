"""Readings outside a calibration, and two gauges on one hose."""

from __future__ import annotations

import math
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from acquisition.register.fieldcheck import Accuracy, check_point, field_check, history, verdict
from acquisition.register.records import CheckPoint, FieldCheck
from acquisition.register.validity import check_validity, readings_outside
from analysis.errors import InvalidInput
from analysis.records import FlowRange

WIDE = FlowRange("wide", 500.0, 0.5, 10.0, 250.0)
MIDDLE = FlowRange("middle", 150.0, 0.5, 10.0, 250.0)
NARROW = FlowRange("narrow", 40.0, 0.5, 10.0, 250.0)
ALL = (WIDE, MIDDLE, NARROW)
DAY = date(2026, 5, 4)


def test_a_reading_within_the_calibration_is_well() -> None:
    assert check_validity(-50.0, MIDDLE, ALL).inside
    assert check_validity(10.0, MIDDLE, ALL).inside
    assert readings_outside([5.0, -50.0, 251.0, math.nan], MIDDLE) == (0, 2, 3)


def test_below_and_above_the_range_that_measures_the_flow_is_proposed() -> None:
    # 150 * 4^0.5 = 300 m3/h is (300 / 40)^2 = 56 Pa on the narrow range, by hand.
    low = check_validity(4.0, MIDDLE, ALL)
    assert (low.inside, low.proposed) == (False, "narrow")
    assert low.sentence == (
        "4.0 Pa at the flow element is below the 10 Pa that range middle is calibrated to. Fit range narrow."
    )
    high = check_validity(400.0, MIDDLE, ALL)
    assert (high.inside, high.proposed) == (False, "wide")
    assert "above the 250 Pa" in high.sentence


def test_where_no_range_measures_the_flow_none_is_proposed() -> None:
    nothing = check_validity(900.0, WIDE, ALL)
    assert (nothing.inside, nothing.proposed) == (False, "")
    assert "No other range" in nothing.sentence
    assert not check_validity(math.nan, WIDE, ALL).inside
    assert check_validity(0.0, WIDE, ALL).proposed == ""


@given(st.floats(0.0, 1e5), st.sampled_from(ALL))
def test_a_proposed_range_is_calibrated_for_the_flow(pa: float, fitted: FlowRange) -> None:
    found = check_validity(pa, fitted, ALL)
    assert found.inside == (fitted.min_pa <= pa <= fitted.max_pa)
    for item in ALL:
        if item.name == found.proposed:
            flow = fitted.coefficient_m3_h_pa_n * pa**fitted.exponent
            there = (flow / item.coefficient_m3_h_pa_n) ** (1 / item.exponent)
            assert item.min_pa * (1 - 1e-9) <= there <= item.max_pa * (1 + 1e-9)
            assert item is not fitted


def checked(apart: float, day: date = DAY) -> FieldCheck:
    points = [
        check_point([0.0] * 5, [0.0] * 5, Accuracy(0.3), Accuracy(0.4)),
        check_point([50.0 + apart] * 5, [50.0] * 5, Accuracy(0.3), Accuracy(0.4)),
    ]
    return field_check(day, "a", "b", points)


def test_gauges_that_agree_and_gauges_that_do_not() -> None:
    # The root of 0.3^2 + 0.4^2 is 0.5 Pa.
    good, bad = checked(0.45), checked(0.55)
    assert good.points[1].allowed_pa == pytest.approx(0.5)
    assert good.agree
    assert verdict(good) == "a and b agree: at most 0.45 Pa apart at 50.2 Pa; 0.50 Pa are allowed."
    assert not bad.agree
    assert "do not agree: 0.55 Pa apart" in verdict(bad)


def test_percent_of_the_reading_counts() -> None:
    point = check_point([100.0] * 5, [100.0] * 5, Accuracy(0.0, 1.0), Accuracy(0.0))
    assert point.allowed_pa == pytest.approx(1.0)


def test_a_difference_that_grows_is_mentioned() -> None:
    first, last = checked(0.05), checked(0.4, date(2027, 5, 4))
    assert history([first]) == ""
    assert history([first, last]) == (
        "2 checks since 2026-05-04: the difference has grown from 10% to 80% of what is allowed."
    )
    assert "has not grown" in history([last, first])


def test_too_little_is_refused() -> None:
    with pytest.raises(InvalidInput, match="readings of the second gauge is 2: 5 numbers"):
        check_point([0.0] * 5, [0.0] * 2, Accuracy(0.3), Accuracy(0.3))
    with pytest.raises(InvalidInput, match="readings of the first gauge"):
        check_point([math.nan] * 5, [0.0] * 5, Accuracy(0.3), Accuracy(0.3))
    points = [CheckPoint(0.0, 0.0, 0.1)] * 2
    with pytest.raises(InvalidInput, match="another gauge"):
        field_check(DAY, "a", "a", points)
    with pytest.raises(InvalidInput, match="2 pressures or more"):
        field_check(DAY, "a", "b", points[:1])
