"""A test whose program is killed goes on in a second process and ends valid, over real pseudo-terminals."""

from __future__ import annotations

import json
import signal
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

import airseam
from acquisition.job import Job, RecordState
from acquisition.steps import WindowKind
from drivers.clock import WallClock
from tests.system.houses import TARGETS_PA, ServedHouse, points_on_disk, program, served_house, wait_until

pytestmark = [
    pytest.mark.walk,
    pytest.mark.system,
    pytest.mark.skipif(sys.platform == "win32", reason="Windows has no pseudo-terminals"),
]


@pytest.fixture
def house(tmp_path: Path) -> Iterator[ServedHouse]:
    with served_house(tmp_path) as served:
        yield served


def kill_after(house: ServedHouse, points: int, *options: str, run: int) -> None:
    """Kill a program once its own run, which is the `run`th of the job, has so many points on the disk."""
    with program("test", "--rig", house.rig_file, "--job", house.job, *options) as tester:
        wait_until(lambda: points_on_disk(house.job, run) >= points, f"{points} points of run {run} on the disk")
        tester.send_signal(signal.SIGKILL)
        tester.wait(timeout=10)


def test_a_killed_test_is_gone_on_with_to_a_valid_result(
    house: ServedHouse, capsys: pytest.CaptureFixture[str]
) -> None:
    kill_after(house, 2, run=1)
    kill_after(house, 1, "--resume", run=2)
    with program("test", "--rig", house.rig_file, "--job", house.job, "--resume", "--json") as tester:
        told, complaints = tester.communicate(timeout=60)
    failed = [check["text"] for run in json.loads(told)["runs"] for check in run["checks"] if check["ok"] is False]
    assert tester.returncode == 0, f"{complaints} {failed}"
    job = Job.open(house.job, WallClock(), read_only=True)
    try:
        (record,) = job.tests()
        assert record.state is RecordState.COMPLETE
        pieces = job.runs(record.id)
        assert [run.state for run in pieces] == [RecordState.INTERRUPTED, RecordState.INTERRUPTED, RecordState.COMPLETE]
        assert [run.continues for run in pieces] == [None, pieces[0].id, pieces[1].id]
        loaded = job.load(record.id)
        (run,) = loaded.runs
        kinds = [window.kind for window in run.windows]
        # Each target once, in the order of the plan, however often the program was killed.
        assert [w.target_pa for w in run.windows if w.kind is WindowKind.POINT] == [-t for t in TARGETS_PA]
        assert kinds.count(WindowKind.ZERO_BEFORE) == kinds.count(WindowKind.ZERO_AFTER) == 1
        gaps = [mark.text for mark in loaded.marks if mark.kind == "time-gap"]
        assert len(gaps) == 2
        assert "nothing was recorded for" in gaps[0]
        assert [answer.choice for answer in loaded.answers if answer.ask_id == "set-up-again"] == 2 * [
            "All is as it was"
        ]
    finally:
        job.close()
    # The result while it ran, the one out of the file, and what the readings give anew: the same digits.
    capsys.readouterr()
    assert airseam.main(["analyse", str(house.job), "--json"]) == 0
    assert json.loads(capsys.readouterr().out) == json.loads(told)
    assert airseam.main(["verify", str(house.job)]) == 0
    said = capsys.readouterr().out
    assert said.count("Readings and inputs give the stored digest") == 3
    assert "The readings give the stored result." in said


def test_there_is_nothing_to_go_on_with_after_a_complete_test(tmp_path: Path, house: ServedHouse) -> None:
    with program("test", "--rig", house.rig_file, "--job", tmp_path / "none.airseam", "--resume") as tester:
        _, complaints = tester.communicate(timeout=60)
    assert tester.returncode == 2
    assert complaints.count("\n") == 1
    assert "a job file is needed" in complaints
    with program("test", "--rig", house.rig_file, "--job", house.job, "--resume") as tester:
        _, complaints = tester.communicate(timeout=60)
    assert tester.returncode == 2
    assert "there is nothing to go on with" in complaints
