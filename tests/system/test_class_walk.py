"""A trainer and a student in two processes, each at the real window, over TCP: from joining to the marks."""

from __future__ import annotations

import multiprocessing
from collections.abc import Callable, Iterator
from multiprocessing.connection import Connection
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication

from acquisition.snapshot import EngineState, PointState, Snapshot
from drivers.clock import ScaledClock, WallClock, seconds
from drivers.openers import Openers
from gui.app import Program, application, build, open_first_job
from gui.errands import ThreadErrands
from gui.settings import SettingsFile
from gui.viewmodels.moment import Place, RigState
from gui.views.rig_place import JOIN
from tests.simulators.classroom.test_class_server import free_port
from tests.system.trainer import sit_down

pytestmark = [pytest.mark.walk, pytest.mark.system, pytest.mark.timeout(180)]
FACTOR, LIMIT_S = 4.0, 60.0
WALL = WallClock()


@pytest.fixture
def trainer(tmp_path: Path) -> Iterator[Callable[[str, str], object]]:
    ours, theirs = multiprocessing.Pipe()
    process = multiprocessing.get_context("spawn").Process(
        target=sit_down, args=(theirs, str(tmp_path / "class"), FACTOR, free_port(5))
    )
    process.start()

    def order(word: str, value: str = "") -> object:
        ours.send((word, value))
        return _answer(ours)

    yield order
    ours.send(("end", ""))
    assert _answer(ours) == "ended"
    process.join(10.0)
    ours.close()
    theirs.close()
    assert process.exitcode == 0


def _answer(pipe: Connection) -> object:
    assert pipe.poll(30.0), "the trainer does not answer"
    return pipe.recv()


@pytest.fixture
def student(tmp_path: Path) -> Iterator[Program]:
    (tmp_path / "jobs").mkdir()
    clock = ScaledClock(FACTOR)
    program = build(
        application(),
        (),
        tmp_path / "jobs",
        clock,
        errands=ThreadErrands(),
        opener=Openers(clock).open,
        settings=SettingsFile(None),
    )
    open_first_job(program, tmp_path / "jobs" / "ada.airseam", tmp_path / "jobs")
    program.window.resize(1280, 800)
    program.window.show()
    yield program
    hand_in(program)
    program.leave()


def until(program: Program, condition: Callable[[], bool]) -> None:
    """Let the student's window live until something is so."""
    end_ns = WALL.now_ns() + seconds(LIMIT_S)
    while not condition():
        assert WALL.now_ns() < end_ns, program.desk.snapshot()
        live(program, 1)


def live(program: Program, rounds: int = 4) -> None:
    """Let the student's window live for a moment."""
    for _ in range(rounds):
        program.desk.errands.collect()
        program.bridge.tick()
        QCoreApplication.processEvents()
        WALL.wait_until(WALL.now_ns() + seconds(0.03))


def begun(program: Program) -> bool:
    """Press the big button; an instrument that is late at that moment on a busy machine lets it say something else."""
    if not program.desk.busy:
        program.screen.go_to(Place.TEST)
        live(program)
        program.window.next_bar.press()
        live(program)
    return program.desk.busy


def hand_in(program: Program) -> None:
    """Part with rig and job."""
    gone: list[bool] = []
    program.desk.clear(lambda: gone.append(True))
    until(program, lambda: bool(gone))


def shown(program: Program) -> Snapshot:
    found = program.desk.snapshot()
    assert found is not None
    return found


def test_from_joining_to_the_marks(trainer: Callable[..., object], student: Program, tmp_path: Path) -> None:
    place = str(trainer("open"))
    assert place.startswith("127.0.0.1:"), place

    window = student.window
    student.screen.go_to(Place.RIG)
    window.rig.choose_page(JOIN)
    window.rig.join.place.setText(place)
    window.rig.join.name.setText("Ada Example")
    window.rig.join.join_button.click()
    until(student, lambda: student.desk.snapshot() is not None and shown(student).envelope_pa is not None)
    until(student, lambda: ("Ada Example", True) in trainer("seats"))  # type: ignore[operator]  # it is a list
    assert window.rig.join.title.text() == "The first test, 30 minutes"
    assert window.rig.join.task.isVisible()
    assert window.grab().save(str(tmp_path / "student-rig.png"))

    # The program is lost and comes back: the same name brings the same house.
    first = student.desk.rig().spec
    student.desk.connection.disconnect()
    until(student, lambda: student.desk.rig().state is RigState.NONE)
    until(student, lambda: ("Ada Example", False) in trainer("seats"))  # type: ignore[operator]  # it is a list
    window.rig.join.join_button.click()
    until(student, lambda: student.desk.snapshot() is not None and shown(student).envelope_pa is not None)
    assert student.desk.rig().spec == first

    for field, text in (
        ("volume", "300"), ("indoor", "21"), ("outdoor", "11"), ("wind", "1"), ("targets", "60 50 40 30 20"),
        ("zero_s", "15"), ("average_s", "5"),
    ):  # fmt: skip
        student.intents.edit(field, text)
    student.screen.go_to(Place.TEST)
    until(student, lambda: begun(student))

    thrown = False
    while student.desk.busy:
        live(student)
        if shown(student).state in (EngineState.ASKING, EngineState.PAUSED):
            window.next_bar.press()
        taken = sum(point.state is PointState.TAKEN for run in shown(student).runs for point in run.points)
        if taken >= 2 and not thrown:
            thrown = True
            assert "now" in str(trainer("throw", "A seal comes off"))
            assert trainer("picture", str(tmp_path / "trainer.png"))
            assert window.grab().save(str(tmp_path / "student-test.png"))
    assert thrown
    until(student, lambda: student.desk.showing.test(None) is not None)
    student.intents.edit("note", "In the middle a seal came off: this test is true of neither house.")
    assert student.desk.job is not None
    assert student.desk.job.details.tester == "Ada Example"
    job = student.desk.job.path
    live(student)
    assert window.grab().save(str(tmp_path / "student-done.png"))
    hand_in(student)

    lines = trainer("mark", str(job))
    assert trainer("marks", str(tmp_path / "trainer-marks.png"))
    found = [text for *_, text in lines]  # type: ignore[attr-defined]  # it is a list
    # The program took all points anew after the seal had come off: the truth is that of the house as it then was.
    assert any("in truth 645 m³/h" in text or "before and after the house changed" in text for text in found), found
    for name in ("student-rig", "trainer", "student-test", "student-done", "trainer-marks"):
        assert (tmp_path / f"{name}.png").stat().st_size > 10_000
