"""One moment of the program: everything that the pictures of the window are made from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from acquisition.job import JobDetails
from acquisition.plan import TestPlan
from acquisition.rig import RigSpec
from acquisition.snapshot import EngineState, Snapshot
from analysis.records import Direction
from analysis.units import Display
from drivers.health import Fact
from gui.viewmodels.shown import ShownTest
from gui.words import mark, say


class Place(StrEnum):
    """The places of the window, in the order of the work."""

    JOB = "job"
    SETUP = "setup"
    RIG = "rig"
    TEST = "test"
    HUNT = "hunt"
    STAGES = "stages"
    REPORT = "report"

    @property
    def word(self) -> str:
        """The name on the rail."""
        return say(_PLACES[self])


_PLACES = {
    Place.JOB: mark("Job"),
    Place.SETUP: mark("Set-up"),
    Place.RIG: mark("Rig"),
    Place.TEST: mark("Test"),
    Place.HUNT: mark("Hunt"),
    Place.STAGES: mark("Stages"),
    Place.REPORT: mark("Report"),
}


class RigState(StrEnum):
    """Whether a rig is connected.

    NONE --connect--> CONNECTED --disconnect--> CLOSING (fan to its safe state) --> NONE
    """

    NONE = "none"
    CONNECTED = "connected"
    CLOSING = "closing"


@dataclass(frozen=True, slots=True)
class RigMoment:
    """The rig: `source` is the id of the simulated one that is connected; `first_source` the one that could be."""

    state: RigState = RigState.NONE
    spec: RigSpec | None = None
    source: str = ""
    first_source: str = ""

    @property
    def simulated(self) -> bool:
        """Whether the readings are invented."""
        return self.spec is not None and self.spec.simulated


@dataclass(frozen=True, slots=True)
class JobMoment:
    """The open job. `fresh` is true from the end of a test until its report was looked at."""

    path: str
    details: JobDetails
    plan: TestPlan
    interrupted: str = ""
    alarm: str = ""
    fresh: bool = False
    forbidden: str = ""
    """Why no test is possible, by the safety answers."""
    pressurize_only: bool = False
    cap_pa: float | None = None
    """How they limit a test."""
    owed: tuple[str, ...] = ()
    """What is to be put back."""


@dataclass(frozen=True, slots=True)
class Moment:
    """What is so right now. `snapshot` is None without a rig, `shown` None before the first test of the job."""

    place: Place
    display: Display
    rig: RigMoment
    job: JobMoment | None = None
    snapshot: Snapshot | None = None
    shown: ShownTest | None = None
    report_saved: bool = False
    closing: bool = False
    sealing: str = ""
    """Name of the leak that is being sealed, empty while none is."""
    health: Mapping[str, tuple[Fact, ...]] = field(default_factory=dict)
    """What is known of the health of each instrument, by its name."""

    @property
    def state(self) -> EngineState:
        """What the engine does; idle without one."""
        return self.snapshot.state if self.snapshot is not None else EngineState.IDLE

    @property
    def busy(self) -> bool:
        """Whether a test is under way."""
        return self.state is not EngineState.IDLE


def directions_words(directions: tuple[Direction, ...]) -> str:
    """Return the directions of a test in words."""
    return say(" and ").join(say(direction.value) for direction in directions)
