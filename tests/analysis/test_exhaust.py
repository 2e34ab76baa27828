"""Exhaust fans: how far they lower the pressure, and what is said beside it."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.estimators import estimator
from analysis.estimators.observations import Observations
from analysis.exhaust import CAUTION, appliances, depressurization, read_appliances, tightest_q50_m3_h
from analysis.powerlaw import flow_at
from analysis.records import PowerLaw
from analysis.uncertain import Measured
from tests.analysis.samples import FLOWS_M3_H, PRESSURES_PA

LINE = estimator("ols").fit(Observations(PRESSURES_PA, FLOWS_M3_H))


@given(st.floats(0.5, 80.0))
def test_fans_that_exhaust_what_leaks_at_a_pressure_make_that_pressure(pressure: float) -> None:
    exhaust = Measured(flow_at(LINE, pressure).value)
    assert depressurization(LINE, exhaust).pressure_pa.value == pytest.approx(pressure, rel=1e-9)


@given(st.floats(50.0, 1000.0), st.floats(1.001, 3.0))
def test_more_exhaust_lowers_the_pressure_more_and_is_borne_less_probably(exhaust: float, factor: float) -> None:
    less, more = (depressurization(LINE, Measured(flow, 0.05 * flow)) for flow in (exhaust, exhaust * factor))
    assert more.pressure_pa.value > less.pressure_pa.value
    assert all(a.probability >= b.probability for a, b in zip(less.borne, more.borne, strict=True))


def test_the_interval_follows_from_line_and_exhaust_together() -> None:
    """Against draws of ln C, n and the exhaust (JCGM 101)."""
    exhaust = Measured(300.0, 15.0)
    rng = np.random.default_rng(1)
    covariance = [[LINE.var_ln_c, LINE.cov_ln_c_n], [LINE.cov_ln_c_n, LINE.var_n]]
    line = replace(LINE, dof=math.inf)
    ln_c, n = rng.multivariate_normal([LINE.ln_c, LINE.n], covariance, 200_000).T
    ln_flow = math.log(300.0) + 0.05 * rng.standard_normal(200_000)
    low, high = np.exp(np.quantile((ln_flow - ln_c) / n, [0.025, 0.975]))
    found = depressurization(line, exhaust).pressure_pa
    assert (found.low, found.high) == pytest.approx((low, high), rel=5e-3)


def test_an_estimate_below_the_measured_pressures_says_so() -> None:
    assert depressurization(LINE, Measured(200.0)).pressure_pa.extrapolated
    assert not depressurization(LINE, Measured(flow_at(LINE, 30.0).value)).pressure_pa.extrapolated


def test_the_tightest_house_is_the_one_that_just_bears_the_fans() -> None:
    q50 = tightest_q50_m3_h(300.0, 5.0, 0.65)
    line = PowerLaw(math.log(q50 / 50.0**0.65), 0.65, 0.0, 0.0, 0.0, math.inf, 1.0, 0.0, 10.0, 60.0)
    assert depressurization(line, Measured(300.0)).pressure_pa.value == pytest.approx(5.0)


def test_a_line_through_two_points_gives_a_value_without_interval_and_settles_nothing() -> None:
    two = estimator("ols").fit(Observations(PRESSURES_PA[:2], FLOWS_M3_H[:2]))
    found = depressurization(two, Measured(300.0))
    assert found.pressure_pa.high == math.inf
    assert {item.verdict for item in found.borne} == {"cannot tell"}


def test_the_caution_stands_with_every_estimate_and_defers_to_code_and_licence() -> None:
    assert depressurization(LINE, Measured(300.0)).caution == CAUTION
    assert "local code" in CAUTION
    assert "licensed" in CAUTION
    assert "does not show that an appliance is safe" in CAUTION


def test_every_appliance_says_where_its_limit_is_from() -> None:
    assert len(appliances()) == 7
    assert all(item.provenance.words.endswith("not checked against the document") for item in appliances())


@pytest.mark.parametrize(
    ("exhaust", "sentence"),
    [
        (Measured(0.0), "exhaust_m3_h is 0.0: a number greater than 0 is needed"),
        (Measured(math.nan), "exhaust_m3_h is nan: a number greater than 0 is needed"),
        (Measured(-5.0), "exhaust_m3_h is -5.0: a number greater than 0 is needed"),
    ],
)
def test_an_exhaust_is_a_number_above_zero(exhaust: Measured, sentence: str) -> None:
    with pytest.raises(InvalidInput) as refused:
        depressurization(LINE, exhaust)
    assert str(refused.value) == sentence


def test_a_line_with_an_exponent_that_no_leak_has_is_refused() -> None:
    with pytest.raises(InvalidInput, match=r"^n is -0.1: a number from 0.3 to 1.5 is needed$"):
        depressurization(replace(LINE, n=-0.1), Measured(300.0))


def test_a_limit_in_an_own_file_is_above_zero() -> None:
    text = '[[appliance]]\nid = "a"\ntitle = "t"\nlimit_pa = 0\nplace = "p"\nsource = "s"\nconfidence = "low"\n'
    with pytest.raises(InvalidInput, match=r"^own.toml: appliance\[0\].limit_pa is 0.0: a number greater than 0"):
        read_appliances(text + "verified = false\n", "own.toml")
