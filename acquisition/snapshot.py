"""What the engine shows of itself: frozen, pulled by whoever draws it, safe to hand between threads."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from acquisition.fitted import Corrected
from acquisition.planning.outlook import Outlook
from acquisition.rig import Role
from acquisition.steps import Ask, WindowKind
from analysis.records import Direction, Test, TestResult
from drivers.instrument import LinkStatus


class EngineState(StrEnum):
    """What the engine is doing.

    IDLE --begin--> RUNNING <--answer-- ASKING
                    |  ^ resume
                    v  |
                    PAUSED     (stop key, watchdog, lost link; the fan is brought to rest)
    RUNNING/PAUSED --abandon or end of procedure--> IDLE
    """

    IDLE = "idle"
    RUNNING = "running"
    ASKING = "asking"
    PAUSED = "paused"


class Activity(StrEnum):
    """What the running step does."""

    NONE = "none"
    ZERO = "zero-flow pressure"
    APPROACH = "approach"
    SETTLE = "settle"
    AVERAGE = "average"
    HOLD = "hold"
    STOPPING = "stopping the fan"


class PointState(StrEnum):
    """State of a row in the table of points."""

    PENDING = "pending"
    AVERAGING = "averaging"
    TAKEN = "taken"
    STRUCK = "struck"


@dataclass(frozen=True, slots=True)
class PointView:
    """One point of the current or last run. Means are running means while averaging, None while pending.

    `window` identifies a taken point (for striking), None before. `flow_error_pct` is the standard error of the flow
    at the point in percent, autocorrelation allowed for; None when it cannot be told. With one fan `flow_range` names
    the range that the flow was worked out with, out of `element_pa`; `corrected` are those that
    had not been entered, and `corrected_words` says so.
    """

    target_pa: float
    state: PointState
    window: int | None = None
    envelope_pa: float | None = None
    flow_m3_h: float | None = None
    flow_error_pct: float | None = None
    seconds: float | None = None
    struck_reason: str = ""
    flow_range: str = ""
    element_pa: float | None = None
    corrected: tuple[Corrected, ...] = ()
    corrected_words: str = ""


@dataclass(frozen=True, slots=True)
class WindowView:
    """An averaging window on the time axis (monotonic nanoseconds of the engine's clock); `end_ns` None while open."""

    kind: WindowKind
    start_ns: int
    end_ns: int | None
    target_pa: float | None


@dataclass(frozen=True, slots=True)
class HeldView:
    """A pressure that is held, for `seconds` so far.

    `flow_m3_h` is what leaks at the target, a mean over the last seconds, None at first; `first_m3_h` is what it was at
    the beginning.
    """

    seconds: float
    flow_m3_h: float | None = None
    first_m3_h: float | None = None
    began_ns: int = 0
    """Stamp on the clock of the engine from which on it was held."""

    @property
    def change(self) -> float | None:
        """Change of the leakage since the beginning, as a share."""
        if self.flow_m3_h is None or self.first_m3_h is None:
            return None
        return self.flow_m3_h / self.first_m3_h - 1.0


@dataclass(frozen=True, slots=True)
class RunView:
    """One run of the current or last test."""

    direction: Direction
    points: tuple[PointView, ...]
    zero_before_pa: float | None = None
    zero_after_pa: float | None = None
    complete: bool = False


@dataclass(frozen=True, slots=True)
class RecordingView:
    """State of the record on disk. `alarm` is a sentence when the disk does not take the data, else empty."""

    elapsed_s: float
    saved_utc: datetime | None
    alarm: str = ""


class Severity(StrEnum):
    """How much a flag matters."""

    NOTE = "note"
    ATTENTION = "attention"
    ALARM = "alarm"


@dataclass(frozen=True, slots=True)
class Flag:
    """Something noticed during a run: a stable `id`, one sentence, and when."""

    id: str
    severity: Severity
    sentence: str
    utc: datetime


@dataclass(frozen=True, slots=True)
class Snapshot:
    """Everything that a view needs, at one moment.

    `envelope_pa`, `flow_m3_h` are the newest readings smoothed over half a second, None without a live link;
    `fan_fraction` is the commanded speed 0..1. `target_pa` is the induced pressure to reach, with its sign.
    `activity_s` of `activity_total_s` have passed in the running step. `sentence` says what is happening or what to
    do. `test` and `result` are the current or last test so far; `result_gap` says what is still missing for a result.
    `paused_reason` is a sentence while PAUSED. `last_error` is a sentence when a run ended by a fault.
    """

    now_ns: int
    utc: datetime
    state: EngineState
    sentence: str
    activity: Activity
    activity_s: float
    activity_total_s: float | None
    direction: Direction | None
    target_pa: float | None
    zero_pa: float | None
    envelope_pa: float | None
    flow_m3_h: float | None
    fan_fraction: float
    ask: Ask | None
    paused_reason: str
    links: tuple[LinkStatus, ...]
    recording: RecordingView | None
    runs: tuple[RunView, ...]
    windows: tuple[WindowView, ...]
    flags: tuple[Flag, ...]
    test: Test | None
    result: TestResult | None
    result_gap: str
    last_error: str = ""
    hand: str = ""
    """What a person at the knob of the fan is asked to do: raise, lower, hold, off; empty where nobody is needed."""
    outlook: Outlook | None = None
    """What the test can be expected to know, from its first zero-flow record on."""
    held: HeldView | None = None
    hold_pa: float | None = None
    """The target of a hold that is under way, from its first moment on; None where nobody holds a pressure."""
    typing: tuple[Role, ...] = ()
    """The readings that a person is asked to type now."""
