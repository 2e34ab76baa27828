"""What a job remembers of each stage: kind of test, limits, state of the building. Nobody types them twice."""

from __future__ import annotations

from dataclasses import dataclass, replace

from acquisition.jsontext import table_of, unreadable
from acquisition.kinds import TestKind
from acquisition.languages import languages
from acquisition.plan import TestPlan
from analysis.records import Limit

USUAL_STAGES = ("shell closed", "services in", "boards on", "finished")
"""Stages at which a building is usually tested (common practice, no source)."""


def usual_stage(words: str) -> str:
    """Return which usual stage is named, in any language of the reports; empty where it is one of somebody's own."""
    named = " ".join(words.split()).casefold()
    for stage in USUAL_STAGES:
        if any(named == language.say(stage).casefold() for language in languages()):
            return stage
    return ""


@dataclass(frozen=True, slots=True)
class StageGoals:
    """What holds at one stage. `limit` is the stage's own, `published` are ids of limits of codes and programmes."""

    stage: str
    kind: TestKind = TestKind.CODE
    limit: Limit | None = None
    published: tuple[str, ...] = ()
    preparation: str = ""


Stages = tuple[StageGoals, ...]
"""In the order in which they were first met, each stage once."""


def goals_of(plan: TestPlan) -> StageGoals:
    """Return what the plan says about its stage."""
    return StageGoals(plan.stage, plan.kind, plan.limit, plan.published, plan.preparation)


def kept(stages: Stages, plan: TestPlan) -> Stages:
    """Return the stages with what the plan says about its own; a plan without a stage changes nothing."""
    if not plan.stage:
        return stages
    goals = goals_of(plan)
    if any(item.stage == plan.stage for item in stages):
        return tuple(goals if item.stage == plan.stage else item for item in stages)
    return (*stages, goals)


def at_stage(stages: Stages, plan: TestPlan, stage: str) -> TestPlan:
    """Return the plan at another stage, with what is remembered of it; a new stage keeps what holds now."""
    goals = next((item for item in stages if item.stage == stage), None)
    if goals is None:
        return replace(plan, stage=stage)
    return replace(
        plan,
        stage=stage,
        kind=goals.kind,
        limit=goals.limit,
        published=goals.published,
        preparation=goals.preparation,
    )


def stage_names(stages: Stages) -> tuple[str, ...]:
    """Return the stages to choose from: those of the job, then the usual ones."""
    return tuple(dict.fromkeys((*(item.stage for item in stages), *USUAL_STAGES)))


def goals_from(text: str) -> StageGoals:
    """Read what the job file keeps of a stage; raises `InvalidInput`."""
    table = table_of("stage", text)
    try:
        limit = table.pop("limit")
        return StageGoals(
            kind=TestKind(table.pop("kind")),
            limit=None if limit is None else Limit(**limit),
            published=tuple(str(item) for item in table.pop("published")),
            **table,
        )
    except (KeyError, TypeError, ValueError) as error:
        raise unreadable("stage", error) from error
