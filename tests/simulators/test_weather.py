"""Wind against von Karman's spectrum, its statistics, and pressures that can be worked out by hand."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy import signal

from simulators.air import FloatArray
from simulators.house import FACADES, Facade, House
from simulators.houses import load_house
from simulators.noise import AT_ONCE, Noise
from simulators.rigging import Rigging, TapPlace
from simulators.weather import GustProcess, WanderProcess, Weather
from tests.simulators.builders import REFERENCE_CLIMATE

SPEED_M_S = 5.0
LENGTH_M = 35.0
AIR = np.array([1.2041])


@pytest.fixture(scope="module")
def gusts() -> FloatArray:
    """Gusts of 600 houses at 5 m/s over 410 s, 10 a second, (steps, houses)."""
    rng = np.random.default_rng(3)
    process = GustProcess(np.full(600, LENGTH_M / SPEED_M_S), rng)
    return np.array([process.step(0.1, rng.standard_normal((600, 2))) for _ in range(4096)])


def test_gusts_have_unit_variance_from_the_start(gusts: FloatArray) -> None:
    assert gusts.var() == pytest.approx(1.0, abs=0.02)
    assert gusts[0].var() == pytest.approx(1.0, abs=0.15)
    assert gusts.mean() == pytest.approx(0.0, abs=0.02)


@pytest.mark.parametrize(
    ("frequency_hz", "ratio"),
    # Ratio of the prototype's sampled spectrum to von Karman's at 5 m/s; the fall-off above 0.3 Hz is the filter's.
    [(0.01, 1.04), (0.1, 1.05), (0.3, 1.02), (1.0, 0.78), (3.0, 0.72)],
)
def test_gusts_have_von_karmans_spectrum(gusts: FloatArray, frequency_hz: float, ratio: float) -> None:
    frequencies, power = signal.welch(gusts, fs=10.0, nperseg=2048, axis=0)
    near = (frequencies > 0.8 * frequency_hz) & (frequencies < 1.25 * frequency_hz)
    scale_s = LENGTH_M / SPEED_M_S
    # Longitudinal spectrum 4 T / (1 + 70.8 (f T)^2)^(5/6) (textbook, from memory).
    karman = 4 * scale_s / (1 + 70.8 * (frequencies * scale_s) ** 2) ** (5 / 6)
    assert float((power.mean(axis=1)[near] / karman[near]).mean()) == pytest.approx(ratio, abs=0.06)


def test_integral_time_is_that_of_the_length_scale(gusts: FloatArray) -> None:
    spectrum = np.abs(np.fft.rfft(gusts, n=8192, axis=0)) ** 2
    covariance = np.fft.irfft(spectrum, axis=0)[:400].mean(axis=1) / np.arange(4096, 3696, -1)
    # 7.0 s by theory, 7.6 s in the prototype.
    assert float(np.trapezoid(covariance / covariance[0], dx=0.1)) == pytest.approx(7.3, abs=0.5)


def test_the_step_width_does_not_change_the_gusts() -> None:
    rng = np.random.default_rng(4)
    coarse = GustProcess(np.full(2000, 7.0), rng)
    series = np.array([coarse.step(1.0, rng.standard_normal((2000, 2))) for _ in range(60)])
    rng = np.random.default_rng(5)
    fine = GustProcess(np.full(2000, 7.0), rng)
    finer = np.array([fine.step(0.1, rng.standard_normal((2000, 2))) for _ in range(600)])[9::10]
    for course in (series, finer):
        assert course.var() == pytest.approx(1.0, abs=0.03)
    lag1 = [(c[:-1] * c[1:]).mean() for c in (series, finer)]
    assert lag1[0] == pytest.approx(lag1[1], abs=0.03)


def test_wander_has_unit_variance_and_its_time_scale() -> None:
    rng = np.random.default_rng(6)
    process = WanderProcess(np.full((4000, 1), 150.0), rng)
    first = process.step(0.1, rng.standard_normal((4000, 1))).copy()
    last = first
    for _ in range(1500):
        last = process.step(0.1, rng.standard_normal((4000, 1)))
    assert last.var() == pytest.approx(1.0, abs=0.08)
    assert float((first * last).mean()) == pytest.approx(np.exp(-1), abs=0.05)


def house_in(wind_from_deg: float, shelter: float = 1.0) -> House:
    climate = replace(REFERENCE_CLIMATE, wind_from_deg=wind_from_deg, shelter=shelter)
    return replace(load_house("mill-row"), climate=climate)


def means(house: House, wind_m_s: float, count: int = 100, seconds: float = 60.0) -> tuple[FloatArray, FloatArray]:
    """Return mean facade pressures (F,) and all speeds."""
    weather = Weather([house] * count, [wind_m_s] * count, np.random.default_rng(7))
    pressures, speeds = np.zeros(len(FACADES)), []
    air = np.full(count, 1.2041)
    steps = round(seconds / 0.1)
    for _ in range(steps):
        weather.step(0.1, air)
        pressures += weather.facade_pa.mean(axis=0) / steps
        speeds.append(weather.speed_m_s.copy())
    return pressures, np.array(speeds)


def test_wind_presses_on_its_own_facade_and_sucks_at_the_others() -> None:
    pressures, _ = means(house_in(90.0), 5.0)
    by_facade = dict(zip(FACADES, pressures, strict=True))
    assert by_facade[Facade.EAST] > 0
    assert all(by_facade[facade] < 0 for facade in (Facade.NORTH, Facade.SOUTH, Facade.WEST, Facade.ROOF))
    # 15.05125 Pa dynamic pressure at 5 m/s; gusts of 0.305 rms add 9 % to its mean.
    assert by_facade[Facade.ROOF] == pytest.approx(-0.5 * 15.05125 * (1 + 0.28**2 + 0.12**2), rel=0.05)


def test_the_floor_edge_feels_the_mean_of_the_walls() -> None:
    pressures, _ = means(house_in(30.0), 4.0)
    assert pressures[-1] == pytest.approx(pressures[:4].mean(), rel=1e-9)


def test_shelter_takes_its_share_of_every_pressure() -> None:
    open_site, _ = means(house_in(10.0), 4.0)
    sheltered, _ = means(house_in(10.0, shelter=0.5), 4.0)
    assert sheltered == pytest.approx(0.5 * open_site, rel=1e-9)


@pytest.fixture(scope="module")
def windy() -> dict[str, FloatArray]:
    """What 400 like houses feel of 5 m/s for 100 s, each (steps, houses)."""
    weather = Weather([house_in(0.0)] * 400, [SPEED_M_S] * 400, np.random.default_rng(9))
    air = np.full(400, 1.2041)
    rows: list[tuple[FloatArray, ...]] = []
    for _ in range(1000):
        weather.step(0.1, air)
        rows.append((weather.speed_m_s, weather.swing_rad, weather.gust, weather.facade_pa[:, 4], weather.tap_pa[:, 0]))
    return dict(zip(("speed", "swing", "gust", "roof", "tap"), map(np.array, zip(*rows, strict=True)), strict=True))


def test_wind_has_the_stated_turbulence_in_speed_and_direction(windy: dict[str, FloatArray]) -> None:
    assert windy["speed"].mean() == pytest.approx(5.0, rel=0.02)
    assert windy["speed"].std() / 5.0 == pytest.approx(np.hypot(0.28, 0.12), rel=0.05)
    assert windy["swing"].std() == pytest.approx(np.hypot(0.75 * 0.28, 0.14), rel=0.05)


def test_the_gusts_of_the_weather_have_the_length_scale_over_the_speed(windy: dict[str, FloatArray]) -> None:
    gust = windy["gust"]
    # Two poles at 0.8403/T and 5.989/T, T = 7 s: their covariance after 7 s over that at once, by hand.
    poles, residues = np.array([0.8403, 5.989]), np.array([0.7721, 0.4861])
    weights = (np.outer(residues, residues) / np.add.outer(poles, poles)).sum(axis=1)
    expected = float((weights * np.exp(-poles)).sum() / weights.sum())
    assert float((gust[:-70] * gust[70:]).mean()) == pytest.approx(expected, abs=0.04)


def test_a_facade_adds_turbulence_of_its_own_and_averages_over_its_area(windy: dict[str, FloatArray]) -> None:
    dynamic = 0.5 * 1.2041 * windy["speed"] ** 2
    lag_s = 0.35 * np.sqrt(9 * 5.0) / 5.0
    steady = -0.5 * dynamic
    for step in range(1, len(steady)):
        steady[step] = steady[step - 1] + (steady[step] - steady[step - 1]) * (1 - np.exp(-0.1 / lag_s))
    own = windy["roof"][100:] - steady[100:]
    # Noise of the time scale 0.6 h/U behind a lag: its variance falls to scale / (scale + lag), textbook.
    scale_s = 0.6 * 5.0 / 5.0
    expected = 0.10 * np.sqrt((dynamic**2).mean() * scale_s / (scale_s + lag_s))
    assert own.std() == pytest.approx(float(expected), rel=0.1)


def test_the_far_tap_has_an_error_of_its_place_and_turbulence_of_its_own(windy: dict[str, FloatArray]) -> None:
    felt = windy["tap"] / (0.5 * 1.2041 * windy["speed"] ** 2)
    assert felt.mean(axis=0).std() == pytest.approx(0.05, rel=0.15)
    assert felt.std(axis=0).mean() == pytest.approx(0.07, rel=0.1)


def test_calm_air_presses_on_nothing() -> None:
    weather = Weather([house_in(0.0)], [0.0], np.random.default_rng(8))
    for _ in range(100):
        weather.step(0.1, AIR)
        assert not weather.facade_pa.any()
        assert not weather.tap_pa.any()


def test_a_tap_before_a_wall_feels_the_wind_there_with_an_error_of_its_place() -> None:
    house = replace(house_in(90.0), fan_facade=Facade.SOUTH)
    weather = Weather([house] * 300, [4.0] * 300, np.random.default_rng(7), Rigging(taps=4, tap=TapPlace.FACADE))
    steps = 300
    taps, walls = np.zeros((300, 4)), np.zeros((300, 4))
    for _ in range(steps):
        weather.step(0.1, np.full(300, 1.2041))
        taps += weather.tap_pa / steps
        walls += weather.facade_pa[:, :4] / steps
    # The first tap lies on the wall of the fan: south, west, north, east.
    off = taps - walls[:, [2, 3, 0, 1]]
    # 4 m/s: 9.633 Pa, gusts add 9 %; sd 0.10 of the place and what is left of 30 s of its own turbulence.
    assert off.mean() == pytest.approx(0.0, abs=0.15)
    assert off.std() == pytest.approx(0.10 * 9.633 * 1.09, rel=0.15)


def test_the_gust_that_somebody_orders_comes_on_top() -> None:
    weather = Weather([house_in(0.0)], [3.0], np.random.default_rng(7))
    calm = Weather([house_in(0.0)], [3.0], np.random.default_rng(7))
    weather.gust_m_s = np.array([4.0])
    weather.step(0.1, AIR)
    calm.step(0.1, AIR)
    assert weather.speed_m_s - calm.speed_m_s == pytest.approx(4.0)


def test_noise_drawn_ahead_is_the_noise_drawn_step_by_step() -> None:
    ahead, now = Noise(np.random.default_rng(7), 5), np.random.default_rng(7)
    for _ in range(2 * AT_ONCE // 5):
        assert np.array_equal(ahead.step(), now.standard_normal(5))
