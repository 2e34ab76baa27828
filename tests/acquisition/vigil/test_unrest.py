"""How restless a channel is: against noise of known size."""

from __future__ import annotations

import numpy as np
import pytest

from acquisition.vigil.unrest import flutter, liveliness, repeated

TIMES = np.arange(-80, 0) / 10.0
RNG = np.random.default_rng(7)


def test_white_noise_alone_is_not_lively() -> None:
    """The mean of ten readings of white noise scatters by a third of one; about 1 is that and nothing more."""
    values = [liveliness(TIMES, RNG.normal(50.0, 0.08, len(TIMES))) for _ in range(200)]
    assert np.median([value for value in values if value is not None]) == pytest.approx(1.1, abs=0.15)


def test_slow_wind_is_lively() -> None:
    value = liveliness(TIMES, 50.0 + np.sin(TIMES) + RNG.normal(0.0, 0.08, len(TIMES)))
    assert value is not None
    assert value > 10.0


def test_flutter_is_the_scatter_of_half_seconds_and_forgives_one_step() -> None:
    values = [flutter(TIMES, RNG.normal(0.0, 1.0, len(TIMES))) for _ in range(300)]
    expected = 1.0 / np.sqrt(5.0)  # five readings in half a second
    assert np.mean([value for value in values if value is not None]) == pytest.approx(expected, rel=0.1)
    step = np.where(TIMES < -3.0, 50.0, 20.0) + RNG.normal(0.0, 0.05, len(TIMES))
    value = flutter(TIMES, step)
    assert value is not None
    assert value < 0.1


def test_too_little_to_go_by_says_nothing() -> None:
    few = np.array([-0.2, -0.1, 0.0])
    assert flutter(few, few) is None
    assert liveliness(few, few) is None
    assert liveliness(TIMES, np.full(len(TIMES), 5.0)) is None


def test_what_is_left_over_of_a_block_is_no_mean() -> None:
    times = np.arange(-30, 1) / 10.0
    values = np.where(times == 0.0, 5.0, 0.0) + RNG.normal(0.0, 0.01, len(times))
    value = flutter(times, values)
    assert value is not None
    assert value < 0.02


def test_repeated_readings_are_counted() -> None:
    assert repeated(np.array([1.0, 1.0, 2.0, 3.0, 3.0])) == 0.5
    assert repeated(np.array([1.0])) == 0.0
