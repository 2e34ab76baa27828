"""Numbers as people write and read them."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.numbertext import decimals_for, format_number, parse_number, significant_decimals


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("12.5", 12.5),
        ("12,5", 12.5),
        (" 0,999 ", 0.999),
        ("-3", -3.0),
        ("−3,25", -3.25),
        ("+4", 4.0),
        ("1 481", 1481.0),
        ("1\u2009481,5", 1481.5),
        ("12'000", 12000.0),
        ("1,234.5", 1234.5),
        ("1.234,5", 1234.5),
        ("1,234,567", 1234567.0),
        ("1.234.567,8", 1234567.8),
        ("1e3", 1000.0),
        (".5", 0.5),
    ],
)
def test_what_people_write_is_read(text: str, number: float) -> None:
    assert parse_number(text, "volume") == number
    assert parse_number(text, "volume", ",") == number


@pytest.mark.parametrize(
    ("text", "mark", "other", "choices"),
    [("1,234", ".", ",", "1234 or 1.234"), ("-1.234", ",", ".", "-1234 or -1,234")],
)
def test_a_mark_that_could_be_either_is_refused_unless_it_is_the_persons_own(
    text: str, mark: str, other: str, choices: str
) -> None:
    with pytest.raises(InvalidInput, match=f"^volume is '{text}': it can mean two things, write {choices}$"):
        parse_number(text, "volume", mark)
    assert abs(parse_number(text, "volume", other)) == 1.234


@pytest.mark.parametrize("text", ["", "abc", "1,23,4", "1.2.3", "--1", "nan", "inf", "1e999", "12 m", "0x10", "1_000"])
def test_what_is_no_number_is_refused_in_one_sentence(text: str) -> None:
    with pytest.raises(InvalidInput, match=r"^volume is .*: a number is needed, such as 12\.5 or 12,5$"):
        parse_number(text, "volume")


@pytest.mark.parametrize(
    ("value", "decimals", "text"),
    [
        (-40.34, 1, "−40.3"),
        (1481.4, 0, "1\u2009481"),
        (1234567.0, 0, "1\u2009234\u2009567"),
        (1484.0, -1, "1\u2009480"),
        (-0.04, 1, "0.0"),
        (0.6515, 3, "0.651"),
        (math.nan, 2, "–"),
        (math.inf, 0, "–"),
    ],
)
def test_numbers_are_set_with_true_minus_and_thin_spaces(value: float, decimals: int, text: str) -> None:
    assert format_number(value, decimals) == text


def test_a_decimal_comma_is_written_where_it_is_wanted() -> None:
    assert format_number(1234.5, 1, ",") == "1\u2009234,5"


@given(st.floats(-1e6, 1e6), st.integers(0, 4), st.sampled_from(".,"))
def test_what_is_shown_can_be_typed_back(value: float, decimals: int, mark: str) -> None:
    text = format_number(value, decimals, mark)
    assert parse_number(text, "x", mark) == pytest.approx(value, abs=0.51 * 10.0**-decimals)


@pytest.mark.parametrize(
    ("uncertainty", "decimals"),
    [(0.0521, 2), (0.021, 3), (0.0096, 3), (4.08, 0), (2.4, 1), (52.0, -1), (0.35, 2), (0.36, 1), (9.6, 0), (99.9, -1)],
)
def test_an_uncertainty_keeps_one_or_two_digits(uncertainty: float, decimals: int) -> None:
    assert decimals_for(uncertainty) == decimals


@pytest.mark.parametrize("uncertainty", [0.0, math.inf, math.nan])
def test_without_an_uncertainty_it_cannot_set_the_digits(uncertainty: float) -> None:
    assert decimals_for(uncertainty) is None


def test_significant_digits() -> None:
    assert [significant_decimals(value, 3) for value in (1481.0, 1.727, 0.0123, 0.0)] == [-1, 2, 4, 0]
