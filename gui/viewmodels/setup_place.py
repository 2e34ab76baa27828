"""The Set-up place: safety answers, openings, seals, what is put back, the second person's check."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from acquisition.job import Entry, Photo
from acquisition.plan import TestPlan
from acquisition.setup import Answer, Board, Gate, OpeningState, board_of, gate_of, rule_for
from acquisition.setup.board import DONE, LEFT, OFF, ON
from acquisition.setup.openings import RULES
from gui.theme import Tone
from gui.viewmodels.retold import retold
from gui.words import mark, say

CAUTION = mark("Local codes and licensed practice decide who may test and how; this list does not replace them.")

SEAL_STATES = ((ON, mark("On")), (OFF, mark("Taken off")))
RESTORE_STATES = ((DONE, mark("Done")), (LEFT, mark("Leave it")))


@dataclass(frozen=True, slots=True)
class StateRow:
    """Something with a state: `choices` are pairs of a state and its word, `state` is the one that holds."""

    subject: str
    text: str
    note: str
    choices: tuple[tuple[str, str], ...]
    state: str
    tone: Tone = Tone.PLAIN
    photos: int | None = None


@dataclass(frozen=True, slots=True)
class SetupPicture:
    """The whole place. `verdict` says what the safety answers come to."""

    verdict: str
    tone: Tone
    forbidden: bool
    safety: tuple[StateRow, ...]
    rule: str
    openings: tuple[StateRow, ...]
    seals: tuple[StateRow, ...]
    restore: tuple[StateRow, ...]
    owed: str
    checked: str


def setup_picture(plan: TestPlan, entries: Sequence[Entry], photos: Sequence[Photo], now: datetime) -> SetupPicture:
    """Return the place at a time."""
    gate, board = gate_of(entries, now), board_of(plan, entries, photos)
    return SetupPicture(
        verdict=retold(gate.sentence),
        tone=_tone(gate),
        forbidden=gate.forbids,
        safety=tuple(_safety(gate)),
        rule=say("As the method wants it: {rule}. {left}", rule=say(RULES[rule_for(plan)]), left=_left(board)),
        openings=tuple(_openings(board)),
        seals=tuple(
            StateRow(name, retold(name), "", SEAL_STATES, *((ON, Tone.ATTENTION) if on else (OFF, Tone.GOOD)))
            for name, on in board.seals
        ),
        restore=tuple(
            StateRow(line.id, retold(line.name), line.note, RESTORE_STATES, line.state, _restored(line.state))
            for line in board.restore
        ),
        owed=_owed(board),
        checked=_checked(board),
    )


def _tone(gate: Gate) -> Tone:
    if gate.forbids:
        return Tone.BAD
    limited = gate.pressurize_only or gate.cap_pa is not None
    return Tone.GOOD if gate.complete and not limited else Tone.ATTENTION


def _safety(gate: Gate) -> Sequence[StateRow]:
    choices = (
        (Answer.YES.value, mark("Yes")),
        (Answer.NO.value, mark("No")),
        (Answer.ABSENT.value, mark("Not present")),
    )
    rows = []
    for question, entry in gate.answers:
        state = "" if entry is None or question in gate.stale else entry.state
        leads = {"stop": say("No: do not test."), "pressurize": say("No: pressurize only.")}
        note = leads.get(question.no, say("No: at most {cap} Pa.", cap=f"{question.cap_pa or 0:g}"))
        tone = {Answer.NO.value: Tone.BAD, "": Tone.PLAIN}.get(state, Tone.GOOD)
        when = "" if entry is None else say(" Answered {time}.", time=f"{entry.utc.astimezone():%d.%m. %H:%M}")
        rows.append(StateRow(question.id, retold(question.text), note + when, choices, state, tone))
    return rows


def _openings(board: Board) -> Sequence[StateRow]:
    rows = []
    for line in board.lines:
        states = dict.fromkeys((line.wanted, OpeningState.SEALED, OpeningState.AS_IS, OpeningState.ABSENT))
        choices = tuple((state.value, state.value.capitalize()) for state in states)
        tone = Tone.PLAIN if line.found is None else Tone.GOOD if line.settled else Tone.ATTENTION
        note = say("Wanted: {wanted}.", wanted=say(line.wanted.capitalize()).lower())
        rows.append(StateRow(line.id, retold(line.name), note, choices, line.found or "", tone, line.photos))
    return rows


def _left(board: Board) -> str:
    left = len(board.unsettled)
    return (
        say("Everything is as wanted.")
        if not left
        else say("{left} of {count} to look at.", left=left, count=len(board.lines))
    )


def _restored(state: str) -> Tone:
    return {DONE: Tone.GOOD, LEFT: Tone.ATTENTION}.get(state, Tone.PLAIN)


def _owed(board: Board) -> str:
    if not board.begun:
        return say("Nothing was touched yet.")
    return say("{count} still to be put back.", count=len(board.owed)) if board.owed else say("Everything is put back.")


def _checked(board: Board) -> str:
    entry = board.checked
    if entry is None:
        return ""
    time = f"{entry.utc.astimezone():%d.%m.%Y %H:%M}"
    if board.changed:
        return say("Looked over by {who}, {time}; something was changed since.", who=entry.who, time=time)
    return say("Looked over by {who}, {time}.", who=entry.who, time=time)
