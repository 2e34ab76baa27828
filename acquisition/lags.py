"""What the linearised pressure should do after a step of the fan, and how slow this fan turns out to be. Pure.

A fan coasts down slower than it is driven up, each make differently. So the same commands go through models of several
lags, and the one whose course looks most like what was seen is believed: after a step or two the model is that of the
fan that is there.
"""

from __future__ import annotations

import math
from collections import deque

import numpy as np

FAN_LAG_S = 1.1
"""Before a step was seen."""
LATENCY_S = 0.25
GAUGE_LAG_S = 0.25
CANDIDATES_S = (0.8, 0.95, FAN_LAG_S, 1.25, 1.4, 1.6)
PRIOR_WEIGHT = 0.05
"""Of ln^2 of a candidate over the usual lag, against the share of a step's course that a model leaves unexplained."""
FEWEST_TICKS, MOST_TICKS = 25, 600
"""So long a step is looked at; a pressure that is held for hours shows no more of the fan."""
LEAST_MOVE = 0.01
"""In the linearised variable, a speed: a smaller step shows nothing."""


class StepModel:
    """What the linearised pressure should do: latency, the lag of the fan, the lag of the building."""

    def __init__(self, value: float, fan_lag_s: float = FAN_LAG_S) -> None:
        """Stand at a value."""
        self._delay: deque[tuple[float, float]] = deque()
        self._time_s = 0.0
        self._delayed = self._fan = value
        self._fan_lag_s = fan_lag_s
        self.value = value

    def step(self, command: float, dt_s: float, building_lag_s: float) -> None:
        """Go on for one tick under a command."""
        self._time_s += dt_s
        self._delay.append((self._time_s + LATENCY_S, command))
        while self._delay and self._delay[0][0] <= self._time_s:
            self._delayed = self._delay.popleft()[1]
        self._fan += (self._delayed - self._fan) * (1 - math.exp(-dt_s / self._fan_lag_s))
        self.value += (self._fan - self.value) * (1 - math.exp(-dt_s / (building_lag_s + GAUGE_LAG_S)))


class FanLags:
    """The lags of the fan upwards and downwards, from the steps seen so far."""

    def __init__(self) -> None:
        """Have seen no step."""
        usual = [PRIOR_WEIGHT * math.log(lag / FAN_LAG_S) ** 2 for lag in CANDIDATES_S]
        self._unexplained = {up: np.array(usual) for up in (True, False)}
        self._models: list[StepModel] = []
        self._seen: list[float] = []
        self._courses: list[list[float]] = []

    def lag_s(self, *, up: bool) -> float:
        """Return the lag that explains the steps in one way best."""
        return CANDIDATES_S[int(np.argmin(self._unexplained[up]))]

    def begin(self, value: float) -> None:
        """Begin to watch a step, the linearised pressure standing at a value."""
        self._models = [StepModel(value, lag) for lag in CANDIDATES_S]
        self._seen, self._courses = [], [[] for _ in CANDIDATES_S]

    def watch(self, value: float, command: float, dt_s: float, building_lag_s: float) -> None:
        """Take in one tick of the step: the linearised pressure, and the speed that is commanded from now on.

        Only the first `MOST_TICKS` count.
        """
        if len(self._seen) == MOST_TICKS:
            return
        self._seen.append(value)
        for model, course in zip(self._models, self._courses, strict=True):
            course.append(model.value)
            model.step(command, dt_s, building_lag_s)

    def learn(self) -> None:
        """Take the step to an end: every model may be off by a factor and a constant, as the learned curve is."""
        seen = np.array(self._seen)
        moved = float(seen[-5:].mean() - seen[:3].mean()) if len(seen) >= FEWEST_TICKS else 0.0
        if abs(moved) >= LEAST_MOVE:
            away = float(np.sum((seen - seen.mean()) ** 2))
            left = []
            for course in self._courses:
                ways = np.column_stack([course, np.ones(len(seen))])
                rest = seen - ways @ np.linalg.lstsq(ways, seen, rcond=None)[0]
                left.append(float(rest @ rest) / away)
            self._unexplained[moved > 0] += left
        self._seen = []
