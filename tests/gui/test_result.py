"""The result so far, the table of points and the checks."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from PySide6.QtWidgets import QApplication

from acquisition.snapshot import PointState
from acquisition.told.verdicts import likelihood
from analysis.methods import analyse
from analysis.records import Direction, Estimate, Limit, Verdict
from gui.languages import put_on
from gui.theme import Tone
from gui.viewmodels.checks import check_picture
from gui.viewmodels.moment import Moment
from gui.viewmodels.outcome import outcome_picture, verdict_words
from gui.viewmodels.points import table_picture
from gui.words import Language
from tests.gui.fakes import COMMA, LIMIT, PLAN, US, moment, running_moment, shown


def test_the_number_comes_with_its_interval_and_its_unit() -> None:
    picture = outcome_picture(moment(shown=shown()))
    assert picture.figure.startswith("1.")
    assert picture.unit == "air changes per hour at 50\u00a0Pa"
    assert picture.interval.startswith("± 0.0")
    assert picture.interval.endswith("(95 %)")


def test_a_decimal_comma_is_shown_to_who_wants_one() -> None:
    assert "," in outcome_picture(moment(shown=shown(), display=COMMA)).figure


def test_without_a_result_the_reason_is_said() -> None:
    assert outcome_picture(moment()).why == "Nothing has been read yet."
    assert outcome_picture(running_moment(1)).why == "At least 2 points are needed."
    assert outcome_picture(moment()).figure == "–"


def test_two_points_give_a_number_but_no_interval() -> None:
    assert outcome_picture(running_moment(2)).interval == "no interval yet"


def test_the_bar_ends_beyond_the_limit() -> None:
    bar = outcome_picture(moment(shown=shown())).bar
    assert bar is not None
    assert 0 < bar.low <= bar.value <= bar.high < bar.limit < 1


def test_the_limit_decides_which_quantity_stands_in_front() -> None:
    test = replace(shown(), plan=replace(PLAN, limit=Limit("stage", "qe50_m3_h_m2", 3.0)))
    assert outcome_picture(moment(shown=test)).unit == "m³/(h·m²) at 50 Pa, of envelope"
    assert outcome_picture(moment(shown=test, display=US)).unit == "cfm/ft² at 50 Pa, of envelope"


def test_without_a_volume_the_flow_stands_in_front() -> None:
    test = shown()
    assert test.result is not None
    bare = replace(test, result=replace(test.result, mean=replace(test.result.mean, n50_per_h=None)))
    assert outcome_picture(moment(shown=bare)).unit.startswith("m³/h")


def test_an_extrapolated_number_says_so() -> None:
    test = shown()
    assert test.result is not None
    far = replace(test.result, mean=replace(test.result.mean, n50_per_h=Estimate(1.7, 1.5, 1.9, extrapolated=True)))
    assert "Extrapolated" in outcome_picture(moment(shown=replace(test, result=far))).why


@pytest.mark.parametrize(
    ("verdict", "tone", "words"),
    [
        ("meets", Tone.GOOD, "97 % likely to meet it"),
        ("does not meet", Tone.BAD, "does not meet: 97 % likely"),
        ("cannot tell", Tone.ATTENTION, "cannot tell today: 97 % likely"),
    ],
)
def test_there_are_three_verdicts(verdict: str, tone: Tone, words: str) -> None:
    assert verdict_words(Verdict(LIMIT, 0.97, verdict)) == (words, tone)


def test_a_verdict_is_told_in_one_language(qapp: QApplication) -> None:
    put_on(qapp, Language.FRENCH)
    words, _ = verdict_words(Verdict(LIMIT, 1.0, "meets"))
    put_on(qapp, Language.ENGLISH)
    assert words == "conforme à plus de 99\xa0%"


def test_nothing_is_ever_certain() -> None:
    assert likelihood(1.0) == "over 99 %"
    assert likelihood(0.0) == "under 1 %"
    assert likelihood(0.503) == "50 %"


def test_planned_points_are_listed_before_the_first_test() -> None:
    table = table_picture(moment(), None)
    assert [row.cells[0] for row in table.rows] == ["−60", "−50", "−40", "−30", "−20"]
    assert {row.state for row in table.rows} == {PointState.PENDING}
    assert all(row.window is None for row in table.rows)


def test_a_planned_pressurization_has_its_sign() -> None:
    both = replace(PLAN, directions=tuple(Direction))
    job = moment().job
    assert job is not None
    now = moment(job=replace(job, plan=both))
    assert table_picture(now, Direction.PRESSURIZE).rows[0].cells[0] == "60"
    assert table_picture(now, None).directions == tuple(Direction)


def test_the_running_point_is_marked_and_its_error_not_told_yet() -> None:
    table = table_picture(running_moment(), None)
    assert table.current == 3
    row = table.rows[3]
    assert row.cells == ("−30", "−30.5", "384", "…", "14 s")
    assert row.window is None
    assert [item.sign for item in table.rows] == ["✓", "✓", "✓", "●", "○"]


def test_a_struck_point_keeps_its_numbers_and_tells_why() -> None:
    row = table_picture(moment(shown=shown(struck=(1,))), None).rows[1]
    assert row.struck
    assert row.sign == "✗"
    assert row.tip == "Struck: A gust of wind"
    assert row.cells[2]


def test_headings_carry_the_unit() -> None:
    assert table_picture(moment(), None).headings[3] == "Flow m³/h"
    assert table_picture(moment(display=US), None).headings[3] == "Flow cfm"


def test_the_zero_flow_pressures_stand_below_the_table() -> None:
    assert table_picture(running_moment(), None).footer == "Zero-flow pressure before −0.5 Pa, after –"


def test_open_checks_wait_while_the_test_runs_and_call_for_attention_after_it() -> None:
    assert any(row.sign == "…" for row in check_picture(running_moment()).rows)
    over = check_picture(moment(shown=shown()))
    assert any(row.sign == "!" for row in over.rows)
    assert not any(row.sign == "…" for row in over.rows)


def test_failed_checks_come_first_and_are_counted() -> None:
    def with_failure(now: Moment) -> Moment:
        test = now.shown
        assert test is not None
        assert test.result is not None
        run = test.result.runs[0]
        checks = (*run.checks[:-1], replace(run.checks[-1], ok=False, value=7.0))
        return replace(now, shown=replace(test, result=replace(test.result, runs=(replace(run, checks=checks),))))

    picture = check_picture(with_failure(moment(shown=shown())))
    assert picture.rows[0].sign == "✗"
    assert picture.count == f"1 of {len(picture.rows)} not met"
    assert picture.tone is Tone.BAD


def test_both_directions_share_one_list() -> None:
    one, other = shown(), shown(5, Direction.PRESSURIZE)
    assert one.result is not None
    assert other.result is not None
    both = replace(one, result=replace(one.result, runs=(*one.result.runs, *other.result.runs)))
    assert len(check_picture(moment(shown=both)).rows) == len(one.result.runs[0].checks)


def test_before_two_points_there_is_no_list() -> None:
    assert check_picture(running_moment(1)).rows == ()
    assert "from two points on" in check_picture(moment()).empty


def test_figures_that_are_not_finite_never_reach_the_bar() -> None:
    test = shown()
    assert test.result is not None
    wide = replace(test.result, mean=replace(test.result.mean, n50_per_h=Estimate(1.7, 0.0, math.inf)))
    bar = outcome_picture(moment(shown=replace(test, result=wide))).bar
    assert bar is not None
    assert all(0 <= part <= 1 for part in (bar.value, bar.low, bar.high, bar.limit))


def test_the_method_decides_which_quantity_stands_in_front_and_the_limit_what_is_compared() -> None:
    test = shown()
    assert test.test is not None
    plan = replace(PLAN, method="astm-e3158")
    large = replace(test, plan=plan, result=analyse(test.test, "astm-e3158", limits=(LIMIT,)))
    picture = outcome_picture(moment(shown=large))
    assert picture.unit == "m³/(h·m²) at 75 Pa, of envelope"
    assert outcome_picture(moment(shown=large, display=US)).unit == "cfm/ft² at 75 Pa, of envelope"
    assert picture.limit == "Stage limit n50 2.0 1/h"
    assert picture.others.startswith("n50 1.")
    assert picture.bar is not None
    same = outcome_picture(moment(shown=test)).bar
    assert same is not None
    assert picture.bar.value == pytest.approx(same.value, rel=0.02)
    assert "75 Pa" in picture.why
    bare = replace(large, plan=replace(plan, building=replace(plan.building, envelope_area_m2=None)))
    lacking = outcome_picture(moment(shown=bare))
    assert lacking.unit == "m³/h at 50\u00a0Pa"
    assert lacking.why.startswith("ASTM E3158 puts qE75 in front; it needs the envelope area")
