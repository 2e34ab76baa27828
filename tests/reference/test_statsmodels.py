"""The fit against statsmodels: a stored set of numbers, and the library itself at the time of the test.

The points are made up (C about 104 m3/(h Pa^n), n about 0.65 with a little scatter). Stored numbers are those of
statsmodels 0.15.0.
"""

from __future__ import annotations

import math

import numpy as np
import pytest
import statsmodels.api as sm

from analysis.estimators import estimator
from analysis.estimators.observations import Observations
from analysis.methods import analyse
from analysis.methods.quantities import ELA4, leakage_area_cm2
from analysis.powerlaw import coefficient, exponent, flow_at, further_reading_at
from analysis.records import Direction, PowerLaw
from analysis.student import t_multiplier
from tests.analysis.samples import FLOWS_M3_H, PRESSURES_PA, run_of, whole_test

LINE = estimator("ols").fit(Observations(PRESSURES_PA, FLOWS_M3_H))


def test_parameters_and_their_covariance() -> None:
    assert LINE.n == pytest.approx(0.6516266518, rel=1e-9)
    assert LINE.ln_c == pytest.approx(4.6457302408, rel=1e-10)
    assert math.exp(LINE.ln_c) == pytest.approx(104.13938486, rel=1e-10)
    assert math.sqrt(LINE.var_n) == pytest.approx(0.0019758733, rel=1e-7)
    assert math.sqrt(LINE.var_ln_c) == pytest.approx(0.0068653401, rel=1e-7)
    assert LINE.cov_ln_c_n == pytest.approx(-1.3399690855e-05, rel=1e-9)
    assert LINE.r2 == pytest.approx(0.9999264507, rel=1e-9)
    assert LINE.residual_sd == pytest.approx(0.0033794269, rel=1e-7)
    assert t_multiplier(8) == pytest.approx(2.30600414, rel=1e-8)


def test_intervals_of_the_parameters() -> None:
    n, c = exponent(LINE), coefficient(LINE)
    assert (n.low, n.high) == pytest.approx((0.64707028, 0.65618302), rel=1e-8)
    assert (c.low, c.high) == pytest.approx((102.503684, 105.801188), rel=1e-8)


@pytest.mark.parametrize(
    ("pressure", "flow", "mean_low", "mean_high", "reading_low", "reading_high"),
    [
        (50, 1332.628642, 1328.245848, 1337.025899, 1321.401306, 1343.951373),
        (10, 466.919122, 464.262177, 469.591271, 462.430868, 471.450938),
        (4, 257.000131, 254.533971, 259.490185, 253.833578, 260.206186),
    ],
)
def test_confidence_of_the_line_and_prediction_of_a_reading_are_not_confused(
    pressure: float, flow: float, mean_low: float, mean_high: float, reading_low: float, reading_high: float
) -> None:
    line, reading = flow_at(LINE, pressure), further_reading_at(LINE, pressure)
    assert (line.value, line.low, line.high) == pytest.approx((flow, mean_low, mean_high), rel=1e-8)
    assert (reading.low, reading.high) == pytest.approx((reading_low, reading_high), rel=1e-8)


def test_leakage_area_at_four_pascal() -> None:
    """q4/(2*4/1.2041)**0.5 with discharge coefficient 1."""
    assert leakage_area_cm2(LINE, ELA4).value == pytest.approx(276.96005, rel=1e-7)


def test_a_test_in_reference_air_reports_these_numbers() -> None:
    run = analyse(whole_test(run_of(direction=Direction.PRESSURIZE))).runs[0]
    assert run.n.low == pytest.approx(0.64707028, rel=1e-8)
    q50 = run.q50_m3_h
    assert (q50.value, q50.low, q50.high) == pytest.approx((1332.628642, 1328.245848, 1337.025899), rel=2e-6)


@pytest.mark.parametrize("seed", range(20))
def test_any_points_give_what_the_library_gives(seed: int) -> None:
    rng = np.random.default_rng(seed)
    count = int(rng.integers(3, 25))
    pressures = np.sort(rng.uniform(4.0, 100.0, count))
    flows = rng.uniform(1.0, 900.0) * pressures ** rng.uniform(0.45, 1.0) * rng.lognormal(0.0, 0.05, count)
    ours = estimator("ols").fit(Observations(tuple(pressures.tolist()), tuple(flows.tolist())))
    theirs = sm.OLS(np.log(flows), sm.add_constant(np.log(pressures))).fit()
    assert (ours.ln_c, ours.n) == pytest.approx(theirs.params, rel=1e-9)
    covariance = [[ours.var_ln_c, ours.cov_ln_c_n], [ours.cov_ln_c_n, ours.var_n]]
    assert np.array(covariance) == pytest.approx(theirs.cov_params(), rel=1e-9)
    assert ours.r2 == pytest.approx(theirs.rsquared, rel=1e-9)
    n = exponent(ours)
    assert (n.low, n.high) == pytest.approx(theirs.conf_int()[1], rel=1e-9)
    assert_same_limits(ours, theirs)


def assert_same_limits(ours: PowerLaw, theirs: sm.regression.linear_model.RegressionResultsWrapper) -> None:
    """Check confidence and prediction limits at three pressures to 1e-9."""
    for pressure in (4.0, 10.0, 50.0):
        frame = theirs.get_prediction([[1.0, math.log(pressure)]]).summary_frame(alpha=0.05)
        line, reading = flow_at(ours, pressure), further_reading_at(ours, pressure)
        assert math.log(line.low) == pytest.approx(frame["mean_ci_lower"].iloc[0], rel=1e-9)
        assert math.log(line.high) == pytest.approx(frame["mean_ci_upper"].iloc[0], rel=1e-9)
        assert math.log(reading.low) == pytest.approx(frame["obs_ci_lower"].iloc[0], rel=1e-9)
        assert math.log(reading.high) == pytest.approx(frame["obs_ci_upper"].iloc[0], rel=1e-9)
