"""Houses by chance: their spread, and that the fan copes with each."""

from __future__ import annotations

import numpy as np
import pytest

from simulators.element import range_named
from simulators.house import House
from simulators.plant import Plant
from simulators.random_house import random_house, random_houses
from tests.simulators.builders import run


@pytest.fixture(scope="module")
def street() -> tuple[House, ...]:
    return random_houses(600, 11)


def test_leakage_is_spread_evenly_over_the_decades(street: tuple[House, ...]) -> None:
    n50 = np.log([house.n50_per_h for house in street])
    assert np.log(0.3) <= n50.min() < np.log(0.33)
    assert np.log(9.0) < n50.max() <= np.log(10.0)
    # Mean and standard deviation of an even spread: middle, and width over the root of 12.
    assert n50.mean() == pytest.approx(np.log(np.sqrt(3.0)), abs=0.15)
    assert n50.std() == pytest.approx(np.log(10 / 0.3) / np.sqrt(12), rel=0.06)


def test_shapes_and_exponents_are_those_of_houses(street: tuple[House, ...]) -> None:
    volumes = np.array([house.volume_m3 for house in street])
    assert np.median(volumes) == pytest.approx(380.0, rel=0.06)
    assert volumes.min() >= 120.0
    assert volumes.max() <= 1200.0
    means = np.array([np.mean([leak.exponent for leak in house.leaks]) for house in street])
    assert 0.49 < means.min() < 0.53
    assert 0.72 < means.max() < 0.78
    assert all(0.5 <= leak.exponent <= 0.85 for house in street for leak in house.leaks)
    shares = np.array([[leak.share for leak in house.leaks] for house in street])
    assert shares.sum(axis=1) == pytest.approx(1.0)
    # Dirichlet weights 2 2 2 2 4 2: 2/14 each, 4/14 the roof.
    assert shares.mean(axis=0) == pytest.approx(np.array([2, 2, 2, 2, 4, 2]) / 14, abs=0.02)
    across_k = [house.climate.indoor_c - house.climate.outdoor_c for house in street]
    assert min(across_k) >= -7.0
    assert max(across_k) <= 25.0


def test_one_seed_draws_one_street_however_long(street: tuple[House, ...]) -> None:
    assert random_houses(20, 11) == street[:20]
    assert random_houses(3, 12) != street[:3]
    assert random_house(np.random.default_rng(5)) == random_house(np.random.default_rng(5))


@pytest.mark.parametrize("direction", [-1, 1])
def test_the_fan_brings_each_to_sixty_pascal_and_none_but_small_tight_ones_below_its_range(
    street: tuple[House, ...], direction: int
) -> None:
    plant = Plant(street, 1)
    course = run(plant, 90.0, 1.0, direction, dt_s=0.5)
    zero = Plant(street, 1).pressure_pa
    assert (direction * (course[-1] - zero)).min() > 60.0
    element = np.array([float(leakage_at(house, 50.0)) for house in street])
    assert (element < 250.0).all()
    assert (element > 8.0).mean() > 0.99


def leakage_at(house: House, pascal: float) -> float:
    """Return the pressure at the flow element when the house leaks what it does at a pressure, reference air."""
    fitted = range_named(house.fitted)
    flow = sum(
        leak.share * house.n50_per_h * house.volume_m3 / 3600.0 * (pascal / 50.0) ** leak.exponent
        for leak in house.leaks
    )
    return float((flow / fitted.coefficient) ** (1.0 / fitted.exponent))
