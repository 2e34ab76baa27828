"""The watchdog: looks at the raw readings alone, knows no procedure, and has the last word on the fan.

It is pure: ten times a second the guard tells it what was read and commanded, and it answers with an alarm or nothing.
An alarm stops the fan; only a person lets it start again, except after a lost link of a simulated rig.
"""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

from drivers.clock import NS_PER_S

HIGH_PA, HIGH_S = 80.0, 1.0
HIGHEST_PA = 100.0
ABOVE_CAP_PA, FAR_ABOVE_CAP_PA = 10.0, 25.0
"""What a gust may add to a pressure that is capped; our choice."""
AHEAD_S = 1.0
"""Gauge, drive and coasting let a climb go on for so long. It takes two looks in a row: one may be a wrong reading."""
SLOWING = 0.9
"""A climb that slows down so from look to look is a gauge that jumped, behind its own lag, or is about to end."""
SILENT_S = 1.0
FROZEN_S = 1.5
FROZEN_READINGS = 12
NO_PRESSURE_PA, NO_PRESSURE_SPEED, NO_PRESSURE_S = 2.0, 0.3, 5.0
WRONG_SIGN_PA, WRONG_SIGN_S = 3.0, 3.0
GUST_SIGMAS = 2.5
COLLAPSE_SHARE, COLLAPSE_FLOW_SHARE, COLLAPSE_S = 0.30, 0.20, 1.0
OVERFLOW_PA, OVERFLOW_S = 80.0, 1.0
"""Whatever the gauge says: a flow that took so much pressure before may do so again."""


class AlarmKind(StrEnum):
    """Why the fan was stopped."""

    TOO_HIGH = "pressure too high"
    SILENT = "gauge silent"
    FROZEN = "gauge frozen"
    NO_PRESSURE = "no pressure"
    WRONG_SIGN = "wrong sign"
    COLLAPSE = "pressure collapsed"
    FAN_LINK = "fan link lost"
    HELD_UP = "program held up"
    OVERFLOW = "more flow than expected"
    BATTERY = "battery empty"
    SLEPT = "computer slept"


LINK_ALARMS = (AlarmKind.SLEPT, AlarmKind.SILENT, AlarmKind.FROZEN, AlarmKind.FAN_LINK, AlarmKind.HELD_UP)
"""Something between program and instruments, not the house."""
LINE_ALARMS = (AlarmKind.COLLAPSE, AlarmKind.OVERFLOW)
"""The house is not what its points had shown."""


@dataclass(frozen=True, slots=True)
class Alarm:
    """What the watchdog found, in one sentence."""

    kind: AlarmKind
    sentence: str


@dataclass(frozen=True, slots=True)
class Observation:
    """What the watchdog is told at a tick.

    `readings_pa` are the envelope readings that came since the last tick, raw. `induced_pa` is the newest one less
    the zero-flow pressure, in the direction of the run. `expected_pa` is the pressure that the leakage line found so
    far predicts from the flow, None before there is a line; `flow_share` is the flow as a share of the range's top.
    """

    now_ns: int
    readings_pa: tuple[float, ...]
    induced_pa: float | None
    speed: float
    flow_share: float
    expected_pa: float | None
    fan_linked: bool
    wind_pa: float = 0.0
    """Spread of 3 s means of the zero-flow pressure: how far gusts alone move the pressure."""


class _Since:
    """How long a condition has held without a break."""

    def __init__(self) -> None:
        self._start_ns: int | None = None

    def held_s(self, now_ns: int, condition: bool) -> float:
        if not condition:
            self._start_ns = None
            return 0.0
        if self._start_ns is None:
            self._start_ns = now_ns
        return (now_ns - self._start_ns) / NS_PER_S


class Watchdog:
    """Watches one rig while its fan is commanded."""

    def __init__(self, slack_s: float = 0.0, cap_pa: float | None = None) -> None:
        """`slack_s` is what the clock may lose on a busy machine (a scaled clock only); `cap_pa` lowers the limits."""
        self._slack_s = slack_s
        self._high_pa = HIGH_PA if cap_pa is None else min(HIGH_PA, cap_pa + ABOVE_CAP_PA)
        self._highest_pa = HIGHEST_PA if cap_pa is None else min(HIGHEST_PA, cap_pa + FAR_ABOVE_CAP_PA)
        self._last_reading_ns: int | None = None
        self._lowest_pa = 0.0
        self._course: deque[tuple[int, float]] = deque(maxlen=3)
        self._same_value: float | None = None
        self._same_count = 0
        self._same_since_ns = 0
        self._high = _Since()
        self._no_pressure = _Since()
        self._wrong_sign = _Since()
        self._collapse = _Since()
        self._overflow = _Since()
        self._fan_gone = _Since()

    def silence_s(self, now_ns: int) -> float:
        """Return the age of the newest reading in seconds, 0 before the first look."""
        return 0.0 if self._last_reading_ns is None else (now_ns - self._last_reading_ns) / NS_PER_S

    def look(self, seen: Observation) -> Alarm | None:
        """Return an alarm when the fan has to stop now."""
        self._note(seen)
        if any(abs(value) > self._highest_pa for value in seen.readings_pa):
            return Alarm(AlarmKind.TOO_HIGH, f"The pressure passed {self._highest_pa:.0f} Pa. The fan was stopped.")
        if self._high.held_s(seen.now_ns, self._lowest_pa > self._high_pa) > HIGH_S:
            return Alarm(AlarmKind.TOO_HIGH, f"The pressure stayed above {self._high_pa:.0f} Pa. The fan was stopped.")
        if seen.speed <= 0:
            self._forget(seen.now_ns)
            return None
        if self._ahead_pa() > self._highest_pa:
            sentence = f"The pressure climbed fast towards {self._highest_pa:.0f} Pa. The fan was stopped."
            return Alarm(AlarmKind.TOO_HIGH, sentence)
        return self._gauge_alarm(seen) or self._house_alarm(seen)

    def _note(self, seen: Observation) -> None:
        if self._last_reading_ns is None or seen.readings_pa:
            self._last_reading_ns = seen.now_ns
        if seen.readings_pa:
            self._lowest_pa = min(abs(value) for value in seen.readings_pa)
            self._course.append((seen.now_ns, abs(seen.readings_pa[-1])))
        for value in seen.readings_pa:
            if value != self._same_value:
                self._same_value, self._same_count, self._same_since_ns = value, 0, seen.now_ns
            self._same_count += 1

    def _ahead_pa(self) -> float:
        """Return where the pressure will be in a moment if it goes on to climb as slowly as in the last two looks."""
        if len(self._course) < 3:
            return 0.0
        rates = [
            (after - before) / (after_ns - before_ns)
            for (before_ns, before), (after_ns, after) in pairwise(self._course)
        ]
        if rates[1] < SLOWING * rates[0]:
            return 0.0
        return self._course[-1][1] + max(min(rates), 0.0) * AHEAD_S * NS_PER_S

    def _forget(self, now_ns: int) -> None:
        for since in (self._no_pressure, self._wrong_sign, self._collapse, self._overflow, self._fan_gone):
            since.held_s(now_ns, False)
        self._same_count, self._same_since_ns = 0, now_ns

    def _gauge_alarm(self, seen: Observation) -> Alarm | None:
        if self.silence_s(seen.now_ns) > SILENT_S + self._slack_s:
            return Alarm(AlarmKind.SILENT, "The gauge went silent. The fan was stopped; look at cable and battery.")
        same_s = (seen.now_ns - self._same_since_ns) / NS_PER_S
        if self._same_count >= FROZEN_READINGS and same_s > FROZEN_S + self._slack_s:
            return Alarm(
                AlarmKind.FROZEN,
                f"The gauge repeats {self._same_value:.2f} Pa unchanged. The fan was stopped; look at gauge and hose.",
            )
        if self._fan_gone.held_s(seen.now_ns, not seen.fan_linked) > SILENT_S + self._slack_s:
            return Alarm(AlarmKind.FAN_LINK, "The fan drive does not answer. It stops by itself; look at its cable.")
        return None

    def _house_alarm(self, seen: Observation) -> Alarm | None:
        if seen.induced_pa is None:
            return None
        wrong = seen.induced_pa < -(WRONG_SIGN_PA + GUST_SIGMAS * seen.wind_pa)
        if self._wrong_sign.held_s(seen.now_ns, wrong) > WRONG_SIGN_S:
            return Alarm(
                AlarmKind.WRONG_SIGN,
                "The pressure goes the wrong way. The fan was stopped; look whether hoses or fan are turned round.",
            )
        none = seen.expected_pa is None and seen.induced_pa < NO_PRESSURE_PA and seen.speed > NO_PRESSURE_SPEED
        if self._no_pressure.held_s(seen.now_ns, none) > NO_PRESSURE_S:
            return Alarm(
                AlarmKind.NO_PRESSURE,
                "The fan runs and no pressure builds up. It was stopped; look at hoses, doors and the fan's cover.",
            )
        fell = (
            seen.expected_pa is not None
            and seen.flow_share > COLLAPSE_FLOW_SHARE
            and seen.induced_pa < COLLAPSE_SHARE * seen.expected_pa
        )
        if self._collapse.held_s(seen.now_ns, fell) > COLLAPSE_S:
            return Alarm(
                AlarmKind.COLLAPSE,
                "This flow should give far more pressure. The fan was stopped: a hose is off, a door is open, or "
                "another flow range is fitted than entered.",
            )
        over = seen.expected_pa is not None and seen.expected_pa > OVERFLOW_PA
        if self._overflow.held_s(seen.now_ns, over) > OVERFLOW_S:
            return Alarm(
                AlarmKind.OVERFLOW,
                f"The fan moves what took {OVERFLOW_PA:.0f} Pa and more before. It was stopped: something was opened, "
                "or the gauge does not feel the pressure.",
            )
        return None
