"""A result in a few lines of text."""

from __future__ import annotations

import re

from acquisition.summary import summary_lines
from analysis.methods import analyse
from analysis.records import Air, Building, Direction, Kit, Limit, Point, Run, Test, ZeroFlow
from analysis.units import Display, System

ZERO = ZeroFlow(-1.0, None, -1.0, 60, 60.0)
HOUSE = Building("Quarry Lane 3", 250.0, 320.0, 100.0, 5.0)


def a_test(*directions: Direction, points: int = 7, building: Building = HOUSE) -> Test:
    pressures = [60.0 - 7.0 * number for number in range(points)]
    runs = tuple(
        Run(
            direction,
            Air(20.0, 10.0),
            tuple(Point(direction.sign * dp - 1.0, 60.0 * dp**0.65, 20.0) for dp in pressures),
            ZERO,
            ZERO,
        )
        for direction in directions
    )
    return Test(building, runs, "boards on")


def text(test: Test, display: Display, *limits: Limit) -> str:
    return "\n".join(summary_lines(test, analyse(test, limits=limits), display))


def test_both_directions_their_mean_and_the_verdict_are_there() -> None:
    said = text(a_test(*Direction), Display(), Limit("contract", "n50_per_h", 9.0))
    assert said.startswith("Quarry Lane 3, boards on: iso9972, fit ols")
    assert [
        word for word in ("Depressurize: 7 points", "Pressurize: 7 points", "Mean of both") if word not in said
    ] == []
    assert said.count("  n50 ") == 3
    assert said.count("ELA4") == 2
    assert re.search(r"contract \(n50\) +9\.0 1/h +over 99 % +meets", said)


def test_with_a_kit_the_interval_of_everything_stands_there_too() -> None:
    test = a_test(Direction.DEPRESSURIZE)
    result = analyse(test, kit=Kit())
    said = "\n".join(summary_lines(test, result, Display())).partition("With instruments")[2]
    total = next(item.total for item in result.budgets if item.quantity == "n50_per_h")
    assert total.high - total.low > 0.1
    found = re.search(r"n50 +(\d+\.\d+) 1/h +95 %: (\d+\.\d+) to (\d+\.\d+)", said)
    assert found is not None
    for number, value in zip(found.groups(), (total.value, total.low, total.high), strict=True):
        assert abs(float(number) - value) < 0.05
    assert "With instruments" not in text(test, Display())


def test_units_and_decimal_mark_are_those_of_the_person() -> None:
    assert "m³/h" in text(a_test(Direction.DEPRESSURIZE), Display())
    said = text(a_test(Direction.DEPRESSURIZE), Display(System.US, ","))
    assert "cfm" in said
    assert "r² 1,00000" in said


def test_an_unknown_volume_leaves_out_what_needs_it() -> None:
    said = text(a_test(Direction.PRESSURIZE, building=Building("")), Display())
    assert said.startswith("Building without a name")
    assert "n50" not in said
    assert "q50" in said


def test_a_check_that_is_not_met_is_named_with_what_was_found() -> None:
    said = text(a_test(Direction.DEPRESSURIZE, points=4), Display())
    assert "not met: " in said
    assert "(found 4" in said
