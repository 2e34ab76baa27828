"""The command on stages: all tests of a job, and what lies between two of them."""

from __future__ import annotations

import argparse

from acquisition.commands.printing import display_of, show
from acquisition.commands.status import VALID
from acquisition.job import Job
from acquisition.told.stages import between_tables, site_note, site_notes, stage_table, stage_tests
from analysis.errors import InvalidInput
from drivers.clock import WallClock


def stages(options: argparse.Namespace) -> int:
    """List the tests of a job against their targets; hold two of them beside each other where there are two."""
    clock = WallClock()
    job = Job.open(options.file, clock, read_only=options.note is None)
    try:
        display = display_of(options.units)
        tests = stage_tests(job.tests())
        numbers = [test.record.id for test in tests]
        after = _chosen(options.after, numbers, numbers[-1:], "--after")
        if options.note is not None:
            if after is None:
                raise InvalidInput("--note", options.note, "a test with a result is needed for it")
            job.edit_house().note(site_note(after, options.note, clock.utc(), job.details.tester))
        show(stage_table(tests, site_notes(job.house.entries), display))
        earlier = [number for number in numbers if after is not None and number < after]
        before = _chosen(options.before, numbers, earlier[-1:], "--before")
        if before is not None and after is not None:
            for table in between_tables(job, before, after, display):
                show(table)
    finally:
        job.close()
    return VALID


def _chosen(wished: int | None, numbers: list[int], usual: list[int], field: str) -> int | None:
    if wished is None:
        return usual[0] if usual else None
    if wished not in numbers:
        known = ", ".join(map(str, numbers)) or "none yet"
        raise InvalidInput(field, wished, f"the number of a test with a result is needed, there are: {known}")
    return wished
