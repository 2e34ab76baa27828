"""What the gauge adds to a true pressure."""

from __future__ import annotations

import numpy as np
import pytest

from simulators.air import FloatArray
from simulators.gauge import Gauge

TRUE = np.array([-50.0, 120.0, 21.0, 11.0, 101325.0, 45.0])


def gauges(count: int, seed: int = 1) -> tuple[Gauge, FloatArray]:
    true = np.tile(TRUE, (count, 1))
    return Gauge(true, np.random.default_rng(seed)), true


def test_readings_scatter_by_the_noise_around_a_zero_of_their_own() -> None:
    gauge, true = gauges(2000)
    first = []
    for _ in range(10):
        gauge.step(0.1, true)
        first.append(gauge.shown[:, 0] + 50.0)
    series = np.array(first)
    assert series.std(axis=0, ddof=1).mean() == pytest.approx(0.08, rel=0.05)
    assert series.mean(axis=0).std() == pytest.approx(np.hypot(0.03, 0.08 / np.sqrt(10)), rel=0.06)


def test_the_zero_walks_a_tenth_of_a_pascal_in_ten_minutes() -> None:
    gauge, true = gauges(1000)
    gauge.step(0.1, true)
    start = gauge._zero[:, 0].copy()
    for _ in range(600):
        gauge.step(1.0, true)
    # 0.004 Pa per root second, times the root of 600 s.
    assert (gauge._zero[:, 0] - start).std() == pytest.approx(0.098, rel=0.08)


def test_the_hose_delays_a_step_by_a_quarter_second() -> None:
    gauge, true = gauges(500)
    true[:, 0] = 0.0
    for _ in range(5):
        gauge.step(0.05, true)
    assert gauge.shown[:, 0].mean() == pytest.approx(-50.0 * np.exp(-1), abs=0.05)


def test_pressures_are_rounded_and_clipped() -> None:
    gauge, true = gauges(50)
    gauge.step(0.1, true)
    hundredths = gauge.shown[:, 0] * 100
    assert hundredths == pytest.approx(np.rint(hundredths), abs=1e-6)
    true[:, 0], true[:, 1] = 900.0, -900.0
    for _ in range(30):
        gauge.step(0.1, true)
    assert (gauge.shown[:, 0] == 500.0).all()
    assert (gauge.shown[:, 1] == -500.0).all()


def test_a_gain_error_is_a_share_of_what_is_felt() -> None:
    true = np.tile(TRUE, (400, 1))
    gauge = Gauge(true, np.random.default_rng(1), gain=[0.01, 0.0, 0.0, 0.0, 0.0, 0.0])
    gauge.step(0.1, true)
    assert gauge.shown[:, 0].mean() == pytest.approx(-50.5, abs=0.02)
    assert gauge.shown[:, 1].mean() == pytest.approx(120.0, abs=0.02)


def test_zeroing_takes_the_drift_off_and_shows_nothing_meanwhile() -> None:
    gauge, true = gauges(500)
    gauge._zero[:, 0] = 2.0
    gauge.zero()
    blank = 0
    for _ in range(40):
        gauge.step(0.1, true)
        blank += int(np.isnan(gauge.shown[:, 0]).all())
        assert not np.isnan(gauge.shown[:, 2:]).any()
    assert 14 <= blank <= 16
    assert gauge._zero[:, 0].std() == pytest.approx(0.0125, abs=0.004)
