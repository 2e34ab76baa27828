"""The guided zone test: tap, read, add a hole, read again; then what that says."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from acquisition.told import Table
from acquisition.told.zones import zone_tables
from acquisition.zonetest import KeptZone, ZoneQuestion
from analysis.errors import InvalidInput
from analysis.units import Display, Quantity, format_value, parse_value, unit_symbol
from gui.viewmodels.errors import sentence
from gui.words import mark, say

HOLES = (
    ("outdoors", mark("a hole between zone and outdoors")),
    ("house", mark("a hole between house and zone")),
    ("garage", mark("the overhead door of a garage")),
)
FIELDS = (
    ("house_pa", mark("House against outdoors"), Quantity.PRESSURE),
    ("zone_pa", mark("Zone against outdoors"), Quantity.PRESSURE),
    ("flow_before", mark("Fan flow"), Quantity.FLOW),
    ("zone_after_pa", mark("Zone, with the hole"), Quantity.PRESSURE),
    ("flow_after", mark("Fan flow, with the hole"), Quantity.FLOW),
)
BEFORE = ("house_pa", "zone_pa", "flow_before")
AFTER = ("zone_after_pa", "flow_after")


@dataclass(frozen=True, slots=True)
class ZonePicture:
    """The page: what to do now, the fields, the result."""

    step: str
    values: dict[str, tuple[str, str, str]]
    hole: str
    tables: tuple[Table, ...]
    name: str = ""
    kept: str = ""
    """Which zones the job holds."""


@dataclass(slots=True)
class ZoneWalk:
    """What was read so far, all of it without a sign (Pa, m3/h)."""

    values: dict[str, float] = field(default_factory=dict)
    wrong: dict[str, tuple[str, str]] = field(default_factory=dict)
    hole: str = "outdoors"
    name: str = ""
    """What the zone is called in the job."""
    _told: tuple[ZoneQuestion, Display, tuple[Table, ...], InvalidInput | None] | None = None

    def read(self, name: str, value: float | None) -> None:
        """Take a reading."""
        if value is not None:
            self.values[name] = abs(value)
            self.wrong.pop(name, None)

    def type_field(self, name: str, text: str, display: Display) -> None:
        """Take what was typed; an empty text takes the value away."""
        quantity = next(kind for key, _, kind in FIELDS if key == name)
        if not text.strip():
            self.values.pop(name, None)
            self.wrong.pop(name, None)
            return
        try:
            self.read(name, parse_value(text, quantity, display, "reading"))
        except InvalidInput as error:
            self.wrong[name] = (text, sentence(error))

    def clear(self) -> None:
        """Begin with another zone."""
        self.values.clear()
        self.wrong.clear()
        self.name = ""

    def question(self) -> ZoneQuestion | None:
        """Return what was read, None as long as house and zone were not."""
        values = self.values
        if "house_pa" not in values or "zone_pa" not in values:
            return None
        whole = all(name in values for name in (*BEFORE, *AFTER))
        garage = whole and self.hole == "garage"
        return ZoneQuestion(
            house_pa=values["house_pa"],
            zone_pa=values["zone_pa"],
            hole=self.hole if whole and not garage else None,
            zone_after_pa=values["zone_after_pa"] if whole else None,
            flow_before_m3_h=values["flow_before"] if whole else None,
            flow_after_m3_h=values["flow_after"] if whole else None,
            garage=garage,
        )

    def picture(self, display: Display, kept: Iterable[KeptZone] = ()) -> ZonePicture:
        """Return the page; `kept` are the zones that the job holds."""
        shown = {}
        for name, _, kind in FIELDS:
            text, error = self.wrong.get(name, ("", ""))
            if not error and name in self.values:
                text = format_value(self.values[name], kind, display)
            shown[name] = (text, unit_symbol(kind, display), error)
        tables, trouble = self._tables(display)
        names = ", ".join(zone.name for zone in kept)
        held = say("Kept in this job: {names}.", names=names) if names else ""
        return ZonePicture(trouble or self._step(), shown, self.hole, tables, self.name, held)

    def _step(self) -> str:
        values = self.values
        if "house_pa" not in values or "zone_pa" not in values:
            return say(
                "1  Hold a pressure. Put a tap into the zone (garage, attic, crawl space), all doors to it closed, and "
                "read house and zone against outdoors."
            )
        if "flow_before" not in values:
            return say("2  Read the fan flow too, if the leaks are to be told in numbers.")
        if "zone_after_pa" not in values or "flow_after" not in values:
            hole = say(dict(HOLES)[self.hole])
            return say(
                "3  Open {hole}, so far that the zone moves by 5 Pa; hold the house where it was, and read again.",
                hole=hole,
            )
        return say("4  Close the hole. The result stands below.")

    def _tables(self, display: Display) -> tuple[tuple[Table, ...], str]:
        question = self.question()
        if question is None:
            return (), ""
        # What was read tells the same until something is read anew: a picture is drawn thirty times a second.
        if self._told is None or self._told[:2] != (question, display):
            try:
                self._told = question, display, zone_tables(question, display), None
            except InvalidInput as error:
                self._told = question, display, (), error
        tables, refused = self._told[2:]
        return tables, "" if refused is None else say("{sentence} Read again.", sentence=sentence(refused))
