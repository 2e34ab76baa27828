"""Two tests beside each other: the change with its interval, and everything else that differs."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.comparison import Assessed, Calibration, assessed_flow, change_between, differences
from analysis.errors import InvalidInput
from analysis.estimators import estimator
from analysis.estimators.observations import Observations
from analysis.powerlaw import flow_at
from analysis.records import Direction, Test, UncertaintyPart, ZeroFlow
from tests.analysis.samples import BUILDING, FLOWS_M3_H, PRESSURES_PA, ZERO, run_of, whole_test, without_point

LINE = estimator("ols").fit(Observations(PRESSURES_PA, FLOWS_M3_H))
TIGHTER = estimator("ols").fit(Observations(PRESSURES_PA, tuple(0.9 * flow for flow in FLOWS_M3_H)))
CALIBRATION = Calibration(gauge=0.01, flow_element=0.02)
SAME_KIT = {"gauge": 1.0, "flow-element": 1.0}

VALUES = st.floats(100.0, 3000.0)
SPREADS = st.floats(0.0, 0.05)


def assessed(value: float, fit: float, element: float) -> Assessed:
    """Return a result with two parts."""
    return Assessed(value, (UncertaintyPart("fit", fit), UncertaintyPart("flow-element", element, repeatable=False)))


# the change


def test_the_calibration_cancels_where_it_is_the_same() -> None:
    """Variances by hand: 2 x 0.01**2 is left of 2 x (0.01**2 + 0.03**2)."""
    before, after = assessed(1000.0, 0.01, 0.03), assessed(900.0, 0.01, 0.03)
    same, other = change_between(before, after, {"flow-element": 1.0}), change_between(before, after, {})
    assert same.difference.value == other.difference.value == -100.0
    assert same.smallest == pytest.approx(math.exp(1.959964 * math.sqrt(2) * 0.01) - 1.0, rel=1e-6)
    assert other.smallest == pytest.approx(math.exp(1.959964 * math.sqrt(2 * (0.01**2 + 0.03**2))) - 1.0, rel=1e-6)
    assert same.real
    assert not change_between(before, assessed(990.0, 0.01, 0.03), {"flow-element": 1.0}).real


@given(VALUES, VALUES, SPREADS, SPREADS, st.floats(-1.0, 1.0), st.floats(-1.0, 1.0))
def test_more_correlation_never_widens_the_ratio(
    before: float, after: float, fit: float, element: float, one: float, other: float
) -> None:
    less, more = (
        change_between(assessed(before, fit, element), assessed(after, fit, element), {"flow-element": share}).smallest
        for share in sorted((one, other))
    )
    assert more <= less + 1e-12


@given(VALUES, VALUES, SPREADS, SPREADS)
def test_exchanging_before_and_after_turns_the_sign(before: float, after: float, fit: float, element: float) -> None:
    one, other = assessed(before, fit, element), assessed(after, 0.5 * fit + 0.001, element)
    there, back = change_between(one, other, {"flow-element": 1.0}), change_between(other, one, {"flow-element": 1.0})
    assert back.difference.value == -there.difference.value
    assert back.difference.low == pytest.approx(-there.difference.high)
    assert back.ratio.value == pytest.approx(1 / there.ratio.value)
    assert back.probability_lower == pytest.approx(1.0 - there.probability_lower, abs=1e-9)


@given(VALUES, SPREADS.filter(lambda u: u > 0.001), st.floats(0.5, 0.99))
def test_a_larger_fall_is_more_probably_one(value: float, fit: float, share: float) -> None:
    before = assessed(value, fit, 0.02)
    falls = [change_between(before, assessed(value * part, fit, 0.02), SAME) for part in (1.0, share, share**2)]
    probabilities = [fall.probability_lower for fall in falls]
    assert probabilities[0] == pytest.approx(0.5)
    assert probabilities == sorted(probabilities)


SAME = {"flow-element": 1.0}


def test_the_interval_agrees_with_random_draws_of_shared_and_own_errors() -> None:
    """JCGM 101 with a general-purpose random generator, 400 000 draws."""
    rng = np.random.default_rng(5)
    common = rng.normal(0.0, 0.02, 400_000)
    before = 1000.0 * np.exp(common + rng.normal(0.0, 0.008, 400_000))
    after = 850.0 * np.exp(common + rng.normal(0.0, 0.012, 400_000))
    low, high = np.quantile(after - before, [0.025, 0.975])
    change = change_between(assessed(1000.0, 0.008, 0.02), assessed(850.0, 0.012, 0.02), SAME)
    assert (change.difference.low, change.difference.high) == pytest.approx((low, high), rel=0.01)
    low, high = np.quantile(after / before, [0.025, 0.975])
    assert (change.ratio.low, change.ratio.high) == pytest.approx((low, high), rel=1e-3)


def test_a_flow_is_assessed_from_its_lines_and_the_calibration() -> None:
    found = assessed_flow((LINE,), CALIBRATION)
    parts = {part.id: part for part in found.parts}
    assert found.value == pytest.approx(flow_at(LINE, 50.0).value)
    assert parts["gauge"].ln_u == pytest.approx(LINE.n * 0.01)
    assert parts["flow-element"].ln_u == 0.02
    assert parts["fit"].dof == 8.0
    assert not parts["gauge"].repeatable


def test_sealing_a_tenth_is_seen_with_the_same_kit_and_drowned_by_another() -> None:
    """Fit alone is within half a percent; two flow elements of 5 % are not."""
    rough = Calibration(gauge=0.02, flow_element=0.05)
    before, after = assessed_flow((LINE,), rough), assessed_flow((TIGHTER,), rough)
    assert change_between(before, after, SAME_KIT).real
    assert not change_between(before, after, {}).real


def test_two_lines_without_scatter_to_judge_by_leave_the_change_open() -> None:
    two = estimator("ols").fit(Observations(PRESSURES_PA[:2], FLOWS_M3_H[:2]))
    change = change_between(assessed_flow((two,), CALIBRATION), assessed_flow((TIGHTER,), CALIBRATION), SAME_KIT)
    assert change.difference.high == math.inf
    assert change.probability_lower == 0.5
    assert not change.real


def test_results_without_any_uncertainty_differ_exactly() -> None:
    change = change_between(assessed(1000.0, 0.0, 0.0), assessed(999.0, 0.0, 0.0), {})
    assert (change.difference.low, change.difference.high) == (-1.0, -1.0)
    assert change.real
    assert change.probability_lower == 1.0


@pytest.mark.parametrize(
    ("call", "sentence"),
    [
        (
            lambda: change_between(assessed(1.0, 0.0, 0.0), assessed(1.0, 0.0, 0.0), {"wind": 1.0}),
            "shared is 'wind': a part of both tests is needed (there are: fit, flow-element)",
        ),
        (
            lambda: change_between(assessed(1.0, 0.0, 0.0), assessed(1.0, 0.0, 0.0), {"fit": 1.5}),
            "shared.fit is 1.5: a number from -1 to 1 is needed",
        ),
        (
            lambda: change_between(assessed(0.0, 0.0, 0.0), assessed(1.0, 0.0, 0.0), {}),
            "before is 0.0: a number greater than 0",
        ),
        (
            lambda: change_between(assessed(1.0, 0.0, math.nan), assessed(1.0, 0.0, 0.0), {}),
            "before.parts.flow-element is nan: a number of at least 0 is needed",
        ),
        (
            lambda: change_between(Assessed(1.0, (UncertaintyPart("a", 0.1),) * 2), assessed(1.0, 0.0, 0.0), {}),
            "before.parts is 'a' twice: every part needs a name of its own",
        ),
        (
            lambda: assessed_flow((LINE,), Calibration(-0.01, 0.0)),
            "calibration.gauge is -0.01: a number of at least 0",
        ),
    ],
)
def test_what_cannot_be_is_refused_in_one_sentence(call: Callable[[], object], sentence: str) -> None:
    with pytest.raises(InvalidInput) as refused:
        call()
    assert str(refused.value).startswith(sentence)
    assert "\n" not in str(refused.value)


# what else differs


def fields(before: Test, after: Test) -> list[str]:
    """Return the names of what differs."""
    return [item.field for item in differences(before, after)]


def with_air(**air: float | None) -> Test:
    """Return the sample test in other air."""
    run = run_of()
    return whole_test(replace(run, air=replace(run.air, **air)))  # type: ignore[arg-type]


def test_equal_tests_differ_in_nothing() -> None:
    assert differences(whole_test(), whole_test()) == ()
    assert differences(whole_test(), whole_test(), {"Method": "iso9972"}, {"Method": "iso9972"}) == ()


@pytest.mark.parametrize(
    ("after", "expected"),
    [
        (whole_test(building=replace(BUILDING, volume_m3=310.0)), ["building.volume_m3"]),
        (whole_test(building=replace(BUILDING, floor_area_m2=None)), ["building.floor_area_m2"]),
        (whole_test(building=replace(BUILDING, name="x", altitude_m=9.0)), ["building.name", "building.altitude_m"]),
        (replace(whole_test(), stage="sealed"), ["stage"]),
        (whole_test(run_of(direction=Direction.PRESSURIZE)), ["directions"]),
        (whole_test(run_of(), run_of(direction=Direction.PRESSURIZE)), ["directions"]),
        (with_air(indoor_c=23.0), ["depressurize.air.indoor_c"]),
        (with_air(outdoor_c=2.0), ["depressurize.air.outdoor_c"]),
        (with_air(wind_m_s=4.0), ["depressurize.air.wind_m_s"]),
        (with_air(wind_m_s=None), ["depressurize.air.wind_m_s"]),
        (with_air(barometric_pa=None), ["depressurize.air.barometric_pa"]),
        (whole_test(run_of(zero_after=None)), ["depressurize.zero_after"]),
        (whole_test(run_of(zero_before=ZeroFlow(-3.0, None, -3.0, 600, 60.0))), ["depressurize.zero_pa"]),
        (whole_test(without_point(run_of(), 3, 5)), ["depressurize.points"]),
        (whole_test(without_point(run_of(), 9)), ["depressurize.lowest_pa"]),
        (whole_test(without_point(run_of(), 0)), ["depressurize.highest_pa"]),
    ],
)
def test_every_difference_is_listed_by_its_field(after: Test, expected: list[str]) -> None:
    assert fields(whole_test(), after) == expected
    assert sorted(fields(after, whole_test())) == sorted(expected)


def test_small_differences_of_weather_are_not_listed() -> None:
    assert fields(whole_test(), with_air(indoor_c=21.0, wind_m_s=1.2, barometric_pa=101_500.0)) == []


def test_a_longer_average_is_listed() -> None:
    run = run_of()
    longer = replace(run, points=tuple(replace(point, seconds=60.0) for point in run.points))
    assert fields(whole_test(run), whole_test(longer)) == ["depressurize.seconds"]


def test_a_difference_has_both_values_its_unit_and_what_it_does() -> None:
    (found,) = differences(whole_test(), whole_test(building=replace(BUILDING, volume_m3=310.0)))
    assert (found.before, found.after, found.unit) == (300.0, 310.0, "m³")
    assert found.effect == "air changes are not comparable; flows are"
    (missing,) = differences(whole_test(), whole_test(run_of(zero_after=None)))
    assert (missing.before, missing.after) == (float(ZERO.count), None)


def test_conditions_that_a_test_does_not_hold_are_compared_by_their_title() -> None:
    before = {"Method": "iso9972", "Dryer vent": "sealed", "Flow range": "middle"}
    after = {"Method": "iso9972", "Dryer vent": "as is", "Fit": "ols"}
    found = differences(whole_test(), whole_test(), before, after)
    assert [(item.title, item.before, item.after) for item in found] == [
        ("Dryer vent", "sealed", "as is"),
        ("Flow range", "middle", None),
        ("Fit", None, "ols"),
    ]
