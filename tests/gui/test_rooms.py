"""Rooms and surfaces in the Job place: typing, pasting, undo, versions, both systems of units."""

from __future__ import annotations

import random

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from acquisition.geometry import Geometry, Room
from acquisition.job import Job
from analysis.records import Building
from analysis.units import Display, System
from gui.viewmodels.moment import Place
from gui.viewmodels.rooms import Part, RoomsModel
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage

SI, US = Display(), Display(System.US)


@pytest.fixture
def rooms(stage: Stage) -> Stage:
    """Return the window with the tables on show."""
    stage.program.intents.go_to(Place.JOB)
    stage.program.intents.house.show_page(rooms=True)
    stage.draw()
    return stage


def job_of(stage: Stage) -> Job:
    assert stage.program.desk.job is not None
    return stage.program.desk.job


def test_rooms_typed_into_the_table_become_the_volume_of_the_job(rooms: Stage) -> None:
    table = rooms.program.window.job.rooms.tables[Part.ROOM]
    table.add.click()
    rooms.draw()
    for column, text in ((1, "Hall"), (2, "40"), (3, "2.5")):
        item = table.table.item(0, column)
        assert item is not None
        item.setText(text)
        rooms.draw()
    assert job_of(rooms).house.geometry == Geometry((Room("Hall", 40.0, 2.5),))
    assert job_of(rooms).draft().building.volume_m3 == 100.0
    volume = table.table.item(0, 4)
    assert volume is not None
    assert volume.text() == "100"
    tick = table.table.item(0, 0)
    assert tick is not None
    tick.setCheckState(Qt.CheckState.Unchecked)
    rooms.draw()
    assert not job_of(rooms).house.geometry.rooms[0].included
    rooms.program.intents.undo()
    assert job_of(rooms).house.geometry.rooms[0].included


def test_a_wrong_number_is_told_and_the_cell_goes_back(rooms: Stage) -> None:
    page = rooms.program.window.job.rooms
    table = page.tables[Part.ROOM]
    table.add.click()
    rooms.draw()
    item = table.table.item(0, 2)
    assert item is not None
    item.setText("minus")
    rooms.draw()
    assert "Room 1, floor area" in page._error.text()
    back = table.table.item(0, 2)
    assert back is not None
    assert back.text() == ""
    assert job_of(rooms).house.geometry.rooms == (Room("Room 1"),)


def test_a_table_is_pasted_whole_or_not_at_all(rooms: Stage) -> None:
    rooms.program.screen.display = US
    QApplication.clipboard().setText("Hall\t100\t8\nBath\t50\t8")
    rooms.program.window.job.rooms.tables[Part.ROOM].paste.click()
    rooms.draw()
    assert [room.name for room in job_of(rooms).house.geometry.rooms] == ["Hall", "Bath"]
    # 1200 ft3; a foot is 0.3048 m (exact by definition).
    assert job_of(rooms).draft().building.volume_m3 == pytest.approx(1200 * 0.3048**3)
    QApplication.clipboard().setText("Loft\t10\t8\nShed\tbig1\t8")
    rooms.program.window.job.rooms.tables[Part.ROOM].paste.click()
    rooms.draw()
    assert len(job_of(rooms).house.geometry.rooms) == 2
    assert "line 2" in rooms.program.window.job.rooms._error.text()


def test_a_version_is_kept_with_its_reason(rooms: Stage) -> None:
    page = rooms.program.window.job.rooms
    page.tables[Part.SURFACE].add.click()
    page.version_name.setText("as built")
    page.keep.click()
    assert job_of(rooms).house.versions == ()
    page.version_reason.setText("measured on site")
    page.keep.click()
    rooms.draw()
    assert [(item.name, item.reason) for item in job_of(rooms).house.versions] == [("as built", "measured on site")]
    assert "as built: measured on site" in page._versions.text()
    assert page.version_name.text() == ""


def test_the_sums_stand_beside_the_sheet() -> None:
    model = RoomsModel(Geometry((Room("Hall", 40.0, 2.5),)))
    picture = model.picture(US, Building("House", 300.0), "", ())
    assert ("Volume", "3\u2009531 ft³") in picture.sums
    assert any("another volume (10\u2009594 ft³)" in item for item in picture.odd)
    assert picture.rooms.head[2] == "Floor area, ft²"
    assert model.picture(SI, Building("House", 100.0), "", ()).odd == ()


def test_random_edits_undo_to_the_beginning_and_redo_to_the_end() -> None:
    dice = random.Random(7)
    model = RoomsModel(Geometry())
    seen = [model.geometry]
    for _ in range(150):
        part = dice.choice(tuple(Part))
        count = len(model._items(part))
        if dice.random() < 0.3 or not count:
            done = model.add(part)
        elif dice.random() < 0.3:
            done = model.remove(part, dice.randrange(count))
        else:
            done = model.type_cell(part, dice.randrange(count), dice.choice((1, 2)), str(dice.randint(1, 99)), SI)
        if done:
            seen.append(model.geometry)
    for earlier in reversed(seen[:-1]):
        assert model.undo()
        assert model.geometry == earlier
    assert not model.undo()
    for later in seen[1:]:
        assert model.redo()
        assert model.geometry == later


def test_nothing_is_cut_on_the_page(rooms: Stage) -> None:
    model = rooms.program.screen.rooms
    assert model is not None
    QApplication.clipboard().setText(
        "\n".join(f"Room number {at} of the long house\t{at + 9}\t2.4" for at in range(30))
    )
    page = rooms.program.window.job.rooms
    page.tables[Part.ROOM].paste.click()
    page.tables[Part.SURFACE].add.click()
    for size in ((1024, 700), (1440, 900)):
        rooms.program.window.resize(*size)
        for display in (SI, US):
            rooms.program.screen.display = display
            for _ in range(3):
                rooms.program.screen.touch()
                rooms.draw()
            window = rooms.program.window
            assert [*cut_texts(window), *overlaps(window)] == []
