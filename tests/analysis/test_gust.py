"""Gust weights: what they take away, what they leave alone, and where they cannot tell."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import NDArray

from analysis.gust import SteadyWindow, gust_weights, weighted

COUNT = 400


def gusty(seed: int = 1, taps: int = 4, shaken: float = 3.0) -> tuple[SteadyWindow, NDArray[np.float64]]:
    """Return a window whose first tap is shaken by gusts that the house does not feel, and what the house feels."""
    rng = np.random.default_rng(seed)
    felt = 50.0 + 0.2 * np.cumsum(rng.standard_normal(COUNT)) / 10.0
    taps_pa = felt[:, None] + 0.2 * rng.standard_normal((COUNT, taps))
    taps_pa[:, 0] += shaken * rng.standard_normal(COUNT)
    return SteadyWindow(taps_pa, 100.0 * felt**0.65), felt


def test_a_tap_in_gusts_loses_its_weight_and_the_mean_stands_still() -> None:
    window, felt = gusty()
    weights = gust_weights([window])
    assert sum(weights) == pytest.approx(1.0)
    assert weights[0] < 0.1
    left = weighted(window.taps_pa, weights) - felt
    plain = window.taps_pa.mean(axis=1) - felt
    assert left.std() < 0.5 * plain.std()


def test_fewer_than_three_taps_have_no_weights_and_no_window_has_none() -> None:
    window, _ = gusty(taps=2)
    assert gust_weights([window]) == ()
    assert gust_weights([]) == ()


def test_where_nothing_moves_taps_weigh_alike() -> None:
    still = SteadyWindow(np.full((50, 4), 50.0), np.full(50, 900.0))
    assert gust_weights([still]) == (0.25,) * 4


@given(st.floats(-20.0, 20.0), st.integers(3, 4))
def test_a_constant_at_one_tap_changes_no_weight(offset: float, taps: int) -> None:
    window, _ = gusty(taps=taps)
    moved = window.taps_pa.copy()
    moved[:, 1] += offset
    assert gust_weights([SteadyWindow(moved, window.flow_m3_h)]) == pytest.approx(gust_weights([window]), abs=1e-9)


@given(st.permutations(range(4)))
def test_the_order_of_the_taps_is_the_order_of_the_weights(order: list[int]) -> None:
    window, _ = gusty()
    weights = gust_weights([window])
    turned = gust_weights([SteadyWindow(window.taps_pa[:, order], window.flow_m3_h)])
    assert turned == pytest.approx([weights[at] for at in order], abs=1e-9)
