"""The test beside a design: what was assumed, what is to be expected, what the difference means in heat."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.design import (
    Season,
    compare_with_design,
    design_infiltration,
    nearest_construction,
    shipped_assumptions,
    weather_multiplier,
)
from analysis.design.assumptions import read_assumptions
from analysis.design.residential import driving_force_l_s_cm2, leakage_area_cm2, with_unbalanced_fans_m3_h
from analysis.errors import InvalidInput
from analysis.infiltration import by_twenty
from analysis.records import Estimate

ELA4 = Estimate(277.0, 270.0, 284.0, extrapolated=True)
EXPECTED = design_infiltration(ELA4, Season.HEATING, 5.0, 30.0, 300.0)


def found() -> Estimate:
    """Return the expected air change."""
    assert EXPECTED.air_change_per_h is not None
    return EXPECTED.air_change_per_h


@given(st.sampled_from(Season), st.floats(2.0, 10.0), st.floats(0.0, 60.0), st.floats(0.0, 0.5))
def test_height_difference_and_flue_drive_more_air(
    season: Season, height: float, difference: float, flue: float
) -> None:
    base = driving_force_l_s_cm2(season, height, difference, flue)
    assert driving_force_l_s_cm2(season, 1.5 * height, difference, flue) >= base
    assert driving_force_l_s_cm2(season, height, difference + 5.0, flue) > base
    assert driving_force_l_s_cm2(season, height, difference, flue + 0.1) >= base


@pytest.mark.parametrize(
    ("assumed_times", "finding"),
    [(1.0, "within the band of the estimate"), (5.0, "tighter than assumed"), (0.2, "leakier than assumed")],
)
def test_the_finding_says_on_which_side_of_the_band_the_assumption_lies(assumed_times: float, finding: str) -> None:
    comparison = compare_with_design(assumed_times * found().value, EXPECTED, 300.0, 30.0)
    assert comparison.finding == finding
    assert comparison.ratio.value == pytest.approx(1 / assumed_times)


def test_the_heat_is_that_of_the_air_in_excess() -> None:
    """1.2041 kg/m3 and 1006 J/(kg K), textbook: 300 m3, 0.1 1/h more, 30 K are 302.8 W."""
    comparison = compare_with_design(found().value - 0.1, EXPECTED, 300.0, 30.0)
    assert comparison.load_w.value == pytest.approx(302.8, abs=0.05)
    assert comparison.load_w.low < 0.0 < comparison.load_w.high


@given(st.floats(0.01, 3.0), st.floats(1.0, 60.0))
def test_an_assumption_that_is_too_low_leaves_the_design_short(assumed: float, difference: float) -> None:
    comparison = compare_with_design(assumed, EXPECTED, 300.0, difference)
    assert (comparison.load_w.value > 0) == (assumed < found().value)
    assert comparison.load_w.low <= comparison.load_w.value <= comparison.load_w.high


def test_any_model_can_be_compared_and_keeps_its_name() -> None:
    comparison = compare_with_design(0.3, by_twenty(Estimate(1333.0, 1328.0, 1337.0), 300.0), 300.0, 30.0)
    assert "20" in comparison.expected.model.title


def test_an_area_belongs_to_the_nearest_class_by_ratio() -> None:
    assert nearest_construction(100.0 * 0.7, 100.0).id == "tight"
    assert nearest_construction(100.0 * 1.9, 100.0).id == "good"
    assert nearest_construction(100.0 * 2.05, 100.0).id == "average"
    assert nearest_construction(1e6, 100.0).id == "very-leaky"


@given(st.floats(50.0, 1000.0))
def test_the_area_of_a_class_belongs_to_that_class(exposed: float) -> None:
    for item in shipped_assumptions().constructions:
        assert nearest_construction(leakage_area_cm2(exposed, item.unit_leakage_cm2_m2), exposed) == item


@given(st.floats(0.0, 500.0), st.floats(0.0, 500.0))
def test_fans_and_leaks_together_are_at_least_each_of_them_alone(natural: float, fans: float) -> None:
    together = with_unbalanced_fans_m3_h(natural, fans)
    assert together >= max(natural, fans) * (1 - 1e-12)
    assert together <= natural + fans


def test_assumptions_say_where_they_are_from() -> None:
    known = shipped_assumptions()
    sources = [item.provenance for item in known.constructions]
    sources += [item.provenance for item in known.usual] + [item.provenance for item in known.tightness]
    sources += [item.provenance for item in known.weather] + [item.provenance for item in known.stocks]
    assert all(source.words.endswith("not checked against the document") for source in sources)
    assert all(item.low_m3_h_m2 < item.average_m3_h_m2 < item.high_m3_h_m2 for item in known.usual)


def without_volume() -> object:
    """Compare an estimate that has no air change."""
    return compare_with_design(0.3, replace(EXPECTED, air_change_per_h=None), 300.0, 30.0)


@pytest.mark.parametrize(
    ("call", "sentence"),
    [
        (without_volume, "volume_m3 is missing: the expected air change needs it"),
        (lambda: compare_with_design(0.0, EXPECTED, 300.0, 30.0), "assumed_per_h is 0.0: a number greater than 0"),
        (lambda: compare_with_design(0.3, EXPECTED, math.nan, 30.0), "volume_m3 is nan: a number greater than 0"),
        (lambda: compare_with_design(0.3, EXPECTED, 300.0, -3.0), "temperature_difference_k is -3.0: a number of at"),
        (lambda: driving_force_l_s_cm2(Season.COOLING, 5.0, 10.0, 2.0), "flue_share is 2.0: a number from 0 to 1"),
        (lambda: weather_multiplier("moon", 10.0, 3.0), "weather is 'moon': one of constant, blast, doe-2 is needed"),
        (lambda: weather_multiplier("blast", 10.0, -3.0), "wind_m_s is -3.0: a number from 0 to 100 m/s is needed"),
        (lambda: nearest_construction(0.0, 100.0), "ela4_cm2 is 0.0: a number greater than 0"),
        (
            lambda: read_assumptions('[[construction]]\nid = "a"\ntitle = "t"\nunit_leakage_cm2_m2 = -1\n', "own.toml"),
            "own.toml: construction[0].unit_leakage_cm2_m2 is -1.0: a number greater than 0",
        ),
    ],
)
def test_what_cannot_be_is_refused_in_one_sentence(call: Callable[[], object], sentence: str) -> None:
    with pytest.raises(InvalidInput) as refused:
        call()
    assert str(refused.value).startswith(sentence)
    assert "\n" not in str(refused.value)
