"""Rooms and surfaces under edit: the cells of both tables, what they add up to, what looks odd."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from acquisition.geometry import HOW, Adjoins, Geometry, Room, Surface, oddities, rooms_from, surfaces_from, totals
from acquisition.geometry.pasting import size
from acquisition.job import GeometryVersion
from analysis.errors import InvalidInput
from analysis.records import Building
from analysis.units import Display, Quantity, format_with_unit, unit_symbol
from gui.viewmodels.errors import error_words, sentence
from gui.viewmodels.history import History
from gui.viewmodels.sheet import plain_number
from gui.words import mark, say, within

MOST_ODDITIES = 6


class Part(StrEnum):
    """Which of the two tables."""

    ROOM = "room"
    SURFACE = "surface"


ROOM_COLUMNS = ("included", "name", "floor_area_m2", "height_m", "volume_m3", "reason")
SURFACE_COLUMNS = ("included", "name", "area_m2", "adjoins", "reason")
COLUMNS = {Part.ROOM: ROOM_COLUMNS, Part.SURFACE: SURFACE_COLUMNS}
WORDS = {
    "included": mark("In"),
    "name": mark("Name"),
    "floor_area_m2": mark("Floor area"),
    "height_m": mark("Mean height"),
    "volume_m3": mark("Volume"),
    "area_m2": mark("Area"),
    "adjoins": mark("Adjoins"),
    "reason": mark("Why it is out"),
}
SIZES = {
    "floor_area_m2": Quantity.AREA,
    "height_m": Quantity.LENGTH,
    "volume_m3": Quantity.VOLUME,
    "area_m2": Quantity.AREA,
}


@dataclass(frozen=True, slots=True)
class RowPicture:
    """A row: whether it counts, and its other cells in the order of the columns. `derived` cells are not typed."""

    included: bool
    cells: tuple[str, ...]
    derived: tuple[bool, ...]


@dataclass(frozen=True, slots=True)
class TablePicture:
    """A table with the names of its columns."""

    head: tuple[str, ...]
    rows: tuple[RowPicture, ...]


@dataclass(frozen=True, slots=True)
class RoomsPicture:
    """The whole page. `sums` are pairs of a name and a value; `odd` what to look at again; `error` what was refused."""

    rooms: TablePicture
    surfaces: TablePicture
    how: str
    sums: tuple[tuple[str, str], ...]
    worth: str
    odd: tuple[str, ...]
    error: str
    versions: tuple[str, ...]
    undo: str
    redo: str


class RoomsModel:
    """The geometry under edit, with its history. Every accepted edit is kept at once by whoever `geometry` goes to."""

    def __init__(self, geometry: Geometry) -> None:
        """Begin with the geometry of a job."""
        self.geometry = geometry
        self.error = ""
        self._history: History[Geometry] = History()

    @property
    def undo_label(self) -> str:
        """What would be undone."""
        return self._history.undo_label

    @property
    def redo_label(self) -> str:
        """What would be done again."""
        return self._history.redo_label

    def type_cell(self, part: Part, at: int, column: int, text: str, display: Display) -> bool:
        """Take what was typed into a cell; return whether the geometry changed, else `error` may say why."""
        name = COLUMNS[part][column]
        items = self._items(part)
        if not 0 <= at < len(items):
            return False
        try:
            value: object = " ".join(text.split())
            if name in SIZES:
                value = size(text, SIZES[name], display, f"{items[at].name}, {within(say(WORDS[name]))}")
            elif name == "adjoins":
                value = _adjoins(text)
            elif name == "name" and not value:
                raise InvalidInput("name", text, "a text is needed", shown="empty")
        except InvalidInput as error:
            self.error = sentence(error)
            return False
        return self._put(part, at, name, value)

    def include(self, part: Part, at: int, *, included: bool) -> bool:
        """Have a room or surface count, or leave it out."""
        return self._put(part, at, "included", included)

    def add(self, part: Part) -> bool:
        """Add an empty room or surface."""
        names = {item.name for item in self._items(part)}
        number = next(at for at in range(len(names) + 1, 10_000) if f"{part.capitalize()} {at}" not in names)
        made = (
            Room(say("Room {number}", number=number))
            if part is Part.ROOM
            else Surface(say("Surface {number}", number=number))
        )
        return self._replace(
            say("a new room") if part is Part.ROOM else say("a new surface"), part, (*self._items(part), made)
        )

    def remove(self, part: Part, at: int) -> bool:
        """Take a room or surface away."""
        items = self._items(part)
        if not 0 <= at < len(items):
            return False
        return self._replace(say("{name} taken away", name=items[at].name), part, (*items[:at], *items[at + 1 :]))

    def paste(self, part: Part, text: str, display: Display) -> bool:
        """Add what was copied out of a spreadsheet; all of it or, with an `error`, nothing."""
        try:
            made: Sequence[Room | Surface] = (
                rooms_from(text, display) if part is Part.ROOM else surfaces_from(text, display)
            )
        except InvalidInput as error:
            self.error = say("Nothing was pasted: {error}.", error=error_words(error))
            return False
        return self._replace(say("{count} pasted rows", count=len(made)), part, (*self._items(part), *made))

    def say_how(self, how: str) -> bool:
        """Say how it was measured."""
        return self._change(say("how it was measured"), replace(self.geometry, how=how if how in HOW else ""))

    def undo(self) -> bool:
        """Go back one edit; return whether the geometry changed."""
        return self._take(self._history.undo())

    def redo(self) -> bool:
        """Do the edit again that was undone last; return whether the geometry changed."""
        return self._take(self._history.redo())

    def picture(
        self, display: Display, building: Building, worth: str, versions: Sequence[GeometryVersion]
    ) -> RoomsPicture:
        """Return the page; `building` has the sizes on the job sheet, `worth` says what a part of the volume does."""
        odd = [item.sentence for item in oddities(self.geometry, display)]
        odd += _beside(self.geometry, building, display)
        more = len(odd) - MOST_ODDITIES
        return RoomsPicture(
            rooms=self._table(Part.ROOM, display),
            surfaces=self._table(Part.SURFACE, display),
            how=self.geometry.how,
            sums=_sums(self.geometry, display),
            worth=worth,
            odd=(*odd[:MOST_ODDITIES], *([say("And {more} more.", more=more)] if more > 0 else [])),
            error=self.error,
            versions=tuple(f"{item.utc.astimezone():%d.%m.%Y %H:%M}  {item.name}: {item.reason}" for item in versions),
            undo=self.undo_label,
            redo=self.redo_label,
        )

    def _items(self, part: Part) -> tuple[Room | Surface, ...]:
        return self.geometry.rooms if part is Part.ROOM else self.geometry.surfaces

    def _put(self, part: Part, at: int, name: str, value: object) -> bool:
        items = self._items(part)
        if not 0 <= at < len(items):
            return False
        changed = replace(items[at], **{name: value})  # type: ignore[arg-type]  # the name is one of COLUMNS
        return self._replace(
            say("{field} of {name}", field=within(say(WORDS[name])), name=items[at].name),
            part,
            (*items[:at], changed, *items[at + 1 :]),
        )

    def _replace(self, label: str, part: Part, items: Sequence[Room | Surface]) -> bool:
        if part is Part.ROOM:
            rooms = tuple(item for item in items if isinstance(item, Room))
            return self._change(label, replace(self.geometry, rooms=rooms))
        surfaces = tuple(item for item in items if isinstance(item, Surface))
        return self._change(label, replace(self.geometry, surfaces=surfaces))

    def _change(self, label: str, geometry: Geometry) -> bool:
        self.error = ""
        if geometry == self.geometry:
            return False
        self._history.note(label, self.geometry, geometry)
        self.geometry = geometry
        return True

    def _take(self, geometry: Geometry | None) -> bool:
        self.error = ""
        if geometry is None:
            return False
        self.geometry = geometry
        return True

    def _table(self, part: Part, display: Display) -> TablePicture:
        columns = COLUMNS[part]
        head = [
            f"{say(WORDS[name])}, {unit_symbol(SIZES[name], display)}" if name in SIZES else say(WORDS[name])
            for name in columns
        ]
        return TablePicture(tuple(head), tuple(_row(item, columns[1:], display) for item in self._items(part)))


def _row(item: Room | Surface, names: Sequence[str], display: Display) -> RowPicture:
    cells, derived = [], []
    for name in names:
        value = getattr(item, name)
        if isinstance(value, Adjoins):
            value = say(value.value)
        by_sizes = name == "volume_m3" and value is None and isinstance(item, Room) and item.volume is not None
        if by_sizes:
            value = item.volume  # type: ignore[union-attr]  # a surface has no volume to derive
        cells.append(
            plain_number(value, SIZES[name], display) if name in SIZES and value is not None else str(value or "")
        )
        derived.append(by_sizes)
    return RowPicture(item.included, tuple(cells), tuple(derived))


def _adjoins(text: str) -> Adjoins:
    """Return what was typed, in the language on the screen or in English, which lists from elsewhere are in."""
    words = {say(item.value).lower(): item for item in Adjoins} | {item.value: item for item in Adjoins}
    known = words.get(text.strip().lower())
    if known is None:
        raise InvalidInput("adjoins", text, f"one of {', '.join(say(item.value) for item in Adjoins)} is needed")
    return known


def _sums(geometry: Geometry, display: Display) -> tuple[tuple[str, str], ...]:
    found = totals(geometry)
    named = (
        (say("Volume"), Quantity.VOLUME, found.volume_m3),
        (say("Floor area"), Quantity.AREA, found.floor_area_m2),
        (say("Envelope area"), Quantity.AREA, found.envelope_area_m2),
    )
    rows = [(name, "–" if value is None else format_with_unit(value, kind, display)) for name, kind, value in named]
    rows += [
        (say("to {kind}", kind=kind), format_with_unit(area, Quantity.AREA, display))
        for kind, area in found.adjoining_m2
    ]
    return (*rows, (say("Left out"), ", ".join(found.left_out) or "nothing"))


def _beside(geometry: Geometry, building: Building, display: Display) -> list[str]:
    """Return where the job sheet says something else than the sums."""
    found = totals(geometry)
    pairs = (
        ("volume", Quantity.VOLUME, found.volume_m3, building.volume_m3),
        (say("floor area"), Quantity.AREA, found.floor_area_m2, building.floor_area_m2),
        (say("envelope area"), Quantity.AREA, found.envelope_area_m2, building.envelope_area_m2),
    )
    return [
        say(
            "The job sheet has another {name} ({shown}), and that one counts.",
            name=name,
            shown=format_with_unit(sheet, kind, display),
        )
        for name, kind, value, sheet in pairs
        if value is not None and sheet is not None and abs(value - sheet) > 1e-9 * max(value, sheet)
    ]
