"""The trainer's window through its widgets: exercise, class, house, faults, marks."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QTableWidget
from pytestqt.qtbot import QtBot

from acquisition.joining import join_class
from acquisition.rig import RigSpec
from drivers.clock import WallClock, seconds
from drivers.openers import Openers
from gui.app import application
from gui.classroom.trainer import Trainer
from gui.classroom.window import CLASS, EXERCISE, FAULTS, HOUSE, ClassWindow
from gui.look import Look
from gui.theme import Mode
from tests.acquisition.marking.students import student
from tests.simulators.classroom.test_class_server import free_port, wait_for

CLOCK = WallClock()
TAPE = "service entries, west"


@pytest.fixture
def joined() -> list[tuple[str, str]]:
    return []


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path, joined: list[tuple[str, str]]) -> Iterator[ClassWindow]:
    look = Look(application(), Mode.DARK)
    made = ClassWindow(look, Trainer(CLOCK), tmp_path / "class", lambda place, name: joined.append((place, name)))
    qtbot.addWidget(made)
    look.put_on()
    made.show()
    yield made
    made.close()
    look.take_off()
    look.deleteLater()


def open_class(window: ClassWindow, houses: int = 2) -> str:
    window.choose_page(CLASS)
    window.room.students.setValue(houses)
    window.room.port.setValue(free_port(2 * houses + 1))
    window.room.open_button.click()
    window.tick()
    assert window.trainer.server is not None, window.trainer.said
    return "{}:{}".format(*window.trainer.server.address)


def join(place: str, name: str) -> RigSpec:
    return join_class(place, name, Openers(CLOCK).open, CLOCK)


def cell(table: QTableWidget, row: int, column: int) -> str:
    found = table.item(row, column)
    assert found is not None
    return found.text()


def test_nothing_is_served_until_the_class_is_opened_and_nothing_after_it_is_closed(window: ClassWindow) -> None:
    assert window.trainer.server is None
    place = open_class(window)
    assert place in window.room.where.text()
    assert place.startswith("127.0.0.1:")
    assert join(place, "Ada Example").fan == "fan"
    window.tick()
    assert cell(window.room.table, 0, 1) == "Ada Example"
    assert cell(window.room.table, 1, 2) == "free"
    window.room.open_button.click()
    assert window.trainer.server is None
    assert not window.room.where.isVisible()


def test_a_mistake_in_the_editor_is_said_with_its_line_and_the_class_does_not_open(window: ClassWindow) -> None:
    window.choose_page(EXERCISE)
    editor = window.exercise.editor
    assert "✓" in window.exercise.problem.text()
    editor.setPlainText(editor.toPlainText().replace("minutes = 30", "minutes = -3"))
    window.tick()
    line = editor.toPlainText().splitlines().index("minutes = -3") + 1
    assert f"line {line}: minutes" in window.exercise.problem.text()
    (mark,) = editor.extraSelections()
    assert mark.cursor.blockNumber() == line - 1
    window.choose_page(CLASS)
    window.room.open_button.click()
    assert window.trainer.server is None
    assert f"line {line}" in window.trainer.said
    window.exercise.choice.setCurrentIndex(3)
    window.exercise.choice.activated.emit(3)
    window.tick()
    assert "✓" in window.exercise.problem.text()


def test_an_exercise_is_saved_and_loaded_and_none_is_overwritten(window: ClassWindow, tmp_path: Path) -> None:
    trainer, path = window.trainer, tmp_path / "own.toml"
    trainer.save(path)
    assert path.read_text(encoding="utf-8") == trainer.text
    other = tmp_path / "other.toml"
    other.write_text("something else", encoding="utf-8")
    trainer.save(other)
    assert other.read_text(encoding="utf-8") == "something else"
    assert "there already" in trainer.said
    trainer.load(other)
    window.tick()
    assert window.exercise.editor.toPlainText() == "something else"
    assert "✗" in window.exercise.problem.text()
    trainer.load(tmp_path / "none.toml")
    assert "cannot be read" in trainer.said


def test_leaks_are_sealed_and_resized_and_the_section_shows_it(window: ClassWindow) -> None:
    open_class(window)
    window.choose_page(HOUSE)
    window.tick()
    row = window.leaks.rows[TAPE]
    seal, twice = row._group.button(0), row._group.button(3)

    def times() -> float:
        window.tick()
        picture = window.trainer.picture()
        assert picture is not None
        return next(mark.times for mark in picture.leaks if mark.name == TAPE)

    seal.click()
    wait_for(lambda: times() == 0.0)
    window.tick()
    assert seal.isChecked()
    twice.click()
    wait_for(lambda: times() == 2.0)
    station = window.trainer.station
    assert station is not None
    assert station.truth()["events"][-1]["what"] == "seal-off"


def test_covered_truth_is_neither_drawn_nor_pressed_and_a_key_covers_it(window: ClassWindow) -> None:
    open_class(window)
    window.choose_page(HOUSE)
    window.tick()
    assert window.leaks.rows[TAPE]._group.checkedId() == 2
    open_picture = window.house.grab().toImage()
    QTest.keyClick(window, Qt.Key.Key_T)
    window.tick()
    QApplication.processEvents()
    assert window.trainer.covered
    assert window.leaks.rows[TAPE]._group.checkedId() == -1
    assert window.house.grab().toImage() != open_picture


def test_weather_and_time_are_the_trainers(window: ClassWindow) -> None:
    open_class(window)
    window.choose_page(HOUSE)
    window.tick()
    page, trainer = window.leaks, window.trainer
    assert trainer.station is not None
    plant = trainer.station.rig.plant
    page.wind.setValue(9.0)
    page.way.setCurrentIndex(2)
    page.blow.click()
    page.outdoor.setValue(-10.0)
    page.heat.click()
    page._paces.button(4).click()
    wait_for(lambda: plant.weather.mean_m_s[0] == 9.0 and plant.interior.air.outdoor_c[0] == -10.0)
    assert plant.weather.from_deg[0] % 360.0 == 90.0
    page._paces.button(0).click()
    stood_s = plant.time_s
    CLOCK.wait_until(CLOCK.now_ns() + seconds(0.3))
    assert plant.time_s == stood_s


def test_a_frozen_picture_stands_while_the_house_goes_on(window: ClassWindow) -> None:
    open_class(window)
    window.tick()
    QTest.keyClick(window, Qt.Key.Key_F)
    still = window.trainer.picture()
    CLOCK.wait_until(CLOCK.now_ns() + seconds(0.4))
    assert window.trainer.picture() is still
    QTest.keyClick(window, Qt.Key.Key_F)
    later = window.trainer.picture()
    assert later is not None
    assert still is not None
    assert later.time_s > still.time_s


def test_every_fault_can_be_thrown_in_every_house_and_put_right(window: ClassWindow) -> None:
    window.trainer.choose("attached-garage")
    open_class(window)
    window.choose_page(FAULTS)
    window.faults.everybody.setChecked(True)
    window.tick()
    trainer = window.trainer
    assert len(trainer.faults()) >= 16
    for title, throw, mend in window.faults.lines:
        throw.click()
        window.tick()
        assert "now" in trainer.said
        if mend.isEnabled():
            assert "thrown" in title.full
            mend.click()
        window.tick()
        assert throw.isEnabled()
    assert trainer.server is not None
    told = [len(station.truth()["events"]) for station in trainer.server.stations]
    assert told == [len(trainer.faults()) - 1] * 2
    window.faults.after.setValue(2.0)
    window.faults.lines[0][1].click()
    assert "in 2 min" in trainer.said


def test_the_program_beside_is_asked_to_join(window: ClassWindow, joined: list[tuple[str, str]]) -> None:
    place = open_class(window)
    window.room.join_button.click()
    assert joined == [(place, "Beamer")]


def test_jobs_are_marked_and_the_sheets_written(window: ClassWindow, tmp_path: Path) -> None:
    handed_in = tmp_path / "jobs"
    handed_in.mkdir()
    with student("first-test", handed_in) as person:
        person.answer_safety()
        person.test()
        job = person.job.path
    window.mark_beside(job)
    window.choose_page(CLASS)
    assert cell(window.room.marks, 0, 1) == "10 of 10"
    window.write_sheets(tmp_path / "sheets")
    assert {path.name for path in (tmp_path / "sheets").iterdir()} == {"Student One.pdf", "class.csv"}
    (handed_in / "damaged.airseam").write_text("no job", encoding="utf-8")
    window.mark_beside(job)
    assert re.search("could not be marked", window.trainer.said)


def test_no_button_of_the_window_is_cut_at_its_smallest(window: ClassWindow) -> None:
    open_class(window)
    window.resize(1024, 700)
    for page in (EXERCISE, CLASS, HOUSE, FAULTS):
        window.choose_page(page)
        window.tick()
        QApplication.processEvents()
        shown = window.pages.currentWidget()
        assert shown.width() >= shown.minimumSizeHint().width()
        assert shown.height() >= shown.minimumSizeHint().height()
