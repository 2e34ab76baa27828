"""The small step of the fan that tells how the hoses lie. The first rise goes on from where it ends."""

from __future__ import annotations

import statistics

from acquisition.bench import Bench
from acquisition.execution import Done
from acquisition.executors import Timed, follow_fans
from acquisition.hosecheck import MOVED_PA, Doubt, FanStep, Response, judge_growth, judge_hoses, judge_taps
from acquisition.live import LiveBuffer
from acquisition.rig import TAPS, Role
from acquisition.snapshot import Activity
from acquisition.steadiness import trend
from analysis.records import Direction
from drivers.clock import NS_PER_S, seconds

BEFORE_S = 2.0
APART_S = 30.0
"""Of the zero-flow record before; in it the outdoor taps are looked at in pieces of `BEFORE_S`."""
NEED_PA, NEED_UNREST, NEED_ELEMENT_PA = 4.0, 4.0, 3.0
MOST_PA = 15.0
HIGHEST_SPEED = 0.30
GROWN, GROWN_MOST_PA, GROWN_SPEED = 2.2, 40.0, 0.60
BY_SPEED, COMING = 1.8, 1.25
"""A house's pressure grows at most so with the speed (its power), once it has followed: a tight one follows late. So
much more than is wanted may be coming."""
HOLD_S, WRONG_HOLD_S = 5.0, 1.5
LOOK_S = 2.0


class HoseCheck(Timed):
    """Raises the fan a little, holds it, and judges. The result is a sentence, empty when all is well."""

    activity = Activity.APPROACH
    words = "Raising the fan a little to see whether every hose answers."

    def __init__(self) -> None:
        """Nothing is known of the time before."""
        super().__init__()
        self._before: dict[Role, float] = {}
        self._held_ns: int | None = None
        self._hold_s = HOLD_S
        self._first: FanStep | None = None
        self._first_speed = 0.0
        self._apart_pa = 0.0

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Note what is before, raise, hold, judge."""
        controller = bench.controller
        if self.elapsed_s(now_ns) == 0.0:
            if bench.direction is not None:
                bench.rig.set_direction(bench.direction)
            for role in (*TAPS, Role.FLOW_ELEMENT):
                mean = bench.live.mean(role, BEFORE_S, now_ns)
                if mean is not None:
                    self._before[role] = mean
            self._apart_pa = _apart(bench.live, now_ns)
        if Role.ENVELOPE not in self._before or bench.induced_now(now_ns) is None:
            return Done("")
        if self._held_ns is None:
            self._raise(bench, now_ns)
            return None
        controller.stand(bench.dt_s)
        if (now_ns - self._held_ns) / NS_PER_S < self._hold_s:
            return None
        seen = self._seen(bench, now_ns)
        doubt = judge_hoses(seen) if self._first is None else self._judge_second(bench, self._first, seen)
        if doubt is None and self._first is None and self._two_steps(bench, seen):
            self._first, self._first_speed, self._held_ns = seen, controller.command, None
            return None
        return Done("" if doubt is None else doubt.sentence)

    def _two_steps(self, bench: Bench, seen: FanStep) -> bool:
        """Tell whether a second step has more to tell: hoses that are swapped, or a tap in the jet of the fan."""
        if bench.direction is Direction.PRESSURIZE:
            return seen.element is not None
        return bool(seen.further)

    def _judge_second(self, bench: Bench, first: FanStep, second: FanStep) -> Doubt | None:
        return judge_growth(first, second) if bench.direction is Direction.PRESSURIZE else judge_taps(second)

    def _raise(self, bench: Bench, now_ns: int) -> None:
        controller = bench.controller
        rise_pa = bench.sign * ((bench.live.mean(Role.ENVELOPE, 0.5, now_ns) or 0.0) - self._before[Role.ENVELOPE])
        element_pa = bench.live.mean(Role.FLOW_ELEMENT, 0.5, now_ns)
        if self._first is not None:
            self._raise_more(bench, now_ns, rise_pa, (element_pa or 0.0) - self._before.get(Role.FLOW_ELEMENT, 0.0))
            return
        enough = abs(rise_pa) > max(NEED_PA, NEED_UNREST * controller.plant.wind_spread_pa)
        flows = element_pa is None or abs(element_pa - self._before.get(Role.FLOW_ELEMENT, 0.0)) > NEED_ELEMENT_PA
        if (enough and flows) or abs(rise_pa) > MOST_PA or controller.command >= HIGHEST_SPEED:
            self._held_ns = now_ns
            # Going the wrong way is plain at once, and nobody wants more of it.
            self._hold_s = WRONG_HOLD_S if rise_pa < -MOVED_PA else HOLD_S
            return
        controller.raise_gently(bench.dt_s, rise_pa)
        follow_fans(bench, now_ns)

    def _raise_more(self, bench: Bench, now_ns: int, rise_pa: float, element_pa: float) -> None:
        """Raise further until one of the pressures has about doubled."""
        first = self._first
        if first is None:
            return
        highest_pa = min(max(map(abs, bench.targets_pa), default=GROWN_MOST_PA), GROWN_MOST_PA)
        element_before_pa = 0.0 if first.element is None else first.element.rise_pa
        wanted_pa = min(GROWN * max(first.envelope.rise_pa, element_before_pa), highest_pa)
        faster = bench.controller.command / self._first_speed
        coming_pa = max(first.envelope.rise_pa, 0.0) * faster**BY_SPEED
        far = max(rise_pa, element_pa) > wanted_pa or coming_pa > COMING * highest_pa
        if far or bench.controller.command >= GROWN_SPEED:
            self._held_ns = now_ns
        else:
            bench.controller.raise_gently(bench.dt_s)

    def _seen(self, bench: Bench, now_ns: int) -> FanStep:
        def response(role: Role, sign: int) -> Response | None:
            times, values = bench.live.window(role, LOOK_S, now_ns)
            now = trend(times, sign * values)
            return None if now is None else Response(sign * self._before.get(role, 0.0), now.mean_pa, now.slope_pa_s)

        envelope = response(Role.ENVELOPE, bench.sign)
        if envelope is None:
            envelope = Response(0.0, 0.0, 0.0)
        further = [
            (number, found)
            for number, role in enumerate(TAPS[1:], 2)
            if role in self._before and (found := response(role, bench.sign)) is not None
        ]
        plant = bench.controller.plant
        lag_s = plant.lag_s(max(envelope.rise_pa, 1.0), bench.flow_now(now_ns) or 1.0)
        element = response(Role.FLOW_ELEMENT, 1)
        return FanStep(envelope, element, tuple(further), plant.wind_spread_pa, self._apart_pa, lag_s)


def _apart(live: LiveBuffer, now_ns: int) -> float:
    """Return by how much (Pa, standard deviation) an outdoor tap moves about the mean of all with the fan at rest."""
    ends = [now_ns - seconds(BEFORE_S * piece) for piece in range(round(APART_S / BEFORE_S))]
    spreads = [0.0]
    for role in TAPS[1:]:
        pairs = [(live.mean(role, BEFORE_S, end), live.mean(Role.ENVELOPE, BEFORE_S, end)) for end in ends]
        apart = [tap - mean for tap, mean in pairs if tap is not None and mean is not None]
        if len(apart) > 1:
            spreads.append(statistics.stdev(apart))
    return max(spreads)
