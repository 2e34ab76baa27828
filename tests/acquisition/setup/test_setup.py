"""Getting ready and putting back: which state a rule wants, what stays owed, what the safety answers come to."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from acquisition.holding import held_plan, holding
from acquisition.job import Entry, PreparationKind
from acquisition.languages import language_of
from acquisition.setup import (
    board_of,
    gate_of,
    obeying,
    openings_for,
    preparation_sheet,
    rule_for,
    said_of_setup,
    shipped_questions,
)
from acquisition.setup.openings import RULES, OpeningState
from acquisition.steps import BeginRun, GoTo, Hold, Mark, StepResult, Wish
from analysis.errors import InvalidInput
from analysis.methods import method_ids, method_of
from analysis.records import Direction
from tests.acquisition.samples import plan

NOW = datetime(2026, 5, 4, 9, 0, tzinfo=UTC)
PLAN = replace(plan(), method="iso9972", preparation="1", directions=tuple(Direction))


def answers(**states: str) -> list[Entry]:
    """Return yes to every question but those named."""
    return [
        Entry(NOW, PreparationKind.SAFETY, question.id, states.get(question.id.replace("-", "_"), "yes"))
        for question in shipped_questions()
    ]


def test_the_state_of_an_opening_follows_method_and_preparation() -> None:
    def state(method: str, preparation: str, opening: str) -> OpeningState:
        made = replace(PLAN, method=method, preparation=preparation)
        return next(state for item, state in openings_for(made) if item.id == opening)

    # ISO 9972, methods 1 and 2 (from memory); dwelling codes: dampers closed, not sealed (IECC table).
    assert state("iso9972", "1", "natural-vents") is OpeningState.CLOSED
    assert state("iso9972", "2", "natural-vents") is OpeningState.SEALED
    assert state("iso9972", "1", "whole-house-ventilation") is OpeningState.SEALED
    assert state("resnet-380-multi", "", "extract-fans") is OpeningState.CLOSED
    assert state("cgsb-149.10", "", "extract-fans") is OpeningState.SEALED
    for method in method_ids():
        for preparation in ("", *method_of(method).preparations):
            assert rule_for(replace(PLAN, method=method, preparation=preparation)) in RULES


@pytest.mark.parametrize("finished", ["finished", "Fertiggestellt", "achevé"])
def test_the_list_leaves_out_what_a_stage_does_not_have(finished: str) -> None:
    def asked(stage: str) -> set[str]:
        return {opening.id for opening, _ in openings_for(replace(PLAN, stage=stage))}

    everything = asked("a stage of somebody's own")
    assert everything - asked(finished) == {"missing-parts"}
    assert {"heating", "dryer", "traps"} <= everything - asked("Rohbau geschlossen")
    assert asked("") == asked("services in") == everything


def test_an_opening_that_is_sealed_is_a_seal_until_it_is_off_or_noted_otherwise() -> None:
    name = "Vents without a fan"
    sealed, off = (
        Entry(NOW, PreparationKind.OPENING, "natural-vents", "sealed"),
        Entry(NOW, PreparationKind.SEAL, name, "off"),
    )
    closed = replace(sealed, state="closed")
    looked = Entry(NOW, PreparationKind.CHECK, "set-up", "looked over", "A. Nother")
    assert f"Seal: {name}" in board_of(PLAN, [sealed]).owed
    assert board_of(PLAN, [sealed, off]).seals == ((name, False),)
    assert board_of(PLAN, [sealed, off, sealed]).seals == ((name, True),)
    assert board_of(PLAN, [sealed, closed]).seals == ()
    assert [board_of(PLAN, entries).changed for entries in ([sealed, looked, off], [looked, sealed])] == [False, True]
    said = said_of_setup(PLAN, [looked, sealed], NOW)
    assert f"Sealed for the test: {name}." in said
    assert said[-1] == "Something was set up otherwise after that."


def test_a_seal_is_owed_until_it_is_off_and_everything_put_back() -> None:
    seal = Entry(NOW, PreparationKind.SEAL, "Dryer", "on")
    assert board_of(PLAN, []).owed == ()
    board = board_of(PLAN, [seal])
    assert "Seal: Dryer" in board.owed
    done = [Entry(NOW, PreparationKind.RESTORE, line.id, "done") for line in board.restore]
    assert board_of(PLAN, [seal, *done]).owed == ("Seal: Dryer",)
    off = replace(seal, state="off")
    assert board_of(PLAN, [seal, *done, off]).owed == ()
    left = [*done[1:], replace(done[0], state="left", note="the fitter comes tomorrow")]
    assert board_of(PLAN, [seal, off, *left]).owed == ()
    # The next visit owes everything again.
    assert len(board_of(PLAN, [seal, *done, off, *answers()]).owed) == len(board.restore)


def test_an_opening_that_is_not_as_wanted_stays_open() -> None:
    wrong = Entry(NOW, PreparationKind.OPENING, "windows", "open")
    board = board_of(PLAN, [wrong, Entry(NOW, PreparationKind.OPENING, "dryer", "not present")])
    names = {line.id for line in board.unsettled}
    assert "windows" in names
    assert "dryer" not in names
    heating = board_of(PLAN, [Entry(NOW, PreparationKind.OPENING, "heating", "off")])
    assert any("pilot lit" in item for item in heating.owed)


def test_every_answer_has_its_consequence() -> None:
    free = gate_of(answers(fires="not present"), NOW)
    assert free.sentence == "The fan may start."
    assert obeying(PLAN, free).cap_pa is None
    assert "fires: not present" in obeying(PLAN, free).safety
    limited = gate_of(answers(ashes="no", sheeting="no"), NOW)
    made = obeying(PLAN, limited)
    assert made.directions == (Direction.PRESSURIZE,)
    assert made.cap_pa == 30.0
    assert "pressurize only and at most 30 Pa" in made.safety
    with pytest.raises(InvalidInput, match="No test possible"):
        obeying(PLAN, gate_of(answers(fibres="no"), NOW))


def test_old_or_missing_answers_leave_the_question_to_the_test() -> None:
    old = gate_of(answers(sheeting="no"), NOW + timedelta(hours=5))
    assert not old.complete
    assert obeying(PLAN, old).safety == ""
    assert obeying(PLAN, old).cap_pa == 30.0
    later = gate_of(answers(), NOW - timedelta(minutes=1))
    assert not later.complete
    part = gate_of(answers()[1:], NOW)
    assert "1 of 8" in part.sentence
    assert obeying(PLAN, part).safety == ""
    with pytest.raises(InvalidInput, match="No test possible"):
        obeying(PLAN, gate_of(answers(fires="no"), NOW + timedelta(days=3)))


def test_the_sheet_for_the_client_names_every_opening() -> None:
    text = preparation_sheet(replace(PLAN, stage="boards on"), "Mill Row 8")
    assert "Mill Row 8, stage: boards on" in text
    assert all(f"[ ] {opening.name}: {state}" in text for opening, state in openings_for(PLAN))
    assert "24 hours" in text
    assert "licensed practice" in text
    german = preparation_sheet(PLAN, "Mühlgasse 8", language_of("de"))
    assert german.startswith("Vorbereitung der Luftdichtheitsmessung: Mühlgasse 8, Bauphase: membrane up\n")
    assert ": geschlossen\n" in german
    assert "(durch die Messperson)" in german
    assert german.count("\n") == text.count("\n")


def test_a_held_pressure_stays_within_the_answers() -> None:
    limited = obeying(held_plan(PLAN, -50.0), gate_of(answers(ashes="no", sheeting="no"), NOW))
    steps = holding(limited, shutter=True)
    walked = [next(steps)]
    assert isinstance(walked[0], Mark)
    wishes = iter((Wish(55.0), Wish(-20.0), Wish(None)))
    result: StepResult = None
    while True:
        try:
            step = steps.send(result)
        except StopIteration:
            break
        walked.append(step)
        result = next(wishes) if isinstance(step, Hold) else None
    assert {step.target_pa for step in walked if isinstance(step, GoTo)} == {30.0}
    assert [step.direction for step in walked if isinstance(step, BeginRun)] == [Direction.PRESSURIZE]
    told = [step.text for step in walked if isinstance(step, Mark)][1:]
    assert told == [
        "55 Pa was asked for; the safety answers allow 30 Pa.",
        "-20 Pa was asked for; the safety answers allow 30 Pa.",
    ]


def test_the_report_says_what_was_noted_before_the_test() -> None:
    assert said_of_setup(PLAN, [], NOW) == ()
    late = Entry(NOW + timedelta(minutes=1), PreparationKind.SEAL, "Dryer", "on")
    assert said_of_setup(PLAN, [late], NOW) == ()
    noted = [
        *answers(sheeting="no"),
        Entry(NOW, PreparationKind.OPENING, "windows", "as is"),
        Entry(NOW, PreparationKind.OPENING, "dryer", "closed"),
        Entry(NOW, PreparationKind.SEAL, "Letter box", "on"),
        Entry(NOW, PreparationKind.CHECK, "set-up", "looked over", "S. Econd"),
    ]
    text = " ".join(said_of_setup(obeying(PLAN, gate_of(noted, NOW)), noted, NOW))
    assert "at or below 30 Pa" in text
    assert "otherwise than the method wants: Windows and roof lights (as is)." in text
    assert "11 of 13 openings were not noted" in text
    assert "Sealed for the test: Letter box." in text
    assert "second person: S. Econd" in text
