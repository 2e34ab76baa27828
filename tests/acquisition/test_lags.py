"""The lags of a fan, learned from its steps, held against a fan whose lags are known."""

from __future__ import annotations

import numpy as np
import pytest

from acquisition.control import MOST_FALL, Plant, PressureController
from acquisition.lags import CANDIDATES_S, FAN_LAG_S, FanLags, StepModel

DT_S = 0.1


def a_step(lags: FanLags, rng: np.random.Generator, start: float, end: float, fan_lag_s: float) -> None:
    """Show the step of a fan of this lag; the curve that made speeds of its pressures is off by a few per cent."""
    fan = StepModel(start, fan_lag_s)
    lags.begin(start)
    for _ in range(60):
        lags.watch(1.04 * fan.value - 0.01 + 0.0005 * rng.standard_normal(), end, DT_S, 1.0)
        fan.step(end, DT_S, 1.0)
    lags.learn()


def test_a_fan_that_coasts_slowly_is_known_after_two_steps_each_way() -> None:
    lags, rng = FanLags(), np.random.default_rng(1)
    assert lags.lag_s(up=True) == lags.lag_s(up=False) == FAN_LAG_S
    for start, end in ((0.5, 0.45), (0.45, 0.55), (0.55, 0.48), (0.48, 0.6)):
        a_step(lags, rng, start, end, 1.6 if end < start else 0.8)
    assert lags.lag_s(up=False) in CANDIDATES_S[-2:]
    assert lags.lag_s(up=True) in CANDIDATES_S[:2]


def test_what_is_too_short_or_too_small_teaches_nothing() -> None:
    lags, rng = FanLags(), np.random.default_rng(1)
    for _ in range(5):
        a_step(lags, rng, 0.5, 0.502, 1.6)
    lags.begin(0.5)
    lags.watch(0.5, 0.3, DT_S, 1.0)
    lags.learn()
    lags.learn()
    assert lags.lag_s(up=False) == FAN_LAG_S


def test_the_fan_is_told_at_most_so_much_less_than_it_turns() -> None:
    controller = PressureController(Plant(300.0))
    controller.curve.guess(0.8, 60.0)
    controller.aim(60.0, 60.0)
    for _ in range(100):
        controller.update(60.0, 900.0, DT_S)
    controller.aim(5.0, 60.0)
    falls = []
    for _ in range(20):
        before = controller.speed_now
        controller.update(60.0, 900.0, DT_S)
        falls.append(before - controller.command)
    assert max(falls) == pytest.approx(MOST_FALL, abs=0.003)
