"""Exercises and marks from the command line."""

from __future__ import annotations

import csv
import json
from pathlib import Path

import pytest

from acquisition.marking import read_truth
from airseam import main
from analysis.errors import InvalidInput
from simulators.exercises import exercise_names, load_exercise
from tests.acquisition.marking.students import student


def test_the_exercises_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["exercises"]) == 0
    printed = capsys.readouterr().out
    assert all(name in printed for name in exercise_names())


def test_jobs_are_marked_with_sheets_and_a_table(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    with student("first-test", tmp_path) as person:
        person.answer_safety()
        person.test()
        job = person.job.path
    other = tmp_path / "other.airseam"
    other.write_bytes(job.read_bytes())
    sheets, table = tmp_path / "sheets", tmp_path / "class.csv"
    before = job.read_bytes()
    options = ["--exercise", "first-test", "--sheets", str(sheets), "--csv", str(table)]
    assert main(["mark", str(job), str(other), *options]) == 0
    printed = capsys.readouterr().out
    assert "Student One: The first test, 10 of 10 points" in printed
    assert {path.name for path in sheets.iterdir()} == {"Student One.pdf", "Student One 2.pdf"}
    assert [row["points"] for row in csv.DictReader(table.read_text(encoding="utf-8").splitlines())] == ["10", "10"]
    assert job.read_bytes() == before


def test_a_kept_truth_takes_the_place_of_the_exercise(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "truth.json"
    path.write_text(json.dumps(load_exercise("first-test").truth()), encoding="utf-8")
    with student("first-test", tmp_path) as person:
        job = person.job.path
    assert main(["mark", str(job), "--truth", str(path)]) == 0
    assert "0 of 10 points" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["mark", "none.airseam", "--exercise", "nonsense"], "first-test"),
        (["mark", "none.airseam", "--exercise", "first-test"], "none.airseam"),
        (["mark", "none.airseam", "--truth", "none.json"], "--truth is 'none.json': it cannot be read"),
        (["simulate", "--exercise", "nonsense", "--listen", "127.0.0.1:0"], "first-test"),
        (["simulate", "--exercise", "first-test", "--taps", "2", "--listen", "127.0.0.1:0"], "--taps is 2"),
    ],
)
def test_bad_input_is_answered_in_one_line(
    arguments: list[str], words: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(arguments) == 2
    (line,) = capsys.readouterr().err.splitlines()
    assert words in line


def test_a_truth_that_is_damaged_is_refused_by_field() -> None:
    document = load_exercise("forgotten-seal").truth()
    assert read_truth(document).points == 10.0
    with pytest.raises(InvalidInput, match=r"marks\[0\]"):
        read_truth({**document, "marks": [{**document["marks"][0], "points": "many"}]})
    with pytest.raises(InvalidInput, match="spans"):
        read_truth({**document, "spans": []})
    with pytest.raises(InvalidInput, match="format"):
        read_truth({**document, "format": "airseam-truth-9"})
