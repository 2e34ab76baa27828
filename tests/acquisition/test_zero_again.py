"""A pressure is held while it turns cold: the zero-flow pressure is doubted, read again, and the flows put right."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import numpy as np
import pytest

from acquisition.commands.sealing import last_held
from acquisition.holding import held_plan
from acquisition.sealing.hold import HoldLook
from acquisition.sealing.session import HoldSession
from acquisition.steps import WindowKind
from analysis.sealing.zeroage import ZeroDoubt
from drivers.clock import VirtualClock
from simulators.faults import outdoors_becomes
from tests.acquisition.scenes import Scene, a_scene

pytestmark = pytest.mark.walk


def look_at(scene: Scene, session: HoldSession, held_s: float) -> HoldLook:
    shown = scene.until(lambda now: now.held is not None and now.held.seconds > held_s)
    found = session.look(shown)
    assert found is not None
    return found


def test_a_zero_that_moved_is_doubted_and_read_again(tmp_path: Path) -> None:
    clock = VirtualClock(datetime(2026, 1, 4, 9, 0, tzinfo=UTC))
    with a_scene(clock, tmp_path, wind_m_s=0.5) as scene:
        scene.begin(held_plan(replace(scene.plan(), zero_s=20.0), -50.0))
        session = HoldSession(scene.job, scene.engine, clock)
        new = look_at(scene, session, 75.0)
        assert new.zero.doubts == ()
        scene.house.happen(outdoors_becomes(-15.0), over_s=5.0)
        old = look_at(scene, session, 150.0)
        assert old.zero.doubts == (ZeroDoubt.TEMPERATURE,)
        assert new.now_m3_h is not None
        assert old.now_m3_h is not None
        assert old.now_m3_h.half_width > 1.5 * new.now_m3_h.half_width
        session.zero_again()
        scene.until(lambda now: now.held is None)
        again = look_at(scene, session, 30.0)
        assert again.zero.doubts == ()
        moved_pa = again.levelling.zero_pa - old.levelling.zero_pa
        # The gauge sits below the neutral level: the stack draws it lower. The doubt was as large as what came.
        assert 0.3 < -moved_pa < old.zero.temperature_pa
        # One trace, from before the break to after it, and no step at the break.
        assert again.trace.start_s == new.trace.start_s
        assert np.isnan(again.trace.flow_m3_h).sum() > 20
        assert not [step for step in again.steps if step.at_s > old.trace.end_s - 5.0]
        scene.engine.end_hold()
        scene.to_the_end()
        (run,) = scene.job.load(scene.job.tests()[-1].id).runs
        assert [item.kind for item in run.windows] == [WindowKind.ZERO_BEFORE] * 2
        recorded = last_held(scene.job)
    assert recorded is not None
    # The file says the same: both stretches, counted from the zero-flow pressures that hold for each.
    assert recorded.levelling.zero_pa == again.levelling.zero_pa
    seconds = min(old.trace.end_s, recorded.trace.end_s) - 40.0
    live, kept = again.trace.between(seconds, seconds + 30.0), recorded.trace.between(seconds, seconds + 30.0)
    assert abs(np.mean(live) / np.mean(kept) - 1.0) < 1e-3
