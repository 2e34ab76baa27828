"""Readings that a person takes from a gauge and types: a field for each, what was typed last, and how long ago."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from acquisition.rig import RigSpec, Role
from acquisition.snapshot import Snapshot
from analysis.errors import InvalidInput
from analysis.units import Display, format_value, parse_value, unit_symbol
from gui.theme import Tone
from gui.viewmodels.errors import sentence
from gui.viewmodels.retold import retold
from gui.viewmodels.rig_place import QUANTITIES, Newest
from gui.viewmodels.rig_sheet import ROLE_WORDS
from gui.words import mark, say

ANY_TIME = mark("Type what the gauge shows at any time. A test says when a reading is needed.")
OLD_S = 120.0
"""A reading of this age is shown as an old one."""


@dataclass(frozen=True, slots=True)
class TypedField:
    """One channel. `wanted` when a test waits for it; `said` is what was typed last, or what is wrong."""

    role: Role
    name: str
    unit: str
    wanted: bool
    said: str
    tone: Tone


@dataclass(frozen=True, slots=True)
class ByHandPicture:
    """The panel; `task` says what is to be done."""

    task: str
    fields: tuple[TypedField, ...]


class ByHandModel:
    """What is wrong with what was typed, by role."""

    def __init__(self) -> None:
        """Nothing has been typed."""
        self._wrong: dict[Role, str] = {}

    def enter(self, role: Role, text: str, display: Display, take: Callable[[Role, float], None]) -> bool:
        """Hand what was typed to `take` as a stored value (SI); return whether it could be used."""
        self._wrong.pop(role, None)
        try:
            take(role, parse_value(text, QUANTITIES[role][0], display, ROLE_WORDS[role].lower()))
        except InvalidInput as error:
            self._wrong[role] = sentence(error)
        return role not in self._wrong

    def picture(
        self, spec: RigSpec | None, snapshot: Snapshot | None, newest: Newest, display: Display
    ) -> ByHandPicture | None:
        """Return the panel, None where nothing is typed."""
        if spec is None or snapshot is None or not spec.by_hand:
            return None
        task = retold(snapshot.sentence) if snapshot.typing else say(ANY_TIME)
        roles = [role for role in spec.role_channels() if role in spec.by_hand]
        return ByHandPicture(task, tuple(self._field(role, snapshot, newest, display) for role in roles))

    def _field(self, role: Role, snapshot: Snapshot, newest: Newest, display: Display) -> TypedField:
        quantity, decimals = QUANTITIES[role]
        unit = unit_symbol(quantity, display)
        said, tone = say("nothing typed yet"), Tone.QUIET
        found = newest(role)
        if role in self._wrong:
            said, tone = self._wrong[role], Tone.BAD
        elif found is not None:
            value, age_s = found
            said = f"{format_value(value, quantity, display, decimals)} {unit}, {age_words(age_s)}"
            tone = Tone.ATTENTION if age_s > OLD_S and role in snapshot.typing else Tone.QUIET
        return TypedField(role, say(ROLE_WORDS[role]), unit, role in snapshot.typing, said, tone)


def age_words(age_s: float) -> str:
    """Return how long ago something was typed."""
    if age_s < 2.0:
        return say("typed just now")
    return (
        say("typed {seconds} s ago", seconds=f"{age_s:.0f}")
        if age_s < 100.0
        else say("typed {minutes} min ago", minutes=f"{age_s / 60:.0f}")
    )
