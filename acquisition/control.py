"""The pressure controller: a set point in, a fan speed out. Pure: it holds no device and reads no clock.

Pressure against speed is a power law (fan laws and leakage curve together), so the controller works in the linearised
variable `y = a * d**m`, in which the plant has the gain 1 at 10 Pa and at 60 Pa alike: one tuning fits all. A
feed-forward from the points seen so far does the work; a model of the plant says what the pressure should be doing by
now, and a PI term acts on the difference between the two alone, so that a step of the target winds nothing up.

Tuning by the SIMC rule (S. Skogestad, Journal of Process Control 13, 2003). All pressures here are magnitudes: induced
pressure in the direction of the run.
"""

from __future__ import annotations

import math
from collections import deque
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from acquisition.dither import Dither
from acquisition.lags import FAN_LAG_S, GAUGE_LAG_S, LATENCY_S, FanLags, StepModel
from acquisition.leakline import TYPICAL_EXPONENT
from acquisition.surge import Surge

LOWEST_SPEED = 0.06
HIGHEST_SPEED = 1.0
QUANTUM = 0.002
SLEW_PER_S = 0.6
GENTLE_SLEW_PER_S = 0.10
MOST_FALL = 0.25
"""A fan is told at most so much less than it turns: it coasts as it likes, and a leaky house would fall too far."""
LEAST_SHARE = 0.6
"""Of the speed that the target needs, when a push downwards lets the fan fall below it: much slower, and the house
blows back through the fan, which brings a tight one down twice as fast as its model says."""
SLOPE_TICKS = 5
START_SPEED = 0.08
PRIOR_EXPONENT = 0.58
PRIOR_WEIGHT = 0.05
"""Ridge of the exponent in ln^2 units: about what two points 20 % apart in pressure weigh."""
POLYTROPIC = 1.2
STANDARD_PRESSURE_PA = 101_325.0
CALM_PA = 1.0
JOIN_ABOVE, LEAVE_BELOW = 0.95, 0.80
"""Speed of the fans that run from which one more joins, and that of one less below which one leaves."""
NOTHING_PA, NOTHING_SPEED = 2.0, 0.28
"""Fans that come to this speed from rest and move no pressure have too much house before them: one more joins."""
AT_TOP_S, SHORT_OF = 2.0, 0.97
"""So long at full speed and short of the target, one more fan joins."""


@dataclass(frozen=True, slots=True)
class Plant:
    """What is known of the building: its volume, and the wind as spread of 3 s means of the zero-flow pressure."""

    volume_m3: float
    wind_spread_pa: float = 0.0

    def lag_s(self, pressure_pa: float, flow_m3_h: float) -> float:
        """Return the time constant of the air in the building at a pressure and flow: V dp/(k p n q)."""
        flow_m3_s = max(flow_m3_h, 1.0) / 3600.0
        lag = (
            self.volume_m3 * max(pressure_pa, 1.0) / (POLYTROPIC * STANDARD_PRESSURE_PA * TYPICAL_EXPONENT * flow_m3_s)
        )
        return min(max(lag, 0.05), 60.0)

    def storage_m3_h(self, slope_pa_s: float) -> float:
        """Return the flow that goes into the building's air while its pressure changes: V/(k p) dP/dt."""
        return self.volume_m3 / (POLYTROPIC * STANDARD_PRESSURE_PA) * slope_pa_s * 3600.0


class SpeedCurve:
    """Speed against pressure, `s = a * d**m`, learned from the points at which the pressure stood."""

    def __init__(self) -> None:
        """Know nothing yet."""
        self._points: list[tuple[float, float]] = []
        self._guessed = False
        self.exponent = PRIOR_EXPONENT
        self._level = 0.0

    @property
    def known(self) -> bool:
        """Whether there is a point."""
        return bool(self._points)

    def guess(self, speed: float, pressure_pa: float) -> None:
        """Take a point that was predicted on the way up; the first one that really stood replaces it."""
        self._points.clear()
        self.learn(speed, pressure_pa, windy=False)
        self._guessed = True

    def learn(self, speed: float, pressure_pa: float, *, windy: bool) -> None:
        """Take a point at which speed and pressure belonged together; in wind the level trusts all points more."""
        if speed <= 0 or pressure_pa <= 0.5:
            return
        if self._guessed:
            self._points.clear()
            self._guessed = False
        self._points.append((math.log(pressure_pa), math.log(speed)))
        mean_x = sum(x for x, _ in self._points) / len(self._points)
        mean_y = sum(y for _, y in self._points) / len(self._points)
        sxx = sum((x - mean_x) ** 2 for x, _ in self._points)
        sxy = sum((x - mean_x) * (y - mean_y) for x, y in self._points)
        self.exponent = (sxy + PRIOR_WEIGHT * PRIOR_EXPONENT) / (sxx + PRIOR_WEIGHT)
        levels = [y - self.exponent * x for x, y in self._points]
        latest = 0.3 if windy else 1.0
        self._level = latest * levels[-1] + (1 - latest) * sum(levels) / len(levels)

    def speed(self, pressure_pa: float) -> float:
        """Return the speed that holds a pressure; also the linearised variable y. Needs a point."""
        return math.exp(self._level + self.exponent * math.log(max(pressure_pa, 1e-9)))


class PressureController:
    """Brings the building to a target and holds it there.

    Use: `start` at rest, `approach` until it returns true, then `aim` for each target; call `update` once per tick.
    `hold` freezes the fan for averaging: chasing gusts adds nothing to a mean and spoils it for better estimators.
    """

    def __init__(self, plant: Plant, fans: int = 1) -> None:
        """Begin at rest. Of several fans the first runs alone as long as it can; those that run get one speed."""
        self._plant = plant
        self._fans = fans
        self.running = 1
        """How many of the fans get the speed, the others rest."""
        self._curves = [SpeedCurve() for _ in range(fans)]
        self._at_top_s = 0.0
        self.command = 0.0
        self.target_pa: float | None = None
        self._held: Dither | None = None
        self._integral = 0.0
        self._way_pa: deque[float] = deque(maxlen=SLOPE_TICKS + 1)
        self._model = StepModel(0.0)
        self._lags = FanLags()
        self._fan_lag_s = FAN_LAG_S
        self._lag_s = 1.0
        self._motor = 0.0
        self._gentle = True
        self._surge = Surge()

    @property
    def curve(self) -> SpeedCurve:
        """Speed against pressure for the fans that run."""
        return self._curves[self.running - 1]

    @property
    def plant(self) -> Plant:
        """What is known of the building."""
        return self._plant

    @property
    def speed_now(self) -> float:
        """The speed that the fan should have by now, its own lag allowed for."""
        return self._motor

    @property
    def saturated(self) -> bool:
        """Whether the fan is commanded as fast as it can."""
        return self.command >= HIGHEST_SPEED - QUANTUM

    @property
    def held_speed(self) -> float:
        """The speed about which the fan is held, the commanded one while it is not."""
        return self.command if self._held is None else self._held.speed

    @property
    def nudging(self) -> bool:
        """Whether the held fan swings strongly at present."""
        return self._held is not None and self._held.nudging

    @property
    def swing_pa(self) -> NDArray[np.float64]:
        """What a small swing of the held fan should have done to the pressure at the last ticks (n,); empty without."""
        return np.empty(0) if self._held is None else self._held.swing_pa

    @property
    def building_lag_s(self) -> float:
        """The time constant of the building where it stands."""
        return self._lag_s

    def know(self, plant: Plant) -> None:
        """Replace what is known of the building, for instance after the zero-flow pressure was read."""
        self._plant = plant

    def rest(self) -> None:
        """Command zero at once and forget the target; what was learned stays."""
        self.command = 0.0
        self.target_pa = None
        self._held = None
        self._gentle = True
        self._at_top_s = 0.0

    def forget(self) -> None:
        """Forget how speed and pressure belong together; the next target needs an approach."""
        self.rest()
        self.running = 1
        self._curves = [SpeedCurve() for _ in self._curves]

    def aim(self, target_pa: float, standing_pa: float) -> None:
        """Take a new target while the pressure stands at `standing_pa`; the curve has to be known.

        The model starts from where the building is, on the curve as it is now: the last point has moved it.
        """
        self.target_pa = target_pa
        self._held = None
        self._suit_fans(target_pa, standing_pa)
        self._begin_step(target_pa, standing_pa)

    def _begin_step(self, target_pa: float, standing_pa: float) -> None:
        self._integral = self._at_top_s = 0.0
        self._surge = Surge()
        standing = self.curve.speed(standing_pa)
        self._fan_lag_s = self._lags.lag_s(up=target_pa > standing_pa)
        self._model = StepModel(standing, self._fan_lag_s)
        self._lags.begin(standing)

    def hold(self) -> None:
        """Freeze the fan where feed-forward and integral have brought it."""
        if self.target_pa is None:
            return
        self._lags.learn()
        speed = _quantised(self.curve.speed(self.target_pa) + self._integral)
        per_pa = self.curve.exponent * speed / self.target_pa
        self._held = Dither(speed, per_pa, self._fan_lag_s, self._lag_s, self._plant.wind_spread_pa, least=QUANTUM)

    def nudge(self) -> None:
        """Swing a held fan once strongly, so that the pressure shows whether it is felt."""
        if self._held is not None:
            self._held.nudge()

    def raise_gently(self, dt_s: float, pressure_pa: float | None = None) -> None:
        """One tick of the first approach: raise the speed slowly from rest; without pressure by then, a fan joins."""
        nothing = pressure_pa is not None and pressure_pa < NOTHING_PA and self.command >= NOTHING_SPEED
        if nothing and self.running < self._fans:
            self.running += 1
            self._turn(_quantised(self.command * (self.running - 1) / self.running), dt_s)
            return
        self._move(max(self.command + GENTLE_SLEW_PER_S * dt_s, START_SPEED), dt_s, GENTLE_SLEW_PER_S)

    def stand(self, dt_s: float) -> None:
        """One tick at the present speed."""
        self._move(self.command, dt_s, SLEW_PER_S)

    def update(self, pressure_pa: float, flow_m3_h: float, dt_s: float) -> None:
        """One tick towards the target, or of holding.

        `pressure_pa` is the induced pressure in the direction of the run, `flow_m3_h` the flow through the fan.
        """
        if self.target_pa is None:
            self.rest()
            return
        self._lag_s = self._plant.lag_s(pressure_pa, self._leaking(pressure_pa, flow_m3_h, dt_s))
        if self._braked(pressure_pa, dt_s):
            # A point that is being averaged is spoilt; calm comes first.
            self._held = None
            return
        if self._held is not None:
            self._move(self._held.wanted(), dt_s, SLEW_PER_S)
            self._held.took(self.command, dt_s)
            return
        goal = self.curve.speed(self.target_pa)
        reached = self.curve.speed(pressure_pa)
        wanted = goal + self._push() * (goal - self._model.value)
        self._at_top_s = self._at_top_s + dt_s if self.saturated and pressure_pa < SHORT_OF * self.target_pa else 0.0
        if self._at_top_s > AT_TOP_S and self.running < self._fans:
            self._run(self.running + 1, pressure_pa)
            self._begin_step(self.target_pa, pressure_pa)
            return
        gain, reset_s = self._tuning()
        error = self._model.value - reached
        output = wanted + gain * error + self._integral
        if self._gentle and pressure_pa > 0.6 * self.target_pa:
            self._gentle = False
        least = max(output, LEAST_SHARE * goal)
        self._move(least, dt_s, 2 * GENTLE_SLEW_PER_S if self._gentle else SLEW_PER_S)
        # Back-calculation: what the fan could not do must not pile up. The model gets what the fan was really given.
        change = gain / reset_s * error + (self.command - output) / reset_s
        self._integral = min(max(self._integral + change * dt_s, -0.3), 0.3)
        self._model.step(self.command - (output - wanted), dt_s, self._lag_s)
        self._lags.watch(reached, self.command, dt_s, self._lag_s)

    def _leaking(self, pressure_pa: float, flow_m3_h: float, dt_s: float) -> float:
        """Return what leaks: the flow through the fan less what goes into the building's air while the pressure moves.

        On a long way down the fan moves next to nothing, and by its flow alone the building would seem far too slow.
        """
        self._way_pa.append(pressure_pa)
        slope_pa_s = (pressure_pa - self._way_pa[0]) / (max(len(self._way_pa) - 1, 1) * dt_s)
        leaking = flow_m3_h - self._plant.storage_m3_h(slope_pa_s)
        return leaking if leaking > 0.0 else flow_m3_h

    def _braked(self, pressure_pa: float, dt_s: float) -> bool:
        """Let the fan coast while the pressure runs away; tell whether it does."""
        assert self.target_pa is not None
        averaging, spread_pa = self._held is not None, self._plant.wind_spread_pa
        speed = self._surge.look(pressure_pa, self.target_pa, spread_pa, self._motor, dt_s, averaging=averaging)
        if speed is not None:
            self.curve.guess(speed, pressure_pa)
            self._begin_step(self.target_pa, pressure_pa)
        if self._surge.braking:
            self._turn(LOWEST_SPEED, dt_s)
        return self._surge.braking

    def _suit_fans(self, target_pa: float, standing_pa: float) -> None:
        """Let a fan join that the target needs, or leave that it does not need any more."""
        if self.curve.speed(target_pa) > JOIN_ABOVE and self.running < self._fans:
            self._run(self.running + 1, max(standing_pa, 1.0))
            return
        while self.running > 1 and self.curve.speed(target_pa) * self.running / (self.running - 1) < LEAVE_BELOW:
            self._run(self.running - 1, max(standing_pa, 1.0))

    def _run(self, count: int, standing_pa: float) -> None:
        """Go over to another number of fans, at the speed at which they move about as much together."""
        speed = min(self.curve.speed(standing_pa) * self.running / count, HIGHEST_SPEED)
        self.running = count
        if not self.curve.known:
            self.curve.guess(speed, standing_pa)
        self.command = _quantised(self.curve.speed(standing_pa))

    def _push(self) -> float:
        """Model feedback that brings fan and building, two lags in series, to a damping of 0.9."""
        fan, lag = self._fan_lag_s, self._lag_s + GAUGE_LAG_S + LATENCY_S
        return min(max(((fan + lag) / 1.8) ** 2 / (fan * lag) - 1.0, 0.0), 2.5)

    def _tuning(self) -> tuple[float, float]:
        """Return gain and reset time by the SIMC rule for two lags and a dead time, the shorter lag split by half."""
        longer, shorter = max(FAN_LAG_S, self._lag_s), min(FAN_LAG_S, self._lag_s)
        lag = longer + shorter / 2
        dead = LATENCY_S + GAUGE_LAG_S + 0.05 + shorter / 2
        closed = (2.0 if self._plant.wind_spread_pa > CALM_PA else 1.2) * dead
        return min(lag / (closed + dead), 2.5), min(lag, 4 * (closed + dead))

    def _move(self, wanted: float, dt_s: float, slew_per_s: float) -> None:
        step = slew_per_s * dt_s
        lowest = max(self.command - SLEW_PER_S * dt_s, self._motor - MOST_FALL)
        limited = min(max(wanted, lowest), self.command + step)
        self._turn(_quantised(min(max(limited, LOWEST_SPEED), HIGHEST_SPEED)), dt_s)

    def _turn(self, speed: float, dt_s: float) -> None:
        self.command = speed
        self._motor += (self.command - self._motor) * (1 - math.exp(-dt_s / FAN_LAG_S))


def _quantised(speed: float) -> float:
    return min(max(round(speed / QUANTUM) * QUANTUM, LOWEST_SPEED), HIGHEST_SPEED)
