"""Steps with a fan that a person turns: the engine says what to do, and takes the point when the pressure stands.

Nothing here can stop the fan. Where a drive would be brought to rest, the person is told to turn it down.
"""

from __future__ import annotations

from enum import StrEnum

from acquisition.bench import Bench
from acquisition.execution import Done, Executor, Retake
from acquisition.executors import MOVING_AIR_SHARE, Averaging, Timed, executor_for
from acquisition.sentences import pressure
from acquisition.snapshot import Activity, Severity
from acquisition.steadiness import Trend
from acquisition.steps import Approach, Average, CheckHoses, Settle, Step, StopFan
from acquisition.watchdog import Alarm, AlarmKind

NEAR_PA, NEAR_SHARE = 2.0, 0.06
"""How near to a target is near enough: a person turns the knob, and the line does not ask for round numbers."""
STEADY_PA_S = 0.3
AHEAD_S = 1.5
"""The pressure goes on rising for so long after the knob has stopped: fan and hand have their lags."""
REACH_S = 45.0
REACH_SPAN_S = 10.0
LEAST_PA = 10.0
LEFT_SHARE = 0.12
AT_REST_PA = 1.0
REST_S = 4.0
BLOWING_SHARE = 0.15
MAY_TURN, BLOWS = 0.2, 0.5


class Order(StrEnum):
    """What the person at the knob is asked to do."""

    RAISE = "raise"
    LOWER = "lower"
    HOLD = "hold"
    OFF = "off"


class HandSettling(Timed):
    """Leads a person to the target and waits until the pressure stands near it."""

    activity = Activity.SETTLE

    def __init__(self) -> None:
        """Nothing has been said yet."""
        super().__init__()
        self.order = Order.HOLD
        self.words = ""

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Say what to do; done when it stands, or when it stands lower and rises no more, or when a wish comes."""
        if bench.wish is not None:
            return Done(bench.take_wish())
        waited_s = self.elapsed_s(now_ns)
        now = bench.induced_trend(now_ns)
        signed_pa = bench.target_pa or 0.0
        if now is None:
            self.words = f"Waiting for the gauge. Do not change the speed; the target is {pressure(signed_pa)}."
            return None
        target_pa, wind_pa = abs(signed_pa), bench.controller.plant.wind_spread_pa
        near_pa = max(NEAR_PA, NEAR_SHARE * target_pa) + wind_pa
        self.order = _order(self.order, now, target_pa, near_pa)
        self.words = _hand_words(self.order, bench.sign * now.mean_pa, signed_pa)
        steady = now.span_s > 2.5 and abs(now.slope_pa_s) < STEADY_PA_S + wind_pa
        if steady and abs(now.mean_pa - target_pa) < near_pa:
            return Done(True)
        if waited_s < REACH_S:
            return None
        long = bench.induced_trend(now_ns, REACH_SPAN_S)
        level = long is not None and abs(long.slope_pa_s) * REACH_SPAN_S < near_pa
        if not level or not LEAST_PA < now.mean_pa < target_pa:
            return None
        text = f"The pressure stands at {now.mean_pa:.0f} Pa and does not rise to {target_pa:.0f} Pa."
        bench.progress.flag("not-settled", Severity.ATTENTION, text)
        return Done(False)


class HandAveraging(Averaging):
    """Averages while the person keeps the knob still; begins anew when the pressure leaves."""

    order = Order.HOLD

    def __init__(self, step: Average) -> None:
        """Keep the step."""
        super().__init__(step)
        self._stood_pa: float | None = None

    def tick(self, bench: Bench, now_ns: int) -> Done | Retake | None:
        """Average; a pressure that leaves where it stood was moved by the knob."""
        now = bench.induced_trend(now_ns)
        if now is not None:
            self._stood_pa = now.mean_pa if self._stood_pa is None else self._stood_pa
            left_pa = LEFT_SHARE * self._stood_pa + 2.0 * bench.controller.plant.wind_spread_pa
            if abs(now.mean_pa - self._stood_pa) > max(left_pa, NEAR_PA):
                bench.progress.drop_open_window()
                text = f"The pressure left {self._stood_pa:.0f} Pa while it was averaged; the point is taken again."
                bench.progress.flag("knob-moved", Severity.ATTENTION, text)
                return Retake()
        return super().tick(bench, now_ns)


class HandStopping(Timed):
    """Waits until the person has turned the fan off and the air stands."""

    activity = Activity.STOPPING
    order = Order.OFF
    words = "Turn the fan down slowly and switch it off."

    def __init__(self) -> None:
        """Nothing is known of the flow before."""
        super().__init__()
        self._flow_before = 0.0

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Done when no more air moves."""
        flow, now = bench.flow_now(now_ns) or 0.0, bench.induced_trend(now_ns)
        self._flow_before = max(self._flow_before, flow)
        waited_s = self.elapsed_s(now_ns)
        bench.controller.rest()
        bench.target_pa = None
        if now is None or waited_s < REST_S:
            return None
        still = abs(now.mean_pa) < AT_REST_PA + bench.controller.plant.wind_spread_pa
        return Done() if still or flow <= MOVING_AIR_SHARE * self._flow_before else None


class AtOnce(Timed):
    """Steps that a person does not do: the way up belongs to the first target, and there is no small step."""

    activity = Activity.APPROACH

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Go on at once."""
        return Done()


def hand_executor_for(step: Step) -> Executor | None:
    """Return the executor of a step where a person turns the fan."""
    match step:
        case Approach() | CheckHoses():
            return AtOnce()
        case Settle():
            return HandSettling()
        case Average():
            return HandAveraging(step)
        case StopFan():
            return HandStopping()
        case _:
            return executor_for(step)


def watched_speed(flow_share: float) -> float:
    """Return the speed that the watchdog is told: by the flow as a share of the top of its range."""
    return BLOWS if flow_share > BLOWING_SHARE else MAY_TURN


def warning(alarm: Alarm) -> str:
    """Return an alarm as what the person at the knob has to do: the program cannot stop this fan."""
    found = alarm.sentence.split(". ")[0].rstrip(".")
    look = {
        AlarmKind.SILENT: "Then look at cable and battery of the gauge.",
        AlarmKind.FROZEN: "Then look at gauge and hose.",
        AlarmKind.WRONG_SIGN: "Then look whether hoses or fan are turned round.",
        AlarmKind.COLLAPSE: "Then look whether a hose is off or a door is open.",
    }
    return " ".join(part for part in (f"Turn the fan down now. {found}.", look.get(alarm.kind, "")) if part)


def _order(last: Order, now: Trend, target_pa: float, near_pa: float) -> Order:
    """Return what to do by where the pressure will be in a moment; an order stands until it is well fulfilled."""
    coming_pa = now.mean_pa + (now.span_s / 2 + AHEAD_S) * now.slope_pa_s
    missing_pa = target_pa - coming_pa
    inner_pa = 0.25 * near_pa if last in (Order.RAISE, Order.LOWER) else 0.75 * near_pa
    if abs(missing_pa) < inner_pa:
        return Order.HOLD
    return Order.RAISE if missing_pa > 0 else Order.LOWER


def _hand_words(order: Order, now_pa: float, target_pa: float) -> str:
    there = f"It stands at {pressure(round(now_pa))}, the target is {pressure(target_pa)}."
    match order:
        case Order.RAISE:
            return f"Raise the speed slowly. {there}"
        case Order.LOWER:
            return f"Lower the speed slowly. {there}"
        case _:
            return f"Stop. Hands off the knob. {there}"
