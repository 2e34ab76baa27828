"""What looks odd about a geometry. Nothing here stops anybody.

The bands are common practice, no source; that no body of a volume has less surface than a ball is geometry.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from acquisition.geometry.records import Geometry, Room, Surface
from acquisition.geometry.totals import totals
from analysis.units import Display, Quantity, format_with_unit

ROOM_HEIGHT_M = (1.9, 6.0)
MOST_SURFACE = 16.0
"""Envelope area over the two-thirds power of the volume; a cube has 6, a ball 4.8."""


@dataclass(frozen=True, slots=True)
class Oddity:
    """Something to look at again; `subject` is the room or surface, empty for the whole."""

    subject: str
    sentence: str


def oddities(geometry: Geometry, display: Display) -> tuple[Oddity, ...]:
    """Return what looks odd, part by part and then for the whole."""
    found = [oddity for room in geometry.rooms for oddity in _room(room, display)]
    parts: list[Room | Surface] = [*geometry.rooms, *geometry.surfaces]
    found += [
        Oddity(part.name, f"{part.name} is left out without a reason.")
        for part in parts
        if not part.included and not part.reason.strip()
    ]
    names = [part.name for part in parts]
    found += [Oddity(name, f"{name} is there twice.") for name in dict.fromkeys(names) if names.count(name) > 1]
    found += [Oddity("", f"Not known yet: {gap}; until then the sum is not used.") for gap in totals(geometry).gaps]
    return (*found, *_whole(geometry, display))


def _room(room: Room, display: Display) -> list[Oddity]:
    volume, area = room.volume, room.floor_area_m2
    if volume is None or not area:
        return []
    height_m = volume / area
    if ROOM_HEIGHT_M[0] <= height_m <= ROOM_HEIGHT_M[1]:
        return []
    shown = format_with_unit(height_m, Quantity.LENGTH, display)
    return [Oddity(room.name, f"{room.name} would be {shown} high. Is a number mistyped, or in another unit?")]


def _whole(geometry: Geometry, display: Display) -> list[Oddity]:
    sums = totals(geometry)
    if sums.volume_m3 is None or sums.envelope_area_m2 is None:
        return []
    ball_m2 = math.cbrt(36 * math.pi) * sums.volume_m3 ** (2 / 3)
    if sums.envelope_area_m2 < ball_m2:
        shown = format_with_unit(ball_m2, Quantity.AREA, display, 0)
        return [
            Oddity("", f"No body of this volume has less than {shown} of surface. Is a wall, floor or roof missing?")
        ]
    if sums.envelope_area_m2 > MOST_SURFACE * sums.volume_m3 ** (2 / 3):
        return [Oddity("", "Very much surface for this volume. Is a number mistyped?")]
    return []
