"""What a report says of the set-up: only what was noted before the test began."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from acquisition.job import Entry
from acquisition.languages import ENGLISH, Language
from acquisition.plan import TestPlan
from acquisition.setup.board import board_of
from acquisition.setup.safety import told_safety


def said_of_setup(
    plan: TestPlan, entries: Iterable[Entry], started: datetime, language: Language = ENGLISH
) -> tuple[str, ...]:
    """Return sentences, none where nothing was noted before the test and nothing was left out."""
    say = language.say
    before = [entry for entry in entries if entry.utc <= started]
    said = []
    if not plan.hose_check:
        why = plan.hose_check_reason or say("no reason was given")
        said.append(say("The hoses were not checked before the points: {reason}.", reason=why))
    if not before:
        return tuple(said)
    board = board_of(plan, before)
    if plan.safety:
        said.append(say("Safety: {sentence}", sentence=told_safety(plan.safety, language)))
    if plan.cap_pa is not None:
        said.append(
            say("By the safety answers the pressure was kept at or below {pressure} Pa.", pressure=f"{plan.cap_pa:g}")
        )
    if plan.pressurize_only:
        said.append(say("By the safety answers the building was not depressurized."))
    odd = [f"{say(line.name)} ({say(line.found)})" for line in board.unsettled if line.found is not None]
    if odd:
        said.append(say("Set up otherwise than the method wants: {openings}.", openings=", ".join(odd)))
    unseen = sum(line.found is None for line in board.lines)
    if unseen:
        said.append(say("Set-up: {unseen} of {count} openings were not noted.", unseen=unseen, count=len(board.lines)))
    sealed = [say(name) for name, on in board.seals if on]
    if sealed:
        said.append(say("Sealed for the test: {openings}.", openings=", ".join(sealed)))
    if board.checked is not None:
        said.append(say("The set-up was looked over by a second person: {name}.", name=board.checked.who))
        if board.changed:
            said.append(say("Something was set up otherwise after that."))
    return tuple(said)
