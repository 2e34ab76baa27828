"""Readings at the edge: every method gives a number with the right flag, or one clear sentence."""

from __future__ import annotations

import math
import time
from dataclasses import replace

import pytest

from analysis.errors import InvalidInput
from analysis.methods import analyse, method_ids, method_of
from analysis.records import Direction, Estimate, Point, Run, Test, TestResult
from analysis.resultjson import result_document
from tests.analysis.samples import BUILDING, STILL_AIR, ZERO, run_of, whole_test

LINES = tuple(name for name in method_ids() if not method_of(name).one_pressure and name != "astm-e1827-two")


def run_with(*points: tuple[float, float]) -> Run:
    return Run(Direction.DEPRESSURIZE, STILL_AIR, tuple(Point(-p, q, 20.0) for p, q in points), ZERO, ZERO)


def numbers(result: TestResult) -> list[float]:
    found = [result.mean.q50_m3_h]
    for run in result.runs:
        found += [getattr(run, name) for name in ("n", "c_env_m3_h_pa_n", "c_l_m3_h_pa_n", "ela4_cm2", "eqla10_cm2")]
    return [number for item in found if isinstance(item, Estimate) for number in (item.value, item.low, item.high)]


def usable(result: TestResult) -> bool:
    """Nothing is NaN, every value is finite, and the document can be written."""
    assert result_document(result)
    return not any(math.isnan(number) for number in numbers(result))


@pytest.mark.parametrize("name", LINES)
def test_equal_pressures_make_no_line(name: str) -> None:
    with pytest.raises(InvalidInput, match="pressures that differ more"):
        analyse(whole_test(run_with((50.0, 900.0), (50.0, 901.0), (50.0, 899.0))), name)


@pytest.mark.parametrize("name", LINES)
def test_two_points_make_a_line_without_an_interval(name: str) -> None:
    result = analyse(whole_test(run_with((50.0, 900.0), (20.0, 480.0))), name)
    assert usable(result)
    assert result.mean.q50_m3_h.high == math.inf
    assert not result.valid


@pytest.mark.parametrize("name", method_ids())
def test_no_point_is_a_sentence(name: str) -> None:
    with pytest.raises(InvalidInput, match="points"):
        analyse(whole_test(run_with()), name)


@pytest.mark.parametrize("name", LINES)
def test_one_outlier_widens_the_interval_and_shows_in_a_check_of_scatter(name: str) -> None:
    good = run_of()
    wrong = replace(good.points[3], flow_m3_h=good.points[3].flow_m3_h * 1.6)
    points = (*good.points[:3], wrong, *good.points[4:])
    clean, dirty = (analyse(whole_test(item), name) for item in (good, replace(good, points=points)))
    assert dirty.mean.q50_m3_h.half_width > 10 * clean.mean.q50_m3_h.half_width
    checks = {check.id: check for check in dirty.runs[0].checks}
    for scatter in ("r2", "correlation", "accuracy"):
        if scatter in checks and scatter != "accuracy":
            assert checks[scatter].ok is False


@pytest.mark.parametrize("name", method_ids())
def test_a_point_beyond_the_zero_flow_pressure_is_a_sentence(name: str) -> None:
    zero = replace(ZERO, mean_pa=-12.0, positive_mean_pa=None, negative_mean_pa=-12.0)
    points = tuple(Point(-p, q, 20.0) for p, q in ((50.0, 900.0), (12.5, 480.0), (10.0, 300.0)))
    run = Run(Direction.DEPRESSURIZE, STILL_AIR, points, zero, zero)
    with pytest.raises(InvalidInput, match="zero-flow pressure"):
        analyse(whole_test(run), name)


@pytest.mark.parametrize("name", [name for name in LINES if name not in ("resnet-380-multi",)])
@pytest.mark.parametrize("n", [0.3, 1.3])
def test_an_exponent_that_no_leak_has_is_not_met(name: str, n: float) -> None:
    pressures = (60.0, 52.0, 45.0, 37.0, 30.0, 24.0, 18.0, 12.0)
    result = analyse(whole_test(run_with(*((p, 60.0 * p**n) for p in pressures))), name)
    assert next(check for check in result.runs[0].checks if check.id == "exponent").ok is False
    assert usable(result)


@pytest.mark.parametrize("name", method_ids())
def test_without_zero_flow_records_the_number_stands_and_is_not_valid(name: str) -> None:
    targets = method_of(name).sequence.targets_pa
    points = tuple(Point(-p, 50.0 * p**0.65, 20.0) for p in targets)
    result = analyse(Test(BUILDING, (Run(Direction.DEPRESSURIZE, STILL_AIR, points),)), name)
    assert usable(result)
    assert result.valid is False
    assert next(check for check in result.runs[0].checks if check.id == "zero-before").ok is False


@pytest.mark.parametrize("name", method_ids())
@pytest.mark.parametrize("flow", [-5.0, 0.0, math.nan, math.inf])
def test_flows_that_are_none_are_a_sentence(name: str, flow: float) -> None:
    with pytest.raises(InvalidInput, match="flow_m3_h"):
        analyse(whole_test(run_with((50.0, flow), (20.0, 480.0))), name)


def test_a_hundred_thousand_points_take_no_time_to_speak_of() -> None:
    count = 100_000
    points = [(10.0 + 50.0 * at / count, 50.0 * (10.0 + 50.0 * at / count) ** 0.65) for at in range(count)]
    test = whole_test(run_with(*points))
    before = time.process_time()
    result = analyse(test)
    assert time.process_time() - before < 10.0
    assert result.runs[0].n.value == pytest.approx(0.65, rel=1e-6)
