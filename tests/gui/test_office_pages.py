"""Pages over the places: settings and office, finding a job, hand-written tests; copies, exports, clipboard."""

from __future__ import annotations

import shutil
from pathlib import Path

from PySide6.QtWidgets import QApplication

from acquisition.job import Job
from acquisition.office import load_office
from acquisition.typed import points_from
from analysis.records import Direction
from analysis.units import Quantity, System, unit_symbol
from drivers.clock import WallClock
from gui.theme import Mode
from gui.viewmodels.moment import Place
from tests.gui.conftest import Stage
from tests.gui.driven import click
from tests.gui.fakes import SI, US

OUT = Direction.DEPRESSURIZE


def actions(stage: Stage) -> dict[str, object]:
    return {action.text(): action for action in stage.program.intents._actions.commands}


def ask(stage: Stage, words: str) -> None:
    """Choose a command of the menus."""
    action = actions(stage)[words]
    action.trigger()  # type: ignore[attr-defined]  # an action of the menu
    stage.draw()


def pick(stage: Stage, path: Path) -> None:
    """Choose a path in the dialog that is open."""
    dialog = stage.program.intents.files.dialog
    assert dialog is not None
    dialog.picked.emit(str(path))
    dialog.reject()
    stage.draw()


def test_the_office_is_typed_kept_and_printed(stage: Stage, tested: Path, tmp_path: Path) -> None:
    stage.open_copy(tested)
    ask(stage, "Settings")
    page = stage.program.window.settings
    assert stage.program.window.stack.currentWidget() is page
    page.committed.emit("name", "Office of Nobody")
    page.committed.emit("number_pattern", "A-{count:04}")
    page.committed.emit("next_number", "12")
    stage.draw()
    assert load_office(stage.program.intents.office.path).name == "Office of Nobody"
    note = page.fields["number_pattern"]._message.text()
    assert note.startswith("The next certificate is A-0012.")
    page.committed.emit("number_pattern", "{nobody}")
    stage.draw()
    assert "names in braces are" in page.fields["number_pattern"]._message.text()
    assert page.fields["number_pattern"].text() == "{nobody}"
    assert stage.program.screen.office.number_pattern == "A-{count:04}"
    page.back.click()
    stage.program.intents.go_to(Place.REPORT)
    stage.draw()
    assert "A-0012" in stage.program.window.report.issue.words.text()


def test_a_logo_is_chosen_and_copied(stage: Stage, tmp_path: Path) -> None:
    picture = tmp_path / "ours.png"
    stage.program.window.grab().save(str(picture))
    ask(stage, "Settings")
    stage.program.window.settings.pick_asked.emit("logo")
    pick(stage, picture)
    kept = Path(stage.program.screen.office.logo)
    assert kept.read_bytes() == picture.read_bytes()
    assert kept != picture


def test_a_quantity_has_a_unit_of_its_own_and_the_theme_follows(stage: Stage) -> None:
    ask(stage, "Settings")
    page = stage.program.window.settings
    page.committed.emit("unit FLOW", "us")
    page.committed.emit("mode", "sunlight")
    stage.draw()
    display = stage.program.screen.display
    assert (display.system, display.system_of(Quantity.FLOW)) == (System.SI, System.US)
    assert unit_symbol(Quantity.FLOW, display) == "cfm"
    assert unit_symbol(Quantity.VOLUME, display) == "m³"
    assert stage.program.window.look.theme.name == "sunlight"
    assert stage.program.settings.value.mode is Mode.SUNLIGHT
    page.committed.emit("unit FLOW", "si")
    stage.draw()
    assert unit_symbol(Quantity.FLOW, stage.program.screen.display) == "m³/h"


def test_a_job_is_found_by_its_words_and_opened(stage: Stage, tested: Path, tmp_path: Path) -> None:
    folder = tmp_path / "many"
    folder.mkdir()
    for name in ("one", "two"):
        shutil.copy(tested, folder / f"{name}.airseam")
    other = Job.open(folder / "two.airseam", WallClock())
    other.edit_details(other.details.__class__("Quarry House", "Quarry Street 3"))
    other.close()
    ask(stage, "Find a job in a folder…")
    page = stage.program.window.jobs
    click(stage, "Choose the folder")
    pick(stage, folder)
    assert page.table.rowCount() == 2
    page.words.setText("quarry street")
    stage.draw()
    assert page.table.rowCount() == 1
    assert page.status.text() == "1 of 2 lines, one for each test."
    click(stage, "Table as CSV")
    pick(stage, tmp_path / "table.csv")
    assert "Quarry House" in (tmp_path / "table.csv").read_text("utf-8-sig")
    click(stage, "All tables as CSV")
    pick(stage, tmp_path / "all")
    assert len(list((tmp_path / "all" / "two").glob("*.csv"))) == 3
    click(stage, "Open the job")
    assert stage.program.desk.job is not None
    assert stage.program.desk.job.details.name == "Quarry House"
    assert stage.program.window.stack.currentWidget() is not page
    assert load_office(stage.program.intents.office.path).jobs == str(folder)


def test_what_no_job_has_is_said(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    ask(stage, "Find a job in a folder…")
    stage.program.window.jobs.words.setText("elephant")
    stage.draw()
    assert stage.program.window.jobs.status.text().startswith("No job has these words")
    assert not stage.program.window.jobs.open.isEnabled()


def test_a_hand_written_test_is_typed_in_and_shown_as_such(stage: Stage) -> None:
    ask(stage, "Type in a hand-written test…")
    page = stage.program.window.typed
    assert not page.keep.isEnabled()
    page.date.setText("2026-04-01 09:30")
    page.lines[OUT].setPlainText("-60 563\n-50 501\n-40 abc")
    stage.draw()
    assert page.notes[OUT].text().startswith("✗ Line 3, flow is 'abc'")
    page.lines[OUT].setPlainText("-60 563\n-50 501\n-40 434\n-30 361\n-20 279\n-12 201")
    page.zeros[OUT, False].setText("-1")
    page.zeros[OUT, True].setText("-1.4")
    stage.draw()
    assert page.notes[OUT].text() == "6 points, from −60.0 Pa, 563 m³/h to −12.0 Pa, 201 m³/h."
    click(stage, "Keep as a test")
    job = stage.program.desk.job
    assert job is not None
    assert job.tests()[-1].rig.typed
    assert stage.program.screen.place is Place.TEST
    assert page.lines[OUT].toPlainText() == ""
    ask(stage, "Copy the points for a spreadsheet")
    text = QApplication.clipboard().text()
    assert len(text.splitlines()) == 7
    heads, first = (line.split("\t") for line in text.splitlines()[:2])
    assert first[[head.startswith("Flow") for head in heads].index(True)] == "563"
    # What was copied can be pasted back, whatever unit the screen has by then.
    for display in (SI, US):
        pasted = points_from(text, OUT, display)
        assert [round(point.flow_m3_h) for point in pasted] == [563, 501, 434, 361, 279, 201]
        assert pasted[0].envelope_pa == -60.0
    ask(stage, "Copy the results for a spreadsheet")
    assert any(line.startswith("q50") for line in QApplication.clipboard().text().splitlines())


def test_a_job_is_copied_on_demand_and_when_it_is_closed(stage: Stage, tmp_path: Path) -> None:
    ask(stage, "Copy the job into the backup folder")
    pick(stage, tmp_path / "safe")
    job = stage.program.desk.job
    assert job is not None
    copy = tmp_path / "safe" / job.path.name
    assert copy.exists()
    stage.program.intents.edit("site", "Mill Lane 8")
    stage.program.window.close()
    stage.draw()
    again = Job.open(copy, WallClock(), read_only=True)
    assert again.details.site == "Mill Lane 8"
    again.close()


def test_the_air_infiltration_is_exported(stage: Stage, tested: Path, tmp_path: Path) -> None:
    stage.open_copy(tested)
    stage.program.intents.files.export_hpxml()
    pick(stage, tmp_path / "a.xml")
    assert b"AirInfiltrationMeasurement" in (tmp_path / "a.xml").read_bytes()
