"""The Stages place and its command: two tests of one house with a seal and a new leak between them."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

import airseam
from acquisition.job import Job, SealingMark, SealingMarkKind
from acquisition.sealing.leaks import Drop, Leak, LeakStatus
from acquisition.told.stages import NO_TESTS, between_tables, stage_tests
from analysis.records import Estimate
from analysis.sealing.change import Sureness
from analysis.units import Display, System
from drivers.clock import VirtualClock
from gui.viewmodels.moment import Place
from simulators.faults import sealed
from tests.acquisition.scenes import a_scene
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage


@pytest.fixture(scope="module")
def staged(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a job with two tests; between them 6 % were sealed, of which the mark tells 4 %; nobody changes it."""
    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    folder = tmp_path_factory.mktemp("staged")
    with a_scene(clock, folder, wind_m_s=0.3) as scene:
        plan = replace(scene.plan(), stage="membrane up")
        scene.begin(plan)
        scene.to_the_end()
        register = scene.job.edit_leaks()
        number = register.add(Leak("attic-access", room="landing", status=LeakStatus.SEALED), clock.utc())
        begun = clock.utc(), clock.now_ns()
        register.mark(SealingMark(*begun, SealingMarkKind.STARTS, number))
        before = scene.house.true_q_m3_h(50.0, "depressurize")
        scene.house.happen(sealed(0.06), over_s=2.0)
        scene.pass_time(5.0)
        change = 0.66 * (scene.house.true_q_m3_h(50.0, "depressurize") - before)
        register.mark(SealingMark(clock.utc(), clock.now_ns(), SealingMarkKind.DONE, number))
        drop = Drop(before, before + change, Estimate(change, change - 2.0, change + 2.0), 3.0, Sureness.SURE)
        register.measured(number, drop, clock.utc())
        scene.begin(replace(plan, stage="services in", directions=plan.directions))
        scene.to_the_end()
        return scene.job.path


def open_job(path: Path) -> Job:
    return Job.open(path, VirtualClock(datetime(2026, 5, 5, 9, 0, tzinfo=UTC)), read_only=True)


def test_what_lies_between_two_tests_is_told(staged: Path) -> None:
    job = open_job(staged)
    tables = {table.title: table for table in between_tables(job, 1, 2, Display(System.SI))}
    job.close()
    (change,) = [row for row in tables["Change"].rows if row.cells[0] == "Change, %"]
    # The house was sealed by 6 %; the interval of the change holds it.
    low, _, high = change.cells[2].replace("−", "-").replace(" %", "").partition(" to ")
    assert float(low) < -6.0 < float(high)
    assert any("Stage" in row.cells[0] for row in tables["What else differs"].rows)
    leaks = tables["Leaks closed between"]
    assert leaks.rows[0].cells[0] == "1 landing: attic hatch or stair"
    (rest,) = [row for row in leaks.rows if row.cells[0].startswith("Change that they do not explain")]
    assert float(rest.cells[1].replace("−", "-").split(" ± ")[0]) < 0.0
    assert tables["Leaks found between"].rows == ()


def test_a_leak_belongs_between_the_tests_between_which_it_was_marked(staged: Path, tmp_path: Path) -> None:
    path = tmp_path / "copy.airseam"
    path.write_bytes(staged.read_bytes())
    job = Job.open(path, VirtualClock(datetime(2026, 5, 5, 9, 0, tzinfo=UTC)))
    first, second = (record.started for record in job.tests())
    register = job.edit_leaks()
    number = register.add(Leak("pipe", room="bathroom", trade="plumber"), second)
    for utc, kind in ((second, SealingMarkKind.NEW_LEAK), (first, SealingMarkKind.DONE)):
        register.mark(SealingMark(utc, 0, kind, number))
    register.change(1, replace(job.leaks.leaks[1], status=LeakStatus.FOUND), second)
    tables = {table.title: table for table in between_tables(job, 1, 2, Display(System.SI))}
    job.close()
    # Before the first test nothing counts; what was sealed then and is open now is said to be.
    assert [row.cells[1] for row in tables["Leaks found between"].rows] == ["bathroom: pipe through the envelope"]
    seals = [row for row in tables["Leaks closed between"].rows if row.cells[0][0].isdigit()]
    assert [row.cells[0] for row in seals] == ["1 landing: attic hatch or stair"]
    assert seals[0].note.endswith("in the list it is open again now")


def test_a_stage_stands_with_the_interval_of_everything(staged: Path) -> None:
    job = open_job(staged)
    records = job.tests()
    job.close()
    for test, record in zip(stage_tests(records), records, strict=True):
        budgets = {item["quantity"]: item["total"] for item in json.loads(record.result_json)["budgets"]}
        total = budgets["q50_m3_h"]
        assert (test.q50_m3_h.low, test.q50_m3_h.high) == (total["low"], total["high"])
        # The flow element alone is known to 5 % (two standard uncertainties) in this house.
        assert test.q50_m3_h.high - test.q50_m3_h.value > 0.04 * test.q50_m3_h.value


def test_the_command_lists_stages_and_keeps_the_note(
    staged: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "copy.airseam"
    path.write_bytes(staged.read_bytes())
    assert airseam.main(["stages", str(path), "--note", "Two pipes came through the membrane"]) == 0
    said = capsys.readouterr().out
    assert "Two pipes came through the membrane" in said
    assert "Leaks closed between" in said
    assert airseam.main(["stages", str(path), "--before", "7"]) == 2
    assert "there are: 1, 2" in capsys.readouterr().err


def test_the_place_shows_both_curves_and_the_note(stage: Stage, staged: Path) -> None:
    program = stage.program
    place = program.window.stages
    program.screen.go_to(Place.STAGES)
    stage.draw()
    assert place.table._shown[0].empty == NO_TESTS
    assert "first test begins the list" in place.plot.empty.text()
    job = stage.open_copy(staged)
    program.screen.go_to(Place.STAGES)
    for _ in range(2):
        program.screen.touch()
        stage.draw()
    assert [test.record.plan.stage for test in stage_tests(job.tests())] == ["membrane up", "services in"]
    assert [curve.title for curve in place.plot.curves] == ["test 1", "test 2"]
    first, second = place.plot.curves
    # The later curve lies lower by about 6 % of the flow: log10(0.94) = -0.027.
    assert float((second.lines[0][1] - first.lines[0][1]).mean()) == pytest.approx(-0.027, abs=0.01)
    assert next(table.title for table in place.between._shown) == "Change"
    place.note.setText("Two pipes came through")
    place.keep.click()
    stage.draw()
    assert "on site: Two pipes came through" in place.table._shown[0].rows[1].note
    for size in ((1024, 700), (1440, 900)):
        program.window.resize(*size)
        for _ in range(3):
            program.screen.touch()
            stage.draw()
        assert [*cut_texts(program.window), *overlaps(program.window)] == []
    # Without anything marked between, no seal explains anything; the other way round is asked for on purpose.
    place.pair_chosen.emit(2, 1)
    stage.draw()
    assert place.between._shown[-2].empty.startswith("No seal was marked")
