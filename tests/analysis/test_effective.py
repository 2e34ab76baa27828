"""Effective quantities: what limits are set on."""

from __future__ import annotations

import math

import pytest

from analysis.effective import QUANTITIES, effective, effective_quantity, mean_flow
from analysis.errors import InvalidInput
from analysis.estimators import estimator
from analysis.estimators.observations import Observations
from analysis.methods.quantities import EQLA10, leakage_area_cm2
from analysis.numbertext import decimals_for, format_number
from analysis.powerlaw import flow_at
from analysis.records import Building, PowerLaw
from analysis.units import Display, format_estimate
from tests.analysis.samples import BUILDING, FLOWS_M3_H, PRESSURES_PA

LINE = estimator("ols").fit(Observations(PRESSURES_PA, FLOWS_M3_H))
OTHER = estimator("ols").fit(Observations(PRESSURES_PA, tuple(1.1 * flow**1.001 for flow in FLOWS_M3_H)))


def value(quantity_id: str, *lines: PowerLaw) -> float:
    """Return the value of a quantity for the sample house."""
    return effective(lines or (LINE,), BUILDING, effective_quantity(quantity_id), "the test").value


def test_rates_are_the_flow_over_the_measure_of_the_building() -> None:
    q50, q75, q4 = (flow_at(LINE, pressure).value for pressure in (50.0, 75.0, 4.0))
    assert value("q50_m3_h") == pytest.approx(q50)
    assert value("n50_per_h") == pytest.approx(q50 / 300.0)
    assert value("qe50_m3_h_m2") == pytest.approx(q50 / 360.0)
    assert value("qf50_m3_h_m2") == pytest.approx(q50 / 120.0)
    assert value("qe75_m3_h_m2") == pytest.approx(q75 / 360.0)
    assert value("qe4_m3_h_m2") == pytest.approx(q4 / 360.0)
    assert value("nlr50_l_s_m2") == pytest.approx(q50 / 3.6 / 360.0)


def test_the_normalised_leakage_area_is_the_equivalent_one_over_the_envelope() -> None:
    assert value("nla10_cm2_m2") == pytest.approx(leakage_area_cm2(LINE, EQLA10).value / 360.0, rel=1e-12)


def test_the_mean_of_two_directions_lies_half_way_and_is_surer_than_each() -> None:
    both = mean_flow((LINE, OTHER), 50.0)
    flows = [flow_at(line, 50.0) for line in (LINE, OTHER)]
    assert both.value == pytest.approx((flows[0].value + flows[1].value) / 2)
    assert both.estimate.half_width < min(flow.half_width for flow in flows)
    assert mean_flow((LINE,), 50.0).estimate == flow_at(LINE, 50.0)


def test_a_quantity_outside_the_measured_pressures_says_so() -> None:
    found = {name: effective((LINE,), BUILDING, item, "the test").extrapolated for name, item in QUANTITIES.items()}
    outside = [name for name, beyond in found.items() if beyond]
    assert outside == ["qe75_m3_h_m2", "qe4_m3_h_m2", "nla10_cm2_m2", "sla4_cm2_m2"]


def test_without_degrees_of_freedom_there_is_a_value_and_no_interval() -> None:
    two = estimator("ols").fit(Observations(PRESSURES_PA[:2], FLOWS_M3_H[:2]))
    estimate = effective((two,), BUILDING, effective_quantity("n50_per_h"), "the test").estimate
    assert math.isfinite(estimate.value)
    assert estimate.high == math.inf


def test_every_quantity_can_be_shown_in_its_unit() -> None:
    for name, item in QUANTITIES.items():
        estimate = effective((LINE,), BUILDING, item, "the test").estimate
        assert format_estimate(estimate, item.kind, Display()).value == format_number(
            value(name), decimals_for(estimate.half_width) or 0
        )


@pytest.mark.parametrize("name", [name for name, item in QUANTITIES.items() if item.divisor is not None])
def test_a_building_that_lacks_the_measure_is_refused_with_what_needs_it(name: str) -> None:
    quantity = effective_quantity(name)
    with pytest.raises(InvalidInput) as refused:
        effective((LINE,), Building("bare"), quantity, "the limit goal")
    assert str(refused.value) == f"building.{quantity.divisor} is missing: the limit goal on {name} needs it"


def test_an_unknown_quantity_is_refused_with_those_there_are() -> None:
    with pytest.raises(
        InvalidInput, match=r"^limits\[2\].quantity is 'n75': one of q50_m3_h, n50_per_h, .* is needed$"
    ):
        effective_quantity("n75", "limits[2].quantity")
