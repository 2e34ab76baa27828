"""What a job remembers of each stage, in memory, in its file and when a test is prepared without a window."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from acquisition.job import Job
from acquisition.kinds import TestKind
from acquisition.plan import TestPlan
from acquisition.preparation import Wishes, prepare
from acquisition.stages import StageGoals, at_stage, kept, stage_names
from analysis.errors import InvalidInput
from analysis.records import Limit
from drivers.clock import VirtualClock
from tests.acquisition.samples import AIR, BUILDING, RIG, START

PLAN = TestPlan(BUILDING, AIR)
OWN = Limit("stage", "n50_per_h", 1.5)
EARLY = StageGoals("shell closed", TestKind.FINDING, Limit("stage", "n50_per_h", 3.0), ("passive-house",), "envelope")


def test_a_stage_brings_back_what_held_there_and_a_new_one_keeps_what_holds() -> None:
    finished = replace(PLAN, stage="finished", limit=OWN)
    stages = kept((EARLY,), finished)
    early = at_stage(stages, finished, "shell closed")
    assert (early.kind, early.limit, early.published) == (TestKind.FINDING, EARLY.limit, ("passive-house",))
    assert at_stage(stages, early, "finished") == finished
    assert at_stage(stages, finished, "boards on") == replace(finished, stage="boards on")


def test_a_plan_without_a_stage_is_not_remembered() -> None:
    assert kept((EARLY,), PLAN) == (EARLY,)


def test_the_stages_of_the_job_come_before_the_usual_ones() -> None:
    assert stage_names((StageGoals("membrane up"), StageGoals("finished"))) == (
        "membrane up",
        "finished",
        "shell closed",
        "services in",
        "boards on",
    )


def test_stages_are_kept_in_the_file_changed_and_taken_away(tmp_path: Path) -> None:
    path = tmp_path / "j.airseam"
    job = Job.create(path, VirtualClock(START), "Mill Row 8")
    job.set_stages((EARLY, StageGoals("finished", limit=OWN), StageGoals("typo")))
    job.set_stages((EARLY, StageGoals("finished", TestKind.QUALITY, OWN)))
    job.close()
    again = Job.open(path, VirtualClock(START), read_only=True)
    assert again.stages == (EARLY, StageGoals("finished", TestKind.QUALITY, OWN))
    again.close()


def test_a_test_from_the_terminal_takes_and_gives_what_the_stage_remembers(tmp_path: Path) -> None:
    job = Job.create(tmp_path / "j.airseam", VirtualClock(START), "Mill Row 8")
    wishes = Wishes(kind=TestKind.FINDING, stage="shell closed", limit=OWN, place="US", zone="5")
    assert prepare(job, wishes, RIG, BUILDING, AIR).limits == (OWN,)
    assert prepare(job, Wishes(stage="finished", kind=TestKind.CODE), RIG, BUILDING, AIR).kind is TestKind.CODE
    assert prepare(job, Wishes(stage="shell closed"), RIG, BUILDING, AIR).kind is TestKind.FINDING
    assert (job.details.place, job.details.zone) == ("US", "5")
    with pytest.raises(InvalidInput, match="a zone of United States is needed"):
        prepare(job, Wishes(zone="99"), RIG, BUILDING, AIR)
    job.close()
