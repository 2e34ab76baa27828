"""How far a test had come when it was cut short, out of the job file: what is there, and what is still to be done."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from acquisition.job.records import LoadedRun, LoadedTest, RecordState
from acquisition.plan import TestPlan
from acquisition.points import REACHED_SHARE, Taken
from acquisition.progress import TAKEN_AGAIN, recorded_run
from acquisition.regimes import AFTER_STEP, BEFORE_STEP
from acquisition.rig import RigSpec
from acquisition.snapshot import PointState, PointView
from analysis.errors import InvalidInput
from analysis.records import Direction, ZeroFlow
from drivers.clock import NS_PER_S

SHORT_OF_PA = 3.0
"""By so much a target was missed where the fan did not reach it; a gust at a low target misses it by less."""


@dataclass(frozen=True, slots=True)
class Standing:
    """What an interrupted test has.

    `direction` is the one that was cut short, None between two; `before` and `taken` are its zero-flow record and its
    points. `following` are the directions after it. `since` is when the last reading came.
    """

    direction: Direction | None
    following: tuple[Direction, ...]
    before: ZeroFlow | None
    taken: tuple[Taken, ...]
    since: datetime
    fitted: tuple[str, ...]

    @property
    def words(self) -> str:
        """What is there."""
        if self.direction is None:
            return "one direction is complete"
        count = len(self.taken)
        return f"{count} point{'' if count == 1 else 's'} taken"


def standing_of(loaded: LoadedTest) -> Standing:
    """Return how far a test has come; raises `InvalidInput` for one that cannot go on, and says why."""
    record = loaded.record
    if record.state is RecordState.COMPLETE:
        raise InvalidInput("test", record.id, "it is complete: there is nothing to go on with")
    if record.plan.hold:
        raise InvalidInput("test", record.id, "a pressure was held: hold it again instead")
    if not loaded.runs:
        raise InvalidInput("test", record.id, "nothing had been read yet: start the test instead")
    last = loaded.runs[-1]
    done = {run.record.direction for run in loaded.runs if run.record.state is RecordState.COMPLETE}
    between = last.record.state is RecordState.COMPLETE
    ahead = [item for item in record.plan.directions if item not in done and item is not last.record.direction]
    since = last.record.ended or _last_reading(last)
    fitted = tuple(item.name for item in last.fitted(record.rig).now)
    if between:
        return Standing(None, tuple(ahead), None, (), since, fitted)
    before, taken = _had(last, record.plan, record.rig)
    return Standing(last.record.direction, tuple(ahead), before, taken, since, fitted)


def check_same_rig(earlier: RigSpec, now: RigSpec) -> None:
    """Raise `InvalidInput` where the rig is not that of the interrupted test: its points would not fit together."""

    def parts(spec: RigSpec) -> dict[str, object]:
        instruments = {(item.name, item.profile, item.channels, item.serial) for item in spec.instruments}
        return {"instruments": instruments, "fans": spec.fans, "flow ranges": spec.ranges, "shutter": spec.shutter} | {
            "corrections of gauges": spec.corrections
        }

    then = parts(earlier)
    other = [name for name, value in parts(now).items() if value != then[name]]
    if other:
        allowed = f"the test was begun with other {', '.join(other)}: connect those, or start a new test"
        raise InvalidInput("rig", now.name, allowed)


def _had(run: LoadedRun, plan: TestPlan, spec: RigSpec) -> tuple[ZeroFlow | None, tuple[Taken, ...]]:
    progress = recorded_run(run, plan, spec)
    before = progress.run.zero_before if progress.run is not None else None
    if before is None:
        return None, ()
    views = [view for view in progress.views if not _wanted_again(view)]
    return before, tuple(_taken(view, run.record.direction, before.mean_pa) for view in views)


def _wanted_again(view: PointView) -> bool:
    again = (TAKEN_AGAIN, BEFORE_STEP, AFTER_STEP)
    return view.state is PointState.STRUCK and view.struck_reason in again


def _taken(view: PointView, direction: Direction, zero_pa: float) -> Taken:
    target_pa = abs(view.target_pa)
    reached_pa = direction.sign * ((view.envelope_pa or 0.0) - zero_pa)
    short = reached_pa < min(REACHED_SHARE * target_pa, target_pa - SHORT_OF_PA)
    return Taken(target_pa, reached_pa, view.flow_m3_h or 0.0, short)


def _last_reading(run: LoadedRun) -> datetime:
    record, last_ns = run.record, run.data.last_ns
    ends = [item.end_ns for item in run.windows]
    latest_ns = max([record.started_ns, *ends, *([] if last_ns is None else [last_ns])])
    started = run.pieces[-1].record if run.pieces else record
    shift_ns = run.pieces[-1].shift_ns if run.pieces else 0
    return started.started + timedelta(seconds=(latest_ns - shift_ns - started.started_ns) / NS_PER_S)
