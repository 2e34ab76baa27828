"""The quantity in front follows the method of the test, on every surface; ISO 9972 keeps the air change there."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest

from acquisition.languages import language_of
from acquisition.report import ReportContent, content_of_test
from acquisition.report.document import report_document
from acquisition.summary import summary_lines
from acquisition.told import budget_table
from acquisition.told.headline import USUAL, front_of, headline, in_order, lacking, official
from analysis.effective import QUANTITIES
from analysis.methods import analyse, method_ids, method_of
from analysis.records import Building, Direction, Kit, Limit, Test
from analysis.units import Display, System
from tests.acquisition.test_summary import HOUSE, a_test

LARGE = "astm-e3158"
WIDE = replace(HOUSE, envelope_area_m2=None)
ON_N50, ON_QE50 = Limit("stage", "n50_per_h", 3.0), Limit("stage", "qe50_m3_h_m2", 3.0)


def large(*limits: Limit, building: Building = HOUSE) -> tuple[Test, ReportContent]:
    test = a_test(*Direction, points=7, building=building)
    return test, content_of_test(test, analyse(test, LARGE, limits=limits, kit=Kit()))


def printed(content: ReportContent, display: Display | None = None) -> dict[str, Any]:
    return report_document(content, display or Display())


@pytest.mark.parametrize("method", method_ids())
def test_every_method_puts_the_first_of_its_own_in_front(method: str) -> None:
    assert front_of(method, HOUSE, None) == method_of(method).reports[0]
    assert in_order(method)[0] == method_of(method).reports[0]
    assert set(USUAL) <= set(in_order(method))
    # Without any measure of the building only flows are left.
    assert front_of(method, Building(""), None) == "q50_m3_h"


def test_the_flow_at_75_pa_is_that_of_the_line() -> None:
    test, _ = large()
    result = analyse(test, LARGE)
    name, value = headline(result, HOUSE, None)
    assert name == "qe75_m3_h_m2"
    # The points lie on q = 60 dp**0.65 (see `a_test`); an exact power law goes up by 1.5**0.65 from 50 to 75 Pa.
    assert value.value == pytest.approx(result.mean.q50_m3_h.value * 1.5**0.65 / 320.0, rel=1e-9)
    assert value.extrapolated
    assert official(result, HOUSE, "n50_per_h") == result.mean.n50_per_h


def test_a_limit_on_what_the_method_reports_goes_first_and_another_does_not() -> None:
    assert front_of("iso9972", HOUSE, ON_QE50) == "qe50_m3_h_m2"
    assert front_of("iso9972", HOUSE, Limit("stage", "qe75_m3_h_m2", 3.0)) == "n50_per_h"
    assert front_of(LARGE, HOUSE, ON_N50) == "qe75_m3_h_m2"


def test_what_is_missing_is_said_and_the_next_goes_in_front() -> None:
    result = analyse(a_test(Direction.PRESSURIZE, building=WIDE), LARGE)
    assert headline(result, WIDE, None) == ("q50_m3_h", result.mean.q50_m3_h)
    assert lacking(LARGE, WIDE) == "ASTM E3158 puts qE75 in front; it needs the envelope area, which is not stated."
    assert "Hüllfläche" in lacking(LARGE, WIDE, language_of("de").say)
    assert lacking(LARGE, HOUSE) == lacking("iso9972", Building("")) == ""


def test_the_certificate_shows_it_large_and_compares_the_quantity_of_the_limit() -> None:
    _, content = large(ON_N50)
    page = printed(content)
    assert page["hero"]["symbol"] == ["q", "E75"]
    assert page["hero"]["unit"] == "in m³/(h·m²)"
    assert page["hero"]["words"] == QUANTITIES["qe75_m3_h_m2"].title
    assert page["verdict"]["symbol"] == ["n", "50"]
    n50 = content.result.mean.n50_per_h
    assert n50 is not None
    assert float(page["verdict"]["strip"]["value-text"].split()[0]) == pytest.approx(n50.value, rel=0.02)
    assert page["results"]["rows"][0]["symbol"] == page["hero"]["symbol"]
    meaning = page["certificate"]["paragraphs"][-1]["text"]
    assert meaning.startswith("With 75 Pa between indoors and outdoors,")
    assert printed(content, Display(System.US))["hero"]["unit"] == "in cfm/ft²"


def test_the_certificate_says_what_it_lacks() -> None:
    _, content = large(building=WIDE)
    page = printed(content)
    hero = page["hero"]
    assert hero["symbol"] == ["q", "50"]
    assert page["certificate"]["paragraphs"][-1]["text"].startswith("With 50 Pa between indoors and outdoors,")
    assert hero["scope"].endswith("it needs the envelope area, which is not stated.")


def test_the_terminal_and_the_budget_put_it_first() -> None:
    test, content = large()
    lines = list(summary_lines(test, content.result, Display()))
    firsts = [after.split()[0] for before, after in pairwise(lines) if not before.startswith("  ")]
    assert [word for word in firsts if word.startswith("q")] == ["qE75"] * 4
    assert budget_table(content.result, Display()).title == "Uncertainty of qE75"
    assert "n50" in "\n".join(lines)


def test_iso_9972_keeps_the_air_change_in_front() -> None:
    test = a_test(*Direction)
    content = content_of_test(test, analyse(test, limits=(ON_N50,), kit=Kit()))
    page = printed(content)
    assert page["hero"]["symbol"] == ["n", "50"]
    assert [row["symbol"] for row in page["results"]["rows"]][:4] == [
        ["n", "50"], ["q", "50"], ["q", "E50"], ["q", "F50"],
    ]  # fmt: skip
    assert page["certificate"]["paragraphs"][-1]["text"].startswith("With 50 Pa between indoors and outdoors,")
    assert budget_table(content.result, Display()).title == "Uncertainty of n50"
