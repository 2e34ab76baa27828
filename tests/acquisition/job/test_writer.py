"""The writer: how often it commits, and what it does when the disk does not take the data."""

from __future__ import annotations

import itertools
import sqlite3
import threading
from pathlib import Path

import pytest

from acquisition.job import Job, JobDetails
from acquisition.job.schema import create_database, open_database
from acquisition.job.writer import Writer
from acquisition.rig import Role
from acquisition.series import WindowRecord
from acquisition.steps import WindowKind
from analysis.records import Direction
from drivers.clock import VirtualClock, WallClock, seconds
from drivers.reading import Quality, Reading
from tests.acquisition.samples import AIR, RIG, START, Rehearsal, plan

OUT = Direction.DEPRESSURIZE


@pytest.fixture
def clock() -> VirtualClock:
    return VirtualClock(START)


def pages(job: Job, limit: int | None) -> int:
    """Limit the size of the file to a few pages beyond the present one (None: lift the limit)."""

    def set_limit(db: sqlite3.Connection) -> int:
        now = int(db.execute("PRAGMA page_count").fetchone()[0])
        db.execute(f"PRAGMA max_page_count = {1_000_000 if limit is None else now + limit}")
        return now

    return job._writer.read(set_limit)


def test_commits_come_at_least_twice_a_second(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "x.airseam", clock, "x")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.begin(OUT)
    saved = []
    for _ in range(100):
        rehearsal.read(0.0, 0.0)
        saved.append(recorder.recording().saved_utc)
    moments = sorted({moment for moment in saved if moment is not None})
    gaps_s = [(b - a).total_seconds() for a, b in itertools.pairwise(moments)]
    assert max(gaps_s) <= 0.5
    job.close()


def test_a_window_is_on_the_disk_at_the_next_round(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "x.airseam", clock, "x")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.begin(OUT)
    rehearsal.zero(WindowKind.ZERO_BEFORE)
    before = clock.utc()
    clock.wait_until(clock.now_ns() + seconds(0.11))
    saved = recorder.recording().saved_utc
    assert saved is not None
    assert saved >= before
    job.close()


def test_a_full_disk_raises_the_alarm_and_nothing_is_lost_when_there_is_room_again(
    tmp_path: Path, clock: VirtualClock
) -> None:
    job = Job.create(tmp_path / "x.airseam", clock, "x")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.begin(OUT)
    rehearsal.zero(WindowKind.ZERO_BEFORE)
    pages(job, 4)
    for target_pa in (60.0, 50.0, 40.0):
        rehearsal.point(OUT, target_pa)
    alarm = recorder.recording().alarm
    assert "does not take x.airseam" in alarm
    assert "memory only" in alarm
    assert job.alarm() == alarm

    # Nothing half-written: every stored reading instant has all four channels.
    stored = job.readings(1)
    assert len(stored) % 4 == 0
    assert len(stored) // 4 < rehearsal.sequence

    pages(job, None)
    clock.wait_until(clock.now_ns() + seconds(3))
    assert recorder.recording().alarm == ""
    rehearsal.point(OUT, 30.0)
    rehearsal.end()
    recorder.end_test("complete")
    assert job.close() == ""
    again = Job.open(tmp_path / "x.airseam", clock)
    assert len(again.readings(1)) == 4 * rehearsal.sequence
    assert all(item.ok for item in again.verify())
    again.close()


def test_closing_on_a_full_disk_saves_a_whole_copy_elsewhere(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "x.airseam", clock, "x")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    pages(job, 0)
    rehearsal.run(OUT)
    recorder.end_test("complete")
    folder = tmp_path / "elsewhere"
    folder.mkdir()
    sentence = job.close(folder)
    (rescued,) = folder.glob("*.airseam")
    assert str(rescued) in sentence
    again = Job.open(rescued, clock)
    assert len(again.readings(1)) == 4 * rehearsal.sequence
    assert len(again.load(1).test().runs[0].points) == 10
    assert all(item.ok for item in again.verify())
    again.close()


def test_what_could_not_be_saved_anywhere_is_said(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "x.airseam", clock, "x")
    recorder = job.record(plan(), RIG)
    pages(job, 0)
    Rehearsal(clock, recorder).run(OUT)
    assert "they are lost" in job.close(tmp_path / "no such folder")


def test_a_writer_that_falls_behind_says_so(tmp_path: Path, clock: VirtualClock) -> None:
    connection = create_database(tmp_path / "x.airseam")
    writer = Writer(connection, clock, tmp_path / "x.airseam")
    writer.post("INSERT INTO about VALUES (?, ?)", [("a", "b")])
    assert writer.alarm(clock.now_ns() + seconds(1.9)) == ""
    assert "is 3 s behind" in writer.alarm(clock.now_ns() + seconds(3))
    writer.pump(clock.now_ns() + seconds(3))
    assert writer.alarm(clock.now_ns() + seconds(9)) == ""
    writer.close()


def test_a_long_queue_is_written_in_rounds(tmp_path: Path, clock: VirtualClock) -> None:
    connection = create_database(tmp_path / "x.airseam")
    writer = Writer(connection, clock, tmp_path / "x.airseam")
    for number in range(60):
        writer.post("INSERT INTO about VALUES (?, ?)", [(f"{number}-{i}", "x") for i in range(100)])
    writer.pump(seconds(1))
    assert connection.execute("SELECT count(*) FROM about").fetchone() == (2000,)
    writer.close()
    connection = open_database(tmp_path / "x.airseam", read_only=True)
    assert connection.execute("SELECT count(*) FROM about").fetchone() == (6000,)
    connection.close()


def test_a_statement_that_the_file_refuses_stays_visible(tmp_path: Path, clock: VirtualClock) -> None:
    connection = create_database(tmp_path / "x.airseam")
    writer = Writer(connection, clock, tmp_path / "x.airseam")
    writer.post("INSERT INTO about VALUES (?, ?)", [("a", "1"), ("a", "2")])
    writer.pump(seconds(1))
    assert "UNIQUE" in writer.alarm(seconds(1))
    assert connection.execute("SELECT count(*) FROM about").fetchone() == (0,)
    assert "lost" in writer.close(tmp_path)


def test_on_real_time_edits_are_visible_at_once_and_no_thread_is_left(tmp_path: Path) -> None:
    threads = threading.active_count()
    job = Job.create(tmp_path / "x.airseam", WallClock(), "x")
    job.edit_details(JobDetails("y"))
    recorder = job.record(plan(), RIG)
    recorder.begin_run(OUT, AIR, 0, START)
    recorder.window(WindowRecord(1, WindowKind.ZERO_BEFORE, 0, 10))
    assert job.details.name == "y"
    assert len(job.load(1).runs[0].windows) == 1
    recorder.end_test("stopped")
    assert job.close() == ""
    assert threading.active_count() == threads
    again = Job.open(tmp_path / "x.airseam", WallClock())
    assert again.details.name == "y"
    assert again.close() == ""


def test_two_threads_may_edit_and_record_at_once(tmp_path: Path) -> None:
    job = Job.create(tmp_path / "x.airseam", WallClock(), "x")
    recorder = job.record(plan(), RIG)
    recorder.begin_run(OUT, AIR, 0, START)

    def edit() -> None:
        for number in range(200):
            job.edit_details(JobDetails(f"name {number}"))
            if number % 50 == 0:
                job.load(1)

    editor = threading.Thread(target=edit)
    editor.start()
    for number in range(2000):
        recorder.readings([(Role.ENVELOPE, Reading("gauge.p1", 1.0, number, number, 0.0, Quality.GOOD, number))])
    editor.join()
    recorder.end_test("stopped")
    assert [item.sequence for item in job.readings(1)] == list(range(2000))
    assert all(item.ok is not False for item in job.verify())
    assert job.close() == ""
    again = Job.open(tmp_path / "x.airseam", WallClock(), read_only=True)
    assert again.details.name == "name 199"
    assert len(again.edits) == 200
    again.close()
