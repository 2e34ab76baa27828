"""The flow element and its ranges."""

from __future__ import annotations

import numpy as np
import pytest

from simulators.element import RANGES, FlowElement, range_named
from simulators.fan import fan_flow

DENSITY = np.array([1.1])


def element(name: str, seed: int = 1) -> FlowElement:
    return FlowElement([name], np.random.default_rng(seed))


@pytest.mark.parametrize("name", [item.name for item in RANGES])
def test_the_formula_of_the_sheet_gives_the_flow_back(name: str) -> None:
    item = range_named(name)
    flows = np.geomspace(item.top_m3_s / 5.6, item.top_m3_s, 7)
    pressures = np.array([element(name).pressure(np.array([flow]), DENSITY)[0] for flow in flows])
    back = item.coefficient * pressures**item.exponent * np.sqrt(1.204097 / 1.1)
    assert back == pytest.approx(flows, rel=1e-6)


@pytest.mark.parametrize("item", RANGES)
def test_each_range_ends_where_the_fan_does(item: object) -> None:
    assert item in RANGES
    found = next(other for other in RANGES if other is item)
    reference = element(found.name).pressure(np.array([found.top_m3_s]), np.array([1.204097]))
    assert reference[0] == pytest.approx(250.0, rel=1e-6)
    full, _ = fan_flow(np.ones(1), np.array([60.0]), np.array([1.2]), np.array([found.loss]))
    assert full[0] == pytest.approx(found.top_m3_s, rel=0.01)


def test_ranges_overlap_so_that_every_flow_has_one() -> None:
    lowest = [item.coefficient * 8.0**item.exponent for item in RANGES]
    assert all(low < smaller.top_m3_s for low, smaller in zip(lowest, RANGES[1:], strict=False))


def test_backwards_flow_reads_negative() -> None:
    assert element("narrow").pressure(np.array([-0.1]), DENSITY)[0] < 0


def test_turbulence_has_the_stated_strength_and_forgets_within_a_third_of_a_second() -> None:
    many = FlowElement(["narrow"] * 400, np.random.default_rng(2))
    flow, density = np.full(400, 0.2), np.full(400, 1.2)
    mean = many.pressure(flow, density)
    series = np.array([many.step(0.1, flow, density) / mean - 1 for _ in range(300)])
    assert series.std() == pytest.approx(0.012, rel=0.02)
    correlation = (series[:-3] * series[3:]).mean() / series.var()
    assert correlation == pytest.approx(np.exp(-1), abs=0.02)


def test_calibration_error_changes_the_true_flow_not_the_sheet() -> None:
    off = FlowElement(["narrow"], np.random.default_rng(1), calibration=1.01)
    ratio = off.pressure(np.array([0.2]), DENSITY) / element("narrow").pressure(np.array([0.2]), DENSITY)
    assert ratio[0] == pytest.approx(1.01 ** (-1 / 0.502), rel=1e-9)


def test_an_unknown_range_is_answered_with_those_there_are() -> None:
    with pytest.raises(ValueError, match=r"'huge'.*wide, middle, narrow, slim, trickle"):
        range_named("huge")
