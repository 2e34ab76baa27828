"""The equivalent hole and what has to be sealed of it."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.hole import area_to_seal, equivalent_hole, hole_cm2_per_m3_h
from analysis.records import Estimate

AREA = Estimate(200.0, 180.0, 222.0, extrapolated=True)


def test_the_diameter_is_that_of_a_round_hole_of_the_area() -> None:
    hole = equivalent_hole(AREA)
    assert math.pi * (hole.diameter_cm.value / 2) ** 2 == pytest.approx(200.0)
    assert math.pi * (hole.diameter_cm.low / 2) ** 2 == pytest.approx(180.0)
    assert math.pi * (hole.diameter_cm.high / 2) ** 2 == pytest.approx(222.0)
    assert hole.diameter_cm.extrapolated


def test_an_area_names_pressure_discharge_coefficient_and_definition() -> None:
    definition = equivalent_hole(AREA).definition
    assert all(part in definition for part in ("10 Pa", "0.611", "EqLA10"))


def test_without_interval_the_hole_has_none_either() -> None:
    assert equivalent_hole(Estimate(200.0, 0.0, math.inf)).diameter_cm.high == math.inf


@given(st.floats(1.0, 100.0), st.floats(0.4, 1.0), st.floats(0.9, 1.4), st.floats(1.0, 5.0))
def test_a_hole_passes_more_at_more_pressure_and_less_of_dense_air(
    pressure: float, discharge: float, density: float, factor: float
) -> None:
    area = hole_cm2_per_m3_h(pressure, discharge, density)
    assert hole_cm2_per_m3_h(pressure * factor, discharge, density) == pytest.approx(area / math.sqrt(factor))
    assert hole_cm2_per_m3_h(pressure, discharge, density * factor) == pytest.approx(area * math.sqrt(factor))


def test_what_to_seal_is_the_share_of_the_flow_above_the_target() -> None:
    found = area_to_seal(AREA, 1200.0, 900.0)
    assert found is not None
    assert (found.value, found.low, found.high) == pytest.approx((50.0, 45.0, 55.5))


def test_nothing_is_to_be_sealed_when_the_target_is_reached() -> None:
    assert area_to_seal(AREA, 900.0, 900.0) is None
    assert area_to_seal(AREA, 800.0, 900.0) is None


def test_a_target_is_above_zero() -> None:
    with pytest.raises(InvalidInput, match=r"^target_m3_h is 0.0: a number greater than 0"):
        area_to_seal(AREA, 900.0, 0.0)
