"""A door that is shut while the fan holds a pressure: caught before the watchdog has to stop the fan."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import numpy as np
import pytest

from acquisition.holding import held_plan
from acquisition.snapshot import EngineState
from acquisition.surge import Surge
from acquisition.watchdog import HIGH_PA
from drivers.clock import VirtualClock
from simulators.faults import opened
from simulators.house import Facade
from tests.acquisition.scenes import a_scene

AREA_M2 = 0.02
TARGET_PA = 50.0


def test_a_hole_that_is_shut_at_once_does_not_end_the_hold(tmp_path: Path) -> None:
    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    with a_scene(clock, tmp_path, wind_m_s=1.0) as scene:
        scene.house.happen(opened(Facade.NORTH, AREA_M2))
        scene.begin(held_plan(replace(scene.plan(), zero_s=15.0), -TARGET_PA))
        scene.until(lambda now: now.held is not None and now.held.seconds > 15.0)
        before = scene.house.true_q_m3_h(TARGET_PA, "depressurize")
        scene.house.happen(opened(Facade.NORTH, 0.0))
        scene.pass_time(0.1)
        # By the true leaks more than half of the flow is gone: at the same fan the house would burst its limit.
        assert scene.house.true_q_m3_h(TARGET_PA, "depressurize") < 0.6 * before
        highest = induced_pa = 0.0
        for _ in range(150):
            shown = scene.pass_time(0.1)
            assert shown.state is EngineState.RUNNING
            assert shown.held is not None
            assert shown.envelope_pa is not None
            induced_pa = abs(shown.envelope_pa - (shown.zero_pa or 0.0))
            highest = max(highest, induced_pa)
        assert TARGET_PA + 10.0 < highest < HIGH_PA
        assert induced_pa == pytest.approx(TARGET_PA, abs=3.0)


def brakes(pressures_pa: np.ndarray, wind_spread_pa: float = 0.0) -> list[bool]:
    surge, braking = Surge(), []
    for pressure in pressures_pa:
        surge.look(float(pressure), TARGET_PA, wind_spread_pa, 0.8, 0.1)
        braking.append(surge.braking)
    return braking


def test_what_a_gust_or_a_step_of_the_fan_explains_is_no_surge() -> None:
    up_and_down = np.concatenate([np.linspace(50.0, 75.0, 10), np.linspace(75.0, 50.0, 30)])
    shut = brakes(np.concatenate([np.full(20, TARGET_PA), up_and_down]))
    assert any(shut)
    assert not shut[-1]
    assert not any(brakes(np.concatenate([np.full(20, TARGET_PA), up_and_down]), wind_spread_pa=8.0))
    # On its way from another target it has not stood yet, however far it overshoots.
    assert not any(brakes(np.concatenate([np.full(20, 20.0), np.linspace(20.0, 70.0, 15), np.full(20, 70.0)])))
    # High, but on its way down.
    assert not any(brakes(np.linspace(75.0, 50.0, 60)))
