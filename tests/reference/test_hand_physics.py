"""Physics that can be checked with a pocket calculator, and round numbers of the trade."""

from __future__ import annotations

import math

import pytest

from analysis.air import REFERENCE_DENSITY_KG_M3, moist_air_density, viscosity_pa_s
from analysis.flow import to_envelope
from analysis.methods import analyse
from analysis.methods.quantities import ELA4, EQLA10, AreaConvention, leakage_area_cm2
from analysis.powerlaw import flow_at, in_other_air
from analysis.records import Air, Building, Direction, Point, PowerLaw, Run, Test, ZeroFlow
from analysis.units import Display, Quantity, System, to_display

US = Display(System.US)


def law(c_m3_h: float, n: float) -> PowerLaw:
    """Return a line without uncertainty."""
    return PowerLaw(math.log(c_m3_h), n, 0.0, 0.0, 0.0, math.inf, 1.0, 0.0, 10.0, 60.0)


def test_density_of_dry_air_at_two_temperatures() -> None:
    """p/(287.055 T), ideal gas."""
    assert moist_air_density(20.0, None, 101_325.0) == pytest.approx(1.204097, abs=5e-7)
    assert moist_air_density(-5.0, None, 101_325.0) == pytest.approx(1.316357, abs=5e-7)


def test_a_thousand_cubic_metres_leave_warm_and_enter_cold() -> None:
    """1000 m3/h at 20 degC through the fan, 273.15/293.15 of it through leaks at 0 degC: conservation of mass."""
    indoor, outdoor = (moist_air_density(celsius, None, 101_325.0) for celsius in (20.0, 0.0))
    assert to_envelope(1000.0, Direction.DEPRESSURIZE, indoor, outdoor) == pytest.approx(931.77554, abs=5e-6)


def test_cold_air_to_reference_with_density_and_viscosity() -> None:
    """(mu/mu0)**(2n-1) (rho/rho0)**(1-n) from 0 degC to 20 degC at n = 0.65."""
    viscosity = math.log(viscosity_pa_s(0.0) / viscosity_pa_s(20.0))
    density = math.log(293.15 / 273.15)
    line = in_other_air(law(1.0, 0.65), density - viscosity, 2 * viscosity - density)
    assert math.exp(line.ln_c) == pytest.approx(1.00821636, abs=5e-9)


def run_with_zero(zero_pa: float) -> Run:
    """Return a run over a power law of n = 0.65 at 48 to 52 Pa, all points off by the zero-flow pressure given."""
    points = tuple(Point(pa, 100.0 * pa**0.65) for pa in (48.0, 49.0, 50.0, 51.0, 52.0))
    zero = ZeroFlow(zero_pa, max(zero_pa, 0.0), min(zero_pa, 0.0), 100, 60.0)
    return Run(Direction.PRESSURIZE, Air(20.0, 20.0, barometric_pa=101_325.0), points, zero, zero)


def test_a_pascal_of_baseline_moves_q50_by_n_over_fifty() -> None:
    """dq/q = n d(dp)/dp: 1.3 % per pascal at 50 Pa and n = 0.65 (linear)."""
    step = 0.01
    low, high = (analyse(Test(Building("x"), (run_with_zero(zero),))).mean.q50_m3_h.value for zero in (-step, step))
    assert (high - low) / (2 * step) / (100.0 * 50**0.65) == pytest.approx(0.0130, rel=2e-3)


def test_a_sharp_hole_of_one_square_centimetre_passes_two_cubic_metres_an_hour() -> None:
    """Flow Cd A (2 dp/rho)**0.5 with Cd 0.611 at 50 Pa: 2.005 m3/h per cm2, 49.9 cm2 per 100 m3/h."""
    hole = AreaConvention("hole", 50.0, 0.611, "sharp hole")
    per_100 = leakage_area_cm2(law(100.0 / 50**0.65, 0.65), hole).value
    assert per_100 == pytest.approx(49.9, abs=0.05)
    assert 100.0 / per_100 == pytest.approx(2.005, abs=5e-4)


def test_ratio_of_the_two_leakage_areas() -> None:
    """(10/4)**(n - 0.5) / 0.611 = 1.878 at n = 0.65; flow at 50 Pa in cfm over EqLA10 in square inches 9.690."""
    line = law(100.0, 0.65)
    ela4, eqla10 = leakage_area_cm2(line, ELA4).value, leakage_area_cm2(line, EQLA10).value
    assert eqla10 / ela4 == pytest.approx(1.878, abs=5e-4)
    cfm50 = to_display(100.0 * 50**0.65, Quantity.FLOW, US)
    assert cfm50 / to_display(eqla10, Quantity.LEAKAGE_AREA, US) == pytest.approx(9.690, abs=5e-4)


def test_leakage_area_at_four_pascal_in_square_inches() -> None:
    """0.283316478 in2 per cfm at 4 Pa (NREL/OpenStudio-HPXML, airflow.rb) is for 1.2000 kg/m3; 0.28380 for 1.2041."""
    line = law(100.0, 0.65)
    area = to_display(leakage_area_cm2(line, ELA4).value, Quantity.LEAKAGE_AREA, US)
    per_cfm = area / to_display(100.0 * 4**0.65, Quantity.FLOW, US)
    assert per_cfm == pytest.approx(0.28380, abs=5e-6)
    assert per_cfm * math.sqrt(1.2000 / 1.2041) == pytest.approx(0.283316478, rel=1e-5)


def test_us_units_of_the_trade() -> None:
    """1 cfm = 1.699011 m3/h; 1 cfm/ft2 = 18.288 m3/(h m2) (international foot)."""
    assert to_display(1.699011, Quantity.FLOW, US) == pytest.approx(1.0, rel=1e-6)
    assert to_display(18.288, Quantity.FLOW_PER_AREA, US) == pytest.approx(1.0, rel=1e-9)
    assert to_display(518.09502, Quantity.FLOW, US) == pytest.approx(304.939, abs=5e-4)
    assert to_display(107.6889, Quantity.LEAKAGE_AREA, US) == pytest.approx(16.6918, abs=5e-5)


@pytest.mark.parametrize(
    ("flow", "at_pa", "to_pa", "expected", "tolerance"),
    [(15.0, 75.0, 4.0, 2.2317, 1e-3), (10.0, 75.0, 10.0, 2.699, 1e-3), (5.0, 50.0, 2.0, 0.617, 1e-3)],
)
def test_flows_carried_to_another_pressure_with_an_exponent_of_065(
    flow: float, at_pa: float, to_pa: float, expected: float, tolerance: float
) -> None:
    """Expected values of the infiltration test of NREL/openstudio-standards (test_infiltration.rb)."""
    line = law(flow / at_pa**0.65, 0.65)
    assert flow_at(line, to_pa).value == pytest.approx(expected, abs=tolerance)


def test_a_crack_of_the_airflow_network_test() -> None:
    """0.001 kg/s at 1 Pa, n 0.65, at 10 Pa: 0.00446684 (NREL/EnergyPlus, AirflowNetworkSolver.unit.cc)."""
    assert flow_at(law(0.001, 0.65), 10.0).value == pytest.approx(0.00446684, abs=5e-9)


def test_reference_density_is_that_of_the_standards() -> None:
    """1.2041 kg/m3 at 20 degC and 101 325 Pa (ISO 9972 and ASTM E779, from memory)."""
    assert REFERENCE_DENSITY_KG_M3 == 1.2041
