"""Zones beside the house: symmetry, scaling, honest intervals, and one sentence for what cannot be."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.uncertain import Measured
from analysis.zones import (
    AddedHole,
    DoorOpened,
    HoleSide,
    ZoneReading,
    garage_result,
    interface_flow_m3_h,
    leakage_ratio,
    room_result,
    series_coefficient,
    split_by_hole,
    transfer_area_cm2,
    zone_pressure_pa,
    zone_ratio,
)

COEFFICIENTS = st.floats(5.0, 500.0)
EXPONENTS = st.floats(0.5, 0.8)
SURE_N = Measured(0.65)


def flow(coefficient: float, pressure_pa: float, n: float = 0.65) -> float:
    """Return the flow through a leak."""
    return float(coefficient * pressure_pa**n)


def pressure_with_hole(house_zone: float, zone_outdoors: float, hole: float, side: HoleSide) -> tuple[float, float]:
    """Return zone pressure and flow through the zone with a hole 'hole P**0.5' on a side of it, by halving."""
    low, high, zone, into = 0.0, 50.0, 25.0, 0.0
    for _ in range(200):
        zone = (low + high) / 2
        into = flow(house_zone, 50.0 - zone) + (hole * (50.0 - zone) ** 0.5 if side is HoleSide.HOUSE else 0.0)
        out = flow(zone_outdoors, zone) + (hole * zone**0.5 if side is HoleSide.OUTDOORS else 0.0)
        low, high = (zone, high) if into > out else (low, zone)
    return zone, into


def split_case(house_zone: float, zone_outdoors: float, hole: float, side: HoleSide) -> tuple[ZoneReading, AddedHole]:
    """Return what would be read without error at a zone of these leaks."""
    zone = zone_pressure_pa(50.0, house_zone / zone_outdoors, 0.65)
    after, path = pressure_with_hole(house_zone, zone_outdoors, hole, side)
    change = path - flow(house_zone, 50.0 - zone)
    return ZoneReading(Measured(50.0), Measured(zone), SURE_N), AddedHole(side, Measured(after), Measured(change))


# series


@given(st.floats(1.0, 100.0), st.floats(0.01, 0.99), EXPONENTS)
def test_ratio_and_zone_pressure_belong_together(house: float, share: float, n: float) -> None:
    ratio = leakage_ratio(house, share * house, n)
    assert zone_pressure_pa(house, ratio, n) == pytest.approx(share * house, rel=1e-9)
    assert leakage_ratio(house, (1 - share) * house, n) == pytest.approx(1 / ratio, rel=1e-6)


@given(COEFFICIENTS, COEFFICIENTS, EXPONENTS)
def test_leaks_in_series_pass_what_each_passes_at_its_own_pressure(one: float, other: float, n: float) -> None:
    together = series_coefficient(one, other, n)
    zone = zone_pressure_pa(50.0, one / other, n)
    assert flow(together, 50.0, n) == pytest.approx(flow(one, 50.0 - zone, n), rel=1e-9)
    assert flow(together, 50.0, n) == pytest.approx(flow(other, zone, n), rel=1e-9)
    assert together < min(one, other)
    assert together == pytest.approx(series_coefficient(other, one, n))


# the ratio from a reading


@given(st.floats(0.02, 0.98), st.floats(0.02, 0.98))
def test_a_zone_nearer_to_the_house_is_more_open_to_it(one: float, other: float) -> None:
    ratios = [zone_ratio(ZoneReading(Measured(50.0), Measured(50.0 * share))).ratio.value for share in (one, other)]
    assert (ratios[0] <= ratios[1]) == (one <= other) or one == pytest.approx(other)


@pytest.mark.parametrize(
    ("zone_pa", "side"),
    [
        (0.0, "rather outdoors"),
        (4.0, "rather outdoors"),
        (25.0, "between indoors and outdoors"),
        (46.0, "rather indoors"),
    ],
)
def test_a_zone_is_said_to_belong_to_one_air_or_none(zone_pa: float, side: str) -> None:
    assert zone_ratio(ZoneReading(Measured(50.0), Measured(zone_pa))).side == side


def test_an_interval_opens_towards_the_ends() -> None:
    """One pascal of uncertainty: half an order of magnitude at 48 Pa, little in the middle."""
    middle, near = (zone_ratio(ZoneReading(Measured(50.0), Measured(zone, 1.0), SURE_N)) for zone in (25.0, 48.5))
    assert middle.ratio.high / middle.ratio.low < 1.3
    assert near.ratio.high / near.ratio.low > 5.0
    assert [middle.checks[0].ok, near.checks[0].ok] == [True, False]


# the added hole


@given(COEFFICIENTS, st.floats(0.3, 3.0), st.floats(0.3, 5.0), st.sampled_from(HoleSide))
def test_leaks_are_found_again_whatever_hole_was_added(
    house_zone: float, ratio: float, hole: float, side: HoleSide
) -> None:
    zone_outdoors = house_zone * ratio
    reading, added = split_case(house_zone, zone_outdoors, hole * house_zone, side)
    found = split_by_hole(reading, added)
    assert found.house_zone.value == pytest.approx(house_zone, rel=1e-6)
    assert found.zone_outdoors.value == pytest.approx(zone_outdoors, rel=1e-6)
    assert found.path_flow_m3_h.value == pytest.approx(flow(series_coefficient(house_zone, zone_outdoors, 0.65), 50.0))


@given(st.floats(10.0, 45.0), st.floats(0.1, 0.9), st.floats(50.0, 500.0))
def test_exchanging_house_and_outdoors_exchanges_the_leaks(zone: float, fall: float, change: float) -> None:
    outer = AddedHole(HoleSide.OUTDOORS, Measured(fall * zone), Measured(change))
    inner = AddedHole(HoleSide.HOUSE, Measured(50.0 - fall * zone), Measured(change))
    one = split_by_hole(ZoneReading(Measured(50.0), Measured(zone), SURE_N), outer)
    other = split_by_hole(ZoneReading(Measured(50.0), Measured(50.0 - zone), SURE_N), inner)
    assert other.zone_outdoors.value == pytest.approx(one.house_zone.value, rel=1e-9)
    assert other.house_zone.value == pytest.approx(one.zone_outdoors.value, rel=1e-9)


@given(st.floats(0.1, 10.0))
def test_so_many_times_the_flow_change_is_so_many_times_the_leaks(factor: float) -> None:
    reading, added = split_case(40.0, 80.0, 150.0, HoleSide.OUTDOORS)
    scaled = replace(added, flow_change_m3_h=Measured(factor * added.flow_change_m3_h.value))
    one, other = split_by_hole(reading, added), split_by_hole(reading, scaled)
    assert other.house_zone.value == pytest.approx(factor * one.house_zone.value)
    assert other.path_flow_m3_h.value == pytest.approx(factor * one.path_flow_m3_h.value)


def uncertain_case() -> tuple[ZoneReading, AddedHole]:
    """Return the worked zone with what a careful tester does not know."""
    reading, added = split_case(40.0, 80.0, 150.0, HoleSide.OUTDOORS)
    reading = ZoneReading(Measured(50.0, 0.2), Measured(reading.zone_pa.value, 0.3), Measured(0.65, 0.03))
    change = Measured(added.flow_change_m3_h.value, 10.0)
    return reading, AddedHole(added.side, Measured(added.zone_pa.value, 0.3), change)


def test_the_interval_agrees_with_random_draws() -> None:
    """JCGM 101 with a general-purpose random generator, 400 000 draws."""
    reading, added = uncertain_case()
    rng = np.random.default_rng(3)

    def draws(item: Measured) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
        return rng.normal(item.value, item.u, 400_000)

    house, zone, n = draws(reading.house_pa), draws(reading.zone_pa), draws(reading.n)
    after, change = draws(added.zone_pa), draws(added.flow_change_m3_h)
    expected = np.quantile(change / ((house - after) ** n - (house - zone) ** n), [0.025, 0.975])
    found = split_by_hole(reading, added).house_zone
    assert (found.low, found.high) == pytest.approx(tuple(expected), rel=0.02)


def test_the_share_of_the_house_has_the_uncertainty_of_both_flows() -> None:
    reading, added = uncertain_case()
    found = split_by_hole(reading, added, Measured(2000.0, 40.0, logarithmic=True))
    assert found.share is not None
    assert found.share.value == pytest.approx(found.path_flow_m3_h.value / 2000.0)
    assert found.share.high / found.share.low > found.path_flow_m3_h.high / found.path_flow_m3_h.low
    assert split_by_hole(reading, added).share is None


def test_a_small_change_is_told_to_need_a_larger_hole() -> None:
    reading, added = split_case(40.0, 80.0, 20.0, HoleSide.OUTDOORS)
    found = split_by_hole(reading, added)
    assert not found.usable
    failed = [check for check in found.checks if not check.ok]
    assert [check.id for check in failed] == ["zone-change"]
    assert "larger hole" in failed[0].text
    assert split_by_hole(*split_case(40.0, 80.0, 150.0, HoleSide.OUTDOORS)).usable


def test_a_change_within_its_own_uncertainty_proves_no_upper_end() -> None:
    """Zone pressure before and after 12 and 11 Pa, each within 1 Pa: the leak may be any size."""
    reading = ZoneReading(Measured(50.0), Measured(12.0, 1.0), SURE_N)
    found = split_by_hole(reading, AddedHole(HoleSide.OUTDOORS, Measured(11.0, 1.0), Measured(30.0, 20.0)))
    assert found.house_zone.high == math.inf
    assert found.path_flow_m3_h.high == math.inf
    assert {check.id for check in found.checks if not check.ok} == {"zone-change", "flow-change"}


# the garage


def garage_case(house_garage: float, garage_outdoors: float, other: float = 1000.0) -> tuple[ZoneReading, DoorOpened]:
    """Return what would be read without error at a garage, the rest of the house leaking `other` at 50 Pa."""
    zone = zone_pressure_pa(50.0, house_garage / garage_outdoors, 0.65)
    closed, opened = flow(house_garage, 50.0 - zone), flow(house_garage, 50.0)
    return (
        ZoneReading(Measured(50.0), Measured(zone), SURE_N),
        DoorOpened(Measured(other + closed), Measured(other + opened)),
    )


@given(st.floats(1.0, 40.0), st.floats(1.0, 10.0))
def test_opening_the_door_tells_the_leak_between_house_and_garage(house_garage: float, ratio: float) -> None:
    reading, door = garage_case(house_garage, ratio * house_garage)
    found = garage_result(reading, door).found
    assert found is not None
    assert found.interface_m3_h.value == pytest.approx(flow(house_garage, 50.0), rel=1e-6)
    assert found.share.value == pytest.approx(flow(house_garage, 50.0) / door.open_m3_h.value, rel=1e-6)


def test_a_garage_apart_from_the_house_meets_both_criteria() -> None:
    apart, joined = garage_result(*garage_case(2.0, 100.0)), garage_result(*garage_case(40.0, 60.0))
    assert [check.ok for check in apart.checks] == [True, True]
    assert [check.ok for check in joined.checks] == [False, False]


def test_a_flow_that_did_not_rise_gives_an_upper_end_only() -> None:
    reading = ZoneReading(Measured(50.0), Measured(6.0, 0.3), SURE_N)
    found = garage_result(reading, DoorOpened(Measured(1000.0, 5.0), Measured(998.0, 5.0))).found
    assert found is not None
    assert (found.interface_m3_h.value, found.interface_m3_h.low) == (0.0, 0.0)
    assert 0.0 < found.interface_m3_h.high < 1000.0


def test_without_opening_the_door_only_the_pressure_is_judged() -> None:
    result = garage_result(ZoneReading(Measured(50.0), Measured(3.0)))
    assert [check.id for check in result.checks] == ["house-to-garage"]
    assert result.found is None


# rooms and neighbours


def test_a_room_within_its_limit_lacks_nothing() -> None:
    result = room_result(Measured(2.0, 0.2), Measured(100.0, 5.0))
    assert result.check.ok
    assert result.missing_cm2 is not None
    assert result.missing_cm2.value == 0.0


@given(st.floats(3.5, 40.0), st.floats(20.0, 500.0))
def test_what_a_room_lacks_brings_it_to_its_limit(pressure: float, supply: float) -> None:
    result = room_result(Measured(pressure), Measured(supply))
    assert not result.check.ok
    assert result.present_cm2 is not None
    assert result.missing_cm2 is not None
    together = result.present_cm2.value + result.missing_cm2.value
    assert transfer_area_cm2(supply) == pytest.approx(together)
    assert transfer_area_cm2(supply, pressure) == pytest.approx(result.present_cm2.value)


def test_a_room_of_high_flow_may_have_five_pascal() -> None:
    assert not room_result(Measured(4.0)).check.ok
    assert room_result(Measured(4.0), high_flow=True).check.ok
    assert room_result(Measured(4.0)).missing_cm2 is None


def test_the_guard_takes_the_interface_away() -> None:
    found = interface_flow_m3_h(Measured(800.0, 6.0), Measured(700.0, 8.0))
    assert found.value == 100.0
    assert found.half_width == pytest.approx(19.6, rel=0.01)


# input that cannot be used

READING = ZoneReading(Measured(50.0), Measured(20.0))
OUTER, INNER = HoleSide.OUTDOORS, HoleSide.HOUSE


@pytest.mark.parametrize(
    ("call", "sentence"),
    [
        (
            lambda: zone_ratio(ZoneReading(Measured(50.0), Measured(55.0))),
            "zone_pa is 55.0: a pressure between 0 and that of the house, 50 Pa, is needed",
        ),
        (lambda: zone_ratio(ZoneReading(Measured(50.0), Measured(-3.0))), "zone_pa is -3.0: a pressure between 0 and"),
        (
            lambda: zone_ratio(ZoneReading(Measured(50.0), Measured(math.nan))),
            "zone_pa is nan: a pressure between 0 and",
        ),
        (
            lambda: zone_ratio(ZoneReading(Measured(-50.0), Measured(20.0))),
            "house_pa is -50.0: a number greater than 0",
        ),
        (lambda: zone_ratio(replace(READING, n=Measured(1.4))), "n is 1.4: a number from 0.5 to 1 is needed"),
        (lambda: zone_ratio(ZoneReading(Measured(50.0), Measured(9.0, -1.0))), "zone_pa, standard uncertainty is -1.0"),
        (
            lambda: split_by_hole(READING, AddedHole(OUTER, Measured(22.0), Measured(100.0))),
            "zone pressure with the hole is 22.0: a hole to outdoors lowers the zone pressure, which was 20 Pa",
        ),
        (
            lambda: split_by_hole(READING, AddedHole(INNER, Measured(18.0), Measured(100.0))),
            "zone pressure with the hole is 18.0: a hole to the house raises the zone pressure, which was 20 Pa",
        ),
        (
            lambda: split_by_hole(READING, AddedHole(INNER, Measured(51.0), Measured(100.0))),
            "zone pressure with the hole is 51.0: a pressure below that of the house, 50 Pa, is needed",
        ),
        (
            lambda: split_by_hole(READING, AddedHole(OUTER, Measured(10.0), Measured(-5.0))),
            "change of the fan flow is -5.0: a number greater than 0 is needed",
        ),
        (
            lambda: garage_result(READING, DoorOpened(Measured(900.0), Measured(950.0), 20.0)),
            "garage_pa with the door open is 20.0: a pressure from 0 to below that with the door closed, 20 Pa, is",
        ),
        (
            lambda: garage_result(READING, DoorOpened(Measured(0.0), Measured(950.0))),
            "closed_m3_h is 0.0: a number greater than 0 is needed",
        ),
        (
            lambda: interface_flow_m3_h(Measured(800.0, 6.0), Measured(900.0, 8.0)),
            "guarded_m3_h is 900.0: with the guard at most the flow without it, 800, is possible",
        ),
        (lambda: room_result(Measured(0.0)), "pressure_pa is 0.0: a number greater than 0 is needed"),
        (lambda: leakage_ratio(50.0, 50.0, 0.65), "house_pa less zone_pa is 0.0: a number greater than 0"),
        (lambda: series_coefficient(0.0, 10.0, 0.65), "house_zone is 0.0: a number greater than 0"),
    ],
)
def test_what_cannot_be_is_refused_in_one_sentence(call: Callable[[], object], sentence: str) -> None:
    with pytest.raises(InvalidInput) as refused:
        call()
    assert str(refused.value).startswith(sentence)
    assert "\n" not in str(refused.value)
