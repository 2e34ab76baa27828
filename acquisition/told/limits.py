"""The list of published limits, by place."""

from __future__ import annotations

from collections.abc import Callable

from acquisition.told.table import Row, Table
from acquisition.told.texts import limit_text, sentence
from analysis.effective import QUANTITIES
from analysis.limits import PublishedLimit, shipped_limits
from analysis.limits.entry import ANYWHERE
from analysis.units import Display, unit_symbol

CAUTION = (
    "Editions and amendments differ; the local authority decides which limit counts. Hold each against its document."
)


def limit_list(place: str | None, zone: str | None, display: Display) -> tuple[Table, ...]:
    """Return the limits of a place, or of all places; raises `InvalidInput` for a place or zone that is unknown."""
    catalogue = shipped_limits()
    if place is not None:
        title = catalogue.place(place).title
        titled = f"{title}, zone {zone}" if zone else title
        return (_table(titled, catalogue.at(place, zone), display),)
    tables = []
    for item in catalogue.places:
        own = tuple(limit for limit in catalogue.limits if limit.place == item.id)
        zones = f", {item.zone_title} {', '.join(item.zones)}" if item.zones and item.id != ANYWHERE else ""
        tables.append(_table(f"{item.title} ({item.id}{zones})", own, display))
    return tuple(tables)


def limit_words(item: PublishedLimit, display: Display) -> str:
    """Return the bound of a published limit with its quantity and unit."""
    quantity = QUANTITIES[item.quantity]
    return f"{quantity.symbol} {limit_text(item.value, quantity.kind, display)} {unit_symbol(quantity.kind, display)}"


def limit_source(item: PublishedLimit, tell: Callable[[str], str] = str) -> str:
    """Return whose limit it is, to what it applies, and where the figure was read; `tell` puts into a language."""
    zones = f" {tell('Zones {zones}').format(zones=', '.join(item.zones))}." if item.zones else ""
    said = f"{item.authority} {tell(item.edition)}: {item.as_printed}; {tell(item.applies)}.{zones}"
    return f"{said} {sentence(tell(item.provenance.words))}"


def _table(title: str, limits: tuple[PublishedLimit, ...], display: Display) -> Table:
    rows = tuple(Row((item.id, item.title, limit_words(item, display)), limit_source(item)) for item in limits)
    return Table(title, ("Id", "Title", "At most"), rows, (CAUTION,) if rows else (), "No limit is known here.", 3)
