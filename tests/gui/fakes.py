"""Hand-made moments: what an engine would publish, without any engine."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import UTC, datetime

from acquisition.job import JobDetails, RecordState
from acquisition.plan import TestPlan
from acquisition.rig import InstrumentSpec, RigSpec, Role
from acquisition.snapshot import (
    Activity,
    EngineState,
    PointState,
    PointView,
    RecordingView,
    RunView,
    Snapshot,
    WindowView,
)
from acquisition.steps import WindowKind
from analysis.methods import analyse
from analysis.records import Air, Building, Direction, FlowRange, Limit, Point, Run, Test, ZeroFlow
from analysis.units import Display, System
from drivers.instrument import LinkState, LinkStatus
from gui.viewmodels.moment import JobMoment, Moment, Place, RigMoment, RigState
from gui.viewmodels.shown import ShownTest

NOON = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)
SI, US, COMMA = Display(), Display(System.US), Display(System.SI, ",")
BUILDING = Building("Mill Row 8", 300.0, 360.0, 120.0, 5.0)
AIR = Air(21.0, 11.0, wind_m_s=1.5)
LIMIT = Limit("stage", "n50_per_h", 2.0)
PLAN = TestPlan(BUILDING, AIR, stage="membrane up", limit=LIMIT, targets_pa=(60.0, 50.0, 40.0, 30.0, 20.0))
LINKS = (
    LinkStatus("gauge", "/dev/ttyUSB0", LinkState.LINKED, identity="SG-0012", rate_hz=10.0, round_trip_s=0.005),
    LinkStatus("fan", "/dev/ttyUSB1", LinkState.LINKED, identity="SF-0003", rate_hz=10.0),
)
RANGE = FlowRange("middle", 183.0, 0.498, 8.0, 250.0)
RIG = RigSpec(
    name="Bench rig",
    instruments=(
        InstrumentSpec(
            "gauge",
            "scpi-gauge",
            "/dev/ttyUSB0",
            (("p1", Role.ENVELOPE), ("p2", Role.FLOW_ELEMENT), ("t1", Role.INDOOR)),
        ),
        InstrumentSpec("fan", "scpi-fan", "/dev/ttyUSB1"),
    ),
    fan="fan",
    ranges=(RANGE,),
    fitted="middle",
)
COEFFICIENT, EXPONENT, ZERO_PA = 46.6, 0.62, -0.5


def snapshot(**changes: object) -> Snapshot:
    """Return an idle engine with its links up, with changes."""
    idle = Snapshot(
        now_ns=600_000_000_000,
        utc=NOON,
        state=EngineState.IDLE,
        sentence="Ready to test.",
        activity=Activity.NONE,
        activity_s=0.0,
        activity_total_s=None,
        direction=None,
        target_pa=None,
        zero_pa=None,
        envelope_pa=-0.5,
        flow_m3_h=0.0,
        fan_fraction=0.0,
        ask=None,
        paused_reason="",
        links=LINKS,
        recording=None,
        runs=(),
        windows=(),
        flags=(),
        test=None,
        result=None,
        result_gap="",
    )
    return replace(idle, **changes)  # type: ignore[arg-type]  # the tests name fields of the record


def running(taken: int = 3, direction: Direction = Direction.DEPRESSURIZE) -> Snapshot:
    """Return an engine that averages the point after `taken` ones."""
    run = run_view(direction, taken)
    test = a_test(taken, direction)
    second = 1_000_000_000
    return snapshot(
        state=EngineState.RUNNING,
        sentence="Holding −30 Pa, averaging: 14 s of 20 s. Keep doors and windows closed.",
        activity=Activity.AVERAGE,
        activity_s=14.0,
        activity_total_s=20.0,
        direction=direction,
        target_pa=direction.sign * 30.0,
        zero_pa=ZERO_PA,
        envelope_pa=direction.sign * 30.1 + ZERO_PA,
        flow_m3_h=384.0,
        fan_fraction=0.57,
        recording=RecordingView(402.0, NOON),
        runs=(run,),
        windows=(
            WindowView(WindowKind.ZERO_BEFORE, 300 * second, 360 * second, None),
            WindowView(WindowKind.POINT, 400 * second, 420 * second, direction.sign * 60.0),
            WindowView(WindowKind.POINT, 586 * second, None, direction.sign * 30.0),
        ),
        test=test,
        result=analyse(test, limits=(LIMIT,)) if taken > 1 else None,
        result_gap="" if taken > 1 else "At least 2 points are needed.",
    )


def run_view(direction: Direction, taken: int, *, struck: tuple[int, ...] = ()) -> RunView:
    """Return a run with so many points taken, one being averaged and the rest to come."""
    points: list[PointView] = []
    for at, target in enumerate(PLAN.targets_pa):
        goal = direction.sign * target
        if at > taken:
            points.append(PointView(goal, PointState.PENDING))
        elif at == taken:
            points.append(PointView(goal, PointState.AVERAGING, None, goal + ZERO_PA, flow(target), None, 14.0))
        else:
            state = PointState.STRUCK if at in struck else PointState.TAKEN
            why = "A gust of wind" if at in struck else ""
            points.append(PointView(goal, state, at + 1, goal + ZERO_PA, flow(target), 0.4, 20.0, why))
    return RunView(direction, tuple(points), zero_before_pa=ZERO_PA)


def flow(pressure_pa: float) -> float:
    """Return the flow of an invented house."""
    return COEFFICIENT * math.pow(pressure_pa, EXPONENT)


def a_test(taken: int, direction: Direction = Direction.DEPRESSURIZE, *, struck: tuple[int, ...] = ()) -> Test:
    """Return the test of such a run."""
    points = tuple(
        Point(direction.sign * target + ZERO_PA, flow(target) * (1 + 0.002 * (-1) ** at), 20.0, direction.sign * target)
        for at, target in enumerate(PLAN.targets_pa[:taken])
        if at not in struck
    )
    zero = ZeroFlow(ZERO_PA, None, ZERO_PA, 600, 60.0)
    return Test(BUILDING, (Run(direction, AIR, points, zero, started=NOON),), "membrane up")


def shown(
    taken: int = 5,
    direction: Direction = Direction.DEPRESSURIZE,
    *,
    struck: tuple[int, ...] = (),
    live: bool = True,
    state: RecordState = RecordState.COMPLETE,
) -> ShownTest:
    """Return a test as the window shows it."""
    test = a_test(taken, direction, struck=struck)
    result = analyse(test, limits=(LIMIT,)) if len(test.runs[0].points) > 1 else None
    return ShownTest(
        number=2,
        started=NOON,
        state=state,
        plan=PLAN,
        rig=RIG,
        runs=(run_view(direction, taken, struck=struck),),
        test=test,
        result=result,
        gap="" if result is not None else "At least 2 points are needed.",
        live=live,
    )


def moment(**changes: object) -> Moment:
    """Return a moment with a job and a linked rig at rest, with changes."""
    rest = Moment(
        place=Place.TEST,
        display=SI,
        rig=RigMoment(RigState.CONNECTED, RIG, "", "sim:mill-row"),
        job=JobMoment("/jobs/mill-row.airseam", JobDetails("Mill Row 8"), PLAN),
        snapshot=snapshot(),
    )
    return replace(rest, **changes)  # type: ignore[arg-type]  # the tests name fields of the record


def running_moment(taken: int = 3, **changes: object) -> Moment:
    """Return a moment in the middle of a run."""
    now = running(taken)
    test = replace(
        shown(taken, state=RecordState.RECORDING), runs=now.runs, test=now.test, result=now.result, gap=now.result_gap
    )
    return moment(snapshot=now, shown=test, **changes)
