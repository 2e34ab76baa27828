"""What must hold for every test: scaling, order, direction, and never a number that is none."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.methods import analyse
from analysis.records import Air, Building, Direction, Estimate, Point, Run, RunResult, Test, TestResult, ZeroFlow
from tests.analysis.samples import STILL_AIR, run_of, whole_test

PRESSURES = st.lists(st.floats(5.0, 90.0), min_size=3, max_size=14, unique=True).filter(
    lambda values: max(values) > 1.2 * min(values)
)


@st.composite
def runs(draw: st.DrawFn) -> Run:
    """Draw a run with scattered flows and any air."""
    pressures = draw(PRESSURES)
    n, c = draw(st.floats(0.5, 0.9)), draw(st.floats(5.0, 500.0))
    scatter = draw(st.lists(st.floats(0.95, 1.05), min_size=len(pressures), max_size=len(pressures)))
    flows = [c * pressure**n * factor for pressure, factor in zip(pressures, scatter, strict=True)]
    air = Air(draw(st.floats(10, 30)), draw(st.floats(-20, 35)), None, None, draw(st.floats(80_000, 104_000)), 1.0)
    zero = ZeroFlow(draw(st.floats(-3, 3)), 3.0, -3.0, 600, 60.0)
    return run_of(pressures, flows, draw(st.sampled_from(Direction)), air, zero, zero)


def only_run(run: Run) -> RunResult:
    """Return the result of a run."""
    return analyse(whole_test(run)).runs[0]


def outcome(test: Test) -> TestResult | str:
    """Return the result of a test or the sentence that refuses it."""
    try:
        return analyse(test)
    except InvalidInput as refused:
        return str(refused)


def mirrored(run: Run) -> Run:
    """Return the same leaks in the other direction: pressures and air on both sides exchanged."""
    other = Direction.PRESSURIZE if run.direction is Direction.DEPRESSURIZE else Direction.DEPRESSURIZE
    air = replace(run.air, indoor_c=run.air.outdoor_c, outdoor_c=run.air.indoor_c)

    def turned(zero: ZeroFlow | None) -> ZeroFlow | None:
        if zero is None:
            return None
        return replace(zero, mean_pa=-zero.mean_pa, positive_mean_pa=3.0, negative_mean_pa=-3.0)

    points = tuple(replace(point, envelope_pa=-point.envelope_pa) for point in run.points)
    return Run(other, air, points, turned(run.zero_before), turned(run.zero_after))


@given(runs(), st.floats(0.1, 10.0))
def test_scaling_every_flow_scales_the_result_and_leaves_the_exponent(run: Run, factor: float) -> None:
    scaled = replace(run, points=tuple(replace(p, flow_m3_h=factor * p.flow_m3_h) for p in run.points))
    one, other = only_run(run), only_run(scaled)
    assert other.n.value == pytest.approx(one.n.value, rel=1e-9)
    assert other.q50_m3_h.value == pytest.approx(factor * one.q50_m3_h.value, rel=1e-9)
    assert other.q50_m3_h.high / other.q50_m3_h.value == pytest.approx(one.q50_m3_h.high / one.q50_m3_h.value, rel=1e-6)


@given(runs(), st.floats(0.5, 1.1))
def test_scaling_every_pressure_moves_the_line_along_itself(run: Run, factor: float) -> None:
    still = replace(run, zero_before=None, zero_after=None)
    scaled = replace(still, points=tuple(replace(p, envelope_pa=factor * p.envelope_pa) for p in run.points))
    magnitudes_ok = all(p.envelope_pa * run.direction.sign > 0 for p in run.points)
    if not magnitudes_ok:
        return
    one, other = only_run(still), only_run(scaled)
    assert other.n.value == pytest.approx(one.n.value, rel=1e-8)
    expected = one.c_env_m3_h_pa_n.value * factor**-one.n.value
    assert other.c_env_m3_h_pa_n.value == pytest.approx(expected, rel=1e-7)


@given(runs(), st.randoms(use_true_random=False))
def test_the_order_of_the_points_does_not_change_a_digit(run: Run, random: object) -> None:
    points = list(run.points)
    random.shuffle(points)  # type: ignore[attr-defined]
    one, other = only_run(run), only_run(replace(run, points=tuple(points)))
    assert (one.n, one.q50_m3_h, one.ela4_cm2, one.r2) == (other.n, other.q50_m3_h, other.ela4_cm2, other.r2)


@given(runs())
def test_exchanging_inside_and_outside_changes_nothing(run: Run) -> None:
    one, other = only_run(run), only_run(mirrored(run))
    assert other.n.value == pytest.approx(one.n.value, rel=1e-9)
    assert other.q50_m3_h.value == pytest.approx(one.q50_m3_h.value, rel=1e-9)
    assert [c.ok for c in one.checks] == [c.ok for c in other.checks]


@given(runs())
def test_points_taken_twice_leave_the_line_and_narrow_its_interval(run: Run) -> None:
    one, other = only_run(run), only_run(replace(run, points=run.points * 2))
    assert other.n.value == pytest.approx(one.n.value, rel=1e-8)
    assert other.q50_m3_h.half_width <= one.q50_m3_h.half_width * (1 + 1e-9)


@given(runs())
def test_the_same_test_gives_the_same_digits(run: Run) -> None:
    assert analyse(whole_test(run)) == analyse(whole_test(run))


ANY = st.floats(allow_nan=True, allow_infinity=True) | st.floats(-100, 100)
ANY_OR_NONE = ANY | st.none()


@st.composite
def anything(draw: st.DrawFn) -> Test:
    """Draw a test whose numbers may be anything."""
    point = st.builds(Point, envelope_pa=ANY, flow_m3_h=ANY, seconds=ANY_OR_NONE)
    zero = st.builds(ZeroFlow, ANY, ANY_OR_NONE, ANY_OR_NONE, st.integers(-1, 20)) | st.none()
    air = st.builds(Air, ANY, ANY, ANY_OR_NONE, ANY_OR_NONE, ANY_OR_NONE, ANY_OR_NONE) | st.just(STILL_AIR)
    directions = draw(st.lists(st.sampled_from(Direction), max_size=3))
    made = [
        Run(direction, draw(air), tuple(draw(st.lists(point, max_size=4))), draw(zero), draw(zero))
        for direction in directions
    ]
    return Test(Building("x", draw(ANY_OR_NONE)), tuple(made))


@given(anything())
def test_no_input_gives_anything_but_numbers_or_one_sentence(test: Test) -> None:
    result = outcome(test)
    if isinstance(result, str):
        assert "\n" not in result
        return
    for run in result.runs:
        for estimate in (run.n, run.c_env_m3_h_pa_n, run.c_l_m3_h_pa_n, run.q50_m3_h, run.ela4_cm2, run.eqla10_cm2):
            assert_is_a_number(estimate)
        assert math.isfinite(run.r2)
    assert_is_a_number(result.mean.q50_m3_h)


def assert_is_a_number(estimate: Estimate) -> None:
    """Check that the value is finite and lies within its interval."""
    assert math.isfinite(estimate.value)
    assert estimate.low <= estimate.value <= estimate.high
    assert not math.isnan(estimate.low)
    assert not math.isnan(estimate.high)


@given(PRESSURES, st.lists(st.floats(1e-6, 1e8), min_size=14, max_size=14))
def test_wild_flows_give_numbers_or_one_sentence(pressures: list[float], flows: list[float]) -> None:
    result = outcome(whole_test(run_of(pressures, flows[: len(pressures)])))
    if isinstance(result, str):
        assert "\n" not in result
        return
    run = result.runs[0]
    for estimate in (run.n, run.q50_m3_h, run.c_l_m3_h_pa_n, run.ela4_cm2):
        assert_is_a_number(estimate)
