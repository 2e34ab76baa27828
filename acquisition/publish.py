"""Makes the snapshot that everybody else sees out of what the engine's loop knows."""

from __future__ import annotations

from dataclasses import dataclass

from acquisition.bench import SMOOTHING_S, Bench, live_flow_m3_h
from acquisition.execution import Executor
from acquisition.live import LiveBuffer
from acquisition.openrig import OpenRig
from acquisition.rig import Role
from acquisition.sentences import idle_sentence, running_sentence
from acquisition.snapshot import Activity, EngineState, PointState, PointView, RunView, Snapshot, WindowView
from acquisition.steps import Ask, WindowKind
from analysis.records import Air
from drivers.clock import NS_PER_S, Clock
from drivers.instrument import LinkState


@dataclass(frozen=True, slots=True)
class LoopView:
    """What the engine's loop hands over for a snapshot."""

    state: EngineState
    bench: Bench | None
    executor: Executor | None
    ask: Ask | None
    paused_reason: str
    last_error: str
    order: str = ""
    """What a person at the knob of the fan is asked to do where no step says it."""


class Publisher:
    """Makes snapshots."""

    def __init__(self, rig: OpenRig, clock: Clock, live: LiveBuffer) -> None:
        """Know where to look."""
        self.air: Air | None = None
        self._rig = rig
        self._clock = clock
        self._live = live

    def snapshot(self, now_ns: int, view: LoopView) -> Snapshot:
        """Return the state of everything now."""
        bench = view.bench
        progress = bench.progress if bench is not None else None
        current = progress.current if progress is not None else None
        window = current.open_window if current is not None else None
        activity = view.executor.activity if view.executor is not None else Activity.NONE
        total_s = view.executor.total_s if view.executor is not None else None
        elapsed_s = 0.0 if window is None else (now_ns - window.start_ns) / NS_PER_S
        links = self._rig.statuses()
        air = progress.plan.air if progress is not None else self.air
        direction = bench.direction if bench is not None else None
        running = running_sentence(
            activity,
            kind=window.kind if window is not None else None,
            target_pa=bench.target_pa if bench is not None else None,
            elapsed_s=elapsed_s,
            total_s=total_s,
            saturated=bench is not None and bench.controller.saturated,
            held=bench.held if bench is not None else None,
        )
        words = {
            EngineState.IDLE: idle_sentence(
                linked=bool(links) and all(link.state is LinkState.LINKED for link in links),
                complete=progress is not None and progress.ended == "complete",
                stopped=progress is not None and progress.ended in ("stopped", "faulted"),
            ),
            EngineState.ASKING: view.ask.text if view.ask is not None else "",
            EngineState.PAUSED: view.paused_reason,
            EngineState.RUNNING: getattr(view.executor, "words", "") or running,
        }
        return Snapshot(
            now_ns=now_ns,
            utc=self._clock.utc(),
            state=view.state,
            sentence=view.last_error or words[view.state] if view.state is EngineState.IDLE else words[view.state],
            activity=activity,
            activity_s=elapsed_s,
            activity_total_s=total_s,
            direction=direction,
            target_pa=bench.target_pa if bench is not None else None,
            zero_pa=bench.zero_pa if bench is not None else None,
            envelope_pa=self._live.mean(Role.ENVELOPE, SMOOTHING_S, now_ns),
            flow_m3_h=live_flow_m3_h(self._live, self._rig.spec, air, direction, now_ns),
            fan_fraction=bench.controller.command if bench is not None else 0.0,
            ask=view.ask,
            paused_reason=view.paused_reason,
            links=links,
            recording=progress.recorder.recording() if current is not None and progress is not None else None,
            runs=() if bench is None else run_views(bench, self._averaging(bench, window, now_ns)),
            windows=() if progress is None else progress.windows(),
            flags=() if progress is None else tuple(progress.flags),
            test=None if progress is None else progress.test,
            result=None if progress is None else progress.result,
            result_gap="" if progress is None else progress.result_gap,
            last_error=view.last_error,
            held=bench.held if bench is not None and activity is Activity.HOLD else None,
            hold_pa=bench.hold_pa if bench is not None and view.state is not EngineState.IDLE else None,
            hand=str(getattr(view.executor, "order", "")) or view.order,
            typing=getattr(view.executor, "wanted", ()) if view.state is EngineState.RUNNING else (),
            outlook=None if progress is None else progress.outlook,
        )

    def _averaging(self, bench: Bench, window: WindowView | None, now_ns: int) -> PointView | None:
        """Return the row of the point that is being averaged, with its running means."""
        if window is None or window.kind is not WindowKind.POINT or window.target_pa is None:
            return None
        seconds = (now_ns - window.start_ns) / NS_PER_S
        flow = None
        if seconds > 0:
            flow = live_flow_m3_h(self._live, self._rig.spec, bench.progress.plan.air, bench.direction, now_ns, seconds)
        return PointView(
            target_pa=window.target_pa,
            state=PointState.AVERAGING,
            envelope_pa=self._live.mean(Role.ENVELOPE, seconds, now_ns) if seconds > 0 else None,
            flow_m3_h=flow,
            seconds=seconds,
        )


def run_views(bench: Bench, averaging: PointView | None) -> tuple[RunView, ...]:
    """Return the runs for the screen: points taken and struck, the one being averaged, and those to come."""
    progress = bench.progress
    views = []
    for item in progress.runs:
        points = list(item.views)
        if item is progress.current:
            to_come = [PointView(target, PointState.PENDING) for target in bench.targets_pa[len(points) :]]
            if averaging is not None:
                to_come[:1] = [averaging]
            points += to_come
        before = item.run.zero_before if item.run is not None else None
        after = item.run.zero_after if item.run is not None else None
        views.append(
            RunView(
                direction=item.direction,
                points=tuple(points),
                zero_before_pa=before.mean_pa if before is not None else None,
                zero_after_pa=after.mean_pa if after is not None else None,
                complete=item.complete,
            )
        )
    return tuple(views)
