"""The equipment register under edit: what is owned, how its calibrations stand, what is typed into the chosen item."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import date

from acquisition.register import DueState, DueStatus, Equipment, Register
from acquisition.register.due import all_due
from acquisition.register.fieldcheck import history, used_share, verdict
from acquisition.register.records import FieldCheck
from acquisition.told import Row, Table
from acquisition.told import Tone as Said
from analysis.errors import InvalidInput
from analysis.numbertext import format_number
from gui.theme import Tone
from gui.viewmodels.errors import error_words
from gui.viewmodels.history import History
from gui.viewmodels.item_draft import (
    RANGE_FIELDS,
    Texts,
    range_count,
    range_key,
    read_item,
    texts_of,
    with_range,
    without_range,
)
from gui.words import mark, say

Keep = Callable[[Register], None]
"""Writes the register; raises `InvalidInput` where it cannot."""
DUE_TONES = {
    DueState.GOOD: Tone.GOOD,
    DueState.SOON: Tone.ATTENTION,
    DueState.OVERDUE: Tone.BAD,
    DueState.UNKNOWN: Tone.ATTENTION,
}
EMPTY = mark("Nothing is registered yet. Add your gauges and fans with the dates on their calibration certificates.")
NEEDED = mark("still to be typed")


@dataclass(frozen=True, slots=True)
class ItemCard:
    """One thing that is owned, in the list."""

    id: str
    title: str
    state: str
    tone: Tone
    words: str
    chosen: bool


@dataclass(frozen=True, slots=True)
class RangePicture:
    """One flow range: its texts by field, its sentences by field, and a note."""

    texts: Texts
    errors: Texts
    note: str


@dataclass(frozen=True, slots=True)
class CheckMark:
    """A field check in the drawing over time: the largest share of the allowed difference that it found."""

    day: date
    share: float


@dataclass(frozen=True, slots=True)
class ItemPicture:
    """The chosen item. `unkept` says what keeps it from being kept, empty when it is."""

    id: str
    title: str
    fan: bool
    gauge: bool
    texts: Texts
    errors: Texts
    ranges: tuple[RangePicture, ...]
    due: str
    tone: Tone
    unkept: str
    checks: Table
    marks: tuple[CheckMark, ...] = ()
    """The field checks over time, oldest first."""


@dataclass(frozen=True, slots=True)
class RegisterPicture:
    """The page."""

    cards: tuple[ItemCard, ...]
    empty: str
    trouble: str
    item: ItemPicture | None


class RegisterModel:
    """A register and the item that is being edited. Every kept edit can be undone; field checks stay."""

    def __init__(self) -> None:
        """Begin with nothing; `load` brings the register of the user."""
        self.register = Register()
        self.chosen = ""
        self.trouble = ""
        self.unusable = False
        self._keep: Keep = lambda _: None
        self._history: History[Register] = History()
        self._texts: Texts = {}
        self._wrong: dict[str, str] = {}

    def load(self, read: Callable[[], Register], keep: Keep) -> None:
        """Take the register of the user; one that cannot be read is left alone, and nothing is written over it."""
        self._keep = keep
        try:
            self.register, self.trouble, self.unusable = read(), "", False
        except InvalidInput as error:
            self.unusable = True
            self.trouble = say("The register cannot be used, and is left as it is: {error}.", error=error_words(error))
        self.choose(self.register.equipment[0].id if self.register.equipment else "")

    @property
    def undo_label(self) -> str:
        """What would be undone."""
        return self._history.undo_label

    def undo(self) -> None:
        """Drop what is not kept yet, else go back one edit."""
        if self._wrong:
            self.choose(self.chosen)
            return
        self._restore(self._history.undo())

    def redo(self) -> None:
        """Do the edit again that was undone last."""
        self._restore(self._history.redo())

    def choose(self, id_: str) -> None:
        """Choose an item; what was typed into another and could not be kept is dropped."""
        known = {item.id: item for item in self.register.equipment}
        self.chosen = id_ if id_ in known else next(iter(known), "")
        self._wrong = {}
        self._texts = texts_of(known[self.chosen]) if self.chosen else {}

    def add(self, kind: str) -> None:
        """Add a thing with a name of its kind, and choose it."""
        ids = {item.id for item in self.register.equipment}
        id_ = next(name for at in range(1, 10_000) if (name := f"{kind}-{at}") not in ids)
        title = re.sub("-", " ", id_).capitalize()
        if self._set(say("{kind} added", kind=say(kind)), self.register.with_item(Equipment(id_, kind, title))):
            self.choose(id_)

    def remove(self) -> None:
        """Remove the chosen item; its field checks stay."""
        if self.chosen and self._set(say("equipment removed"), self.register.without(self.chosen)):
            self.choose("")

    def edit(self, key: str, text: str, mark: str) -> None:
        """Take what was typed into a field; the item is kept as soon as all its fields can be used."""
        if key in self._texts and self._texts[key] != text:
            self._take(
                {**self._texts, key: text},
                say("equipment changed"),
                mark,
            )

    def add_range(self) -> None:
        """Add a flow range; it is kept once its calibration is typed."""
        names = {text for key, text in self._texts.items() if key.endswith(".name")}
        name = next(name for at in range(1, 99) if (name := f"range {at}") not in names)
        self._take(with_range(self._texts, name), say("flow range added"), ".")

    def remove_range(self, at: int) -> None:
        """Take a flow range away."""
        self._take(without_range(self._texts, at), say("flow range removed"), ".")

    def add_check(self, check: FieldCheck) -> bool:
        """Keep a field check; return whether that went well."""
        return self._set(say("field check"), self.register.with_check(check))

    def item(self) -> Equipment | None:
        """Return the chosen item as it is kept."""
        return next((item for item in self.register.equipment if item.id == self.chosen), None)

    def picture(self, today: date, mark: str) -> RegisterPicture:
        """Return the page."""
        cards = tuple(self._card(item, today) for item in self.register.equipment)
        return RegisterPicture(cards, "" if cards else say(EMPTY), self.trouble, self._item(today, mark))

    def _card(self, item: Equipment, today: date) -> ItemCard:
        state = all_due(item, today)[0]
        parts = [say(item.kind.capitalize())]
        parts += [say("serial {serial}", serial=item.serial)] if item.serial else []
        if item.calibration is not None:
            calibration = item.calibration
            parts.append(
                say(
                    "calibrated {calibrated}, good until {due_date}",
                    calibrated=calibration.calibrated.isoformat(),
                    due_date=calibration.due_date,
                )
            )
        count = len(item.ranges)
        parts += [say("1 flow range") if count == 1 else say("{count} flow ranges", count=count)] if count else []
        parts += [say("certificate kept")] if item.calibration is not None and item.calibration.certificate else []
        chosen = item.id == self.chosen
        return ItemCard(item.id, item.title, due_words(state), DUE_TONES[state.state], " · ".join(parts), chosen)

    def _item(self, today: date, mark: str) -> ItemPicture | None:
        item = self.item()
        if item is None:
            return None
        state = all_due(item, today)[0]
        notes = {entry.name: _power_law_note(entry.flow_range()[1], mark) for entry in item.ranges}
        ranges = []
        for at in range(range_count(self._texts)):
            texts = {field: self._texts[range_key(at, field)] for field in RANGE_FIELDS}
            errors = {field: self._wrong.get(range_key(at, field), "") for field in RANGE_FIELDS}
            note = notes.get(texts["name"], "") if not any(errors.values()) else ""
            ranges.append(RangePicture(texts, errors, note))
        own = {key: text for key, text in self._texts.items() if not key.startswith("range.")}
        unkept = say("Not kept yet: some fields cannot be used as they stand.") if self._wrong else ""
        return ItemPicture(
            id=item.id,
            title=item.title,
            fan=item.kind == "fan",
            gauge=item.kind == "gauge",
            texts=own,
            errors={key: text for key, text in self._wrong.items() if not key.startswith("range.")},
            ranges=tuple(ranges),
            due=state.sentence,
            tone=DUE_TONES[state.state],
            unkept=unkept,
            checks=checks_table(self.register, item.id, mark),
            marks=tuple(
                CheckMark(check.day, max(map(used_share, check.points))) for check in self.register.checks_of(item.id)
            ),
        )

    def _take(self, texts: Texts, label: str, mark: str) -> None:
        self._texts = texts
        item, wrong = read_item(self.chosen, texts, mark)
        self._wrong = {
            key: NEEDED if not texts[key].strip() and key != "title" else sentence for key, sentence in wrong.items()
        }
        if item is not None and self._set(label, self.register.with_item(item)):
            # A day that was typed before the correction that it belongs to waits for it.
            waiting = {} if item.corrections else {"corrected_on": texts["corrected_on"]}
            self._texts = texts_of(item) | waiting

    def _set(self, label: str, register: Register) -> bool:
        if register == self.register:
            return True
        if self.unusable:
            return False
        if not self._write(register):
            return False
        self._history.note(label, self.register, register)
        self.register = register
        return True

    def _write(self, register: Register) -> bool:
        try:
            self._keep(register)
        except InvalidInput as error:
            self.trouble = say("Not kept: {error}.", error=error_words(error))
            return False
        self.trouble = ""
        self.unusable = False
        return True

    def _restore(self, register: Register | None) -> None:
        """Put equipment back; checks that were made meanwhile happened and stay."""
        if register is None:
            return
        restored = replace(register, checks=self.register.checks)
        if self._write(restored):
            self.register = restored
            self.choose(self.chosen)


def due_words(status: DueStatus) -> str:
    """Return how a calibration stands, in two or three words."""
    days = status.days_left
    if days is None:
        return say("no calibration") if "no calibration" in status.sentence else say("dated in the future")
    if days < 0:
        return say("ran out {time} ago", time=_days(-days))
    return say("due in {time}", time=_days(days)) if status.state is DueState.SOON else say("in date")


def checks_table(register: Register, id_: str, mark: str) -> Table:
    """Return the field checks of an item, newest first, with what they say together."""
    checks = register.checks_of(id_)
    titles = {item.id: item.title for item in register.equipment}
    rows = []
    for check in reversed(checks):
        worst = max(check.points, key=lambda point: abs(point.first_pa - point.second_pa) / max(point.allowed_pa, 1e-9))
        other = check.second if check.first == id_ else check.first
        apart = format_number(abs(worst.first_pa - worst.second_pa), 2, mark)
        allowed = format_number(worst.allowed_pa, 2, mark)
        cells = (check.day.isoformat(), titles.get(other, other), apart, allowed)
        rows.append(Row(cells, "", Said.GOOD if check.agree else Said.BAD))
    pairs = {frozenset((check.first, check.second)) for check in checks}
    together = [[check for check in checks if {check.first, check.second} == pair] for pair in pairs]
    notes = [words for found in together if (words := history(found))]
    notes += [verdict(named(checks[-1], titles))] if checks else []
    heads = (say("Day"), say("Against"), say("Apart, Pa"), say("Allowed, Pa"))
    return Table(say("Field checks"), heads, tuple(rows), tuple(notes), say("None yet."), text_columns=2)


def named(check: FieldCheck, titles: dict[str, str]) -> FieldCheck:
    """Return a check that names its gauges as people do."""
    first, second = (titles.get(item, item) for item in (check.first, check.second))
    return replace(check, first=first, second=second)


def _power_law_note(worst: float, mark: str) -> str:
    if worst < 5e-5:
        return ""
    return say(
        "A rig uses the power law nearest to it, at worst {share} % of the flow off.",
        share=format_number(100 * worst, 1, mark),
    )


def _days(count: int) -> str:
    return say("1 day") if count == 1 else say("{count} days", count=count)
