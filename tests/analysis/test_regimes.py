"""Two regimes in one run, against general least squares: scipy's curve_fit and statsmodels' dummy regression."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import pytest
import statsmodels.api as sm
from numpy.typing import NDArray
from scipy.optimize import curve_fit

from analysis.errors import InvalidInput
from analysis.regimes import find_regimes, two_regimes
from analysis.student import t_multiplier

PRESSURES = (60.0, 54.0, 48.0, 43.0, 38.0, 33.0, 28.0, 23.0, 18.0, 13.0)
SCATTER = (0.002, -0.001, 0.0015, -0.002, 0.001, 0.0, -0.0015, 0.002, -0.001, 0.0005)
"""Invented, in ln units."""


def flows(changed_at: int, step: float, scatter: Sequence[float] = SCATTER) -> list[float]:
    """Return the flows of an invented house (C 46, n 0.64) of which the level jumps by a share."""
    return [
        46.0 * p**0.64 * (1.0 + (step if at >= changed_at else 0.0)) * math.exp(e)
        for at, (p, e) in enumerate(zip(PRESSURES, scatter, strict=True))
    ]


@pytest.mark.parametrize("changed_at", [1, 3, 7, 9])
def test_lines_and_covariance_are_those_of_general_least_squares(changed_at: int) -> None:
    measured = flows(changed_at, 0.15)
    found = two_regimes(PRESSURES, measured, changed_at)

    def model(at: NDArray[np.float64], ln_c: float, n: float, ln_step: float) -> NDArray[np.float64]:
        return np.asarray(ln_c + n * np.log(np.array(PRESSURES))[at.astype(int)] + ln_step * (at >= changed_at))

    best, covariance = curve_fit(model, np.arange(10.0), np.log(measured), p0=(4.0, 0.6, 0.0))
    assert (found.ln_c_before, found.n.value, found.ln_step) == pytest.approx(best, rel=1e-6)
    assert np.array(found.covariance) == pytest.approx(covariance, rel=1e-5)
    # The step at 50 Pa and its interval by the derivatives of the library's own solution.
    level = math.exp(best[0] + best[1] * math.log(50.0))
    step = level * math.expm1(best[2])
    slope = np.array([step, step * math.log(50.0), level * math.exp(best[2])])
    half = t_multiplier(7.0) * math.sqrt(slope @ covariance @ slope)
    assert found.step_m3_h.value == pytest.approx(step, rel=1e-6)
    assert found.step_m3_h.half_width == pytest.approx(half, rel=1e-5)
    assert found.step_m3_h.low < 46.0 * 50.0**0.64 * 0.15 < found.step_m3_h.high


def test_the_chance_is_that_of_the_f_test() -> None:
    measured = np.log(flows(4, 0.004))
    x, after = np.log(np.array(PRESSURES)), (np.arange(10) >= 4).astype(float)
    whole = sm.OLS(measured, sm.add_constant(np.column_stack([x, after]))).fit()
    single = sm.OLS(measured, sm.add_constant(x)).fit()
    _, chance, _ = whole.compare_f_test(single)
    assert two_regimes(PRESSURES, np.exp(measured).tolist(), 4).chance == pytest.approx(chance, rel=1e-6)


@pytest.mark.parametrize("step", [0.15, -0.1])
def test_the_change_is_found_where_it_was(step: float) -> None:
    found = find_regimes(PRESSURES, flows(4, step))
    assert found is not None
    assert found.changed_at == 4
    assert found.flow_m3_h(50.0, after=True) / found.flow_m3_h(50.0, after=False) == pytest.approx(1 + step, rel=0.01)


def test_in_one_regime_none_is_found() -> None:
    rng = np.random.default_rng(7)
    for _ in range(200):
        assert find_regimes(PRESSURES, flows(10, 0.0, rng.normal(0.0, 0.01, 10).tolist())) is None
    # A line that bends a little is no step either.
    bent = [q * (1.0 + 0.02 * math.log(p / 30.0) ** 2) for p, q in zip(PRESSURES, flows(10, 0.0), strict=True)]
    assert find_regimes(PRESSURES, bent) is None


def test_what_cannot_be_told_is_refused_in_a_sentence() -> None:
    with pytest.raises(InvalidInput, match="at least 5 points"):
        two_regimes((60.0, 50.0), (600.0, 520.0), 1)
    with pytest.raises(InvalidInput, match="from 1 to 9"):
        two_regimes(PRESSURES, flows(4, 0.1), 10)
    with pytest.raises(InvalidInput, match="different pressures"):
        two_regimes((50.0,) * 4 + (30.0,) * 4, (500.0,) * 4 + (350.0,) * 4, 4)
    with pytest.raises(InvalidInput, match="above 0"):
        two_regimes((-1.0, *PRESSURES[1:]), flows(4, 0.1), 4)
    assert find_regimes((50.0,) * 6, (500.0,) * 6) is None
