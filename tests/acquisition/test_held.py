"""A pressure is held over simulated wires while leaks are sealed and a window opens: what the program says of it."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import numpy as np
import pytest

from acquisition.holding import held_plan
from acquisition.job import SealingMark, SealingMarkKind
from acquisition.sealing.held import HeldLook, held_look, understood
from acquisition.snapshot import Snapshot
from acquisition.told import table_lines
from acquisition.told.sealing import held_table
from analysis.records import Direction
from analysis.sealing.change import Sureness
from analysis.sealing.levelled import Levelling, Trace
from analysis.sealing.unrest import Windows
from analysis.sealing.watch import StepKind
from analysis.units import Display, System
from drivers.clock import VirtualClock
from simulators.faults import sealed
from tests.acquisition.scenes import Scene, a_scene


def look_of(scene: Scene, marks: list[SealingMark]) -> HeldLook:
    test = scene.job.load(scene.job.tests()[-1].id)
    run = test.runs[-1]
    found = held_look(
        run.record.direction, 50.0, run.record.air, run.data, run.windows, test.record.rig.fitted_ranges,
        test.record.plan.building, marks,
    )  # fmt: skip
    assert found is not None
    return found


def test_a_seal_is_told_half_a_minute_after_it(tmp_path: Path) -> None:
    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    with a_scene(clock, tmp_path, wind_m_s=0.5) as scene:
        plan = held_plan(replace(scene.plan(), zero_s=20.0), -50.0)
        scene.begin(plan)

        def held_for(seconds: float) -> Snapshot:
            return scene.until(lambda s: s.held is not None and s.held.seconds > seconds)

        held_for(150.0)
        before = scene.house.true_q_m3_h(50.0, "depressurize")
        marks = [SealingMark(clock.utc(), clock.now_ns(), SealingMarkKind.STARTS)]
        scene.house.happen(sealed(0.04), over_s=8.0)
        held_for(160.0)
        marks.append(SealingMark(clock.utc(), clock.now_ns(), SealingMarkKind.DONE))
        held_for(196.0)
        brought = scene.house.true_q_m3_h(50.0, "depressurize") - before
        scene.engine.end_hold()
        scene.to_the_end()
        look = look_of(scene, marks)
        unmarked = look_of(scene, [])
    assert look.unrest is not None
    (seal,) = look.sealed
    assert seal.change is not None
    assert seal.change.sureness is Sureness.SURE
    assert seal.change.difference_m3_h.value == pytest.approx(brought, rel=0.25)
    assert seal.change.difference_m3_h.low < brought < seal.change.difference_m3_h.high
    assert seal.change.before_m3_h == pytest.approx(before, rel=0.03)
    told = "\n".join(table_lines(held_table(look, Display(System.SI))))
    assert "sealed" in told
    assert "sure" in told
    # Without a mark the watch finds the same seal.
    (step,) = [item for item in unmarked.steps if abs(item.at_s - seal.done_s) < 25.0]
    assert step.kind is StepKind.SEAL
    assert step.change.difference_m3_h.value == pytest.approx(brought, rel=0.35)
    assert "looks like a seal" in "\n".join(table_lines(held_table(unmarked, Display(System.SI))))


def test_a_door_that_was_shut_again_never_passes_for_wind() -> None:
    noise = np.random.default_rng(3).standard_normal(600)
    flow = 1000.0 + 2.0 * noise
    flow[300:324] += 110.0
    levelling = Levelling(Direction.DEPRESSURIZE, 0.0, 400.0)
    looks = {now: understood(Trace(0.0, flow[:now], np.zeros((now, 1))), levelling) for now in range(310, 480, 10)}
    for now, found in looks.items():
        assert found.unrest is not None
        assert found.unrest.sd_m3_h(Windows(60, 30)) < 2.0, f"{now - 324} s after the door was shut"
    assert {step.kind for step in looks[470].steps} == {StepKind.PASSING}
