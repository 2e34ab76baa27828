"""The office and the builder, each in the order of their own work, through the real window."""

from __future__ import annotations

import csv
import random
from pathlib import Path

import pytest

from acquisition.job import Job
from acquisition.kinds import TestKind
from analysis.records import Limit
from drivers.clock import WallClock
from gui.viewmodels.moment import Place
from tests.gui.conftest import Stage
from tests.gui.driven import click
from tests.gui.test_office_pages import ask, pick

pytestmark = pytest.mark.walk


def sign(stage: Stage, name: str, reason: str = "") -> None:
    panel = stage.program.window.report.issue
    panel.signer.setText(name)
    panel.reason.setText(reason)
    click(stage, "Issue")


def test_the_office_checks_issues_corrects_exports_and_finds_again(stage: Stage, tested: Path, tmp_path: Path) -> None:
    window, intents = stage.program.window, stage.program.intents
    # A folder with the jobs of a tester arrives; the office has its name and its way of numbering.
    folder = tmp_path / "arrived"
    folder.mkdir()
    for name in ("mill", "quarry"):
        (folder / f"{name}.airseam").write_bytes(tested.read_bytes())
    ask(stage, "Settings")
    for field, text in (("name", "Office of Nobody"), ("number_pattern", "N-{count:03}"), ("jobs", str(folder))):
        window.settings.committed.emit(field, text)
    stage.draw()
    # It opens one, sees what is missing, and follows the jump to the field.
    ask(stage, "Find a job in a folder…")
    window.jobs.words.setText("mill")
    stage.draw()
    click(stage, "Open the job")
    intents.go_to(Place.REPORT)
    stage.draw()
    assert any("The tester is not named." in item.sentence for item in window.report._shown.missing)  # type: ignore[union-attr]
    window.report.missing.jump_asked.emit("tester")
    for field, text in (("tester", "T. Nobody"), ("client", "A. Nobdy"), ("site", "Mill Lane 8"), ("number", "J-12")):
        intents.edit(field, text)
    # It issues, finds the client misspelt, corrects that without touching what was measured, and issues again.
    intents.go_to(Place.REPORT)
    stage.draw()
    sign(stage, "O. Nobody")
    job = stage.program.desk.job
    assert job is not None
    measured = [run.digest for run in job.runs(1)]
    intents.edit("client", "A. Nobody")
    window.report.issue.version_chosen.emit(0)
    stage.draw()
    sign(stage, "O. Nobody", "the client's name was misspelt")
    assert [(item.mark.number, item.mark.revision) for item in job.issues.all] == [("N-001", 0), ("N-001", 1)]
    assert [run.digest for run in job.runs(1)] == measured
    assert all(item.ok for item in job.verify())
    # It hands the file over, and the whole folder to a table.
    intents.files.save_report()
    pick(stage, tmp_path / "out.pdf")
    assert (tmp_path / "out.pdf").read_bytes() == job.issues.pdf(2)
    job.flush()
    ask(stage, "Find a job in a folder…")
    click(stage, "Look again")
    window.jobs.words.clear()
    click(stage, "Table as CSV")
    pick(stage, tmp_path / "table.csv")
    rows = list(csv.DictReader((tmp_path / "table.csv").read_text("utf-8-sig").splitlines()))
    assert len(rows) == 2
    # Years later somebody asks about the house in that street.
    path = job.path
    window.jobs.words.setText("mill lane")
    stage.program.desk.open_job(folder / "quarry.airseam")
    click(stage, "Look again")
    click(stage, "Open the job")
    found = stage.program.desk.job
    assert found is not None
    assert found.path == path
    assert len(found.issues.all) == 2


def test_the_builder_tests_stage_after_stage_and_gets_a_certificate_for_the_last(stage: Stage) -> None:
    edit, intents = stage.program.intents.edit, stage.program.intents
    stage.connect()
    stage.shorten()
    for field, text in (("stage", "shell closed"), ("kind", "finding"), ("limit", "")):
        edit(field, text)
    for field, text in (("stage", "finished"), ("kind", "code"), ("limit", "1.5")):
        edit(field, text)
    edit("stage", "shell closed")
    stage.run_to_the_end()
    intents.go_to(Place.REPORT)
    stage.draw()
    assert "issued without a number" in stage.program.window.report.issue.words.text()
    sign(stage, "B. Nobody")
    edit("stage", "finished")
    intents.go_to(Place.TEST)
    stage.draw()
    stage.run_to_the_end()
    intents.go_to(Place.REPORT)
    stage.draw()
    sign(stage, "B. Nobody")
    job = stage.program.desk.job
    assert job is not None
    first, second = job.tests()
    assert (first.plan.kind, first.plan.limit) == (TestKind.FINDING, None)
    assert (second.plan.kind, second.plan.limit) == (TestKind.CODE, Limit("stage", "n50_per_h", 1.5))
    assert [bool(item.mark.number) for item in job.issues.all] == [False, True]


def test_a_thousand_random_edits_of_the_sheet_are_in_the_file_at_each_step(stage: Stage) -> None:
    dice, edit = random.Random(11), stage.program.intents.edit
    choices = {
        "volume": ("300", "310.5", "many", ""),
        "stage": ("shell closed", "finished", ""),
        "kind": ("code", "quality", "finding"),
        "limit": ("1.5", "3", "", "zero"),
        "client": ("A. Nobody", 'Σ "#$@', ""),
        "place": ("US", "any"),
        "zone": ("5", ""),
        "published": ("passive-house", ""),
        "targets": ("60 50 40 30 20", "50 40 30 20 12"),
    }
    sheet, job = stage.program.screen.sheet, stage.program.desk.job
    assert sheet is not None
    assert job is not None
    for step in range(1000):
        if dice.random() < 0.35:
            (stage.program.intents.undo if dice.random() < 0.6 else stage.program.intents.redo)()
        else:
            field = dice.choice(sorted(choices))
            edit(field, dice.choice(choices[field]))
        now = sheet.sheet
        assert (job.details, job.draft(), job.stages) == (now.details, now.plan, now.stages), step
        if step % 100 == 99:
            assert job.flush()
            on_disk = Job.open(copy_of(job.path), WallClock(), read_only=True)
            assert (on_disk.details, on_disk.draft()) == (job.details, job.draft())
            assert set(on_disk.stages) == set(job.stages)
            on_disk.close()


def copy_of(path: Path) -> Path:
    """Return a copy of a job that is open, with its log: what a disk holds when the power fails."""
    copy = path.with_name("copy of it.airseam")
    for ending in ("", "-wal"):
        Path(f"{copy}{ending}").write_bytes(Path(f"{path}{ending}").read_bytes())
    return copy
