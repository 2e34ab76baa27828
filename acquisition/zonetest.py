"""Zone tests that were kept in the job: what was read at a garage, an attic or a crawl space, under its name.

Kept are the readings, not what they tell: `acquisition.told.zones` says that anew each time.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from acquisition.job.house import Entry, PreparationKind
from analysis.errors import InvalidInput

GARAGE_DOOR = "overhead-door"
LONGEST = 60
STATE = re.compile(
    r"(?:house (?P<house>\d+\.\d+) Pa, zone (?P<zone>\d+\.\d+) Pa"
    r"(?:; with (?P<hole>[a-z-]+) (?P<after>\d+\.\d+) Pa, fan (?P<flow>\d+\.\d+) to (?P<flow_after>\d+\.\d+) m3/h)?)"
)


@dataclass(frozen=True, slots=True)
class ZoneQuestion:
    """What was read: magnitudes in Pa against outdoors and fan flows in m3/h, each with its standard uncertainty.

    `hole` is where one was added ("outdoors" or "house"), None without; `garage` means that the hole is its overhead
    door. What belongs to a hole that was not made is None.
    """

    house_pa: float
    zone_pa: float
    pressure_u_pa: float = 0.3
    hole: str | None = None
    zone_after_pa: float | None = None
    flow_before_m3_h: float | None = None
    flow_after_m3_h: float | None = None
    flow_u_m3_h: float = 3.0
    garage: bool = False


@dataclass(frozen=True, slots=True)
class KeptZone:
    """What was read last at the zone of a name."""

    utc: datetime
    name: str
    question: ZoneQuestion


def zone_entry(name: str, question: ZoneQuestion, utc: datetime, who: str = "") -> Entry:
    """Return what is kept of the readings at a zone. Raises `InvalidInput` for a name that is empty or too long."""
    said = " ".join(name.split())
    if not said:
        raise InvalidInput("zone", name, "say which one, such as garage or attic", shown="empty")
    if len(said) > LONGEST:
        raise InvalidInput("zone", said, f"at most {LONGEST} characters fit", shown=f"{len(said)} long")
    state = f"house {question.house_pa:.3f} Pa, zone {question.zone_pa:.3f} Pa"
    hole = GARAGE_DOOR if question.garage else question.hole
    after, before_m3_h, after_m3_h = question.zone_after_pa, question.flow_before_m3_h, question.flow_after_m3_h
    if hole is not None and after is not None and before_m3_h is not None and after_m3_h is not None:
        state += f"; with {hole} {after:.3f} Pa, fan {before_m3_h:.3f} to {after_m3_h:.3f} m3/h"
    return Entry(utc, PreparationKind.ZONE, said, state, who)


def kept_zones(entries: Iterable[Entry]) -> tuple[KeptZone, ...]:
    """Return the zones in the order in which they were first kept, each with its last readings."""
    zones: dict[str, KeptZone] = {}
    for entry in entries:
        read = STATE.fullmatch(entry.state) if entry.kind is PreparationKind.ZONE else None
        if read is not None:
            zones[entry.subject] = KeptZone(entry.utc, entry.subject, _question(read))
    return tuple(zones.values())


def _question(read: re.Match[str]) -> ZoneQuestion:
    house_pa, zone_pa = float(read["house"]), float(read["zone"])
    if read["hole"] is None:
        return ZoneQuestion(house_pa, zone_pa)
    garage = read["hole"] == GARAGE_DOOR
    return ZoneQuestion(
        house_pa,
        zone_pa,
        hole=None if garage else read["hole"],
        zone_after_pa=float(read["after"]),
        flow_before_m3_h=float(read["flow"]),
        flow_after_m3_h=float(read["flow_after"]),
        garage=garage,
    )
