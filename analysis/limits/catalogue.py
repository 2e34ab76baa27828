"""The list of limits: what there is, by place and zone."""

from __future__ import annotations

from dataclasses import dataclass

from analysis.datafile import refuse_doubles
from analysis.errors import InvalidInput
from analysis.limits.entry import ANYWHERE, Place, PublishedLimit


@dataclass(frozen=True, slots=True)
class Catalogue:
    """Places and the limits that hold there, in the order of their files."""

    places: tuple[Place, ...]
    limits: tuple[PublishedLimit, ...]

    def place(self, place_id: str, field: str = "place") -> Place:
        """Return a place; raises `InvalidInput` that lists those there are."""
        found = next((item for item in self.places if item.id == place_id), None)
        if found is None:
            raise InvalidInput(field, place_id, f"one of {', '.join(item.id for item in self.places)} is needed")
        return found

    def limit(self, limit_id: str, field: str = "limit") -> PublishedLimit:
        """Return a limit; raises `InvalidInput` that lists those there are."""
        found = next((item for item in self.limits if item.id == limit_id), None)
        if found is None:
            raise InvalidInput(field, limit_id, f"one of {', '.join(item.id for item in self.limits)} is needed")
        return found

    def at(self, place_id: str, zone: str | None = None) -> tuple[PublishedLimit, ...]:
        """Return the limits that hold in a place: its own, those of the place it lies in, those of no place.

        With a zone, only those that hold there; a letter after the number of a climate zone (4C) does not count.
        Raises `InvalidInput` for a place or zone that is unknown.
        """
        places = self._around(place_id)
        wanted = None if zone is None else _zone(self.place(place_id), zone)
        return tuple(
            item
            for place in places
            for item in self.limits
            if item.place == place and (wanted is None or not item.zones or wanted in item.zones)
        )

    def joined(self, other: Catalogue, name: str) -> Catalogue:
        """Return both lists as one; `name` stands for the other in the `InvalidInput` that doubles raise.

        A place that both know must be the same in both.
        """
        known = {item.id: item for item in self.places}
        for place in other.places:
            if known.setdefault(place.id, place) != place:
                raise InvalidInput(f"{name}: place", place.id, "it is known already with another title or zones")
        limits = self.limits + other.limits
        refuse_doubles([item.id for item in limits], name)
        return Catalogue(tuple(known.values()), limits)

    def checked(self, name: str) -> Catalogue:
        """Return the list itself; raises `InvalidInput` where a limit or place names a place or zone it lacks."""
        refuse_doubles([item.id for item in self.places], name)
        for place in self.places:
            if place.within:
                self.place(place.within, f"{name}: within of {place.id}")
        for item in self.limits:
            place = self.place(item.place, f"{name}: place of {item.id}")
            for zone in item.zones:
                _zone(place, zone, f"{name}: zones of {item.id}")
        return self

    def _around(self, place_id: str) -> tuple[str, ...]:
        """Return a place, the one it lies in, and so on, and the limits of no place last."""
        chain: list[str] = []
        at = place_id
        while at and at not in chain:
            chain.append(at)
            at = self.place(at).within
        return (*chain, ANYWHERE) if ANYWHERE not in chain else tuple(chain)


def _zone(place: Place, zone: str, field: str = "zone") -> str:
    for spelled in (zone.strip(), zone.strip().upper().rstrip("ABC")):
        if spelled in place.zones:
            return spelled
    known = f"one of {', '.join(place.zones)} is needed" if place.zones else f"{place.title} has no zones here"
    raise InvalidInput(field, zone, known)
