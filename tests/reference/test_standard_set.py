"""A run of ten points worked out by hand from the formulas of ISO 9972 Annex C and ASTM E779 Annex A1.

The formulas are from memory; the numbers were worked out from them independently of this program and the fit was
cross-checked with scipy.stats.linregress to 1e-12. The points are a made-up depressurization.
"""

from __future__ import annotations

import math

import pytest
from scipy.stats import linregress

from analysis.air import density_at_elevation, sutherland_viscosity_pa_s
from analysis.estimators import estimator
from analysis.estimators.observations import Observations
from analysis.leastsquares import moments, straight_line
from analysis.methods import analyse
from analysis.methods.quantities import AreaConvention, leakage_area_cm2
from analysis.powerlaw import coefficient, exponent, flow_at, in_other_air, ln_flow_variance
from analysis.records import Air, Building, Direction, Estimate, Point, Run, RunResult, Test
from analysis.student import t_multiplier

PRESSURES_PA = (12.1, 17.3, 22.2, 27.4, 32.0, 37.5, 42.1, 47.6, 52.3, 57.9)
FLOWS_M3_H = (215.0, 268.0, 322.0, 362.0, 407.0, 446.0, 487.0, 520.0, 560.0, 592.0)
X = [math.log(value) for value in PRESSURES_PA]
Y = [math.log(value) for value in FLOWS_M3_H]
LINE = estimator("ols").fit(Observations(PRESSURES_PA, FLOWS_M3_H))


def printed(digits: int) -> float:
    """Return the tolerance of a number printed with so many decimals."""
    return 0.500001 * 10.0**-digits


def test_means_and_variances_of_the_logarithms() -> None:
    m = moments(X, Y)
    assert m.mean_x == pytest.approx(3.4463218350, abs=printed(10))
    assert m.mean_y == pytest.approx(5.9890489257, abs=printed(10))
    assert m.sxx / 9 == pytest.approx(0.2587933341, abs=printed(10))
    assert m.syy / 9 == pytest.approx(0.1099323052, abs=printed(10))
    assert m.sxy / 9 == pytest.approx(0.1686240003, abs=printed(10))


def test_exponent_coefficient_and_their_standard_errors() -> None:
    assert LINE.n == pytest.approx(0.6515778351, abs=printed(10))
    assert LINE.ln_c == pytest.approx(3.7435020053, abs=printed(10))
    assert math.exp(LINE.ln_c) == pytest.approx(42.24567600, abs=printed(8))
    assert LINE.r2 == pytest.approx(0.9994483502, abs=printed(10))
    assert math.sqrt(LINE.var_n) == pytest.approx(0.0054121879, abs=printed(10))
    assert math.sqrt(LINE.var_ln_c) == pytest.approx(0.0188341403, abs=printed(10))


def test_intervals_of_exponent_and_coefficient() -> None:
    n, c = exponent(LINE), coefficient(LINE)
    assert (n.low, n.high) == pytest.approx((0.639097, 0.664058), abs=printed(6))
    assert (c.low, c.high) == pytest.approx((40.45015, 44.12090), abs=printed(5))


@pytest.mark.parametrize(
    ("pressure", "flow", "s_y", "low", "high"),
    [
        (4, 104.24883, 0.01145113, 101.53203, 107.03833),
        (10, 189.39133, 0.00671863, 186.47967, 192.34846),
        (50, 540.49722, 0.00362977, 535.99200, 545.04030),
        (75, 703.93186, 0.00539007, 695.23647, 712.73601),
    ],
)
def test_flow_and_its_limits_at_a_pressure(pressure: float, flow: float, s_y: float, low: float, high: float) -> None:
    estimate = flow_at(LINE, pressure)
    assert math.sqrt(ln_flow_variance(LINE, pressure)) == pytest.approx(s_y, abs=printed(8))
    assert (estimate.value, estimate.low, estimate.high) == pytest.approx((flow, low, high), abs=printed(5))


def test_the_fit_agrees_with_a_general_purpose_library() -> None:
    """scipy.stats.linregress."""
    theirs, ours = linregress(X, Y), straight_line(X, Y)
    assert ours.slope == pytest.approx(theirs.slope, rel=1e-12)
    assert ours.intercept == pytest.approx(theirs.intercept, rel=1e-12)
    assert math.sqrt(LINE.var_n) == pytest.approx(theirs.stderr, rel=1e-10)
    assert math.sqrt(LINE.var_ln_c) == pytest.approx(theirs.intercept_stderr, rel=1e-10)
    assert ours.r2 == pytest.approx(theirs.rvalue**2, rel=1e-12)


def result() -> RunResult:
    """Return the result of the whole run: 21 degC indoors, 3 degC outdoors, at sea level."""
    points = tuple(Point(-pressure, flow) for pressure, flow in zip(PRESSURES_PA, FLOWS_M3_H, strict=True))
    run = Run(Direction.DEPRESSURIZE, Air(21.0, 3.0, barometric_pa=101_325.0), points)
    return analyse(Test(Building("made up", 300.0, 360.0, 120.0), (run,))).runs[0]


def value(estimate: Estimate | None) -> float:
    """Return the value of an estimate that must be there."""
    assert estimate is not None
    return estimate.value


def test_the_result_by_densities_agrees_with_the_one_by_ratios_of_temperatures() -> None:
    """Within 0.05 %: the density of dry air is not exactly 1.2041 kg/m3 at the reference."""
    run = result()
    assert run.c_env_m3_h_pa_n.value == pytest.approx(39.66052499, rel=5e-4)
    assert run.c_l_m3_h_pa_n.value == pytest.approx(40.49470317, rel=5e-4)
    assert run.q50_m3_h.value == pytest.approx(518.09502, rel=5e-4)
    assert value(run.n50_per_h) == pytest.approx(1.7269834, rel=5e-4)
    assert value(run.qe50_m3_h_m2) == pytest.approx(1.4391529, rel=5e-4)
    assert value(run.qf50_m3_h_m2) == pytest.approx(4.3174585, rel=5e-4)
    assert run.ela4_cm2.value == pytest.approx(107.6889, rel=5e-4)
    assert run.eqla10_cm2.value == pytest.approx(202.5110, rel=5e-4)


def test_the_envelope_flow_is_the_fan_flow_times_the_ratio_of_temperatures() -> None:
    """276.15 K / 294.15 K for dry air at one pressure."""
    factors = [flow / fan for flow, fan in zip(result().envelope_flow_m3_h, FLOWS_M3_H, strict=True)]
    assert factors == pytest.approx([0.93880673] * 10, abs=printed(8))


def test_leakage_areas_at_other_pressures() -> None:
    line = result().line
    assert line is not None
    reference = in_other_air(line, math.log(40.49470317 / 39.66052499), 0.0)
    at_10 = AreaConvention("ELA10", 10.0, 1.0, "effective leakage area at 10 Pa, discharge coefficient 1")
    at_50 = AreaConvention("ELA50", 50.0, 1.0, "effective leakage area at 50 Pa, discharge coefficient 1")
    assert leakage_area_cm2(reference, at_10).value == pytest.approx(123.7342, abs=printed(4))
    assert leakage_area_cm2(reference, at_50).value == pytest.approx(157.9204, abs=printed(4))


def test_the_conversion_with_viscosity() -> None:
    """ASTM E779 at elevation 0, formulas from memory: C0 = C (mu/mu0)**(2n-1) (rho/rho0)**(1-n)."""
    indoor, outdoor = density_at_elevation(21.0, 0.0), density_at_elevation(3.0, 0.0)
    assert (indoor, outdoor) == pytest.approx((1.2000044, 1.2782656), abs=printed(7))
    at_envelope = in_other_air(LINE, math.log(indoor / outdoor), 0.0)
    assert math.exp(at_envelope.ln_c) == pytest.approx(39.659206, abs=printed(6))
    viscosity = math.log(sutherland_viscosity_pa_s(276.0) / sutherland_viscosity_pa_s(293.0))
    density = math.log(outdoor / 1.2041)
    reference = in_other_air(at_envelope, density - viscosity, 2 * viscosity - density)
    assert math.exp(reference.ln_c) == pytest.approx(39.925739, abs=printed(6))
    ela4 = AreaConvention("ELA4", 4.0, 1.0, "effective leakage area at 4 Pa, discharge coefficient 1")
    assert leakage_area_cm2(reference, ela4).value == pytest.approx(106.1758, abs=printed(4))


def test_t_multipliers() -> None:
    """Two-sided 95 % multipliers of Student's t for 1 to 20 degrees of freedom (textbook table)."""
    table = (
        "12.706 4.303 3.182 2.776 2.571 2.447 2.365 2.306 2.262 2.228 "
        "2.201 2.179 2.160 2.145 2.131 2.120 2.110 2.101 2.093 2.086"
    )
    assert [t_multiplier(dof) for dof in range(1, 21)] == pytest.approx(
        [float(entry) for entry in table.split()], abs=printed(3)
    )
