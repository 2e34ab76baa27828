"""What a test says of itself before its points: pure figures first, then whole tests of simulated houses."""

from __future__ import annotations

import math
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from acquisition.plan import SCHEDULES, STANDARD_TARGETS_PA, TestPlan
from acquisition.planning.outlook import foresee, held_against
from acquisition.planning.reach import range_doubt
from analysis.outlook import Effort, Unrest, expected_half_width, unrest
from analysis.records import Air, Building, FlowRange, Limit, ZeroFlow
from analysis.zeroflow import zero_flow
from drivers.clock import VirtualClock
from tests.acquisition.scenes import a_scene

PLAN = TestPlan(Building("Invented house", 300.0), Air(21.0, 11.0))
RANGE = FlowRange("middle", 60.0, 0.5, 10.0, 200.0)


def record(mean_pa: float, sd_pa: float, seed: int = 1, memory: float = 0.98) -> ZeroFlow:
    """Return 60 s at 10 Hz of a wind whose readings hang together (first-order autoregression)."""
    noise = np.random.default_rng(seed)
    values = [0.0]
    for step in noise.normal(0.0, sd_pa * math.sqrt(1 - memory**2), 599):
        values.append(memory * values[-1] + step)
    readings = np.array(values)
    return zero_flow(tuple((readings - readings.mean() + mean_pa).tolist()), 60.0)


def test_readings_that_hang_together_are_seen_as_such() -> None:
    # An autoregression of coefficient a has (1 + a)/(1 - a) readings for an independent one: 99, at 10 Hz 9.9 s.
    seen = [unrest(record(0.0, 2.0, seed)).independent_s for seed in range(40)]
    assert 5.0 < float(np.median(seen)) < 12.0
    assert unrest(ZeroFlow(-1.0, None, -1.0, 20, 60.0)).sd_pa == 0.0


def test_wind_widens_and_time_narrows_what_is_expected() -> None:
    calm, windy = Unrest(-0.5, 0.1, 1.0), Unrest(-2.0, 2.5, 4.0)
    standard = Effort(60.0, 20.0)
    assert expected_half_width(calm, STANDARD_TARGETS_PA, standard) < 0.006
    widths = [
        expected_half_width(windy, STANDARD_TARGETS_PA, Effort(item.zero_s, item.average_s))
        for item in (SCHEDULES["quick"], SCHEDULES["standard"], SCHEDULES["precision"])
    ]
    assert widths == sorted(widths, reverse=True)
    both = expected_half_width(windy, STANDARD_TARGETS_PA, replace(standard, runs=2))
    assert both == pytest.approx(widths[1] / math.sqrt(2))
    # Repeated readings at one pressure, as the single-point methods have them.
    assert 0 < expected_half_width(windy, (50.0,) * 5, standard) < math.inf
    assert 0 < expected_half_width(windy, (50.0,), standard) < math.inf


def test_calm_air_needs_no_longer_schedule_and_raises_no_doubt() -> None:
    seen = foresee(PLAN, PLAN.targets_pa, record(-0.4, 0.05, memory=0.0))
    assert seen.doubts == ()
    assert [item.schedule for item in seen.schedules] == list(SCHEDULES)
    assert "quick" in seen.advice
    assert "Expected before the points" in seen.sentence


def test_a_windy_day_is_named_with_what_it_does_to_the_limit() -> None:
    seen = foresee(PLAN, PLAN.targets_pa, record(-3.0, 8.0, memory=0.99))
    assert any("cannot be decided" in doubt for doubt in seen.doubts)
    assert "schedule pays today" in seen.advice
    # Other methods name no figure for the zero-flow pressure.
    other = foresee(PLAN.by_method("astm-e779"), PLAN.targets_pa, record(-7.0, 0.1))
    assert other.doubts == ()


def test_a_house_near_its_limit_is_told_from_the_first_point() -> None:
    plan = replace(PLAN, limit=Limit("own", "n50_per_h", 1.5))
    seen = foresee(plan, plan.targets_pa, record(-0.4, 0.1))
    at_limit = 1.5 * 300.0 * (60 / 50) ** 0.65
    assert "will probably not tell" in held_against(plan, seen, at_limit * 1.02, 60.0)
    assert held_against(plan, seen, at_limit * 2.0, 60.0) == ""
    assert held_against(PLAN, seen, at_limit, 60.0) == ""


def test_a_range_that_does_not_suit_the_house_is_named_at_the_first_point() -> None:
    assert range_doubt(RANGE, 400.0, 60.0, (50.0, 30.0)) == ""
    assert "A smaller range" in range_doubt(RANGE, 250.0, 60.0, (50.0, 30.0, 20.0))
    assert "A larger range" in range_doubt(RANGE, 840.0, 50.0, (60.0, 50.0))


def test_the_interval_foretold_is_the_one_that_comes(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=2.0, seed=4) as scene:
        scene.begin()
        seen = scene.to_the_end()
        assert seen.outlook is not None
        assert seen.result is not None
        assert seen.result.best is not None
        came = seen.result.best.q50_m3_h
        assert 1 / 1.5 < seen.outlook.chosen.half_width / (came.half_width / came.value) < 1.5
        assert any(flag.id == "outlook" for flag in seen.flags)
