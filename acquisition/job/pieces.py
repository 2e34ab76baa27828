"""The pieces of a run that was interrupted and gone on with, laid on one clock.

Each process has its own monotonic clock; the time of day at which each piece began says how far they lie apart.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from acquisition.job.records import FanRecord, LoadedRun, Piece, RunRecord
from drivers.clock import seconds

LEAST_GAP_NS = seconds(1.0)
"""However the time of day was set in between: what was read later comes later."""


def moved_to(run: LoadedRun, clock_of: RunRecord) -> LoadedRun:
    """Return a run on the clock of a later one that goes on with it."""
    apart = (run.record.started - clock_of.started) // timedelta(microseconds=1) * 1000
    shift_ns = clock_of.started_ns + apart - run.record.started_ns
    ends = [run.record.started_ns, *(item.end_ns for item in run.windows)]
    last_ns = max(*ends, run.data.last_ns or ends[0])
    shift_ns = min(shift_ns, clock_of.started_ns - LEAST_GAP_NS - last_ns)
    record = replace(
        run.record,
        started_ns=run.record.started_ns + shift_ns,
        ended_ns=None if run.record.ended_ns is None else run.record.ended_ns + shift_ns,
    )
    return LoadedRun(
        record=record,
        data=run.data.shifted(shift_ns),
        windows=tuple(
            replace(item, start_ns=item.start_ns + shift_ns, end_ns=item.end_ns + shift_ns) for item in run.windows
        ),
        fan=tuple(FanRecord(item.t_ns + shift_ns, item.fraction) for item in run.fan),
        changes=tuple(replace(item, t_ns=item.t_ns + shift_ns) for item in run.changes),
        pieces=tuple(replace(piece, shift_ns=piece.shift_ns + shift_ns) for piece in _pieces(run)),
    )


def joined(earlier: LoadedRun, later: LoadedRun) -> LoadedRun:
    """Return a run and the one that goes on with it as one, on the clock of the later one."""
    moved, last = moved_to(earlier, later.record), later.record
    moved.data.extend(later.data)
    return LoadedRun(
        record=replace(
            moved.record, id=last.id, state=last.state, ended=last.ended, ended_ns=last.ended_ns, digest=last.digest
        ),
        data=moved.data,
        windows=(*moved.windows, *later.windows),
        fan=(*moved.fan, *later.fan),
        changes=(*moved.changes, *later.changes),
        pieces=(*moved.pieces, *_pieces(later)),
    )


def joined_all(runs: Sequence[LoadedRun]) -> tuple[LoadedRun, ...]:
    """Return the runs of a test, each with all that it goes on with; oldest first."""
    whole: dict[int, LoadedRun] = {}
    for run in runs:
        earlier = whole.pop(run.record.continues, None) if run.record.continues is not None else None
        whole[run.record.id] = run if earlier is None else joined(earlier, run)
    return tuple(whole.values())


def _pieces(run: LoadedRun) -> tuple[Piece, ...]:
    return run.pieces or (Piece(run.record),)
