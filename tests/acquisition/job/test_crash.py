"""A process that dies, a second process, a disk that is really full."""

from __future__ import annotations

import contextlib
import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from acquisition.job import Job, RecordState
from analysis.errors import InvalidInput
from analysis.records import Direction
from drivers.clock import VirtualClock, seconds
from tests.acquisition.samples import RIG, START, Rehearsal, plan

ROOT = Path(__file__).parents[3]
OUT = Direction.DEPRESSURIZE

RECORD = """
import sys
from pathlib import Path
from acquisition.job import Job
from acquisition.steps import WindowKind
from analysis.records import Direction
from drivers.clock import WallClock
from tests.acquisition.samples import RIG, Rehearsal, plan
clock = WallClock()
job = Job.create(Path(sys.argv[1]), clock, "Mill Row 8")
rehearsal = Rehearsal(clock, job.record(plan(), RIG), rate_hz=20, zero_s=0.3)
rehearsal.begin(Direction.DEPRESSURIZE)
rehearsal.zero(WindowKind.ZERO_BEFORE)
while True:
    print(clock.now_ns(), flush=True)
    rehearsal.read(-50.0, 100.0)
"""

OPEN = """
import sys
from pathlib import Path
from acquisition.job import Job
from analysis.errors import InvalidInput
from drivers.clock import WallClock
try:
    Job.open(Path(sys.argv[1]), WallClock())
except InvalidInput as error:
    print(error)
    sys.exit(2)
"""


@pytest.mark.system
def test_a_killed_process_loses_at_most_the_last_second(tmp_path: Path) -> None:
    path = tmp_path / "x.airseam"
    child = subprocess.Popen([sys.executable, "-c", RECORD, str(path)], cwd=ROOT, stdout=subprocess.PIPE, text=True)
    assert child.stdout is not None
    last_ns = 0
    with child.stdout:
        for count, line in enumerate(child.stdout):
            last_ns = int(line)
            if count == 40:
                os.kill(child.pid, signal.SIGKILL)
                break
        child.wait()

    job = Job.open(path, VirtualClock(START))
    (run,) = job.interrupted()
    readings = job.readings(run.id)
    assert readings[-1].t_ns >= last_ns - seconds(1)
    # No gap: each channel counts its readings from 0 on.
    assert [item.sequence for item in readings] == [number for number in range(len(readings) // 4) for _ in range(4)]
    assert len(job.load(1).runs[0].windows) == 1
    assert job.tests()[0].state is RecordState.INTERRUPTED
    assert all(item.ok for item in job.verify())
    job.close()


@pytest.mark.system
def test_a_second_process_is_told_that_the_job_is_open(tmp_path: Path) -> None:
    path = tmp_path / "x.airseam"
    job = Job.create(path, VirtualClock(START), "Mill Row 8")
    second = subprocess.run(
        [sys.executable, "-c", OPEN, str(path)], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert (second.returncode, second.stderr) == (2, "")
    assert "open in another window of Airseam" in second.stdout
    assert len(second.stdout.splitlines()) == 1
    job.close()


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """A file system of a few hundred kilobytes, where this user may mount one."""
    folder = tmp_path / "disk"
    folder.mkdir()
    mount = ["mount", "-t", "tmpfs", "-o", "size=400k", "tmpfs", str(folder)]
    try:
        done = subprocess.run(mount, capture_output=True, check=False)
    except FileNotFoundError:
        pytest.skip("no mount here")
    if done.returncode != 0:
        pytest.skip("this user may not mount")
    yield folder
    subprocess.run(["umount", str(folder)], check=True)


def test_a_disk_that_is_really_full_loses_nothing_once_there_is_room(small_disk: Path) -> None:
    clock = VirtualClock(START)
    job = Job.create(small_disk / "x.airseam", clock, "Mill Row 8")
    ballast = small_disk / "ballast"
    ballast.write_bytes(b"x" * 60_000)
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.begin(OUT)
    for target_pa in (60.0, 54.0, 48.0, 43.0, 38.0, 33.0, 28.0, 23.0):
        rehearsal.point(OUT, target_pa)
    assert "disk is full" in recorder.recording().alarm
    subprocess.run(["mount", "-o", "remount,size=8m", str(small_disk)], check=True)
    clock.wait_until(clock.now_ns() + seconds(2))
    assert recorder.recording().alarm == ""
    rehearsal.end()
    recorder.end_test("complete")
    assert job.close() == ""
    again = Job.open(small_disk / "x.airseam", clock)
    assert len(again.readings(1)) == 4 * rehearsal.sequence
    assert all(item.ok for item in again.verify())
    again.close()


def test_closing_on_a_disk_that_is_really_full_saves_a_copy(small_disk: Path, tmp_path: Path) -> None:
    clock = VirtualClock(START)
    job = Job.create(small_disk / "x.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.run(OUT)
    rehearsal.run(Direction.PRESSURIZE)
    rehearsal.run(OUT)
    recorder.end_test("complete")
    sentence = job.close(tmp_path)
    (rescued,) = tmp_path.glob("*.airseam")
    assert str(rescued) in sentence
    again = Job.open(rescued, clock)
    assert sum(len(again.readings(run.id)) for run in again.runs(1)) == 4 * rehearsal.sequence
    assert all(item.ok for item in again.verify())
    again.close()
    # What reached the full disk before is sound too.
    left = Job.open(small_disk / "x.airseam", clock, read_only=True)
    assert left.verify()[0].ok
    left.close()


def test_no_job_is_made_on_a_full_disk(small_disk: Path) -> None:
    ballast = (small_disk / "ballast").open("wb", buffering=0)
    with ballast, contextlib.suppress(OSError):
        while True:
            ballast.write(b"x" * 4096)
    with pytest.raises(InvalidInput, match="cannot be written"):
        Job.create(small_disk / "x.airseam", VirtualClock(START), "x")
    assert list(small_disk.glob("x*")) == []
