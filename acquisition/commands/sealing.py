"""The command on leaks: what a held run shows, the register, what is left."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from contextlib import AbstractContextManager, nullcontext
from dataclasses import replace
from typing import Any

from acquisition.commands.printing import display_of, show
from acquisition.commands.status import VALID
from acquisition.engine import Engine
from acquisition.job import Job
from acquisition.sealing.dictated import dictated
from acquisition.sealing.held import HeldLook, held_look
from acquisition.sealing.leaks import HowFound, Leak, LeakStatus
from acquisition.sealing.session import last_exponent
from acquisition.sealing.way import way_of
from acquisition.snapshot import Snapshot
from acquisition.told.sealing import held_table, leak_table
from acquisition.told.way import way_tables
from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.sealing.unrest import Windows
from drivers.clock import Clock, WallClock

LAST_S = 60


def leaks(options: argparse.Namespace) -> int:
    """Add or change a leak where asked; show what the last held run tells, the leaks, and what is left."""
    changes = options.add is not None or options.change is not None
    if options.add is not None and options.change is not None:
        raise InvalidInput("leaks", "--add and --change", "one of them at a time is needed", shown="asked for both")
    job = Job.open(options.file, WallClock(), read_only=not changes)
    try:
        if changes:
            _edit(job, options)
        display = display_of(options.units)
        look = last_held(job)
        if look is not None:
            show(held_table(look, display))
        register = job.leaks
        show(leak_table(register.leaks, register.drops, display))
        if options.target is not None:
            way = way_of(options.target, _flow_now(look), register.leaks, register.drops, last_exponent(job))
            for table in way_tables(way, register.leaks, display):
                show(table)
    finally:
        job.close()
    return VALID


def marked(
    options: argparse.Namespace, job: Job, engine: Engine, clock: Clock, watch: Callable[[Snapshot], None]
) -> AbstractContextManager[Callable[[Snapshot], None]]:
    """Take marks of a held pressure from standard input where asked for; gives `watch` that looks each moment too."""
    if not options.marks:
        return nullcontext(watch)
    return dictated(job, engine, clock, display_of(options.units), watch)


def last_held(job: Job) -> HeldLook | None:
    """Return what the newest run shows in which a pressure was held, None without one."""
    for record in reversed(job.tests()):
        if not record.plan.hold:
            continue
        plan = record.plan
        for run in reversed(job.load(record.id).runs):
            begun, ended = run.record.started, run.record.ended
            marks = [item for item in job.leaks.marks if begun <= item.utc and (ended is None or item.utc <= ended)]
            found = held_look(
                run.record.direction, plan.targets_pa[0], run.record.air, run.data, run.windows,
                run.fitted(record.rig), plan.building, marks,
            )  # fmt: skip
            if found is not None:
                return found
    return None


def _edit(job: Job, options: argparse.Namespace) -> None:
    utc = WallClock().utc()
    names = ("storey", "side", "room", "note", "trade", "material", "minutes", "cost", "size_guess_m3_h")
    given: dict[str, Any] = {name: value for name in names if (value := getattr(options, name)) is not None}
    if options.status is not None:
        given["status"] = LeakStatus(options.status)
    if options.found_by is not None:
        given["found_by"] = HowFound(options.found_by)
    register = job.edit_leaks()
    if options.add is not None:
        register.add(Leak(options.add, **given), utc)
        return
    known = register.leaks.get(options.change)
    if known is None:
        numbers = ", ".join(map(str, register.leaks)) or "none yet"
        raise InvalidInput("--change", options.change, f"the number of a leak is needed, there are: {numbers}")
    register.change(options.change, replace(known, **given), utc)


def _flow_now(look: HeldLook | None) -> Estimate:
    """Return the flow at 50 Pa at the end of a held run."""
    if look is None or look.unrest is None:
        raise InvalidInput("--target", None, "a run in which a pressure was held is needed", shown="without a flow")
    last = look.trace.between(look.trace.end_s - LAST_S, look.trace.end_s)
    if not len(last):
        raise InvalidInput("--target", None, "the pressure has to be held up to the end", shown="without a flow")
    to_50 = (50.0 / look.levelling.reference_pa) ** look.levelling.exponent
    half = look.unrest.limit_m3_h(Windows(LAST_S, LAST_S), 0.95)
    value = float(last.mean())
    return Estimate(value * to_50, (value - half) * to_50, (value + half) * to_50)
