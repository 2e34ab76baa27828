"""What is left to a target, by hand-worked numbers."""

from __future__ import annotations

import math

import pytest

from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.sealing.parts import PARTS, part_of
from analysis.sealing.remaining import GUESS_FACTOR, OpenLeak, guessed, remaining, together, yield_of

FLOW = Estimate(1300.0, 1270.0, 1330.0)


def sized(number: int, flow: float, half: float, *, sealable: bool = True) -> OpenLeak:
    return OpenLeak(number, Estimate(flow, flow - half, flow + half), sealable)


def test_the_largest_leaks_that_do_are_chosen() -> None:
    leaks = [sized(1, 40.0, 10.0), sized(2, 90.0, 30.0), sized(3, 60.0, 40.0), sized(4, 300.0, 50.0, sealable=False)]
    way = remaining(FLOW, 1160.0, leaks)
    assert (way.to_go_m3_h.value, way.to_go_m3_h.low) == (140.0, 110.0)
    assert way.chosen == (2, 3)
    assert way.reachable
    # Independent parts add in quadrature (JCGM 100 5.1): 30 and 40 give 50.
    assert way.chosen_m3_h == Estimate(150.0, 100.0, 200.0)
    assert way.listed_m3_h.value == 190.0
    assert way.floor_m3_h.value == 1110.0
    assert way.beyond_sealing_m3_h.value == 300.0


def test_a_target_out_of_reach_says_so() -> None:
    way = remaining(FLOW, 600.0, [sized(1, 40.0, 10.0), sized(2, 500.0, 10.0, sealable=False)])
    assert not way.reachable
    assert way.chosen == (1,)
    assert not remaining(FLOW, 600.0, []).reachable


def test_a_target_that_is_met_needs_nothing() -> None:
    way = remaining(FLOW, 1500.0, [sized(1, 40.0, 10.0)])
    assert way.to_go_m3_h.value == -200.0
    assert (way.chosen, way.reachable) == ((), True)


@pytest.mark.parametrize("target", [0.0, -5.0, math.nan])
def test_a_target_has_to_be_above_nothing(target: float) -> None:
    with pytest.raises(InvalidInput, match="target_m3_h"):
        remaining(FLOW, target, [])


def test_a_guess_is_wide() -> None:
    assert guessed(30.0) == Estimate(30.0, 30.0 / GUESS_FACTOR, 30.0 * GUESS_FACTOR)
    assert together([]) == Estimate(0.0, 0.0, 0.0)


def test_work_is_told_by_the_hour_and_by_money() -> None:
    done = yield_of([Estimate(25.0, 20.0, 30.0), Estimate(35.0, 23.0, 47.0)], minutes=45.0, cost=20.0)
    assert done.drop_m3_h == Estimate(60.0, 47.0, 73.0)
    assert (done.drop_per_hour_m3_h, done.drop_per_cost_m3_h) == (80.0, 3.0)
    assert yield_of([], 0.0, 0.0).drop_per_hour_m3_h is None


def test_parts_have_names_of_their_own() -> None:
    assert len({part.id for part in PARTS}) == len({part.title for part in PARTS}) == len(PARTS)
    with pytest.raises(InvalidInput, match="rim-joist"):
        part_of("rim")
