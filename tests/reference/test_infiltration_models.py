"""Infiltration models against published examples and the tests of open simulation programs."""

from __future__ import annotations

import math

import pytest

from analysis.infiltration import (
    Foundation,
    Shelter,
    Site,
    Weather,
    basic_infiltration,
    by_divisor,
    by_facade_pressure,
    by_twenty,
    credit,
    enhanced_infiltration,
    fan_flow_m3_h,
    required_ventilation_m3_h,
)
from analysis.infiltration.basic import STACK, WIND, stack_coefficient
from analysis.infiltration.credit import credit_by_leakage_m3_h, normalized_leakage, weather_factor
from analysis.infiltration.enhanced import LeakSplit, coefficients_of
from analysis.infiltration.rules import average_facade_pa, by_design_pressure
from analysis.powerlaw import flow_at
from analysis.records import Estimate, PowerLaw
from analysis.units import Display, Quantity, System, from_display, to_display

US = Display(System.US)


def exact(value: float) -> Estimate:
    """Return a value without interval."""
    return Estimate(value, value, value)


def law(c_m3_s: float, n: float) -> PowerLaw:
    """Return a line without uncertainty from a coefficient in m3/(s Pa**n)."""
    return PowerLaw(math.log(3600.0 * c_m3_s), n, 0.0, 0.0, 0.0, math.inf, 1.0, 0.0, 10.0, 60.0)


def cfm(flow_m3_h: float) -> float:
    """Return a flow in cubic feet a minute."""
    return to_display(flow_m3_h, Quantity.FLOW, US)


# basic model


def test_basic_model_of_the_handbook_example() -> None:
    """ASHRAE Fundamentals 2001, chapter 26 (as coded in SIMPLE-BuildingSimulation): 0.0736 m3/s, 0.78 1/h."""
    found = basic_infiltration(exact(500.0), Site(2, Shelter.ACROSS_STREET), Weather(39.0, 6.7), 340.0)
    assert found.air_change_per_h is not None
    assert found.flow_m3_h.value / 3600.0 == pytest.approx(0.0736, abs=5e-5)
    assert found.air_change_per_h.value == pytest.approx(0.7795, abs=5e-4)


def test_basic_model_of_one_storey_in_the_same_weather() -> None:
    """0.0580 m3/s and 0.614 1/h, worked out by hand from the table."""
    found = basic_infiltration(exact(500.0), Site(1, Shelter.ACROSS_STREET), Weather(39.0, 6.7), 340.0)
    assert found.air_change_per_h is not None
    assert found.flow_m3_h.value / 3600.0 == pytest.approx(0.0580, abs=5e-5)
    assert found.air_change_per_h.value == pytest.approx(0.614, abs=5e-4)


def test_coefficients_of_the_basic_model() -> None:
    """EnergyPlus input/output reference, group airflow: Cs and Cw by storeys and shelter."""
    assert list(STACK.values()) == [0.000145, 0.000290, 0.000435]
    assert WIND[Shelter.NONE] == (0.000319, 0.000420, 0.000494)
    assert WIND[Shelter.ADJACENT] == (0.000032, 0.000042, 0.000049)


@pytest.mark.parametrize(("storeys", "height_m"), [(1, 2.5), (2, 5.0), (3, 7.5)])
def test_stack_coefficient_from_the_height_agrees_with_the_table(storeys: int, height_m: float) -> None:
    """(1 + R/2)/3 with half of the leaks in floor and ceiling (NREL OpenStudio-HPXML), to 2 %."""
    assert stack_coefficient(height_m, 0.5, indoor_c=20.0) == pytest.approx(STACK[storeys], rel=0.02)


# enhanced model


def test_enhanced_model_with_a_flue() -> None:
    """Worked out by hand from the table: 0.03312 and 0.02749 make 0.04304 m3/s."""
    site = Site(2, Shelter.LARGER_LOTS, flue=True)
    found = enhanced_infiltration(law(0.05, 0.67), site, Weather(20.0, 0.0, 4.0)).flow_m3_h.value
    assert found / 3600.0 == pytest.approx(0.04304, abs=5e-6)
    stack_only = enhanced_infiltration(law(0.05, 0.67), site, Weather(20.0, 0.0, 0.0)).flow_m3_h.value
    wind_only = enhanced_infiltration(law(0.05, 0.67), site, Weather(0.0, 0.0, 4.0)).flow_m3_h.value
    assert stack_only / 3600.0 == pytest.approx(0.03312, abs=5e-6)
    assert wind_only / 3600.0 == pytest.approx(0.02749, abs=5e-6)


def test_enhanced_model_without_a_flue_in_the_weather_of_the_handbook() -> None:
    """Worked out by hand from the table: 0.04540 and 0.06742 make 0.08128 m3/s."""
    site = Site(2, Shelter.ACROSS_STREET, foundation=Foundation.BASEMENT_OR_SLAB)
    found = enhanced_infiltration(law(0.05, 0.67), site, Weather(39.0, 0.0, 6.7)).flow_m3_h.value
    assert found / 3600.0 == pytest.approx(0.08128, abs=5e-6)


HPXML_HEIGHT_M = 2.97
"""9.75 ft of the test house; inferred, the file of the house was not at hand."""
HPXML_DENSITY = 1.016
"""kg/m3 at the site; inferred from the coefficients (1.014 to 1.018)."""


@pytest.mark.parametrize(("flue", "stack", "wind"), [(0.0, 0.0573, 0.1446), (0.2, 0.0661, 0.1323)])
def test_equations_of_the_enhanced_model(flue: float, stack: float, wind: float) -> None:
    """NREL OpenStudio-HPXML, tests/test_airflow.rb: Cs and Cw of the base house without and with a flue, to 1 %."""
    found = coefficients_of(LeakSplit(flue=flue), 0.65, HPXML_HEIGHT_M, HPXML_DENSITY, 0.5, 23.06)
    assert found.stack == pytest.approx(stack, rel=0.01)
    assert found.wind == pytest.approx(wind, rel=0.01)


def test_flow_coefficient_of_the_enhanced_model() -> None:
    """Same test: 3 1/h at 50 Pa of 21 600 ft3 make c 0.0436 m3/(s Pa**n), by the area at 4 Pa and the site's density.

    The program scales the area from reference air to the density of the site: (1.2041/density)**0.5.
    """
    volume_m3 = from_display(21_600.0, Quantity.VOLUME, US)
    at_reference = 3.0 * volume_m3 / 3600.0 / 50.0**0.65
    assert at_reference == pytest.approx(0.0401, abs=5e-5)
    assert at_reference * math.sqrt(1.2041 / HPXML_DENSITY) == pytest.approx(0.0436, rel=0.01)


# credit


def test_credit_of_the_worked_house() -> None:
    """By hand: 1200 cfm at 50 Pa, 5 m, wsf 0.60 make 23.3 l/s (49.4 cfm)."""
    q50 = from_display(1200.0, Quantity.FLOW, US)
    assert q50 / 3.6 == pytest.approx(566.3, abs=0.05)
    found = credit(exact(q50), 5.0, 0.60).flow_m3_h.value
    assert found / 3.6 == pytest.approx(23.3, abs=0.05)
    assert cfm(found) == pytest.approx(49.4, abs=0.05)


def test_credit_by_normalized_leakage_of_the_same_house() -> None:
    """By hand: 2000 ft2, NL 0.3016 and 49.6 cfm; ELA 0.283316478 in2 per cfm at 4 Pa (NREL OpenStudio-HPXML)."""
    floor = from_display(2000.0, Quantity.AREA, US)
    assert floor == pytest.approx(185.8, abs=0.05)
    q4_cfm = 1200.0 * (4 / 50) ** 0.65
    ela4 = from_display(0.283316478 * q4_cfm, Quantity.LEAKAGE_AREA, US)
    nl = normalized_leakage(ela4, floor, 5.0)
    assert nl == pytest.approx(0.3016, rel=3e-3)
    assert cfm(credit_by_leakage_m3_h(nl, floor, 0.60)) == pytest.approx(49.6, rel=3e-3)


def test_whole_ventilation_and_fan_of_the_same_house() -> None:
    """90 cfm asked for (0.03 A + 7.5 (bedrooms + 1), ft2); fan 62.7 cfm alone and 40.4 cfm in balance, by hand."""
    asked, leaks = (from_display(value, Quantity.FLOW, US) for value in (90.0, 49.6))
    assert cfm(fan_flow_m3_h(asked, leaks, balanced=False)) == pytest.approx(62.7, abs=0.05)
    assert cfm(fan_flow_m3_h(asked, leaks, balanced=True)) == pytest.approx(40.4, abs=0.05)
    metric = required_ventilation_m3_h(from_display(2000.0, Quantity.AREA, US), 3)
    assert cfm(metric) == pytest.approx(90.0, rel=0.02)


def test_specific_leakage_area_of_an_open_program() -> None:
    """NREL OpenStudio-HPXML: SLA = ACH50 0.283316478 4**n V/(A 144 50**n 60) in feet; 3 1/h, 21 600 ft3, 2700 ft2."""
    sla = 3.0 * 0.283316478 * 4**0.65 * 21_600.0 / (2_700.0 * 144.0 * 50**0.65 * 60.0)
    volume, floor = from_display(21_600.0, Quantity.VOLUME, US), from_display(2_700.0, Quantity.AREA, US)
    q4 = 3.0 * volume * (4 / 50) ** 0.65
    ela4 = q4 / 3600.0 / math.sqrt(8 / 1.2000) * 1e4
    assert normalized_leakage(ela4, floor, 2.5) / 1000.0 == pytest.approx(sla, rel=1e-4)


@pytest.mark.parametrize(
    ("station", "factor"), [("725090", 0.66), ("722020", 0.41), ("725650", 0.59), ("724940", 0.60), ("702600", 0.70)]
)
def test_weather_factors_of_stations(station: str, factor: float) -> None:
    """NREL OpenStudio-HPXML, ashrae622_wsf.csv."""
    assert weather_factor(station) == factor


# rules of thumb


def test_air_changes_by_twenty_and_by_the_refined_divisor() -> None:
    """By hand: 7 1/h over 14.4 (climate 18, two storeys) is 0.49 1/h, over 20 it is 0.35 1/h."""
    refined, plain = by_divisor(exact(2100.0), 300.0, 18.0, 2.0), by_twenty(exact(2100.0), 300.0)
    assert refined.air_change_per_h is not None
    assert plain.air_change_per_h is not None
    assert refined.air_change_per_h.value == pytest.approx(0.486, abs=5e-4)
    assert plain.air_change_per_h.value == pytest.approx(0.35)


def test_half_of_the_air_changes_at_a_design_pressure() -> None:
    """CityEnergyAnalyst: n_inf = 0.5 n50 (dp/50)**(2/3); 3 1/h at 6.25 Pa, an eighth of 50: 0.375 1/h."""
    found = by_design_pressure(exact(900.0), 300.0, 6.25).air_change_per_h
    assert found is not None
    assert found.value == pytest.approx(0.375)


@pytest.mark.parametrize(
    ("rate", "at_pa", "expected"), [(15.0, 75.0, 1.6818), (10.0, 75.0, 1.1212), (5.0, 50.0, 0.72965)]
)
def test_average_rate_of_an_energy_model(rate: float, at_pa: float, expected: float) -> None:
    """NREL openstudio-standards, test_infiltration.rb: 0.5 0.1617 1.18 4.47**2 Pa on average."""
    found = by_facade_pressure(exact(rate), at_pa, average_facade_pa()).flow_m3_h.value
    assert found == pytest.approx(expected, rel=1e-4)


def test_factor_of_the_energy_standard() -> None:
    """ASHRAE 90.1 appendix G3.1.1.4: 0.112 of the rate at 75 Pa."""
    assert by_facade_pressure(exact(1.0), 75.0, average_facade_pa()).flow_m3_h.value == pytest.approx(0.112, abs=5e-4)


def test_flow_of_a_tight_house_at_the_pressure_of_a_breeze() -> None:
    """Power law by hand: n50 1 1/h and n 2/3 leave 0.2154 1/h at 5 Pa, 10**(-2/3)."""
    assert flow_at(law(1.0 / 3600.0 / 50 ** (2 / 3), 2 / 3), 5.0).value == pytest.approx(0.2154, abs=5e-5)
