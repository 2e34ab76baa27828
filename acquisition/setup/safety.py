"""The gate before a fan starts: each question answered, and what follows from the answers.

The gate is a record and a reminder; local codes and licensed practice decide who may test and how.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from enum import StrEnum
from functools import cache

from acquisition.job import Entry, PreparationKind
from acquisition.languages import Language
from acquisition.plan import TestPlan
from analysis.datafile import read_entries, refuse_doubles, shipped_text, take_provenance
from analysis.errors import InvalidInput
from analysis.provenance import Provenance
from analysis.records import Direction

_ANSWERED = " Answered: "
FRESH = timedelta(hours=4)
"""How long an answer counts (our choice): a fire may be lit again after lunch."""
LOWEST_CAP_PA = 15.0


class Answer(StrEnum):
    """What can be answered."""

    YES = "yes"
    NO = "no"
    ABSENT = "not present"


@dataclass(frozen=True, slots=True)
class Question:
    """A question; `no` is what a no leads to, `cap_pa` the pressure it then leaves."""

    id: str
    text: str
    no: str
    cap_pa: float | None
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class Gate:
    """What the answers come to. `missing` and `stale` are questions without an answer that counts."""

    answers: tuple[tuple[Question, Entry | None], ...]
    missing: tuple[Question, ...]
    stale: tuple[Question, ...]
    refusals: tuple[str, ...]
    pressurize_only: bool
    cap_pa: float | None

    @property
    def complete(self) -> bool:
        """Whether every question has an answer that counts."""
        return not self.missing and not self.stale

    @property
    def forbids(self) -> bool:
        """Whether a test is not possible; that holds however old the answer is."""
        return bool(self.refusals)

    @property
    def sentence(self) -> str:
        """What follows, in one sentence."""
        if self.refusals:
            return f"No test possible, since this is not so: “{self.refusals[0]}”"
        if self.missing:
            return f"{len(self.missing)} of {len(self.answers)} safety questions are not answered."
        if self.stale:
            hours = int(FRESH.total_seconds() // 3600)
            return f"The answers are older than {hours} hours: answer again."
        limits = ["pressurize only"] if self.pressurize_only else []
        limits += [f"at most {self.cap_pa:g} Pa"] if self.cap_pa is not None else []
        return f"The fan may start: {' and '.join(limits)}." if limits else "The fan may start."


@cache
def shipped_questions() -> tuple[Question, ...]:
    """Return the questions in the order in which they are asked."""
    questions = []
    for fields in read_entries(shipped_text(__package__, "safety.toml"), "safety.toml", "question")["question"]:
        item = Question(
            id=fields.text("id"),
            text=fields.text("text"),
            no=fields.choice("no", ("stop", "pressurize", "cap")),
            cap_pa=fields.number_or_none("cap_pa"),
            provenance=take_provenance(fields),
        )
        fields.finish()
        if (item.cap_pa is not None) != (item.no == "cap"):
            raise InvalidInput(f"safety.toml: {item.id}.cap_pa", item.cap_pa, "a cap needs it, nothing else has it")
        questions.append(item)
    refuse_doubles([item.id for item in questions], "safety.toml")
    return tuple(questions)


def gate_of(entries: Iterable[Entry], now: datetime) -> Gate:
    """Return what the newest answers come to at a time."""
    newest = {entry.subject: entry for entry in entries if entry.kind is PreparationKind.SAFETY}
    questions = shipped_questions()
    answered = tuple((question, newest.get(question.id)) for question in questions)
    noes = [question for question, entry in answered if entry is not None and entry.state == Answer.NO]
    caps = [question.cap_pa for question in noes if question.cap_pa is not None]
    return Gate(
        answers=answered,
        missing=tuple(question for question, entry in answered if entry is None),
        stale=tuple(question for question, entry in answered if entry is not None and not _fresh(entry, now)),
        refusals=tuple(question.text for question in noes if question.no == "stop"),
        pressurize_only=any(question.no == "pressurize" for question in noes),
        cap_pa=min(caps, default=None),
    )


def _fresh(entry: Entry, now: datetime) -> bool:
    return timedelta(0) <= now - entry.utc <= FRESH


def obeying(plan: TestPlan, gate: Gate) -> TestPlan:
    """Return the plan as the gate allows it.

    A gate that forbids raises `InvalidInput`. One that is not complete still limits the plan by what was answered and
    leaves the question of the test to be asked; a complete one takes its place.
    """
    if gate.forbids:
        raise InvalidInput("safety", None, gate.sentence, shown="not given")
    directions = (Direction.PRESSURIZE,) if gate.pressurize_only else plan.directions
    return replace(
        plan,
        directions=directions,
        cap_pa=gate.cap_pa,
        pressurize_only=gate.pressurize_only,
        safety=_record(gate) if gate.complete else "",
    )


def told_safety(record: str, language: Language) -> str:
    """Return in a language what a plan holds of the safety answers."""
    sentence, _, answers = record.removesuffix(".").partition(_ANSWERED)
    if not answers:
        return language.said(record)
    say = language.say
    said = (answer.split(": ") for answer in answers.split(", "))
    told = ", ".join(say("{what}: {words}", what=say(what), words=say(state)) for what, state in said)
    return f"{language.said(sentence)} {say('Answered: {answers}.', answers=told)}"


def _record(gate: Gate) -> str:
    said = [f"{question.id}: {entry.state}" for question, entry in gate.answers if entry is not None]
    return f"{gate.sentence}{_ANSWERED}{', '.join(said)}."
