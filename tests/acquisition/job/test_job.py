"""The job file: what goes in comes out, edits are logged, measured data stays."""

from __future__ import annotations

import json
import math
import sqlite3
from dataclasses import replace
from pathlib import Path

import pytest

from acquisition.job import Job, JobDetails, RecordState
from acquisition.job.schema import USER_VERSION
from acquisition.rig import Role
from acquisition.snapshot import Flag, Severity
from acquisition.steps import WindowKind
from analysis.errors import InvalidInput
from analysis.records import Direction
from drivers.clock import VirtualClock, seconds
from drivers.reading import Quality, Reading
from tests.acquisition.samples import AIR, BUILDING, RIG, START, Rehearsal, plan

OUT, IN = Direction.DEPRESSURIZE, Direction.PRESSURIZE


@pytest.fixture
def clock() -> VirtualClock:
    return VirtualClock(START)


def recorded(path: Path, clock: VirtualClock, *directions: Direction) -> Job:
    """Make a job with one complete test."""
    job = Job.create(path, clock, "Mill Row 8")
    recorder = job.record(plan(*directions), RIG)
    rehearsal = Rehearsal(clock, recorder)
    for direction in directions or (OUT,):
        rehearsal.run(direction)
    recorder.end_test("complete")
    return job


def test_a_test_out_of_the_file_is_the_test_that_was_recorded(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(OUT, IN), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.run(OUT)
    rehearsal.run(IN)
    recorder.end_test("complete")
    live = recorder.test()
    assert job.close() == ""

    again = Job.open(tmp_path / "a.airseam", clock)
    loaded = again.load(1)
    # Equality of floats without tolerance: the same code on the same numbers gives the same digits.
    assert loaded.test() == live
    assert loaded.record.plan == plan(OUT, IN)
    assert loaded.record.rig == RIG
    assert loaded.record.state is RecordState.COMPLETE
    assert [run.record.direction for run in loaded.runs] == [OUT, IN]
    assert [window for run in loaded.runs for window in run.windows] == rehearsal.windows
    assert loaded.runs[0].fan[1].fraction == 0.6
    assert live.runs[0].started == START
    again.close()


def test_everything_recorded_is_visible_before_the_writer_had_its_turn(tmp_path: Path, clock: VirtualClock) -> None:
    job = recorded(tmp_path / "a.airseam", clock)
    assert len(job.load(1).runs[0].windows) == 12
    job.edit_details(JobDetails("Mill Row 8", client="A. Nobody"))
    assert job.details.client == "A. Nobody"
    assert job.tests()[0].state is RecordState.COMPLETE
    job.close()


def test_every_edit_is_logged_with_old_and_new_value(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row")
    clock.wait_until(seconds(60))
    job.edit_details(JobDetails("Mill Row 8", site="Mill Lane"))
    job.edit_details(JobDetails("Mill Row 8", site="Mill Row"))
    job.close()
    again = Job.open(tmp_path / "a.airseam", clock)
    assert [(edit.field, edit.old, edit.new) for edit in again.edits] == [
        ("name", "Mill Row", "Mill Row 8"),
        ("site", "", "Mill Lane"),
        ("site", "Mill Lane", "Mill Row"),
    ]
    assert (again.edits[0].utc - START).total_seconds() == 60
    assert again.details == JobDetails("Mill Row 8", site="Mill Row")
    again.close()


def test_building_versions_and_draft_come_back(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    assert job.building is None
    assert job.draft().building.name == ""
    job.add_building(BUILDING, "first survey")
    job.add_building(replace(BUILDING, volume_m3=310.0, floor_area_m2=None), "attic measured")
    job.set_draft(plan(OUT, IN))
    job.close()
    again = Job.open(tmp_path / "a.airseam", clock)
    assert [(item.building.volume_m3, item.reason) for item in again.building_versions] == [
        (300.0, "first survey"),
        (310.0, "attic measured"),
    ]
    assert again.building == replace(BUILDING, volume_m3=310.0, floor_area_m2=None)
    assert again.draft() == plan(OUT, IN)
    again.close()


def test_marks_flags_and_answers_come_back(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    recorder.answer(5, START, "flames", "Is every fire out?", "Yes")
    recorder.begin_run(OUT, AIR, clock.now_ns(), clock.utc())
    recorder.mark(7, START, "note", "dog in the hall; 'quoted' \u03a9")
    flag = Flag("zero-drift", Severity.ATTENTION, "The zero-flow pressure moved by 1.2 Pa.", START)
    recorder.flag(flag)
    recorder.end_test("stopped")
    loaded = job.load(1)
    assert [(mark.t_ns, mark.kind, mark.text) for mark in loaded.marks] == [(7, "note", "dog in the hall; 'quoted' Ω")]
    assert loaded.flags == (flag,)
    assert [(answer.ask_id, answer.choice) for answer in loaded.answers] == [("flames", "Yes")]
    assert (loaded.record.state, loaded.runs[0].record.state) == (RecordState.STOPPED, RecordState.STOPPED)
    job.close()


def test_a_reading_that_is_no_number_survives_the_file(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    recorder.begin_run(OUT, AIR, 0, START)
    values = [math.nan, -0.0, math.inf, 1e-300, -49.999999999999993]
    recorder.readings(
        [(Role.ENVELOPE, Reading("gauge.p1", value, i, i, 0.0, Quality.GOOD, i)) for i, value in enumerate(values)]
    )
    recorder.end_test("stopped")
    stored = [item.value for item in job.readings(1)]
    assert stored[0] is None
    assert stored[1:] == values[1:]
    assert all(item.ok is not False for item in job.verify())
    job.close()


def test_a_point_is_struck_with_a_reason_and_put_back(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.run(OUT)
    recorder.end_test("complete")
    whole = job.tests()[0].result_json
    with pytest.raises(InvalidInput, match="say why"):
        recorder.strike(3, " ")
    with pytest.raises(InvalidInput, match="window is 99"):
        recorder.strike(99, "x")
    recorder.strike(3, "the door was opened")
    assert len(recorder.test().runs[0].points) == 9
    assert job.tests()[0].result_json != whole
    loaded = job.load(1)
    assert [w.id for w in loaded.runs[0].windows if w.struck] == [3]
    assert loaded.test() == recorder.test()
    job.restore(1, 3)
    assert job.tests()[0].result_json == whole
    job.strike(1, 4, "gust")
    assert [(s.window_id, s.struck, s.reason) for s in job.load(1).strikes] == [
        (3, True, "the door was opened"),
        (3, False, ""),
        (4, True, "gust"),
    ]
    assert all(item.ok for item in job.verify())
    job.close()


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE reading SET value = 0",
        "DELETE FROM reading",
        "UPDATE averaging_window SET end_ns = 0",
        "DELETE FROM averaging_window",
        "UPDATE run SET air = '{}'",
        "UPDATE run SET digest = ''",
        "DELETE FROM run",
        "UPDATE test SET plan = '{}'",
        "DELETE FROM test",
        "UPDATE edit SET old = ''",
        "DELETE FROM strike",
        "DELETE FROM fan",
        "UPDATE result SET document = NULL",
        "INSERT INTO reading (series, t_ns, utc_ns, round_trip_s, quality, sequence) VALUES (99, 0, 0, 0, 'good', 0)",
        "INSERT INTO averaging_window (run, number, kind, start_ns, end_ns) VALUES (1, 1, 'mood', 0, 0)",
    ],
)
def test_measured_data_is_never_changed_or_deleted(tmp_path: Path, clock: VirtualClock, statement: str) -> None:
    job = recorded(tmp_path / "a.airseam", clock)
    job.strike(1, 4, "gust")
    job.edit_details(JobDetails("Mill Row 8", note="x"))
    job.close()
    db = sqlite3.connect(tmp_path / "a.airseam")
    db.execute("PRAGMA foreign_keys = ON")
    with pytest.raises(sqlite3.IntegrityError):
        db.execute(statement)
    db.close()


def test_the_file_reads_for_a_stranger(tmp_path: Path, clock: VirtualClock) -> None:
    recorded(tmp_path / "a.airseam", clock).close()
    db = sqlite3.connect(tmp_path / "a.airseam")
    assert db.execute("PRAGMA application_id").fetchone() == (0x41495253,)
    assert db.execute("PRAGMA user_version").fetchone() == (USER_VERSION,)
    assert db.execute("PRAGMA journal_mode").fetchone() == ("wal",)
    assert dict(db.execute("SELECT key, value FROM about"))["format"] == "airseam-job-1"
    first = db.execute("SELECT direction, role, channel, utc, elapsed_s, unit FROM reading_named LIMIT 1").fetchone()
    assert first == ("depressurize", "envelope-pressure", "gauge.p1", "2026-05-04T09:12:00.000Z", 0.0, "Pa")
    assert db.execute("SELECT count(*), sum(struck) FROM window_now").fetchone() == (12, 0)
    method, stage, building = db.execute("SELECT method, stage, building FROM test_now").fetchone()
    assert (method, stage, building) == ("iso9972", "membrane up", "Mill Row 8")
    # The schema travels with its comments: every table says what it holds.
    for (sql,) in db.execute("SELECT sql FROM sqlite_schema WHERE type = 'table'"):
        assert sql.startswith("CREATE TABLE")
    db.close()


def test_two_recordings_of_one_rehearsal_give_the_same_digest(tmp_path: Path) -> None:
    digests = []
    for name in ("a", "b"):
        job = recorded(tmp_path / f"{name}.airseam", VirtualClock(START), OUT, IN)
        digests.append([run.digest for run in job.runs(1)])
        job.close()
    assert digests[0] == digests[1]
    assert len(set(digests[0])) == 2
    assert all(len(digest) == 64 for digest in digests[0])


def test_verify_finds_a_changed_reading(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "a.airseam"
    job = recorded(path, clock, OUT, IN)
    assert [item.ok for item in job.verify()] == [True, True, True, True]
    job.close()
    db = sqlite3.connect(path)
    db.execute("DROP TRIGGER reading_is_final")
    db.execute("UPDATE reading SET value = value + 0.25 WHERE id = 400")
    db.commit()
    db.close()
    job = Job.open(path, clock, read_only=True)
    found = {item.subject: item for item in job.verify()}
    assert found["file"].ok
    assert found["test 1, depressurize"].ok is False
    assert "were changed" in found["test 1, depressurize"].sentence
    assert found["test 1, pressurize"].ok
    assert found["test 1, result"].ok is False
    job.close()


def test_verify_finds_a_changed_result(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "a.airseam"
    recorded(path, clock).close()
    db = sqlite3.connect(path)
    db.execute("DROP TRIGGER result_is_final")
    document = json.loads(db.execute("SELECT document FROM result").fetchone()[0])
    document["runs"][0]["r2"] = 0.5
    db.execute("UPDATE result SET document = ?", (json.dumps(document),))
    db.commit()
    db.close()
    job = Job.open(path, clock)
    result = next(item for item in job.verify() if item.subject == "test 1, result")
    assert result.ok is False
    assert "runs[0].r2 is 0.5 in the file" in result.sentence
    job.close()


def test_a_test_without_enough_points_has_no_result_and_says_why(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.begin(OUT)
    rehearsal.zero(WindowKind.ZERO_BEFORE)
    recorder.end_test("stopped")
    record = job.tests()[0]
    assert record.result_json == ""
    assert "point" in record.result_gap
    assert all(item.ok for item in job.verify())
    job.close()


def test_readings_between_runs_are_not_kept(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.read(0.0, 0.0)
    rehearsal.begin(OUT)
    rehearsal.read(0.0, 0.0)
    rehearsal.end()
    rehearsal.read(0.0, 0.0)
    assert [item.sequence for item in job.readings(1)] == [1, 1, 1, 1]
    with pytest.raises(RuntimeError, match="cannot end a run"):
        rehearsal.end()
    recorder.end_test("stopped")
    with pytest.raises(RuntimeError, match="cannot end the test"):
        recorder.end_test("stopped")
    job.close()


def test_an_unknown_test_number_lists_those_there_are(tmp_path: Path, clock: VirtualClock) -> None:
    job = recorded(tmp_path / "a.airseam", clock)
    with pytest.raises(InvalidInput, match="test is 7: the number of a test is needed, there are: 1"):
        job.load(7)
    job.close()


def test_a_plan_that_json_cannot_hold_is_refused(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    with pytest.raises(InvalidInput, match="must be finite"):
        job.record(replace(plan(), zero_s=math.nan), RIG)
    assert job.tests() == ()
    job.close()
