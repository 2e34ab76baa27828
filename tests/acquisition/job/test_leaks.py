"""The leak register: kept, read back, never changed; old files are brought up."""

from __future__ import annotations

import sqlite3
from dataclasses import replace
from datetime import UTC, datetime
from importlib.resources import files
from pathlib import Path

import pytest

from acquisition.job import Job, SealingMark, SealingMarkKind
from acquisition.job.schema import APPLICATION_ID, USER_VERSION
from acquisition.sealing.leaks import Drop, HowFound, Leak, LeakStatus, Pin, drop_from, leak_from
from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.sealing.change import Sureness
from drivers.clock import VirtualClock

HATCH = Leak(
    "attic-access", storey="upper floor", room="landing", found_by=HowFound.FOG, trade="carpenter",
    size_guess_m3_h=25.0, photos=(1,), pins=(Pin(1, 0.25, 0.5),),
)  # fmt: skip
DROP = Drop(1312.0, 1287.0, Estimate(-25.0, -33.0, -17.0), 9.0, Sureness.SURE)


@pytest.fixture
def clock() -> VirtualClock:
    return VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))


def test_everything_comes_back_from_the_file(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "a.airseam"
    job = Job.create(path, clock, "Mill Row 8")
    register = job.edit_leaks()
    first = register.add(HATCH, clock.utc())
    second = register.add(Leak("pipe"), clock.utc())
    marks = [SealingMark(clock.utc(), 5, kind, first) for kind in (SealingMarkKind.STARTS, SealingMarkKind.DONE)]
    for mark in marks:
        register.mark(mark)
    sealed = replace(HATCH, status=LeakStatus.SEALED, material="strip", minutes=12.0, cost=9.5)
    register.change(first, sealed, clock.utc())
    register.measured(first, DROP, clock.utc())
    job.close()
    read = Job.open(path, clock, read_only=True)
    assert read.leaks.leaks == {first: sealed, second: Leak("pipe")}
    assert read.leaks.marks == tuple(marks)
    assert read.leaks.drops == {first: DROP}
    with pytest.raises(InvalidInput, match="reading only"):
        read.edit_leaks()
    read.close()


def test_what_was_said_before_stays_in_the_file(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "a.airseam"
    job = Job.create(path, clock, "Mill Row 8")
    register = job.edit_leaks()
    number = register.add(HATCH, clock.utc())
    register.change(number, replace(HATCH, status=LeakStatus.LEFT), clock.utc())
    register.measured(number, DROP, clock.utc())
    register.mark(SealingMark(clock.utc(), 0, SealingMarkKind.NOTE, text="dog let out"))
    job.close()
    db = sqlite3.connect(path)
    assert db.execute("SELECT count(*) FROM leak").fetchone() == (2,)
    assert db.execute("SELECT number, status, part FROM leak_now").fetchall() == [(1, "left", "attic-access")]
    for table, column in (("leak", "number"), ("sealing_mark", "t_ns"), ("leak_drop", "leak")):
        for statement in (f"UPDATE {table} SET {column} = 7", f"DELETE FROM {table}"):
            with pytest.raises(sqlite3.IntegrityError):
                db.execute(statement)
    db.close()


def test_a_leak_that_is_not_there_is_refused(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    register = job.edit_leaks()
    with pytest.raises(InvalidInput, match="none yet"):
        register.measured(3, DROP, clock.utc())
    with pytest.raises(InvalidInput, match="none yet"):
        register.mark(SealingMark(clock.utc(), 0, SealingMarkKind.DONE, 1))
    assert (register.marks, register.drops) == ((), {})
    job.close()


@pytest.mark.parametrize(
    ("fields", "names"),
    [
        ({"part": "roofing"}, "part is 'roofing'.*attic-access"),
        ({"minutes": -1.0}, "minutes"),
        ({"cost": float("nan")}, "cost"),
        ({"size_guess_m3_h": float("inf")}, "size_guess_m3_h"),
        ({"room": "x" * 500}, "room"),
        ({"pins": (Pin(1, 1.2, 0.0),)}, "pin"),
    ],
)
def test_what_no_leak_can_be_is_refused(fields: dict[str, object], names: str) -> None:
    with pytest.raises(InvalidInput, match=names):
        Leak(**({"part": "pipe"} | fields))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "text", ["", "[]", "{}", '{"part":"pipe"}', '{"found_by":"nose","part":"pipe","status":"found"}']
)
def test_a_damaged_register_says_so(text: str) -> None:
    for read in (leak_from, drop_from):
        with pytest.raises(InvalidInput, match="unreadable"):
            read(text)


def test_files_of_earlier_versions_are_brought_up(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "old.airseam"
    db = sqlite3.connect(path)
    for name in ("schema.sql", "schema_2.sql"):
        db.executescript(files("acquisition.job").joinpath(name).read_text("utf-8"))
    db.execute(f"PRAGMA application_id = {APPLICATION_ID}")
    db.execute("PRAGMA user_version = 2")
    db.execute("INSERT INTO details VALUES ('name', 'Old Mill')")
    db.commit()
    db.close()
    job = Job.open(path, clock)
    assert job.edit_leaks().add(HATCH, clock.utc()) == 1
    job.close()
    db = sqlite3.connect(path)
    assert db.execute("PRAGMA user_version").fetchone() == (USER_VERSION,)
    db.close()
