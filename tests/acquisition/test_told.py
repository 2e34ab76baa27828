"""Numbers as tables of texts: every part of a result, in both unit systems, with what has to stand beside it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from acquisition.told import (
    Side,
    Table,
    Tone,
    comparison_tables,
    correction_tables,
    meaning_table,
    quantity_table,
    table_lines,
    verdict_table,
    zone_tables,
)
from acquisition.told.components import component_list, component_sum
from acquisition.told.limits import limit_list
from acquisition.zonetest import ZoneQuestion
from analysis.errors import InvalidInput
from analysis.exhaust import CAUTION
from analysis.limits import shipped_limits
from analysis.meaning import Surroundings, meaning_of
from analysis.methods import analyse
from analysis.records import Direction, Limit, Test
from analysis.units import Display, System
from tests.analysis.samples import BUILDING, FLOWS_M3_H, run_of, whole_test

SI, US = Display(), Display(System.US)
BOTH = whole_test(run_of(), run_of(direction=Direction.PRESSURIZE))


def text(*tables: Table) -> str:
    return "\n".join(line for table in tables for line in table_lines(table))


def cells(table: Table, begins: str) -> tuple[str, ...]:
    return next(row.cells for row in table.rows if row.cells[0].startswith(begins))


def test_every_quantity_stands_for_each_direction_and_the_mean() -> None:
    table = quantity_table(analyse(BOTH), BUILDING, SI, (25.0,))
    assert table.heads == ("", "Depressurize", "Pressurize", "Mean")
    for symbol in ("q25", "q50", "n50", "qE50", "qF50", "qE75", "qE4", "NLA10", "NLR50", "SLA4"):
        assert len(cells(table, f"{symbol},")) == 4
    # 10-point set of standards 3.1: the flow at 50 Pa as the result itself has it.
    result = analyse(BOTH)
    assert f"{result.mean.q50_m3_h.value:.1f} " in cells(table, "q50,")[3].replace("\u2009", "")


def test_a_quantity_without_its_measure_is_left_out_and_said() -> None:
    building = replace(BUILDING, volume_m3=None, floor_area_m2=None)
    table = quantity_table(analyse(Test(building, BOTH.runs)), building, SI)
    assert not [row for row in table.rows if row.cells[0].startswith(("n50", "qF50", "SLA4", "Normalised"))]
    assert "volume, floor area" in table.notes[-1]


def test_normalised_leakage_is_that_of_its_definition() -> None:
    # 1000 (ELA/A) (H/2.5)^0.4 by hand: ELA of the first run, 120 m2, 5 m (ASHRAE 62.2, from memory).
    result = analyse(whole_test())
    by_hand = 1000 * result.runs[0].ela4_cm2.value / 1e4 / 120.0 * 2.0**0.4
    shown = float(cells(quantity_table(result, BUILDING, SI), "Normalised")[1].split(" ± ")[0])
    assert shown == pytest.approx(by_hand, rel=0.01)


def test_a_pressure_that_is_none_is_refused() -> None:
    with pytest.raises(InvalidInput, match="pressure_pa"):
        quantity_table(analyse(BOTH), BUILDING, SI, (0.0,))


def test_limits_have_their_title_their_probability_and_their_source() -> None:
    own = Limit("stage", "n50_per_h", 4.3)
    published = shipped_limits().limit("passive-house").limit
    table = verdict_table(analyse(BOTH, limits=(own, published)), SI)
    assert cells(table, "Limit of this stage")[1] == "4.3 1/h"
    assert cells(table, "Passive House")[3] == "does not meet"
    assert table.rows[1].tone is Tone.BAD
    assert "not checked against the document" in table.rows[1].note


def test_without_a_limit_the_table_says_where_there_are_some() -> None:
    assert "airseam limits" in text(verdict_table(analyse(BOTH), SI))


def test_the_meaning_has_its_cautions_and_what_is_missing() -> None:
    known = Surroundings(weather_factor=0.6, assumed_per_h=0.2, exhaust_m3_h=400.0)
    said = text(meaning_table(meaning_of(analyse(BOTH), BUILDING, known), SI))
    for words in ("one hole", "Natural air change", "credit", "design assumed", "Depressurization"):
        assert words in said
    assert "certificate" in said
    table = meaning_table(meaning_of(analyse(BOTH), BUILDING, known), SI)
    assert any(CAUTION in row.note for row in table.rows)
    bare = replace(BUILDING, volume_m3=None, height_m=None)
    gaps = meaning_of(analyse(Test(bare, BOTH.runs)), bare, known).gaps
    assert any("volume" in gap for gap in gaps)
    assert any("height" in gap for gap in gaps)


def test_still_air_without_difference_leaves_the_models_out_with_a_sentence() -> None:
    still = Surroundings(temperature_difference_k=0.0, wind_m_s=0.0)
    meaning = meaning_of(analyse(BOTH), BUILDING, still)
    assert [item.model.id for item in meaning.natural] == ["twentieth"]
    assert "wind above 0" in meaning.gaps[0]


def test_corrections_lead_from_the_reading_to_the_line() -> None:
    tables = correction_tables(BOTH, analyse(BOTH), SI)
    assert [table.title for table in tables] == ["Corrections, depressurize", "Corrections, pressurize"]
    first = tables[0].rows[0].cells
    assert first[1] == "−60.20"
    assert first[2] == "−60.20"
    assert first[3].replace("\u2009", "") == "1502.1"


def test_the_same_test_twice_has_not_changed() -> None:
    side = Side("Before", BOTH, analyse(BOTH))
    change, other = comparison_tables(side, replace(side, title="After"), SI)
    assert "No change can be told" in text(change)
    assert "Nothing else differs" in text(other)


@pytest.mark.parametrize(("factor", "word"), [(0.8, "tighter now"), (1.25, "leaks more now")])
def test_a_change_that_is_sure_is_said_with_everything_that_differs(factor: float, word: str) -> None:
    later = Test(BUILDING, (run_of(flows_m3_h=[flow * factor for flow in FLOWS_M3_H]),), "after sealing")
    sides = (Side("Before", whole_test(), analyse(whole_test())), Side("After", later, analyse(later)))
    change, other = comparison_tables(*sides, US)
    assert word in text(change)
    assert cells(other, "Stage")[1:] == ("as built", "after sealing")


def test_a_zone_with_a_hole_is_split_and_one_without_only_placed() -> None:
    # Between house and outdoors at 35 of 50 Pa: the leak to the house is (35/15)^0.65 = 1.73 times the other, by hand.
    placed = zone_tables(ZoneQuestion(50.0, 35.0), SI)
    assert len(placed) == 1
    assert cells(placed[0], "Leak to the house")[1] == "1.73"
    split = zone_tables(
        ZoneQuestion(50.0, 35.0, hole="outdoors", zone_after_pa=22.0, flow_before_m3_h=520.0, flow_after_m3_h=590.0), SI
    )
    assert split[1].title == "Split by the added hole"
    garage = zone_tables(ZoneQuestion(50.0, 4.0, garage=True, flow_before_m3_h=500.0, flow_after_m3_h=510.0), US)
    assert "cfm" in cells(garage[1], "Leak between house and garage")[0]


@pytest.mark.parametrize(
    ("question", "word"),
    [
        (ZoneQuestion(50.0, 35.0, hole="outdoors"), "flow before"),
        (ZoneQuestion(50.0, 35.0, hole="outdoors", flow_before_m3_h=1.0, flow_after_m3_h=2.0), "zone pressure after"),
        (ZoneQuestion(50.0, 60.0), "zone_pa"),
    ],
)
def test_readings_of_a_zone_that_cannot_be_are_refused_in_a_sentence(question: ZoneQuestion, word: str) -> None:
    with pytest.raises(InvalidInput, match=word):
        zone_tables(question, SI)


def test_lists_of_limits_and_components_are_whole() -> None:
    everywhere = limit_list(None, None, SI)
    assert sum(len(table.rows) for table in everywhere) == len(shipped_limits().limits)
    assert len(limit_list("US", "5", US)[0].rows) < len(limit_list("US", None, US)[0].rows)
    assert "attic-hatch" in text(component_list(SI))
    # 30 cm2 by the table of the CONTAM library, three of them.
    assert cells(component_sum({"attic-hatch": 3.0}, SI), "Together")[1] == "90.0"
