"""A limit as a document sets it, with where it was read and how far that can be trusted."""

from __future__ import annotations

from dataclasses import dataclass

from analysis.provenance import Provenance
from analysis.records import Limit

KINDS = ("code", "programme", "recommendation")
"""Law or adopted standard; voluntary programme; advice."""
ANYWHERE = "any"


@dataclass(frozen=True, slots=True)
class Place:
    """Where limits hold. A place `within` another has the limits of that one too; `zones` divide it by climate."""

    id: str
    title: str
    within: str = ""
    zone_title: str = ""
    zones: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class PublishedLimit:
    """The quantity must be at most `value`, in the unit of the quantity; `as_printed` is what the document says.

    `zones` is empty where it holds in all of them. `applies` says to which buildings, and on what conditions.
    """

    id: str
    title: str
    authority: str
    edition: str
    place: str
    kind: str
    quantity: str
    value: float
    as_printed: str
    provenance: Provenance
    zones: tuple[str, ...] = ()
    applies: str = ""
    each_direction: bool = False

    @property
    def limit(self) -> Limit:
        """Return the limit that a test can be held against."""
        return Limit(self.id, self.quantity, self.value, self.each_direction)
