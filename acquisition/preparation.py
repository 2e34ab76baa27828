"""A test prepared without a window: the job's draft, what the rig's site knows, and what a person asked for."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from acquisition.job import Job
from acquisition.plan import TestPlan
from acquisition.rig import RigSpec, Role
from analysis.errors import InvalidInput
from analysis.methods import method_of
from analysis.records import Air, Building, Direction


@dataclass(frozen=True, slots=True)
class Wishes:
    """What a person asked for; what is None or absent stays as it was prepared.

    `building` and `air` hold values by the names of the fields of those records.
    """

    building: Mapping[str, Any] = field(default_factory=dict)
    air: Mapping[str, Any] = field(default_factory=dict)
    method: str | None = None
    stage: str | None = None
    directions: tuple[Direction, ...] | None = None
    schedule: str | None = None
    hose_check: bool | None = None


def prepare(
    job: Job, wishes: Wishes, spec: RigSpec, building: Building | None = None, air: Air | None = None
) -> TestPlan:
    """Return the plan of a test, which becomes the job's draft.

    `building` and `air` are what is known of the site; a job that was prepared before keeps its own. Raises
    `InvalidInput` for a method that there is not, and for a temperature that nobody gave and nothing measures.
    """
    draft = job.draft()
    prepared = job.building is not None
    if air is None and not prepared:
        _check_air(wishes, spec)
    known = draft.building if prepared or building is None else building
    weather = draft.air if prepared or air is None else air
    if wishes.method is not None and method_of(wishes.method).id != draft.method:
        draft = draft.by_method(wishes.method)
    plan = replace(
        draft,
        building=replace(known, **wishes.building),
        air=replace(weather, **wishes.air),
        stage=draft.stage if wishes.stage is None else wishes.stage,
        directions=wishes.directions or draft.directions,
        hose_check=draft.hose_check if wishes.hose_check is None else wishes.hose_check,
    )
    if wishes.schedule is not None:
        plan = plan.on_schedule(wishes.schedule)
    if plan.building != job.building:
        job.add_building(plan.building, "as given for an automatic test")
    job.set_draft(plan)
    return plan


def _check_air(wishes: Wishes, spec: RigSpec) -> None:
    measured = spec.role_channels()
    for name, role in (("indoor_c", Role.INDOOR), ("outdoor_c", Role.OUTDOOR)):
        if name not in wishes.air and role not in measured:
            raise InvalidInput(name, None, "this temperature is needed, and the rig does not measure it")
