"""Rooms and surfaces as they were measured."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

HOW = {
    "": "Not said",
    "inside": "Measured inside, wall to wall",
    "drawings": "Taken from drawings",
    "outside": "Measured outside, walls taken off",
    "estimate": "Estimated",
}
"""How a geometry was found, by id."""


class Adjoins(StrEnum):
    """What lies on the other side of a surface."""

    OUTSIDE = "outside"
    GROUND = "ground"
    UNHEATED = "unheated space"
    NEIGHBOUR = "neighbour"


@dataclass(frozen=True, slots=True)
class Room:
    """A room or zone. `height_m` is the mean clear height; a typed `volume_m3` stands in place of area by height.

    One that is not `included` in the test volume says why in `reason`.
    """

    name: str
    floor_area_m2: float | None = None
    height_m: float | None = None
    volume_m3: float | None = None
    included: bool = True
    reason: str = ""

    @property
    def volume(self) -> float | None:
        """The volume in m3, None where it is not known."""
        if self.volume_m3 is not None:
            return self.volume_m3
        if self.floor_area_m2 is None or self.height_m is None:
            return None
        return self.floor_area_m2 * self.height_m


@dataclass(frozen=True, slots=True)
class Surface:
    """A surface that bounds the test volume; one that the rule leaves out says why."""

    name: str
    area_m2: float | None = None
    adjoins: Adjoins = Adjoins.OUTSIDE
    included: bool = True
    reason: str = ""


@dataclass(frozen=True, slots=True)
class Geometry:
    """All of it. `how` is a key of `HOW`."""

    rooms: tuple[Room, ...] = ()
    surfaces: tuple[Surface, ...] = ()
    how: str = ""
