"""Steps with a fan that a person turns: the engine says what to do, and takes the point when the pressure stands.

Nothing here can stop the fan. Where a drive would be brought to rest, the person is told to turn it down.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from acquisition.bench import Bench
from acquisition.execution import Done, Executor, Retake
from acquisition.executors import MOVING_AIR_SHARE, Averaging, Timed, executor_for
from acquisition.sentences import pressure
from acquisition.snapshot import Activity, Severity
from acquisition.steadiness import Trend
from acquisition.steps import Approach, Average, CheckHoses, Settle, Step, StopFan
from acquisition.watchdog import Alarm, AlarmKind
from drivers.clock import NS_PER_S, seconds

NEAR_PA, NEAR_SHARE = 2.0, 0.06
"""How near to a target is near enough: a person turns the knob, and the line does not ask for round numbers."""
STEADY_PA_S = 0.3
SLOWEST_S, QUICKEST_S, LOOK_S = 8.0, 1.0, 2.5
"""Bounds for how long the pressure goes on moving after "stop" is said, and how long is waited at least."""
SHORTEST_TURN_S, LONGEST_TURN_S = 0.5, 60.0
FIRST_SHARE, HOLD_SHARE = 0.5, 0.5
"""Nearer than so much of what is near enough nothing is said."""
SLOWEST_PA_S, QUICKEST_PA_S = 0.3, 15.0
STILL_BLOWS_PA, FIRST_WORD_S, AGAIN_S = 8.0, 6.0, 15.0
"""So much pressure while the test stands still comes from the fan; when that is said, and how often again."""
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


@dataclass(slots=True)
class _Turn:
    """An order to turn the knob one way (`sign`), from a pressure and moment on."""

    sign: int
    from_pa: float
    from_ns: int
    until_ns: int

    def learn(self, bench: Bench, reached_pa: float, stopped_ns: int) -> None:
        """Learn by how many pascals a second of turning moves the pressure."""
        lasted_s = (stopped_ns - self.from_ns) / NS_PER_S
        seen = self.sign * (reached_pa - self.from_pa) / max(lasted_s, SHORTEST_TURN_S)
        seen = min(max(seen, SLOWEST_PA_S), QUICKEST_PA_S)
        bench.hand_pa_s = seen if bench.hand_pa_s is None else math.sqrt(seen * bench.hand_pa_s)


class HandSettling(Timed):
    """Leads a person to the target and waits until the pressure stands near it.

    Whoever turns a knob hears late, but hears "stop" as late as "raise": how far the knob was turned depends on the
    time between the two alone. So an order lasts as long as the pressure is away from the target, then it is waited
    until it stands, and from what came of it is learned for how long the next one has to be.
    """

    activity = Activity.SETTLE

    def __init__(self) -> None:
        """Nothing has been said yet."""
        super().__init__()
        self.order = Order.HOLD
        self.words = ""
        self._turn: _Turn | None = None
        self._stopped_ns: int | None = None

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
        steady = now.span_s > 2.5 and abs(now.slope_pa_s) < STEADY_PA_S + wind_pa
        self._lead(bench, now, target_pa, near_pa, now_ns, steady=steady)
        self.words = _hand_words(self.order, bench.sign * now.mean_pa, signed_pa)
        if steady and self._turn is None and abs(now.mean_pa - target_pa) < near_pa:
            return Done(True)
        turn = self._turn if waited_s > REACH_S and self.order is Order.RAISE else None
        if turn is None or now_ns - turn.from_ns < seconds(REACH_SPAN_S + bench.hand_lag_s):
            return None
        long = bench.induced_trend(now_ns, REACH_SPAN_S)
        level = long is not None and abs(long.slope_pa_s) * REACH_SPAN_S < near_pa
        if not level or not LEAST_PA < now.mean_pa < target_pa - near_pa:
            return None
        text = f"The pressure stands at {now.mean_pa:.0f} Pa and does not rise to {target_pa:.0f} Pa."
        bench.progress.flag("not-settled", Severity.ATTENTION, text)
        return Done(False)

    def _lead(self, bench: Bench, now: Trend, target_pa: float, near_pa: float, now_ns: int, *, steady: bool) -> None:
        """Begin an order, end it, or wait for what comes of it."""
        if self.order is not Order.HOLD and self._turn is not None:
            coming_pa = now.mean_pa + (now.span_s / 2 + bench.hand_lag_s) * now.slope_pa_s
            # The first time nobody knows how fast a hand this is: half the way will do.
            goal_pa = target_pa if bench.hand_pa_s is not None else FIRST_SHARE * target_pa
            beyond = self._turn.sign * (goal_pa - coming_pa) < HOLD_SHARE * near_pa
            if now_ns >= self._turn.until_ns or beyond:
                self.order, self._stopped_ns = Order.HOLD, now_ns
            return
        still_s = 0.0 if self._stopped_ns is None else (now_ns - self._stopped_ns) / NS_PER_S
        if self._turn is not None and not (steady and still_s >= max(LOOK_S, bench.hand_lag_s)):
            return
        if self._turn is not None and self._stopped_ns is not None:
            bench.hand_lag_s = min(max((bench.hand_lag_s + still_s) / 2, QUICKEST_S), SLOWEST_S)
            self._turn.learn(bench, now.mean_pa, self._stopped_ns)
            self._turn = None
        missing_pa = target_pa - now.mean_pa
        if abs(missing_pa) >= HOLD_SHARE * near_pa:
            self.order = Order.RAISE if missing_pa > 0 else Order.LOWER
            lasts_s = LONGEST_TURN_S
            if bench.hand_pa_s is not None:
                lasts_s = min(max(abs(missing_pa) / bench.hand_pa_s, SHORTEST_TURN_S), LONGEST_TURN_S)
            sign = 1 if missing_pa > 0 else -1
            self._turn = _Turn(sign, now.mean_pa, now_ns, now_ns + seconds(lasts_s))


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


class StillBlowing:
    """Looks, while the test stands still, whether a fan that only a person can stop still blows, and says so again."""

    def __init__(self) -> None:
        """It does not."""
        self.order = ""
        """What the person is asked to do meanwhile."""
        self._due_ns: int | None = None

    def look(self, bench: Bench | None, now_ns: int, *, paused: bool) -> None:
        """Raise an alarm at first after a moment, then every few seconds, as long as the pressure stays."""
        now = bench.induced_trend(now_ns) if bench is not None and paused and not bench.rig.has_fan else None
        if bench is None or now is None or bench.rig.script is not None:
            self.order, self._due_ns = "", None
            return
        blows = abs(now.mean_pa) > STILL_BLOWS_PA + 2.0 * bench.controller.plant.wind_spread_pa
        self.order = Order.OFF if blows else ""
        if not blows or self._due_ns is None:
            self._due_ns = now_ns + seconds(FIRST_WORD_S)
        elif now_ns >= self._due_ns:
            text = f"The fan still blows, at {abs(now.mean_pa):.0f} Pa: turn it down and switch it off."
            bench.progress.flag("still-blowing", Severity.ALARM, text)
            self._due_ns = now_ns + seconds(AGAIN_S)


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


def _hand_words(order: Order, now_pa: float, target_pa: float) -> str:
    there = f"It stands at {pressure(round(now_pa))}, the target is {pressure(target_pa)}."
    match order:
        case Order.RAISE:
            return f"Raise the speed slowly. {there}"
        case Order.LOWER:
            return f"Lower the speed slowly. {there}"
        case _:
            return f"Stop. Hands off the knob. {there}"
