"""The Set-up place: answers, seals, what is put back, and what they do to a test and to closing the window."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QCoreApplication

from acquisition.job import Job, PreparationKind
from acquisition.setup import shipped_questions
from acquisition.snapshot import EngineState
from analysis.records import Direction
from gui.viewmodels.moment import Place
from gui.viewmodels.next_step import NextStep, next_step
from gui.viewmodels.prompt import CLOSE_ANYWAY, PUT_BACK, PromptKind
from gui.views.parts import MAY_BREAK
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage
from tests.gui.driven import click


def job_of(stage: Stage) -> Job:
    assert stage.program.desk.job is not None
    return stage.program.desk.job


def step_of(stage: Stage) -> NextStep:
    """Return what the window says is to be done next."""
    return next_step(stage.program.bridge.moment(stage.snapshot()))


def answer(stage: Stage, **states: str) -> None:
    """Answer yes to every question but those named."""
    choice = {"yes": 0, "no": 1, "absent": 2}
    stage.program.intents.go_to(Place.SETUP)
    stage.draw()
    for line, question in zip(stage.program.window.setup.safety.lines, shipped_questions(), strict=True):
        line.buttons[choice[states.get(question.id, "yes")]].click()
    stage.draw()


def test_answers_are_kept_and_take_the_place_of_the_question(stage: Stage) -> None:
    stage.connect()
    stage.shorten()
    answer(stage)
    assert {entry.state for entry in job_of(stage).house.entries} == {"yes"}
    assert "The fan may start" in stage.program.window.setup.safety.lead.text()
    stage.press()
    assert stage.snapshot().state is EngineState.RUNNING
    assert "fires: yes" in job_of(stage).tests()[-1].plan.safety


def test_without_answers_the_test_asks_as_before(stage: Stage) -> None:
    stage.connect()
    stage.press()
    assert stage.snapshot().state is EngineState.ASKING


def test_a_no_forbids_the_test_or_limits_it(stage: Stage) -> None:
    stage.connect()
    answer(stage, fibres="no")
    assert stage.program.window.setup.refusal.isVisible()
    assert "No test possible" in step_of(stage).sentence
    stage.press()
    assert (job_of(stage).tests(), stage.program.screen.place) == ((), Place.REPORT)
    for place in (Place.TEST, Place.HUNT):
        stage.program.intents.go_to(place)
        stage.draw()
        stage.press()
        assert (job_of(stage).tests(), stage.program.screen.place) == ((), Place.SETUP)
    assert not stage.program.desk.start_test(50.0)
    stage.draw()
    assert stage.program.window.notices.notices[0].sentence.startswith("No test possible")
    answer(stage, ashes="no", sheeting="no")
    assert not stage.program.window.setup.refusal.isVisible()
    assert step_of(stage).sentence.startswith("Ready to pressurize, at most 30 Pa:")
    stage.press()
    plan = job_of(stage).tests()[-1].plan
    assert (plan.directions, plan.cap_pa) == ((Direction.PRESSURIZE,), 30.0)


def test_a_seal_keeps_the_window_open_until_it_is_off_or_somebody_insists(stage: Stage) -> None:
    window, intents = stage.program.window, stage.program.intents
    path = job_of(stage).path
    intents.go_to(Place.SETUP)
    stage.draw()
    window.setup.new_seal.setText("Dryer outlet")
    window.setup.add_seal.click()
    stage.draw()
    intents.close()
    stage.draw()
    prompt = window.close_prompt.prompt
    assert prompt is not None
    assert prompt.kind is PromptKind.OWED
    assert "Dryer outlet" in prompt.text
    # Nobody closes it without saying why; the reason is written down.
    click(stage, CLOSE_ANYWAY)
    assert window.close_prompt.prompt is prompt
    assert window.isVisible()
    assert "why it is left" in window.notices.notices[0].sentence
    intents.prompted(prompt, PUT_BACK, "")
    stage.draw()
    assert stage.program.screen.place is Place.SETUP
    window.setup.seals.lines[0].buttons[1].click()
    for line in window.setup.restore.lines[1:]:
        line.buttons[0].click()
    window.setup.restore.lines[0].buttons[1].click()
    stage.draw()
    assert job_of(stage).house.entries[-1].kind is PreparationKind.RESTORE
    assert job_of(stage).house.entries[-1].state == "done"
    window.setup.reason.setText("the fitter comes tomorrow")
    window.setup.restore.lines[0].buttons[1].click()
    stage.draw()
    assert job_of(stage).house.entries[-1].note == "the fitter comes tomorrow"
    moment = stage.program.desk.job_moment()
    assert moment is not None
    assert moment.owed == ()
    intents.house.note("seal", "Trap in the cellar", "on")
    intents.close()
    stage.draw()
    window.close_prompt.reason.setEditText("the plumber needs it until Friday")
    click(stage, CLOSE_ANYWAY)
    assert not window.isVisible()
    kept = Job.open(path, stage.clock, read_only=True)
    assert kept.house.entries[-1].note == "the plumber needs it until Friday"
    kept.close()


def test_a_photo_and_the_second_person_are_kept(stage: Stage, tmp_path: Path) -> None:
    picture = tmp_path / "vent.png"
    picture.write_bytes(b"\x89PNG\r\n\x1a\ninvented")
    stage.program.desk.add_photo("windows", picture)
    stage.program.intents.house.check(" ")
    stage.program.intents.house.check("S. Econd")
    stage.program.intents.go_to(Place.SETUP)
    stage.draw()
    setup = stage.program.window.setup
    assert setup.openings.lines[0].photo.text() == "Photo (1)"
    assert "S. Econd" in setup._checked.text()


def test_an_opening_that_is_sealed_stands_on_the_seal_board_until_it_is_off(stage: Stage) -> None:
    stage.program.intents.go_to(Place.SETUP)
    stage.program.intents.edit("preparation", "2")
    stage.draw()
    setup = stage.program.window.setup
    vents = next(line for line in setup.openings.lines if line._text.text() == "Vents without a fan")
    vents.buttons[0].click()
    stage.program.intents.house.check("S. Econd")
    stage.draw()
    assert [line._text.text() for line in setup.seals.lines if line.isVisible()] == ["Vents without a fan"]
    assert "changed since" not in setup._checked.text()
    setup.seals.lines[0].buttons[1].click()
    setup.openings.lines[0].buttons[0].click()
    stage.draw()
    assert "changed since" in setup._checked.text()
    moment = stage.program.desk.job_moment()
    assert moment is not None
    assert "Seal: Vents without a fan" not in moment.owed
    assert stage.program.desk.new_job(job_of(stage).path.with_name("next.airseam"), "The next house")
    stage.draw()
    assert stage.program.window.notices.notices[0].sentence.startswith("Not put back in Mill Row 8: Pilot flames lit")


def test_nothing_is_cut_in_the_place(stage: Stage) -> None:
    answer(stage, fibres="no", sheeting="no")
    stage.program.intents.house.note("seal", "The outlet of the dryer behind the kitchen wall", "on")
    endless = "Dunstabzug" * 20
    stage.program.intents.house.note("seal", endless, "on")
    stage.draw()
    seal = stage.program.window.setup.seals.lines[1]._text
    assert (seal.toolTip(), seal.accessibleName(), seal.text().replace(MAY_BREAK, "")) == (endless,) * 3
    for size in ((1024, 700), (1440, 900)):
        stage.program.window.resize(*size)
        for _ in range(3):
            stage.program.screen.touch()
            stage.draw()
            QCoreApplication.sendPostedEvents()
        assert [*cut_texts(stage.program.window), *overlaps(stage.program.window)] == []
