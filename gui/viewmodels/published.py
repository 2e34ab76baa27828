"""The limits of codes and programmes that a result is to be held against too."""

from __future__ import annotations

from dataclasses import dataclass

from acquisition.job import JobDetails
from acquisition.told.limits import limit_source, limit_words
from analysis.limits import PublishedLimit, shipped_limits
from analysis.limits.entry import ANYWHERE
from analysis.units import Display
from gui.viewmodels.retold import retold
from gui.words import say

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


def published_picture(ticked: tuple[str, ...], details: JobDetails, display: Display) -> PublishedPicture:
    """Return the limits of the place that is looked at; those that are ticked already stand in front, wherever from."""
    catalogue = shipped_limits()
    known = {item.id for item in catalogue.places}
    place = catalogue.place(details.place if details.place in known else ANYWHERE)
    here = catalogue.at(place.id, details.zone if details.zone in place.zones else None)
    chosen = [item for item in catalogue.limits if item.id in ticked]
    others = [item for item in here if item.id not in ticked]
    zones = [
        (ALL_ZONES, say("{place}: all", place=retold(place.zone_title))),
        *((zone, say("Zone {zone}", zone=zone)) for zone in place.zones),
    ]
    return PublishedPicture(
        places=tuple((item.id, item.title) for item in catalogue.places),
        place=place.id,
        zones=tuple(zones) if place.zones else (),
        zone=details.zone,
        items=tuple(_item(item, display, ticked=item.id in ticked) for item in (*chosen, *others)),
    )


def ticked_text(ticked: tuple[str, ...], limit_id: str, *, on: bool) -> str:
    """Return the ids with one ticked or not, as the field of the sheet has them."""
    rest = [item for item in ticked if item != limit_id]
    return " ".join([*rest, limit_id] if on else rest)


def _item(item: PublishedLimit, display: Display, *, ticked: bool) -> LimitItem:
    words = f"{retold(item.title)}: {limit_words(item, display)}"
    return LimitItem(item.id, words, limit_source(item, retold), ticked)
