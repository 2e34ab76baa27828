"""A requirement of a method as its data file gives it, and the check that comes of it."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache
from importlib.resources import files
from types import MappingProxyType

from analysis.records import Check

_KEYS = {
    "id",
    "clause",
    "text",
    "unit",
    "source",
    "confidence",
    "verified",
    "at_least",
    "at_most",
    "tolerance",
    "numbers",
}


@dataclass(frozen=True, slots=True)
class Requirement:
    """One line of a method: what has to hold, where that stands, and how sure we are that it stands there.

    A value must be at least `at_least` and at most `at_most`, each as far as given; `tolerance` widens both for
    requirements that say "about". `numbers` holds further figures that the check needs. `verified` turns true when
    somebody has read the document.
    """

    id: str
    clause: str
    text: str
    unit: str
    source: str
    confidence: str
    verified: bool
    at_least: float | None = None
    at_most: float | None = None
    tolerance: float = 0.0
    numbers: Mapping[str, float] = field(default_factory=dict)

    def judge(self, value: float, *, at_least: float | None = None, text: str = "") -> Check:
        """Return the check of a value; `at_least` and `text` take the place of the requirement's own."""
        low = self.at_least if at_least is None else at_least
        ok = (low is None or value >= low - self.tolerance) and (
            self.at_most is None or value <= self.at_most + self.tolerance
        )
        return self.check(value, ok=ok, limit=_nearer(value, low, self.at_most), text=text)

    def unknown(self, missing: str, value: float | None = None, limit: float | None = None) -> Check:
        """Return the check that could not be made, or not yet; `missing` says what it waits for."""
        bound = limit if limit is not None else self.at_least if self.at_least is not None else self.at_most
        return self.check(value, ok=None, limit=bound, text=f"{self.text}: {missing}")

    def check(self, value: float | None, *, ok: bool | None, limit: float | None = None, text: str = "") -> Check:
        """Return a check of this requirement."""
        return Check(self.id, self.clause, text or self.text, value, limit, self.unit, ok, self.source)


@cache
def load_requirements(name: str) -> tuple[Requirement, ...]:
    """Return the requirements in the data file `name`.toml of this folder, in its order.

    Raises `ValueError` for a key that is unknown: a misspelt limit must not be a missing one.
    """
    text = files(__package__).joinpath(f"{name}.toml").read_text("utf-8")
    entries = tomllib.loads(text)["check"]
    for entry in entries:
        if unknown := set(entry) - _KEYS:
            raise ValueError(f"{name}.toml, check {entry.get('id')}: unknown key {', '.join(sorted(unknown))}")
    return tuple(Requirement(**{**entry, "numbers": MappingProxyType(entry.get("numbers", {}))}) for entry in entries)


def _nearer(value: float, low: float | None, high: float | None) -> float | None:
    """Return the bound that the value is closer to."""
    if low is None or high is None:
        return high if low is None else low
    return low if value - low < high - value else high
