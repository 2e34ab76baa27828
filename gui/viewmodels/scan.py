"""Teaching a Modbus instrument: its registers, the readings that fit what its display shows, and the profile."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from analysis.errors import InvalidInput
from analysis.numbertext import parse_number
from drivers.errors import ProfileError
from drivers.framing.modbus import Bus, Wire
from drivers.profile import Profile
from drivers.siunits import UNITS
from drivers.spec import LinkSettings
from drivers.teaching.channels import Meaning
from drivers.teaching.registers import Candidate, RegisterLesson, RegisterScan, Scan, candidates, teach_registers
from gui.viewmodels.errors import sentence
from gui.viewmodels.retold import retold
from gui.viewmodels.teach import LETTERS, PickPicture, profile_id, value_text
from gui.words import mark, say

SPEEDS = (1200, 2400, 4800, 9600, 19_200, 38_400, 57_600, 115_200)
PARITIES = ("none", "even", "odd")
WIRES = {Wire.RTU: mark("Serial line (RTU)"), Wire.TCP: mark("Network (TCP)")}
MOST_SHOWN = 40
HIGHEST_UNIT, MOST_COUNT, HIGHEST_REGISTER = 247, 1024, 65_535
NOT_SCANNED = mark("Choose the port, the unit's number and the settings on its plate, and read its registers.")
SHOW = mark("Type what its display shows now, and choose the reading that fits.")
POINT = mark("Choose the reading that fits its display.")


@dataclass(frozen=True, slots=True)
class ScanFields:
    """What is typed before a scan."""

    port: str = ""
    wire: str = Wire.RTU.value
    unit: str = "1"
    baud: str = "19200"
    parity: str = "even"
    first: str = "0"
    count: str = "64"


@dataclass(frozen=True, slots=True)
class ScanPicture:
    """The page. `errors` are sentences by field; `rows` the readings to choose from, and whether each was chosen."""

    fields: ScanFields
    errors: dict[str, str]
    sentence: str
    scanning: bool
    shown: str
    rows: tuple[tuple[str, bool], ...]
    empty: str
    picks: tuple[PickPicture, ...]
    title: str
    verdict: str
    ready: bool


class ScanModel:
    """A scan and what was chosen from it. Belongs to the thread of the window; the port is read elsewhere."""

    def __init__(self) -> None:
        """Begin with nothing read."""
        self.fields = ScanFields()
        self.title = say("My Modbus gauge")
        self.shown = ""
        self._errors: dict[str, str] = {}
        self._scan: RegisterScan | None = None
        self._seen: Scan | None = None
        self._read_with: tuple[Bus, LinkSettings] | None = None
        self._offered: tuple[Candidate, ...] = ()
        self._picks: dict[Candidate, Meaning] = {}

    def type(self, field: str, text: str) -> None:
        """Take what was typed or chosen in a field."""
        self.fields = replace(self.fields, **{field: text.strip()})
        self._errors.pop(field, None)

    def settings(self) -> tuple[Bus, LinkSettings, int, int] | None:
        """Return the bus, the link, the first register and how many; None where a field cannot be used."""
        fields, self._errors = self.fields, {}
        unit = self._whole("unit", fields.unit, 1, HIGHEST_UNIT)
        first = self._whole("first", fields.first, 0, HIGHEST_REGISTER)
        count = self._whole("count", fields.count, 1, MOST_COUNT)
        if not fields.port:
            self._errors["port"] = say("The port of the instrument is needed.")
        if unit is None or first is None or count is None or self._errors:
            return None
        link = LinkSettings(baud=int(fields.baud), parity=fields.parity)
        return Bus(Wire(fields.wire), unit), link, first, min(count, HIGHEST_REGISTER + 1 - first)

    def begin(self, scan: RegisterScan, bus: Bus, link: LinkSettings) -> None:
        """Scan; what was chosen before is forgotten."""
        self.close()
        self._scan, self._seen, self._read_with = scan, None, (bus, link)
        self._offered, self._picks = (), {}
        scan.start()

    def close(self) -> None:
        """Let the port go."""
        scan, self._scan = self._scan, None
        if scan is not None:
            scan.close()

    def refresh(self) -> bool:
        """Take what was read meanwhile; return whether anything is new."""
        if self._scan is None:
            return False
        seen = self._scan.look()
        if seen == self._seen:
            return False
        self._seen = seen
        if seen.done:
            self.close()
            self._offer()
        return True

    def show(self, text: str) -> None:
        """Take what the display of the instrument shows."""
        self.shown = text.strip()
        self._offer()

    def pick(self, at: int) -> None:
        """Choose a reading."""
        if 0 <= at < len(self._offered) and self._offered[at] not in self._picks:
            self._picks[self._offered[at]] = Meaning(self._free_name("pressure"))

    def drop(self, at: int) -> None:
        """Choose no longer the reading at a place in the list of the chosen."""
        del self._picks[list(self._picks)[at]]

    def say(self, at: int, field: str, text: str) -> None:
        """Say what the chosen reading at a place is: its `name`, `quantity` or `unit`."""
        pick, meaning = list(self._picks.items())[at]
        if field == "quantity" and text != meaning.quantity:
            meaning = replace(meaning, quantity=text, unit=next(iter(UNITS[text])), name=self._free_name(text))
        elif field in ("name", "unit"):
            meaning = replace(meaning, **{field: text.strip()})  # type: ignore[arg-type]  # both are texts
        self._picks[pick] = meaning

    def taught(self) -> tuple[str, Profile]:
        """Return the profile as text and as read; raises `ProfileError` with what is missing."""
        if self._read_with is None:
            raise ProfileError("profile", None, "registers", NOT_SCANNED)
        bus, link = self._read_with
        picks = tuple(self._picks.items())
        return teach_registers(RegisterLesson(profile_id(self.title), self.title, bus, picks, link))

    def picture(self) -> ScanPicture:
        """Return the page."""
        done = self._seen is not None and self._seen.done
        verdict, ready = "", False
        if self._picks:
            try:
                self.taught()
                ready = True
            except ProfileError as error:
                verdict = sentence(error)
        return ScanPicture(
            fields=self.fields,
            errors=dict(self._errors),
            sentence=self._sentence(),
            scanning=self._scan is not None,
            shown=self.shown,
            rows=tuple((_words(item), item in self._picks) for item in self._offered),
            empty="" if self._offered or not done else self._none(),
            picks=tuple(_pick_picture(pick, meaning) for pick, meaning in self._picks.items()),
            title=self.title,
            verdict=verdict or ("" if self._picks or not self._offered else say(POINT) if self.shown else say(SHOW)),
            ready=ready,
        )

    def _sentence(self) -> str:
        if self._seen is None:
            return say(NOT_SCANNED)
        return (
            retold(self._seen.sentence)
            if self._seen.done
            else say(
                "{share} is read. {sentence}", share=f"{self._seen.share:.0%}", sentence=retold(self._seen.sentence)
            )
        )

    def _none(self) -> str:
        if self._seen is None or not any(self._seen.registers.values()):
            return ""
        return say(
            "No register reads {shown} in any usual way. Look at the display again, or read the registers anew.",
            shown=self.shown,
        )

    def _offer(self) -> None:
        registers = self._seen.registers if self._seen is not None else {}
        found: list[Candidate] = []
        for space, values in registers.items():
            try:
                found += candidates(values, space, self.shown)
            except ValueError:
                continue
        self._offered = tuple(found[:MOST_SHOWN])

    def _whole(self, field: str, text: str, low: int, high: int) -> int | None:
        try:
            number = parse_number(text, field)
        except InvalidInput:
            number = math.nan
        if not low <= number <= high or number != int(number):
            self._errors[field] = say("A whole number of {low} to {high} is needed.", low=low, high=high)
            return None
        return int(number)

    def _free_name(self, quantity: str) -> str:
        taken = {meaning.name for meaning in self._picks.values()}
        letter = LETTERS[quantity]
        return next(name for at in range(1, 99) if (name := f"{letter}{at}") not in taken)


def _words(item: Candidate) -> str:
    order = say(", low word first") if item.low_first else ""
    scale = f" × {item.scale:g}" if item.scale != 1.0 else ""
    value = f"{item.value:.6g}".replace("-", "\u2212")
    return say(
        "{value}   {space} register {register}, {words}{order}{scale}",
        value=value,
        space=item.space,
        register=item.register,
        words=item.words,
        order=order,
        scale=scale,
    )


def _pick_picture(pick: Candidate, meaning: Meaning) -> PickPicture:
    factor, offset = UNITS[meaning.quantity].get(meaning.unit, (1.0, 0.0))
    value = value_text(pick.value * factor + offset, meaning.quantity)
    words = f"{pick.space} {pick.register}"
    return PickPicture(words, meaning.name, meaning.quantity, meaning.unit, tuple(UNITS[meaning.quantity]), value)
