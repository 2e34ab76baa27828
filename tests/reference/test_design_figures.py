"""Design figures against the handbook's residential chapter and open simulation programs."""

from __future__ import annotations

import math

import pytest

from analysis.design import Season, design_infiltration, nearest_construction, shipped_assumptions, weather_multiplier
from analysis.design.residential import driving_force_l_s_cm2, leakage_area_cm2, with_unbalanced_fans_m3_h
from analysis.infiltration import required_ventilation_m3_h
from analysis.powerlaw import flow_at
from analysis.records import Estimate, PowerLaw

KNOWN = shipped_assumptions()


@pytest.mark.parametrize(("height", "outdoor_c", "force"), [(2.5, -20.0, 0.086), (8.0, -40.0, 0.219)])
def test_driving_force_of_the_handbook_table(height: float, outdoor_c: float, force: float) -> None:
    """ASHRAE Fundamentals 2021, residential chapter, table 5 (0.22 printed for the second): indoors 20 degC."""
    assert driving_force_l_s_cm2(Season.HEATING, height, 20.0 - outdoor_c) == pytest.approx(force, abs=5e-4)


def test_infiltration_of_the_handbook_house() -> None:
    """Same chapter: 356.5 m2 of 1.4 cm2/m2 are 499 cm2; 0.073 and 0.035 l/(s cm2) make 36 and 17 l/s.

    The driving forces belong to 25.14 K (heating) and 10.53 K (cooling) at 2.5 m.
    """
    area = leakage_area_cm2(356.5, 1.4)
    assert area == pytest.approx(499.0, abs=0.5)
    exact = Estimate(area, area, area)
    for season, difference, force, flow in ((Season.HEATING, 25.14, 0.073, 36.0), (Season.COOLING, 10.53, 0.035, 17.0)):
        assert driving_force_l_s_cm2(season, 2.5, difference) == pytest.approx(force, abs=5e-5)
        found = design_infiltration(exact, season, 2.5, difference).flow_m3_h.value
        assert found / 3.6 == pytest.approx(flow, abs=0.5)


def test_air_changes_of_the_handbook_house() -> None:
    """Same chapter: 36 and 17 l/s are 0.28 and 0.13 1/h; both belong to one volume, within their rounding."""
    area = leakage_area_cm2(356.5, 1.4)
    exact = Estimate(area, area, area)
    heating = design_infiltration(exact, Season.HEATING, 2.5, 25.14, 468.0).air_change_per_h
    cooling = design_infiltration(exact, Season.COOLING, 2.5, 10.53, 468.0).air_change_per_h
    assert heating is not None
    assert cooling is not None
    assert (heating.value, cooling.value) == pytest.approx((0.28, 0.13), abs=0.005)


@pytest.mark.parametrize(
    ("construction", "unit_leakage"),
    [("tight", 0.7), ("good", 1.4), ("average", 2.8), ("leaky", 5.6), ("very-leaky", 10.4)],
)
def test_unit_leakage_areas_of_the_handbook(construction: str, unit_leakage: float) -> None:
    """Same chapter: cm2/m2 of exposed surface."""
    assert nearest_construction(unit_leakage * 100.0, 100.0).id == construction
    assert {item.id: item.unit_leakage_cm2_m2 for item in KNOWN.constructions}[construction] == unit_leakage


def test_mechanical_ventilation_of_the_handbook_house() -> None:
    """Same chapter: 0.15 A + 3.5 (bedrooms + 1) l/s; 195.3 m2 and 3 bedrooms make 43 l/s."""
    assert required_ventilation_m3_h(195.3, 3) / 3.6 == pytest.approx(43.0, abs=0.5)


def test_unbalanced_fans_beside_infiltration() -> None:
    """Same chapter: max(Q_unbal, Q_i + 0.5 Q_unbal)."""
    assert with_unbalanced_fans_m3_h(100.0, 60.0) == 130.0
    assert with_unbalanced_fans_m3_h(10.0, 60.0) == 60.0


@pytest.mark.parametrize(
    ("coefficients", "difference", "wind", "factor", "tolerance"),
    [
        ("blast", 0.0, 3.35, 1.0, 5e-4),
        ("blast", 40.0, 6.0, 2.75, 0.02),
        ("doe-2", 0.0, 3.35, 0.75, 1e-3),
        ("doe-2", 40.0, 6.0, 1.34, 5e-3),
        ("doe-2", 0.0, 4.47, 1.0, 2e-3),
        ("constant", 40.0, 6.0, 1.0, 1e-12),
    ],
)
def test_weather_multipliers_of_energy_programs(
    coefficients: str, difference: float, wind: float, factor: float, tolerance: float
) -> None:
    """EnergyPlus engineering reference, infiltration: summer 0 K and 3.35 m/s, winter 40 K and 6 m/s."""
    assert weather_multiplier(coefficients, difference, wind) == pytest.approx(factor, abs=tolerance)


@pytest.mark.parametrize(
    ("tightness", "ach50"), [("loose", 10.35), ("average", 4.55), ("present", 3.57), ("tight", 1.50)]
)
def test_air_changes_of_the_tightness_classes(tightness: str, ach50: float) -> None:
    """C and n in ESP-r, aim2_module.F, after Bradley 1993; air changes at 50 Pa worked out, and remembered so."""
    item = next(entry for entry in KNOWN.tightness if entry.id == tightness)
    line = PowerLaw(
        math.log(3600.0 * item.coefficient_per_s_pa_n), item.n, 0.0, 0.0, 0.0, math.inf, 1.0, 0.0, 10.0, 60.0
    )
    assert flow_at(line, 50.0).value == pytest.approx(ach50, abs=5e-3)


def test_usual_flows_of_buildings() -> None:
    """EN 15242 table B.1 as quoted in BEMEval: m3/(h m2) of floor at 4 Pa."""
    found = {item.id: (item.low_m3_h_m2, item.average_m3_h_m2, item.high_m3_h_m2) for item in KNOWN.usual}
    assert found == {
        "single-family": (0.9, 1.8, 3.6),
        "multi-family": (0.6, 1.1, 2.2),
        "industrial": (1.5, 3.0, 6.0),
    }


def test_normalized_leakage_of_a_stock() -> None:
    """Abstract of Chan et al. (energy.lbl.gov): 90 % of houses in the United States 0.22 to 1.95, median 0.67."""
    (stock,) = KNOWN.stocks
    assert (stock.nl_5, stock.nl_50, stock.nl_95) == (0.22, 0.67, 1.95)
