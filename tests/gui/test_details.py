"""What stands below the points: tabs with tables, another method or fit to look by, limits that are ticked."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from acquisition.job import JobDetails
from analysis.limits import shipped_limits
from analysis.records import Limit
from gui.theme import Tone
from gui.viewmodels.details import Detail, corrections_picture, detail_picture
from gui.viewmodels.moment import Place
from gui.viewmodels.outcome import outcome_picture
from gui.viewmodels.published import published_picture, ticked_text
from gui.viewmodels.shown import Reading, seen_by
from gui.views.test_place import CORRECTIONS
from tests.gui.conftest import Stage
from tests.gui.fakes import PLAN, SI, moment, shown


def settle(stage: Stage) -> None:
    stage.program.screen.touch()
    stage.draw()


def test_tabs_carry_the_sign_of_the_worst_that_is_in_them() -> None:
    tabs = detail_picture(moment(shown=shown()), Detail.CHECKS).tabs
    assert [text.split()[-1] for text in tabs] == ["Checks", "Quantities", "Limits", "Uncertainty", "Meaning"]
    strict = replace(PLAN, limit=Limit("stage", "n50_per_h", 0.1))
    test = replace(shown(), plan=strict)
    failing = seen_by(test, Reading(fit="ols"))
    assert detail_picture(moment(shown=failing), Detail.CHECKS).tabs[2] == "✗ Limits"


def test_before_any_result_every_part_says_why_it_is_empty() -> None:
    for detail in Detail:
        picture = detail_picture(moment(shown=None), detail)
        assert picture.methods is None
        if detail is not Detail.CHECKS:
            assert picture.tables[0].empty
    assert corrections_picture(moment(shown=None))[0].empty


def test_a_fit_that_asks_for_more_than_was_read_says_so() -> None:
    test = shown()
    seen = seen_by(test, Reading(fit="wls"))
    assert seen.result is None
    assert "weighs points by the spread" in seen.gap
    assert seen_by(test, Reading()) is test


def test_a_reading_that_gives_no_result_says_why() -> None:
    test = shown()
    assert test.test is not None
    one_point = replace(test.test, runs=tuple(replace(run, points=run.points[:1]) for run in test.test.runs))
    seen = seen_by(replace(test, test=one_point), Reading(fit="wls"))
    assert seen.result is None
    assert seen.gap.endswith(".")


def test_the_limits_of_a_place_are_listed_and_the_ticked_ones_stand_in_front() -> None:
    details = JobDetails("Mill Row 8", place="US")
    assert len(published_picture((), details, SI).zones) == 10
    picture = published_picture(("geg-26",), replace(details, zone="7"), SI)
    assert picture.items[0].id == "geg-26"
    assert picture.items[0].ticked
    assert {item.id for item in picture.items[1:]} == {item.id for item in shipped_limits().at("US", "7")}
    assert ticked_text(("a", "b"), "a", on=False) == "b"
    assert ticked_text(("a",), "b", on=True) == "a b"


def test_ticking_a_limit_is_kept_undone_and_held_against_the_next_test(stage: Stage) -> None:
    stage.connect()
    window = stage.program.window
    stage.program.screen.go_to(Place.JOB)
    settle(stage)
    window.job.limits.boxes["passive-house"].click()
    settle(stage)
    assert stage.program.desk.job is not None
    assert stage.program.desk.job.draft().published == ("passive-house",)
    stage.program.intents.undo()
    settle(stage)
    assert stage.program.desk.job.draft().published == ()
    stage.program.intents.redo()
    settle(stage)
    stage.shorten()
    stage.program.screen.go_to(Place.TEST)
    settle(stage)
    stage.run_to_the_end()
    result = stage.snapshot().result
    assert result is not None
    assert result.verdicts[-1].limit.id == "passive-house"
    assert outcome_picture(stage.program.bridge.moment(stage.snapshot())).tone is Tone.BAD


def test_every_part_and_the_corrections_are_a_key_or_a_click_away(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    test = stage.program.window.test
    for at, detail in enumerate(Detail):
        test.details.tabs.button(at).click()
        settle(stage)
        assert stage.program.screen.detail is detail
    stage.program.intents.reading.show_page(CORRECTIONS)
    settle(stage)
    assert test.plots.currentIndex() == 2
    assert test.corrections._shown[0].rows
    stage.program.intents.reading.show_page(CORRECTIONS)
    settle(stage)
    assert test.plots.currentIndex() == 0


def test_the_window_shows_a_result_by_another_fit_until_another_test_is_chosen(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    test = stage.program.window.test
    test.details.tabs.button(1).click()
    settle(stage)
    test.details.fit_chosen.emit("wls")
    settle(stage)
    assert "weighted least squares" in test.result.title.full
    test.points.test_asked.emit(1)
    settle(stage)
    assert test.result.title.full == "Result"


def test_house_and_season_are_typed_kept_and_used(stage: Stage, tested: Path) -> None:
    job = stage.open_copy(tested)
    for field, text in (
        ("storeys", "2"),
        ("shelter", "3"),
        ("exhaust", "400"),
        ("assumed", "0,3"),
        ("season_wind", "5"),
    ):
        stage.program.screen.display = replace(stage.program.screen.display, decimal_mark=",")
        stage.program.intents.edit(field, text)
    around = job.draft().surroundings
    assert (around.storeys, around.shelter, around.exhaust_m3_h, around.assumed_per_h) == (2, 3, 400.0, 0.3)
    stage.program.intents.edit("storeys", "by height")
    assert job.draft().surroundings.storeys is None
