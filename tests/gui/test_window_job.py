"""The job sheet in the window: typing, undo, errors in their place, versions of the building, exports."""

from __future__ import annotations

import json
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from acquisition.kinds import TestKind
from analysis.records import Limit
from gui.viewmodels.moment import Place
from tests.gui.conftest import Stage
from tests.gui.driven import click, key


def test_letters_and_spaces_typed_into_a_field_stay_there(stage: Stage) -> None:
    stage.program.intents.go_to_field("stage")
    stage.draw()
    line = stage.program.window.job.fields["stage"].line
    assert line is not None
    QTest.keyClicks(line, "ax r 12")
    assert line.text() == "ax r 12"
    assert stage.program.screen.place is Place.JOB


def test_edits_are_kept_at_once_and_undone_by_key(stage: Stage) -> None:
    stage.program.intents.go_to_field("volume")
    stage.draw()
    line = stage.program.window.job.fields["volume"].line
    assert line is not None
    line.setText("310")
    key(line, Qt.Key.Key_Return)
    stage.draw()
    job = stage.program.desk.job
    assert job is not None
    assert job.draft().building.volume_m3 == 310.0
    stage.program.window.setFocus()
    QTest.keyClick(stage.program.window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    stage.draw()
    assert job.draft().building.volume_m3 is None
    assert line.text() == ""


def test_a_field_error_is_shown_in_its_place(stage: Stage) -> None:
    stage.program.intents.go_to_field("volume")
    stage.program.intents.edit("volume", "many")
    stage.draw()
    field = stage.program.window.job.fields["volume"]
    assert field._message.text().startswith("✗ Internal volume is 'many'")
    assert field.input.property("wrong") == "true"


def test_what_is_still_being_typed_counts_when_the_test_starts(stage: Stage) -> None:
    stage.connect()
    stage.program.intents.go_to_field("volume")
    stage.draw()
    line = stage.program.window.job.fields["volume"].line
    assert line is not None
    line.setText("333")
    stage.press()
    job = stage.program.desk.job
    assert job is not None
    assert job.tests()[-1].plan.building.volume_m3 == 333.0


def test_a_changed_building_becomes_a_version_with_its_reason(stage: Stage, tested: Path) -> None:
    job = stage.open_copy(tested)
    stage.connect()
    stage.program.intents.edit("volume", "310")
    stage.program.intents.edit("reason", "the attic was measured again")
    stage.draw()
    stage.press()
    opened = stage.program.desk.job
    assert opened is not None
    assert opened is job
    assert [version.reason for version in job.building_versions] == ["as first entered", "the attic was measured again"]
    click(stage, "Do not test")


def test_a_missing_item_leads_to_its_field(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    stage.program.intents.go_to(Place.REPORT)
    stage.draw()
    stage.program.window.report.missing._group.button(0).click()
    stage.draw()
    assert stage.program.screen.place is Place.JOB
    assert QApplication.focusWidget() is stage.program.window.job.fields["tester"].input


def test_tables_and_test_are_exported(stage: Stage, tested: Path, tmp_path: Path) -> None:
    job, number = stage.open_copy(tested), stage.program.desk.showing.number()
    assert number == 1
    told: list[str] = []
    out = tmp_path / "out"
    out.mkdir()
    stage.program.screen.pages.save_csv(job, out, told.append, told.append)
    stage.program.screen.pages.save_json(job, number, tmp_path / "test.json", told.append, told.append)
    assert json.loads((tmp_path / "test.json").read_text("utf-8"))["format"] == "airseam-test-1"
    assert list(out.glob("*.csv"))
    assert all(line.endswith(".") and "could not" not in line for line in told)


def test_limit_and_kind_are_remembered_for_each_stage_and_come_back_with_it(stage: Stage) -> None:
    edit = stage.program.intents.edit
    for field, text in (("stage", "shell closed"), ("kind", "finding"), ("limit", "3")):
        edit(field, text)
    for field, text in (("stage", "finished"), ("kind", "code"), ("limit", "1.5")):
        edit(field, text)
    edit("stage", "shell closed")
    stage.program.intents.go_to(Place.JOB)
    stage.draw()
    job = stage.program.desk.job
    assert job is not None
    assert (job.draft().kind, job.draft().limit) == (TestKind.FINDING, Limit("stage", "n50_per_h", 3.0))
    assert "no certificate number" in stage.program.window.job.fields["kind"]._message.text()
    offered = stage.program.window.job.fields["stage"].choice
    assert offered is not None
    assert [offered.itemText(at) for at in range(3)] == ["shell closed", "finished", "services in"]
    stage.program.intents.undo()
    assert job.draft().limit == Limit("stage", "n50_per_h", 1.5)


def test_the_climate_zone_is_kept_with_the_job_and_logged(stage: Stage) -> None:
    stage.program.intents.go_to(Place.JOB)
    limits = stage.program.window.job.limits
    limits.place_chosen.emit("US")
    limits.zone_chosen.emit("5")
    stage.draw()
    job = stage.program.desk.job
    assert job is not None
    assert (job.details.place, job.details.zone) == ("US", "5")
    assert limits.zone.currentData() == "5"
    assert limits.area.height() > 100  # the list of the place has room, not only its two drop-downs
    assert [(edit.field, edit.new) for edit in job.edits[-2:]] == [("place", "US"), ("zone", "5")]


def test_a_screen_reader_hears_the_name_of_every_field_it_stops_at(stage: Stage) -> None:
    stage.program.screen.go_to(Place.JOB)
    stage.draw()
    lines = stage.program.window.job.findChildren(QLineEdit)
    assert len(lines) > 10
    assert [line.text() for line in lines if not line.accessibleName()] == []
