"""The command on leaks: what a held run shows, the register, what is left."""

from __future__ import annotations

import argparse
from dataclasses import replace
from typing import Any

from acquisition.commands.printing import display_of, show
from acquisition.commands.status import VALID
from acquisition.job import Job
from acquisition.sealing.held import HeldLook, held_look
from acquisition.sealing.leaks import HowFound, Leak, LeakStatus
from acquisition.told.sealing import held_table, leak_table, remaining_table
from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.sealing.parts import part_of
from analysis.sealing.remaining import OpenLeak, guessed, remaining
from analysis.sealing.unrest import Windows
from drivers.clock import WallClock

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
            way = remaining(_flow_now(look), options.target, _open_leaks(job))
            show(remaining_table(way, register.leaks, display))
    finally:
        job.close()
    return VALID


def last_held(job: Job) -> HeldLook | None:
    """Return what the newest run shows in which a pressure was held, None without one."""
    for record in reversed(job.tests()):
        if not record.plan.hold:
            continue
        plan = record.plan
        for run in reversed(job.load(record.id).runs):
            found = held_look(
                run.record.direction, plan.targets_pa[0], run.record.air, run.data, run.windows,
                record.rig.fitted_ranges, plan.building, job.leaks.marks,
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


def _open_leaks(job: Job) -> list[OpenLeak]:
    """Return the leaks that are not sealed and whose size somebody guessed."""
    return [
        OpenLeak(number, guessed(leak.size_guess_m3_h), part_of(leak.part).sealable and leak.status is LeakStatus.FOUND)
        for number, leak in job.leaks.leaks.items()
        if leak.size_guess_m3_h and leak.status in (LeakStatus.FOUND, LeakStatus.LEFT)
    ]


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
