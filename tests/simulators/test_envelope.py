"""Leak paths against figures that can be worked out by hand."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from simulators.air import FloatArray, density, viscosity
from simulators.envelope import LeakPaths
from simulators.house import FACADES, House
from simulators.houses import load_house
from tests.simulators.builders import one_leak_house

NO_WIND = np.zeros((1, len(FACADES)))


def air_of(celsius: float) -> tuple[FloatArray, FloatArray]:
    t = np.array([celsius])
    return density(t, np.zeros(1), np.full(1, 101325.0)), viscosity(t)


def paths(house: House, indoor_c: float = 20.0, outdoor_c: float = 20.0) -> LeakPaths:
    leaks = LeakPaths([house])
    leaks.breathe(air_of(indoor_c), air_of(outdoor_c))
    return leaks


def test_reference_air_flows_as_the_power_law_says() -> None:
    leaks = paths(one_leak_house(n50_per_h=1.0, volume_m3=400.0))
    mass, _ = leaks.outflow(np.array([50.0]), NO_WIND)
    # n50 = 1: the volume once an hour. Laminar smoothing at 0.05 Pa changes it by less than a millionth.
    assert mass[0] / 1.204097 * 3600 == pytest.approx(400.0, rel=1e-5)
    assert leaks.true_flow_m3_s(50.0)[0] * 3600 == pytest.approx(400.0, rel=1e-12)
    assert leaks.true_flow_m3_s(-25.0)[0] * 3600 == pytest.approx(400.0 * 0.5**0.65, rel=1e-12)


def test_stack_over_five_metres_is_five_and_a_half_pascal() -> None:
    low, high = (replace(load_house("mill-row").leaks[0], height_m=z, share=0.5) for z in (0.0, 5.0))
    leaks = paths(replace(one_leak_house(), leaks=(low, high), gauge_height_m=0.0), 20.0, -5.0)
    # (1.316357 - 1.204097) kg/m3 x 9.80665 m/s2 x 5 m, by hand.
    assert np.ptp(leaks._stack_pa) == pytest.approx(5.50446, abs=1e-4)
    # Warm air rises: with equal pressure at the floor the upper leak blows out.
    assert leaks._stack_pa[0, 1] > leaks._stack_pa[0, 0]


def test_coefficient_follows_density_and_viscosity_of_the_air_that_flows() -> None:
    leaks = paths(one_leak_house(), 20.0, 0.0)
    mass, _ = leaks.outflow(np.array([-10.0]), NO_WIND)
    volume_flow = -mass[0] / air_of(0.0)[0][0]
    # From 0 C air to 20 C reference, n = 0.65: (mu/mu0)^(2n-1) (rho/rho0)^(1-n) = 1.00821636, by hand.
    assert leaks.true_flow_m3_s(-10.0)[0] / volume_flow == pytest.approx(1.00821636, rel=2e-5)


def test_fan_flow_and_leak_flow_differ_by_the_densities() -> None:
    # 1000 m3/h of 20 C air through the fan are 931.77554 m3/h of 0 C air through the leaks, by hand.
    assert 1000 * air_of(20.0)[0][0] / air_of(0.0)[0][0] == pytest.approx(931.77554, rel=1e-5)


@given(pressure_pa=st.floats(-100.0, 100.0), pillowing=st.sampled_from([0.0, 0.3]))
def test_slope_is_the_derivative_of_the_flow(pressure_pa: float, pillowing: float) -> None:
    leaks = paths(one_leak_house(pillowing=pillowing), 21.0, 3.0)
    step = 1e-3
    upper, _ = leaks.outflow(np.array([pressure_pa + step]), NO_WIND)
    lower, _ = leaks.outflow(np.array([pressure_pa - step]), NO_WIND)
    if abs(pressure_pa) < 2 * step:
        return  # The air that flows changes sides here.
    _, slope = leaks.outflow(np.array([pressure_pa]), NO_WIND)
    assert slope[0] == pytest.approx((upper[0] - lower[0]) / (2 * step), rel=1e-3)
    assert slope[0] > 0


def fitted_exponent(leaks: LeakPaths, sign: int) -> float:
    pressures = np.linspace(10.0, 60.0, 10)
    flows = [float(leaks.true_flow_m3_s(sign * p)[0]) for p in pressures]
    return float(np.polyfit(np.log(pressures), np.log(flows), 1)[0])


def test_pillowing_shows_as_exponents_that_part_by_direction() -> None:
    leaks = paths(one_leak_house(pillowing=0.3))
    # Figures of a prototype of the same model with b = +0.3 on all paths and n = 0.65.
    assert fitted_exponent(leaks, +1) == pytest.approx(0.734, abs=0.01)
    assert fitted_exponent(leaks, -1) == pytest.approx(0.523, abs=0.01)
    assert leaks.true_flow_m3_s(50.0)[0] / leaks.true_flow_m3_s(-50.0)[0] == pytest.approx(1.81, abs=0.01)


def test_one_soft_membrane_gives_a_proportionally_smaller_split() -> None:
    barn = paths(load_house("gable-barn"))
    ratio = float(barn.true_flow_m3_s(50.0)[0] / barn.true_flow_m3_s(-50.0)[0])
    split = 0.28 * 0.15 * np.tanh(2.0)
    assert ratio == pytest.approx((1 + split) / (1 - split), rel=1e-9)


def test_wind_on_a_facade_blows_through_its_leaks_alone() -> None:
    house = load_house("mill-row")
    leaks = paths(replace(house, leaks=tuple(replace(leak, height_m=house.gauge_height_m) for leak in house.leaks)))
    wind = NO_WIND.copy()
    wind[0, 0] = 10.0
    mass, _ = leaks.outflow(np.zeros(1), wind)
    north = house.leaks[0]
    expected = 1.204097 * north.share * house.n50_per_h * house.volume_m3 / 3600 * (10 / 50) ** north.exponent
    assert mass[0] == pytest.approx(-expected, rel=1e-4)
