"""The spread of a point without the swing of its own fan: gone in calm, wind left as it is."""

from __future__ import annotations

import math

import numpy as np
import pytest

from acquisition.dither import Dither
from acquisition.series import RunData
from acquisition.unswung import without_swing
from drivers.clock import NS_PER_S

TICK_S = 0.1
BEFORE_S, WINDOW_S = 15.0, 20.0
NOISE_PA = 0.08


def window(
    fan_lag_s: float = 1.1, house_lag_s: float = 0.8, swings: bool = True
) -> tuple[RunData, np.ndarray, np.ndarray]:
    """Return the record of a held fan, and stamps and pressures (n,) of its window.

    Fan and house are followed by Euler steps of a hundredth of a second, with an exponent of 0.65 at 50 Pa.
    """
    data, dither = RunData(), Dither(0.5, 0.0065, fan_lag_s, house_lag_s, 0.1, 0.002)
    fan = house = 0.5
    stamps, seen, late = [], [], [0.5] * 50
    for tick in range(round((BEFORE_S + WINDOW_S) / TICK_S)):
        speed = round(dither.wanted(), 3) if swings else 0.5
        data.drive(round(tick * TICK_S * NS_PER_S), speed)
        dither.took(speed, TICK_S)
        for _ in range(10):
            late.append(speed)
            fan += 0.01 / fan_lag_s * (late.pop(0) - fan)
            house += 0.01 / house_lag_s * (fan - house)
        stamps.append(round((tick + 1) * TICK_S * NS_PER_S))
        seen.append(-50.0 * (house / 0.5) ** (1 / 0.65))
    inside = round(BEFORE_S / TICK_S)
    return data, np.array(stamps[inside:]), np.array(seen[inside:])


@pytest.mark.parametrize(("fan_lag_s", "house_lag_s"), [(0.8, 0.4), (1.1, 0.8), (1.4, 2.0)])
def test_in_calm_only_the_noise_of_the_gauge_is_left(fan_lag_s: float, house_lag_s: float) -> None:
    data, times_ns, pressure = window(fan_lag_s, house_lag_s)
    pressure = pressure + np.random.default_rng(4).normal(0.0, NOISE_PA, len(pressure))
    left = without_swing(data, times_ns, pressure)
    assert pressure.std() > 1.4 * NOISE_PA
    assert left.std() == pytest.approx(NOISE_PA, rel=0.2)
    assert left.mean() == pytest.approx(pressure.mean(), abs=1e-9)


def test_wind_is_left_as_it_is() -> None:
    """Gusts of a time constant of 2 s (first-order noise): what chance shares with the swing is all that goes."""
    data, times_ns, pressure = window()
    rng, keeps = np.random.default_rng(11), math.exp(-TICK_S / 2.0)
    gusts = np.zeros(len(pressure))
    for at in range(1, len(gusts)):
        gusts[at] = keeps * gusts[at - 1] + rng.normal(0.0, math.sqrt(1 - keeps * keeps))
    left = without_swing(data, times_ns, pressure + gusts)
    assert left.std() > 0.93 * gusts.std()


def test_a_fan_that_stood_or_of_which_nothing_is_known_changes_nothing() -> None:
    data, times_ns, pressure = window(swings=False)
    shaken = pressure + np.sin(np.arange(len(pressure)))
    assert without_swing(data, times_ns, shaken) is shaken
    assert without_swing(RunData(), times_ns, shaken) is shaken
