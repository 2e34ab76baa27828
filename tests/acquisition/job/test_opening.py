"""Opening what is no job, a damaged one, one that is open elsewhere, one that a crash left behind."""

from __future__ import annotations

import shutil
import sqlite3
from pathlib import Path

import pytest

from acquisition.job import Job, RecordState
from acquisition.steps import WindowKind
from analysis.errors import InvalidInput
from analysis.records import Direction
from drivers.clock import VirtualClock
from tests.acquisition.samples import RIG, START, Rehearsal, plan

OUT = Direction.DEPRESSURIZE


@pytest.fixture
def clock() -> VirtualClock:
    return VirtualClock(START)


def complete_job(path: Path, clock: VirtualClock) -> None:
    job = Job.create(path, clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    Rehearsal(clock, recorder).run(OUT)
    recorder.end_test("complete")
    job.close()


def copy_as_after_a_crash(path: Path, target: Path) -> None:
    """Copy the file and its log while the job is open: what a disk holds after the power failed."""
    shutil.copy(path, target)
    shutil.copy(path.with_name(path.name + "-wal"), target.with_name(target.name + "-wal"))


def one_sentence(error: InvalidInput) -> bool:
    return "\n" not in str(error) and len(str(error)) < 300


@pytest.mark.parametrize(
    "content", [b"", b"SQLite", bytes(range(256)) * 40, b'{"format": "airseam-test-1"}' + b" " * 100]
)
def test_a_file_that_is_no_job_is_refused(tmp_path: Path, clock: VirtualClock, content: bytes) -> None:
    path = tmp_path / "x.airseam"
    path.write_bytes(content)
    with pytest.raises(InvalidInput, match=r"x\.airseam. is not an Airseam job: choose one that") as caught:
        Job.open(path, clock)
    assert one_sentence(caught.value)
    assert path.read_bytes() == content


def test_a_missing_file_and_a_folder_are_refused(tmp_path: Path, clock: VirtualClock) -> None:
    with pytest.raises(InvalidInput, match="cannot be read"):
        Job.open(tmp_path / "none.airseam", clock)
    with pytest.raises(InvalidInput, match="cannot be read"):
        Job.open(tmp_path, clock)
    with pytest.raises(InvalidInput, match="cannot be made"):
        Job.create(tmp_path / "no folder" / "x.airseam", clock, "x")


def test_another_programs_database_is_refused_and_left_alone(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "x.airseam"
    db = sqlite3.connect(path)
    db.execute("CREATE TABLE stamp (id)")
    db.commit()
    db.close()
    before = path.read_bytes()
    with pytest.raises(InvalidInput, match="another program"):
        Job.open(path, clock)
    assert path.read_bytes() == before


def test_a_job_of_a_newer_version_is_refused(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "x.airseam"
    complete_job(path, clock)
    db = sqlite3.connect(path)
    db.execute("PRAGMA user_version = 99")
    db.close()
    with pytest.raises(InvalidInput, match="newer Airseam"):
        Job.open(path, clock)


@pytest.mark.parametrize("share", [0.01, 0.3, 0.6, 0.95])
def test_a_job_that_was_cut_short_is_refused(tmp_path: Path, clock: VirtualClock, share: float) -> None:
    path = tmp_path / "x.airseam"
    complete_job(path, clock)
    whole = path.read_bytes()
    path.write_bytes(whole[: max(200, int(len(whole) * share))])
    with pytest.raises(InvalidInput, match=r"damaged|cut short") as caught:
        Job.open(path, clock)
    assert one_sentence(caught.value)


def test_a_job_with_scrambled_pages_is_refused(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "x.airseam"
    complete_job(path, clock)
    whole = bytearray(path.read_bytes())
    for page in range(1, len(whole) // 4096):
        whole[page * 4096 : page * 4096 + 64] = b"\xa5" * 64
    path.write_bytes(whole)
    with pytest.raises(InvalidInput, match="damaged") as caught:
        Job.open(path, clock)
    assert one_sentence(caught.value)


def test_a_job_is_never_made_over_another_file(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "x.airseam"
    path.write_text("precious")
    with pytest.raises(InvalidInput, match="exists already"):
        Job.create(path, clock, "x")
    assert path.read_text() == "precious"


def test_a_job_that_is_open_is_not_opened_again(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "x.airseam"
    job = Job.create(path, clock, "x")
    for read_only in (False, True):
        with pytest.raises(InvalidInput, match="open in another window"):
            Job.open(path, clock, read_only=read_only)
    job.close()
    Job.open(path, clock).close()


def test_after_a_crash_the_run_is_there_with_its_samples_and_sealed(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "x.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.begin(OUT)
    rehearsal.zero(WindowKind.ZERO_BEFORE)
    for target_pa in (60.0, 50.0, 40.0, 30.0, 20.0):
        rehearsal.point(OUT, target_pa)
    for _ in range(9):
        rehearsal.read(-10.0, 5.0)
    crashed = tmp_path / "crashed.airseam"
    copy_as_after_a_crash(tmp_path / "x.airseam", crashed)
    job.close()

    again = Job.open(crashed, clock)
    (run,) = again.interrupted()
    assert (run.direction, run.state, len(run.digest)) == (OUT, RecordState.INTERRUPTED, 64)
    assert again.tests()[0].state is RecordState.INTERRUPTED
    loaded = again.load(1)
    # Commits come at least twice a second: of 10 readings a second at most the last five may be missing.
    kept = len(again.readings(run.id)) // 4
    assert rehearsal.sequence - 5 <= kept <= rehearsal.sequence
    assert [window for run in loaded.runs for window in run.windows] == rehearsal.windows
    assert len(loaded.test().runs[0].points) == 5
    assert [(edit.subject, edit.new) for edit in again.edits] == [("run 1", "interrupted"), ("test 1", "interrupted")]
    assert all(item.ok for item in again.verify())
    again.close()
    assert len(Job.open(crashed, clock, read_only=True).interrupted()) == 1


def test_reading_only_changes_nothing(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "x.airseam"
    complete_job(path, clock)
    before = path.read_bytes()
    job = Job.open(path, clock, read_only=True)
    assert job.load(1).test().runs[0].points
    assert all(item.ok for item in job.verify())
    with pytest.raises(InvalidInput, match="reading only"):
        job.edit_details(job.details)
    with pytest.raises(InvalidInput, match="reading only"):
        job.record(plan(), RIG)
    job.close()
    assert path.read_bytes() == before
    assert [file.name for file in tmp_path.iterdir()] == ["x.airseam"]


def test_a_crashed_job_is_read_without_being_sealed(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "x.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.begin(OUT)
    rehearsal.zero(WindowKind.ZERO_BEFORE)
    rehearsal.read(0.0, 0.0)
    crashed = tmp_path / "crashed.airseam"
    copy_as_after_a_crash(tmp_path / "x.airseam", crashed)
    job.close()
    only = Job.open(crashed, clock, read_only=True)
    assert [run.state for run in only.interrupted()] == [RecordState.RECORDING]
    assert len(only.load(1).runs[0].windows) == 1
    assert {item.ok for item in only.verify()} == {True, None}
    only.close()
    assert not crashed.with_name("crashed.airseam-shm").exists()


def test_a_job_in_a_folder_that_cannot_be_written_is_read(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "folder" / "x.airseam"
    path.parent.mkdir()
    complete_job(path, clock)
    path.chmod(0o444)
    path.parent.chmod(0o555)
    try:
        job = Job.open(path, clock, read_only=True)
        assert job.load(1).test().runs[0].points
        job.close()
    finally:
        path.parent.chmod(0o755)
