"""The command on the points of a test: a list with every strike, one more or its end, another flow range."""

from __future__ import annotations

import argparse

from acquisition.commands.printing import display_of, show
from acquisition.commands.status import VALID
from acquisition.job import Job, LoadedTest
from acquisition.progress import recorded_run
from acquisition.rangefit import suggestions
from acquisition.snapshot import PointState, PointView
from acquisition.testfile import chosen, is_job
from acquisition.told.table import Row, Table, Tone
from analysis.errors import InvalidInput
from analysis.units import Display, Quantity, format_value, unit_symbol
from drivers.clock import WallClock

AS_ENTERED = "as-entered"


def points(options: argparse.Namespace) -> int:
    """Strike or restore a point, or correct its flow range, where asked; list the points of a test."""
    if not is_job(options.file):
        raise InvalidInput("file", str(options.file), "a job is needed: only its points can be struck and restored")
    if options.strike is not None and options.restore is not None:
        raise InvalidInput("points", "--strike and --restore", "one of them at a time", shown="asked for both")
    if (options.range is None) != (options.of is None):
        raise InvalidInput("points", "--range and --of", "a flow range and the points that it is for are needed")
    changes = any(item is not None for item in (options.strike, options.restore, options.range))
    job = Job.open(options.file, WallClock(), read_only=not changes)
    try:
        number = chosen(job, options.test)
        if options.strike is not None:
            job.strike(number, options.strike, options.reason or "")
        if options.restore is not None:
            job.restore(number, options.restore)
        if options.range is not None:
            name = "" if options.range == AS_ENTERED else options.range
            job.correct_range(number, options.of, name, options.fan - 1)
        loaded = job.load(number)
    finally:
        job.close()
    for table in _tables(loaded, display_of(options.units)):
        show(table)
    return VALID


def _tables(loaded: LoadedTest, display: Display) -> list[Table]:
    flow = f"Flow {unit_symbol(Quantity.FLOW, display)}"
    record = loaded.record
    return [
        Table(
            f"Points, {run.record.direction}",
            ("Point", "Target Pa", "Mean Pa", flow, "Time s"),
            tuple(_row(view, display) for view in taken.views),
            tuple(item.sentence for item in suggestions(taken.views, taken.zero_pa, record.rig.ranges)),
            empty="No point has been taken.",
        )
        for run in loaded.runs
        for taken in (recorded_run(run, record.plan, record.rig),)
    ]


def _row(view: PointView, display: Display) -> Row:
    struck = view.state is PointState.STRUCK
    cells = (
        str(view.window),
        format_value(view.target_pa, Quantity.PRESSURE, display, 0),
        "" if view.envelope_pa is None else format_value(view.envelope_pa, Quantity.PRESSURE, display),
        "" if view.flow_m3_h is None else format_value(view.flow_m3_h, Quantity.FLOW, display),
        "" if view.seconds is None else f"{view.seconds:.0f}",
    )
    words = [f"Struck: {view.struck_reason}." if struck else "", view.corrected_words]
    return Row(cells, " ".join(filter(None, words)), Tone.BAD if struck else Tone.PLAIN)
