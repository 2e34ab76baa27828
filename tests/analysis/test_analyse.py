"""Analysing a test: correction, conversion, quantities, both directions, verdicts, and input that cannot be used."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.methods import analyse, method_ids
from analysis.records import Air, Building, Direction, Limit, Point, Test, TestResult, ZeroFlow
from tests.analysis.samples import (
    BUILDING,
    FLOWS_M3_H,
    PRESSURES_PA,
    STILL_AIR,
    ZERO,
    check_of,
    run_of,
    whole_test,
    without_point,
)

POWER_LAW = tuple(100.0 * pressure**0.65 for pressure in PRESSURES_PA)
COLD = Air(21.0, -10.0, 0.4, 0.8, 98_000.0, 1.0)


def refusal(test_of_something: object, **options: object) -> str:
    """Return the sentence with which the analysis refuses."""
    with pytest.raises(InvalidInput) as caught:
        analyse(test_of_something, **options)  # type: ignore[arg-type]
    sentence = str(caught.value)
    assert "\n" not in sentence
    return sentence


def test_the_zero_flow_pressure_is_taken_off_every_point() -> None:
    before, after = ZeroFlow(-1.0, 0.2, -1.1, 100, 60.0), ZeroFlow(-2.0, 0.1, -2.1, 100, 60.0)
    result = analyse(whole_test(run_of(zero_before=before, zero_after=after))).runs[0]
    assert result.zero_pa == -1.5
    assert result.induced_pa == pytest.approx([-pressure for pressure in PRESSURES_PA])


def test_without_a_closing_record_the_opening_one_is_taken_off() -> None:
    result = analyse(whole_test(run_of(zero_before=ZeroFlow(-1.0, 0.2, -1.1, 100, 60.0), zero_after=None))).runs[0]
    assert result.zero_pa == -1.0


def test_in_reference_air_on_both_sides_nothing_is_converted() -> None:
    result = analyse(whole_test(run_of(flows_m3_h=POWER_LAW))).runs[0]
    assert result.n.value == pytest.approx(0.65, rel=1e-9)
    assert result.c_env_m3_h_pa_n.value == pytest.approx(100.0, rel=1e-9)
    assert result.c_l_m3_h_pa_n.value == pytest.approx(100.0, rel=1e-5)
    assert result.q50_m3_h.value == pytest.approx(100.0 * 50**0.65, rel=1e-5)


def test_rates_are_the_flow_over_what_the_building_has() -> None:
    result = analyse(whole_test()).runs[0]
    assert result.n50_per_h is not None
    assert result.qe50_m3_h_m2 is not None
    assert result.qf50_m3_h_m2 is not None
    assert result.n50_per_h.value * 300.0 == pytest.approx(result.q50_m3_h.value)
    assert result.qe50_m3_h_m2.low * 360.0 == pytest.approx(result.q50_m3_h.low)
    assert result.qf50_m3_h_m2.high * 120.0 == pytest.approx(result.q50_m3_h.high)


def test_a_building_without_figures_has_flows_but_no_rates() -> None:
    result = analyse(whole_test(building=Building("unknown")))
    assert result.runs[0].n50_per_h is None
    assert result.mean.qe50_m3_h_m2 is None
    assert result.mean.q50_m3_h.value == result.runs[0].q50_m3_h.value


def test_areas_are_extrapolated_when_the_points_do_not_reach_their_pressure() -> None:
    result = analyse(whole_test()).runs[0]
    assert result.ela4_cm2.extrapolated
    assert result.eqla10_cm2.extrapolated
    assert not result.q50_m3_h.extrapolated
    low_reach = analyse(whole_test(without_point(run_of(), 0, 1, 2))).runs[0]
    assert low_reach.q50_m3_h.extrapolated


def test_without_a_barometer_the_altitude_gives_the_pressure() -> None:
    at_sea = analyse(whole_test(run_of(air=replace(COLD, barometric_pa=None)))).runs[0]
    assert at_sea.c_l_m3_h_pa_n.value == pytest.approx(
        analyse(whole_test(run_of(air=replace(COLD, barometric_pa=101_325.0)))).runs[0].c_l_m3_h_pa_n.value
    )
    high = replace(BUILDING, altitude_m=1600.0)
    in_the_hills = analyse(whole_test(run_of(air=replace(COLD, barometric_pa=None)), building=high)).runs[0]
    assert in_the_hills.c_l_m3_h_pa_n.value < at_sea.c_l_m3_h_pa_n.value


def test_one_run_is_its_own_mean_to_the_last_digit() -> None:
    result = analyse(whole_test(run_of(air=COLD)))
    run = result.runs[0]
    assert result.mean.q50_m3_h == run.q50_m3_h
    assert result.mean.n50_per_h == run.n50_per_h


def test_the_mean_of_two_directions_lies_between_and_is_surer_than_each() -> None:
    other = run_of(flows_m3_h=[1.1 * flow for flow in run_of_flows()], direction=Direction.PRESSURIZE)
    result = analyse(whole_test(run_of(), other))
    first, second = (run.q50_m3_h for run in result.runs)
    mean = result.mean.q50_m3_h
    assert mean.value == pytest.approx((first.value + second.value) / 2)
    assert mean.half_width < min(first.half_width, second.half_width)
    assert mean.low < mean.value < mean.high


def run_of_flows() -> list[float]:
    """Return the flows of the sample run."""
    return [point.flow_m3_h for point in run_of().points]


def test_two_points_give_a_number_without_an_interval_and_no_verdict() -> None:
    run = without_point(run_of(), *range(1, 9))
    result = analyse(whole_test(run), limits=[Limit("target", "n50_per_h", 100.0)])
    assert result.mean.q50_m3_h.high == math.inf
    assert (result.verdicts[0].verdict, result.verdicts[0].probability) == ("cannot tell", 0.5)
    assert check_of(result, "point-count").ok is False


def test_an_outlier_widens_the_interval_and_fails_the_fit() -> None:
    flows = run_of_flows()
    flows[4] *= 2.0
    result = analyse(whole_test(run_of(flows_m3_h=flows)))
    assert check_of(result, "r2").ok is False
    assert result.runs[0].q50_m3_h.half_width > 20 * analyse(whole_test()).runs[0].q50_m3_h.half_width


def test_a_hundred_thousand_points_are_analysed() -> None:
    pressures = [10.0 + 50.0 * at / 99_999 for at in range(100_000)]
    result = analyse(whole_test(run_of(pressures, [90.0 * pressure**0.6 for pressure in pressures]))).runs[0]
    assert result.n.value == pytest.approx(0.6, rel=1e-9)


# verdicts


def judged(limit: float, quantity: str = "n50_per_h") -> TestResult:
    """Return the sample test held against a limit."""
    return analyse(whole_test(), limits=[Limit("target", quantity, limit)])


def test_a_limit_far_above_is_met_far_below_is_not_and_at_the_value_cannot_be_told() -> None:
    n50 = analyse(whole_test()).mean.n50_per_h
    assert n50 is not None
    assert judged(1.1 * n50.value).verdicts[0].verdict == "meets"
    assert judged(0.9 * n50.value).verdicts[0].verdict == "does not meet"
    at_the_value = judged(n50.value).verdicts[0]
    assert at_the_value.verdict == "cannot tell"
    assert at_the_value.probability == pytest.approx(0.5)


def test_the_ends_of_the_interval_leave_two_and_a_half_percent_outside() -> None:
    """Definition of a two-sided 95 % interval."""
    q50 = analyse(whole_test()).mean.q50_m3_h
    assert judged(q50.high, "q50_m3_h").verdicts[0].probability == pytest.approx(0.975, abs=1e-9)
    assert judged(q50.low, "q50_m3_h").verdicts[0].probability == pytest.approx(0.025, abs=1e-9)


@given(st.floats(0.5, 20.0), st.floats(1.0, 2.0))
def test_a_laxer_limit_is_at_least_as_probably_met(limit: float, factor: float) -> None:
    assert judged(limit).verdicts[0].probability <= judged(limit * factor).verdicts[0].probability


def test_points_without_scatter_decide_a_limit_outright() -> None:
    pressures = (10.0, 20.0, 40.0, 80.0)
    run = run_of(pressures, [100.0 * pressure for pressure in pressures])
    over, under = Limit("a", "q50_m3_h", 4000.0), Limit("b", "q50_m3_h", 6000.0)
    verdicts = analyse(whole_test(run), limits=[over, under]).verdicts
    assert [item.verdict for item in verdicts] == ["does not meet", "meets"]


def test_a_limit_on_an_unknown_quantity_lists_those_there_are() -> None:
    sentence = refusal(whole_test(), limits=[Limit("x", "n75", 1.0)])
    assert sentence.startswith("limits[0].quantity is 'n75': one of q50_m3_h, n50_per_h, qe50_m3_h_m2, qf50_m3_h_m2, ")
    assert sentence.endswith(" is needed")


def test_a_limit_needs_what_its_quantity_is_divided_by() -> None:
    sentence = refusal(whole_test(building=Building("unknown")), limits=[Limit("house", "n50_per_h", 1.5)])
    assert sentence == "building.volume_m3 is missing: the limit house on n50_per_h needs it"


@pytest.mark.parametrize("value", [0.0, -1.0, math.nan, math.inf])
def test_a_limit_is_a_number_above_zero(value: float) -> None:
    assert refusal(whole_test(), limits=[Limit("x", "n50_per_h", value)]).startswith("limits[0].value is ")


def two_directions(second: float) -> Test:
    """Return a test whose pressurization passes so many times the flow of its depressurization."""
    other = run_of(flows_m3_h=[second * flow for flow in FLOWS_M3_H], direction=Direction.PRESSURIZE)
    return whole_test(run_of(), other)


def test_a_limit_on_each_direction_is_decided_by_the_worse_one() -> None:
    test = two_directions(1.2)
    mean = analyse(test).mean.q50_m3_h.value
    of_mean, of_each = (
        Limit("mean", "q50_m3_h", 1.02 * mean),
        Limit("each", "q50_m3_h", 1.02 * mean, each_direction=True),
    )
    verdicts = analyse(test, limits=[of_mean, of_each]).verdicts
    assert [item.verdict for item in verdicts] == ["meets", "does not meet"]
    lower = Limit("each", "q50_m3_h", 0.93 * mean, each_direction=True)
    assert analyse(two_directions(0.8), limits=[lower]).verdicts[0].verdict == "meets"
    assert analyse(two_directions(1.2), limits=[lower]).verdicts[0].verdict == "does not meet"


def test_a_verdict_that_cannot_be_told_says_what_would_settle_it_and_others_do_not() -> None:
    q50 = analyse(whole_test()).mean.q50_m3_h
    open_one, settled = (judged(limit, "q50_m3_h").verdicts[0] for limit in ((q50.value + q50.high) / 2, 2 * q50.value))
    assert open_one.settling is not None
    assert 0.0 < open_one.settling.narrowing < 1.0
    assert settled.settling is None


# input that cannot be used


def test_an_unknown_method_lists_those_there_are() -> None:
    assert refusal(whole_test(), method="iso") == f"method is 'iso': one of {', '.join(method_ids())} is needed"


def test_an_unknown_fit_lists_those_there_are() -> None:
    assert refusal(whole_test(), fit="best").startswith("fit is 'best': one of ols")


@pytest.mark.parametrize(("kept", "shown"), [(1, "1 point"), (0, "0 points")])
def test_too_few_points_are_named(kept: int, shown: str) -> None:
    run = without_point(run_of(), *range(kept, 10))
    assert refusal(whole_test(run)) == f"runs[0].points is {shown}: at least 2 are needed"


def test_a_test_without_runs_is_refused() -> None:
    assert refusal(replace(whole_test(), runs=())) == "runs is empty: one run, or one in each direction, is needed"


def test_two_runs_in_one_direction_are_refused() -> None:
    sentence = refusal(whole_test(run_of(), run_of()))
    assert sentence == "runs[1].direction is 'depressurize': only one run in each direction is allowed"


def test_a_point_on_the_wrong_side_of_the_zero_flow_pressure_is_named() -> None:
    run = run_of(zero_before=ZeroFlow(-3.0, None, -3.0, 100, 60.0), zero_after=ZeroFlow(-3.0, None, -3.0, 100, 60.0))
    run = replace(run, points=(*run.points[:3], Point(-2.0, 30.0), *run.points[4:]))
    assert refusal(whole_test(run)) == (
        "runs[0].points[3].envelope_pa is -2.0: less the zero-flow pressure of -3 Pa it must be below 0 to "
        "depressurize, and that is 1 Pa"
    )


def test_a_point_at_the_zero_flow_pressure_is_named() -> None:
    run = replace(run_of(zero_before=ZERO, zero_after=ZERO), points=(*run_of().points, Point(0.0, 30.0)))
    assert refusal(whole_test(run)).startswith("runs[0].points[10].envelope_pa is 0.0: ")


def test_a_run_in_the_other_direction_than_it_says_is_named() -> None:
    run = replace(run_of(), direction=Direction.PRESSURIZE)
    sentence = refusal(whole_test(run))
    assert sentence.startswith("runs[0].direction is 'pressurize': ")
    assert "above 0 Pa are needed" in sentence


@pytest.mark.parametrize("pressures", [(50.0, 50.0, 50.0), (50.0, 50.00001), (50.0, 50.0001)])
def test_points_at_one_pressure_give_no_line(pressures: tuple[float, ...]) -> None:
    flows = [1000.0 + 50.0 * at for at in range(len(pressures))]
    sentence = refusal(whole_test(run_of(pressures, flows)))
    assert sentence.startswith(f"runs[0].points is {len(pressures)} points from 50 to 50")
    assert sentence.endswith("a line needs pressures that differ more")


@pytest.mark.parametrize(
    ("field", "value"),
    [("flow_m3_h", 0.0), ("flow_m3_h", -4.0), ("flow_m3_h", math.nan), ("envelope_pa", math.nan), ("seconds", 0.0)],
)
def test_a_value_that_no_point_can_have_is_named(field: str, value: float) -> None:
    points = list(run_of().points)
    points[2] = replace(points[2], **{field: value})  # type: ignore[arg-type]
    assert refusal(whole_test(replace(run_of(), points=tuple(points)))).startswith(
        f"runs[0].points[2].{field} is {value}"
    )


@pytest.mark.parametrize("field", ["volume_m3", "envelope_area_m2", "floor_area_m2", "height_m"])
def test_a_building_has_no_negative_size(field: str) -> None:
    building = replace(BUILDING, **{field: -1.0})  # type: ignore[arg-type]
    assert refusal(whole_test(building=building)).startswith(f"building.{field} is -1.0: a number greater than 0")


@pytest.mark.parametrize(
    ("field", "value"),
    [("indoor_c", 68.0), ("outdoor_c", math.nan), ("indoor_rh", 45.0), ("barometric_pa", 1013.25), ("wind_m_s", -1.0)],
)
def test_air_in_the_wrong_unit_is_refused(field: str, value: float) -> None:
    air = replace(STILL_AIR, **{field: value})
    assert refusal(whole_test(run_of(air=air))).startswith(f"runs[0].air.{field} is {value}: a number from ")


@pytest.mark.parametrize(
    ("zero", "start"),
    [
        (ZeroFlow(math.nan, None, None, 10), "runs[0].zero_before.mean_pa is nan"),
        (ZeroFlow(2.0, 1.0, -1.0, 10), "runs[0].zero_before.mean_pa is 2.0: a mean between"),
        (ZeroFlow(0.0, -1.0, None, 10), "runs[0].zero_before.positive_mean_pa is -1.0"),
        (ZeroFlow(0.0, None, 1.0, 10), "runs[0].zero_before.negative_mean_pa is 1.0"),
        (ZeroFlow(0.0, None, None, 0), "runs[0].zero_before.count is 0"),
        (ZeroFlow(0.0, None, None, 10, -5.0), "runs[0].zero_before.seconds is -5.0"),
    ],
)
def test_a_zero_record_that_cannot_be_is_named(zero: ZeroFlow, start: str) -> None:
    assert refusal(whole_test(replace(run_of(), zero_before=zero))).startswith(start)
