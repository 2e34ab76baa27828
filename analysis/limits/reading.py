"""Reading a file of limits: TOML with `[[place]]` and `[[limit]]`; the shipped ones show the form."""

from __future__ import annotations

from functools import cache
from importlib.resources import files

from analysis.bounds import above_zero
from analysis.datafile import read_entries, refuse_doubles, shipped_text, take_provenance
from analysis.effective import effective_quantity
from analysis.fields import Fields
from analysis.limits.catalogue import Catalogue
from analysis.limits.entry import KINDS, Place, PublishedLimit


def read_limits(text: str, name: str, known: Catalogue | None = None) -> Catalogue:
    """Return the places and limits of a file, joined to those `known` already.

    Raises `InvalidInput`: file, entry, field, value and what is allowed.
    """
    tables = read_entries(text, name, "place", "limit")
    read = Catalogue(
        places=tuple(_place(fields) for fields in tables["place"]),
        limits=tuple(_limit(fields) for fields in tables["limit"]),
    )
    refuse_doubles([item.id for item in read.limits], name)
    return (read if known is None else known.joined(read, name)).checked(name)


@cache
def shipped_limits() -> Catalogue:
    """Return the limits that come with the program."""
    catalogue = Catalogue((), ())
    for name in sorted(item.name for item in files(__package__).iterdir() if item.name.endswith(".toml")):
        catalogue = read_limits(shipped_text(__package__, name), f"limits/{name}", catalogue)
    return catalogue


def _place(fields: Fields) -> Place:
    place = Place(
        id=fields.text("id"),
        title=fields.text("title"),
        within=fields.text("within", ""),
        zone_title=fields.text("zone_title", ""),
        zones=fields.texts("zones"),
    )
    fields.finish()
    return place


def _limit(fields: Fields) -> PublishedLimit:
    limit = PublishedLimit(
        id=fields.text("id"),
        title=fields.text("title"),
        authority=fields.text("authority"),
        edition=fields.text("edition"),
        place=fields.text("place"),
        zones=fields.texts("zones"),
        kind=fields.choice("kind", KINDS),
        applies=fields.text("applies", ""),
        quantity=effective_quantity(fields.text("quantity"), fields.path("quantity")).id,
        value=above_zero(fields.number("value"), fields.path("value")),
        as_printed=fields.text("as_printed"),
        each_direction=fields.flag("each_direction", default=False),
        provenance=take_provenance(fields),
    )
    fields.finish()
    return limit
