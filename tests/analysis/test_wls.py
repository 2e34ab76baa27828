"""Weighted least squares."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from analysis.estimators import estimator
from analysis.estimators.observations import Observations, PointNoise, ZeroParts
from analysis.methods import analyse
from analysis.powerlaw import flow_at, ln_flow_variance
from analysis.student import chi_square_limit
from tests.analysis.samples import FLOWS_M3_H, PRESSURES_PA, check_of, whole_test
from tests.analysis.test_noise import measured

NOISE = PointNoise((0.5,) * 10, (0.01,) * 10, ZeroParts(0.0, 0.0, 0.0))
POINTS = Observations(PRESSURES_PA, FLOWS_M3_H, NOISE)


def test_equal_weights_give_the_ordinary_line() -> None:
    even = PointNoise(tuple(0.01 * pressure for pressure in PRESSURES_PA), (0.01,) * 10, ZeroParts(0.0, 0.0, 0.0))
    weighted, plain = estimator("wls").fit(replace(POINTS, noise=even)), estimator("ols").fit(POINTS)
    assert (weighted.n, weighted.ln_c, weighted.r2) == pytest.approx((plain.n, plain.ln_c, plain.r2), rel=1e-10)


def test_noise_that_is_constant_in_pascal_gives_low_points_little_weight() -> None:
    flows = (*FLOWS_M3_H[:-1], 1.10 * FLOWS_M3_H[-1])
    plain, weighted = (estimator(fit).fit(replace(POINTS, flow_m3_h=flows)) for fit in ("ols", "wls"))
    truth = estimator("ols").fit(POINTS).n
    assert abs(weighted.n - truth) < 0.5 * abs(plain.n - truth)


def test_points_that_scatter_less_than_expected_do_not_narrow_the_interval() -> None:
    """Variance of the level of a line: one over the sum of the weights (textbook)."""
    line = estimator("wls").fit(POINTS)
    weights = [1 / (0.01**2 + (line.n * 0.5 / pressure) ** 2) for pressure in PRESSURES_PA]
    middle = math.exp(
        math.fsum(w * math.log(p) for w, p in zip(weights, PRESSURES_PA, strict=True)) / math.fsum(weights)
    )
    assert line.dof == math.inf
    assert ln_flow_variance(line, middle) == pytest.approx(1 / math.fsum(weights), rel=1e-9)


def test_points_that_scatter_more_than_expected_widen_it() -> None:
    sure = PointNoise((0.02,) * 10, (0.001,) * 10, ZeroParts(0.0, 0.0, 0.0))
    line = estimator("wls").fit(replace(POINTS, noise=sure))
    assert line.dof == 8
    assert flow_at(line, 50.0).half_width > 1.96 * 0.001 * 1332 / math.sqrt(10)
    assert chi_square_limit(8) == pytest.approx(15.507, abs=5e-4)  # textbook table


def test_two_points_have_the_interval_of_their_own_uncertainties() -> None:
    noise = PointNoise((0.1, 0.1), (0.01, 0.01), ZeroParts(0.0, 0.0, 0.0))
    line = estimator("wls").fit(Observations((10.0, 50.0), (400.0, 1200.0), noise))
    assert 0 < flow_at(line, 50.0).low < 1200.0 < flow_at(line, 50.0).high < 1300.0


def test_a_test_analysed_by_it_says_so_and_keeps_the_official_checks() -> None:
    test = whole_test(measured())
    official, weighted = analyse(test), analyse(test, fit="wls")
    assert (official.fit, weighted.fit) == ("ols", "wls")
    assert weighted.runs[0].n.value != official.runs[0].n.value
    assert check_of(weighted, "exponent").value == official.runs[0].n.value
    assert check_of(weighted, "r2").value == official.runs[0].r2


def test_a_weighted_fit_without_noise_is_a_fault_of_the_program() -> None:
    with pytest.raises(ValueError, match="without their noise"):
        estimator("wls").fit(Observations(PRESSURES_PA, FLOWS_M3_H))
