"""CSV and JSON out of a job."""

from __future__ import annotations

import csv
import json
from pathlib import Path

import pytest

from acquisition.job import Job
from acquisition.job.export import COMMA_DIALECT, test_json, write_csv
from acquisition.steps import WindowKind
from analysis.errors import InvalidInput
from analysis.records import Direction
from analysis.testjson import read_test
from drivers.clock import VirtualClock
from tests.acquisition.samples import RIG, START, Rehearsal, plan

test_json.__test__ = False  # type: ignore[attr-defined]

OUT, IN = Direction.DEPRESSURIZE, Direction.PRESSURIZE


@pytest.fixture
def job(tmp_path: Path) -> Job:
    clock = VirtualClock(START)
    job = Job.create(tmp_path / "x.airseam", clock, "Mill Row 8; Ω")
    recorder = job.record(plan(OUT, IN), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.run(OUT)
    rehearsal.run(IN)
    recorder.strike(4, 'gust; "big", see note')
    recorder.end_test("complete")
    return job


def table(path: Path, delimiter: str = ",", encoding: str = "utf-8") -> list[list[str]]:
    with path.open(encoding=encoding, newline="") as file:
        return list(csv.reader(file, delimiter=delimiter))


def test_samples_hold_every_reading_with_all_its_digits(job: Job, tmp_path: Path) -> None:
    samples, _, _ = write_csv(job, tmp_path / "csv")
    readme, headings, *rows = table(samples)
    assert samples.name == "test-1-samples.csv"
    assert len(readme) == 1
    assert readme[0].startswith("# Airseam 0.1.0: samples of test 1 begun 2026-05-04 09:12:00 UTC")
    assert headings == [
        "time (UTC)", "time (s)", "direction", "window", "envelope pressure (Pa)", "flow element pressure (Pa)",
        "indoor temperature (°C)", "outdoor temperature (°C)", "quality",
    ]  # fmt: skip
    stored = [item for run in job.runs(1) for item in job.readings(run.id)]
    assert len(rows) * 4 == len(stored)
    assert [float(row[4]) for row in rows] == [item.value for item in stored[::4]]
    assert rows[1][0] == "2026-05-04T09:12:00.100000Z"
    assert float(rows[1][1]) == pytest.approx(0.1)
    job.close()


def test_points_hold_means_and_reasons(job: Job, tmp_path: Path) -> None:
    _, points, _ = write_csv(job, tmp_path)
    _, headings, *rows = table(points)
    found = [dict(zip(headings, row, strict=True)) for row in rows]
    assert len(found) == 24
    test = job.load(1).test()
    kept = [row for row in found if row["kind"] == "point" and not row["struck because"]]
    points_of_test = [point for run in test.runs for point in run.points]
    assert [float(row["envelope pressure (Pa)"]) for row in kept] == [point.envelope_pa for point in points_of_test]
    assert [float(row["fan flow (m³/h)"]) for row in kept] == [point.flow_m3_h for point in points_of_test]
    assert all(float(row["envelope flow (m³/h)"]) > 0 for row in kept)
    (struck,) = [row for row in found if row["struck because"]]
    assert struck["struck because"] == 'gust; "big", see note'
    assert struck["induced pressure (Pa)"] == ""
    assert found[0]["kind"] == WindowKind.ZERO_BEFORE
    job.close()


def test_results_hold_value_and_interval(job: Job, tmp_path: Path) -> None:
    _, _, results = write_csv(job, tmp_path)
    _, headings, *rows = table(results)
    assert headings == ["direction", "quantity", "value", "low (95 %)", "high (95 %)", "extrapolated"]
    document = json.loads(job.tests()[0].result_json)
    n50 = next(row for row in rows if row[:2] == ["mean", "n50 (1/h)"])
    stored = document["mean"]["n50_per_h"]
    assert [float(cell) for cell in n50[2:5]] == [stored["value"], stored["low"], stored["high"]]
    job.close()


def test_a_spreadsheet_with_decimal_comma_gets_semicolons(job: Job, tmp_path: Path) -> None:
    plain = write_csv(job, tmp_path / "a")
    comma = write_csv(job, tmp_path / "b", COMMA_DIALECT)
    assert comma[0].read_bytes().startswith(b"\xef\xbb\xbf")
    for one, other in zip(plain, comma, strict=True):
        a, b = table(one), table(other, ";", "utf-8-sig")
        assert [[cell.replace(",", ".") for cell in row[:6]] for row in b[2:]] == [
            [cell.replace(",", ".") for cell in row[:6]] for row in a[2:]
        ]
    job.close()


def test_the_json_of_a_test_gives_the_same_test(job: Job) -> None:
    text = json.dumps(test_json(job, 1))
    assert read_test(text) == job.load(1).test()
    job.close()


def test_a_test_without_result_says_why(tmp_path: Path) -> None:
    job = Job.create(tmp_path / "x.airseam", VirtualClock(START), "x")
    job.record(plan(), RIG).end_test("stopped")
    samples, points, results = write_csv(job, tmp_path)
    assert len(table(samples)) == len(table(points)) == 2
    assert "at least one point that is not struck" in table(results)[2][1]
    job.close()


def test_a_folder_that_cannot_be_written_is_named(job: Job, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("x")
    with pytest.raises(InvalidInput, match=r"folder is .*cannot be written"):
        write_csv(job, tmp_path / "file")
    job.close()
