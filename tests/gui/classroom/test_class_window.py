"""The trainer's window through its widgets: exercise, class, house, faults, marks."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QTableWidget
from pytestqt.qtbot import QtBot

from acquisition.joining import join_class
from acquisition.rig import RigSpec
from acquisition.rigfile import read_rig
from analysis.units import Display, System
from drivers.clock import WallClock, seconds
from drivers.openers import Openers
from gui.app import application
from gui.beside import Beside
from gui.classroom.pictures import save_class_pictures
from gui.classroom.trainer import Trainer
from gui.classroom.window import CLASS, EXERCISE, FAULTS, HOUSE, TIMELINE, ClassWindow
from gui.look import Look
from gui.theme import Mode
from tests.acquisition.marking.students import student
from tests.simulators.classroom.test_class_server import free_port, wait_for

CLOCK = WallClock()
TAPE = "service entries, west"


@pytest.fixture(scope="module")
def handed_in(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return the job of a careful student; nobody changes it."""
    with student("first-test", tmp_path_factory.mktemp("jobs")) as person:
        person.answer_safety()
        person.test()
        return person.job.path


@pytest.fixture
def joined() -> list[tuple[str, str]]:
    return []


@pytest.fixture
def units() -> list[Display]:
    """The units of the normal window; the last is true."""
    return [Display()]


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path, joined: list[tuple[str, str]], units: list[Display]) -> Iterator[ClassWindow]:
    look = Look(application(), Mode.DARK)
    beside = Beside(
        lambda place, name: joined.append((place, name)), lambda rig: joined.append((rig, "")), lambda: units[-1]
    )
    made = ClassWindow(look, Trainer(CLOCK), tmp_path / "class", beside)
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


def test_what_was_typed_and_never_saved_is_kept_beside(window: ClassWindow, tmp_path: Path) -> None:
    editor, choice = window.exercise.editor, window.exercise.choice
    # The keys of the window are letters like others while somebody types.
    editor.setFocus()
    QTest.keyClicks(editor, "tf ")
    assert editor.toPlainText().startswith("tf ")
    assert not window.trainer.covered
    for at, name in ((2, "first-test draft.toml"), (0, "")):
        choice.setCurrentIndex(at)
        choice.activated.emit(at)
        window.tick()
        kept = sorted(path.name for path in (tmp_path / "class").glob("*.toml"))
        assert kept == ["first-test draft.toml"]
        assert not name or name in window.said.text()
    assert (tmp_path / "class" / "first-test draft.toml").read_text(encoding="utf-8").startswith("tf ")
    QTest.keyClicks(editor, "x")
    window.close()
    assert len(list((tmp_path / "class").glob("first-test draft*.toml"))) == 2


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


def test_in_a_shared_house_the_program_beside_drives_the_fan(
    window: ClassWindow, joined: list[tuple[str, str]], tmp_path: Path
) -> None:
    window.choose_page(CLASS)
    window.room._ways.button(1).click()
    window.room.port.setValue(free_port(3))
    window.room.open_button.click()
    window.tick()
    window.room.join_button.click()
    assert read_rig(joined[0][0]).fan == "fan"
    window.trainer.write_rig_files(tmp_path / "rigs")
    assert {path.name for path in (tmp_path / "rigs").iterdir()} == {"Watch.toml", "Drive the fan.toml"}
    assert "2 rig files" in window.trainer.said


def test_the_units_are_those_of_the_normal_window(window: ClassWindow, units: list[Display]) -> None:
    open_class(window)
    window.choose_page(HOUSE)
    window.tick()
    assert window.leaks.outdoor.suffix() == " °C out"
    units.append(Display(System.US))
    window.tick()
    assert window.leaks.outdoor.suffix() == " °F out"
    window.leaks.outdoor.setValue(14.0)
    window.leaks.heat.click()
    station = window.trainer.station
    assert station is not None
    assert "14.0 °F" in window.trainer.said
    window.leaks._paces.button(4).click()
    wait_for(lambda: station.rig.plant.interior.air.outdoor_c[0] == pytest.approx(-10.0))
    # What stands in a field is the same in both units.
    units.append(Display())
    window.tick()
    assert window.leaks.outdoor.value() == pytest.approx(-10.0)


def test_what_is_to_come_stands_on_the_timeline_and_is_taken_back(window: ClassWindow) -> None:
    window.trainer.choose("sealing-race")
    open_class(window)
    window.choose_page(TIMELINE)
    window.tick()
    window.faults.after.setValue(2.0)
    window.faults.lines[0][1].click()
    window.tick()
    trainer = window.trainer
    fault = trainer.faults()[0]
    assert trainer.is_thrown(fault)
    lines = [line for line in window.timeline.lines if not line.isHidden()]
    assert lines[0].title.full == fault.words
    assert lines[0].when.text().startswith("at 2:0")
    # What the exercise has in store waits for the fan.
    assert [line.when.text() for line in lines[1:]] == ["fan + 1:00", "fan + 2:00", "fan + 2:50"]
    assert [line.back.isHidden() for line in lines] == [False, True, True, True]
    lines[0].back.click()
    window.tick()
    assert not trainer.is_thrown(fault)
    assert len([line for line in window.timeline.lines if not line.isHidden()]) == 3
    assert trainer.station is not None
    assert all(event["what"] != fault.event["what"] for event in trainer.station.truth()["events"])


def test_a_fault_that_is_put_right_before_it_happens_does_not_happen(window: ClassWindow) -> None:
    open_class(window)
    window.tick()
    trainer = window.trainer
    fault, station = trainer.faults()[0], trainer.station
    assert station is not None
    sound = station.rig.true_q_m3_h(50.0, "depressurize")
    trainer.throw(fault, 3.0)
    trainer.mend(fault)
    station.go_at(60.0)
    wait_for(lambda: station.rig.plant.time_s > 30.0)
    assert station.rig.true_q_m3_h(50.0, "depressurize") == pytest.approx(sound)
    assert station.truth()["events"] == []


def test_a_cover_lies_over_every_page_that_tells(window: ClassWindow) -> None:
    open_class(window)
    trainer = window.trainer
    trainer.throw(trainer.faults()[0], 0.0)
    window.cover.click()
    for page, hidden in ((EXERCISE, 1), (CLASS, 0), (HOUSE, 0), (FAULTS, 1), (TIMELINE, 1)):
        window.choose_page(page)
        window.tick()
        assert window.front.currentIndex() == hidden
    assert window.said.text() == "Done."
    trainer.look_at(1)
    trainer.said = "The class is closed."
    window.tick()
    assert window.said.text() == "The class is closed."


def test_a_job_becomes_an_exercise_without_names(window: ClassWindow, handed_in: Path, tmp_path: Path) -> None:
    window.trainer.load(handed_in)
    window.tick()
    assert "✓ A recorded house" in window.exercise.problem.text()
    assert "Student One" not in window.exercise.editor.toPlainText()
    window.trainer.load(tmp_path / "none.airseam")
    assert "gives no exercise" in window.trainer.said


def test_jobs_are_marked_and_the_sheets_written(window: ClassWindow, handed_in: Path, tmp_path: Path) -> None:
    window.mark_beside(handed_in)
    window.choose_page(CLASS)
    window.tick()
    assert cell(window.room.marks, 0, 1) == "10 of 10"
    window.write_sheets(tmp_path / "sheets")
    assert {path.name for path in (tmp_path / "sheets").iterdir()} == {"Student One.pdf", "class.csv"}
    # A cover leaves name and points.
    assert cell(window.room.marks, 0, 3) != "covered"
    window.cover.click()
    window.tick()
    assert cell(window.room.marks, 0, 1) == "10 of 10"
    assert cell(window.room.marks, 0, 3) == "covered"
    (tmp_path / "damaged.airseam").write_text("no job", encoding="utf-8")
    window.mark_beside(tmp_path / "damaged.airseam")
    assert re.search("could not be marked", window.trainer.said)


def test_the_pointer_names_a_leak_unless_the_truth_is_covered(window: ClassWindow) -> None:
    open_class(window)
    window.tick()
    picture = window.trainer.picture()
    assert picture is not None
    mark = picture.leaks[0]
    at, _ = window.house._section().place(mark)
    assert window.house.leak_at(at) == mark.name
    assert window.house.leak_at(QPointF(2.0, 2.0)) == ""
    window.cover.click()
    window.tick()
    assert window.house.leak_at(at) == ""


def test_pictures_of_every_page_are_saved(qtbot: QtBot, tmp_path: Path) -> None:
    saved = save_class_pictures(tmp_path, modes=(Mode.SUNLIGHT,), size=(1024, 700), system=System.US)
    assert {path.name for path in saved} == {
        f"class-{page}-sunlight.png" for page in ("exercise", "class", "house", "faults", "timeline", "covered")
    }
    told = {path.name: QImage(str(path)) for path in saved}
    assert told["class-house-sunlight.png"].size() == QSize(1024, 700)
    assert told["class-covered-sunlight.png"] != told["class-class-sunlight.png"]


def test_no_button_of_the_window_is_cut_at_its_smallest(window: ClassWindow) -> None:
    open_class(window)
    window.resize(1024, 700)
    for page in (EXERCISE, CLASS, HOUSE, FAULTS, TIMELINE):
        window.choose_page(page)
        window.tick()
        QApplication.processEvents()
        shown = window.pages.currentWidget()
        assert shown.width() >= shown.minimumSizeHint().width()
        assert shown.height() >= shown.minimumSizeHint().height()
