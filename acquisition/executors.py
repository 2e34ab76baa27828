"""How each step is carried out, one tick at a time. An executor never waits: it is asked again at the next tick."""

from __future__ import annotations

from collections import deque
from dataclasses import replace
from typing import assert_never

from acquisition.atonce import Immediately
from acquisition.bench import Bench
from acquisition.execution import Done, Executor, Retake
from acquisition.leakline import TYPICAL_EXPONENT
from acquisition.rig import Role
from acquisition.sentences import pressure
from acquisition.snapshot import Activity, HeldView, Severity
from acquisition.steadiness import settled, spread_of_means
from acquisition.steps import (
    Approach,
    Ask,
    Average,
    BeginRun,
    CheckHoses,
    Checkpoint,
    EndRun,
    FitRange,
    Foretell,
    GoTo,
    Hold,
    Listen,
    Mark,
    MeasureZero,
    PlayUntil,
    SetTargets,
    Settle,
    Step,
    StopFan,
    StrikeLast,
    WindowKind,
)
from analysis.statistics import standard_error_of_mean
from drivers.clock import NS_PER_S, seconds

APPROACH_SHARE = 0.3
APPROACH_HOLD_S = 2.0
APPROACH_LIMIT_S = 60.0
BLIND_SPEED, BLIND_PA = 0.35, 2.0
"""A fan that shows no pressure at this speed is not raised further: in a tight house with a hose off it would burst."""
REST_SPEED = 0.02
REST_SHORTEST_S = 3.0
REST_LONGEST_S = 10.0
CALM_DOWN_LONGEST_S = 30.0
CALM_DOWN_SLOPE_PA_S = 0.15
LATE_READING_S = 0.8
"""A gauge that averages for a second gives readings that are half a second old."""
SILENT_S = 1.0
CHASED_SHARE, LEAST_EXPECTED_PA = 0.5, 8.0
MOST_RETAKES = 3
"""What stays as it became is no passing disturbance: after so many times the point is taken as it is."""
MORE_S = 5.0
"""By how much an averaging that is not good enough yet is made longer."""
FEWEST_READINGS = 20
HELD_MEAN_S = 20
"""Seconds over which the leakage at a held pressure is averaged."""
MOVING_AIR_SHARE = 0.05
"""Share of the flow before the stop above which the fan is not at rest, whatever its drive says,"""
WIND_THROUGH = 2.0
"""unless wind moved half as much through it while it rested before."""


class Timed:
    """Remembers when it was first asked."""

    activity = Activity.NONE
    total_s: float | None = None

    def __init__(self) -> None:
        """Has not been asked yet."""
        self._start_ns: int | None = None

    def elapsed_s(self, now_ns: int) -> float:
        """Return the time since the first tick."""
        if self._start_ns is None:
            self._start_ns = now_ns
        return (now_ns - self._start_ns) / NS_PER_S


class ZeroReading(Timed):
    """Waits until the building has come to rest, then reads the zero-flow pressure."""

    activity = Activity.ZERO

    def __init__(self, step: MeasureZero) -> None:
        """Keep the step."""
        super().__init__()
        self._step = step
        self.total_s = step.seconds
        self._window_ns: int | None = None

    def elapsed_s(self, now_ns: int) -> float:
        """Return how much of the record there is."""
        return 0.0 if self._window_ns is None else (now_ns - self._window_ns) / NS_PER_S

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Wait for rest, then for the record to be full."""
        waited_s = super().elapsed_s(now_ns)
        bench.controller.rest()
        bench.target_pa = None
        if self._window_ns is None:
            now = bench.induced_trend(now_ns)
            calm = now is not None and now.span_s > 2.5 and abs(now.slope_pa_s) < CALM_DOWN_SLOPE_PA_S
            if _silent(bench, now_ns) or waited_s < REST_SHORTEST_S or not (calm or waited_s > CALM_DOWN_LONGEST_S):
                return None
            self._window_ns = now_ns
            bench.progress.open_window(self._step.kind, now_ns, None)
        if _silent(bench, now_ns):
            # A record with a hole in it is no record: it begins again when the gauge is back.
            bench.progress.drop_open_window()
            bench.progress.flag("gauge-silent", Severity.ATTENTION, "The gauge went silent; the record begins again.")
            self._window_ns = None
            return None
        end_ns = self._window_ns + seconds(self._step.seconds)
        if not _arrived(bench, end_ns, now_ns):
            return None
        zero = bench.progress.close_zero(self._step.kind, self._window_ns, end_ns)
        if zero is None:
            self._window_ns = None
            return None
        if self._step.kind is WindowKind.ZERO_BEFORE:
            bench.zero_pa = zero.mean_pa
            times_ns, values = bench.live.since(Role.ENVELOPE, self._window_ns)
            wind_pa = spread_of_means(times_ns / NS_PER_S, values)
            bench.resting_m3_h = bench.flow_now(now_ns, self._step.seconds) or 0.0
            bench.controller.know(replace(bench.controller.plant, wind_spread_pa=wind_pa))
            bench.vigil.wind(wind_pa)
        return Done(zero)


class FirstApproach(Timed):
    """Raises the fan gently until the steady pressure at the present speed can be told."""

    activity = Activity.APPROACH

    def __init__(self, step: Approach) -> None:
        """Keep the step."""
        super().__init__()
        self._target_pa = abs(step.target_pa)
        self._signed_target_pa = step.target_pa
        self._held_since_ns: int | None = None

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Raise, hold, predict; a wish for another pressure is followed on the way."""
        if bench.wish is not None:
            return Done(bench.take_wish())
        controller = bench.controller
        waited_s = self.elapsed_s(now_ns)
        bench.target_pa = self._signed_target_pa
        induced = bench.induced_now(now_ns)
        if induced is None:
            controller.stand(bench.dt_s)
            return None
        if self._held_since_ns is None:
            if waited_s == 0.0 and controller.command == 0.0 and bench.direction is not None:
                # A fan that turns by itself does so only when it has run down: by now it has.
                bench.rig.set_direction(bench.direction)
            if controller.command >= BLIND_SPEED and induced < BLIND_PA and waited_s < APPROACH_LIMIT_S:
                controller.stand(bench.dt_s)
            else:
                controller.raise_gently(bench.dt_s, induced)
                follow_fans(bench, now_ns)
            if induced > APPROACH_SHARE * self._target_pa or controller.saturated or waited_s > APPROACH_LIMIT_S:
                self._held_since_ns = now_ns
            return None
        controller.stand(bench.dt_s)
        now = bench.induced_trend(now_ns, APPROACH_HOLD_S)
        if now_ns - self._held_since_ns < seconds(APPROACH_HOLD_S) or now is None:
            return None
        lag_s = controller.plant.lag_s(max(induced, 1.0), bench.flow_now(now_ns) or 1.0)
        steady_pa = max(induced + (lag_s + 1.0) * now.slope_pa_s, 0.5 * induced, 1.0)
        controller.curve.guess(controller.command, steady_pa)
        return Done()


class Settling(Timed):
    """Steers to the target until the pressure stands there."""

    activity = Activity.SETTLE

    def __init__(self, step: Settle) -> None:
        """Keep the step."""
        super().__init__()
        self._timeout_s = step.timeout_s

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Steer, and look whether it stands; a wish for another pressure is followed on the way."""
        if bench.wish is not None:
            return Done(bench.take_wish())
        waited_s = self.elapsed_s(now_ns)
        steer(bench, now_ns)
        now = bench.induced_trend(now_ns)
        controller = bench.controller
        target_pa = abs(bench.target_pa or 0.0)
        # A tick or two after a step the old pressure may still look steady at a nearby new target.
        if (
            now is not None
            and waited_s >= 1.0
            and settled(now, target_pa, controller.building_lag_s, controller.plant.wind_spread_pa)
        ):
            return Done(True)
        if waited_s < self._timeout_s:
            return None
        where = "" if now is None else f" It stands at {now.mean_pa:.0f} Pa."
        bench.progress.flag(
            "not-settled",
            Severity.ATTENTION,
            f"The pressure did not settle at {target_pa:.0f} Pa within {self._timeout_s:.0f} s.{where}",
        )
        return Done(False)


class Averaging(Timed):
    """Holds the fan and waits until the window is full."""

    activity = Activity.AVERAGE

    def __init__(self, step: Average) -> None:
        """Keep the step."""
        super().__init__()
        self._start_ns = None
        self._step = step
        self.total_s = step.seconds

    def tick(self, bench: Bench, now_ns: int) -> Done | Retake | None:
        """Hold; close the window when its last reading is there."""
        if self._start_ns is None:
            bench.controller.hold()
            bench.progress.open_window(WindowKind.POINT, now_ns, bench.target_pa)
            bench.spoilt = False
        elapsed_s = self.elapsed_s(now_ns)
        steer(bench, now_ns)
        assert self._start_ns is not None
        if bench.spoilt and bench.retakes < MOST_RETAKES:
            bench.retakes += 1
            bench.progress.drop_open_window()
            return Retake()
        assert self.total_s is not None
        if elapsed_s >= self.total_s and self._wants_more(bench, elapsed_s, now_ns):
            self.total_s += MORE_S
        if bench.controller.nudging:
            # Cut short, a nudge would leave the mean and slope of the window askew.
            self.total_s = max(self.total_s, elapsed_s + bench.dt_s)
        end_ns = self._start_ns + seconds(self.total_s)
        if elapsed_s < self.total_s or not _arrived(bench, end_ns, now_ns):
            return None
        point = bench.progress.close_point(self._start_ns, end_ns, bench.target_pa)
        if point is None:
            return None
        induced = bench.induced(point.envelope_pa)
        windy = bench.controller.plant.wind_spread_pa > 1.0
        bench.controller.curve.learn(bench.controller.held_speed, induced, windy=windy)
        bench.line.add(induced, point.flow_m3_h)
        bench.vigil.take(bench.controller.held_speed, induced, point.flow_m3_h)
        bench.retakes = 0
        return Done(point)

    def _wants_more(self, bench: Bench, elapsed_s: float, now_ns: int) -> bool:
        """Tell whether the mean is not good enough yet and there is time left to better it."""
        longest_s = self._step.longest_s
        assert self.total_s is not None
        if longest_s is None or self.total_s + MORE_S > longest_s:
            return False
        _, envelope_pa = bench.live.window(Role.ENVELOPE, elapsed_s, now_ns)
        if len(envelope_pa) < FEWEST_READINGS:
            return False
        target_pa = max(abs(bench.target_pa or 0.0), 1.0)
        return TYPICAL_EXPONENT * standard_error_of_mean(envelope_pa) / target_pa > self._step.share


class Holding(Timed):
    """Keeps the pressure at the target, with the controller on: what leaks may change, and is meant to."""

    activity = Activity.HOLD

    def __init__(self) -> None:
        """Nothing has been held yet."""
        super().__init__()
        self._flows: deque[float] = deque(maxlen=HELD_MEAN_S)
        self._first: float | None = None
        self._noted_s = 0.0

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Steer, note what leaks once a second, follow a wish."""
        held_s = self.elapsed_s(now_ns)
        steer(bench, now_ns)
        if held_s - self._noted_s >= 1.0:
            self._noted_s = held_s
            leak = bench.leakage_at_target(now_ns)
            if leak is not None:
                self._flows.append(leak)
            if len(self._flows) == HELD_MEAN_S and self._first is None:
                self._first = sum(self._flows) / HELD_MEAN_S
        flow = sum(self._flows) / len(self._flows) if self._flows else None
        bench.held = HeldView(held_s, flow, self._first, self._start_ns or 0)
        if bench.wish is None:
            return None
        wish = bench.take_wish()
        if flow is not None:
            was = "" if self._first is None else f", at the beginning {self._first:.0f} m³/h"
            text = f"Held {abs(bench.target_pa or 0.0):.0f} Pa for {held_s:.0f} s: {flow:.0f} m³/h{was}."
            bench.progress.mark("held", text, now_ns)
        return Done(wish)


class Stopping(Timed):
    """Brings the fan to rest."""

    activity = Activity.STOPPING

    def __init__(self) -> None:
        """Nothing is known of the flow before the stop."""
        super().__init__()
        self._flow_before = 0.0

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Command zero until the drive says that it is at rest and the flow has ended."""
        flow = bench.flow_now(now_ns) or 0.0
        if self._start_ns is None:
            self._flow_before = flow
        waited_s = self.elapsed_s(now_ns)
        bench.controller.rest()
        bench.target_pa = None
        readback = bench.rig.speed_readback()
        still_m3_h = max(MOVING_AIR_SHARE * self._flow_before, WIND_THROUGH * bench.resting_m3_h)
        at_rest = (readback is None or readback < REST_SPEED) and flow <= still_m3_h
        if waited_s >= REST_SHORTEST_S and at_rest:
            return Done()
        if waited_s < REST_LONGEST_S:
            return None
        bench.progress.flag(
            "fan-not-at-rest",
            Severity.ALARM,
            f"{REST_LONGEST_S:.0f} s after the stop the drive reports {100 * (readback or 0.0):.0f} % and the flow is "
            f"{100 * flow / max(self._flow_before, 1.0):.0f} % of what it was. Unplug the fan if it still turns.",
        )
        return Done()


class Playing(Timed):
    """Waits until a record has played to a moment; what was averaged there is averaged again."""

    def __init__(self, step: PlayUntil) -> None:
        """Keep the step."""
        super().__init__()
        self._step = step
        self.words = "Playing back the recorded test."
        if step.kind is not None:
            self.words = f"Playing back the recorded test: {_played(step)}."
            self.activity = Activity.AVERAGE if step.kind is WindowKind.POINT else Activity.ZERO
            self.total_s = (step.at_ns - step.start_ns) / NS_PER_S

    def elapsed_s(self, now_ns: int) -> float:
        """Return how much of the window has been played."""
        return max(now_ns - self._step.start_ns, 0) / NS_PER_S if self._step.kind is not None else 0.0

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Show the window while it plays, and close it."""
        step, progress = self._step, bench.progress
        if step.kind is not None and step.start_ns <= now_ns < step.at_ns:
            progress.open_window(step.kind, step.start_ns, step.target_pa)
        if now_ns < step.at_ns:
            return None
        if step.kind is WindowKind.POINT:
            progress.close_point(step.start_ns, step.at_ns, step.target_pa)
        elif step.kind is not None:
            zero = progress.close_zero(step.kind, step.start_ns, step.at_ns)
            if zero is not None and step.kind is WindowKind.ZERO_BEFORE:
                bench.zero_pa = zero.mean_pa
        if step.kind is not None and progress.current is not None:
            window = progress.current.windows[-1].id
            if step.struck_reason is not None:
                progress.strike(window, step.struck_reason)
            for right in step.corrected:
                progress.correct_range([window], right.fan, right.flow_range.name, now_ns)
        return Done()


def _played(step: PlayUntil) -> str:
    if step.kind is not WindowKind.POINT:
        return "the zero-flow pressure"
    return "a point" if step.target_pa is None else f"the point at {pressure(step.target_pa)}"


def executor_for(step: Step) -> Executor | None:
    """Return the executor of a step; None for those that the engine itself answers or gives to others."""
    match step:
        case BeginRun() | EndRun() | Foretell() | SetTargets() | GoTo() | Mark() | FitRange() | Listen() | StrikeLast():
            return Immediately(step)
        case MeasureZero():
            return ZeroReading(step)
        case Approach():
            return FirstApproach(step)
        case Settle():
            return Settling(step)
        case Average():
            return Averaging(step)
        case Hold():
            return Holding()
        case StopFan():
            return Stopping()
        case PlayUntil():
            return Playing(step)
        case Ask() | Checkpoint() | CheckHoses():
            return None
        case _ as unreachable:
            assert_never(unreachable)


def steer(bench: Bench, now_ns: int) -> None:
    """Give the controller the newest pressure and flow; stand still while there are none, or none to be believed."""
    induced, flow = bench.induced_now(now_ns), bench.flow_now(now_ns)
    if induced is None or flow is None or _unbelievable(bench, induced, now_ns):
        bench.controller.stand(bench.dt_s)
    else:
        bench.controller.update(induced, flow, bench.dt_s)
    follow_fans(bench, now_ns)


def follow_fans(bench: Bench, now_ns: int) -> None:
    """Say which fans joined or left since the last tick; what a speed moves is learned anew."""
    if bench.controller.running == bench.running:
        return
    while bench.running != bench.controller.running:
        joins = bench.controller.running > bench.running
        number = bench.running + 1 if joins else bench.running
        what = "joins: the others move too little air" if joins else "leaves: the others do it alone"
        bench.progress.mark("fans", f"Fan {number} {what}.", now_ns)
        bench.running += 1 if joins else -1
    bench.vigil.fans_changed(now_ns)


def _unbelievable(bench: Bench, induced_pa: float, now_ns: int) -> bool:
    """Tell whether the pressure is far below what the flow took before: a fan that chased it could do harm."""
    if induced_pa > abs(bench.target_pa or 0.0) > 0.0:
        # The fan is being let down; through one that turns too slowly air may come back.
        return False
    controller = bench.controller
    if controller.curve.known and controller.command < controller.curve.speed(LEAST_EXPECTED_PA):
        # From rest between the points: wind may blow back through so slow a fan, and it can do no harm.
        return False
    leak, _ = bench.leak_flow_now(now_ns)
    if len(bench.line) and (induced_pa < 0.0 or leak is None or leak <= 0.0):
        return True
    expected = bench.expected_pa(leak) if leak is not None else None
    return expected is not None and expected > LEAST_EXPECTED_PA and induced_pa < CHASED_SHARE * expected


def _arrived(bench: Bench, end_ns: int, now_ns: int) -> bool:
    """Tell whether the readings of a window that ends at `end_ns` are all there."""
    newest = bench.live.newest_ns(Role.ENVELOPE)
    if now_ns < end_ns:
        return False
    return (newest is not None and newest >= end_ns) or now_ns >= end_ns + seconds(LATE_READING_S)


def _silent(bench: Bench, now_ns: int) -> bool:
    """Tell whether the envelope gauge says nothing at present."""
    newest = bench.live.newest_ns(Role.ENVELOPE)
    return newest is None or now_ns - newest > seconds(SILENT_S + bench.slack_s)
