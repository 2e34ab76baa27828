"""The settle test and the spread of the zero-flow pressure, on records made by hand."""

from __future__ import annotations

import numpy as np
import pytest

from acquisition.steadiness import settled, spread_of_means, trend

TIME = np.arange(31) / 10.0


def test_a_straight_line_has_its_own_mean_and_slope() -> None:
    found = trend(TIME, 40.0 + 0.5 * TIME)
    assert found is not None
    assert found.mean_pa == pytest.approx(40.0 + 0.5 * 1.5)
    assert found.slope_pa_s == pytest.approx(0.5)
    assert found.span_s == pytest.approx(3.0)


@pytest.mark.parametrize("count", [0, 1, 2])
def test_fewer_than_three_readings_have_no_trend(count: int) -> None:
    assert trend(TIME[:count], TIME[:count]) is None


def test_readings_of_one_moment_have_no_trend() -> None:
    assert trend(np.ones(5), np.arange(5.0)) is None


def test_a_pressure_that_stands_at_its_target_is_settled() -> None:
    found = trend(TIME, np.full(31, 50.4))
    assert found is not None
    assert settled(found, 50.0, building_lag_s=2.0, wind_spread_pa=0.0)
    assert not settled(found, 52.0, building_lag_s=2.0, wind_spread_pa=0.0)
    assert settled(found, 52.0, building_lag_s=2.0, wind_spread_pa=1.5)


def test_the_creep_of_a_tight_house_is_not_settled() -> None:
    """The mean is right, but eight seconds of time constant still have to bring 0.9 Pa."""
    creeping = trend(TIME, 50.0 - 0.1 * (TIME - 1.5))
    assert creeping is not None
    assert settled(creeping, 50.0, building_lag_s=2.0, wind_spread_pa=0.0)
    assert not settled(creeping, 50.0, building_lag_s=8.0, wind_spread_pa=0.0)


def test_a_window_that_is_too_short_is_not_settled() -> None:
    short = trend(TIME[:20], np.full(20, 50.0))
    assert short is not None
    assert not settled(short, 50.0, building_lag_s=0.1, wind_spread_pa=0.0)


def test_the_spread_of_means_ignores_what_averages_out() -> None:
    time = np.arange(600) / 10.0
    fast = np.where(np.arange(600) % 2, 5.0, -5.0)
    slow = np.sign(np.sin(2 * np.pi * time / 12.0 + 1e-9))
    assert spread_of_means(time, fast) == pytest.approx(0.0, abs=0.2)
    assert spread_of_means(time, slow) == pytest.approx(1.0, abs=0.1)
    assert spread_of_means(time[:20], slow[:20]) == 0.0
    assert spread_of_means(np.zeros(0), np.zeros(0)) == 0.0
