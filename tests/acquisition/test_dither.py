"""A small swing of a held fan: even about what is held, and followed by the model."""

from __future__ import annotations

import numpy as np
import pytest

from acquisition.control import Plant, PressureController
from acquisition.dither import HALF_S, NUDGE_PA, SWING_PA, Dither

PER_PA = 0.006
"""Speed 0.5, exponent 0.6, 50 Pa: 0.5 x 0.6 / 50, by hand."""
TICK_S = 0.1


def speeds(dither: Dither, seconds: float) -> np.ndarray:
    found = []
    for _ in range(round(seconds / TICK_S)):
        found.append(dither.wanted())
        dither.took(found[-1], TICK_S)
    return np.array(found)


def swung(wind_pa: float = 0.2, building_lag_s: float = 0.0, least: float = 0.0) -> Dither:
    return Dither(0.5, PER_PA, 1.1, building_lag_s, wind_pa, least)


def test_whole_periods_move_neither_mean_nor_slope() -> None:
    off = speeds(swung(), 3 * 2 * HALF_S) - 0.5
    time_s = np.arange(len(off)) * TICK_S
    assert np.abs(off) == pytest.approx(SWING_PA * PER_PA)
    assert float(off.sum()) == pytest.approx(0.0, abs=3 * SWING_PA * PER_PA)
    # A mean pressure that climbed by so little would be stored by 0.1 m3/h in 400 m3.
    assert abs(np.polyfit(time_s, off / PER_PA, 1)[0]) < 0.01


def test_a_nudge_is_one_strong_swing() -> None:
    dither = swung()
    speeds(dither, 3.7)
    dither.nudge()
    assert dither.nudging
    off = speeds(dither, 2 * HALF_S) - 0.5
    assert np.abs(off) == pytest.approx(NUDGE_PA * PER_PA)
    assert abs(float(off.sum())) < 3 * NUDGE_PA * PER_PA
    speeds(dither, TICK_S)
    assert not dither.nudging


def test_a_slow_building_is_swung_more_and_wind_needs_no_swing_but_a_larger_nudge() -> None:
    assert np.abs(speeds(swung(building_lag_s=3.0), 1.0) - 0.5) == pytest.approx(2 * SWING_PA * PER_PA)
    windy = swung(wind_pa=2.0)
    assert speeds(windy, 1.0) == pytest.approx(0.5)
    windy.nudge()
    assert speeds(windy, 1.0) - 0.5 == pytest.approx(4.0 * PER_PA)
    assert np.abs(speeds(swung(least=0.01), 1.0) - 0.5) == pytest.approx(0.01)


def test_what_the_pressure_should_do_follows_late_and_smaller() -> None:
    dither = swung()
    speeds(dither, 10.0)
    seen = dither.swing_pa
    # A square wave of half period h through one lag T peaks at A tanh(h / 2T): 0.4 x tanh(2.5 / 2.2) = 0.325 Pa, by
    # hand; the gauge's own lag takes a little more.
    assert 0.25 < seen.max() < 0.33
    assert -0.33 < seen.min() < -0.25


def test_the_controller_swings_only_what_it_holds() -> None:
    controller = PressureController(Plant(400.0, 0.1))
    controller.curve.guess(0.5, 50.0)
    controller.aim(50.0, 50.0)
    for _ in range(50):
        controller.update(50.0, 1000.0, TICK_S)
    assert not len(controller.swing_pa)
    controller.hold()
    told = []
    for _ in range(100):
        controller.update(50.0, 1000.0, TICK_S)
        told.append(controller.command)
    assert len(set(told[10:])) == 2
    assert np.mean(sorted(set(told[10:]))) == pytest.approx(controller.held_speed)
    assert len(controller.swing_pa)
    controller.nudge()
    assert controller.nudging
    controller.aim(40.0, 50.0)
    assert not controller.nudging
