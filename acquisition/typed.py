"""A test out of a hand-written record: pasted points become a test of the job that is marked as typed.

Each typed number is one reading of an instrument called "sheet", so that a typed test is kept, worked out, struck,
reported and verified like any other. How the single readings scattered nobody knows.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime

from acquisition.job import Job, Recorder
from acquisition.plan import TestPlan
from acquisition.rig import InstrumentSpec, RigSpec, Role
from acquisition.series import WindowRecord
from acquisition.steps import WindowKind
from analysis.errors import InvalidInput
from analysis.numbertext import parse_number
from analysis.records import Direction, FlowRange
from analysis.units import Display, Quantity, parse_value
from drivers.clock import seconds
from drivers.reading import Quality, Reading

COLUMNS = "pressure in Pa, flow"
COPIED_COLUMNS = 6
"""Of the table of points as the window copies it: sign, target, mean pressure, flow, standard error, time."""
TAKEN, NOT_TAKEN = ("✓", "✎"), ("✗", "○", "●")
"""Signs in front of its lines: points that count, and those that were struck or not finished."""
MOST_POINTS = 60
HIGHEST_PA = 200.0
PAUSE_S = 5.0
"""Between two windows; the record has times of its own, only their order means something."""
SHEET = RigSpec(
    name="Hand-written record",
    instruments=(InstrumentSpec("sheet", "typed", "", (("pressure", Role.ENVELOPE), ("flow", Role.FLOW))),),
    fan="",
    ranges=(FlowRange("typed", 1.0, 0.5, 0.0, 1.0),),
    fitted="typed",
    typed=True,
)


@dataclass(frozen=True, slots=True)
class TypedPoint:
    """A point as it stands on the sheet: envelope pressure with its sign (Pa), flow through the fan (m3/h)."""

    envelope_pa: float
    flow_m3_h: float


@dataclass(frozen=True, slots=True)
class TypedRun:
    """One direction. Zero-flow pressures are None where the sheet has none; `seconds` is how long each was averaged."""

    direction: Direction
    points: tuple[TypedPoint, ...]
    zero_before_pa: float | None = None
    zero_after_pa: float | None = None
    seconds: float = 1.0


def points_from(text: str, direction: Direction, display: Display) -> tuple[TypedPoint, ...]:
    """Return the points of pasted lines, each a pressure and a flow with a tab, a semicolon or blanks between.

    A first line without a number is a heading. Pressures may stand without their sign; flows are in the unit on the
    screen. The table of points as the window copies it is read too: its flows are in the unit of its heading, and what
    was struck there stays out. Raises `InvalidInput` with the number of the line.
    """
    given = [(at, line) for at, line in enumerate(text.splitlines(), 1) if line.strip()]
    unit = ""
    if given and not any(char.isdecimal() for char in given[0][1]):
        unit = _copied_unit(given[0][1])
        given = given[1:]
    lines = [(at, cells) for at, line in given if (cells := _cells(line, unit)) is not None]
    if not lines:
        raise InvalidInput("points", text, f"lines are needed: {COLUMNS}", shown="empty")
    if len(lines) > MOST_POINTS:
        raise InvalidInput("points", text, f"at most {MOST_POINTS} lines", shown=f"{len(lines)} lines long")
    return tuple(_point(at, cells, direction, display) for at, cells in lines)


def moment_of(text: str, field: str) -> datetime:
    """Return a day, with or without its time, as it was at this place; raises `InvalidInput`."""
    try:
        return datetime.fromisoformat(text.strip()).astimezone(UTC)
    except (ValueError, OverflowError, OSError) as error:
        raise InvalidInput(field, text, "a day such as 2026-05-04 or 2026-05-04 09:12 is needed") from error


def keep_typed(job: Job, plan: TestPlan, runs: Sequence[TypedRun], when: datetime) -> int:
    """Keep a typed test in the job and return its number; `when` is the time on the sheet. Raises `InvalidInput`."""
    if not runs or not all(run.points for run in runs):
        raise InvalidInput("points", None, "at least one direction with points is needed", shown="missing")
    directions = tuple(run.direction for run in runs)
    targets_pa = tuple(abs(point.envelope_pa) for point in runs[0].points)
    recorder = job.record(replace(plan, directions=directions, targets_pa=targets_pa, hold=False), SHEET, when)
    sheet = _Sheet(recorder, when)
    for run in runs:
        sheet.write(run, plan)
    recorder.end_test("complete")
    return recorder.test_id


class _Sheet:
    """Plays the sheet into a recorder, at invented instants one after the other."""

    def __init__(self, recorder: Recorder, when: datetime) -> None:
        self._recorder = recorder
        self._utc_ns = round(when.astimezone(UTC).timestamp() * 1e6) * 1000
        self._begun_ns = self._utc_ns
        self._sequence = 0
        self._windows = 0

    def write(self, run: TypedRun, plan: TestPlan) -> None:
        self._recorder.begin_run(run.direction, plan.air, self._utc_ns, self._utc())
        self._zero(WindowKind.ZERO_BEFORE, run.zero_before_pa, run.seconds)
        for point in run.points:
            values = {Role.ENVELOPE: point.envelope_pa, Role.FLOW: point.flow_m3_h}
            self._window(WindowKind.POINT, point.envelope_pa, values, run.seconds)
        self._zero(WindowKind.ZERO_AFTER, run.zero_after_pa, run.seconds)
        self._recorder.end_run("complete", self._utc_ns, self._utc())

    def _utc(self) -> datetime:
        return datetime.fromtimestamp(self._utc_ns / 1e9, UTC)

    def _zero(self, kind: WindowKind, pressure_pa: float | None, length_s: float) -> None:
        if pressure_pa is not None:
            self._window(kind, None, {Role.ENVELOPE: pressure_pa}, length_s)

    def _window(self, kind: WindowKind, target_pa: float | None, values: dict[Role, float], length_s: float) -> None:
        self._windows += 1
        names = {Role.ENVELOPE: "sheet.pressure", Role.FLOW: "sheet.flow"}
        at_ns = self._utc_ns
        self._recorder.readings(
            [
                (role, Reading(names[role], value, at_ns, at_ns, 0.0, Quality.GOOD, self._sequence))
                for role, value in values.items()
            ]
        )
        self._sequence += 1
        self._recorder.window(WindowRecord(self._windows, kind, at_ns, at_ns + seconds(length_s), target_pa))
        self._utc_ns = at_ns + seconds(length_s + PAUSE_S)


def _copied_unit(heading: str) -> str:
    """Return the unit of the flow in the heading of a copied table, empty where it is another heading."""
    parts = heading.split("\t")
    return (parts[3].split() or [""])[-1] if len(parts) == COPIED_COLUMNS else ""


def _cells(line: str, unit: str) -> list[str] | None:
    """Return what should be pressure and flow; None for a line of a copied table that does not count."""
    copied = [part.strip() for part in line.split("\t")]
    if len(copied) == COPIED_COLUMNS and copied[0] in (*TAKEN, *NOT_TAKEN):
        return [copied[2], f"{copied[3]} {unit}".strip()] if copied[0] in TAKEN else None
    parts = re.split(r"[\t;]", line) if re.search(r"[\t;]", line) else line.split()
    return [part.strip() for part in parts if part.strip()]


def _point(at: int, cells: list[str], direction: Direction, display: Display) -> TypedPoint:
    if len(cells) != 2:
        raise InvalidInput(f"line {at}", " ".join(cells), f"two numbers are needed: {COLUMNS}")
    pressure_pa = parse_number(cells[0], f"line {at}, pressure", display.decimal_mark)
    flow_m3_h = parse_value(cells[1], Quantity.FLOW, display, f"line {at}, flow")
    if not 0 < abs(pressure_pa) <= HIGHEST_PA:
        allowed = f"more than 0 and at most {HIGHEST_PA:g} Pa is allowed"
        raise InvalidInput(f"line {at}, pressure", cells[0], allowed, shown=cells[0])
    if pressure_pa < 0 and direction is Direction.PRESSURIZE:
        raise InvalidInput(f"line {at}, pressure", cells[0], "a test with pressurizing has no negative pressures")
    if flow_m3_h <= 0:
        raise InvalidInput(f"line {at}, flow", cells[1], "a flow above 0 is needed", shown=cells[1])
    return TypedPoint(direction.sign * abs(pressure_pa), flow_m3_h)
