"""How far a building is got ready and put back: made from the plan and from what was noted in the job."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from acquisition.job import Entry, Photo, PreparationKind
from acquisition.plan import TestPlan
from acquisition.setup.openings import OpeningState, openings_for, shipped_openings

ON, OFF = "on", "off"
DONE, LEFT = "done", "left"
SET_UP = "set-up"
"""Subject of the second person's check."""
WHOLE_JOB = "job"
"""Subject of the reason why a job was closed before everything was put back."""


@dataclass(frozen=True, slots=True)
class Line:
    """An opening: the state that is wanted, and the one that was noted (None: not looked at yet)."""

    id: str
    name: str
    wanted: OpeningState
    found: OpeningState | None
    photos: int

    @property
    def settled(self) -> bool:
        """Whether it is as wanted, or not there at all."""
        return self.found in (self.wanted, OpeningState.ABSENT)


@dataclass(frozen=True, slots=True)
class RestoreLine:
    """Something to put back: `state` is empty while it is open, `done`, or `left` with the reason in `note`."""

    id: str
    name: str
    state: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Board:
    """Everything. `seals` are pairs of a temporary seal and whether it is still on."""

    lines: tuple[Line, ...]
    seals: tuple[tuple[str, bool], ...]
    restore: tuple[RestoreLine, ...]
    checked: Entry | None
    begun: bool
    changed: bool = False
    """Whether something was set up otherwise after the second person had looked."""

    @property
    def unsettled(self) -> tuple[Line, ...]:
        """Openings that are not as the method wants them, or that nobody looked at."""
        return tuple(line for line in self.lines if not line.settled)

    @property
    def owed(self) -> tuple[str, ...]:
        """What keeps the job open: seals that are on and what is not put back, once something was begun."""
        if not self.begun:
            return ()
        seals = [f"Seal: {name}" for name, on in self.seals if on]
        return (*seals, *(line.name for line in self.restore if not line.state))


def board_of(plan: TestPlan, entries: Iterable[Entry], photos: Iterable[Photo] = ()) -> Board:
    """Return the board. What was put back counts until something is sealed, switched off or asked about again."""
    newest: dict[tuple[PreparationKind, str], Entry] = {}
    names = {opening.id: opening.name for opening in shipped_openings()[0]}
    seals: dict[str, bool] = {}
    begun = changed = False
    for entry in entries:
        if entry.kind is PreparationKind.SAFETY or _seals(entry):
            newest = {key: item for key, item in newest.items() if key[0] is not PreparationKind.RESTORE}
            begun = True
        if entry.kind is PreparationKind.OPENING and entry.state == OpeningState.OFF:
            begun = True
        if entry.kind is PreparationKind.SEAL:
            seals[entry.subject] = entry.state == ON
        elif entry.kind is PreparationKind.OPENING and entry.subject in names:
            _seal_opening(seals, names[entry.subject], OpeningState(entry.state))
        if entry.kind is PreparationKind.OPENING or _seals(entry):
            changed = True
        elif entry.kind is PreparationKind.CHECK:
            changed = False
        newest[entry.kind, entry.subject] = entry
    pictures = [photo.subject for photo in photos]
    return Board(
        lines=tuple(
            Line(opening.id, opening.name, wanted, _found(newest, opening.id), pictures.count(opening.id))
            for opening, wanted in openings_for(plan)
        ),
        seals=tuple(seals.items()),
        restore=tuple(_restore(newest)),
        checked=newest.get((PreparationKind.CHECK, SET_UP)),
        begun=begun,
        changed=changed,
    )


def _seals(entry: Entry) -> bool:
    """Tell whether something was sealed: an opening of the list, or a seal that was entered by hand."""
    sealed = {PreparationKind.SEAL: ON, PreparationKind.OPENING: OpeningState.SEALED}
    return sealed.get(entry.kind) == entry.state


def _seal_opening(seals: dict[str, bool], name: str, state: OpeningState) -> None:
    """Have an opening on the seal board from when it is sealed on; one that is noted otherwise was never sealed."""
    if state is OpeningState.SEALED:
        seals[name] = True
    else:
        seals.pop(name, None)


def _found(newest: dict[tuple[PreparationKind, str], Entry], opening: str) -> OpeningState | None:
    entry = newest.get((PreparationKind.OPENING, opening))
    return None if entry is None else OpeningState(entry.state)


def _restore(newest: dict[tuple[PreparationKind, str], Entry]) -> Iterable[RestoreLine]:
    openings, always = shipped_openings()
    touched = (OpeningState.SEALED, OpeningState.OFF, OpeningState.CLOSED)
    wanted = [*always]
    wanted += [(item.id, item.restore) for item in openings if item.restore and _found(newest, item.id) in touched]
    for key, name in wanted:
        entry = newest.get((PreparationKind.RESTORE, key))
        yield RestoreLine(key, name, "" if entry is None else entry.state, "" if entry is None else entry.note)
