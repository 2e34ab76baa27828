"""Holes, component leakages and depressurization, against figures that can be looked up or worked out by hand."""

from __future__ import annotations

import math

import pytest

from analysis.components import component_total, flow_of_area_m3_h, shipped_components
from analysis.effective import effective, effective_quantity
from analysis.exhaust import depressurization, tightest_q50_m3_h
from analysis.hole import equivalent_hole, hole_cm2_per_m3_h
from analysis.methods.quantities import EQLA10, leakage_area_cm2
from analysis.powerlaw import flow_at
from analysis.records import Building, Estimate, PowerLaw
from analysis.uncertain import Measured
from analysis.units import Display, Quantity, System, from_display, to_display

US = Display(System.US)
TABLE = shipped_components()


def law(q50_m3_h: float, n: float) -> PowerLaw:
    """Return a line without uncertainty."""
    return PowerLaw(math.log(q50_m3_h / 50.0**n), n, 0.0, 0.0, 0.0, math.inf, 1.0, 0.0, 10.0, 60.0)


def test_area_of_a_hole_by_its_flow_at_fifty_pascal() -> None:
    """1/(Cd (2 dp/rho)**0.5), by hand: 0.499 cm2 per m3/h; 2.005 m3/h through 1 cm2; 49.9 and 498.9 cm2."""
    per = hole_cm2_per_m3_h(50.0)
    assert per == pytest.approx(0.499, abs=5e-4)
    assert 1.0 / per == pytest.approx(2.005, abs=5e-4)
    assert (100.0 * per, 1000.0 * per) == pytest.approx((49.9, 498.9), abs=0.05)


def test_one_square_inch_passes_7_61_cfm_at_fifty_pascal() -> None:
    area = from_display(1.0, Quantity.LEAKAGE_AREA, US)
    assert to_display(area / hole_cm2_per_m3_h(50.0), Quantity.FLOW, US) == pytest.approx(7.61, abs=5e-3)


def test_diameter_of_the_equivalent_hole_of_the_worked_run() -> None:
    """Diameter (4 A/pi)**0.5 of EqLA10 202.5110 cm2, by hand: the root of 257.8450 is 16.0576 cm."""
    hole = equivalent_hole(Estimate(202.5110, 202.5110, 202.5110))
    assert hole.diameter_cm.value == pytest.approx(16.0576, abs=5e-5)


@pytest.mark.parametrize(
    ("c_m3_s_per_m3", "n", "ach50", "eqla10_cm2_per_m3"),
    [
        (16.86105e-5, 0.725, 10.35, 3.595),
        (8.23811e-5, 0.698, 4.55, 1.650),
        (6.10730e-5, 0.7125, 3.57, 1.265),
        (2.66534e-5, 0.7028, 1.50, 0.540),
    ],
)
def test_tightness_classes_of_an_open_simulation(
    c_m3_s_per_m3: float, n: float, ach50: float, eqla10_cm2_per_m3: float
) -> None:
    """C and n of four classes in ESP-r, aim2_module.F (after Bradley 1993); the rest worked out of them by hand."""
    line = PowerLaw(math.log(3600.0 * c_m3_s_per_m3), n, 0.0, 0.0, 0.0, math.inf, 1.0, 0.0, 10.0, 60.0)
    found = effective((line,), Building("class", 1.0), effective_quantity("n50_per_h"), "the class").value
    assert found == pytest.approx(ach50, abs=5e-3)
    assert leakage_area_cm2(line, EQLA10).value == pytest.approx(eqla10_cm2_per_m3, abs=5e-4)


def test_a_room_of_the_pressurization_example() -> None:
    """IBPSA library, PressurizationData: n50 3 1/h of 62.5 m3 is 225 kg/h at 1.2 kg/m3, half through each leak."""
    half = law(3.0 * 62.5 / 2, 0.66)
    flow = 2 * effective((half,), Building("room"), effective_quantity("q50_m3_h"), "the room").value
    assert flow * 1.2 == pytest.approx(225.0)


def test_normalised_leakage_of_the_units_of_the_trade() -> None:
    """1 cfm/ft2 = 5.080 l/(s m2) = 18.288 m3/(h m2) (international foot)."""
    building = Building("x", envelope_area_m2=100.0)
    line = law(1828.8, 0.65)
    assert effective((line,), building, effective_quantity("nlr50_l_s_m2"), "it").value == pytest.approx(5.080)
    assert effective((line,), building, effective_quantity("qe50_m3_h_m2"), "it").value == pytest.approx(18.288)


def test_flow_at_fifty_pascal_over_the_area_at_four() -> None:
    """At n = 0.65, 18.227 cfm per square inch in air of 1.2000 kg/m3, 18.196 in reference air.

    0.283316478 in2 per cfm at 4 Pa (NREL OpenStudio-HPXML), times 12.5**0.65 by hand.
    """
    per_cm2 = flow_of_area_m3_h(1.0, 50.0, 0.65)
    per_in2 = to_display(per_cm2 * from_display(1.0, Quantity.LEAKAGE_AREA, US), Quantity.FLOW, US)
    assert per_in2 == pytest.approx(18.196, abs=5e-4)
    assert per_in2 * math.sqrt(1.2041 / 1.2000) == pytest.approx(18.227, abs=5e-4)


def test_slope_of_a_crack_of_the_airflow_network_test() -> None:
    """NREL/EnergyPlus, AirflowNetworkSolver.unit.cc: dQ/dp = 0.000065 10**0.65 at 10 Pa for 0.001 dp**0.65."""
    line = PowerLaw(math.log(0.001), 0.65, 0.0, 0.0, 0.0, math.inf, 1.0, 0.0, 1.0, 60.0)
    slope = (flow_at(line, 10.001).value - flow_at(line, 9.999).value) / 0.002
    assert slope == pytest.approx(0.000065 * 10**0.65, rel=1e-7)


def test_component_areas_carried_to_fifty_pascal() -> None:
    """0.36 ELA4 (8/1.2041)**0.5 12.5**0.65 = 4.79 m3/h per cm2, by hand."""
    assert flow_of_area_m3_h(1.0) == pytest.approx(4.79, abs=5e-3)
    assert flow_of_area_m3_h(100.0) == pytest.approx(0.36 * 100 * math.sqrt(8 / 1.2041) * 12.5**0.65)


@pytest.mark.parametrize(
    ("component", "typical", "tight"),
    [
        ("attic-hatch", 30.0, 18.0),
        ("ceiling", 1.8, 0.79),
        ("ceiling-penetration", 5.0, 1.0),
        ("exterior-door", 21.0, 12.0),
        ("exterior-door-frame", 1.7, 0.3),
        ("closet-door", 0.9, 0.25),
        ("closet-door-frame", 25.0, 12.0),
        ("bath-vent", 20.0, 10.0),
        ("kitchen-vent", 40.0, 5.0),
        ("ceiling-wall-joint", 1.5, 0.5),
        ("floor-wall-joint", 4.0, 0.8),
    ],
)
def test_components_of_an_open_library(component: str, typical: float, tight: float) -> None:
    """NIST CONTAM library, appendix C2: cm2 at 4 Pa, discharge coefficient 1."""
    item = TABLE.component(component)
    assert (item.typical_cm2, item.tight_cm2) == (typical, tight)
    assert "NIST" in item.provenance.source


@pytest.mark.parametrize(
    ("component", "typical", "least", "most"),
    [("recessed-light", 10.0, 1.5, 21.0), ("chimney", 29.0, 21.0, 36.0), ("fireplace-damper-closed", 43.0, 10.0, 92.0)],
)
def test_components_from_memory_keep_their_range(component: str, typical: float, least: float, most: float) -> None:
    """ASHRAE Fundamentals 2001, from memory."""
    total = component_total(TABLE, {component: 1.0})
    assert (total.typical_cm2, total.least_cm2, total.most_cm2) == (typical, least, most)


@pytest.mark.parametrize(
    ("rate", "cfm_per_ft2"),
    [
        ("opaque-baseline", 0.12),
        ("opaque-advanced", 0.04),
        ("fenestration-baseline", 0.40),
        ("fenestration-advanced", 0.20),
    ],
)
def test_envelope_parts_of_an_open_energy_model(rate: str, cfm_per_ft2: float) -> None:
    """NREL openstudio-standards, test_infiltration.rb: cfm/ft2 at 75 Pa."""
    value = next(item.value_m3_h_m2 for item in TABLE.rates if item.id == rate)
    assert to_display(value, Quantity.FLOW_PER_AREA, US) == pytest.approx(cfm_per_ft2, rel=1e-5)


def test_the_interface_of_garage_and_house() -> None:
    """CMHC Research Highlight 01-122, 25 houses: mean 140 cm2, 4 to 400, 13 % of the house."""
    (item,) = TABLE.interfaces
    assert (item.mean_cm2, item.least_cm2, item.most_cm2, item.share_of_house) == (140.0, 4.0, 400.0, 0.13)


def test_depressurization_by_hand() -> None:
    """50 (Q/Q50)**(1/n): 200 of 1000 m3/h at n = 0.65 make 4.2037 Pa; 5 Pa and 300 m3/h need 1340.05 m3/h."""
    found = depressurization(law(1000.0, 0.65), Measured(200.0)).pressure_pa.value
    assert found == pytest.approx(50.0 * 0.2 ** (1 / 0.65))
    assert found == pytest.approx(4.2037, abs=5e-5)
    assert tightest_q50_m3_h(300.0, 5.0, 0.65) == pytest.approx(1340.05, abs=5e-3)
