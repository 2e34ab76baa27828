"""The leak that is being described: its fields as texts, what sealing it brought, its pictures."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from acquisition.job import Photo
from acquisition.sealing.leaks import Drop, HowFound, Leak, LeakStatus, Pin
from acquisition.sealing.way import sizes_of_drop
from acquisition.told.texts import plus_minus
from analysis.errors import InvalidInput
from analysis.numbertext import parse_number
from analysis.sealing.change import Sureness
from analysis.sealing.parts import PARTS
from analysis.units import Display, Quantity, format_value, parse_value, unit_symbol
from gui.theme import Tone
from gui.viewmodels.errors import sentence
from gui.viewmodels.leak_words import place_words
from gui.viewmodels.retold import retold_part
from gui.viewmodels.sheet import Kind
from gui.words import mark, say

Choices = tuple[tuple[str, str], ...]
PLAN = "plan"
"""Subject of a photo of a plan: pins of every leak may stand on it."""
STATUSES = (LeakStatus.FOUND, LeakStatus.SEALED, LeakStatus.VERIFIED, LeakStatus.LEFT)
SIZE, MINUTES, COST = "size_guess_m3_h", "minutes", "cost"
NUMBERS = (SIZE, MINUTES, COST)
FIELDS: tuple[tuple[str, Kind, str, Choices], ...] = (
    ("part", Kind.CHOICE, mark("Part of the building"), tuple((part.id, part.title) for part in PARTS)),
    ("storey", Kind.TEXT, mark("Storey"), ()),
    ("room", Kind.TEXT, mark("Room"), ()),
    ("side", Kind.TEXT, mark("Side"), ()),
    ("status", Kind.CHOICE, mark("Status"), tuple((item.value, item.value) for item in STATUSES)),
    ("found_by", Kind.CHOICE, mark("Found by"), tuple((item.value, item.value) for item in HowFound)),
    ("trade", Kind.TEXT, mark("Trade"), ()),
    (SIZE, Kind.NUMBER, mark("Guess at 50 Pa"), ()),
    ("material", Kind.TEXT, mark("Material"), ()),
    (MINUTES, Kind.NUMBER, mark("Work"), ()),
    (COST, Kind.NUMBER, mark("Cost"), ()),
    ("note", Kind.TEXT, mark("Note"), ()),
)


@dataclass(frozen=True, slots=True)
class LeakField:
    """A field as shown; `error` is what is wrong with what was typed last."""

    text: str
    unit: str
    error: str


@dataclass(frozen=True, slots=True)
class LeakRow:
    """A leak in the list."""

    number: int
    text: str
    tone: Tone


@dataclass(frozen=True, slots=True)
class PhotoPicture:
    """The picture on show: its number, how many there are, and the pins on it as (number of the leak, across, down)."""

    id: int
    at: int
    count: int
    name: str
    pins: tuple[tuple[int, float, float], ...]


@dataclass(frozen=True, slots=True)
class LeakPicture:
    """The whole page. `fields` is empty where no leak is chosen."""

    rows: tuple[LeakRow, ...]
    chosen: int | None
    fields: Mapping[str, LeakField]
    brought: str
    photo: PhotoPicture | None


@dataclass(slots=True)
class LeakSheet:
    """Remembers what was typed and could not be used, and which picture is on show."""

    wrong: dict[tuple[int, str], tuple[str, str]] = field(default_factory=dict)
    photo_at: int = 0

    def typed(self, number: int, leak: Leak, name: str, text: str, display: Display) -> Leak:
        """Return the leak with what was typed into a field, unchanged where that cannot be used."""
        try:
            changed = with_field(leak, name, text, display)
        except InvalidInput as error:
            self.wrong[number, name] = (text, sentence(error))
            return leak
        self.wrong.pop((number, name), None)
        return changed

    def picture(
        self,
        leaks: Mapping[int, Leak],
        drops: Mapping[int, Drop],
        photos: Sequence[Photo],
        chosen: int | None,
        display: Display,
        conversion: tuple[float, float | None],
    ) -> LeakPicture:
        """Return the page; `conversion` is the flow exponent and the volume (m3) of the house."""
        leak = leaks.get(chosen) if chosen is not None else None
        rows = tuple(_row(number, item, drops.get(number), display) for number, item in leaks.items())
        if leak is None or chosen is None:
            return LeakPicture(rows, None, {}, "", self._photo(None, leaks, photos))
        fields = {name: self._field(chosen, leak, name, display) for name, *_ in FIELDS}
        drop = drops.get(chosen)
        brought = "" if drop is None else drop_words(drop, display, *conversion)
        return LeakPicture(rows, chosen, fields, brought, self._photo(leak, leaks, photos))

    def _field(self, number: int, leak: Leak, name: str, display: Display) -> LeakField:
        unit = {SIZE: unit_symbol(Quantity.FLOW, display), MINUTES: "min"}.get(name, "")
        if (number, name) in self.wrong:
            text, error = self.wrong[number, name]
            return LeakField(text, unit, error)
        value = getattr(leak, name)
        if value is None:
            return LeakField("", unit, "")
        if name == SIZE:
            return LeakField(format_value(value, Quantity.FLOW, display), unit, "")
        text = f"{value:g}".replace(".", display.decimal_mark) if name in NUMBERS else str(value)
        return LeakField(text, unit, "")

    def _photo(self, leak: Leak | None, leaks: Mapping[int, Leak], photos: Sequence[Photo]) -> PhotoPicture | None:
        own = set(leak.photos) if leak is not None else set()
        shown = [photo for photo in photos if photo.id in own]
        shown += [photo for photo in photos if photo.subject == PLAN and photo.id not in own]
        if not shown:
            return None
        at = min(max(self.photo_at, 0), len(shown) - 1)
        photo = shown[at]
        pins = tuple(
            (number, pin.across, pin.down)
            for number, item in leaks.items()
            for pin in item.pins
            if pin.photo == photo.id
        )
        return PhotoPicture(photo.id, at, len(shown), photo.name, pins)


def with_field(leak: Leak, name: str, text: str, display: Display) -> Leak:
    """Return a leak with a field as typed; raises `InvalidInput`."""
    words = " ".join(text.split())
    value: object = words
    if name == "status":
        value = LeakStatus(words)
    elif name == "found_by":
        value = HowFound(words)
    elif name in NUMBERS:
        value = _number(name, words, display) if words else None
    changes: dict[str, Any] = {name: value}
    return replace(leak, **changes)


def _number(name: str, words: str, display: Display) -> float:
    if name == SIZE:
        return parse_value(words, Quantity.FLOW, display, "guess")
    return parse_number(words, {MINUTES: "work", COST: "cost"}[name], display.decimal_mark)


def with_pin(leak: Leak, photo: int, across: float, down: float) -> Leak:
    """Return a leak with its pin on a picture put there."""
    others = tuple(pin for pin in leak.pins if pin.photo != photo)
    return replace(leak, pins=(*others, Pin(photo, round(across, 4), round(down, 4))))


def drop_words(drop: Drop, display: Display, exponent: float, volume_m3: float | None) -> str:
    """Return what sealing brought: flow, areas, air changes, how sure."""
    sizes = sizes_of_drop(drop, exponent, volume_m3)
    area = unit_symbol(Quantity.LEAKAGE_AREA, display)
    flow = f"{plus_minus(drop.difference_m3_h, Quantity.FLOW, display)} {unit_symbol(Quantity.FLOW, display)}"
    parts = [
        say(
            "Sealing brought {flow} at {reference_pa} Pa, {said}",
            flow=flow,
            reference_pa=f"{drop.reference_pa:g}",
            said=said(drop.sureness),
        ),
        say(
            "ELA4 {plus_minus} {area} (4 Pa, Cd 1, extrapolated)",
            plus_minus=plus_minus(sizes.ela4_cm2, Quantity.LEAKAGE_AREA, display),
            area=area,
        ),
        say(
            "EqLA10 {plus_minus} {area} (10 Pa, Cd 0.611, extrapolated)",
            plus_minus=plus_minus(sizes.eqla10_cm2, Quantity.LEAKAGE_AREA, display),
            area=area,
        ),
    ]
    if sizes.n50_per_h is not None:
        parts.append(f"n50 {plus_minus(sizes.n50_per_h, Quantity.AIR_CHANGE, display)} 1/h")
    return " · ".join(parts)


def said(sureness: Sureness) -> str:
    """Return how sure a drop is, as people say it."""
    return say("not told from none") if sureness is Sureness.NOT_SURE else sureness.value


def _row(number: int, leak: Leak, drop: Drop | None, display: Display) -> LeakRow:
    tone = {LeakStatus.FOUND: Tone.ATTENTION, LeakStatus.LEFT: Tone.QUIET}.get(leak.status, Tone.GOOD)
    brought = ""
    if drop is not None and drop.sureness is Sureness.SURE:
        brought = f", {plus_minus(drop.difference_m3_h, Quantity.FLOW, display)}"
    elif drop is not None:
        brought = f", {said(drop.sureness)}"
    return LeakRow(number, f"{number}  {place_words(leak)}  ·  {retold_part(leak.status)}{brought}", tone)
