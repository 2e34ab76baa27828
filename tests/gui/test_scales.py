"""Ticks: round numbers, far enough apart, inside what is seen."""

from __future__ import annotations

import itertools
import math

from hypothesis import given
from hypothesis import strategies as st

from gui.viewmodels.scales import linear_ticks, log_ticks, round_text, time_ticks


def test_the_pressure_axis_says_10_20_50_and_not_powers() -> None:
    ticks = log_ticks(math.log10(8), math.log10(80), 500, 26)
    assert [text for _, text in ticks] == ["10", "20", "30", "40", "50", "60", "70"]
    assert ticks[0][0] == 1.0


def test_a_narrow_axis_gets_fewer_ticks() -> None:
    assert [text for _, text in log_ticks(math.log10(8), math.log10(80), 200, 26)] == ["10", "20", "50"]


def test_thousands_are_set_apart() -> None:
    assert [text for _, text in log_ticks(2.9, 3.4, 60, 20)][-1] == "2\u2009000"


@given(st.floats(-1, 4), st.floats(0.05, 3), st.floats(40, 2000))
def test_logarithmic_ticks_lie_inside_and_apart(low: float, span: float, length: float) -> None:
    ticks = log_ticks(low, low + span, length, 26)
    places = [place for place, _ in ticks]
    assert all(low - 1e-6 <= place <= low + span + 1e-6 for place in places)
    assert places == sorted(places)
    assert len({text for _, text in ticks}) == len(ticks)
    if len(places) > 2:
        closest = min(b - a for a, b in itertools.pairwise(places))
        assert closest / span * length >= 25.9 or span > 1


@given(st.floats(-1e4, 1e4), st.floats(1e-3, 1e4), st.floats(30, 2000))
def test_linear_ticks_lie_inside_and_apart(low: float, span: float, length: float) -> None:
    places = [place for place, _ in linear_ticks(low, low + span, length, 28)]
    assert all(low - span / 100 <= place <= low + span * 1.01 for place in places)
    if len(places) > 1:
        assert (places[1] - places[0]) / span * length >= 27.9


def test_times_are_minutes_and_seconds_before_now() -> None:
    assert [text for _, text in time_ticks(-180, 0, 560)] == [
        "−3:00", "−2:30", "−2:00", "−1:30", "−1:00", "−0:30", "now",
    ]  # fmt: skip
    assert [text for _, text in time_ticks(0, 120, 300, zero="0:00")] == ["0:00", "0:30", "1:00", "1:30", "2:00"]


def test_a_range_of_nothing_has_no_ticks() -> None:
    assert linear_ticks(1, 1, 100, 20) == ()
    assert log_ticks(1, 1, 100, 20) == ()
    assert time_ticks(0, 10, 0) == ()


def test_round_numbers_have_no_more_decimals_than_they_need() -> None:
    assert [round_text(value) for value in (10, 1.5, 0.25, 1500)] == ["10", "1.5", "0.25", "1\u2009500"]
    assert round_text(1.5, ",") == "1,5"
