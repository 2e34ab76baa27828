"""The next bar: one sentence and one button, at every moment. And ribbon and rail beside it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from acquisition.job import JobDetails, RecordState
from acquisition.multipoint import SAFETY
from acquisition.snapshot import EngineState, RecordingView
from acquisition.steps import Ask
from drivers.instrument import LinkState, LinkStatus
from gui.theme import Tone
from gui.viewmodels.moment import JobMoment, Moment, Place, RigMoment, RigState
from gui.viewmodels.next_step import NextStep, Verb, next_step
from gui.viewmodels.prompt import ACCEPT, END_TEST, NOT_RESUME, RESUME, running_prompt
from gui.viewmodels.rail import rail
from gui.viewmodels.ribbon import link_lamp, ribbon
from tests.gui.fakes import BUILDING, LINKS, PLAN, RIG, US, moment, running, running_moment, shown, snapshot

NO_RIG = RigMoment(RigState.NONE, None, "", "sim:mill-row")
FRESH = JobMoment("/jobs/a.airseam", JobDetails("Mill Row 8"), PLAN, fresh=True)
TURN = Ask("turn-fan", "Turn the fan round.", ("The fan is turned",))


def asking(ask: Ask, place: Place = Place.TEST) -> Moment:
    return moment(place=place, snapshot=snapshot(state=EngineState.ASKING, ask=ask))


MOMENTS: dict[str, tuple[Moment, Verb, str]] = {
    "no job": (moment(job=None), Verb.NEW_JOB, "New job"),
    "no rig": (moment(rig=NO_RIG, snapshot=None), Verb.CONNECT, "Connect the simulated rig"),
    "no rig and no house": (
        moment(rig=replace(NO_RIG, first_source=""), snapshot=None),
        Verb.GO_TO_RIG,
        "Open Rig",
    ),
    "ready": (moment(), Verb.START, "Start the test"),
    "asking": (asking(SAFETY), Verb.ANSWER, "All of this is so"),
    "asking elsewhere": (asking(SAFETY, Place.REPORT), Verb.GO_TO_TEST, "Go to the test"),
    "turning": (asking(TURN), Verb.ANSWER, "The fan is turned"),
    "running": (running_moment(), Verb.PAUSE, "Pause test"),
    "paused": (
        moment(snapshot=snapshot(state=EngineState.PAUSED, paused_reason="Stopped by hand. The fan is at rest.")),
        Verb.GO_ON,
        "Go on",
    ),
    "complete": (moment(job=FRESH, shown=shown()), Verb.OPEN_REPORT, "Open the report"),
    "report": (moment(place=Place.REPORT, shown=shown()), Verb.SAVE_REPORT, "Save the report"),
    "report saved": (moment(place=Place.REPORT, shown=shown(), report_saved=True), Verb.START, "Start the test"),
    "closing": (moment(closing=True), Verb.NOTHING, "Please wait"),
}


@pytest.mark.parametrize("name", MOMENTS)
def test_every_moment_has_one_sentence_and_one_button(name: str) -> None:
    now, verb, label = MOMENTS[name]
    step = next_step(now)
    assert (step.verb, step.label) == (verb, label)
    assert step.sentence[0].isupper()
    assert step.sentence.endswith(".")
    assert len(step.sentence) < 160


def test_the_volume_is_asked_for_once_and_not_insisted_on() -> None:
    bare = replace(PLAN, building=replace(BUILDING, volume_m3=None))
    job = JobMoment("/jobs/a.airseam", JobDetails("Mill Row 8"), bare)
    assert next_step(moment(job=job)).verb is Verb.GO_TO_VOLUME
    there = next_step(moment(job=job, place=Place.JOB))
    assert there.verb is Verb.START
    assert "no air change rate" in there.sentence


def test_an_interrupted_test_is_told() -> None:
    words = "Test 2 of 04.05. 12:00 was interrupted with 3 points taken; every reading up to then is safe."
    job = replace(FRESH, fresh=False, interrupted=words)
    there = moment(job=job, shown=shown(3, state=RecordState.INTERRUPTED))
    assert next_step(there) == NextStep(words, "Go on with the test", Verb.RESUME)
    asked = running_prompt(there)
    assert asked is not None
    assert asked.choices == (RESUME, NOT_RESUME)
    assert next_step(moment(job=job, rig=NO_RIG, snapshot=None)).sentence.startswith(words)


def test_a_link_that_does_not_answer_is_told_in_its_own_words() -> None:
    lost = LinkStatus("gauge", "/dev/ttyUSB0", LinkState.LOST, sentence="There is no port /dev/ttyUSB0.")
    step = next_step(moment(snapshot=snapshot(links=(lost, LINKS[1]))))
    assert step.sentence == "There is no port /dev/ttyUSB0."
    assert step.verb is Verb.GO_TO_RIG


def test_a_fault_is_what_the_bar_says_after_it() -> None:
    step = next_step(moment(snapshot=snapshot(last_error="The gauge is silent.")))
    assert step.sentence == "The gauge is silent."


def test_the_decision_changes_its_id_with_the_question() -> None:
    assert next_step(asking(SAFETY)).id != next_step(asking(TURN)).id
    assert next_step(running_moment(2)).id == next_step(running_moment(3)).id


def test_questions_come_with_all_choices_and_their_caution() -> None:
    prompt = running_prompt(asking(SAFETY))
    assert prompt is not None
    assert prompt.choices == SAFETY.choices
    assert prompt.caution == SAFETY.caution
    assert running_prompt(running_moment()) is None


def test_a_pause_offers_to_go_on_and_to_end() -> None:
    paused = snapshot(state=EngineState.PAUSED, paused_reason="Stopped by hand. The fan is at rest.")
    prompt = running_prompt(moment(snapshot=paused))
    assert prompt is not None
    assert prompt.choices == ("Go on", END_TEST)


def test_another_instrument_can_be_accepted_after_a_pause() -> None:
    stranger = LinkStatus("gauge", "/dev/ttyUSB0", LinkState.WRONG_INSTRUMENT, sentence="SG-0099 answers.")
    paused = snapshot(state=EngineState.PAUSED, paused_reason="The gauge is silent.", links=(stranger, LINKS[1]))
    prompt = running_prompt(moment(snapshot=paused))
    assert prompt is not None
    assert ACCEPT in prompt.choices
    assert "SG-0099 answers." in prompt.caution


def test_the_ribbon_shows_figures_with_their_units_and_says_them() -> None:
    picture = ribbon(running_moment())
    assert [(figure.value, figure.unit) for figure in picture.figures] == [
        ("−30.6", "Pa"), ("384", "m³/h"), ("57", "%"),
    ]  # fmt: skip
    assert picture.figures[0].spoken == "Envelope: −30.6 Pa"
    assert ribbon(running_moment(display=US)).figures[1].unit == "cfm"


def test_without_a_reading_there_is_a_dash_and_never_a_zero() -> None:
    picture = ribbon(moment(snapshot=snapshot(envelope_pa=None, flow_m3_h=None)))
    assert [figure.value for figure in picture.figures] == ["–", "–", "0"]
    assert ribbon(moment(rig=NO_RIG, snapshot=None)).figures[2].value == "–"


def test_recording_shows_elapsed_time_and_when_it_was_saved() -> None:
    picture = ribbon(running_moment())
    assert picture.record is not None
    assert picture.record.words == "rec 00:06:42"
    assert picture.record_detail.startswith("saved ")


def test_a_disk_that_does_not_take_the_data_is_an_alarm_on_the_ribbon() -> None:
    now = replace(running(), recording=RecordingView(10.0, None, "The disk is full."))
    lamp = ribbon(moment(snapshot=now)).record
    assert lamp is not None
    assert (lamp.tone, lamp.words, lamp.tip) == (Tone.BAD, "not saved", "The disk is full.")


def test_lamps_say_in_words_what_their_colour_says() -> None:
    assert link_lamp(LINKS[0]).words == "gauge 10 Hz"
    assert link_lamp(LINKS[1], drive=True).words == "fan linked"
    lost = replace(LINKS[0], state=LinkState.LOST, sentence="Unplugged.")
    assert (link_lamp(lost).tone, link_lamp(lost).words, link_lamp(lost).tip) == (Tone.BAD, "gauge lost", "Unplugged.")


def test_more_links_than_there_is_room_for_are_counted() -> None:
    many = tuple(replace(LINKS[0], name=f"gauge {at}") for at in range(6))
    lamps = ribbon(moment(snapshot=snapshot(links=many))).links
    assert len(lamps) == 4
    assert lamps[-1].words == "3 more"


def test_simulated_data_are_marked_as_invented() -> None:
    simulated = RigMoment(RigState.CONNECTED, replace(RIG, simulated=True), "sim:mill-row", "sim:mill-row")
    assert "invented data" in ribbon(moment(rig=simulated)).subtitle
    assert "invented data" not in ribbon(moment()).subtitle


def test_the_rail_tells_what_is_missing() -> None:
    marks = {item.place: item.mark for item in rail(moment(job=None, rig=NO_RIG, snapshot=None))}
    assert marks == {
        Place.JOB: "!",
        Place.SETUP: "",
        Place.RIG: "!",
        Place.TEST: "",
        Place.HUNT: "",
        Place.STAGES: "",
        Place.REPORT: "",
    }
    assert {item.place: item.mark for item in rail(running_moment())}[Place.TEST] == "●"
    assert {item.place: item.mark for item in rail(asking(SAFETY))}[Place.TEST] == "!"
    assert [item.chosen for item in rail(moment())] == [place is Place.TEST for place in Place]
