"""A field check under way: two gauges on one hose, one pressure after the other, read through the engine."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from functools import cache

from acquisition.register import Equipment, FieldCheck, Register
from acquisition.register.fieldcheck import LEAST_POINTS, Accuracy, check_point, field_check, verdict
from acquisition.register.records import CheckPoint
from acquisition.rig import TAPS, RigSpec, Role
from acquisition.told import Row, Table
from acquisition.told import Tone as Said
from analysis.errors import InvalidInput
from analysis.units import Display, Quantity, format_value, unit_symbol
from drivers.errors import ProfileError
from drivers.profile import ChannelSpec, load_profile
from gui.theme import Tone
from gui.viewmodels.errors import error_words, sentence
from gui.viewmodels.register import named
from gui.viewmodels.retold import retold
from gui.viewmodels.rig_place import Newest
from gui.words import mark, say

SAMPLE_S = 5.0
PRESSURES = (*TAPS, Role.FLOW_ELEMENT)
USUAL_ACCURACY_PA = 0.5
"""Where a profile states none (common practice, no source)."""
FIRST, SECOND = 0, 1
HOW = mark(
    "Join both gauges to one hose. Take a point with the hose open, then raise the pressure, by the fan or by a "
    "syringe, hold it, and take the next."
)
Samples = Callable[[Role, int], Sequence[float]]
"""Returns the readings (Pa) of a role since a stamp (ns)."""


@dataclass(frozen=True, slots=True)
class SidePicture:
    """One of the two gauges: the channel that is read, whose it is, and what it reads now."""

    channels: tuple[tuple[str, str], ...]
    channel: str
    items: tuple[tuple[str, str], ...]
    item: str
    value: str


@dataclass(frozen=True, slots=True)
class CheckPicture:
    """The panel."""

    how: str
    sides: tuple[SidePicture, SidePicture]
    button: str
    ready: bool
    points: Table
    verdict: str
    tone: Tone
    keepable: bool


class FieldCheckModel:
    """Belongs to the thread of the window; readings come from the live buffer of the engine."""

    def __init__(self) -> None:
        """Begin with no point."""
        self.roles: list[Role | None] = [None, None]
        self.ids = ["", ""]
        self.points: list[CheckPoint] = []
        self._began_ns: int | None = None
        self._trouble = ""

    @property
    def taking(self) -> bool:
        """Whether a point is being taken."""
        return self._began_ns is not None

    def clear(self) -> None:
        """Begin anew with the same gauges."""
        self.points, self._began_ns, self._trouble = [], None, ""

    def choose_channel(self, side: int, role: str, spec: RigSpec | None, register: Register) -> None:
        """Choose the channel of a side; the register's gauge of the same serial number goes with it."""
        self.roles[side] = Role(role) if role else None
        owner = _owner(spec, self.roles[side], register)
        if owner is not None:
            self.ids[side] = owner.id
        self.clear()

    def choose_item(self, side: int, id_: str) -> None:
        """Say which registered gauge a side is."""
        self.ids[side] = id_
        self.clear()

    def settle(self, spec: RigSpec | None, register: Register) -> None:
        """Fill in what can be guessed: the first two pressure channels, and whose they are."""
        there = [role for role in PRESSURES if spec is not None and role in spec.role_channels()]
        gauges = [item.id for item in register.equipment if item.kind == "gauge"]
        for side in (FIRST, SECOND):
            if self.roles[side] not in there:
                other = self.roles[1 - side]
                self.roles[side] = next((role for role in there if role is not other), None)
                owner = _owner(spec, self.roles[side], register)
                self.ids[side] = owner.id if owner is not None else self.ids[side]
            if self.ids[side] not in gauges:
                other_id = self.ids[1 - side]
                self.ids[side] = next((id_ for id_ in gauges if id_ != other_id), "")

    def take(self, now_ns: int) -> None:
        """Begin to read a point."""
        self._began_ns, self._trouble = now_ns, ""

    def refresh(self, now_ns: int, spec: RigSpec | None, samples: Samples) -> bool:
        """End the point when its time is over; return whether anything is new."""
        began, (first, second) = self._began_ns, self.roles
        if began is None or now_ns - began < SAMPLE_S * 1e9:
            return False
        self._began_ns = None
        if spec is None or first is None or second is None:
            self._trouble = say("The rig is no longer connected.")
            return True
        try:
            point = check_point(
                samples(first, began), samples(second, began), accuracy_of(spec, first), accuracy_of(spec, second)
            )
        except InvalidInput as error:
            self._trouble = say("No point: {words}.", words=error_words(error))
            return True
        self.points.append(point)
        return True

    def check(self, day: date) -> FieldCheck:
        """Return the check; raises `InvalidInput` with what is missing."""
        return field_check(day, self.ids[FIRST], self.ids[SECOND], self.points)

    def picture(
        self, spec: RigSpec | None, register: Register, newest: Newest, display: Display, day: date
    ) -> CheckPicture:
        """Return the panel."""
        self.settle(spec, register)
        sides = tuple(self._side(at, spec, register, newest, display) for at in (FIRST, SECOND))
        missing = self._missing(spec)
        words, tone, keepable = self._verdict(register, day)
        return CheckPicture(
            how=say(HOW),
            sides=(sides[0], sides[1]),
            button=say("Reading for {seconds} s…", seconds=f"{SAMPLE_S:.0f}") if self.taking else say("Take a point"),
            ready=not missing and not self.taking,
            points=self._table(display),
            verdict=missing or self._trouble or words,
            tone=Tone.ATTENTION if missing or self._trouble else tone,
            keepable=keepable and not missing,
        )

    def _missing(self, spec: RigSpec | None) -> str:
        if spec is None:
            return say("Connect the rig with both gauges first.")
        if None in self.roles:
            return say("The rig needs two pressure channels: give the second gauge a role, such as tap 2.")
        if self.roles[FIRST] is self.roles[SECOND]:
            return say("Choose another channel for the second gauge.")
        if not all(self.ids) or self.ids[FIRST] == self.ids[SECOND]:
            return say("Register both gauges, and say which is which.")
        return ""

    def _verdict(self, register: Register, day: date) -> tuple[str, Tone, bool]:
        if len(self.points) < LEAST_POINTS:
            left = LEAST_POINTS - len(self.points)
            return (
                (
                    say("{count} more points, one of them near zero.", count=left)
                    if left > 1
                    else say("1 more point, one of them near zero.")
                ),
                Tone.QUIET,
                False,
            )
        try:
            check = self.check(day)
        except InvalidInput as error:
            return sentence(error), Tone.ATTENTION, False
        titles = {item.id: item.title for item in register.equipment}
        return retold(verdict(named(check, titles))), Tone.GOOD if check.agree else Tone.BAD, True

    def _side(self, at: int, spec: RigSpec | None, register: Register, newest: Newest, display: Display) -> SidePicture:
        role = self.roles[at]
        channels = spec.role_channels() if spec is not None else {}
        reading = newest(role) if role is not None and role in channels else None
        unit = unit_symbol(Quantity.PRESSURE, display)
        value = "–" if reading is None else f"{format_value(reading[0], Quantity.PRESSURE, display, 2)} {unit}"
        return SidePicture(
            channels=tuple((item.value, channels[item]) for item in PRESSURES if item in channels),
            channel=role.value if role is not None else "",
            items=tuple((item.id, item.title) for item in register.equipment if item.kind == "gauge"),
            item=self.ids[at],
            value=value,
        )

    def _table(self, display: Display) -> Table:
        unit = unit_symbol(Quantity.PRESSURE, display)
        rows = []
        for point in self.points:
            apart = abs(point.first_pa - point.second_pa)
            numbers = (point.first_pa, point.second_pa, apart, point.allowed_pa)
            cells = tuple(format_value(number, Quantity.PRESSURE, display, 2) for number in numbers)
            rows.append(Row(cells, "", Said.GOOD if apart <= point.allowed_pa else Said.BAD))
        heads = tuple(f"{words}, {unit}" for words in (say("First"), say("Second"), say("Apart"), say("Allowed")))
        return Table(say("Points"), heads, tuple(rows), (), say("No point is taken yet."), text_columns=0)


def accuracy_of(spec: RigSpec, role: Role) -> Accuracy:
    """Return what the maker states of the channel in a role."""
    for instrument in spec.instruments:
        for channel, its_role in instrument.channels:
            if its_role is role:
                found = next((item for item in _channels(instrument.profile) if item.name == channel), None)
                if found is not None and (found.accuracy > 0 or found.accuracy_percent > 0):
                    return Accuracy(found.accuracy, found.accuracy_percent)
    return Accuracy(USUAL_ACCURACY_PA)


def _owner(spec: RigSpec | None, role: Role | None, register: Register) -> Equipment | None:
    if spec is None or role is None:
        return None
    for instrument in spec.instruments:
        if role in (item for _, item in instrument.channels):
            return register.by_serial(instrument.serial)
    return None


@cache
def _channels(profile: str) -> tuple[ChannelSpec, ...]:
    try:
        return load_profile(profile).channels
    except ProfileError:
        return ()
