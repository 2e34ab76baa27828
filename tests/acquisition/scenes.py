"""A whole program in virtual time: simulated house, drivers over memory, engine, job file."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from acquisition.engine import Engine
from acquisition.job import Job
from acquisition.openrig import OpenRig, open_rig
from acquisition.plan import TestPlan
from acquisition.rigfile import read_rig
from acquisition.snapshot import EngineState, Snapshot
from analysis.records import Air, Building, Direction
from drivers.clock import VirtualClock, seconds
from simulators.house import House
from simulators.houses import load_house
from simulators.rig import SimulatedRig

SHORT = (60.0, 50.0, 40.0, 30.0, 20.0)


@dataclass
class Scene:
    """One house, one rig, one engine and one job on one virtual clock."""

    clock: VirtualClock
    house: SimulatedRig
    rig: OpenRig
    engine: Engine
    job: Job

    def plan(self, *, both: bool = False, targets_pa: tuple[float, ...] = SHORT, valid: bool = False) -> TestPlan:
        """Return a short test of the house: shorter than ISO 9972 lets pass, unless it is to be `valid`."""
        zero_s, average_s = (30.0, 10.0) if valid else (15.0, 8.0)
        known = self.house.building()
        building = Building(
            name=str(known["name"]),
            volume_m3=float(known["volume_m3"]),
            envelope_area_m2=float(known["envelope_area_m2"]),
            floor_area_m2=float(known["floor_area_m2"]),
            height_m=float(known["height_m"]),
        )
        weather = self.house.air()
        air = Air(weather["indoor_c"], weather["outdoor_c"], wind_m_s=weather["wind_m_s"])
        directions = tuple(Direction) if both else (Direction.DEPRESSURIZE,)
        return TestPlan(building, air, directions=directions, targets_pa=targets_pa, zero_s=zero_s, average_s=average_s)

    def begin(self, plan: TestPlan | None = None) -> None:
        """Start a test and record it."""
        chosen = plan or self.plan()
        self.engine.begin(chosen, self.job.record(chosen, self.rig.spec))

    def pass_time(self, time_s: float) -> Snapshot:
        """Let time pass."""
        self.clock.wait_until(self.clock.now_ns() + seconds(time_s))
        return self.engine.snapshot()

    def until(self, condition: Callable[[Snapshot], bool], limit_s: float = 1200.0) -> Snapshot:
        """Let time pass until a condition holds; fail after the limit."""
        for _ in range(round(limit_s * 5)):
            snapshot = self.pass_time(0.2)
            if condition(snapshot):
                return snapshot
        raise AssertionError(f"not within {limit_s} s; {self.engine.snapshot()}")

    def to_the_end(self) -> Snapshot:
        """Let the test run to its end."""
        return self.until(lambda snapshot: snapshot.state is EngineState.IDLE and not self.engine.busy)


@contextmanager
def a_scene(
    clock: VirtualClock,
    folder: Path,
    *,
    seed: int = 1,
    wind_m_s: float | None = None,
    auto_answer: bool = True,
    built: House | None = None,
    fans: int = 1,
) -> Iterator[Scene]:
    """Open a house (`built`, or the one of the demonstration) for a test and leave nothing behind."""
    house = SimulatedRig(built or load_house("mill-row"), seed, clock, wind_m_s=wind_m_s, fans=fans)
    rig = open_rig(read_rig(house.rig_toml(house.own_ports)), clock, house.open)
    engine = Engine(rig, clock, auto_answer=auto_answer)
    engine.start()
    job = Job.create(folder / "scene.airseam", clock, "Mill Row 8")
    try:
        clock.wait_until(clock.now_ns() + seconds(3.0))
        yield Scene(clock, house, rig, engine, job)
    finally:
        engine.close()
        job.close()
