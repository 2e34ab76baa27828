"""The leakage line by ordinary least squares and what it says at a pressure."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.estimators import estimator, fit_ids
from analysis.estimators.observations import Observations
from analysis.powerlaw import coefficient, exponent, flow_at, further_reading_at, in_other_air, ln_flow_variance
from analysis.records import PowerLaw
from tests.analysis.samples import FLOWS_M3_H, PRESSURES_PA

LINE = estimator("ols").fit(Observations(PRESSURES_PA, FLOWS_M3_H))


def test_a_line_without_scatter_is_found_exactly_and_is_sure() -> None:
    pressures = (10.0, 20.0, 35.0, 50.0)
    line = estimator("ols").fit(Observations(pressures, tuple(100.0 * p**0.65 for p in pressures)))
    assert (line.n, math.exp(line.ln_c), line.r2) == pytest.approx((0.65, 100.0, 1.0), rel=1e-12)
    assert flow_at(line, 4.0).half_width < 1e-6


def test_two_points_give_a_line_without_an_interval() -> None:
    line = estimator("ols").fit(Observations((10.0, 50.0), (400.0, 1200.0)))
    flow = flow_at(line, 50.0)
    assert line.dof == 0
    assert flow.value == pytest.approx(1200.0)
    assert (flow.low, flow.high) == (0.0, math.inf)
    assert (exponent(line).low, exponent(line).high) == (-math.inf, math.inf)
    assert coefficient(line).high == math.inf


def test_flows_that_do_not_change_have_exponent_zero_and_explain_nothing() -> None:
    line = estimator("ols").fit(Observations((10.0, 20.0, 50.0), (400.0, 400.0, 400.0)))
    assert (line.n, line.r2) == (0.0, 0.0)


def test_a_pressure_outside_the_measured_ones_is_extrapolated() -> None:
    assert not flow_at(LINE, 50.0).extrapolated
    assert not flow_at(LINE, PRESSURES_PA[-1]).extrapolated
    assert flow_at(LINE, 4.0).extrapolated
    assert flow_at(LINE, 75.0).extrapolated


def test_the_interval_is_narrowest_in_the_middle_of_the_points() -> None:
    middle = math.exp(math.fsum(map(math.log, PRESSURES_PA)) / len(PRESSURES_PA))
    assert ln_flow_variance(LINE, middle) < ln_flow_variance(LINE, 60.0) < ln_flow_variance(LINE, 4.0)
    assert ln_flow_variance(LINE, middle) == pytest.approx(LINE.residual_sd**2 / len(PRESSURES_PA), rel=1e-9)


def test_one_further_reading_is_less_sure_than_the_line() -> None:
    assert further_reading_at(LINE, 50.0).half_width > 2 * flow_at(LINE, 50.0).half_width


@given(st.floats(-0.3, 0.3), st.floats(-0.3, 0.3), st.floats(1.0, 100.0))
def test_a_conversion_moves_every_flow_and_its_variance_exactly(constant: float, per_n: float, pressure: float) -> None:
    moved = in_other_air(LINE, constant, per_n)
    shifted = pressure * math.exp(per_n)
    expected = flow_at(LINE, shifted).value * math.exp(constant)
    assert flow_at(moved, pressure).value == pytest.approx(expected, rel=1e-12)
    assert ln_flow_variance(moved, pressure) == pytest.approx(ln_flow_variance(LINE, shifted), rel=1e-6)


def test_an_unknown_estimator_lists_those_there_are() -> None:
    with pytest.raises(InvalidInput, match=rf"^fit is 'best': one of {', '.join(fit_ids())} is needed$"):
        estimator("best")


def test_a_wide_interval_stays_above_zero_and_finite_or_infinite_but_never_a_number_too_large() -> None:
    line = PowerLaw(5.0, 0.6, 1e6, 0.0, 0.0, 1.0, 0.5, 1.0, 10.0, 50.0)
    flow = flow_at(line, 50.0)
    assert flow.low >= 0.0
    assert flow.high == math.inf
