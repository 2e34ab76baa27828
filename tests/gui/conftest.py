"""The window on a simulated house in virtual time: one thread, no waiting."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QApplication

from acquisition.engine import Engine
from acquisition.job import Job
from acquisition.openrig import OpenRig, RigSource, open_rig
from acquisition.plan import TestPlan
from acquisition.rigfile import read_rig
from acquisition.snapshot import EngineState, Snapshot
from analysis.records import Air, Building, Direction, Limit
from drivers.clock import Clock, VirtualClock, seconds
from drivers.transport import Transport
from gui.app import Program, application, build, open_first_job
from gui.errands import InlineErrands
from gui.languages import put_on
from gui.settings import SettingsFile
from gui.words import Language
from simulators.houses import load_house
from simulators.rig import SimulatedRig

SHORT_TARGETS = "60 50 40 30 20"


@dataclass
class Stage:
    """A window, the clock it lives on, and the simulated rig that was connected last."""

    program: Program
    clock: VirtualClock
    houses: list[SimulatedRig]

    def pass_time(self, time_s: float) -> None:
        """Let time pass and have the window drawn."""
        self.clock.wait_until(self.clock.now_ns() + seconds(time_s))
        self.draw()

    def draw(self) -> None:
        """Have the window drawn, with everything that Qt put off."""
        for _ in range(3):
            self.program.bridge.tick()
            QCoreApplication.sendPostedEvents()

    def press(self) -> None:
        """Press the big button and let the engine take notice."""
        self.program.window.next_bar.press()
        self.pass_time(0.3)

    def snapshot(self) -> Snapshot:
        """Return what the engine says."""
        found = self.program.desk.snapshot()
        assert found is not None
        return found

    def engine(self) -> Engine:
        """Return the engine."""
        found = self.program.desk.engine
        assert found is not None
        return found

    def connect(self) -> None:
        """Connect the simulated house and let its instruments answer."""
        self.program.intents.rig.connect_last()
        self.pass_time(3.0)

    def shorten(self) -> None:
        """Make the tests of the job short."""
        for field, text in (("targets", SHORT_TARGETS), ("zero_s", "15"), ("average_s", "8")):
            self.program.intents.edit(field, text)

    def until(self, condition: Callable[[Snapshot], bool], limit_s: float = 1500.0) -> Snapshot:
        """Let time pass until the engine says so."""
        for _ in range(round(limit_s * 4)):
            self.clock.wait_until(self.clock.now_ns() + seconds(0.25))
            if condition(self.snapshot()):
                self.draw()
                return self.snapshot()
        raise AssertionError(f"not within {limit_s} s: {self.snapshot().sentence}")

    def open_copy(self, tested: Path) -> Job:
        """Open a copy of a job that has been tested."""
        path = self.program.intents.files.home / "copy.airseam"
        shutil.copy(tested, path)
        assert self.program.desk.open_job(path)
        self.draw()
        assert self.program.desk.job is not None
        return self.program.desk.job

    def run_to_the_end(self) -> None:
        """Start a test, answer everything with the first choice, and let it run to its end."""
        self.press()
        while self.engine().busy:
            self.until(lambda now: now.state in (EngineState.ASKING, EngineState.IDLE))
            if self.snapshot().state is EngineState.ASKING:
                self.press()
        self.draw()


@pytest.fixture(scope="session")
def tested(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a job file with one finished test in both directions; nobody changes it."""
    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    house = SimulatedRig(load_house("mill-row"), 1, clock)
    rig = open_rig(read_rig(house.rig_toml(house.own_ports)), clock, house.open)
    engine = Engine(rig, clock, auto_answer=True)
    path = tmp_path_factory.mktemp("tested") / "tested.airseam"
    building = Building(**house.building())  # type: ignore[arg-type]  # only the name is a text
    plan = TestPlan(
        building,
        Air(**house.air()),
        stage="membrane up",
        limit=Limit("stage", "n50_per_h", 2.0),
        directions=tuple(Direction),
        targets_pa=(60.0, 50.0, 40.0, 30.0, 20.0),
        zero_s=30.0,
        average_s=10.0,
    )
    job = Job.create(path, clock, building.name)
    job.add_building(building, "as first entered")
    job.set_draft(plan)
    engine.start()
    clock.wait_until(seconds(3.0))
    engine.begin(plan, job.record(plan, rig.spec))
    while engine.busy:
        clock.wait_until(clock.now_ns() + seconds(1.0))
    engine.close()
    job.close()
    return path


@pytest.fixture
def houses() -> list[SimulatedRig]:
    """Return the simulated rigs that were connected, newest last."""
    return []


@pytest.fixture
def source(clock: VirtualClock, houses: list[SimulatedRig]) -> RigSource:
    """Return the simulated house on the virtual clock."""

    def open_house(_: float) -> tuple[OpenRig, Clock]:
        rig = SimulatedRig(load_house("mill-row"), 1, clock)
        houses.append(rig)
        return open_rig(read_rig(rig.rig_toml(rig.own_ports)), clock, rig.open), clock

    known = SimulatedRig(load_house("mill-row"), 1, clock)
    building = Building(**known.building())  # type: ignore[arg-type]  # only the name is a text
    return RigSource("sim:mill-row", "Mill Row 8", "Invented data.", open_house, building, Air(**known.air()))


@pytest.fixture
def language() -> Language:
    """Return the language of the window; a test that looks at others names them."""
    return Language.ENGLISH


@pytest.fixture
def stage(
    qapp: QApplication,
    clock: VirtualClock,
    houses: list[SimulatedRig],
    source: RigSource,
    tmp_path: Path,
    language: Language,
) -> Iterator[Stage]:
    """Return a window that is shown, with a sample job and no rig yet."""
    application()
    settings = SettingsFile(tmp_path / "settings.json")
    settings.set(replace(settings.value, language=language))
    program = build(
        qapp,
        [source],
        tmp_path,
        clock,
        errands=InlineErrands(),
        opener=no_ports,
        settings=settings,
    )
    program.window.next_bar.settle_ms = 0
    open_first_job(program, None, tmp_path)
    program.window.show()
    made = Stage(program, clock, houses)
    made.draw()
    yield made
    program.desk.clear(lambda: None)
    program.window.may_close = True
    program.window.close()
    program.leave()
    # What comes after may look at words without a window of its own.
    put_on(qapp, Language.ENGLISH)


def no_ports(url: str) -> Transport:
    """Stand for a machine without serial ports."""
    raise ValueError(f"port is {url!r}: this machine has none")
