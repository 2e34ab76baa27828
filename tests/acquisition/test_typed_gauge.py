"""A gauge that a person reads and types, with a fan by hand: a whole test, in the engine and from the command line."""

from __future__ import annotations

import io
import json
import re
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

import pytest

import airseam
from acquisition.engine import Engine
from acquisition.holding import held_plan
from acquisition.job import Job
from acquisition.openrig import open_rig
from acquisition.rig import InstrumentSpec, Role
from acquisition.rigfile import check_rig, write_rig
from acquisition.snapshot import EngineState, Snapshot
from analysis.errors import InvalidInput
from drivers import clock as clocks
from drivers.clock import VirtualClock, WallClock, seconds
from drivers.openers import Openers
from tests.acquisition.scenes import SHORT, Scene
from tests.person import Person
from tests.test_airseam import short_job

FACTOR = 40.0
TYPING_S = 4.0
"""So long it takes to look at the gauge and to type what it shows."""


@contextmanager
def typed_scene(clock: VirtualClock, folder: Path, person: Person) -> Iterator[Scene]:
    rig = open_rig(person.rig(), clock, Openers(clock).open)
    engine = Engine(rig, clock, auto_answer=True)
    engine.start()
    job = Job.create(folder / "typed.airseam", clock, "Typed")
    try:
        clock.wait_until(clock.now_ns() + seconds(3.0))
        yield Scene(clock, person.house, rig, engine, job)
    finally:
        engine.close()
        job.close()


def type_on(scene: Scene, person: Person, until: int = 10_000) -> Snapshot:
    """Type what is asked for until the test has ended."""
    for _ in range(until):
        shown = scene.pass_time(0.3)
        if shown.state is EngineState.IDLE and not scene.engine.busy:
            return shown
        if shown.typing:
            scene.engine.enter(shown.typing[0], person.shown(shown.typing[0], shown.target_pa))
            scene.pass_time(4.0)
    raise AssertionError(scene.engine.snapshot())


def test_a_whole_test_is_typed(clock: VirtualClock, tmp_path: Path) -> None:
    person = Person()
    with typed_scene(clock, tmp_path, person) as scene:
        scene.begin()
        shown = type_on(scene, person)
        assert shown.last_error == ""
        assert shown.result is not None
        points = shown.runs[0].points
        assert len(points) == len(SHORT)
        assert shown.result.runs[0].q50_m3_h.value == pytest.approx(person.true_q50(), rel=0.015)
        loaded = scene.job.load(1)
        assert loaded.test() == shown.test
        run = loaded.test().runs[0]
        assert [point.count for point in run.points] == [1] * len(SHORT)
        assert run.zero_before is not None
        assert run.zero_before.count >= 10
        assert (run.zero_before.seconds or 0.0) >= 30.0
        assert all(item.ok for item in scene.job.verify())


def test_a_pressure_that_cannot_be_is_typed_again(clock: VirtualClock, tmp_path: Path) -> None:
    person = Person()
    with typed_scene(clock, tmp_path, person) as scene:
        scene.begin()
        shown = scene.pass_time(0.5)
        while shown.target_pa is None:
            scene.engine.enter(Role.ENVELOPE, 0.1)
            shown = scene.pass_time(7.0)
        for wrong in (58.0, -580.0, -0.1):
            scene.engine.enter(Role.ENVELOPE, wrong)
            shown = scene.pass_time(0.5)
            assert shown.typing == (Role.ENVELOPE, Role.FLOW_ELEMENT)
        told = [flag.sentence for flag in shown.flags if flag.id == "typed-wrong"]
        assert [text.partition(". ")[0] for text in told] == [
            "58 Pa was typed: indoors minus outdoors has to be below zero in this direction",
            "-580 Pa was typed: no test goes beyond 100 Pa",
            "-0.1 Pa was typed, as good as nothing: the target is −60 Pa",
        ]
        scene.engine.enter(Role.ENVELOPE, -58.0)
        assert scene.pass_time(0.5).typing == (Role.FLOW_ELEMENT,)
        scene.pass_time(300.0)
        assert scene.engine.snapshot().typing == (Role.FLOW_ELEMENT,)
        scene.engine.enter(Role.FLOW_ELEMENT, 40.0)
        first = scene.pass_time(0.5).runs[0].points[0]
        assert first.envelope_pa == pytest.approx(-58.0)


def test_what_nobody_could_watch_over_is_refused(clock: VirtualClock, tmp_path: Path) -> None:
    typed = Person().rig()
    read = InstrumentSpec("wire", "scpi-gauge", "sim:gauge", (("p2", Role.FLOW_ELEMENT),))
    only_pressure = replace(typed.instruments[0], channels=(("p1", Role.ENVELOPE),))
    with pytest.raises(InvalidInput, match="the flow has to be typed too"):
        check_rig(replace(typed, instruments=(only_pressure, read)))
    drive = InstrumentSpec("fan", "scpi-fan", "sim:fan")
    with pytest.raises(InvalidInput, match="without it a person turns the fan"):
        check_rig(replace(typed, instruments=(*typed.instruments, drive), fan="fan"))
    taps = replace(typed.instruments[0], channels=(*typed.instruments[0].channels, ("p3", Role.ENVELOPE_2)))
    with pytest.raises(InvalidInput, match="only one can be used"):
        check_rig(replace(typed, instruments=(taps,)))
    person = Person()
    with typed_scene(clock, tmp_path, person) as scene:
        plan = held_plan(scene.plan(), -25.0)
        with pytest.raises(InvalidInput, match="a pressure is held"):
            scene.begin(plan)
        with pytest.raises(ValueError, match="its readings are not typed"):
            scene.engine.enter(Role.BAROMETER, 1.0)


class Desk(io.StringIO):
    """A terminal: what is written on it is read by the person, who answers what was asked last in her own time."""

    def __init__(self, person: Person, clock: VirtualClock, lines: int = 10_000) -> None:
        """Sit down at it; after so many lines the person leaves."""
        super().__init__()
        self.person = person
        self.clock = clock
        self.left = lines
        self.prompts: list[str] = []

    def readline(self, size: int | None = -1, /) -> str:  # type: ignore[override]
        """Type a line."""
        text = self.getvalue()
        prompt = text.rpartition("\n")[2]
        self.prompts.append(prompt)
        self.left -= 1
        if self.left < 0:
            return ""
        self.clock.wait_until(self.clock.now_ns() + seconds(TYPING_S))
        answer = "about zero\n" if len(self.prompts) == 1 else self.answer(prompt, text)
        self.write(answer)
        return answer

    def answer(self, prompt: str, text: str) -> str:
        """Look at the gauge as the last task says."""
        role = Role.ENVELOPE if prompt.startswith("The envelope pressure") else Role.FLOW_ELEMENT
        asked = re.findall(r"shows about (\S+) Pa|(With the fan off)", text)[-1]
        target_pa = None if asked[1] else float(asked[0].replace("−", "-"))
        return f"{self.person.shown(role, target_pa):.2f}".replace(".", ",") + "\n"


def typed_from_the_terminal(monkeypatch: pytest.MonkeyPatch, folder: Path, desk: Desk) -> tuple[int, Path]:
    rig, job = folder / "rig.toml", short_job(folder / "typed.airseam")
    rig.write_text(write_rig(desk.person.rig(FACTOR)), "utf-8")
    # The program makes the clock of a simulated rig for itself; here nobody waits for the time to pass.
    monkeypatch.setattr(clocks, "ScaledClock", lambda factor: desk.clock)
    monkeypatch.setattr(sys, "stdin", desk)
    monkeypatch.setattr(sys, "stderr", desk)
    return airseam.main(["test", "--rig", str(rig), "--job", str(job), "--yes", "--json"]), job


@pytest.mark.walk
def test_a_whole_test_is_typed_on_the_command_line(
    clock: VirtualClock, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    desk = Desk(Person(), clock)
    status, _ = typed_from_the_terminal(monkeypatch, tmp_path, desk)
    written = desk.getvalue()
    document = json.loads(capsys.readouterr().out)
    assert status in (0, 1)
    assert document["runs"][0]["q50_m3_h"]["value"] == pytest.approx(desk.person.true_q50(), rel=0.015)
    assert len(document["runs"][0]["induced_pa"]) == len(SHORT)
    assert "envelope pressure is 'about zero': a number is needed" in written
    assert "the target is −60 Pa" not in written
    assert {"The envelope pressure (Pa): ", "The flow-element pressure (Pa): "} == set(desk.prompts)


def test_when_the_typing_ends_the_test_ends_and_keeps_what_was_typed(
    clock: VirtualClock, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    desk = Desk(Person(), clock, lines=12)
    status, path = typed_from_the_terminal(monkeypatch, tmp_path, desk)
    assert status == 1
    assert "what was read is kept" in desk.getvalue()
    job = Job.open(path, WallClock(), read_only=True)
    assert len(job.readings(1)) >= 10
    job.close()
