"""A recorded test played back through the whole program: the same readings, the same windows, the same digits."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest

from acquisition.engine import Engine
from acquisition.job import Job
from acquisition.job.results import analyse_record
from acquisition.replay import PlayedRig, exercise_text, play_clock, same_result
from acquisition.snapshot import EngineState
from airseam import main
from analysis.errors import InvalidInput
from analysis.records import Direction
from drivers.clock import ScaledClock, ShiftedClock, VirtualClock, seconds
from simulators.exercises import read_exercise
from tests.acquisition.scenes import a_scene
from tests.simulators.rigs import virtual_clock


@pytest.fixture(scope="module")
def recorded(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a job with a test in both directions, one point struck, a remark in it; nobody changes it."""
    folder = tmp_path_factory.mktemp("recorded")
    with a_scene(virtual_clock(), folder, wind_m_s=3.0) as scene:
        scene.job.edit_details(replace(scene.job.details, client="Ada Example", site="Nowhere 1", tester="Ben Example"))
        scene.begin(scene.plan(both=True, targets_pa=(60.0, 50.0, 40.0, 30.0, 25.0, 20.0)))
        scene.to_the_end()
        scene.job.flush()
        loaded = scene.job.load(1)
        scene.job.strike(1, loaded.runs[0].windows[2].id, "a door slammed")
        return scene.job.path


def played(job: Job, folder: Path) -> tuple[Job, Engine]:
    """Play the test of a job in virtual time into a new job."""
    loaded = job.load(1)
    clock = play_clock(loaded, VirtualClock(loaded.record.started))
    engine = Engine(PlayedRig(job, loaded, clock), clock, auto_answer=True)
    into = Job.create(folder / "played.airseam", clock, "Replay")
    engine.start()
    engine.begin(loaded.record.plan, into.record(loaded.record.plan, loaded.record.rig))
    while engine.busy:
        clock.wait_until(clock.now_ns() + seconds(5.0))
    engine.close()
    into.flush()
    return into, engine


@pytest.mark.walk
def test_the_result_is_the_same_to_the_digit_and_so_is_every_reading_and_window(recorded: Path, tmp_path: Path) -> None:
    job = Job.open(recorded, virtual_clock(), read_only=True)
    into, engine = played(job, tmp_path)
    before, after = job.load(1), into.load(1)
    assert json.loads(after.record.result_json) == json.loads(before.record.result_json)
    assert same_result(before, engine.snapshot().result)
    assert [run.record.direction for run in after.runs] == list(Direction)
    for old, new in zip(before.runs, after.runs, strict=True):
        assert new.windows == old.windows
        assert any(window.struck for window in new.windows) == any(window.struck for window in old.windows)
        kept = job.readings(old.record.id)
        again = into.readings(new.record.id)
        windows = [(window.start_ns, window.end_ns) for window in old.windows]
        used = {(item.role, item.t_ns, item.value) for item in kept if any(a <= item.t_ns < b for a, b in windows)}
        assert used <= {(item.role, item.t_ns, item.value) for item in again}
        assert [(item.t_ns, item.fraction) for item in new.fan] == [(item.t_ns, item.fraction) for item in old.fan]
    assert all(item.ok is not False for item in into.verify())
    into.close()
    job.close()


def test_marks_and_what_was_noticed_are_played_back_too(recorded: Path, tmp_path: Path) -> None:
    job = Job.open(recorded, virtual_clock(), read_only=True)
    into, _ = played(job, tmp_path)
    before, after = job.load(1), into.load(1)
    inside = [mark for mark in before.marks if any(run.record.started_ns <= mark.t_ns for run in before.runs)]
    assert {mark.text for mark in inside} <= {mark.text for mark in after.marks}
    assert after.marks[0].kind == "replay"
    into.close()
    job.close()


def test_a_damaged_copy_of_the_readings_would_be_seen(recorded: Path) -> None:
    job = Job.open(recorded, virtual_clock(), read_only=True)
    loaded = job.load(1)
    other = replace(loaded, runs=loaded.runs[:1])
    assert not same_result(loaded, analyse_record(loaded.record, other.test()))
    job.close()


@pytest.mark.walk
def test_the_command_plays_back_and_says_so(recorded: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    exercise, into = tmp_path / "exercise.toml", tmp_path / "again.airseam"
    assert main(["replay", str(recorded), "--job", str(into), "--exercise-file", str(exercise)]) == 0
    said = capsys.readouterr()
    assert "the same to the digit" in said.err
    assert main(["verify", str(into)]) == 0
    text = exercise.read_text(encoding="utf-8")
    made = read_exercise("exercise", text)
    assert made.points == 10.0
    # Nothing tells whose house it was.
    for word in ("Ada", "Ben", "Nowhere", "Mill Row"):
        assert word not in text
    assert main(["replay", str(recorded)]) == 2
    assert main(["replay", str(recorded), "--job", str(into)]) == 2


def test_the_exercise_is_as_tight_as_the_recorded_house(recorded: Path) -> None:
    job = Job.open(recorded, virtual_clock(), read_only=True)
    loaded = job.load(1)
    made = read_exercise("x", exercise_text(loaded))
    n50 = json.loads(loaded.record.result_json)["mean"]["n50_per_h"]["value"]
    house = made.rig(1, virtual_clock())
    assert house.true_n50() == pytest.approx(n50, rel=1e-3)
    assert made.scenario.house.climate.wind_m_s == 3.0
    job.close()


@pytest.mark.walk
def test_it_plays_at_any_speed(recorded: Path, tmp_path: Path) -> None:
    job = Job.open(recorded, virtual_clock(), read_only=True)
    loaded = job.load(1)
    clock = play_clock(loaded, ScaledClock(100.0))
    assert isinstance(clock, ShiftedClock)
    engine = Engine(PlayedRig(job, loaded, clock), clock, auto_answer=True)
    into = Job.create(tmp_path / "fast.airseam", clock, "Replay")
    engine.start()
    engine.begin(loaded.record.plan, into.record(loaded.record.plan, loaded.record.rig))
    while engine.busy and engine.snapshot().last_error == "":
        clock.wait_until(clock.now_ns() + seconds(10.0))
    engine.close()
    assert engine.snapshot().state is EngineState.IDLE
    into.flush()
    assert json.loads(into.load(1).record.result_json) == json.loads(loaded.record.result_json)
    into.close()
    job.close()


def test_what_was_never_read_cannot_be_played(tmp_path: Path) -> None:
    with a_scene(virtual_clock(), tmp_path) as scene:
        scene.begin()
        scene.pass_time(0.5)
        scene.engine.abandon()
        scene.to_the_end()
        loaded = scene.job.load(1)
        nothing = replace(loaded, runs=())
        with pytest.raises(InvalidInput, match="readings"):
            play_clock(nothing, scene.clock)
        with pytest.raises(InvalidInput, match="readings"):
            PlayedRig(scene.job, nothing, scene.clock)
