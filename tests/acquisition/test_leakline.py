"""The leakage line as it is expected while points come in."""

from __future__ import annotations

import pytest

from acquisition.leakline import TYPICAL_EXPONENT, LeakLine


def test_before_the_first_point_nothing_is_expected() -> None:
    line = LeakLine()
    assert line.pressure_pa(1000.0) is None
    assert line.flow_m3_h(50.0) is None


def test_one_point_takes_a_typical_exponent() -> None:
    line = LeakLine()
    line.add(50.0, 1000.0)
    assert line.flow_m3_h(25.0) == pytest.approx(1000.0 * 0.5**TYPICAL_EXPONENT)
    assert line.pressure_pa(1000.0) == pytest.approx(50.0)


def test_points_far_enough_apart_have_an_exponent_of_their_own() -> None:
    line = LeakLine()
    for pressure_pa in (60.0, 40.0, 20.0):
        line.add(pressure_pa, 100.0 * pressure_pa**0.55)
    assert line.exponent() == pytest.approx(0.55)
    assert line.pressure_pa(100.0 * 10.0**0.55) == pytest.approx(10.0)


def test_points_without_pressure_or_flow_are_left_out_and_all_can_be_forgotten() -> None:
    line = LeakLine()
    line.add(-1.0, 1000.0)
    line.add(50.0, 0.0)
    assert len(line) == 0
    line.add(50.0, 1000.0)
    line.clear()
    assert line.pressure_pa(1000.0) is None
