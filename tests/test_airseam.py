"""The command line on a simulated house in virtual time."""

from __future__ import annotations

import csv
import json
import sqlite3
import subprocess
import sys
from collections.abc import Sequence
from contextlib import closing
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest

import airseam
from acquisition.job import Entry, Job, PreparationKind
from acquisition.register import Calibration, Equipment, Register, save_register
from analysis.records import Direction, Limit
from drivers.clock import WallClock
from simulators.houses import load_house
from simulators.rig import SimulatedRig

ROOT = Path(__file__).parents[1]
TARGETS_PA = (60.0, 50.0, 40.0, 30.0, 20.0)


def short_job(path: Path, directions: Sequence[Direction] = (Direction.DEPRESSURIZE,), limit: float = 1.5) -> Path:
    """Make a job of the house whose next test has few and short points."""
    house = SimulatedRig(load_house("mill-row"), 1, WallClock())
    airseam.prepare_job(path, *airseam.known(house))
    job = Job.open(path, WallClock())
    plan = replace(job.draft(), directions=tuple(directions), targets_pa=TARGETS_PA, zero_s=30.0, average_s=10.0)
    job.set_draft(replace(plan, limit=Limit("contract", "n50_per_h", limit)))
    job.close()
    return path


def run(*arguments: str | Path) -> int:
    return airseam.main([str(item) for item in arguments])


def result(capsys: pytest.CaptureFixture[str]) -> dict[str, Any]:
    document: dict[str, Any] = json.loads(capsys.readouterr().out)
    return document


@pytest.mark.walk
def test_two_runs_with_one_seed_give_the_same_digits_and_another_seed_others(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    found = []
    for number, seed in enumerate((7, 7, 8)):
        job = short_job(tmp_path / f"{number}.airseam")
        assert run("test", "--rig", "sim:mill-row", "--seed", str(seed), "--job", job, "--json") == 0
        found.append(capsys.readouterr().out)
    assert found[0] == found[1]
    assert found[0] != found[2]


@pytest.mark.walk
def test_a_test_of_a_house_it_has_never_seen_needs_one_command(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    job, report = tmp_path / "new.airseam", tmp_path / "report.pdf"
    options = ("--method", "iso9972", "--direction", "both", "--stage", "finished", "--report", report)
    assert run("test", "--rig", "sim:mill-row", "--seed", "1", "--job", job, *options, "--json") == 0
    document = result(capsys)
    assert [item["direction"] for item in document["runs"]] == ["depressurize", "pressurize"]
    assert all(item["valid"] for item in document["runs"])
    true_per_h = SimulatedRig(load_house("mill-row"), 1, WallClock()).true_n50()
    assert document["mean"]["n50_per_h"]["value"] == pytest.approx(true_per_h, rel=0.01)
    assert report.read_bytes().startswith(b"%PDF-")
    # The file alone gives the same digits again, and holds against its digest.
    assert run("analyse", job, "--json") == 0
    assert result(capsys) == document
    assert run("verify", job) == 0
    assert capsys.readouterr().out.count("holds") == 4
    stored = Job.open(job, WallClock(), read_only=True)
    assert stored.tests()[0].plan.stage == "finished"
    stored.close()


def test_every_command_reads_what_a_test_has_written(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    job, folder, test_file = short_job(tmp_path / "j.airseam"), tmp_path / "csv", tmp_path / "test.json"
    assert run("test", "--rig", "sim:mill-row", "--job", job, "--units", "us") == 0
    said = capsys.readouterr()
    assert "cfm" in said.out
    assert "Checks, depressurize: 13 of 13 met" in said.out
    assert "contract (n50)" in said.out
    assert said.err.startswith("Expected before the points: the flow at 50 Pa to ±")
    # A second test of the same building goes into the same job.
    assert run("test", "--rig", "sim:mill-row", "--seed", "2", "--job", job, "--stage", "sealed", "--json") == 0
    newest = result(capsys)
    assert run("analyse", job, "--json") == 0
    assert result(capsys) == newest
    assert run("analyse", job, "--test", "1", "--json") == 0
    assert result(capsys) != newest
    assert run("export", job, "--csv", folder, "--json", test_file) == 0
    assert len(capsys.readouterr().out.splitlines()) == 7
    with (folder / "test-2-points.csv").open(encoding="utf-8") as rows:
        points = [row for row in csv.reader(rows) if "point" in row]
    assert len(points) == len(TARGETS_PA)
    assert run("analyse", test_file, "--json") == 0
    from_json = result(capsys)
    # The limit belongs to the job, the numbers to the test.
    assert from_json["runs"] == newest["runs"]
    assert newest["verdicts"][0]["limit"] == "contract"
    for source in (job, test_file):
        assert run("report", source, "-o", tmp_path / "again.pdf", "--units", "us") == 0
        assert (tmp_path / "again.pdf").read_bytes().startswith(b"%PDF-")
    capsys.readouterr()
    assert run("explain", job, "--exhaust", "300") == 0
    assert "Depressurization by the exhaust fans" in capsys.readouterr().out
    assert run("compare", job, job, "--before-test", "1", "--units", "us") == 0
    assert "What else differs" in capsys.readouterr().out
    assert run("analyse", test_file, "--all", "--at", "25", "--limit", "passive-house", "--limit", "q50_m3_h=900") == 0
    everything = capsys.readouterr().out
    assert [word for word in ("q25", "Corrections", "Passive House", "q50_m3_h=900") if word not in everything] == []
    assert run("analyse", test_file, "--limit", "n51=2") == 2
    assert "--limit" in capsys.readouterr().err


def test_a_changed_reading_is_found_out(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    job = short_job(tmp_path / "j.airseam")
    assert run("test", "--rig", "sim:mill-row", "--job", job) == 0
    with closing(sqlite3.connect(job)) as db:
        for (name,) in db.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            db.execute(f"DROP TRIGGER {name}")
        db.execute("UPDATE reading SET value = value * 1.01 WHERE id = (SELECT max(id) FROM reading)")
        db.commit()
    capsys.readouterr()
    assert run("verify", job) == 1
    assert "FAILS  test 1, depressurize: Readings or inputs were changed" in capsys.readouterr().out


def test_a_test_that_is_not_valid_says_so_by_its_exit_status(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    job = short_job(tmp_path / "j.airseam")
    stored = Job.open(job, WallClock())
    stored.set_draft(replace(stored.draft(), targets_pa=(30.0, 20.0, 12.0)))
    stored.close()
    assert run("test", "--rig", "sim:mill-row", "--job", job) == 1
    assert "not met" in capsys.readouterr().out


@pytest.mark.walk
def test_wind_on_a_built_in_house_moves_its_pressure(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    spread = []
    for wind in ("0", "6"):
        job = short_job(tmp_path / f"{wind}.airseam")
        assert run("test", "--rig", "sim:mill-row", "--job", job, "--wind", wind) in (0, 1)
        stored = Job.open(job, WallClock(), read_only=True)
        loaded = stored.load(1).test().runs[0]
        stored.close()
        assert loaded.air.wind_m_s == float(wind)
        spread.append(max(point.envelope_sd_pa or 0.0 for point in loaded.points))
    assert spread[1] > 3 * spread[0]
    capsys.readouterr()


def test_what_a_person_says_of_the_building_is_kept_with_the_test(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    job = tmp_path / "j.airseam"
    words = ("--name", "Quarry Lane 3", "--volume", "600", "--floor-area", "200", "--barometer", "98000")
    assert run("test", "--rig", "sim:mill-row", "--job", job, *words, "--json") == 0
    n50 = result(capsys)["mean"]["n50_per_h"]["value"]
    stored = Job.open(job, WallClock(), read_only=True)
    plan = stored.tests()[0].plan
    stored.close()
    assert (plan.building.name, plan.building.volume_m3, plan.air.barometric_pa) == ("Quarry Lane 3", 600.0, 98_000.0)
    assert n50 == pytest.approx(1.72 / 2, rel=0.02)


def test_analysing_a_file_loads_neither_the_window_nor_the_typesetter(tmp_path: Path) -> None:
    job = short_job(tmp_path / "j.airseam")
    assert run("test", "--rig", "sim:mill-row", "--job", job) == 0
    probe = (
        "import sys, airseam\n"
        "status = airseam.main(sys.argv[1:])\n"
        "heavy = {'PySide6', 'pyqtgraph', 'matplotlib', 'typst', 'serial', 'pint'} & set(sys.modules)\n"
        "sys.exit(f'loaded: {heavy}' if heavy else status)"
    )
    command = [sys.executable, "-c", probe, "analyse", str(job)]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (0, "")


def test_the_ports_of_this_machine_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    assert run("ports") == 0
    assert capsys.readouterr().out.strip()
    assert run("ports", "--json") == 0
    assert isinstance(result(capsys)["ports"], list)


def test_help_names_every_command(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as end:
        run("--help")
    assert end.value.code == 0
    said = capsys.readouterr().out
    assert all(name in said for name in airseam.COMMANDS)
    assert "Exit status" in said


def test_the_simulated_houses_are_there_for_the_window() -> None:
    found = airseam.sources(seed=1)
    houses = ["sim:mill-row", "sim:brook-end", "sim:gable-barn"]
    assert [source.id for source in found] == [*houses, "sim:mill-row+4", "sim:gable-barn+fans"]
    for source in found:
        assert source.title
        assert source.description
        assert source.building is not None
        rig, clock = source.open(20.0)
        rig.close()
        assert clock.slack_s > 0


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("limits", "--place", "CA"), "National Building Code, level 5"),
        (("components", "attic-hatch=2"), "Together, cm²"),
        (("zone", "--house", "50", "--zone", "10"), "Leak to the house over leak to outdoors"),
    ],
)
def test_commands_on_numbers_need_no_file(
    arguments: tuple[str, ...], words: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(*arguments) == 0
    assert words in capsys.readouterr().out


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("limits", "--place", "XX"), "'XX'"),
        (("limits", "--place", "US", "--zone", "9"), "'9'"),
        (("components", "door=1"), "'door'"),
        (("zone", "--house", "50", "--zone", "60"), "zone_pa"),
    ],
)
def test_commands_on_numbers_refuse_in_one_line(
    arguments: tuple[str, ...], words: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(*arguments) == 2
    said = capsys.readouterr().err
    assert words in said
    assert said.count("\n") == 1


def test_safety_answers_in_the_job_hold_for_the_command_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = short_job(tmp_path / "a.airseam")
    clock = WallClock()
    job = Job.open(path, clock)
    job.edit_house().note(Entry(clock.utc(), PreparationKind.SAFETY, "sheeting", "no"))
    job.close()
    assert run("test", "--rig", "sim:mill-row", "--job", path, "--json") in (0, 1)
    capsys.readouterr()
    job = Job.open(path, clock)
    made = job.tests()[-1].plan
    pressures = [abs(point.envelope_pa) for point in job.load(1).test().runs[0].points]
    assert (made.cap_pa, made.safety) == (30.0, "")
    assert len(pressures) == 5
    assert max(pressures) < 33.0
    job.edit_house().note(Entry(clock.utc(), PreparationKind.SAFETY, "fires", "no"))
    job.close()
    assert run("test", "--rig", "sim:mill-row", "--job", path, "--json") == 2
    assert "No test possible" in capsys.readouterr().err


def test_a_test_begins_with_what_has_run_out(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    register = tmp_path / "register.toml"
    gauge = Equipment("g", "gauge", "Blue gauge", "SG-0012", calibration=Calibration(date(2020, 1, 31)))
    save_register(Register((gauge,)), register)
    job = short_job(tmp_path / "j.airseam")
    assert run("test", "--rig", "sim:mill-row", "--job", job, "--register", register) == 0
    assert "airseam: Gauge: calibration overdue since 2021-01-31, " in capsys.readouterr().err
    assert run("test", "--rig", "sim:mill-row", "--job", job, "--register", tmp_path / "none.toml") == 2
    assert "a register file is needed" in capsys.readouterr().err
