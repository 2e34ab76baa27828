"""What a test is to do: chosen in the window or on the command line, stored with the test."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from acquisition.kinds import TestKind
from analysis.effective import QUANTITIES
from analysis.errors import InvalidInput
from analysis.limits import shipped_limits
from analysis.meaning import Surroundings
from analysis.methods import method_of
from analysis.records import Air, Building, Direction, Kit, Limit

STANDARD_TARGETS_PA = (60.0, 54.0, 48.0, 43.0, 38.0, 33.0, 28.0, 23.0, 18.0, 13.0)
"""Highest first: it shows a loose seal at once (common practice, no source); steps of at most 10 Pa."""


FEWEST_POINTS = 5
LOWEST_PA = 10.0
"""ISO 9972: no target is lower (from memory)."""


def stations(targets_pa: Sequence[float]) -> bool:
    """Tell whether targets are read several times each, as single-point and two-point tests want it."""
    return len(set(targets_pa)) < len(targets_pa)


@dataclass(frozen=True, slots=True)
class Schedule:
    """How much time a test takes: seconds of a zero-flow record and of a point, records between the points.

    With `longest_average_s` a point is averaged for longer where the wind makes it necessary, up to that.
    """

    zero_s: float
    average_s: float
    zeros_between: int = 0
    longest_average_s: float | None = None


SCHEDULES = {
    "quick": Schedule(30.0, 10.0),
    "standard": Schedule(60.0, 20.0),
    "precision": Schedule(150.0, 50.0),
    "windy": Schedule(45.0, 20.0, zeros_between=3, longest_average_s=70.0),
}
"""In calm air averaging longer brings little; wind wants it, or zero-flow records between the points.

In 6 m/s with one outdoor tap, 40 simulated houses: standard errs by 1.11 % in 6.1 min a direction, windy by 0.85 % in
11.8 min, precision by 0.79 % in 13.8 min (root mean square of the flow at 50 Pa).
"""
OWN_SCHEDULE = "own"


@dataclass(frozen=True, slots=True)
class TestPlan:
    """A test before it starts. Targets are magnitudes in the order in which they are taken."""

    building: Building
    air: Air
    method: str = "iso9972"
    kind: TestKind = TestKind.CODE
    stage: str = ""
    limit: Limit | None = None
    directions: tuple[Direction, ...] = (Direction.DEPRESSURIZE,)
    targets_pa: tuple[float, ...] = STANDARD_TARGETS_PA
    hold: bool = False
    """Hold the first target until somebody ends it, instead of a test by the method."""
    zero_s: float = 60.0
    average_s: float = 20.0
    zeros_between: int = 0
    """Zero-flow records between the points, on top of the one before and the one after them."""
    longest_average_s: float | None = None
    """A point is averaged until it is good enough, at most so long; None: always for `average_s`."""
    published: tuple[str, ...] = ()
    """Ids of limits of codes and programmes that the result is held against too."""
    hose_check: bool = True
    """Whether a small step of the fan tells first whether every hose answers."""
    hose_check_reason: str = ""
    """Why that was left out."""
    preparation: str = ""
    """Id of the state in which the method wants the building, empty where nobody has said."""
    cap_pa: float | None = None
    """Induced pressure that must not be passed, None where only the watchdog's own limit holds."""
    pressurize_only: bool = False
    """Whether the safety answers forbid to depressurize."""
    safety: str = ""
    """What the safety questions came to where all were answered before the test; empty: the test asks."""
    kit: Kit = field(default_factory=Kit)
    surroundings: Surroundings = field(default_factory=Surroundings)

    def by_method(self, method_id: str) -> TestPlan:
        """Return the plan by another method, with the sequence that it asks for. Raises `InvalidInput`."""
        method = method_of(method_id)
        asked = method.sequence
        return replace(
            self,
            method=method.id,
            preparation=self.preparation if self.preparation in method.preparations else "",
            directions=asked.directions,
            targets_pa=asked.targets_pa,
            zero_s=asked.zero_s,
            average_s=asked.average_s,
            zeros_between=0,
            longest_average_s=None,
        )

    @property
    def allowed_targets_pa(self) -> tuple[float, ...]:
        """The targets up to the cap; where too few are left, as many as are needed from the cap down.

        Those that are read several times are brought down to the cap: a method by stations wants each as often.
        """
        if self.cap_pa is None or max(self.targets_pa) <= self.cap_pa:
            return self.targets_pa
        if stations(self.targets_pa):
            return tuple(min(target, self.cap_pa) for target in self.targets_pa)
        kept = tuple(target for target in self.targets_pa if target <= self.cap_pa)
        fewest = min(len(self.targets_pa), FEWEST_POINTS)
        if len(kept) >= fewest:
            return kept
        step = (self.cap_pa - min(LOWEST_PA, self.cap_pa / 2)) / max(fewest - 1, 1)
        return tuple(round(self.cap_pa - at * step, 1) for at in range(fewest))

    @property
    def schedule(self) -> str:
        """Name of the schedule that has these durations, `own` where none has."""
        known = Schedule(self.zero_s, self.average_s, self.zeros_between, self.longest_average_s)
        return next((name for name, item in SCHEDULES.items() if item == known), OWN_SCHEDULE)

    def on_schedule(self, name: str) -> TestPlan:
        """Return the plan with the durations of a schedule. Raises `InvalidInput`."""
        if name not in SCHEDULES:
            raise InvalidInput("schedule", name, f"one of {', '.join(SCHEDULES)} is needed")
        item = SCHEDULES[name]
        return replace(
            self,
            zero_s=item.zero_s,
            average_s=item.average_s,
            zeros_between=item.zeros_between,
            longest_average_s=item.longest_average_s,
        )

    @property
    def limits(self) -> tuple[Limit, ...]:
        """The limits as far as they can be held against a result: a rate needs the volume or area it is divided by.

        That of the stage stands in front. A published one that this version does not know is left out.
        """
        known = {item.id: item.limit for item in shipped_limits().limits}
        own = () if self.limit is None else (self.limit,)
        wanted = (*own, *(known[name] for name in self.published if name in known))
        return tuple(item for item in wanted if self._can_be_held(item))

    def _can_be_held(self, limit: Limit) -> bool:
        quantity = QUANTITIES.get(limit.quantity)
        return quantity is None or quantity.divisor is None or getattr(self.building, quantity.divisor) is not None
