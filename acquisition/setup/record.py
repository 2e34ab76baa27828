"""What a report says of the set-up: only what was noted before the test began."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from acquisition.job import Entry
from acquisition.plan import TestPlan
from acquisition.setup.board import board_of


def said_of_setup(plan: TestPlan, entries: Iterable[Entry], started: datetime) -> tuple[str, ...]:
    """Return sentences, none where nothing was noted before the test and nothing was left out."""
    before = [entry for entry in entries if entry.utc <= started]
    said = [] if plan.hose_check else [f"The hoses were not checked before the points: {_why(plan)}."]
    if not before:
        return tuple(said)
    board = board_of(plan, before)
    said += [f"Safety: {plan.safety}"] if plan.safety else []
    if plan.cap_pa is not None:
        said.append(f"By the safety answers the pressure was kept at or below {plan.cap_pa:g} Pa.")
    if plan.pressurize_only:
        said.append("By the safety answers the building was not depressurized.")
    odd = [f"{line.name} ({line.found})" for line in board.unsettled if line.found is not None]
    if odd:
        said.append(f"Set up otherwise than the method wants: {', '.join(odd)}.")
    unseen = sum(line.found is None for line in board.lines)
    if unseen:
        said.append(f"Set-up: {unseen} of {len(board.lines)} openings were not noted.")
    sealed = [name for name, on in board.seals if on]
    if sealed:
        said.append(f"Sealed for the test: {', '.join(sealed)}.")
    if board.checked is not None:
        said.append(f"The set-up was looked over by a second person: {board.checked.who}.")
    return tuple(said)


def _why(plan: TestPlan) -> str:
    return plan.hose_check_reason or "no reason was given"
