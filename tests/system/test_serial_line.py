"""The whole program over real pseudo-terminals: what it finds, and what a pulled plug does to it."""

from __future__ import annotations

import json
import os
import sys
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path

import pytest

import airseam
from acquisition.conduct import Conclusion, await_links, conduct
from acquisition.engine import Engine
from acquisition.job import Job
from acquisition.openrig import open_rig
from acquisition.rigfile import load_rig
from acquisition.snapshot import Activity, EngineState, PointState, Snapshot
from drivers.clock import ScaledClock
from drivers.serialport import open_url
from tests.system.houses import (
    TARGETS_PA,
    TIME_FACTOR,
    ServedHouse,
    program,
    sequences,
    served_house,
    short_job,
    shorten,
)

pytestmark = [
    pytest.mark.system,
    pytest.mark.skipif(sys.platform == "win32", reason="Windows has no pseudo-terminals"),
]


def n50_of(document: str) -> float:
    return float(json.loads(document)["mean"]["n50_per_h"]["value"])


def beyond_the_outlook(told: str) -> list[str]:
    """Return the lines that are not what the test is expected to know."""
    return [line for line in told.splitlines() if not line.startswith("Expected before the points: ")]


def test_over_terminals_in_two_processes_the_result_is_that_of_the_run_in_memory(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rig_file, job_file = tmp_path / "rig.toml", tmp_path / "wire.airseam"
    files = ("--rig-file", rig_file, "--job-file", job_file)
    with program("simulate", "--house", "mill-row", "--pty", "--time-factor", f"{TIME_FACTOR:g}", *files) as house:
        assert house.stdout is not None
        said = [house.stdout.readline()]
        while not said[-1].startswith("ready"):
            said.append(house.stdout.readline())
            assert said[-1], said
        assert [line.split()[0] for line in said[:2]] == ["gauge", "fan"]
        assert all(os.path.exists(line.split()[1]) for line in said[:2])  # noqa: PTH110 - a device, not a file
        shorten(job_file)
        with program("test", "--rig", rig_file, "--job", job_file, "--json") as tester:
            over_wire, complaints = tester.communicate(timeout=90)
        assert (tester.returncode, beyond_the_outlook(complaints)) == (0, [])
        house.terminate()
        assert house.wait(timeout=10) == 0
    with served_house(tmp_path) as served:
        in_memory = short_job(tmp_path / "memory.airseam", served.rig)
    assert airseam.main(["test", "--rig", "sim:mill-row", "--job", str(in_memory), "--json"]) == 0
    # Two runs of one house differ by the wind of the moment and by the gauge's noise: a few tenths of a percent.
    assert n50_of(over_wire) == pytest.approx(n50_of(capsys.readouterr().out), rel=0.01)


@pytest.mark.walk
def test_a_free_running_gauge_on_tcp_gives_the_same_house(tmp_path: Path) -> None:
    rig_file, job_file = tmp_path / "rig.toml", tmp_path / "tcp.airseam"
    ports = ("--listen", "127.0.0.1:0", "--protocol", "lines", "--time-factor", f"{TIME_FACTOR:g}")
    with program("simulate", *ports, "--rig-file", rig_file, "--job-file", job_file) as house:
        assert house.stdout is not None
        while not (line := house.stdout.readline()).startswith("ready"):
            assert line
        shorten(job_file)
        with program("test", "--rig", rig_file, "--job", job_file, "--json") as tester:
            found, complaints = tester.communicate(timeout=90)
        assert (tester.returncode, beyond_the_outlook(complaints)) == (0, [])
        # The house file says 1.72 1/h; a gauge of 0.1 Pa and half the points leave one percent of doubt.
        assert n50_of(found) == pytest.approx(1.72, rel=0.02)
        house.terminate()


@dataclass
class Puller:
    """Pulls the gauge's plug in the middle of a point and puts it in again a second after the test has paused."""

    house: ServedHouse
    job: Job
    before: dict[str, list[int]] = field(default_factory=dict)
    pulled_s: float | None = None
    saw_pause: bool = False
    done: bool = False

    def watch(self, shown: Snapshot) -> None:
        """Do what is due."""
        averaging = shown.activity is Activity.AVERAGE and shown.target_pa == -TARGETS_PA[2] and shown.activity_s > 3.0
        if averaging and self.pulled_s is None:
            self.house.server.unplug("gauge")
            self.pulled_s = time.monotonic()
            self.before = sequences(self.job)
        paused = shown.state is EngineState.PAUSED
        self.saw_pause = self.saw_pause or paused
        if paused and not self.done and self.pulled_s is not None and time.monotonic() - self.pulled_s > 1.0:
            self.house.server.replug("gauge")
            self.done = True


def test_a_terminal_pulled_away_in_mid_point_pauses_comes_back_and_loses_no_sample(tmp_path: Path) -> None:
    with served_house(tmp_path) as house, recording(house.job) as (job, clock):
        spec = load_rig(house.rig_file)
        engine = Engine(open_rig(spec, clock, open_url), clock, auto_answer=True)
        plan, never = job.draft(), threading.Event()
        puller = Puller(house, job)
        try:
            engine.start()
            assert await_links(engine, clock, never) == ""
            outcome = conduct(engine, clock, plan, job.record(plan, spec), None, puller.watch, never)
        finally:
            engine.close()
        assert outcome.conclusion is Conclusion.COMPLETE, outcome.sentence
        assert puller.saw_pause
        (run,) = outcome.snapshot.runs
        assert [point.target_pa for point in run.points if point.state is PointState.TAKEN] == [-t for t in TARGETS_PA]
        loaded = job.load(job.tests()[0].id)
        assert [mark.kind for mark in loaded.marks if mark.kind != "outlook"] == ["paused", "resumed"]
        after = sequences(job)
        for channel, numbers in after.items():
            # A number is given to each reading that the instrument sent: a gap would be a lost one.
            assert numbers == list(range(numbers[0], numbers[0] + len(numbers))), channel
            taken = puller.before[channel]
            assert numbers[: len(taken)] == taken
        assert all(item.ok for item in job.verify())
        assert outcome.snapshot.result is not None
        assert [check for result in outcome.snapshot.result.runs for check in result.checks if not check.ok] == []
        assert house.rig.world.speed == 0.0


@contextmanager
def recording(path: Path) -> Iterator[tuple[Job, ScaledClock]]:
    """Open a job on a scaled clock, and close it."""
    clock = ScaledClock(TIME_FACTOR)
    job = Job.open(path, clock)
    try:
        yield job, clock
    finally:
        job.close()
