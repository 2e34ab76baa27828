"""Weighted line of organic correlation."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.estimators import estimator
from analysis.estimators.observations import Observations, PointNoise, ZeroParts
from analysis.estimators.wloc import organic_line
from analysis.methods import analyse
from analysis.powerlaw import flow_at
from tests.analysis.samples import FLOWS_M3_H, PRESSURES_PA, whole_test
from tests.analysis.test_noise import measured

NOISE = PointNoise((0.5,) * 10, (0.01,) * 10, ZeroParts(0.0, 0.0, 0.0))
POINTS = Observations(PRESSURES_PA, FLOWS_M3_H, NOISE)
VALUES = st.lists(
    st.tuples(st.floats(-5, 5), st.floats(-5, 5)), min_size=3, max_size=10, unique_by=(lambda p: p[0], lambda p: p[1])
)


@given(VALUES)
def test_exchanging_the_axes_gives_the_same_line(points: list[tuple[float, float]]) -> None:
    """What sets it apart from least squares: neither variable is the cause."""
    x, y = zip(*points, strict=True)
    if max(x) - min(x) < 1e-3 or max(y) - min(y) < 1e-3:
        return
    assert organic_line(x, y).slope * organic_line(y, x).slope == pytest.approx(1.0, rel=1e-9)


def test_it_is_a_little_steeper_than_least_squares() -> None:
    """Slope of organic correlation = slope of least squares over the correlation coefficient (textbook)."""
    x, y = POINTS.logarithms()
    line, ols = organic_line(x, y), estimator("ols").fit(POINTS)
    assert line.slope == pytest.approx(ols.n / math.sqrt(ols.r2), rel=1e-12)


def test_a_falling_line_keeps_its_sign() -> None:
    assert organic_line([1.0, 2.0, 3.0], [5.0, 3.0, 1.0]).slope == pytest.approx(-2.0)


def test_two_points_give_a_line_without_an_interval() -> None:
    noise = PointNoise((0.1, 0.1), (0.01, 0.01), ZeroParts(0.0, 0.0, 0.0))
    line = estimator("wloc").fit(Observations((10.0, 50.0), (400.0, 1200.0), noise))
    assert flow_at(line, 50.0).value == pytest.approx(1200.0)
    assert flow_at(line, 50.0).high == math.inf


def test_scaling_all_uncertainties_changes_neither_line_nor_interval() -> None:
    wider = PointNoise((5.0,) * 10, (0.1,) * 10, ZeroParts(0.0, 0.0, 0.0))
    one, other = estimator("wloc").fit(POINTS), estimator("wloc").fit(replace(POINTS, noise=wider))
    assert (one.n, one.ln_c, one.var_n) == pytest.approx((other.n, other.ln_c, other.var_n), rel=1e-10)


def test_a_test_is_analysed_by_it() -> None:
    result = analyse(whole_test(measured()), fit="wloc")
    assert result.fit == "wloc"
    assert result.runs[0].q50_m3_h.value == pytest.approx(1332.6, rel=0.005)
