"""The checks of ISO 9972: each passes, fails, and says what it waits for."""

from __future__ import annotations

import random
from dataclasses import replace

import pytest

from analysis.methods import analyse, method_of
from analysis.methods.requirement import load_requirements
from analysis.records import Direction, Test, TestResult, ZeroFlow
from tests.analysis.samples import (
    BUILDING,
    PRESSURES_PA,
    STILL_AIR,
    ZERO,
    check_of,
    run_of,
    whole_test,
    without_point,
)

CHECKS = (
    "zero-before",
    "zero-after",
    "zero-count",
    "zero-seconds",
    "zero-flow-limit",
    "point-count",
    "point-spacing",
    "lowest-pressure",
    "highest-pressure",
    "exponent",
    "r2",
    "temperature-height",
    "wind",
)


def failed(result: TestResult) -> list[str]:
    """Return the ids of the checks that are not met."""
    return [check.id for check in result.runs[0].checks if check.ok is False]


def unsettled(result: TestResult) -> list[str]:
    """Return the ids of the checks that could not be made."""
    return [check.id for check in result.runs[0].checks if check.ok is None]


def law(pressures_pa: tuple[float, ...], c: float = 100.0, n: float = 0.65) -> tuple[float, ...]:
    """Return flows that follow a power law."""
    return tuple(c * pressure**n for pressure in pressures_pa)


def test_a_good_run_meets_every_check() -> None:
    result = analyse(whole_test())
    assert tuple(check.id for check in result.runs[0].checks) == CHECKS
    assert failed(result) == unsettled(result) == []
    assert result.valid
    assert result.runs[0].valid


def test_every_check_says_where_it_stands_and_that_it_is_from_memory() -> None:
    for check in analyse(whole_test()).runs[0].checks:
        assert check.clause
        assert check.text
        assert check.source == "from memory"
    assert not any(rule.verified for rule in load_requirements("iso9972"))


def test_data_file_and_check_functions_name_the_same_checks() -> None:
    method = method_of("iso9972")
    assert set(method.measures) == {rule.id for rule in method.requirements()}
    assert method.not_in_record


def test_a_misspelt_key_in_a_data_file_is_an_error(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("tomllib.loads", lambda _: {"check": [{"id": "wind", "at_mots": 3.0}]})
    load_requirements.cache_clear()
    with pytest.raises(ValueError, match=r"^iso9972.toml, check wind: unknown key at_mots$"):
        load_requirements("iso9972")
    load_requirements.cache_clear()


def test_a_missing_opening_zero_record_cannot_be_made_up_for() -> None:
    result = analyse(whole_test(run_of(zero_before=None)))
    assert failed(result) == ["zero-before"]
    assert "not recorded" in check_of(result, "zero-before").text


def test_a_missing_closing_zero_record_is_still_to_come() -> None:
    result = analyse(whole_test(run_of(zero_after=None)))
    assert unsettled(result) == ["zero-after"]
    assert failed(result) == []
    assert check_of(result, "zero-after").text == "Zero-flow pressure after the points: still to come"
    assert not result.valid


def test_without_any_zero_record_what_depends_on_it_cannot_be_checked() -> None:
    result = analyse(whole_test(run_of(zero_before=None, zero_after=None)))
    assert failed(result) == ["zero-before"]
    assert unsettled(result) == ["zero-after", "zero-count", "zero-seconds", "zero-flow-limit", "lowest-pressure"]
    assert result.runs[0].zero_pa == 0.0


@pytest.mark.parametrize(("count", "met"), [(9, False), (10, True)])
def test_the_smaller_zero_record_needs_ten_readings(count: int, met: bool) -> None:
    check = check_of(analyse(whole_test(run_of(zero_after=replace(ZERO, count=count)))), "zero-count")
    assert (check.value, check.limit, check.ok) == (count, 10, met)


@pytest.mark.parametrize(("seconds", "met"), [(29.0, False), (29.6, True), (30.0, True), (None, None)])
def test_the_shorter_zero_record_needs_thirty_seconds(seconds: float | None, met: bool | None) -> None:
    check = check_of(analyse(whole_test(run_of(zero_after=replace(ZERO, seconds=seconds)))), "zero-seconds")
    assert check.ok is met


def test_a_zero_record_that_is_known_to_be_too_short_fails_even_if_the_other_is_unknown() -> None:
    run = run_of(zero_before=replace(ZERO, seconds=10.0), zero_after=replace(ZERO, seconds=None))
    assert check_of(analyse(whole_test(run)), "zero-seconds").ok is False


@pytest.mark.parametrize(
    ("zero", "value", "met"),
    [
        (ZeroFlow(-4.0, 0.5, -4.9, 100, 60.0), -4.9, True),
        (ZeroFlow(-4.0, 0.5, -5.1, 100, 60.0), -5.1, False),
        (ZeroFlow(0.1, 5.1, -4.9, 100, 60.0), 5.1, False),
        (ZeroFlow(-5.2, None, None, 100, 60.0), -5.2, False),
        (ZeroFlow(-2.0, None, None, 100, 60.0), -2.0, None),
        (ZeroFlow(0.0, None, None, 100, 60.0), 0.05, True),
    ],
)
def test_each_of_the_four_signed_means_stays_within_five_pascal(zero: ZeroFlow, value: float, met: bool | None) -> None:
    check = check_of(analyse(whole_test(run_of(zero_after=zero))), "zero-flow-limit")
    assert abs(check.value or 0.0) == pytest.approx(abs(value))
    assert check.ok is met


def test_five_points_are_needed_when_the_run_is_over() -> None:
    short = without_point(run_of(), 1, 3, 5, 7, 8, 9)
    check = check_of(analyse(whole_test(short)), "point-count")
    assert (check.value, check.limit, check.ok) == (4, 5, False)


def test_while_a_run_is_open_more_points_may_come() -> None:
    begun = without_point(run_of(zero_after=None), *range(2), *range(5, 10))
    result = analyse(whole_test(begun))
    assert unsettled(result) == ["zero-after", "point-count", "highest-pressure"]
    assert check_of(result, "point-count").text == "At least five points: 3 so far"
    assert check_of(result, "highest-pressure").value == pytest.approx(48.8)


@pytest.mark.parametrize(("gap", "met"), [(10.0, True), (10.4, True), (10.6, False)])
def test_points_stand_no_more_than_about_ten_pascal_apart(gap: float, met: bool) -> None:
    pressures = tuple(12.0 + at * gap for at in range(5))
    check = check_of(analyse(whole_test(run_of(pressures, law(pressures)))), "point-spacing")
    assert check.value == pytest.approx(gap)
    assert check.ok is met
    unfinished = analyse(whole_test(run_of(pressures, law(pressures), zero_after=None)))
    assert check_of(unfinished, "point-spacing").ok is (True if met else None)


def test_spacing_does_not_depend_on_the_order_in_which_points_were_taken() -> None:
    pairs = list(zip(PRESSURES_PA, law(PRESSURES_PA), strict=True))
    random.Random(4).shuffle(pairs)
    shuffled = run_of([pair[0] for pair in pairs], [pair[1] for pair in pairs])
    assert check_of(analyse(whole_test(shuffled)), "point-spacing").value == pytest.approx(6.1)


@pytest.mark.parametrize(
    ("lowest", "zero", "limit", "met"),
    [
        (10.0, ZERO, 10.0, True),
        (9.9, ZERO, 10.0, False),
        (14.0, ZeroFlow(-2.9, 0.3, -3.0, 100, 60.0), 15.0, False),
        (15.1, ZeroFlow(-2.9, 0.3, -3.0, 100, 60.0), 15.0, True),
        (14.0, ZeroFlow(-3.0, None, None, 100, 60.0), 15.0, False),
    ],
)
def test_the_lowest_pressure_is_ten_pascal_and_five_times_the_zero_flow(
    lowest: float, zero: ZeroFlow, limit: float, met: bool
) -> None:
    pressures = tuple(lowest + at * 9.0 for at in range(6))
    run = run_of(pressures, law(pressures), zero_before=zero, zero_after=zero)
    check = check_of(analyse(whole_test(run)), "lowest-pressure")
    assert check.limit == pytest.approx(limit)
    assert check.ok is met


@pytest.mark.parametrize(
    ("highest", "limit", "met", "statement"),
    [(50.0, 50.0, True, False), (49.9, 25.0, True, True), (25.0, 25.0, True, True), (24.9, 50.0, False, False)],
)
def test_the_highest_pressure_is_fifty_or_with_a_statement_twenty_five(
    highest: float, limit: float, met: bool, statement: bool
) -> None:
    pressures = tuple(12.0 + (highest - 12.0) * at / 5 for at in range(6))
    check = check_of(analyse(whole_test(run_of(pressures, law(pressures)))), "highest-pressure")
    assert (check.limit, check.ok) == (limit, met)
    assert ("large building" in check.text) is statement


@pytest.mark.parametrize(("n", "met"), [(0.49, False), (0.501, True), (0.99, True), (1.01, False)])
def test_the_exponent_lies_between_a_half_and_one(n: float, met: bool) -> None:
    check = check_of(analyse(whole_test(run_of(flows_m3_h=law(PRESSURES_PA, n=n)))), "exponent")
    assert check.ok is met
    assert check.limit == (0.5 if n < 0.75 else 1.0)


def test_points_that_scatter_too_much_fail_the_coefficient_of_determination() -> None:
    flows = tuple(flow * (1.12 if at % 2 else 0.89) for at, flow in enumerate(law(PRESSURES_PA)))
    check = check_of(analyse(whole_test(run_of(flows_m3_h=flows))), "r2")
    assert check.value is not None
    assert check.value < 0.98
    assert check.ok is False


@pytest.mark.parametrize(("height", "value", "met"), [(9.9, 247.5, True), (10.1, 252.5, False), (None, None, None)])
def test_temperature_difference_times_height_is_limited(
    height: float | None, value: float | None, met: bool | None
) -> None:
    air = replace(STILL_AIR, indoor_c=20.0, outdoor_c=-5.0)
    test = Test(replace(BUILDING, height_m=height), (run_of(air=air),))
    check = check_of(analyse(test), "temperature-height")
    assert check.value == (None if value is None else pytest.approx(value))
    assert check.ok is met


@pytest.mark.parametrize(("wind", "met"), [(3.0, True), (4.0, None), (6.0, None), (6.1, False), (None, None)])
def test_wind_between_the_two_limits_cannot_be_judged(wind: float | None, met: bool | None) -> None:
    check = check_of(analyse(whole_test(run_of(air=replace(STILL_AIR, wind_m_s=wind)))), "wind")
    assert check.ok is met
    if wind is None:
        assert check.text == "Wind at most 3 m/s near the ground: the wind speed is not given"


def test_each_direction_is_checked_for_itself() -> None:
    good, calm_later = run_of(), run_of(direction=Direction.PRESSURIZE, air=replace(STILL_AIR, wind_m_s=7.0))
    result = analyse(whole_test(good, calm_later))
    assert [run.valid for run in result.runs] == [True, False]
    assert not result.valid
