"""Health of instruments from their readings, in words."""

from __future__ import annotations

import math
import random
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.clock import NS_PER_S
from drivers.health import (
    Level,
    battery,
    channel_health,
    drop_outs,
    frozen,
    link_health,
    noise_floor,
    rate,
    round_trip,
    worst,
    zero_drift,
)
from drivers.instrument import LinkState, LinkStatus
from drivers.profile import load_profile
from drivers.reading import Quality, Reading

PROFILE = load_profile("scpi-gauge")
CHANNELS = {channel.name: channel for channel in PROFILE.channels}
P1 = CHANNELS["p1"]


def readings_of(values: list[float], period_s: float = 0.1, trip_s: float = 0.005) -> list[Reading]:
    return [
        Reading("gauge.p1", value, round(n * period_s * NS_PER_S), 0, trip_s, Quality.GOOD, n)
        for n, value in enumerate(values)
    ]


def test_a_value_that_stands_still_is_noticed_where_it_should_move() -> None:
    still = readings_of([1.0, *[50.12] * 60])
    fact = frozen(still, P1)
    assert fact is not None
    assert fact.level is Level.WATCH
    assert "gauge.p1 has read 50.12 for 6 s" in fact.sentence
    assert frozen(still, CHANNELS["t1"]) is None, "a temperature may stand still"
    assert frozen(still, CHANNELS["b1"]) is None, "so may a barometer"
    assert frozen(still[:15], P1) is None
    assert frozen([*still, *readings_of([50.13])], P1) is None
    over = [replace(item, quality=Quality.OVER_RANGE) for item in still]
    assert frozen(over, P1) is None, "over range has its own words"


def test_the_noise_is_its_standard_deviation_also_on_a_ramp_and_past_a_jump() -> None:
    noise = random.Random(3)
    values = [0.02 * n + (40.0 if n > 200 else 0.0) + noise.gauss(0.0, 0.5) for n in range(2000)]
    fact = noise_floor(readings_of(values), P1)
    assert fact is not None
    assert fact.value == pytest.approx(0.5, rel=0.08)
    assert noise_floor(readings_of(values[:7]), P1) is None


def test_lost_readings_and_gaps_are_counted() -> None:
    whole = readings_of([float(n) for n in range(40)])
    assert drop_outs(whole) is None
    fact = drop_outs(whole[:10] + whole[14:])
    assert fact is not None
    assert fact.sentence == "gauge.p1: 4 readings lost, 1 gap, the longest 0.5 s."


@pytest.mark.parametrize(
    ("period_s", "level"), [(0.1, Level.WELL), (0.12, Level.WELL), (0.15, Level.WATCH), (0.3, Level.BAD)]
)
def test_the_rate_is_held_against_the_promised_one(period_s: float, level: Level) -> None:
    fact = rate(readings_of([0.0] * 20, period_s), 10.0)
    assert fact is not None
    assert fact.level is level
    assert fact.value == pytest.approx(1.0 / period_s)


def test_a_slow_answer_is_noticed_and_a_stream_has_none() -> None:
    late = round_trip(readings_of([0.0] * 5, trip_s=0.4))
    assert late is not None
    assert (late.level, late.sentence) == (Level.WATCH, "gauge.p1 answers after 400 ms.")
    assert round_trip(readings_of([0.0] * 5, trip_s=0.0)) is None


def test_the_drift_of_the_zero_is_held_against_the_stated_accuracy() -> None:
    hour = 3600 * NS_PER_S
    assert P1.accuracy > 0.0
    small = zero_drift("p1", [(0, 0.0), (hour, 0.4 * P1.accuracy)], P1)
    large = zero_drift("p1", [(0, 0.0), (hour, -1.1 * P1.accuracy)], P1)
    assert small is not None
    assert small.level is Level.WELL
    assert large is not None
    assert large.level is Level.BAD
    assert "in 60 min. Zero it again." in large.sentence
    assert zero_drift("p1", [(0, 0.0)], P1) is None


def test_a_battery_is_said_in_percent() -> None:
    levels = []
    for share in (0.8, 0.15, 0.05):
        fact = battery("gauge", share)
        assert fact is not None
        levels.append(fact.level)
    assert levels == [Level.WELL, Level.WATCH, Level.BAD]
    assert battery("gauge", math.nan) is None
    assert battery("gauge", 1.2) is None


def test_the_counters_of_a_link_become_words() -> None:
    lost = LinkStatus("gauge", "COM3", LinkState.LOST, sentence="COM3 is not there.")
    assert link_health(lost, PROFILE)[0].sentence == "COM3 is not there."
    good = LinkStatus("gauge", "COM3", LinkState.LINKED, rate_hz=9.9, readings=1000)
    assert worst(link_health(good, PROFILE)) is None
    poor = replace(good, rate_hz=3.0, bad_frames=20, reconnects=2)
    assert [fact.level for fact in link_health(poor, PROFILE)] == [Level.BAD, Level.WATCH, Level.WATCH]
    first = worst(link_health(poor, PROFILE))
    assert first is not None
    assert first.kind == "rate"


def test_a_gauge_that_averages_says_so() -> None:
    assert PROFILE.poll is not None
    slow = replace(PROFILE, poll=replace(PROFILE.poll, averaging_s=0.8))
    good = LinkStatus("gauge", "COM3", LinkState.LINKED, rate_hz=9.9, readings=1000)
    said = [fact.sentence for fact in link_health(good, slow) if fact.kind == "averaging"]
    assert said == ["gauge: each value is the mean of 0.8 s."]
    assert not [fact for fact in link_health(good, PROFILE) if fact.kind == "averaging"]


finite = st.floats(-1e6, 1e6)


@given(st.lists(st.tuples(finite, st.integers(0, 10**12), st.integers(0, 1000)), max_size=40))
def test_any_readings_have_a_health(rows: list[tuple[float, int, int]]) -> None:
    readings = [Reading("g.p1", value, stamp, 0, 0.0, Quality.GOOD, number) for value, stamp, number in rows]
    for fact in channel_health(readings, P1, 10.0):
        assert fact.sentence.endswith(".")
