"""From the options of a test to what is wished for."""

from __future__ import annotations

import argparse
from dataclasses import replace

from acquisition import options as words
from acquisition.commands.printing import limits_of
from acquisition.kinds import TestKind
from acquisition.preparation import Wishes
from acquisition.told.verdicts import STAGE
from analysis.errors import InvalidInput
from analysis.records import Direction


def wishes_of(options: argparse.Namespace) -> Wishes:
    """Return what the options of a test ask for."""
    values = {name: value for name, value in vars(options).items() if value is not None}
    building = {name: values[name] for name in ("name", *words.BUILDING) if name in values}
    air = {name: values[name] for name in words.AIR if name in values}
    directions = None
    if options.direction is not None:
        directions = tuple(Direction) if options.direction == "both" else (Direction(options.direction),)
    own = limits_of([text for text in options.limit if "=" in text])
    published = limits_of([text for text in options.limit if "=" not in text])
    if len(own) > 1:
        raise InvalidInput("--limit", options.limit, "a stage has one limit of its own; others are named by their id")
    return Wishes(
        building=building,
        air=air,
        method=options.method,
        kind=None if options.kind is None else TestKind(options.kind),
        stage=options.stage,
        limit=replace(own[0], id=STAGE) if own else None,
        published=tuple(limit.id for limit in published),
        directions=directions,
        place=options.place,
        zone=options.zone,
        language=options.language,
        schedule=options.schedule,
        hose_check=options.hose_check,
    )


def check_resume(options: argparse.Namespace) -> None:
    """Raise `InvalidInput` where something is asked for that a test which goes on cannot have."""
    if options.resume and (wishes_of(options) != Wishes() or options.hold or not options.job.exists()):
        allowed = "a job file is needed, and nothing that changes the test: it goes on as it was begun"
        raise InvalidInput("--resume", str(options.job), allowed)
