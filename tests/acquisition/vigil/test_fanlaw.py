"""The fan laws as a check: a fan of known curve, left alone and obstructed."""

from __future__ import annotations

import math

import pytest

from acquisition.vigil.fanlaw import FanLaw


def flow(speed: float, pressure_pa: float) -> float:
    """Return what an invented fan moves: by the fan laws speed times a curve of pressure over speed squared."""
    return speed * (4000.0 - 3.0 * pressure_pa / speed**2)


def test_points_of_one_house_lie_on_one_curve() -> None:
    law = FanLaw()
    for speed, pressure_pa in ((0.60, 60.0), (0.53, 48.0), (0.46, 37.0)):
        law.add(speed, pressure_pa, flow(speed, pressure_pa))
    off = law.deviation(0.38, 26.0, flow(0.38, 26.0))
    assert off == pytest.approx(0.0, abs=0.01)


def test_a_fan_with_something_before_it_leaves_the_curve() -> None:
    law = FanLaw()
    for speed, pressure_pa in ((0.60, 60.0), (0.53, 47.0)):
        law.add(speed, pressure_pa, flow(speed, pressure_pa))
    assert law.deviation(0.53, 47.0, 0.8 * flow(0.53, 47.0)) == pytest.approx(math.log(0.8))


def test_before_two_points_or_at_rest_nothing_is_said() -> None:
    law = FanLaw()
    law.add(0.5, 50.0, 1000.0)
    law.add(0.0, 50.0, 1000.0)
    assert law.deviation(0.5, 50.0, 1000.0) is None
    law.add(0.5, 50.0, 1000.0)
    assert law.deviation(0.0, 50.0, 1000.0) is None
    law.clear()
    assert law.deviation(0.5, 50.0, 1000.0) is None


def test_points_at_one_pressure_do_not_say_how_steep_the_curve_is() -> None:
    # A two-point test: five readings at 50 Pa, then the first at 12.5 Pa, by an invented fan near its stall.
    law = FanLaw()
    for speed in (0.58, 0.581, 0.579):
        law.add(speed, 50.0, 530.0)
    assert law.deviation(0.27, 12.2, 217.0) == pytest.approx(0.0, abs=0.02)
    assert law.deviation(0.58, 40.0, 430.0) == pytest.approx(math.log(430.0 / 530.0), abs=0.01)
