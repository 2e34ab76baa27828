"""Typing in a hand-written test: two directions, what is read out of the pasted lines, what is wrong with them."""

from __future__ import annotations

from dataclasses import dataclass, field

from acquisition.typed import TypedPoint, TypedRun, moment_of, points_from
from analysis.errors import InvalidInput
from analysis.numbertext import format_number, parse_number
from analysis.records import Direction
from analysis.units import Display, Quantity, format_value, unit_symbol
from gui.viewmodels.errors import sentence
from gui.words import say

DIRECTIONS = (Direction.DEPRESSURIZE, Direction.PRESSURIZE)
LONGEST_S = 3600.0
ZERO = "Zero-flow pressure"


@dataclass(frozen=True, slots=True)
class TypedPicture:
    """The page: what was understood, in one sentence for each direction and the date, and whether it can be kept."""

    notes: dict[Direction, tuple[str, bool]]
    """What was read of a direction, and whether something is wrong."""
    common: str
    unit: str
    can_keep: bool


@dataclass(slots=True)
class TypedModel:
    """What stands on the page, as texts."""

    date: str = ""
    seconds: str = ""
    lines: dict[Direction, str] = field(default_factory=lambda: dict.fromkeys(DIRECTIONS, ""))
    zeros: dict[tuple[Direction, bool], str] = field(default_factory=dict)
    """Zero-flow pressure of a direction before (False) and after (True) the points."""

    def clear(self) -> None:
        """Begin with an empty page."""
        self.date, self.seconds = "", ""
        self.lines = dict.fromkeys(DIRECTIONS, "")
        self.zeros = {}

    def runs(self, display: Display) -> tuple[TypedRun, ...]:
        """Return what was typed; raises `InvalidInput`."""
        found = tuple(self._run(way, display) for way in DIRECTIONS if self.lines[way].strip())
        if not found:
            raise InvalidInput("points", "", "paste or type the points of one direction at least", shown="empty")
        moment_of(self.date, "Day and time on the sheet")
        return found

    def picture(self, display: Display) -> TypedPicture:
        """Return the page."""
        notes = {way: self._note(way, display) for way in DIRECTIONS}
        common, can_keep = "", True
        try:
            self.runs(display)
        except InvalidInput as error:
            common, can_keep = sentence(error), False
        if any(wrong for _, wrong in notes.values()):
            common = ""
        return TypedPicture(notes, common, unit_symbol(Quantity.FLOW, display), can_keep)

    def _run(self, way: Direction, display: Display) -> TypedRun:
        seconds = self._number(self.seconds, "Seconds averaged", display) or 1.0
        if not 0 < seconds <= LONGEST_S:
            raise InvalidInput("Seconds averaged", self.seconds, f"more than 0 and at most {LONGEST_S:g} s is allowed")
        zero = {
            late: self._number(self.zeros.get((way, late), ""), "Zero-flow pressure", display) for late in (False, True)
        }
        return TypedRun(way, points_from(self.lines[way], way, display), zero[False], zero[True], seconds)

    def _number(self, text: str, name: str, display: Display) -> float | None:
        return parse_number(text, name, display.decimal_mark) if text.strip() else None

    def _note(self, way: Direction, display: Display) -> tuple[str, bool]:
        if not self.lines[way].strip():
            return "", False
        try:
            return _words(self._run(way, display).points, display), False
        except InvalidInput as error:
            return sentence(error), True


def _words(points: tuple[TypedPoint, ...], display: Display) -> str:
    first, last = points[0], points[-1]
    unit = unit_symbol(Quantity.FLOW, display)

    def point(item: TypedPoint) -> str:
        flow = format_value(item.flow_m3_h, Quantity.FLOW, display)
        return f"{format_number(item.envelope_pa, 1, display.decimal_mark)} Pa, {flow} {unit}"

    return say("{count} points, from {first} to {last}.", count=len(points), first=point(first), last=point(last))
