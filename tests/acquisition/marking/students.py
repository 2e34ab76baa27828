"""A student by script: does an exercise with the program, in virtual time, and hands in the job."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

from acquisition.engine import Engine
from acquisition.holding import held_plan
from acquisition.job import Entry, Job, PreparationKind
from acquisition.marking import Marking, mark_job, read_truth
from acquisition.openrig import OpenRig, open_rig
from acquisition.plan import TestPlan
from acquisition.rigfile import read_rig
from acquisition.setup import gate_of, obeying, shipped_questions
from acquisition.snapshot import EngineState, PointState, Snapshot
from analysis.records import Air, Building, Direction
from analysis.units import Display
from drivers.clock import VirtualClock, seconds
from simulators.exercise import Exercise
from simulators.exercises import load_exercise
from tests.simulators.rigs import virtual_clock

LIMIT_S = 2400.0


class Student:
    """One student at one rig with one job."""

    def __init__(self, exercise: Exercise, path: Path, seed: int) -> None:
        """Sit down: nothing is connected yet."""
        self.exercise = exercise
        self.clock: VirtualClock = virtual_clock()
        self.house = exercise.rig(seed, self.clock)
        self.spec = read_rig(self.house.rig_toml(self.house.own_ports))
        self.job = Job.create(path, self.clock, "Class")
        self.job.edit_details(replace(self.job.details, tester="Student One"))
        self._rig: OpenRig | None = None
        self.engine: Engine | None = None
        self.connect()

    def connect(self, fitted: str | None = None) -> None:
        """Connect the rig, with the flow range that is said to be fitted."""
        self.leave()
        self.spec = self.spec if fitted is None else replace(self.spec, fitted=fitted)
        self._rig = open_rig(self.spec, self.clock, self.house.open)
        self.engine = Engine(self._rig, self.clock, auto_answer=True)
        self.engine.start()
        self.wait(3.0)

    def leave(self) -> None:
        """Part with the rig."""
        if self.engine is not None:
            self.engine.close()
            self.engine = None

    def wait(self, time_s: float) -> Snapshot:
        """Let time pass."""
        assert self.engine is not None
        self.clock.wait_until(self.clock.now_ns() + seconds(time_s))
        return self.engine.snapshot()

    def answer_safety(self, **noes: str) -> None:
        """Answer every safety question, with yes unless told otherwise."""
        for question in shipped_questions():
            state = noes.get(question.id, "yes")
            self.job.edit_house().note(Entry(self.clock.utc(), PreparationKind.SAFETY, question.id, state))

    def write(self, text: str) -> None:
        """Write into the note of the job."""
        before = self.job.details.note
        self.job.edit_details(replace(self.job.details, note=f"{before} {text}".strip()))

    def plan(self, *, both: bool = False) -> TestPlan:
        """Return the test of the task."""
        known, air = self.house.building(), self.house.air()
        directions = tuple(Direction) if both else (Direction.DEPRESSURIZE,)
        building = Building(**known)  # type: ignore[arg-type]  # only the name is a text
        plan = TestPlan(building, Air(**air), directions=directions, zero_s=15.0, average_s=6.0)
        return replace(plan, targets_pa=(60.0, 50.0, 40.0, 30.0, 20.0))

    def begin(self, plan: TestPlan) -> None:
        """Begin a test as the safety answers allow."""
        assert self.engine is not None
        allowed = obeying(plan, gate_of(self.job.house.entries, self.clock.utc()))
        self.engine.begin(allowed, self.job.record(allowed, self.spec))

    def test(self, plan: TestPlan | None = None) -> None:
        """Make a test to its end."""
        self.begin(plan or self.plan())
        self.until(lambda shown: shown.state is EngineState.IDLE)

    def hold(self, time_s: float) -> None:
        """Hold 50 Pa for a while."""
        assert self.engine is not None
        self.begin(held_plan(self.plan(), -50.0))
        self.wait(time_s)
        self.engine.end_hold()
        self.until(lambda shown: shown.state is EngineState.IDLE)

    def end(self) -> None:
        """End the test where it is."""
        assert self.engine is not None
        self.engine.abandon()
        self.until(lambda shown: shown.state is EngineState.IDLE)

    def until(self, condition: Callable[[Snapshot], bool]) -> Snapshot:
        """Let time pass until something is so."""
        for _ in range(round(LIMIT_S)):
            shown = self.wait(1.0)
            if condition(shown):
                return shown
        raise AssertionError(self.wait(0.0))

    def strike_points(self, reason: str, *, from_s: float) -> None:
        """Strike the points of the last test that were taken from a time of the exercise on."""
        loaded = self.job.load(self.job.tests()[-1].id)
        for run in loaded.runs:
            turned = next(item.t_ns for item in run.fan if item.fraction > 0.02)
            for window in run.windows:
                if window.kind.value == "point" and window.end_ns - turned > seconds(from_s):
                    self.job.strike(loaded.record.id, window.id, reason)

    def taken(self) -> int:
        """Return how many points of the running test are taken."""
        shown = self.wait(0.0)
        return sum(point.state is PointState.TAKEN for run in shown.runs for point in run.points)

    def marks(self, display: Display | None = None) -> Marking:
        """Hand in the job and return the sheet, its flows as they are displayed."""
        self.job.flush()
        return mark_job(self.job, read_truth(self.exercise.truth()), display or Display())


@contextmanager
def student(name: str, folder: Path, seed: int = 3) -> Iterator[Student]:
    """Sit a student down at an exercise; leaves nothing behind."""
    person = Student(load_exercise(name), folder / f"{name}.airseam", seed)
    try:
        yield person
    finally:
        person.leave()
        person.job.close()


def lost(marking: Marking) -> dict[str, float]:
    """Return the points that were not reached, by what they are for."""
    return {line.says: line.of - line.points for line in marking.lines if line.points < line.of}
