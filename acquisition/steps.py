"""The steps that a procedure is made of: plain data, executed by the engine.

A procedure is a generator of steps. It gets the result of each step sent back, holds no device and no clock, and is
tested by iterating it.
"""

from __future__ import annotations

from collections.abc import Generator
from dataclasses import dataclass
from enum import StrEnum

from acquisition.fitted import Corrected
from acquisition.planning.outlook import Outlook
from analysis.records import Direction, FlowRange, Point, ZeroFlow


class WindowKind(StrEnum):
    """What an averaging window is for."""

    ZERO_BEFORE = "zero before"
    POINT = "point"
    ZERO_AFTER = "zero after"


@dataclass(frozen=True, slots=True)
class BeginRun:
    """Start to record one direction; a fan that can turn by itself is told the direction.

    With `continues` what was recorded of it before an interruption is gone on with.
    """

    direction: Direction
    continues: bool = False


@dataclass(frozen=True, slots=True)
class EndRun:
    """End the recording of the direction and seal it with its digest."""


@dataclass(frozen=True, slots=True)
class Ask:
    """Put a question to the person at the screen. The result is the chosen label, one of `choices`.

    The first choice is the way on: it is the primary button, and the answer that a simulated rig gives by itself.
    """

    id: str
    text: str
    choices: tuple[str, ...]
    caution: str = ""


@dataclass(frozen=True, slots=True)
class MeasureZero:
    """Read the zero-flow pressure with the fan at rest and covered. The result is a `ZeroFlow`."""

    kind: WindowKind
    seconds: float


@dataclass(frozen=True, slots=True)
class Foretell:
    """Say what the test can be expected to know; it stands on show and in the record."""

    outlook: Outlook


@dataclass(frozen=True, slots=True)
class SetTargets:
    """Announce the targets that will be taken, in their order, with the run's sign."""

    targets_pa: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class CheckHoses:
    """Raise the fan a little and see what each hose answers. The result is a sentence, empty when all is well."""


@dataclass(frozen=True, slots=True)
class Approach:
    """Raise the fan from rest, gently, until the first target can be predicted. `target_pa` has the run's sign."""

    target_pa: float


@dataclass(frozen=True, slots=True)
class GoTo:
    """Make `target_pa` the target of the controller (induced plus zero-flow pressure is what the gauge then shows)."""

    target_pa: float


@dataclass(frozen=True, slots=True)
class Settle:
    """Wait until the pressure stands at the target, or until the time is up. The result is true when it settled."""

    timeout_s: float = 25.0


@dataclass(frozen=True, slots=True)
class Average:
    """Hold the fan and average. The result is a `Point`.

    With `longest_s` the averaging goes on beyond `seconds` until the standard error of the flow at the target is at
    most `share` of it, and ends at `longest_s` in any case.
    """

    seconds: float
    longest_s: float | None = None
    share: float = 0.0


@dataclass(frozen=True, slots=True)
class Wish:
    """What somebody wants of a pressure that is held: another target, with its sign, or None: an end.

    With `zero` the zero-flow pressure is read again, then the same pressure is held on.
    """

    target_pa: float | None
    zero: bool = False


@dataclass(frozen=True, slots=True)
class Hold:
    """Keep the pressure at the target until a person wants something else. The result is a `Wish`."""


@dataclass(frozen=True, slots=True)
class FitRange:
    """Take it as done that the flow range of this name is now fitted on a fan, counted from 0."""

    fan: int
    name: str


@dataclass(frozen=True, slots=True)
class Heard:
    """What was asked for since the last time: targets to take again (magnitudes). `fitted` is the range of each fan."""

    again_pa: tuple[float, ...] = ()
    fitted: tuple[FlowRange, ...] = ()


@dataclass(frozen=True, slots=True)
class Listen:
    """Ask what somebody wants before it goes on. The result is a `Heard`."""


@dataclass(frozen=True, slots=True)
class StrikeLast:
    """Leave the point that was just taken out of the result, with a reason."""

    reason: str


@dataclass(frozen=True, slots=True)
class StopFan:
    """Bring the fan to rest and wait until it is."""


@dataclass(frozen=True, slots=True)
class Mark:
    """Write a remark into the record; one that is `notable` stands in the report too."""

    kind: str
    text: str
    notable: bool = False


@dataclass(frozen=True, slots=True)
class Checkpoint:
    """From here the engine goes on after an interruption: the steps since are done again."""


@dataclass(frozen=True, slots=True)
class PlayUntil:
    """Let a record play up to a moment on its own clock; then close the window that was closed there, if any."""

    at_ns: int
    kind: WindowKind | None = None
    start_ns: int = 0
    target_pa: float | None = None
    struck_reason: str | None = None
    corrected: tuple[Corrected, ...] = ()


Step = (
    BeginRun
    | EndRun
    | Ask
    | MeasureZero
    | Foretell
    | SetTargets
    | CheckHoses
    | Approach
    | GoTo
    | Settle
    | Average
    | Hold
    | FitRange
    | Listen
    | StrikeLast
    | StopFan
    | Mark
    | Checkpoint
    | PlayUntil
)
StepResult = ZeroFlow | Point | Wish | Heard | str | bool | None
Procedure = Generator[Step, StepResult, None]
