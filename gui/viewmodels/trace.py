"""The envelope pressure of the last minutes: readings, the spans that are averaged, the targets."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import timedelta

import numpy as np
from numpy.typing import NDArray

from acquisition.rig import Role
from acquisition.snapshot import Snapshot, WindowView
from acquisition.steps import WindowKind
from drivers.clock import NS_PER_S
from gui.viewmodels.shown import RecordedRun, ShownTest
from gui.viewmodels.trace_marks import TraceMark, marks_of
from gui.words import say

Values = NDArray[np.float64]
SHOWN_S = 180.0
"""The trace shows three minutes until somebody zooms or drags."""
KEPT_S = 900.0
AHEAD_S = 4.0
"""Room for the word "now" at the right."""
GAP_S = 1.0
"""Readings further apart than this are not joined."""
SMALLEST_PA = 5.0


@dataclass(frozen=True, slots=True)
class Span:
    """A stretch of time, in seconds: before now, or since the beginning of a record."""

    start_s: float
    end_s: float


@dataclass(frozen=True, slots=True, eq=False)
class TracePicture:
    """The trace. `x_s` and `y_pa` of shape (n,), a gap is one NaN. Targets are (x, y) pairs of line ends, with gaps.

    `inverted` when the pressures are negative: the larger ones stand on top.
    """

    title: str
    x_s: Values
    y_pa: Values
    spans: tuple[Span, ...]
    target_x_s: Values
    target_y_pa: Values
    x_range: tuple[float, float]
    y_range: tuple[float, float]
    inverted: bool
    note: str
    follows: bool
    marks: tuple[TraceMark, ...] = ()


@dataclass(slots=True)
class TraceScale:
    """The pressure scale of the trace: grows with what is shown, and does not jump with every reading."""

    low: float = -SMALLEST_PA
    high: float = SMALLEST_PA
    inverted: bool = False
    _settled: bool = field(default=False)

    def fit(self, lows: float, highs: float) -> tuple[float, float]:
        """Return a range that holds the values; it gives way at once and comes back only where it is far too wide."""
        low, high = _round_down(lows), _round_up(highs)
        if max(-low, high) <= SMALLEST_PA:
            low, high = -SMALLEST_PA, SMALLEST_PA
        too_wide = (self.high - self.low) > 1.8 * (high - low)
        if not self._settled or too_wide or lows < self.low or highs > self.high:
            self.low, self.high, self._settled = low, high, True
        self.inverted = -self.low > self.high
        return self.low, self.high


def live_trace(snapshot: Snapshot, times_ns: NDArray[np.int64], values: Values, scale: TraceScale) -> TracePicture:
    """Return the trace of the running engine; the readings are those of the last `KEPT_S`."""
    x = (times_ns - snapshot.now_ns) / NS_PER_S
    windows = [window for window in snapshot.windows if _age_s(window, snapshot.now_ns) < KEPT_S]
    zero_pa = snapshot.zero_pa or 0.0
    steps = _steps(windows, snapshot.now_ns, snapshot.now_ns, zero_pa, snapshot.target_pa)
    picture = _picture(say("Last 3 minutes"), x, values, windows, steps, snapshot.now_ns, scale, follows=True)
    marks = marks_of(snapshot.flags, snapshot.utc)
    return replace(picture, marks=tuple(item for item in marks if item.at_s > -KEPT_S))


def recorded_trace(shown: ShownTest, index: int) -> TracePicture:
    """Return the trace of a whole run out of the job file, in seconds since its first reading."""
    run: RecordedRun = shown.recorded[index]
    view = shown.runs[index]
    times, values = run.data.slice(Role.ENVELOPE, -(2**63), run.end_ns + 1)
    start_ns = int(times[0]) if len(times) else run.end_ns
    steps = _steps(run.windows, start_ns, run.end_ns, view.zero_before_pa or 0.0, None)
    x = (times - start_ns) / NS_PER_S
    title = say("Readings of the run, {direction}", direction=say(view.direction))
    picture = _picture(title, x, values, run.windows, steps, start_ns, TraceScale(), follows=False)
    length_s = max((run.end_ns - start_ns) / NS_PER_S, 10.0)
    began = run.started + timedelta(seconds=(start_ns - run.started_ns) / NS_PER_S)
    marks = tuple(item for item in marks_of(run.flags, began) if -1.0 < item.at_s < length_s + 1.0)
    return replace(picture, x_range=(0.0, length_s * (1 + AHEAD_S / SHOWN_S)), marks=marks)


def _picture(
    title: str,
    x_s: Values,
    y_pa: Values,
    windows: Sequence[WindowView],
    steps: tuple[Values, Values],
    origin_ns: int,
    scale: TraceScale,
    *,
    follows: bool,
) -> TracePicture:
    seen = y_pa[x_s >= -SHOWN_S] if follows else y_pa
    seen = seen[np.isfinite(seen)]
    goals = steps[1][(steps[0] >= -SHOWN_S) & np.isfinite(steps[1])] if follows else steps[1][np.isfinite(steps[1])]
    everything = [0.0, *(_ends(seen)), *(_ends(goals))]
    y_range = scale.fit(min(everything), max(everything))
    spans = tuple(
        Span((window.start_ns - origin_ns) / NS_PER_S, ((window.end_ns or origin_ns) - origin_ns) / NS_PER_S)
        for window in windows
    )
    x_gapped, y_gapped = with_gaps(x_s, y_pa)
    return TracePicture(
        title=title,
        x_s=x_gapped,
        y_pa=y_gapped,
        spans=spans,
        target_x_s=steps[0],
        target_y_pa=steps[1],
        x_range=(-SHOWN_S, AHEAD_S),
        y_range=y_range,
        inverted=scale.inverted,
        note=say("shaded: the readings that are averaged") if spans else "",
        follows=follows,
    )


def with_gaps(x_s: Values, y_pa: Values) -> tuple[Values, Values]:
    """Put one NaN where readings are further apart than `GAP_S`."""
    if len(x_s) < 2:
        return x_s, y_pa
    at = np.flatnonzero(np.diff(x_s) > GAP_S) + 1
    if not len(at):
        return x_s, y_pa
    return np.insert(x_s, at, (x_s[at - 1] + x_s[at]) / 2), np.insert(y_pa, at, np.nan)


def _steps(
    windows: Sequence[WindowView], origin_ns: int, now_ns: int, zero_pa: float, target_pa: float | None
) -> tuple[Values, Values]:
    """Return the targets as the gauge should show them: a level from the end of one window to the end of the next."""
    x: list[float] = []
    y: list[float] = []
    since: int | None = None
    for window in windows:
        end_ns = window.end_ns or now_ns
        if window.kind is WindowKind.POINT and window.target_pa is not None:
            start_ns = window.start_ns if since is None else since
            ends = (start_ns - origin_ns) / NS_PER_S, (end_ns - origin_ns) / NS_PER_S
            _level(x, y, *ends, window.target_pa + zero_pa)
        since = end_ns
    if target_pa is not None and since is not None and since < now_ns:
        _level(x, y, (since - origin_ns) / NS_PER_S, (now_ns - origin_ns) / NS_PER_S, target_pa + zero_pa)
    return np.array(x), np.array(y)


def _level(x: list[float], y: list[float], start_s: float, end_s: float, level_pa: float) -> None:
    x += [start_s, end_s, end_s]
    y += [level_pa, level_pa, math.nan]


def _ends(values: Values) -> tuple[float, ...]:
    return (float(values.min()), float(values.max())) if len(values) else ()


def _age_s(window: WindowView, now_ns: int) -> float:
    return 0.0 if window.end_ns is None else (now_ns - window.end_ns) / NS_PER_S


def _round_up(value: float) -> float:
    """Return the next multiple of 10 Pa (of 1 Pa for small values), a little above."""
    if value <= 0.5:
        return 0.0 if value <= 0 else 1.0
    room = value * 1.04
    return math.ceil(room) if room <= SMALLEST_PA else math.ceil(room / 10) * 10.0


def _round_down(value: float) -> float:
    return -_round_up(-value)
