"""Where houses leak: the parts of a building that a leak is filed under.

The list follows the air-barrier table of IECC 2009, 402.4.2 (as quoted by others), with parts that testers name besides
(common practice, no source).
"""

from __future__ import annotations

from dataclasses import dataclass

from analysis.errors import InvalidInput


@dataclass(frozen=True, slots=True)
class Part:
    """A part of the building; `sealable` is false for what closes by itself or not at all, whatever is sealed."""

    id: str
    title: str
    group: str
    sealable: bool = True


PARTS = tuple(
    Part(*fields)
    for fields in (
        ("joint", "joint or seam of the air barrier", "walls"),
        ("floor-wall", "floor to wall, sill plate", "walls"),
        ("ceiling-wall", "ceiling to wall, top plate", "walls"),
        ("rim-joist", "rim joist, floor joists in the wall", "walls"),
        ("partition", "top or foot of an inner wall", "walls"),
        ("party-wall", "party wall", "walls"),
        ("garage-wall", "wall or ceiling to the garage", "walls"),
        ("knee-wall", "knee wall", "walls"),
        ("behind-bath", "wall behind a bath or shower", "walls"),
        ("slab-edge", "edge of the slab", "walls"),
        ("outlet", "outlet or switch", "services"),
        ("pipe", "pipe through the envelope", "services"),
        ("cable", "cable through the envelope", "services"),
        ("duct", "duct through the envelope", "services"),
        ("shaft", "shaft or chase", "services"),
        ("service-entry", "service entry", "services"),
        ("floor-drain", "floor drain, dry trap", "services"),
        ("duct-system", "duct system", "services"),
        ("recessed-light", "recessed light", "ceilings"),
        ("dropped-ceiling", "dropped ceiling", "ceilings"),
        ("attic-access", "attic hatch or stair", "ceilings"),
        ("roof-hatch", "roof or loading hatch", "ceilings"),
        ("frame", "gap between frame and opening", "windows and doors"),
        ("window", "window, its own seals", "windows and doors", False),
        ("door", "door, its own seals", "windows and doors"),
        ("skylight", "skylight", "windows and doors", False),
        ("shutter-box", "box of a roller shutter", "windows and doors"),
        ("trickle-vent", "trickle vent", "vents", False),
        ("exhaust-flap", "flap of a bath, kitchen or dryer exhaust", "vents", False),
        ("chimney", "chimney or fireplace", "vents", False),
        ("lift-shaft", "lift or stair shaft", "vents", False),
        ("other", "something else", "other"),
    )
)
_BY_ID = {part.id: part for part in PARTS}


def part_of(part_id: str, field: str = "part") -> Part:
    """Return the part of an id; raises `InvalidInput` that lists those there are."""
    found = _BY_ID.get(part_id)
    if found is None:
        raise InvalidInput(field, part_id, f"one of {', '.join(_BY_ID)} is needed")
    return found
