"""A simulated house on real pseudo-terminals, served by the test itself or by a process of its own, and short jobs."""

from __future__ import annotations

import contextlib
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from acquisition.job import Job
from acquisition.rigfile import read_rig, write_rig
from airseam import known, prepare_job
from analysis.records import Direction
from drivers.clock import ScaledClock, WallClock
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from simulators.server import WireServer, serve_pty

ROOT = Path(__file__).parents[2]
AIRSEAM = (sys.executable, str(ROOT / "airseam.py"))
TIME_FACTOR = 20.0
TARGETS_PA = (56.0, 48.0, 39.0, 30.0, 21.0)
"""Less than the 10 Pa apart that the method allows: on a busy machine a point lies where it happens to."""
PATIENCE_S = 60.0


@dataclass
class ServedHouse:
    """A house that this process serves on pseudo-terminals, with the files that a client needs."""

    rig: SimulatedRig
    server: WireServer
    rig_file: Path
    job: Path


@contextmanager
def served_house(folder: Path, *, seed: int = 1, protocol: str = "scpi") -> Iterator[ServedHouse]:
    """Serve a house on pseudo-terminals whose names survive a pulled plug."""
    rig = SimulatedRig(load_house("mill-row"), seed, ScaledClock(TIME_FACTOR), protocol=protocol)
    server = serve_pty(rig, folder)
    try:
        rig_file = folder / "rig.toml"
        rig_file.write_text(write_rig(read_rig(rig.rig_toml(server))), encoding="utf-8")
        yield ServedHouse(rig, server, rig_file, short_job(folder / "short.airseam", rig))
    finally:
        server.close()


def short_job(path: Path, rig: SimulatedRig, directions: Sequence[Direction] = (Direction.DEPRESSURIZE,)) -> Path:
    """Make a job whose next test has few and short points."""
    prepare_job(path, *known(rig))
    shorten(path, directions)
    return path


def shorten(path: Path, directions: Sequence[Direction] = (Direction.DEPRESSURIZE,)) -> None:
    """Give the next test of a job few and short points."""
    job = Job.open(path, WallClock())
    plan = replace(job.draft(), directions=tuple(directions), targets_pa=TARGETS_PA, zero_s=30.0, average_s=10.0)
    job.set_draft(plan)
    job.close()


@contextmanager
def program(*arguments: str | Path, cwd: Path | None = None) -> Iterator[subprocess.Popen[str]]:
    """Run Airseam as a process of its own; it is gone at the end, whatever happened."""
    command = [*AIRSEAM, *(str(item) for item in arguments)]
    with subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, encoding="utf-8", cwd=cwd
    ) as process:
        try:
            yield process
        finally:
            if process.poll() is None:
                process.kill()


def wait_until(condition: Callable[[], bool], what: str, patience_s: float = PATIENCE_S) -> None:
    """Wait in real time for a condition."""
    end = time.monotonic() + patience_s
    while not condition():
        assert time.monotonic() < end, f"not within {patience_s:.0f} s: {what}"
        time.sleep(0.02)


def on_disk(job: Path, query: str) -> int:
    """Ask a copy of a job that somebody else is writing; 0 when the copy was made in the middle of a change."""
    with tempfile.TemporaryDirectory() as folder:
        for file in job.parent.glob(f"{job.name}*"):
            shutil.copy(file, folder)
        with contextlib.suppress(sqlite3.Error), contextlib.closing(sqlite3.connect(Path(folder) / job.name)) as db:
            return int(db.execute(query).fetchone()[0] or 0)
    return 0


def points_on_disk(job: Path, run: int | None = None) -> int:
    """Return how many points a job that somebody else writes holds by now, of all runs or of one."""
    of_run = "" if run is None else f" AND run = {run}"
    return on_disk(job, f"SELECT count(*) FROM averaging_window WHERE kind = 'point'{of_run}")


def readings_on_disk(job: Path) -> int:
    """Return how many readings a job that somebody else writes holds by now."""
    return on_disk(job, "SELECT count(*) FROM reading")


def sequences(job: Job) -> dict[str, list[int]]:
    """Return the sequence numbers of all readings of the newest test, by channel."""
    found: dict[str, list[int]] = {}
    for run in job.runs(job.tests()[-1].id):
        for reading in job.readings(run.id):
            found.setdefault(reading.channel, []).append(reading.sequence)
    return found
