"""The Hunt place: a pressure is held, leaks are sealed, and the window says what each seal brought."""

from __future__ import annotations

from dataclasses import replace

import pytest

from acquisition.job import SealingMarkKind
from acquisition.sealing.leaks import LeakStatus
from acquisition.snapshot import Activity, EngineState
from analysis.records import Direction
from analysis.sealing.change import Sureness
from analysis.sealing.zeroage import ZeroAge
from gui.viewmodels.hunt import HuntFacts, hunt_picture
from gui.viewmodels.moment import Place
from gui.viewmodels.next_step import Verb, next_step
from gui.viewmodels.prompt import Prompt, PromptKind
from simulators.faults import sealed
from tests.gui.conftest import Stage
from tests.gui.fakes import SI, moment, running_moment


def hold(stage: Stage) -> None:
    """Hold 50 Pa by the keys of the place, and let it stand."""
    program = stage.program
    stage.connect()
    program.intents.edit("zero_s", "20")
    program.screen.go_to(Place.HUNT)
    stage.draw()
    stage.press()
    while stage.snapshot().held is None:
        stage.until(lambda now: now.held is not None or now.state is EngineState.ASKING)
        if stage.snapshot().state is EngineState.ASKING:
            stage.press()


def status(stage: Stage, number: int) -> LeakStatus:
    """Return how far a leak has come."""
    assert stage.program.desk.job is not None
    return stage.program.desk.job.leaks.leaks[number].status


def watch(stage: Stage, seconds: float) -> None:
    """Let time pass with the window drawn every two seconds."""
    for _ in range(round(seconds / 2)):
        stage.pass_time(2.0)


def test_a_seal_is_told_in_the_window(stage: Stage) -> None:
    hold(stage)
    program, place = stage.program, stage.program.window.hunt
    assert program.screen.place is Place.HUNT
    watch(stage, 30.0)
    assert "being learnt" in place.flow.band.full
    watch(stage, 110.0)
    assert place.flow.figure.accessibleName().startswith("Leakage flow at 50 Pa, now: ")
    assert place.flow.band.full.endswith("over the last 10 s, each reading brought to 50 Pa")
    assert place.flow.rate.full.endswith("air changes per hour at 50 Pa")
    assert place.flow.pressure.text().endswith("held")
    assert "not sure" in place.since.verdict.text()
    assert "Least change" in place.since.least.full
    before = stage.houses[-1].true_q_m3_h(50.0, "depressurize")
    stage.press()  # Mark sealing
    stage.houses[-1].happen(sealed(0.05), over_s=6.0)
    watch(stage, 8.0)
    assert "is being sealed" in next_step(program.bridge.moment(stage.snapshot())).sentence
    stage.press()  # Seal is done
    watch(stage, 44.0)
    brought = stage.houses[-1].true_q_m3_h(50.0, "depressurize") - before
    assert place.since.verdict.text().endswith("sure")
    job = program.desk.job
    assert job is not None
    drop = job.leaks.drops[1]
    assert drop.sureness is Sureness.SURE
    assert drop.difference_m3_h.low < brought < drop.difference_m3_h.high
    assert status(stage, 1) is LeakStatus.SEALED
    assert job.leaks.leaks[1].minutes == pytest.approx(0.15, abs=0.1)
    kinds = [mark.kind for mark in job.leaks.marks]
    assert kinds == [SealingMarkKind.NEW_LEAK, SealingMarkKind.STARTS, SealingMarkKind.DONE]
    assert place.trace.picture is not None
    assert [flag.words for flag in place.trace.picture.flags][-1].startswith("1 ")
    assert len(place.trace.picture.levels) == 2
    # The mark is taken back, and the leak is found again; what was measured stays.
    program.intents.undo()
    assert status(stage, 1) is LeakStatus.FOUND
    assert len(job.leaks.marks) == 2
    assert 1 in job.leaks.drops
    program.intents.hunt.seal_done()
    asked_for_the_zero_again(stage)
    stage.engine().abandon()
    stage.until(lambda now: now.state is EngineState.IDLE)
    stage.draw()
    assert not place.controls.end.isVisible()


def asked(stage: Stage) -> Prompt | None:
    return stage.program.window.hunt.prompt.prompt


def asked_for_the_zero_again(stage: Stage) -> None:
    """Let the zero-flow pressure be old: the place asks, waits while it is told to, and has it read."""
    program, place = stage.program, stage.program.window.hunt
    look = program.desk.hunting.look
    assert look is not None
    assert place.flow.zero.text() == "zero-flow pressure 3 min old"
    assert asked(stage) is None
    for choice, answered in ((1, False), (0, True)):
        program.screen.hunt.zero_later_ns = 0
        program.desk.hunting.look = replace(look, zero=ZeroAge(2000.0, 0.0, 0.7))
        program.screen.touch()
        stage.draw()
        prompt = asked(stage)
        assert prompt is not None
        assert prompt.kind is PromptKind.ZERO
        assert "33 min ago. The wind is no longer that" in prompt.text
        place.prompt.choices[choice].click()
        stage.draw()
        assert asked(stage) is None
        stage.pass_time(1.0)
        assert (stage.snapshot().held is None) is answered


def test_the_place_says_what_is_missing(stage: Stage) -> None:
    stage.program.screen.go_to(Place.HUNT)
    stage.draw()
    assert "No rig is connected" in stage.program.window.hunt.flow.band.full
    stage.connect()
    assert "No pressure is held" in stage.program.window.hunt.flow.band.full
    assert next_step(stage.program.bridge.moment(stage.snapshot())).verb is Verb.HOLD
    # A key of the hunt without a held pressure says so and marks nothing.
    stage.program.intents.hunt.seal_starts()
    stage.draw()
    assert "No pressure is held" in " ".join(item.sentence for item in stage.program.window.notices.notices)


def test_a_typed_pressure_is_held_in_either_direction_within_the_limits(stage: Stage) -> None:
    hold(stage)
    program = stage.program
    for text, words in (("200", "4 to 75 Pa can be held"), ("high", "Pressure is")):
        program.intents.hunt.type_target(text)
        stage.draw()
        assert words in " ".join(item.sentence for item in program.window.notices.notices)
    program.screen.display = replace(program.screen.display, decimal_mark=",")
    program.intents.hunt.type_target("32,5")
    stage.until(lambda now: now.target_pa == -32.5 and now.held is not None)
    stage.draw()
    assert program.window.hunt.controls.entry.text() == "32,5"
    assert next_step(program.bridge.moment(stage.snapshot())).sentence.startswith("Holding −32,5 Pa")
    program.intents.hunt.choose_direction(Direction.PRESSURIZE)
    stage.until(lambda now: now.state is EngineState.ASKING)
    stage.press()
    stage.until(lambda now: now.target_pa == 32.5 and now.held is not None)


def test_old_data_never_looks_new() -> None:
    held = running_moment()
    old = hunt_picture(held, HuntFacts(age_s=2.5))
    fresh = hunt_picture(moment(), HuntFacts(age_s=0.1))
    assert old.age == "data 2.5 s old"
    assert fresh.age == "data 0.1 s old"
    assert hunt_picture(moment(display=SI), HuntFacts()).age == "no data"


def test_a_pressure_chosen_on_the_way_up_is_the_one_that_is_held(stage: Stage) -> None:
    stage.connect()
    stage.program.screen.go_to(Place.HUNT)
    stage.shorten()
    stage.draw()
    stage.press()
    stage.press()
    stage.until(lambda now: now.activity is Activity.APPROACH and now.fan_fraction > 0.15)
    controls = stage.program.window.hunt.controls
    assert controls.end.isVisible()
    assert not controls.begin.isVisible()
    stage.program.intents.hunt.choose_target(15.0)
    held = stage.until(lambda now: now.held is not None, 40.0)
    assert held.target_pa == -15.0
    stage.program.intents.hunt.choose_target(25.0)
    stage.until(lambda now: now.target_pa == -25.0, 2.0)
    controls.end.click()
    stage.until(lambda now: now.state is EngineState.IDLE, 12.0)
    assert stage.houses[-1].world.speed == 0.0


def test_a_hold_can_be_ended_before_anything_is_held(stage: Stage) -> None:
    stage.connect()
    stage.program.screen.go_to(Place.HUNT)
    stage.draw()
    stage.press()
    stage.press()
    stage.until(lambda now: now.activity is Activity.ZERO)
    stage.draw()
    stage.program.window.hunt.controls.end.click()
    stage.until(lambda now: now.state is EngineState.IDLE, 2.0)
