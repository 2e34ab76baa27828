"""What rooms and surfaces add up to."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from acquisition.geometry.records import Adjoins, Geometry, Room, Surface
from analysis.records import Building


@dataclass(frozen=True, slots=True)
class Totals:
    """Sums in m3 and m2 over what is included; None without any part of it.

    `gaps` names the included rooms and surfaces that have no size: a sum with a gap is too small and is not used.
    """

    volume_m3: float | None
    floor_area_m2: float | None
    envelope_area_m2: float | None
    adjoining_m2: tuple[tuple[Adjoins, float], ...]
    left_out: tuple[str, ...]
    gaps: tuple[str, ...]


def totals(geometry: Geometry) -> Totals:
    """Return the sums."""
    rooms = [room for room in geometry.rooms if room.included]
    surfaces = [surface for surface in geometry.surfaces if surface.included]
    gaps = [f"{room.name}: volume" for room in rooms if room.volume is None]
    gaps += [f"{room.name}: floor area" for room in rooms if room.floor_area_m2 is None]
    gaps += [f"{surface.name}: area" for surface in surfaces if surface.area_m2 is None]
    parts: list[Room | Surface] = [*geometry.rooms, *geometry.surfaces]
    return Totals(
        volume_m3=_sum(room.volume for room in rooms),
        floor_area_m2=_sum(room.floor_area_m2 for room in rooms),
        envelope_area_m2=_sum(surface.area_m2 for surface in surfaces),
        adjoining_m2=tuple(
            (kind, sum(item.area_m2 or 0.0 for item in surfaces if item.adjoins is kind))
            for kind in Adjoins
            if any(item.adjoins is kind for item in surfaces)
        ),
        left_out=tuple(part.name for part in parts if not part.included),
        gaps=tuple(gaps),
    )


def applied(building: Building, geometry: Geometry) -> Building:
    """Return the building with the sums in place of its sizes, as far as they are complete."""
    found = totals(geometry)
    return replace(
        building,
        volume_m3=building.volume_m3 if found.volume_m3 is None else found.volume_m3,
        floor_area_m2=building.floor_area_m2 if found.floor_area_m2 is None else found.floor_area_m2,
        envelope_area_m2=building.envelope_area_m2 if found.envelope_area_m2 is None else found.envelope_area_m2,
    )


def _sum(values: Iterable[float | None]) -> float | None:
    """Return the sum, None without any value or where one is missing."""
    known = list(values)
    if not known or any(value is None for value in known):
        return None
    return sum(value for value in known if value is not None)
