"""Issuing: numbers, signatures, revisions, and that what was issued stays byte for byte."""

from __future__ import annotations

import io
import re
import sqlite3
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader

import airseam
from acquisition.issuing import Setting, Wish, issue, next_number
from acquisition.job import Entry, Job, PreparationKind
from acquisition.kinds import TestKind
from acquisition.office import Office, load_office, save_office
from acquisition.report import pdf_pages
from acquisition.setup import shipped_questions
from analysis.errors import InvalidInput
from analysis.records import Direction
from drivers.clock import VirtualClock
from tests.acquisition.samples import RIG, START, Rehearsal, plan

SIGNED = Wish(1, "T. Nobody")


@pytest.fixture
def job(tmp_path: Path) -> Iterator[Job]:
    clock = VirtualClock(START)
    job = Job.create(tmp_path / "j.airseam", clock, "Mill Row 8")
    for kind in (TestKind.CODE, TestKind.FINDING):
        recorder = job.record(replace(plan(), kind=kind), RIG)
        Rehearsal(clock, recorder).run(Direction.DEPRESSURIZE, (60.0, 45.0, 30.0, 20.0, 13.0))
        recorder.end_test("complete")
    yield job
    job.close()


@pytest.fixture
def setting(tmp_path: Path) -> Setting:
    path = tmp_path / "office.json"
    save_office(Office("Office of Nobody", number_pattern="N{year}-{count:03}", next_number=7), path)
    return Setting(load_office(path), path)


def text_of(pdf: bytes) -> str:
    return re.sub(r"\s+", " ", " ".join(page.extract_text() for page in PdfReader(io.BytesIO(pdf)).pages))


def test_a_report_is_numbered_signed_kept_and_counted(job: Job, setting: Setting) -> None:
    assert next_number(job, 1, setting.office, START) == "N2026-007"
    made = issue(job, SIGNED, setting, START)
    assert (made.mark.number, made.mark.revision, made.mark.signed_by) == ("N2026-007", 0, "T. Nobody")
    assert "N2026-007" in text_of(job.issues.pdf(made.id))
    assert len(pdf_pages(job.issues.pdf(made.id), 8)) == 3
    assert setting.office_file is not None
    assert load_office(setting.office_file).next_number == 8


def test_what_was_issued_is_the_same_after_edits_another_office_and_opening_again(job: Job, setting: Setting) -> None:
    made = issue(job, SIGNED, setting, START)
    before = job.issues.pdf(made.id)
    job.edit_details(replace(job.details, client="Another client"))
    path = job.path
    job.close()
    again = Job.open(path, VirtualClock(START), read_only=True)
    assert again.issues.pdf(made.id) == before
    assert again.issues.all == (made,)
    assert [(item.field, item.new) for item in again.edits] == [("client", "Another client")]
    assert all(item.ok for item in again.verify())
    again.close()


def test_a_revision_keeps_the_number_and_needs_a_reason(job: Job, setting: Setting) -> None:
    first = issue(job, SIGNED, setting, START)
    with pytest.raises(InvalidInput, match="say why it is issued again"):
        issue(job, SIGNED, setting, START)
    second = issue(job, replace(SIGNED, reason="the client's name was wrong"), setting, START)
    assert (second.mark.number, second.mark.revision) == (first.mark.number, 1)
    assert "Revision 1 because the client's name was wrong" in text_of(job.issues.pdf(second.id))
    assert "evision 1" not in text_of(job.issues.pdf(first.id))
    assert setting.office_file is not None
    assert load_office(setting.office_file).next_number == 8


def test_a_test_to_find_leaks_has_no_number(job: Job, setting: Setting) -> None:
    made = issue(job, replace(SIGNED, test_id=2), setting, START)
    assert made.mark.number == ""
    assert setting.office_file is not None
    assert load_office(setting.office_file).next_number == 7
    with pytest.raises(InvalidInput, match="find leaks has none"):
        issue(job, Wish(2, "T. Nobody", "again", "X-1"), setting, START)


@pytest.mark.parametrize(
    ("wish", "words"),
    [
        (Wish(1, "  "), "the name of who signs"),
        (Wish(9, "T. Nobody"), "there are: 1, 2"),
        (Wish(None, "T. Nobody"), "needs an answer that forbids it"),
        (Wish(1, "x" * 241), "at most 240 characters"),
    ],
)
def test_what_cannot_be_issued_leaves_no_trace(job: Job, setting: Setting, wish: Wish, words: str) -> None:
    with pytest.raises(InvalidInput, match=words):
        issue(job, wish, setting, START)
    assert job.issues.all == ()


def test_that_no_test_was_possible_is_a_report_of_its_own(job: Job, setting: Setting) -> None:
    question = next(item for item in shipped_questions() if item.no == "stop")
    job.edit_house().note(Entry(START, PreparationKind.SAFETY, question.id, "no", "T. Nobody", "embers in the stove"))
    made = issue(job, Wish(None, "T. Nobody"), setting, START)
    text = text_of(job.issues.pdf(made.id))
    for words in ("No test was possible", question.text, "embers in the stove", "N2026-007", "T. Nobody"):
        assert words in text, words
    assert made.test_id is None


def test_the_file_refuses_to_change_what_was_issued(job: Job, setting: Setting) -> None:
    issue(job, SIGNED, setting, START)
    path = job.path
    job.close()
    db = sqlite3.connect(path)
    for sql in ("UPDATE issue SET number = 'X'", "DELETE FROM issue"):
        with pytest.raises(sqlite3.IntegrityError):
            db.execute(sql)
    db.close()


def test_the_command_line_issues_lists_and_shows(
    job: Job, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr("acquisition.commands.office.office_path", lambda: tmp_path / "office.json")
    monkeypatch.setattr("acquisition.commands.office.register_path", lambda: tmp_path / "register.toml")
    path, pdf = job.path, tmp_path / "a.pdf"
    job.close()
    assert airseam.main(["issue", str(path), "--test", "1"]) == 2
    assert "signed by is" in capsys.readouterr().err
    assert airseam.main(["issue", str(path), "--test", "1", "--signed-by", "T. Nobody", "-o", str(pdf)]) == 0
    assert airseam.main(["issue", str(path), "--list"]) == 0
    assert re.search(r"1 +\d{4}-001 +0 +test 1", capsys.readouterr().out)
    assert airseam.main(["issue", str(path), "--show", "1", "-o", str(tmp_path / "b.pdf")]) == 0
    assert (tmp_path / "b.pdf").read_bytes() == pdf.read_bytes()
    assert airseam.main(["issue", str(path), "--show", "5", "-o", str(tmp_path / "c.pdf")]) == 2
    assert not (tmp_path / "c.pdf").exists()
