"""The vigil over one running test: looks twice a second at what the live buffer holds and says what it notices."""

from __future__ import annotations

import math
from collections import deque
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from acquisition.leakline import LeakLine
from acquisition.register.validity import check_validity
from acquisition.snapshot import Activity
from acquisition.vigil import findings
from acquisition.vigil.fanlaw import FanLaw
from acquisition.vigil.findings import Finding, fan_differs, lasting, off_the_line, shifted
from acquisition.vigil.hosewatch import HoseWatch
from acquisition.vigil.quiet import QuietMoves, Typical
from acquisition.vigil.shift import Move, Shift, mean_between, move_of, shift_of
from acquisition.vigil.sight import Sight
from acquisition.vigil.unrest import flutter, repeated, stir
from analysis.records import FlowRange
from drivers.clock import NS_PER_S

Floats = NDArray[np.float64]

LOOK_S = 0.5
HOLD_SETTLES_S = 1.5
"""After the fan is frozen it takes so long until pressure and flow stand."""
FAR_SIGMAS = 5.5
GUST_ON_FAN = 60.0
"""Per pascal of wander and by how many times the calm scatter of the flow grows at 1 Pa (tuned on the simulator)."""
LARGE_SHARE = 0.25
LEAST_FLOW = {Move.FLOW_ALONE: 0.15, Move.FAN_LESS: 0.06, Move.FAN_MORE: 0.06}
"""Smaller changes of the flow that the pressure does not answer are wind on the fan,"""
LEAST_FLOW_WIND = 2.6
"""which grow by so many times the wander over the pressure."""
ALONE_PA, ALONE_WIND = 1.5, 4.0
"""A smaller change of the pressure alone, in wind by so many times the wander larger, is no event."""
TWICE = 2
"""So many looks in a row have to see it."""
CALM_FLOW_SHARE = 0.008
CALM_PRESSURE_PA = 0.15
OFF_LINE_SHARE, OFF_LINE_SIGMAS = 0.07, 4.5
OFF_LINE_LOOKS, LASTING_LOOKS = 4, 16
MIXED_S = 9.0
SETTLING_BLIND_S = 3.0
SAME_RANGE_SHARE = 0.04
FAN_LAW_SHARE, FAN_LAW_PA, FAN_LAW_BLIND_S = 0.09, 0.3, 5.0
HANDOVER_S = 15.0
"""A fan that joins or leaves takes so long, coasting down behind its shutter."""
KEPT_S, KEPT_SHARE = 6.0, 0.9
UNREST_S, STEERED_S = 4.0, 4.5
STIRRED_TIMES, STIRRED_PA, LEAST_STIR_PA = 2.4, 0.15, 0.06
MOVED_ON_PA, MOVED_ON_SHARE = 6.0, 0.2
PLAIN_TIMES = 1.4
"""What is so far beyond the bound needs no second look."""
STEERED_TIMES, STEERED_PA = 4.0, 0.3
"""While the fan is steered it moves the pressure too."""
DEAD_FLOW_SHARE, DEAD_PRESSURE_PA = 0.06, 4.0
RUNNING_SPEED, RUNNING_S = 0.1, 3.0
STOPPED_SHARE = 0.4
SWAPPED_SHARE = 0.15
RATE_S, RATE_SHARE = 3.0, 0.7
REPEATED_SHARE, REPEATED_MORE = 0.25, 0.2
GAP_S = 3.0
OUTSIDE_S = 3.0
BAD_FRAMES, BAD_S = 2, 10.0
QUIET_AFTER_S = 12.0
"""The same thing is not said again within this time."""


class Vigil:
    """Notices what happens during one run."""

    def __init__(self, wind_spread_pa: float = 0.0, ranges: tuple[FlowRange, ...] = (), fitted: str = "") -> None:
        """Begin a run; `wind_spread_pa` is the spread of 3 s means of its zero-flow pressure."""
        self.line = LeakLine()
        self.fan = FanLaw()
        self.hose = HoseWatch()
        self._wander_pa = wind_spread_pa
        self._moves = QuietMoves(math.hypot(CALM_PRESSURE_PA, 0.7 * wind_spread_pa), CALM_FLOW_SHARE)
        self._ranges = {item.name: item for item in ranges}
        self._fitted = fitted
        self._flutter, self._stir = Typical(120), Typical(120)
        self._rate, self._repeats = Typical(20), Typical(20)
        self._next_ns = self._last_ns = self._blind_until_ns = 0
        self._running_since_ns: int | None = None
        self._far = self._off = self._weak = self._noisy = 0
        self._speeds: deque[tuple[int, float]] = deque()
        self._learned_ns = 0
        self._said: dict[str, int] = {}
        self._bad: deque[tuple[int, int]] = deque()

    def due(self, now_ns: int) -> bool:
        """Tell whether it is time to look again."""
        return now_ns >= self._next_ns

    def wind(self, spread_pa: float) -> None:
        """Learn how windy it is from the zero-flow record."""
        self._wander_pa = spread_pa
        self._moves = QuietMoves(math.hypot(CALM_PRESSURE_PA, 0.7 * spread_pa), CALM_FLOW_SHARE)

    def fit(self, name: str) -> None:
        """Know that another flow range is fitted; what the fan moves at a speed is learned anew."""
        self._fitted = name
        self.fan.clear()
        self._off = self._weak = 0

    def fans_changed(self, now_ns: int) -> None:
        """Know that a fan joins or leaves: for a while pressure and flow go their own ways."""
        self.fan.clear()
        self._off = self._weak = self._far = 0
        self._blind_until_ns = now_ns + round(HANDOVER_S * NS_PER_S)

    def recall(self, line: LeakLine) -> None:
        """Hold what comes against this line again: the house was put back as it was."""
        self.line = line.copy()
        self._off = 0

    def new_target(self) -> None:
        """Another target is aimed at: what was counted for the last one does not count on."""
        self._far = self._off = self._weak = 0
        self.hose.new_target()

    def take(self, speed: float, pressure_pa: float, flow_m3_h: float) -> None:
        """Take in a point that was averaged."""
        self.line.add(pressure_pa, flow_m3_h)
        self.fan.add(speed, pressure_pa, flow_m3_h)

    def look(self, sight: Sight) -> list[Finding]:
        """Return what is noticed now and was not said lately."""
        self._next_ns = sight.now_ns + round(LOOK_S * NS_PER_S)
        found = [item for item in (self._gap(sight), self._readings(sight), self._frames(sight)) if item is not None]
        handing_over = sight.now_ns < self._blind_until_ns
        running = self._running_s(sight) >= RUNNING_S and not handing_over
        if running and len(sight.pressure_pa) > 10 and len(sight.flow_m3_h) > 10:
            gross = self._gross(sight)
            if gross is not None:
                found.append(gross)
            elif sight.activity in (Activity.AVERAGE, Activity.SETTLE):
                exponent = self.line.exponent() if len(self.line) else None
                hose = self.hose.look(sight, exponent)
                off = hose or self._off_line(sight) or self._off_fan_law(sight) or self._outside(sight)
                seen = self._moved(sight), off
                found += [item for item in seen if item is not None]
        if sight.activity in (Activity.AVERAGE, Activity.SETTLE, Activity.ZERO) and not handing_over:
            resting = self.hose.look(sight, None) if sight.activity is Activity.ZERO else None
            found += [item for item in (self._restless(sight), resting) if item is not None]
        self._last_ns = sight.now_ns
        return [item for item in found if self._is_new(item, sight.now_ns)]

    def _is_new(self, item: Finding, now_ns: int) -> bool:
        last_ns = self._said.get(item.id)
        self._said[item.id] = now_ns
        return last_ns is None or now_ns - last_ns > QUIET_AFTER_S * NS_PER_S

    def _running_s(self, sight: Sight) -> float:
        if sight.speed <= RUNNING_SPEED:
            self._running_since_ns = None
            return 0.0
        if self._running_since_ns is None:
            self._running_since_ns = sight.now_ns
        return (sight.now_ns - self._running_since_ns) / NS_PER_S

    # --- readings -------------------------------------------------------------------------------------------------

    def _gap(self, sight: Sight) -> Finding | None:
        missing = self._last_ns and sight.now_ns - self._last_ns > GAP_S * NS_PER_S
        return findings.TIME_GAP if missing else None

    def _readings(self, sight: Sight) -> Finding | None:
        recent = sight.pressure_s >= -RATE_S
        count, same = float(recent.sum()), repeated(sight.raw_pa[recent])
        if len(sight.pressure_s) < 2 or sight.pressure_s[0] > -2 * RATE_S:
            return None
        if self._rate.known() and count < RATE_SHARE * self._rate.median:
            return findings.READINGS_MISSING
        if self._repeats.known() and same > max(REPEATED_SHARE, self._repeats.median + REPEATED_MORE):
            return findings.READINGS_REPEATED
        self._rate.learn(count)
        self._repeats.learn(same)
        return None

    def _frames(self, sight: Sight) -> Finding | None:
        self._bad.append((sight.now_ns, sight.bad_frames))
        while self._bad[0][0] < sight.now_ns - BAD_S * NS_PER_S:
            self._bad.popleft()
        return findings.LINE_NOISE if sight.bad_frames - self._bad[0][1] >= BAD_FRAMES else None

    # --- what cannot be overlooked --------------------------------------------------------------------------------

    def _gross(self, sight: Sight) -> Finding | None:
        pressure, flow = _late(sight.pressure_s, sight.pressure_pa, 1.0), _late(sight.flow_s, sight.flow_m3_h, 1.0)
        before = (
            mean_between(sight.pressure_s, sight.raw_pa, -5.0, -2.0),
            mean_between(sight.flow_s, sight.element_pa, -5.0, -2.0),
        )
        if len(sight.element_pa):
            element, raw = _late(sight.flow_s, sight.element_pa, 1.0), _late(sight.pressure_s, sight.raw_pa, 1.0)
            if _changed_places(before, (raw, element)):
                return findings.HOSES_SWAPPED
            if element < -DEAD_PRESSURE_PA:
                return findings.FLOW_HOSE_REVERSED
        usual = self.line.flow_m3_h(pressure) if pressure > DEAD_PRESSURE_PA else None
        flow_before = mean_between(sight.flow_s, sight.flow_m3_h, -5.0, -3.0)
        pressure_before = mean_between(sight.pressure_s, sight.pressure_pa, -5.0, -3.0)
        if usual is not None and flow < DEAD_FLOW_SHARE * usual:
            return findings.FLOW_HOSE_OFF
        if pressure > DEAD_PRESSURE_PA and pressure > 0.7 * pressure_before and flow < DEAD_FLOW_SHARE * flow_before:
            return findings.FLOW_HOSE_OFF
        if (
            self._kept_speed(sight)
            and flow < STOPPED_SHARE * flow_before
            and pressure < STOPPED_SHARE * pressure_before
        ):
            return findings.FAN_STOPPED
        return None

    def _kept_speed(self, sight: Sight) -> bool:
        """Tell whether the fan was told to go on as fast as before, for as long as the comparison reaches back."""
        self._speeds.append((sight.now_ns, sight.speed))
        while self._speeds[0][0] < sight.now_ns - KEPT_S * NS_PER_S:
            self._speeds.popleft()
        return sight.speed > KEPT_SHARE * max(speed for _, speed in self._speeds)

    # --- what moved -----------------------------------------------------------------------------------------------

    def _moved(self, sight: Sight) -> Finding | None:
        reach_s = sight.held_s - HOLD_SETTLES_S
        pressure_pa, flow_m3_h = sight.without_swing(self.line.exponent())
        shift = shift_of(sight.pressure_s, pressure_pa, sight.flow_s, flow_m3_h, reach_s)
        if sight.activity is not Activity.AVERAGE or shift is None:
            self._far = 0
            return None
        # Wind on the fan moves the flow the more, the less pressure the fan works against.
        scale = np.array([1.0, math.hypot(1.0, GUST_ON_FAN * self._wander_pa / max(shift.pressure_before_pa, 1.0))])
        moved = shift.moved / scale
        distance = self._moves.distance(moved)
        large = abs(shift.pressure_share) > LARGE_SHARE or abs(float(shift.moved[1])) > LARGE_SHARE
        self._far = self._far + 1 if distance > FAR_SIGMAS else 0
        if distance < FAR_SIGMAS / 2 and sight.now_ns - self._learned_ns > 2.0 * NS_PER_S:
            self._learned_ns = sight.now_ns
            self._moves.learn(moved)
        if self._far < (1 if large and distance > 1.5 * FAR_SIGMAS else TWICE):
            return None
        move = move_of(shift, self._moves.sigmas * scale)
        return None if self._is_little(shift, move) else shifted(shift, move)

    def _is_little(self, shift: Shift, move: Move) -> bool:
        """Tell whether wind alone does as much, more often than anybody wants to hear of it."""
        pascal, flow = (abs(float(item)) for item in shift.moved)
        if move is Move.PRESSURE_ALONE:
            return pascal < ALONE_PA + ALONE_WIND * self._wander_pa
        least = LEAST_FLOW.get(move)
        wind = LEAST_FLOW_WIND * self._wander_pa / max(shift.pressure_before_pa, 1.0)
        return least is not None and flow < least + wind

    def _off_line(self, sight: Sight) -> Finding | None:
        if sight.activity is Activity.SETTLE and sight.activity_s < SETTLING_BLIND_S:
            return None
        pressure, flow = _late(sight.pressure_s, sight.pressure_pa, 2.0), _late(sight.flow_s, sight.flow_m3_h, 2.0)
        flow -= sight.stored_m3_h
        usual = self.line.flow_m3_h(pressure)
        if usual is None or flow <= 0.0 or pressure < 2.0:
            self._off = 0
            return None
        off = math.log(flow / usual)
        pascal, share = (float(item) for item in self._moves.sigmas)
        exponent = self.line.exponent()
        scatter = math.hypot(share, exponent * math.hypot(pascal, self._wander_pa) / pressure)
        extrapolated = 0.03 if len(self.line) < 3 else 0.0
        if abs(off) < OFF_LINE_SHARE + extrapolated + OFF_LINE_SIGMAS * scatter:
            self._off = 0
            return None
        self._off += 1
        if self._off < OFF_LINE_LOOKS:
            return None
        change = (math.exp(off) - 1.0) * (self.line.flow_m3_h(50.0) or usual)
        element = _late(sight.flow_s, sight.element_pa, 2.0) if len(sight.element_pa) else math.nan
        fitting = self._other_range(element, flow, usual)
        if self._off < LASTING_LOOKS:
            # A step at the beginning of a point makes a mixture of it; one before its beginning does not.
            mixed = sight.activity is Activity.AVERAGE and sight.held_s < MIXED_S
            return replace(off_the_line(change, 50.0, fitting), spoils=mixed)
        # From here on the line is another one: what comes is held against what comes.
        self.line.clear()
        self._off = 0
        return lasting(change, 50.0)

    def _outside(self, sight: Sight) -> Finding | None:
        """Return that the flow element has left the calibration of its range, where another one measures the flow."""
        fitted = self._ranges.get(self._fitted)
        if fitted is None or sight.activity is not Activity.AVERAGE or sight.held_s < OUTSIDE_S:
            return None
        if not len(sight.element_pa):
            return None
        found = check_validity(_late(sight.flow_s, sight.element_pa, OUTSIDE_S), fitted, tuple(self._ranges.values()))
        return None if found.inside or not found.proposed else findings.outside(found.sentence, found.proposed)

    def _off_fan_law(self, sight: Sight) -> Finding | None:
        if sight.activity is Activity.SETTLE and sight.activity_s < FAN_LAW_BLIND_S:
            return None
        pressure, flow = _late(sight.pressure_s, sight.pressure_pa, 2.0), _late(sight.flow_s, sight.flow_m3_h, 2.0)
        fitted = self._ranges.get(self._fitted)
        if fitted is not None and len(sight.element_pa) and _late(sight.flow_s, sight.element_pa, 2.0) < fitted.min_pa:
            # Below its range the flow is not known well enough to judge the fan by.
            return None
        off = self.fan.deviation(sight.motor, pressure, flow)
        wind = (OFF_LINE_SIGMAS * CALM_FLOW_SHARE * GUST_ON_FAN * self._wander_pa + FAN_LAW_PA) / max(pressure, 1.0)
        if off is None or abs(off) < FAN_LAW_SHARE + wind:
            self._weak = 0
            return None
        self._weak += 1
        if self._weak < OFF_LINE_LOOKS:
            return None
        self.fan.clear()
        self._weak = 0
        return fan_differs(off)

    def _other_range(self, element_pa: float, flow_m3_h: float, usual_m3_h: float) -> str:
        """Return the range with which the flow would lie on the line, empty for none."""
        fitted = self._ranges.get(self._fitted)
        if fitted is None or not element_pa > 0.0:
            return ""
        for item in self._ranges.values():
            if item.name == self._fitted:
                continue
            ratio = _raw_flow(item, element_pa) / _raw_flow(fitted, element_pa)
            if abs(math.log(flow_m3_h * ratio / usual_m3_h)) < SAME_RANGE_SHARE:
                return item.name
        return ""

    # --- unrest ---------------------------------------------------------------------------------------------------

    def _restless(self, sight: Sight) -> Finding | None:
        pressure_pa, _ = sight.without_swing(self.line.exponent())
        recent = sight.pressure_s >= -UNREST_S
        times, values = sight.pressure_s[recent], pressure_pa[recent]
        if sight.activity is Activity.SETTLE:
            now = flutter(times, values) if sight.activity_s >= STEERED_S else None
            known = self._flutter.known()
            most = STEERED_TIMES * self._flutter.high + STEERED_PA if known else math.inf
        else:
            still_s = sight.held_s if sight.activity is Activity.AVERAGE else sight.activity_s
            now = stir(times, values) if still_s >= UNREST_S - 0.5 else None
            known = self._stir.known()
            most = STIRRED_TIMES * max(self._stir.median, LEAST_STIR_PA) + STIRRED_PA if known else math.inf
        if now is None or now <= most:
            self._noisy = 0
            if now is not None and sight.activity is not Activity.SETTLE:
                self._stir.learn(now)
                self._flutter.learn(flutter(times, values) or 0.0)
            return None
        self._noisy += 1
        plain = now > PLAIN_TIMES * most or self._noisy >= TWICE
        moved_pa = abs(mean_between(times, values, -1.0, 0.0) - mean_between(times, values, -UNREST_S, 1.0 - UNREST_S))
        if moved_pa > max(MOVED_ON_PA, MOVED_ON_SHARE * float(np.abs(values).max())):
            # The house moved, or the hose came off: something else says that.
            return None
        return findings.HOSE_NOISY if plain and not self._flow_restless(sight) else None

    def _flow_restless(self, sight: Sight) -> bool:
        recent = sight.flow_s >= -UNREST_S
        flow = sight.flow_m3_h[recent]
        now = flutter(sight.flow_s[recent], flow)
        return now is not None and float(flow.mean()) > 0.0 and now / float(flow.mean()) > 0.05


def _late(times: Floats, values: Floats, seconds: float) -> float:
    return mean_between(times, values, -seconds, 0.0)


def _changed_places(before: tuple[float, float], now: tuple[float, float]) -> bool:
    """Tell whether two pressures took each other's values: raw envelope pressure, flow-element pressure."""
    apart = abs(before[0] - before[1])
    if not apart > 4 * DEAD_PRESSURE_PA:
        return False
    return all(abs(new - old) < SWAPPED_SHARE * apart for new, old in ((now[0], before[1]), (now[1], before[0])))


def _raw_flow(item: FlowRange, element_pa: float) -> float:
    return float(item.coefficient_m3_h_pa_n * element_pa**item.exponent)
