"""Taking up a test of a job that was cut short."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from acquisition.job import Job, RecordState, TestRecord
from acquisition.plan import TestPlan
from acquisition.rig import RigSpec
from acquisition.setup import gate_of, obeying
from acquisition.standing import Standing, check_same_rig, standing_of
from analysis.errors import InvalidInput
from analysis.records import Direction


@dataclass(frozen=True, slots=True)
class TakenUp:
    """A test that goes on after it was cut short: its number, its plan as the safety answers now allow it."""

    number: int
    plan: TestPlan
    standing: Standing


def cut_short(job: Job) -> TestRecord | None:
    """Return the newest test of a job where it was cut short and did not only hold a pressure."""
    tests = job.tests()
    if not tests or tests[-1].state in (RecordState.COMPLETE, RecordState.RECORDING) or tests[-1].plan.hold:
        return None
    return tests[-1]


def take_up(job: Job, spec: RigSpec, now: datetime) -> TakenUp:
    """Return how to go on with the newest test of a job on a rig.

    Raises `InvalidInput` where it was not cut short, where the rig is another one, and where the safety answers of
    today forbid what is left of it.
    """
    record = cut_short(job)
    if record is None:
        allowed = "its newest test has to be one that was cut short: there is nothing to go on with"
        raise InvalidInput("job file", str(job.path), allowed)
    loaded = job.load(record.id)
    standing = standing_of(loaded)
    check_same_rig(record.rig, spec)
    plan = obeying(record.plan, gate_of(job.house.entries, now))
    ahead = {standing.direction, *standing.following}
    if plan.pressurize_only and Direction.DEPRESSURIZE in ahead:
        allowed = "the safety answers now allow to pressurize only; the rest of this test depressurizes"
        raise InvalidInput("safety", None, allowed, shown="pressurize only")
    return TakenUp(record.id, replace(plan, directions=record.plan.directions), standing)
