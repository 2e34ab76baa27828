"""The job holds what the fan was commanded: marks and replays lay it over what happened."""

from __future__ import annotations

from pathlib import Path

from drivers.clock import VirtualClock
from tests.acquisition.scenes import a_scene


def test_every_run_begins_and_ends_with_a_fan_at_rest_and_holds_its_speeds(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin(scene.plan(targets_pa=(50.0, 40.0, 30.0, 20.0, 15.0)))
        scene.to_the_end()
        scene.job.flush()
        (run,) = scene.job.load(1).runs
    assert run.fan[0].fraction == run.fan[-1].fraction == 0.0
    assert 0.2 < max(item.fraction for item in run.fan) <= 1.0
    assert all(run.record.started_ns <= item.t_ns <= (run.record.ended_ns or 0) for item in run.fan)
