"""The house in the job file: geometry and its versions, what was done, pictures, files of the first version."""

from __future__ import annotations

import sqlite3
from importlib.resources import files
from pathlib import Path

import pytest

from acquisition.geometry import Geometry, Room
from acquisition.job import Entry, Job, PreparationKind
from acquisition.job.schema import APPLICATION_ID, USER_VERSION
from analysis.errors import InvalidInput
from drivers.clock import VirtualClock
from tests.acquisition.samples import START

GEOMETRY = Geometry((Room("Hall", 40.0, 2.5), Room("Shed", 9.0, 2.0, included=False, reason="unheated")))
PICTURE = b"\x89PNG\r\n\x1a\n" + b"invented"


@pytest.fixture
def clock() -> VirtualClock:
    return VirtualClock(START)


def test_everything_comes_back(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "a.airseam"
    job = Job.create(path, clock, "Mill Row 8")
    house = job.edit_house()
    house.set_geometry(GEOMETRY)
    house.keep_version("as built", "measured on site", clock.utc())
    house.set_geometry(Geometry())
    entry = Entry(clock.utc(), PreparationKind.SEAL, "Bath fan", "on", "T. Ester", "blue tape")
    house.note(entry)
    photo = house.add_photo("Bath fan", "fan.png", PICTURE, clock.utc())
    job.close()
    for read_only in (True, False):
        again = Job.open(path, clock, read_only=read_only)
        assert again.house.geometry == Geometry()
        assert [(item.name, item.geometry) for item in again.house.versions] == [("as built", GEOMETRY)]
        assert again.house.entries == (entry,)
        assert again.house.photos == (photo,)
        assert again.house.photo(photo.id) == PICTURE
        again.close()


def test_a_version_needs_a_name_a_reason_and_a_change(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    house = job.edit_house()
    house.set_geometry(GEOMETRY)
    for name, reason, words in ((" ", "new", "without a name"), ("as built", "", "say why")):
        with pytest.raises(InvalidInput, match=words):
            house.keep_version(name, reason, clock.utc())
    house.keep_version("as built", "measured", clock.utc())
    with pytest.raises(InvalidInput, match="nothing new"):
        house.keep_version("again", "to be sure", clock.utc())
    assert len(house.versions) == 1
    job.close()


def test_what_is_no_picture_is_refused(tmp_path: Path, clock: VirtualClock) -> None:
    job = Job.create(tmp_path / "a.airseam", clock, "Mill Row 8")
    with pytest.raises(InvalidInput, match="PNG or JPEG"):
        job.edit_house().add_photo("Bath fan", "list.txt", b"no picture", clock.utc())
    with pytest.raises(InvalidInput, match="none of this number"):
        job.house.photo(1)
    assert job.house.photos == ()
    job.close()


def test_what_was_done_is_never_changed(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "a.airseam"
    job = Job.create(path, clock, "Mill Row 8")
    job.edit_house().note(Entry(clock.utc(), PreparationKind.SEAL, "Bath fan", "on"))
    job.close()
    db = sqlite3.connect(path)
    for statement in ("UPDATE preparation SET state = 'off'", "DELETE FROM preparation"):
        with pytest.raises(sqlite3.IntegrityError):
            db.execute(statement)
    db.close()


def test_a_file_of_the_first_version_is_read_and_brought_up(tmp_path: Path, clock: VirtualClock) -> None:
    path = tmp_path / "old.airseam"
    db = sqlite3.connect(path)
    db.executescript(files("acquisition.job").joinpath("schema.sql").read_text("utf-8"))
    db.execute(f"PRAGMA application_id = {APPLICATION_ID}")
    db.execute("PRAGMA user_version = 1")
    db.execute("INSERT INTO details VALUES ('name', 'Old Mill')")
    db.commit()
    db.close()
    before = path.read_bytes()
    read = Job.open(path, clock, read_only=True)
    assert (read.details.name, read.house.geometry) == ("Old Mill", Geometry())
    with pytest.raises(InvalidInput, match="reading only"):
        read.edit_house()
    read.close()
    assert path.read_bytes() == before
    job = Job.open(path, clock)
    job.edit_house().set_geometry(GEOMETRY)
    job.close()
    db = sqlite3.connect(path)
    assert db.execute("PRAGMA user_version").fetchone() == (USER_VERSION,)
    db.close()
    again = Job.open(path, clock, read_only=True)
    assert again.house.geometry == GEOMETRY
    again.close()
