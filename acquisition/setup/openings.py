"""The openings that a test asks about, and the state in which its method wants each."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import cache

from acquisition.plan import TestPlan
from acquisition.stages import USUAL_STAGES, usual_stage
from analysis.datafile import read_entries, refuse_doubles, shipped_text, take_provenance
from analysis.provenance import Provenance

RULES = {
    "in-use": "building in use",
    "envelope": "envelope alone",
    "code": "closed, dampers not sealed",
}
BY_PREPARATION = {
    ("iso9972", "1"): "in-use",
    ("iso9972", "2"): "envelope",
    ("astm-e3158", "envelope"): "envelope",
    ("astm-e3158", "operational"): "in-use",
}
ENVELOPE_METHODS = ("cgsb-149.10",)
"""Methods that have openings sealed whatever the plan says (from memory)."""


class OpeningState(StrEnum):
    """How an opening is, or is to be."""

    AS_IS = "as is"
    CLOSED = "closed"
    SEALED = "sealed"
    OPEN = "open"
    OFF = "off"
    FILLED = "filled"
    ABSENT = "not present"


@dataclass(frozen=True, slots=True)
class Opening:
    """An opening with the state that each rule wants, and where that is from; at the stages `not_at` nobody asks."""

    id: str
    name: str
    wanted: tuple[tuple[str, OpeningState], ...]
    restore: str
    not_at: tuple[str, ...]
    provenance: Provenance

    def by(self, rule: str) -> OpeningState:
        """Return the state that a rule wants."""
        return dict(self.wanted)[rule]


@cache
def shipped_openings() -> tuple[tuple[Opening, ...], tuple[tuple[str, str], ...]]:
    """Return all openings, and what is put back after every test as pairs of id and name."""
    tables = read_entries(shipped_text(__package__, "openings.toml"), "openings.toml", "opening", "restore")
    openings = []
    for fields in tables["opening"]:
        openings.append(
            Opening(
                id=fields.text("id"),
                name=fields.text("name"),
                wanted=tuple((rule, OpeningState(fields.choice(rule, tuple(OpeningState)))) for rule in RULES),
                restore=fields.text("restore"),
                not_at=tuple(stage for stage in fields.texts("not-at") if stage in USUAL_STAGES),
                provenance=take_provenance(fields),
            )
        )
        fields.finish()
    restore = []
    for fields in tables["restore"]:
        restore.append((fields.text("id"), fields.text("name")))
        fields.finish()
    refuse_doubles([item.id for item in openings] + [item for item, _ in restore], "openings.toml")
    return tuple(openings), tuple(restore)


def rule_for(plan: TestPlan) -> str:
    """Return the rule that a plan follows, a key of `RULES`."""
    if plan.method in ENVELOPE_METHODS:
        return "envelope"
    return BY_PREPARATION.get((plan.method, plan.preparation), "code")


def openings_for(plan: TestPlan) -> tuple[tuple[Opening, OpeningState], ...]:
    """Return every opening that the plan's stage has, with the state that its method wants."""
    rule, stage = rule_for(plan), usual_stage(plan.stage)
    return tuple((opening, opening.by(rule)) for opening in shipped_openings()[0] if stage not in opening.not_at)
