"""Rooms and surfaces copied out of a spreadsheet: lines of cells with tabs between, in the units on the screen."""

from __future__ import annotations

from acquisition.geometry.records import Adjoins, Room, Surface
from analysis.errors import InvalidInput
from analysis.units import Display, Quantity, parse_value

MOST_LINES = 500
ROOM_COLUMNS = "name, floor area, height, volume"
SURFACE_COLUMNS = "name, area, adjoins"


def rooms_from(text: str, display: Display) -> tuple[Room, ...]:
    """Return a room for each line: name, floor area, height, volume (what is not known is left empty).

    A first line without any number is a heading. Raises `InvalidInput` with the number of the line.
    """
    return tuple(_room(at, cells, display) for at, cells in _lines(text, ROOM_COLUMNS))


def surfaces_from(text: str, display: Display) -> tuple[Surface, ...]:
    """Return a surface for each line: name, area, what it adjoins (outside where nothing is said)."""
    return tuple(_surface(at, cells, display) for at, cells in _lines(text, SURFACE_COLUMNS))


def size(text: str, quantity: Quantity, display: Display, field: str) -> float | None:
    """Return a size that a person typed, None for an empty text; raises `InvalidInput` unless it is above 0."""
    if not text.strip():
        return None
    value = parse_value(text, quantity, display, field)
    if value <= 0:
        raise InvalidInput(field, text, "more than 0 is needed", shown=text.strip())
    return value


def _lines(text: str, columns: str) -> list[tuple[int, list[str]]]:
    lines = [
        (at, [cell.strip() for cell in line.split("\t")])
        for at, line in enumerate(text.splitlines(), 1)
        if line.strip()
    ]
    if len(lines) > MOST_LINES:
        raise InvalidInput("clipboard", len(lines), f"at most {MOST_LINES} lines", shown=f"{len(lines)} lines long")
    if lines and len(lines[0][1]) > 1 and not any(char.isdigit() for cell in lines[0][1][1:] for char in cell):
        lines = lines[1:]
    if not lines:
        raise InvalidInput("clipboard", text, f"lines with tabs between are needed: {columns}", shown="empty")
    most = columns.count(",") + 1
    for at, cells in lines:
        if len(cells) > most and any(cells[most:]):
            raise InvalidInput(f"line {at}", cells[most], f"the columns are {columns}")
        if not cells[0]:
            raise InvalidInput(f"line {at}, name", "", "a name is needed", shown="empty")
    return lines


def _room(at: int, cells: list[str], display: Display) -> Room:
    name, area, height, volume = (*cells, "", "", "")[:4]
    return Room(
        name,
        size(area, Quantity.AREA, display, f"line {at}, floor area"),
        size(height, Quantity.LENGTH, display, f"line {at}, height"),
        size(volume, Quantity.VOLUME, display, f"line {at}, volume"),
    )


def _surface(at: int, cells: list[str], display: Display) -> Surface:
    name, area, adjoins = (*cells, "", "")[:3]
    known = adjoins.lower() or Adjoins.OUTSIDE.value
    if known not in tuple(Adjoins):
        raise InvalidInput(f"line {at}, adjoins", adjoins, f"one of {', '.join(Adjoins)} is needed")
    return Surface(name, size(area, Quantity.AREA, display, f"line {at}, area"), Adjoins(known))
