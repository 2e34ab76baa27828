"""The table of component leakages, with the source of each figure."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from analysis.bounds import above_zero
from analysis.datafile import read_entries, refuse_doubles, shipped_text, take_provenance
from analysis.errors import InvalidInput
from analysis.fields import Fields
from analysis.provenance import Provenance

PER = {"each": "each", "m": "per metre", "m2": "per square metre"}
GROUPS = ("ceiling", "walls", "windows", "doors", "vents", "fireplaces")


@dataclass(frozen=True, slots=True)
class Component:
    """Effective leakage area (cm2, at 4 Pa, discharge coefficient 1) of one of a kind, one metre or one square metre.

    `least_cm2` and `most_cm2` are the range that was found, `tight_cm2` is a well-made or sealed one; None where the
    source has none.
    """

    id: str
    title: str
    group: str
    per: str
    typical_cm2: float
    least_cm2: float | None
    most_cm2: float | None
    tight_cm2: float | None
    provenance: Provenance

    @property
    def range_cm2(self) -> tuple[float, float]:
        """Return the lowest and the highest figure that the source has."""
        known = [item for item in (self.typical_cm2, self.least_cm2, self.most_cm2, self.tight_cm2) if item is not None]
        return min(known), max(known)


@dataclass(frozen=True, slots=True)
class ComponentRate:
    """Flow per area of a part of the envelope (m3/(h m2)) at 75 Pa."""

    id: str
    title: str
    value_m3_h_m2: float
    as_printed: str
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class Interface:
    """Equivalent leakage area (cm2, at 10 Pa, discharge coefficient 0.611) of a whole interface, mean and range."""

    id: str
    title: str
    mean_cm2: float
    least_cm2: float
    most_cm2: float
    share_of_house: float
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class ComponentTable:
    """Everything that is known of single components."""

    components: tuple[Component, ...]
    rates: tuple[ComponentRate, ...]
    interfaces: tuple[Interface, ...]

    def component(self, component_id: str, field: str = "component") -> Component:
        """Return a component; raises `InvalidInput` that lists those there are."""
        found = next((item for item in self.components if item.id == component_id), None)
        if found is None:
            raise InvalidInput(
                field, component_id, f"one of {', '.join(item.id for item in self.components)} is needed"
            )
        return found


@cache
def shipped_components() -> ComponentTable:
    """Return the table that comes with the program."""
    return read_components(shipped_text(__package__, "components.toml"), "components.toml")


def read_components(text: str, name: str) -> ComponentTable:
    """Return the table of a file; raises `InvalidInput`: file, entry, field, value and what is allowed."""
    tables = read_entries(text, name, "component", "rate", "interface")
    table = ComponentTable(
        components=tuple(_component(fields) for fields in tables["component"]),
        rates=tuple(_rate(fields) for fields in tables["rate"]),
        interfaces=tuple(_interface(fields) for fields in tables["interface"]),
    )
    refuse_doubles([item.id for item in table.components], name)
    refuse_doubles([item.id for item in table.rates], name)
    refuse_doubles([item.id for item in table.interfaces], name)
    return table


def _component(fields: Fields) -> Component:
    read = Component(
        id=fields.text("id"),
        title=fields.text("title"),
        group=fields.choice("group", GROUPS),
        per=fields.choice("per", PER),
        typical_cm2=_area(fields, "typical_cm2"),
        least_cm2=_area_or_none(fields, "least_cm2"),
        most_cm2=_area_or_none(fields, "most_cm2"),
        tight_cm2=_area_or_none(fields, "tight_cm2"),
        provenance=take_provenance(fields),
    )
    fields.finish()
    return read


def _rate(fields: Fields) -> ComponentRate:
    read = ComponentRate(
        id=fields.text("id"),
        title=fields.text("title"),
        value_m3_h_m2=_area(fields, "value_m3_h_m2"),
        as_printed=fields.text("as_printed"),
        provenance=take_provenance(fields),
    )
    fields.finish()
    return read


def _interface(fields: Fields) -> Interface:
    read = Interface(
        id=fields.text("id"),
        title=fields.text("title"),
        mean_cm2=_area(fields, "mean_cm2"),
        least_cm2=_area(fields, "least_cm2"),
        most_cm2=_area(fields, "most_cm2"),
        share_of_house=_area(fields, "share_of_house"),
        provenance=take_provenance(fields),
    )
    fields.finish()
    return read


def _area(fields: Fields, key: str) -> float:
    return above_zero(fields.number(key), fields.path(key))


def _area_or_none(fields: Fields, key: str) -> float | None:
    value = fields.number_or_none(key)
    return None if value is None else above_zero(value, fields.path(key))
