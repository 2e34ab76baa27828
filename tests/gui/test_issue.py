"""Issuing in the window: signing, numbers, revisions, an issued report shown again, a visit without a test."""

from __future__ import annotations

import io
from pathlib import Path

from pypdf import PdfReader
from PySide6.QtWidgets import QApplication

from acquisition.office import load_office
from acquisition.report import pdf_pages
from acquisition.setup import shipped_questions
from gui.desk import ISSUE
from gui.viewmodels.moment import Place
from gui.viewmodels.report_place import NO_TEST, PREVIEW_PPI
from tests.gui.conftest import Stage
from tests.gui.driven import click


def at_the_report(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    stage.program.intents.go_to(Place.REPORT)
    stage.draw()


def pages(pdf: bytes) -> tuple[bytes, ...]:
    return tuple(pdf_pages(pdf, PREVIEW_PPI))


def sign(stage: Stage, name: str, reason: str = "") -> None:
    panel = stage.program.window.report.issue
    panel.signer.setText(name)
    panel.reason.setText(reason)
    click(stage, "Issue")


def save(stage: Stage, path: Path) -> bytes:
    stage.program.intents.files.save_report()
    dialog = stage.program.intents.files.dialog
    assert dialog is not None
    dialog.picked.emit(str(path))
    dialog.reject()
    stage.draw()
    return path.read_bytes()


def test_a_report_is_signed_frozen_and_saved_byte_for_byte(stage: Stage, tested: Path, tmp_path: Path) -> None:
    at_the_report(stage, tested)
    panel, place = stage.program.window.report.issue, stage.program.window.report
    assert "It would be issued as " in panel.words.text()
    draft = place.preview._shown
    assert draft == pages(save(stage, tmp_path / "draft.pdf"))
    sign(stage, "T. Nobody")
    job = stage.program.desk.job
    assert job is not None
    (made,) = job.issues.all
    assert made.mark.signed_by == "T. Nobody"
    assert "signed by T. Nobody. It never changes." in panel.words.text()
    assert not panel.issue.isVisible()
    assert place.preview._shown == pages(job.issues.pdf(made.id)) != draft
    stage.program.intents.edit("client", "Another client")
    stage.draw()
    assert place.preview._shown == pages(job.issues.pdf(made.id))
    assert save(stage, tmp_path / "issued.pdf") == job.issues.pdf(made.id)
    assert load_office(stage.program.intents.office.path).next_number == 2


def test_the_draft_says_what_was_edited_since_and_a_revision_asks_why(stage: Stage, tested: Path) -> None:
    at_the_report(stage, tested)
    panel = stage.program.window.report.issue
    sign(stage, "T. Nobody")
    stage.program.intents.edit("client", "Another client")
    panel.version_chosen.emit(0)
    stage.draw()
    assert panel.words.text() == "Edited since the last issue: client. Another issue would be revision 1."
    sign(stage, "T. Nobody")
    assert "say why it is issued again" in stage.program.window.notices.notices[0].sentence
    sign(stage, "T. Nobody", "the client's name was wrong")
    job = stage.program.desk.job
    assert job is not None
    assert [item.mark.revision for item in job.issues.all] == [0, 1]
    assert panel.reason.text() == ""
    assert panel.version.count() == 3
    told = [notice.sentence for notice in stage.program.window.notices.notices if notice.matter == ISSUE]
    assert [words.startswith("Issued: ") for words in told] == [True]


def test_without_a_signature_nothing_is_issued(stage: Stage, tested: Path) -> None:
    at_the_report(stage, tested)
    sign(stage, " ")
    assert "The report was not issued." in stage.program.window.notices.notices[0].sentence
    assert stage.program.desk.job is not None
    assert stage.program.desk.job.issues.all == ()


def test_a_visit_without_a_test_has_its_report(stage: Stage) -> None:
    question = next(item for item in shipped_questions() if item.no == "stop")
    stage.program.intents.house.note("safety", question.id, "no")
    stage.program.intents.go_to(Place.SETUP)
    stage.draw()
    click(stage, "Write why there is no test")
    place = stage.program.window.report
    assert stage.program.screen.place is Place.REPORT
    assert place.tests.currentData() == NO_TEST
    assert len(place.preview._shown) == 1
    sign(stage, "T. Nobody")
    assert stage.program.desk.job is not None
    assert stage.program.desk.job.issues.all[0].test_id is None
    stage.program.intents.house.note("safety", question.id, "yes")
    stage.draw()
    assert place.tests.count() == 0
    assert not place.preview._shown


def test_an_office_without_a_name_leads_to_the_settings(stage: Stage, tested: Path) -> None:
    at_the_report(stage, tested)
    window = stage.program.window
    missing = window.report.missing
    assert missing._items[-1].sentence == "The office has no name to stand on the report."
    missing.jump_asked.emit(missing._items[-1].field)
    stage.draw()
    assert window.stack.currentWidget() is window.settings
    assert QApplication.focusWidget() is window.settings.fields["name"].input
    window.settings.committed.emit("name", "Office of Nobody")
    stage.draw()
    stage.program.intents.go_to(Place.REPORT)
    stage.draw()
    assert all("office" not in item.sentence for item in missing._items)


def test_the_file_is_named_by_the_pattern_of_the_office(stage: Stage, tested: Path) -> None:
    at_the_report(stage, tested)
    stage.program.intents.files.save_report()
    dialog = stage.program.intents.files.dialog
    assert dialog is not None
    assert any("Mill-Row-8-test-1" in name for name in dialog.selectedFiles())
    dialog.reject()


def test_the_language_is_chosen_kept_undone_and_frozen(stage: Stage, tested: Path, tmp_path: Path) -> None:
    at_the_report(stage, tested)
    place, job = stage.program.window.report, stage.program.desk.job
    assert job is not None
    assert [place.language.itemText(at) for at in range(place.language.count())] == ["English", "Deutsch", "Français"]
    assert place.language.currentText() == "English"
    place.language.activated.emit(1)
    stage.draw()
    assert job.details.language == "de"
    assert place.language.currentText() == "Deutsch"
    text = PdfReader(io.BytesIO(save(stage, tmp_path / "d.pdf"))).pages[0].extract_text()
    assert "ENTWURF, NICHT AUSGESTELLT" in text.upper()
    stage.program.intents.undo()
    stage.draw()
    assert job.details.language == ""
    stage.program.intents.redo()
    stage.draw()
    sign(stage, "T. Nobody")
    place.language.activated.emit(2)
    stage.draw()
    assert job.details.language == "fr"
    assert place.language.currentText() == "Deutsch"
    assert not place.language.isEnabled()
    assert [edit.new for edit in job.edits if edit.field == "language"] == ["de", "", "de", "fr"]
