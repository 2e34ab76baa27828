"""The leaks of a house as they are found, sealed and looked at again; and the text in which a job keeps them."""

from __future__ import annotations

import json
import math
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from enum import StrEnum

from acquisition.jsontext import table_of, unreadable
from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.sealing.change import Change, Sureness
from analysis.sealing.parts import part_of

LONGEST_TEXT = 400


class LeakStatus(StrEnum):
    """How far a leak has come. LEFT: it stays as it is, on purpose. WITHDRAWN: it was entered by mistake."""

    FOUND = "found"
    SEALED = "sealed"
    VERIFIED = "verified"
    LEFT = "left"
    WITHDRAWN = "withdrawn"


class HowFound(StrEnum):
    """What showed a leak."""

    HAND = "hand"
    FOG = "fog"
    SMOKE_PEN = "smoke pen"
    INFRA_RED = "infra-red"
    SOUND = "sound"
    OTHER = "other"


@dataclass(frozen=True, slots=True)
class Pin:
    """A place on a plan or photo: shares of its width and height from the upper left corner."""

    photo: int
    across: float
    down: float


@dataclass(frozen=True, slots=True)
class Leak:
    """A leak. `size_guess_m3_h` is the flow at 50 Pa that somebody guesses; `cost` is in the money of the job.

    Raises `InvalidInput` for what cannot be.
    """

    part: str
    storey: str = ""
    side: str = ""
    room: str = ""
    note: str = ""
    found_by: HowFound = HowFound.HAND
    trade: str = ""
    status: LeakStatus = LeakStatus.FOUND
    material: str = ""
    minutes: float | None = None
    cost: float | None = None
    size_guess_m3_h: float | None = None
    photos: tuple[int, ...] = ()
    pins: tuple[Pin, ...] = ()

    def __post_init__(self) -> None:
        """Check every field."""
        part_of(self.part)
        for field in ("storey", "side", "room", "note", "trade", "material"):
            text: str = getattr(self, field)
            if len(text) > LONGEST_TEXT:
                raise InvalidInput(field, text, f"at most {LONGEST_TEXT} characters are kept")
        for field, least in (("minutes", 0.0), ("cost", 0.0), ("size_guess_m3_h", 0.0)):
            value: float | None = getattr(self, field)
            if value is not None and not least <= value < 1e9:
                raise InvalidInput(field, value, "a number of at least 0 is needed")
        for pin in self.pins:
            if not (0.0 <= pin.across <= 1.0 and 0.0 <= pin.down <= 1.0):
                raise InvalidInput("pin", (pin.across, pin.down), "shares from 0 to 1 are needed")

    @property
    def where(self) -> str:
        """Storey, room and side, as far as they were named."""
        return ", ".join(text for text in (self.storey, self.room, self.side) if text)

    @property
    def place(self) -> str:
        """Where it is, in a few words."""
        title = part_of(self.part).title
        return f"{self.where}: {title}" if self.where else title


@dataclass(frozen=True, slots=True)
class Drop:
    """What sealing one leak brought: flows at `reference_pa` (m3/h), the change after less before with its interval."""

    before_m3_h: float
    after_m3_h: float
    difference_m3_h: Estimate
    smallest_m3_h: float
    sureness: Sureness
    reference_pa: float = 50.0

    @classmethod
    def of(cls, change: Change, reference_pa: float) -> Drop:
        """Return what a measured change amounts to."""
        return cls(
            change.before_m3_h, change.after_m3_h, change.difference_m3_h, change.smallest_m3_h, change.sureness,
            reference_pa,
        )  # fmt: skip


def leak_text(leak: Leak) -> str:
    """Return a leak as JSON with sorted keys and no blanks."""
    return _text(asdict(leak))


def leak_from(text: str) -> Leak:
    """Read a leak; raises `InvalidInput`."""
    table = table_of("leak", text)
    try:
        pins = tuple(Pin(**pin) for pin in table.pop("pins", ()))
        return Leak(
            found_by=HowFound(table.pop("found_by")),
            status=LeakStatus(table.pop("status")),
            photos=tuple(int(number) for number in table.pop("photos", ())),
            pins=pins,
            **table,
        )
    except (KeyError, TypeError, ValueError) as error:
        raise unreadable("leak", error) from error


def drop_text(drop: Drop) -> str:
    """Return a drop as JSON with sorted keys and no blanks."""
    return _text(asdict(drop))


def drop_from(text: str) -> Drop:
    """Read a drop; raises `InvalidInput`."""
    table = table_of("drop", text)
    try:
        difference = Estimate(**table.pop("difference_m3_h"))
        drop = Drop(difference_m3_h=difference, sureness=Sureness(table.pop("sureness")), **table)
    except (KeyError, TypeError, ValueError) as error:
        raise unreadable("drop", error) from error
    if not all(map(math.isfinite, (drop.before_m3_h, drop.after_m3_h, drop.smallest_m3_h))):
        raise unreadable("drop", ValueError("a number is not finite"))
    return drop


def _text(table: Mapping[str, object]) -> str:
    try:
        return json.dumps(table, sort_keys=True, ensure_ascii=False, separators=(",", ":"), allow_nan=False)
    except ValueError as error:
        raise InvalidInput("leak", "not finite", "every number must be finite") from error
