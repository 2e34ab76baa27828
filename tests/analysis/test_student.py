"""Student's t."""

from __future__ import annotations

import math

import pytest

from analysis.student import pooled_dof, t_multiplier, t_probability


def test_without_degrees_of_freedom_nothing_is_bounded_and_nothing_is_known() -> None:
    assert t_multiplier(0) == math.inf
    assert t_probability(-math.inf, 0) == 0.5


def test_infinite_degrees_of_freedom_are_the_normal_distribution() -> None:
    assert t_multiplier(math.inf) == pytest.approx(1.959963984540054)
    assert t_probability(1.959963984540054, math.inf) == pytest.approx(0.975)


def test_quantile_and_probability_are_inverse() -> None:
    for dof in (1.0, 2.5, 8.0, 30.0):
        assert t_probability(t_multiplier(dof), dof) == pytest.approx(0.975, rel=1e-12)


def test_pooled_degrees_of_freedom_lie_between_the_smallest_and_the_sum() -> None:
    assert pooled_dof((1.0, 1.0), (8.0, 8.0)) == pytest.approx(16.0)
    assert pooled_dof((1.0, 0.0), (8.0, 3.0)) == pytest.approx(8.0)
    assert pooled_dof((1.0, 2.0), (8.0, 0.0)) == 0.0
    assert pooled_dof((0.0, 0.0), (8.0, 3.0)) == 3.0
    assert pooled_dof((1.0,), (math.inf,)) == math.inf
