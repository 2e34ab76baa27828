"""What is left when the program is killed, interrupted, or runs out of disk in the middle of a test."""

from __future__ import annotations

import os
import re
import signal
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

import airseam
from acquisition.job import Job, RecordState
from acquisition.steps import WindowKind
from drivers.clock import WallClock
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from tests.system.houses import (
    ServedHouse,
    points_on_disk,
    program,
    readings_on_disk,
    sequences,
    served_house,
    short_job,
    wait_until,
)

pytestmark = [
    pytest.mark.system,
    pytest.mark.skipif(sys.platform == "win32", reason="Windows has no pseudo-terminals"),
]


@pytest.fixture
def house(tmp_path: Path) -> Iterator[ServedHouse]:
    with served_house(tmp_path) as served:
        yield served


def test_after_a_kill_the_interrupted_test_is_there_with_all_its_samples(
    house: ServedHouse, capsys: pytest.CaptureFixture[str]
) -> None:
    with program("test", "--rig", house.rig_file, "--job", house.job) as tester:
        wait_until(lambda: points_on_disk(house.job) >= 2, "two points on the disk")
        on_disk = readings_on_disk(house.job)
        assert house.rig.world.speed > 0.0
        tester.send_signal(signal.SIGKILL)
        tester.wait(timeout=10)
    # Nobody speaks to the drive any more: it stops by itself.
    wait_until(lambda: house.rig.world.speed == 0.0, "the fan at rest", 5.0)
    job = Job.open(house.job, WallClock())
    try:
        (record,) = job.tests()
        assert record.state is RecordState.INTERRUPTED
        assert [run.state for run in job.interrupted()] == [RecordState.INTERRUPTED]
        (run,) = job.load(record.id).runs
        assert sum(window.kind is WindowKind.POINT for window in run.windows) >= 2
        for channel, numbers in sequences(job).items():
            assert numbers == list(range(numbers[0], numbers[0] + len(numbers))), channel
        assert sum(len(numbers) for numbers in sequences(job).values()) >= on_disk > 0
        assert all(item.ok is not False for item in job.verify())
    finally:
        job.close()
    # Too few points for a valid result, and still worked out: nothing of it is thrown away.
    assert airseam.main(["analyse", str(house.job)]) in (1, 2)
    assert airseam.main(["verify", str(house.job)]) == 0
    assert "Readings and inputs give the stored digest" in capsys.readouterr().out


@pytest.mark.parametrize("name", ["SIGINT", "SIGTERM"])
def test_ctrl_c_stops_the_fan_and_keeps_what_was_read(house: ServedHouse, name: str) -> None:
    with program("test", "--rig", house.rig_file, "--job", house.job) as tester:
        wait_until(lambda: points_on_disk(house.job) >= 1, "one point on the disk")
        tester.send_signal(getattr(signal, name))
        _, complaints = tester.communicate(timeout=20)
    assert tester.returncode == 1
    assert "ended by hand" in complaints
    assert "Traceback" not in complaints
    assert house.rig.world.speed == 0.0
    job = Job.open(house.job, WallClock())
    try:
        assert job.tests()[0].state is RecordState.STOPPED
        assert all(item.ok is not False for item in job.verify())
    finally:
        job.close()


def test_a_rig_that_does_not_answer_is_a_rig_fault_and_leaves_no_job(tmp_path: Path, house: ServedHouse) -> None:
    house.server.unplug("gauge")
    job = tmp_path / "new.airseam"
    with program("test", "--rig", house.rig_file, "--job", job) as tester:
        _, complaints = tester.communicate(timeout=60)
    assert tester.returncode == 3
    assert complaints.count("\n") == 1
    assert "gauge" in complaints
    assert not job.exists()


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """Mount a disk of 700 kB."""
    folder = tmp_path / "small"
    folder.mkdir()
    command = ["mount", "-t", "tmpfs", "-o", "size=700k", "tmpfs", str(folder)]
    if os.geteuid() != 0 or subprocess.run(command, capture_output=True, check=False).returncode != 0:
        pytest.skip("mounting a small disk needs a root that may")
    try:
        yield folder
    finally:
        subprocess.run(["umount", str(folder)], check=True)


def test_on_a_full_disk_the_test_goes_on_in_memory_and_is_saved_elsewhere(
    small_disk: Path, tmp_path: Path, clock_house: SimulatedRig
) -> None:
    job, elsewhere = short_job(small_disk / "full.airseam", clock_house), tmp_path / "elsewhere"
    elsewhere.mkdir()
    done = subprocess.run(
        [sys.executable, airseam.__file__, "test", "--rig", "sim:mill-row", "--job", str(job)],
        env={**os.environ, "TMPDIR": str(elsewhere)},
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=60,
        check=False,
    )
    assert done.returncode == 0
    assert "Mean" in done.stdout or "n50" in done.stdout
    assert "The disk did not take the last" in done.stderr
    saved = Path(re.findall(r"is in (\S+\.airseam)", done.stderr)[0])
    assert saved.parent == elsewhere
    # What reached the full disk can still be opened, and the copy holds the whole test.
    cut_off = Job.open(job, WallClock(), read_only=True)
    assert cut_off.building is not None
    cut_off.close()
    assert airseam.main(["verify", str(saved)]) == 0
    copy = Job.open(saved, WallClock(), read_only=True)
    try:
        assert copy.tests()[0].state is RecordState.COMPLETE
        for channel, numbers in sequences(copy).items():
            assert numbers == list(range(numbers[0], numbers[0] + len(numbers))), channel
    finally:
        copy.close()


@pytest.fixture
def clock_house() -> SimulatedRig:
    return SimulatedRig(load_house("mill-row"), 1, WallClock())
