"""The jobs of a folder: read, searched, exported together; the copy in another folder."""

from __future__ import annotations

import csv
import io
import json
import shutil
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

import airseam
from acquisition.issuing import Setting, Wish, issue
from acquisition.job import Job, JobDetails
from acquisition.job.export import COMMA_DIALECT, POINT_DIALECT
from acquisition.office.backup import back_up
from acquisition.office.catalogue import Catalogue, JobLine, job_lines, write_table
from analysis.errors import InvalidInput
from analysis.records import Direction
from drivers.clock import VirtualClock
from tests.acquisition.samples import RIG, START, Rehearsal, plan


def make(path: Path, details: JobDetails, *, tests: int = 1, days: int = 0) -> None:
    clock = VirtualClock(START + timedelta(days=days))
    job = Job.create(path, clock, details.name)
    job.edit_details(details)
    for _ in range(tests):
        recorder = job.record(plan(), RIG)
        Rehearsal(clock, recorder, zero_s=2, average_s=1).run(Direction.DEPRESSURIZE, (60.0, 45.0, 30.0, 20.0, 13.0))
        recorder.end_test("complete")
    if tests:
        issue(job, Wish(1, "T. Nobody"), Setting(), clock.utc())
    job.close()


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    made = tmp_path / "jobs"
    (made / "old").mkdir(parents=True)
    make(made / "a.airseam", JobDetails("Mill Row 8", "Mill Lane 8", "A. Nobody", "T. Nobody", number="J-12"), tests=2)
    make(made / "old" / "b.airseam", JobDetails("Quarry House", "Σπίτι Street 3", "Großbäcker"), days=30)
    make(made / "c.airseam", JobDetails("Not tested yet"), tests=0)
    (made / "d.airseam").write_bytes(b"no job")
    return made


def names(catalogue: Catalogue, words: str) -> list[str]:
    return [line.name for line in catalogue.search(words)]


def test_every_test_of_every_job_is_a_line_newest_first(folder: Path) -> None:
    catalogue = Catalogue()
    seen: list[tuple[int, int]] = []
    catalogue.read(folder, lambda at, count: seen.append((at, count)))
    assert names(catalogue, "") == ["Quarry House", "Mill Row 8", "Mill Row 8", "Not tested yet", ""]
    assert seen[-1] == (4, 4)
    first, *_, broken = catalogue.lines
    assert first.verdict == "meets"
    # The invented house leaks 41 m3/h at 1 Pa with exponent 0.64, in 300 m3.
    assert first.n50_per_h == pytest.approx(41 * 50**0.64 / 300, rel=0.05)
    assert first.n50_low is not None
    assert first.n50_low < 1.7
    assert first.issued == "2026-001"
    assert "no job, or damaged" in broken.trouble


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ("mill lane", ["Mill Row 8", "Mill Row 8"]),
        ("J-12 nobody", ["Mill Row 8", "Mill Row 8"]),
        ("GROSSBÄCKER", ["Quarry House"]),
        ("σπίτι", ["Quarry House"]),
        ("2026-06-03", ["Quarry House"]),
        ("03.06.2026", ["Quarry House"]),
        ("membrane quarry", ["Quarry House"]),
        ("elephant", []),
    ],
)
def test_street_client_number_date_and_stage_are_found(folder: Path, words: str, found: list[str]) -> None:
    catalogue = Catalogue()
    catalogue.read(folder)
    assert names(catalogue, words) == found


def test_only_what_changed_is_read_again(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    catalogue = Catalogue()
    catalogue.read(folder)
    read: list[Path] = []

    def noting(path: Path) -> Iterator[JobLine]:
        read.append(path)
        return job_lines(path)

    monkeypatch.setattr("acquisition.office.catalogue.job_lines", noting)
    job = Job.open(folder / "c.airseam", VirtualClock(START))
    job.edit_details(replace(job.details, site="Found now"))
    job.close()
    catalogue.read(folder)
    assert [path.name for path in read] == ["c.airseam"]
    assert names(catalogue, "found now") == ["Not tested yet"]


def test_the_table_is_written_for_spreadsheets(folder: Path) -> None:
    catalogue = Catalogue()
    catalogue.read(folder)
    rows = list(csv.DictReader(io.StringIO(write_table(catalogue.lines, POINT_DIALECT).decode())))
    assert len(rows) == 5
    assert rows[0]["client"] == "Großbäcker"
    assert float(rows[0]["n50 (1/h)"]) == catalogue.lines[0].n50_per_h
    comma = write_table(catalogue.lines, COMMA_DIALECT).decode("utf-8-sig").splitlines()[1]
    assert str(catalogue.lines[0].n50_per_h).replace(".", ",") in comma.split(";")


def test_the_command_lists_searches_and_exports(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    table, tables = tmp_path / "t.csv", tmp_path / "tables"
    arguments = ["jobs", str(folder), "--search", "mill", "--csv", str(table), "--tables", str(tables), "--json"]
    assert airseam.main(arguments) == 0
    found = json.loads(capsys.readouterr().out)
    assert [item["name"] for item in found] == ["Mill Row 8", "Mill Row 8"]
    assert len(table.read_text("utf-8").splitlines()) == 3
    assert len(list((tables / "a").glob("test-*-*.csv"))) == 6
    assert airseam.main(["jobs", str(folder)]) == 0
    assert "d.airseam: it is no job" in capsys.readouterr().out
    assert airseam.main(["jobs", str(tmp_path / "nowhere")]) == 2


def test_an_open_job_is_copied_whole_and_another_one_of_its_name_is_left_alone(tmp_path: Path) -> None:
    job = Job.create(tmp_path / "j.airseam", VirtualClock(START), "Mill Row 8")
    job.edit_details(JobDetails("Mill Row 8", "First"))
    safe = tmp_path / "safe"
    assert back_up(job, safe) == safe / "j.airseam"
    job.edit_details(JobDetails("Mill Row 8", "Second"))
    assert back_up(job, safe) == safe / "j.airseam"
    copy = Job.open(safe / "j.airseam", VirtualClock(START), read_only=True)
    assert copy.details.site == "Second"
    copy.close()
    other = Job.create(tmp_path / "other.airseam", VirtualClock(START + timedelta(days=1)), "Another")
    other.close()
    shutil.copy(tmp_path / "other.airseam", safe / "j.airseam")
    assert back_up(job, safe) == safe / "j-2.airseam"
    assert sorted(path.name for path in safe.iterdir()) == ["j-2.airseam", "j.airseam"]
    with pytest.raises(InvalidInput, match="another folder"):
        back_up(job, tmp_path)
    (tmp_path / "file").write_text("")
    with pytest.raises(InvalidInput, match="cannot be written"):
        back_up(job, tmp_path / "file")
    job.close()
