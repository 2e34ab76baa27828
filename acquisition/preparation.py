"""A test prepared without a window: the job's draft, what the rig's site knows, and what a person asked for."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from acquisition.job import Job
from acquisition.kinds import TestKind
from acquisition.languages import ENGLISH, language_of
from acquisition.plan import TestPlan
from acquisition.rig import RigSpec, Role
from acquisition.stages import at_stage, kept
from analysis.errors import InvalidInput
from analysis.limits import shipped_limits
from analysis.methods import method_of
from analysis.records import Air, Building, Direction, Limit

ON_COMMAND_LINE = "so it was asked on the command line"


@dataclass(frozen=True, slots=True)
class Wishes:
    """What a person asked for; what is None or absent stays as it was prepared.

    `building` and `air` hold values by the names of the fields of those records.
    """

    building: Mapping[str, Any] = field(default_factory=dict)
    air: Mapping[str, Any] = field(default_factory=dict)
    method: str | None = None
    kind: TestKind | None = None
    stage: str | None = None
    limit: Limit | None = None
    published: tuple[str, ...] = ()
    directions: tuple[Direction, ...] | None = None
    place: str | None = None
    zone: str | None = None
    language: str | None = None
    schedule: str | None = None
    hose_check: bool | None = None


def prepare(
    job: Job, wishes: Wishes, spec: RigSpec, building: Building | None = None, air: Air | None = None
) -> TestPlan:
    """Return the plan of a test, which becomes the job's draft.

    `building` and `air` are what is known of the site; a job that was prepared before keeps its own. Raises
    `InvalidInput` for a method that there is not, and for a temperature that nobody gave and nothing measures.
    """
    _note_details(job, wishes)
    draft = job.draft()
    prepared = job.building is not None
    if air is None and not prepared:
        _check_air(wishes, spec)
    known = draft.building if prepared or building is None else building
    weather = draft.air if prepared or air is None else air
    if wishes.method is not None and method_of(wishes.method).id != draft.method:
        draft = draft.by_method(wishes.method)
    if wishes.stage is not None:
        draft = at_stage(job.stages, draft, wishes.stage)
    plan = replace(
        draft,
        building=replace(known, **wishes.building),
        air=replace(weather, **wishes.air),
        kind=wishes.kind or draft.kind,
        limit=wishes.limit or draft.limit,
        published=wishes.published or draft.published,
        directions=wishes.directions or draft.directions,
        hose_check=draft.hose_check if wishes.hose_check is None else wishes.hose_check,
        hose_check_reason=_reason(draft, wishes),
    )
    if wishes.schedule is not None:
        plan = plan.on_schedule(wishes.schedule)
    if plan.building != job.building:
        job.add_building(plan.building, "as given for an automatic test")
    job.set_stages(kept(job.stages, plan))
    job.set_draft(plan)
    return plan


def _note_details(job: Job, wishes: Wishes) -> None:
    """Keep where the codes come from and what reports are written in.

    Raises `InvalidInput` for a place, a climate zone or a language that is not known; then nothing is kept.
    """
    details = job.details
    if wishes.language is not None:
        spoken = language_of(wishes.language, "--language")
        details = replace(details, language="" if spoken is ENGLISH else spoken.tag)
    if wishes.place is not None or wishes.zone is not None:
        place = shipped_limits().place(details.place if wishes.place is None else wishes.place)
        if wishes.zone is not None and wishes.zone not in place.zones:
            known = ", ".join(place.zones) or "there are none"
            raise InvalidInput("--zone", wishes.zone, f"a zone of {place.title} is needed: {known}")
        details = replace(details, place=place.id, zone=wishes.zone or "")
    if details != job.details:
        job.edit_details(details)


def _check_air(wishes: Wishes, spec: RigSpec) -> None:
    measured = spec.role_channels()
    for name, role in (("indoor_c", Role.INDOOR), ("outdoor_c", Role.OUTDOOR)):
        if name not in wishes.air and role not in measured:
            raise InvalidInput(name, None, "this temperature is needed, and the rig does not measure it")


def _reason(draft: TestPlan, wishes: Wishes) -> str:
    """Return why the hoses are not checked."""
    if wishes.hose_check is None:
        return draft.hose_check_reason
    return "" if wishes.hose_check else ON_COMMAND_LINE
