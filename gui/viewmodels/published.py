"""The limits of codes and programmes that a result is to be held against too."""

from __future__ import annotations

from dataclasses import dataclass

from acquisition.told.limits import limit_source, limit_words
from analysis.limits import PublishedLimit, shipped_limits
from analysis.limits.entry import ANYWHERE
from analysis.units import Display

ALL_ZONES = ""


@dataclass(frozen=True, slots=True)
class LimitItem:
    """A limit that can be ticked; `source` says whose it is and how far the figure can be trusted."""

    id: str
    words: str
    source: str
    ticked: bool


@dataclass(frozen=True, slots=True)
class PublishedPicture:
    """The panel. `zones` is empty where the place has none."""

    places: tuple[tuple[str, str], ...]
    place: str
    zones: tuple[tuple[str, str], ...]
    zone: str
    items: tuple[LimitItem, ...]


@dataclass(slots=True)
class PublishedChoice:
    """Where the person looks for limits."""

    place: str = ANYWHERE
    zone: str = ALL_ZONES

    def go_to(self, place: str) -> None:
        """Look in another place, in all of its zones."""
        self.place, self.zone = place, ALL_ZONES


def published_picture(ticked: tuple[str, ...], choice: PublishedChoice, display: Display) -> PublishedPicture:
    """Return the limits of the place that is looked at; those that are ticked already stand in front, wherever from."""
    catalogue = shipped_limits()
    place = catalogue.place(choice.place)
    here = catalogue.at(choice.place, choice.zone or None)
    chosen = [item for item in catalogue.limits if item.id in ticked]
    others = [item for item in here if item.id not in ticked]
    zones = [(ALL_ZONES, f"{place.zone_title}: all"), *((zone, f"Zone {zone}") for zone in place.zones)]
    return PublishedPicture(
        places=tuple((item.id, item.title) for item in catalogue.places),
        place=choice.place,
        zones=tuple(zones) if place.zones else (),
        zone=choice.zone,
        items=tuple(_item(item, display, ticked=item.id in ticked) for item in (*chosen, *others)),
    )


def ticked_text(ticked: tuple[str, ...], limit_id: str, *, on: bool) -> str:
    """Return the ids with one ticked or not, as the field of the sheet has them."""
    rest = [item for item in ticked if item != limit_id]
    return " ".join([*rest, limit_id] if on else rest)


def _item(item: PublishedLimit, display: Display, *, ticked: bool) -> LimitItem:
    return LimitItem(item.id, f"{item.title}: {limit_words(item, display)}", limit_source(item), ticked)
