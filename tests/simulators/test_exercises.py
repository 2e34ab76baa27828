"""Exercise files: those that come along, what they hide, and how mistakes in them are answered."""

from __future__ import annotations

from pathlib import Path

import pytest

from drivers.clock import seconds
from simulators.exercise import Task
from simulators.exercises import exercise_names, load_exercise, read_exercise
from simulators.filetable import InvalidFile
from tests.simulators.rigs import virtual_clock
from tests.simulators.test_scenarios import advance

HEAD = (
    'format = "airseam-exercise-1"\ntitle = "T"\nnote = "Invented data."\ntask = "Do it."\n'
    'house = "brook-end"\nminutes = 20\n'
)
MARK = '[[mark]]\nwhat = "result"\npoints = 1\n'
EVENT = '[[event]]\nwhat = "seal-off"\nsays = "S"\nat_s = 10.0\ntimes = 2.0\n'


@pytest.mark.parametrize("name", exercise_names())
def test_every_shipped_exercise_is_invented_has_a_task_and_ten_points(name: str) -> None:
    exercise = load_exercise(name)
    assert "nvented" in exercise.scenario.note
    assert len(exercise.scenario.task) > 40
    assert exercise.points == 10.0
    assert any(mark.what is Task.SAFETY for mark in exercise.marks)


def test_there_are_those_that_a_class_needs_and_the_first_one_stands_first() -> None:
    names = exercise_names()
    assert len(names) >= 8
    assert names[0] == "first-test"


def test_events_count_from_when_the_fan_first_turns() -> None:
    begun: list[float] = []
    exercise = read_exercise("x", HEAD + EVENT + MARK)
    rig = exercise.rig(1, virtual_clock(), begun.append)
    whole = rig.true_q_m3_h(50.0, "depressurize")
    advance(rig, 60.0)
    assert not begun
    assert rig.true_q_m3_h(50.0, "depressurize") == whole
    rig.world.speed = 0.5
    advance(rig, 80.0)
    assert begun == [pytest.approx(60.5, abs=1.0)]
    assert rig.true_q_m3_h(50.0, "depressurize") > 1.5 * whole


def test_events_may_count_from_the_start_and_one_at_zero_is_so_before_the_fan_turns() -> None:
    rig = read_exercise("x", HEAD + 'begins = "start"\n' + EVENT + MARK).rig(1, virtual_clock())
    whole = rig.true_q_m3_h(50.0, "depressurize")
    advance(rig, 15.0)
    assert rig.true_q_m3_h(50.0, "depressurize") > 1.5 * whole
    other = read_exercise("x", HEAD + EVENT.replace("10.0", "0.0") + MARK).rig(1, virtual_clock())
    advance(other, 1.0)
    assert other.true_q_m3_h(50.0, "depressurize") == rig.true_q_m3_h(50.0, "depressurize")


def test_the_truth_follows_the_events_and_is_that_of_the_plant() -> None:
    exercise = load_exercise("sealing-race")
    spans = exercise.spans()
    rig = exercise.rig(1, virtual_clock())
    rig.world.speed = 0.5
    begun_s = 0.5
    for span in spans[1:]:
        advance(rig, begun_s + span.since_s + 3.0)
        assert rig.true_q_m3_h(50.0, "depressurize") == pytest.approx(span.depressurize_m3_h, rel=1e-9)
    assert rig.clock.now_ns() < seconds(300.0)
    first = spans[0].depressurize_m3_h - spans[1].depressurize_m3_h
    numbers = [mark.value for mark in exercise.marks if mark.what is Task.NUMBER]
    assert first == pytest.approx(numbers[0], abs=1.0)
    assert spans[3].depressurize_m3_h - spans[4].depressurize_m3_h == pytest.approx(numbers[1], abs=1.0)


def test_the_share_of_the_garage_is_what_two_leaks_in_series_give() -> None:
    """(dp_hg/dp_go)^n = Cgo/Cg: continuity through the garage, both leaks with one exponent."""
    exercise = load_exercise("attached-garage")
    zone = next(item for item in exercise.scenario.house.zones if item.name == "garage")
    ratio = (zone.outer_m3_s_pa_n / zone.inner_m3_s_pa_n) ** (1.0 / zone.inner_exponent)
    (number,) = (mark.value for mark in exercise.marks if mark.what is Task.NUMBER)
    assert number == pytest.approx(100.0 * ratio / (1.0 + ratio), abs=0.1)


@pytest.mark.parametrize(
    ("text", "line", "key"),
    [
        (HEAD.replace("minutes = 20", "minutes = -1") + MARK, 6, "minutes"),
        (HEAD + EVENT.replace('"seal-off"', '"seal-of"') + MARK, 8, "event.what"),
        (HEAD + EVENT.replace('says = "S"\n', "") + MARK, 7, "event.says"),
        (HEAD + EVENT + MARK.replace('"result"', '"results"'), 13, "mark.what"),
        (HEAD + MARK + 'words = ["a"]\n', 10, "mark.words"),
        (HEAD + MARK.replace("result", "noticed") + 'says = "S"\nwords = ["a"]\n', 7, "mark.event"),
        (HEAD + EVENT + MARK.replace("result", "noticed") + 'says = "S"\nwords = ["a"]\nevent = 2\n', 17, "mark.event"),
        (HEAD + MARK.replace("result", "safety") + 'answers = ["sheeting=maybe"]\n', 10, "mark.answers"),
        (HEAD + '[[event]]\nwhat = "unplugged"\nsays = "S"\nat_s = 1.0\ninstrument = "fan"\n' + MARK, 8, "event.what"),
        (HEAD, None, "mark"),
    ],
)
def test_a_mistake_is_answered_with_file_line_and_key(text: str, line: int | None, key: str) -> None:
    with pytest.raises(InvalidFile) as caught:
        read_exercise("x", text)
    assert caught.value.file == "x.toml"
    assert caught.value.key == key
    if line is not None:
        assert caught.value.line == line


def test_a_name_that_there_is_not_is_answered_with_those_there_are(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="first-test"):
        load_exercise("nonsense")
    with pytest.raises(InvalidFile, match="can be read"):
        load_exercise(str(tmp_path / "none.toml"))
    path = tmp_path / "own.toml"
    path.write_text(HEAD + MARK, encoding="utf-8")
    assert load_exercise(str(path)).scenario.id == "own"
