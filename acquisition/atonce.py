"""Steps that end at once: they note something, or change what the next steps work with."""

from __future__ import annotations

from dataclasses import replace
from typing import assert_never

from acquisition.bench import Bench
from acquisition.execution import Done
from acquisition.rig import Role
from acquisition.snapshot import Activity
from acquisition.steadiness import spread_of_means
from acquisition.steps import (
    BeginRun,
    EndRun,
    FitRange,
    Foretell,
    GoTo,
    Heard,
    Listen,
    Mark,
    SetTargets,
    StrikeLast,
    WindowKind,
)
from acquisition.vigil import Vigil
from drivers.clock import NS_PER_S


class Immediately:
    """Carries out such a step."""

    activity = Activity.NONE
    total_s: float | None = None

    def __init__(
        self, step: BeginRun | EndRun | Foretell | SetTargets | GoTo | Mark | FitRange | Listen | StrikeLast
    ) -> None:
        """Keep the step."""
        self._step = step

    def elapsed_s(self, now_ns: int) -> float:
        """Take no time."""
        return 0.0

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Do it."""
        match self._step:
            case BeginRun():
                _begin(bench, self._step, now_ns)
            case EndRun():
                bench.progress.end_run("complete", now_ns)
            case Foretell(outlook):
                bench.progress.foretell(outlook, now_ns)
            case SetTargets(targets):
                taken = bench.progress.points_taken()
                done = (*bench.targets_pa, *(0.0,) * taken)[:taken]
                bench.targets_pa = (*done, *targets)
            case GoTo(target):
                bench.target_pa = target
                bench.vigil.new_target()
                bench.controller.aim(abs(target), bench.induced_now(now_ns) or 0.0)
            case Mark():
                bench.progress.mark(self._step.kind, self._step.text, now_ns, notable=self._step.notable)
            case FitRange(fan, name):
                fit(bench, fan, name, now_ns)
            case Listen():
                again, bench.again_pa = tuple(bench.again_pa), []
                return Done(Heard(again, bench.rig.spec.fitted_ranges.now))
            case StrikeLast(reason):
                current = bench.progress.current
                if current is not None and current.windows:
                    bench.progress.strike(current.windows[-1].id, reason)
            case _ as unreachable:
                assert_never(unreachable)
        return Done()


def fit(bench: Bench, fan: int, name: str, now_ns: int) -> None:
    """Take it as done that another flow range is fitted: every reading from now on is converted by it."""
    bench.rig.fit(fan, name)
    bench.progress.keep_fitted(bench.rig.spec, now_ns)
    bench.vigil.fit(bench.rig.spec.fitted)
    # Another plate in the way of the air: what the fan needs for a pressure has to be learned anew.
    bench.controller.forget()


def _begin(bench: Bench, step: BeginRun, now_ns: int) -> None:
    bench.direction, bench.zero_pa, bench.targets_pa = step.direction, None, ()
    bench.target_pa = None
    bench.asked.clear()
    bench.declined.clear()
    bench.line.clear()
    fitted = bench.rig.spec
    bench.vigil = Vigil(ranges=fitted.ranges, fitted=fitted.fitted)
    bench.rig.set_direction(step.direction)
    bench.progress.begin_run(step.direction, now_ns, continues=step.continues)
    bench.progress.keep_fitted(bench.rig.spec, now_ns)
    if step.continues:
        _recall(bench)


def _recall(bench: Bench) -> None:
    """Know again what the points before the interruption had shown."""
    current = bench.progress.current
    if current is None or current.run is None or current.run.zero_before is None:
        return
    bench.zero_pa = current.run.zero_before.mean_pa
    zeros = [item for item in current.windows if item.kind is WindowKind.ZERO_BEFORE]
    times_ns, values = current.data.slice(Role.ENVELOPE, zeros[-1].start_ns, zeros[-1].end_ns)
    wind_pa = spread_of_means((times_ns - zeros[-1].start_ns) / NS_PER_S, values)
    bench.controller.know(replace(bench.controller.plant, wind_spread_pa=wind_pa))
    bench.vigil.wind(wind_pa)
    bench.learn_line()
