"""The simulated house against formulas of handbooks and papers that it was not built from."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from scipy import integrate, signal

from simulators.air import density
from simulators.element import RANGES, FlowElement
from simulators.envelope import LeakPaths
from simulators.fan import fan_flow
from simulators.house import FACADES, WALLS, Facade, Leak
from simulators.houses import load_house
from simulators.plant import Plant
from simulators.random_house import random_houses
from simulators.weather import GUST_LENGTH_M, WALL_CP, WALL_CP_DEG, GustProcess, Weather
from tests.simulators.builders import REFERENCE_CLIMATE, one_leak_house, run


def low_rise_wall_cp(angle_deg: float) -> float:
    """Return Swami and Chandra's closed form for a wall of a square low-rise building.

    Swami and Chandra 1987, also in the ASHRAE Handbook of Fundamentals, chapter on airflow around buildings (from
    memory); 0.6 at normal incidence makes it a pressure coefficient.
    """
    half, angle = math.radians(angle_deg) / 2, math.radians(angle_deg)
    return 0.6 * math.log(
        1.248
        - 0.703 * math.sin(half)
        - 1.175 * math.sin(angle) ** 2
        + 0.769 * math.cos(half)
        + 0.717 * math.cos(half) ** 2
    )


@pytest.mark.parametrize(("angle_deg", "cp"), list(zip(WALL_CP_DEG.tolist(), WALL_CP.tolist(), strict=True)))
def test_wall_pressure_coefficients_are_those_of_the_closed_form(angle_deg: float, cp: float) -> None:
    assert cp == pytest.approx(low_rise_wall_cp(angle_deg), abs=1.5e-3)


def test_in_steady_wind_a_wall_feels_coefficient_times_dynamic_pressure() -> None:
    climate = replace(REFERENCE_CLIMATE, wind_from_deg=60.0)
    weather = Weather([replace(load_house("mill-row"), climate=climate)] * 2000, [4.0] * 2000, np.random.default_rng(2))
    total = np.zeros(len(FACADES))
    for _ in range(40):
        weather.step(5.0, np.full(2000, 1.2041))
        total += weather.facade_pa.mean(axis=0) / 40
    # Mean of Cp(theta) u^2 over normally spread directions and speeds, by quadrature: sd of theta
    # hypot(0.75 x 0.28, 0.14), of u hypot(0.28, 0.12); 0.5 rho U^2 = 9.633 Pa; straight lines between table angles.
    spread = math.hypot(0.75 * 0.28, 0.14)
    table = [low_rise_wall_cp(angle) for angle in WALL_CP_DEG]
    swing, weight = np.polynomial.hermite_e.hermegauss(40)
    square = 9.633 * (1 + 0.28**2 + 0.12**2)
    for wall, faces_deg in zip(WALLS, (0.0, 90.0, 180.0, 270.0), strict=True):
        off_deg = np.degrees(np.arccos(np.cos(np.radians(60.0 - faces_deg) + spread * swing)))
        mean = float((weight * np.interp(off_deg, WALL_CP_DEG, table)).sum() / weight.sum())
        assert total[FACADES.index(wall)] == pytest.approx(square * mean, abs=0.25)


@pytest.mark.parametrize("indoor_c", [18.0, 24.0])
@pytest.mark.parametrize("outdoor_c", [-15.0, 5.0, 32.0])
def test_stack_pressure_is_that_of_the_handbooks_formula(indoor_c: float, outdoor_c: float) -> None:
    low, high = (Leak(f"at {z}", Facade.NORTH, 0.5, 0.65, z) for z in (0.0, 7.5))
    climate = replace(REFERENCE_CLIMATE, indoor_c=indoor_c, outdoor_c=outdoor_c)
    plant = Plant([replace(one_leak_house(climate=climate), leaks=(low, high))], 1)
    lower, upper = plant.leaks._stack_pa[0]
    # ASHRAE Handbook of Fundamentals, ventilation and infiltration: 0.0342 K/m times p (1/To - 1/Ti) h (from memory).
    expected = 0.0342 * 101_325.0 * (1 / (outdoor_c + 273.15) - 1 / (indoor_c + 273.15)) * 7.5
    assert upper - lower == pytest.approx(expected, rel=2e-3)


def test_two_like_leaks_put_the_neutral_level_near_the_middle() -> None:
    low, high = (Leak(f"at {z}", Facade.NORTH, 0.5, 0.5, z) for z in (0.0, 6.0))
    climate = replace(REFERENCE_CLIMATE, indoor_c=21.0, outdoor_c=-9.0)
    plant = Plant([replace(one_leak_house(climate=climate), leaks=(low, high))], 1)
    slope_pa_m = (plant.leaks._stack_pa[0, 1] - plant.leaks._stack_pa[0, 0]) / 6.0
    neutral_m = plant.houses[0].gauge_height_m - float(plant.pressure_pa[0]) / slope_pa_m
    # Two orifices of one area: what comes in below goes out above, rho_o h_low = rho_i h_high, so that
    # h_low = h / (1 + Ti / To) (ventilation textbook, from memory).
    warm, cold = 294.15, 264.15
    assert neutral_m == pytest.approx(6.0 / (1.0 + warm / cold), rel=0.01)


def test_a_hole_of_exponent_one_half_passes_what_an_orifice_does_in_any_air() -> None:
    hole = replace(one_leak_house(exponent=0.5), n50_per_h=1.0)
    leaks = LeakPaths([hole])
    area_cd_m2 = 400.0 / 3600.0 / math.sqrt(2 * 50.0 / 1.204097)
    for celsius in (-20.0, 35.0):
        rho = density(np.array([celsius]), np.zeros(1), np.array([95_000.0]))
        air = rho, np.full(1, 1.7e-5)
        leaks.breathe(air, air)
        mass, _ = leaks.outflow(np.array([40.0]), np.zeros((1, len(FACADES))))
        # Bernoulli: m = Cd A sqrt(2 rho dp), whatever the viscosity.
        assert mass[0] == pytest.approx(area_cd_m2 * math.sqrt(2 * float(rho[0]) * 40.0), rel=1e-5)


def test_a_crack_of_exponent_one_passes_what_viscosity_lets_through() -> None:
    flows = []
    for mu in (1.6e-5, 2.0e-5):
        leaks = LeakPaths([one_leak_house(exponent=1.0)])
        air = np.full(1, 1.2), np.full(1, mu)
        leaks.breathe(air, air)
        flows.append(float(leaks.outflow(np.array([20.0]), np.zeros((1, len(FACADES))))[0][0]))
    # Laminar flow: volume flow inversely proportional to viscosity (Hagen and Poiseuille).
    assert flows[0] / flows[1] == pytest.approx(2.0 / 1.6, rel=1e-9)


@pytest.mark.parametrize("speed_m_s", [2.0, 4.0, 8.0])
def test_at_any_wind_gusts_have_von_karmans_spectrum_over_two_decades(speed_m_s: float) -> None:
    scale_s = GUST_LENGTH_M / speed_m_s
    rng = np.random.default_rng(8)
    process = GustProcess(np.full(400, scale_s), rng)
    gusts = np.array([process.step(0.2, rng.standard_normal((400, 2))) for _ in range(4096)])
    frequencies, power = signal.welch(gusts, fs=5.0, nperseg=1024, axis=0)
    # Longitudinal spectrum of von Karman (textbook, from memory): 4 T / (1 + 70.8 (f T)^2)^(5/6) for unit variance.
    karman = 4 * scale_s / (1 + 70.8 * (frequencies * scale_s) ** 2) ** (5 / 6)
    for reduced in (0.1, 0.3, 1.0, 2.0):
        near = (frequencies * scale_s > reduced / 1.4) & (frequencies * scale_s < reduced * 1.4)
        if near.sum() < 2:
            continue
        assert float((power.mean(axis=1)[near] / karman[near]).mean()) == pytest.approx(1.02, abs=0.10)


def test_von_karmans_formula_itself_has_unit_variance() -> None:
    # Guards the yardstick of the test above: the integral over all frequencies is one.
    whole, _ = integrate.quad(lambda f: 4 / (1 + 70.8 * f * f) ** (5 / 6), 0.0, np.inf)
    assert whole == pytest.approx(1.0, abs=2e-3)


def test_fan_laws_hold_without_back_pressure_and_with_it() -> None:
    speeds, air, loss = np.array([0.4, 0.8]), np.full(2, 1.2), np.zeros(2)
    free, _ = fan_flow(speeds, np.zeros(2), air, loss)
    assert free[1] / free[0] == pytest.approx(2.0, rel=1e-3)
    # Twice the speed: twice the flow against four times the pressure (fan affinity laws).
    loaded, _ = fan_flow(speeds, np.array([20.0, 80.0]), air, loss)
    assert loaded[1] / loaded[0] == pytest.approx(2.0, rel=1e-3)


@pytest.mark.parametrize("name", [item.name for item in RANGES])
def test_the_elements_pressure_and_the_flow_formula_are_inverse_in_any_air(name: str) -> None:
    element = FlowElement([name], np.random.default_rng(1))
    fitted = next(item for item in RANGES if item.name == name)
    for rho in (1.05, 1.35):
        flow = 0.6 * fitted.top_m3_s
        pascal = float(element.pressure(np.array([flow]), np.array([rho]))[0])
        # Volume flow of a flow element in other air: Q = C dp^n sqrt(rho0 / rho) (ISO 5167 form, from memory).
        assert fitted.coefficient * pascal**fitted.exponent * math.sqrt(1.204097 / rho) == pytest.approx(flow, rel=1e-6)


def test_unlike_houses_side_by_side_are_what_they_are_alone() -> None:
    houses = [load_house("mill-row"), load_house("brook-end"), one_leak_house(), *random_houses(3, 4)]
    calm = [replace(house, climate=replace(house.climate, wind_m_s=0.0)) for house in houses]
    together = run(Plant(calm, 1), 20.0, 0.4)
    alone = [run(Plant([house], 1), 20.0, 0.4) for house in calm]
    assert together == pytest.approx(np.hstack(alone), abs=5e-3)
    truths = [float(Plant([house], 1).true_flow_m3_h(-50.0)[0]) for house in calm]
    assert Plant(calm, 1).true_flow_m3_h(-50.0) == pytest.approx(truths, rel=1e-12)
