"""A second fan that joins when the first is at its top, and leaves again when it is not needed any more."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from acquisition.holding import held_plan
from acquisition.snapshot import Activity, EngineState, PointState, Snapshot
from drivers.clock import VirtualClock
from simulators.houses import load_house
from tests.acquisition.scenes import Scene, a_scene

LEAKY = replace(load_house("gable-barn"), n50_per_h=17.0)
"""Invented: at 50 Pa it leaks 8840 m3/h, more than the 7920 m3/h of one fan; at 25 Pa one fan does it."""
TARGETS = (58.0, 50.0, 42.0, 34.0, 26.0, 18.0)


def speeds(scene: Scene) -> tuple[float, float]:
    first, second = scene.house.world.speeds
    return first, second


@pytest.mark.walk
def test_in_a_descending_test_both_run_first_and_the_second_leaves(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, built=LEAKY, fans=2) as scene:
        scene.begin(scene.plan(targets_pa=TARGETS))
        highest, running = 0.0, {}

        def ended(shown: Snapshot) -> bool:
            nonlocal highest
            highest = max(highest, abs(float(scene.house.plant.pressure_pa[0])))
            if shown.activity is Activity.AVERAGE and shown.activity_s > 1.0:
                running[shown.target_pa] = sum(speed > 0.0 for speed in speeds(scene))
            return shown.state is EngineState.IDLE and not scene.engine.busy

        shown = scene.until(ended)
        assert running[-58.0] == 2
        assert running[-18.0] == 1
        assert sorted(running.values()) == sorted(running.values(), reverse=False)
        assert highest < 72.0
        assert [p.target_pa for p in shown.runs[0].points if p.state is PointState.TAKEN] == [-t for t in TARGETS]
        said = [flag.sentence for flag in shown.flags if flag.id == "fans"]
        assert [sentence[:12] for sentence in said] == ["Fan 2 joins:", "Fan 2 leaves"]
        assert not {"leakage-jumped", "lasting-step", "fan-weaker", "fan-stronger"} & {f.id for f in shown.flags}
        assert shown.result is not None
        true = scene.house.true_q_m3_h(50.0, "depressurize")
        assert shown.result.mean.q50_m3_h.value == pytest.approx(true, rel=0.015)
        assert shown.result.runs[0].r2 > 0.9995
        assert scene.job.load(1).test() == shown.test


def test_in_a_hold_the_second_joins_at_the_top_and_leaves_again(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, built=LEAKY, fans=2) as scene:
        scene.begin(held_plan(scene.plan(), -20.0))
        scene.until(lambda shown: shown.held is not None and shown.held.seconds > 5.0)
        assert speeds(scene)[1] == 0.0
        scene.engine.hold_at(-50.0)
        shown = scene.until(lambda s: s.held is not None and s.target_pa == -50.0 and s.held.seconds > 15.0)
        assert min(speeds(scene)) > 0.0
        assert abs((shown.envelope_pa or 0.0) - (shown.zero_pa or 0.0) + 50.0) < 2.0
        scene.engine.hold_at(-15.0)
        shown = scene.until(lambda s: s.held is not None and s.target_pa == -15.0 and s.held.seconds > 15.0)
        assert speeds(scene)[1] == 0.0
        assert abs((shown.envelope_pa or 0.0) - (shown.zero_pa or 0.0) + 15.0) < 1.0
