"""Generalized least squares with the error of the zero-flow pressure in common."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.estimators import estimator, fit_ids
from analysis.estimators.observations import Observations, PointNoise, ZeroParts
from analysis.methods import analyse
from analysis.powerlaw import flow_at, ln_flow_variance
from analysis.records import Direction, Limit, Point
from tests.analysis.samples import FLOWS_M3_H, PRESSURES_PA, whole_test
from tests.analysis.test_noise import measured


def points(zero_u_pa: float) -> Observations:
    """Return the sample points with an uncertainty of the zero-flow pressure."""
    return Observations(
        PRESSURES_PA, FLOWS_M3_H, PointNoise((0.3,) * 10, (0.005,) * 10, ZeroParts(zero_u_pa, 0.0, 0.0))
    )


def test_without_a_common_error_it_is_weighted_least_squares() -> None:
    common, single = estimator("gls").fit(points(0.0)), estimator("wls").fit(points(0.0))
    assert (common.n, common.ln_c) == pytest.approx((single.n, single.ln_c), rel=1e-11)
    assert (common.var_n, common.var_ln_c, common.cov_ln_c_n) == pytest.approx(
        (single.var_n, single.var_ln_c, single.cov_ln_c_n), rel=1e-9
    )


@given(st.floats(0.0, 2.0), st.floats(0.05, 2.0))
def test_a_less_sure_zero_flow_pressure_makes_every_flow_less_sure(zero_u_pa: float, more_pa: float) -> None:
    less, more = (estimator("gls").fit(points(value)) for value in (zero_u_pa, zero_u_pa + more_pa))
    for pressure in (4.0, 10.0, 50.0):
        assert ln_flow_variance(more, pressure) > ln_flow_variance(less, pressure) * (1 - 1e-6)


def test_the_common_error_counts_most_where_the_pressure_is_low() -> None:
    without, with_error = (estimator("gls").fit(points(value)) for value in (0.0, 0.5))
    gain = [flow_at(with_error, p).half_width / flow_at(without, p).half_width for p in (4.0, 10.0, 50.0)]
    assert gain[0] > gain[2] > 1.0


def test_an_error_of_the_zero_flow_pressure_is_seen_in_the_curvature_of_the_points() -> None:
    """All pressures 1 Pa too high: on a log scale the line bends, and the bend tells how much to trust low points."""
    flows = tuple(100.0 * (pressure - 1.0) ** 0.65 for pressure in PRESSURES_PA)
    shifted = Observations(PRESSURES_PA, flows, PointNoise((0.02,) * 10, (0.001,) * 10, ZeroParts(1.0, 0.0, 0.0)))
    plain, honest = estimator("ols").fit(shifted), estimator("gls").fit(shifted)
    assert abs(honest.n - 0.65) < 0.2 * abs(plain.n - 0.65)


@given(st.permutations(range(10)))
def test_the_order_of_the_points_does_not_change_a_digit(order: list[int]) -> None:
    whole = points(0.4)
    shuffled = replace(
        whole,
        pressure_pa=tuple(PRESSURES_PA[at] for at in order),
        flow_m3_h=tuple(FLOWS_M3_H[at] for at in order),
    )
    assert estimator("gls").fit(shuffled) == estimator("gls").fit(whole)


def test_a_test_is_analysed_by_it_with_a_wider_interval_than_officially() -> None:
    test = whole_test(measured(), replace(measured(), direction=Direction.PRESSURIZE, points=mirrored_points()))
    limit = Limit("target", "n50_per_h", 4.5)
    official, honest = analyse(test, limits=[limit]), analyse(test, fit="gls", limits=[limit])
    assert honest.fit == "gls"
    assert honest.mean.q50_m3_h.half_width > official.mean.q50_m3_h.half_width
    assert honest.mean.q50_m3_h.value == pytest.approx(official.mean.q50_m3_h.value, rel=0.01)
    assert 0.5 < honest.verdicts[0].probability < official.verdicts[0].probability


def mirrored_points() -> tuple[Point, ...]:
    """Return the points of the measured run on the other side of zero."""
    return tuple(replace(point, envelope_pa=-point.envelope_pa) for point in measured().points)


def test_a_record_without_spreads_is_refused_in_one_sentence() -> None:
    with pytest.raises(InvalidInput, match=r"^runs\[0\]\.points\[0\]\.envelope_sd_pa is missing: the fit gls weighs"):
        analyse(whole_test(), fit="gls")


def test_the_estimators_are_these() -> None:
    assert fit_ids() == ("ols", "wls", "wloc", "gls", "assumed-exponent", "two-stations")
