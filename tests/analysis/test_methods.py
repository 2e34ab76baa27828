"""The methods side by side: what each asks for, and what it makes of the same readings."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.air import density_at_elevation, viscosity_pa_s
from analysis.effective import QUANTITIES
from analysis.errors import InvalidInput
from analysis.estimators import assumed, estimator, stations
from analysis.estimators.observations import Observations
from analysis.methods import analyse, method_ids, method_of
from analysis.records import Air, Building, Check, Direction, Point, Run, Test, TestResult, ZeroFlow
from tests.analysis.samples import BUILDING, check_of

# Computed reference set of ours: induced pressures and fan flows, 21 degC indoors and 3 degC outdoors, sea level.
INDUCED_PA = (12.1, 17.3, 22.2, 27.4, 32.0, 37.5, 42.1, 47.6, 52.3, 57.9)
FAN_M3_H = (215.0, 268.0, 322.0, 362.0, 407.0, 446.0, 487.0, 520.0, 560.0, 592.0)
COLD = Air(21.0, 3.0, wind_m_s=1.0)
MILD = Air(21.0, 18.0, wind_m_s=1.0)
STILL = ZeroFlow(0.0, None, None, 100, 60.0)


def a_run(
    pressures: tuple[float, ...] = INDUCED_PA,
    flows: tuple[float, ...] = FAN_M3_H,
    direction: Direction = Direction.DEPRESSURIZE,
    air: Air = COLD,
    after: ZeroFlow | None = STILL,
) -> Run:
    points = tuple(Point(direction.sign * p, q, 30.0) for p, q in zip(pressures, flows, strict=True))
    return Run(direction, air, points, STILL, after)


def a_test(*runs: Run, building: Building = BUILDING) -> Test:
    return Test(building, runs)


def failed(result: TestResult, at: int = 0) -> set[str]:
    return {check.id for check in result.runs[at].checks if check.ok is False}


def by_id(result: TestResult, check_id: str) -> Check:
    return check_of(result, check_id)


def test_the_methods_are_these_and_say_what_they_ask_for() -> None:
    assert method_ids() == (
        "iso9972", "astm-e779", "astm-e1827-single", "astm-e1827-two", "cgsb-149.10", "resnet-380-single",
        "resnet-380-multi", "astm-e3158",
    )  # fmt: skip
    for name in method_ids():
        method = method_of(name)
        rules = method.requirements()
        assert {rule.id for rule in rules} == set(method.measures)
        assert all(rule.source and rule.confidence in ("high", "medium", "low") and not rule.verified for rule in rules)
        assert set(method.reports) <= set(QUANTITIES)
        assert method.not_in_record
        assert len(method.sequence.targets_pa) >= method.fewest_points


@pytest.mark.parametrize("name", method_ids())
def test_a_test_made_by_the_sequence_of_a_method_meets_its_checks(name: str) -> None:
    method = method_of(name)
    plan = method.sequence
    wiggle = (1.001, 0.999, 1.0005, 0.9995, 1.0, 1.0, 1.001, 0.999, 1.0, 1.0)
    runs = []
    for way in plan.directions:
        zero = ZeroFlow(-0.2, 0.1, -0.3, 300, plan.zero_s)
        points = tuple(
            Point(way.sign * p - 0.2, 50.0 * p**0.65 * wiggle[at % 10], plan.average_s, p, 200)
            for at, p in enumerate(plan.targets_pa)
        )
        runs.append(Run(way, MILD, points, zero, zero))
    result = analyse(Test(BUILDING, tuple(runs)), name)
    for run in result.runs:
        assert [check for check in run.checks if check.ok is not True] == []
    assert result.valid


def test_e779_is_the_worked_set_and_lies_off_iso_by_the_viscosity() -> None:
    result = analyse(a_test(a_run()), "astm-e779").runs[0]
    # Computed from the formulas in the standard as remembered: C 39.659206, C0 39.925739, A_L(4 Pa) 106.1758 cm2.
    assert result.c_env_m3_h_pa_n.value == pytest.approx(39.659206, rel=1e-6)
    assert result.c_l_m3_h_pa_n.value == pytest.approx(39.925739, rel=1e-5)
    assert result.ela4_cm2.value == pytest.approx(106.1758, rel=1e-5)
    iso = analyse(a_test(a_run())).runs[0]
    assert iso.c_l_m3_h_pa_n.value / result.c_l_m3_h_pa_n.value == pytest.approx(40.495 / 39.926, rel=1e-3)


def test_e779_wants_both_directions() -> None:
    assert failed(analyse(a_test(a_run()), "astm-e779")) == {"both-directions"}
    both = a_test(a_run(), a_run(direction=Direction.PRESSURIZE))
    assert not failed(analyse(both, "astm-e779"))
    open_run = analyse(a_test(a_run(after=None)), "astm-e779")
    assert by_id(open_run, "both-directions").ok is None


def test_e779_takes_the_barometer_where_there_is_one() -> None:
    low = a_run(air=replace(COLD, barometric_pa=84_000.0))
    c0 = analyse(a_test(low), "astm-e779").runs[0].c_l_m3_h_pa_n.value
    # ln C0 = ln C + (1 - n) ln(rho/rho0) + (2n - 1) ln(mu/mu0); n 0.6515778351 and C 39.659206 as above, by hand.
    rho = density_at_elevation(3.0, 0.0) * 84_000.0 / 101_325.0
    mu = viscosity_pa_s(3.0) / viscosity_pa_s(20.0)
    n = 0.6515778351
    assert c0 == pytest.approx(39.659206 * mu ** (2 * n - 1) * (rho / 1.2041) ** (1 - n), rel=1e-6)


def test_a_single_point_assumes_the_exponent() -> None:
    run = Run(Direction.DEPRESSURIZE, MILD, (Point(-50.0, 1000.0, 30.0),), STILL, STILL)
    result = analyse(a_test(run), "resnet-380-single")
    # CFM50 = Q (50/dp)^0.65 at exactly 50 Pa is Q: nothing to correct at 3 K and sea level.
    assert result.mean.q50_m3_h.value == pytest.approx(1000.0, rel=1e-9)
    assert result.mean.n50_per_h is not None
    assert result.mean.n50_per_h.value == pytest.approx(1000.0 / 300.0, rel=1e-9)
    assert result.mean.q50_m3_h.high == math.inf
    at_40 = replace(run, points=(Point(-40.0, 1000.0, 30.0),))
    lower = analyse(a_test(at_40), "resnet-380-single")
    assert lower.mean.q50_m3_h.value == pytest.approx(1000.0 * 1.25**0.65, rel=1e-9)
    assert "has to be said" in by_id(lower, "near-pressure").text
    weak = analyse(a_test(replace(run, points=(Point(-12.0, 1000.0, 30.0),))), "resnet-380-single")
    assert failed(weak) == {"near-pressure"}


def test_resnet_corrects_only_high_up_or_with_a_large_difference() -> None:
    run = Run(Direction.DEPRESSURIZE, COLD, (Point(-50.0, 1000.0, 30.0),), STILL, STILL)
    beyond = analyse(a_test(run), "resnet-380-single").mean.q50_m3_h.value
    assert beyond == pytest.approx(analyse(a_test(run), "astm-e1827-single").mean.q50_m3_h.value, rel=1e-12)
    assert beyond < 960.0
    high = replace(BUILDING, altitude_m=1600.0)
    up_there = analyse(a_test(replace(run, air=MILD), building=high), "resnet-380-single").mean.q50_m3_h.value
    assert up_there != pytest.approx(1000.0, rel=1e-3)


def test_repeated_readings_give_a_single_point_its_interval() -> None:
    flows = (1000.0, 1010.0, 990.0, 1005.0, 995.0)
    points = tuple(Point(-50.0, flow, 20.0) for flow in flows)
    result = analyse(a_test(Run(Direction.DEPRESSURIZE, Air(20.0, 20.0), points, STILL, STILL)), "astm-e1827-single")
    q50 = result.mean.q50_m3_h
    # t(0.975, 4) = 2.776445 (tables); sd of ln q 0.0079062 by hand; half width 2.776445 x 0.0079062/5^0.5.
    assert math.log(q50.high / q50.value) == pytest.approx(2.776445 * 0.0079062 / math.sqrt(5.0), rel=1e-3)
    # Carried to 4 Pa the assumption of the exponent alone is worth ln(12.5) x 0.05 = 12.6 %.
    line = result.runs[0].reference_line
    assert line is not None
    u4 = math.sqrt(line.var_ln_c + 2 * math.log(4.0) * line.cov_ln_c_n + math.log(4.0) ** 2 * line.var_n)
    assert u4 == pytest.approx(0.1263, rel=0.01)


def test_two_stations_give_the_exponent_of_their_means() -> None:
    points = tuple(Point(-p, q, 20.0) for p, q in ((50.0, 1000.0), (50.0, 1002.0), (12.5, 400.0), (12.5, 404.0)))
    result = analyse(a_test(Run(Direction.DEPRESSURIZE, MILD, points, STILL, STILL)), "astm-e1827-two")
    # n = ln(1001/402)/ln 4, by hand 0.65808.
    assert result.runs[0].n.value == pytest.approx(math.log(1001.0 / 402.0) / math.log(4.0), rel=1e-9)
    assert failed(result) == {"station-readings"}
    # u(n)^2 = [(uQ1/Q1)^2 + (uQ2/Q2)^2]/ln^2(P1/P2) (propagation): means of two readings 2 and 4 apart.
    line = stations.fit(Observations((50.0, 50.0, 12.5, 12.5), (1000.0, 1002.0, 400.0, 404.0)))
    u_n = math.hypot(1.0 / 1001.0, 2.0 / 402.0) / math.log(4.0)
    assert math.sqrt(line.var_n) == pytest.approx(u_n, rel=1e-9)


def test_pressures_that_make_no_two_stations_are_refused() -> None:
    points = tuple(Point(-p, 900.0 + p, 20.0) for p in (50.0, 49.0, 51.0))
    with pytest.raises(InvalidInput, match="two stations"):
        analyse(a_test(Run(Direction.DEPRESSURIZE, MILD, points, STILL, STILL)), "astm-e1827-two")


def test_cgsb_counts_points_looks_at_the_scatter_and_wants_depressurization() -> None:
    result = analyse(a_test(a_run(direction=Direction.PRESSURIZE)), "cgsb-149.10")
    assert "depressurized" in failed(result)
    targets = method_of("cgsb-149.10").sequence.targets_pa
    rough = tuple(50.0 * p**0.65 * (1.3 if at % 2 else 0.75) for at, p in enumerate(targets))
    scattered = analyse(a_test(a_run(targets, rough, air=replace(MILD, wind_m_s=7.0))), "cgsb-149.10")
    assert failed(scattered) >= {"correlation", "standard-error", "wind"}


def test_resnet_multi_tells_reduced_accuracy() -> None:
    targets = method_of("resnet-380-multi").sequence.targets_pa
    rough = tuple(50.0 * p**0.65 * (1.2 if at % 2 else 0.85) for at, p in enumerate(targets))
    result = analyse(a_test(a_run(targets, rough, air=MILD)), "resnet-380-multi")
    assert failed(result) == {"accuracy"}


def test_e3158_looks_at_the_share_of_the_zero_flow_pressure() -> None:
    targets = method_of("astm-e3158").sequence.targets_pa
    zero = ZeroFlow(9.0, 9.0, None, 300, 60.0)
    points = tuple(Point(p + 9.0, 50.0 * p**0.65, 20.0) for p in targets)
    result = analyse(a_test(Run(Direction.PRESSURIZE, MILD, points, zero, zero)), "astm-e3158")
    # 9 of 25 Pa are 36 %.
    assert failed(result) == {"zero-share"}
    assert by_id(result, "zero-share").value == pytest.approx(36.0)


@given(st.floats(5.0, 100.0), st.floats(10.0, 1e5))
def test_an_assumed_line_goes_through_its_only_point(pressure: float, flow: float) -> None:
    line = assumed.fit(Observations((pressure,), (flow,)))
    assert math.exp(line.ln_c) * pressure**line.n == pytest.approx(flow, rel=1e-9)
    assert line.dof == 0


@pytest.mark.parametrize("name", method_ids())
@given(scale=st.floats(0.1, 50.0))
def test_flows_scale_through_every_method(name: str, scale: float) -> None:
    targets = method_of(name).sequence.targets_pa
    flows = tuple(40.0 * p**0.6 for p in targets)
    one = analyse(a_test(a_run(targets, flows, air=COLD)), name)
    other = analyse(a_test(a_run(targets, tuple(scale * q for q in flows), air=COLD)), name)
    assert other.mean.q50_m3_h.value == pytest.approx(scale * one.mean.q50_m3_h.value, rel=1e-9)
    assert [check.ok for check in other.runs[0].checks] == [check.ok for check in one.runs[0].checks]


def test_every_estimator_has_a_name_for_people() -> None:
    assert estimator("assumed-exponent").TITLE == "assumed flow exponent of 0.65"
    assert estimator("two-stations").TITLE == "line through two stations"
