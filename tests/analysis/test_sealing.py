"""What a seal brought, against made-up records whose answer is known, and against formulas of other books."""

from __future__ import annotations

import math

import numpy as np
import pytest

from analysis.errors import InvalidInput
from analysis.hole import hole_cm2_per_m3_h
from analysis.records import Direction, Estimate
from analysis.sealing.change import Sureness, best_windows, change_at, sizes_of, smallest_m3_h
from analysis.sealing.levelled import (
    Levelling,
    Trace,
    differences,
    differences_within,
    levelled_trace,
    through_leaks,
)
from analysis.sealing.unrest import Unrest, Windows, unrest_of
from analysis.sealing.watch import StepKind, steps_in
from analysis.sealing.windanswer import calmed_crosswise, wind_answer

LEVELLING = Levelling(Direction.DEPRESSURIZE, zero_pa=-1.0, volume_m3=400.0, exponent=0.65)


def trace_of(flow: np.ndarray, start_s: float = 0.0, apart: np.ndarray | None = None) -> Trace:
    return Trace(start_s, flow, np.zeros((len(flow), 1)) if apart is None else apart)


def quiet(count: int, seed: int = 1, sd: float = 3.0, level: float = 1000.0) -> np.ndarray:
    return level + sd * np.random.default_rng(seed).standard_normal(count)


def learnt(seed: int = 1, sd: float = 3.0) -> Unrest:
    found = unrest_of([trace_of(quiet(540, seed, sd))])
    assert found is not None
    return found


def test_levelling_takes_any_pressure_along_the_line_to_the_reference() -> None:
    times = np.arange(0.05, 30.0, 0.1)
    held = np.repeat([-41.0, -51.0, -61.0], 100)[: len(times)]
    flow = 80.0 * np.abs(held + 1.0) ** 0.65
    trace = levelled_trace(times, held[:, None], flow, Levelling(Direction.DEPRESSURIZE, -1.0, None))
    assert trace.flow_m3_h[[2, 15, 25]] == pytest.approx(80.0 * 50.0**0.65, rel=1e-9)


def test_what_the_air_of_the_house_stores_is_taken_off() -> None:
    # Ideal gas: V/(kappa p) dP/dt; the fan takes out what leaks in and what the house lets go while its pressure falls.
    times = np.arange(0.05, 60.0, 0.1)
    held = -50.0 - 0.05 * (times - 30.0)
    letting_go = 3600.0 * 400.0 / (1.2 * 101_325.0) * 0.05
    flow = 80.0 * np.abs(held) ** 0.65 + letting_go
    trace = levelled_trace(times, held[:, None], flow, Levelling(Direction.DEPRESSURIZE, 0.0, 400.0))
    assert trace.flow_m3_h[10:50] == pytest.approx(80.0 * 50.0**0.65, rel=1e-5)


@pytest.mark.parametrize("direction", list(Direction))
def test_reference_air_is_that_of_the_standard(direction: Direction) -> None:
    # ISO 9972 (from memory): C_L = C_env (T0/T_x)**(1-n), the temperature ratio route, x the air that enters the leaks.
    indoor, outdoor, kelvin = 21.0, 3.0, 273.15
    density = {theta: 1.2041 * 293.15 / (kelvin + theta) for theta in (indoor, outdoor)}
    flow = through_leaks(np.array([500.0]), direction, density[indoor], density[outdoor], 0.65)
    inside, outside = kelvin + indoor, kelvin + outdoor
    out = direction is Direction.DEPRESSURIZE
    ratio, entering = (outside / inside, outside) if out else (inside / outside, inside)
    assert flow[0] == pytest.approx(500.0 * ratio * (293.15 / entering) ** 0.35, rel=1e-4)


def test_readings_far_from_the_held_pressure_are_left_out() -> None:
    times = np.arange(0.05, 3.0, 0.1)
    held = np.where(times < 1.0, -2.0, -51.0)
    trace = levelled_trace(times, held[:, None], np.full(len(times), 900.0), LEVELLING)
    assert np.isnan(trace.flow_m3_h[0])
    assert np.isfinite(trace.flow_m3_h[2])


@pytest.mark.parametrize(
    ("field", "value"), [("exponent", 2.0), ("volume_m3", 0.0), ("zero_pa", math.nan), ("reference_pa", -50.0)]
)
def test_levelling_refuses_what_cannot_be(field: str, value: float) -> None:
    given = {"zero_pa": 0.0, "volume_m3": 300.0} | {field: value}
    with pytest.raises(InvalidInput, match=field):
        Levelling(Direction.DEPRESSURIZE, **given)


def test_white_unrest_is_that_of_means() -> None:
    # Variance of a difference of independent means: sd**2 (1/a + 1/b), textbook.
    sds = [learnt(seed).sd_m3_h(Windows(60, 30)) for seed in range(30)]
    assert np.mean(sds) == pytest.approx(3.0 * math.sqrt(1 / 60 + 1 / 30), rel=0.06)


def test_slow_unrest_counts_a_pause_between_the_windows() -> None:
    rng = np.random.default_rng(5)
    wander = np.zeros(2400)
    for at in range(1, len(wander)):
        wander[at] = 0.98 * wander[at - 1] + rng.standard_normal()
    found = unrest_of([trace_of(1000.0 + wander)])
    assert found is not None
    assert found.sd_m3_h(Windows(60, 30, 90)) > 1.1 * found.sd_m3_h(Windows(60, 30))
    seen = float(np.sqrt(np.mean(np.square(differences(wander, 60, 30)))))
    assert found.sd_m3_h(Windows(60, 30)) == pytest.approx(seen, rel=0.25)


def test_differences_do_not_reach_from_one_quiet_stretch_into_the_next() -> None:
    stretches = [quiet(50, 1), quiet(8, 2, level=2000.0), quiet(40, 3, level=500.0)]
    stretches[0][20] = np.nan
    expected = np.concatenate([differences(item, 16, 8) for item in stretches])
    assert differences_within(stretches, 16, 8) == pytest.approx(expected, rel=1e-9, abs=1e-9)
    assert len(differences_within([], 16, 8)) == 0


def test_a_short_record_says_nothing() -> None:
    assert unrest_of([trace_of(quiet(40))]) is None
    assert unrest_of([]) is None


def test_a_seal_is_told_with_its_interval() -> None:
    flow = quiet(1000, 7)
    flow[530:] -= 20.0
    change = change_at(trace_of(flow), 530.0, learnt(2), started_s=500.0, now_s=560.0)
    assert change is not None
    assert change.sureness is Sureness.SURE
    assert change.difference_m3_h.low < -20.0 < change.difference_m3_h.high < 0.0
    assert change.share.value == pytest.approx(change.difference_m3_h.value / change.before_m3_h)


def test_the_flow_before_a_seal_reaches_back_to_the_seal_before_it() -> None:
    flow = quiet(400)
    flow[100:] -= 40.0
    flow[200:] -= 20.0
    trace = trace_of(flow)
    told = change_at(trace, 200.0, learnt(), not_before_s=100.0)
    assert told is not None
    assert told.difference_m3_h.low < -20.0 < told.difference_m3_h.high
    # Without it the longest window would hold the level of both.
    both = change_at(trace, 200.0, learnt())
    assert both is not None
    assert both.difference_m3_h.value < -35.0


def test_nothing_is_told_for_certain_of_a_quiet_house() -> None:
    change = change_at(trace_of(quiet(600, 9)), 530.0, learnt(2))
    assert change is not None
    assert change.sureness is Sureness.NOT_SURE
    assert change.smallest_m3_h == pytest.approx(smallest_m3_h(learnt(2), best_windows(learnt(2), 70)), rel=0.1)


def test_wind_says_that_it_is_the_wind() -> None:
    change = change_at(trace_of(quiet(600, 9, sd=150.0)), 530.0, learnt(2, sd=150.0), now_s=560.0)
    assert change is not None
    assert change.sureness is Sureness.TOO_WINDY


def test_it_is_too_early_after_three_seconds() -> None:
    assert change_at(trace_of(quiet(600)), 530.0, learnt(), now_s=533.0) is None


def test_known_looks_at_quiet_minutes_are_seldom_sure() -> None:
    sure = [change_at(trace_of(quiet(300, seed)), 260.0, learnt(seed + 1000), now_s=290.0) for seed in range(200)]
    share = np.mean([item is not None and item.sureness is Sureness.SURE for item in sure])
    assert share <= 0.10  # 5 % asked for; 200 looks show up to 8.9 % in 99 of 100 cases (binomial)


def test_areas_are_those_of_holes() -> None:
    sizes = sizes_of(Estimate(-100.0, -120.0, -80.0), LEVELLING)
    assert sizes.eqla10_cm2.value == pytest.approx(-100.0 * 0.2**0.65 * hole_cm2_per_m3_h(10.0))
    # EqLA10/ELA4 is 1.878 at n = 0.65, whatever the leak (derived from both definitions).
    assert sizes.eqla10_cm2.value / sizes.ela4_cm2.value == pytest.approx(1.878, abs=0.001)
    assert sizes.ela4_cm2.extrapolated
    assert sizes.n50_per_h is not None
    assert sizes.n50_per_h.low == pytest.approx(-120.0 / 400.0)


def gusty(count: int, seed: int) -> Trace:
    """A house whose flow answers to the first two of four walls."""
    rng = np.random.default_rng(seed)
    taps = np.zeros((count, 4))
    for at in range(1, count):
        taps[at] = 0.95 * taps[at - 1] + 0.3 * rng.standard_normal(4)
    apart = taps - taps.mean(axis=1, keepdims=True)
    return trace_of(quiet(count, seed, 1.0) + apart @ np.array([6.0, -3.0, 0.0, 0.0]), apart=apart)


def test_the_answer_to_the_wind_is_learnt_and_taken_off() -> None:
    answer = wind_answer([gusty(540, 1)], LEVELLING)
    later = gusty(540, 2)
    before, after = (np.std(differences(item.flow_m3_h, 60, 30)) for item in (later, answer.calmed(later)))
    assert after < 0.4 * before
    assert answer.per_pa[0] - answer.per_pa[1] == pytest.approx(9.0, rel=0.15)


def test_what_teaches_the_answer_does_not_flatter_the_unrest() -> None:
    crossed = unrest_of(calmed_crosswise([gusty(540, 1)], LEVELLING))
    assert crossed is not None
    later = wind_answer([gusty(540, 1)], LEVELLING).calmed(gusty(540, 3))
    seen = float(np.std(differences(later.flow_m3_h, 60, 30)))
    assert crossed.sd_m3_h(Windows(60, 30)) == pytest.approx(seen, rel=0.5)


def test_one_tap_teaches_no_answer() -> None:
    assert wind_answer([trace_of(quiet(540))], LEVELLING).per_pa == ()


def steps_after(change: np.ndarray) -> tuple[StepKind, ...]:
    flow = quiet(600, 11)
    flow[300 : 300 + len(change)] += change
    flow[300 + len(change) :] += change[-1]
    return tuple(step.kind for step in steps_in(trace_of(flow), learnt()))


def test_a_watch_tells_a_seal_by_how_it_falls() -> None:
    assert steps_after(np.linspace(0.0, -40.0, 20)) == (StepKind.SEAL,)


def test_a_watch_tells_a_door_that_opens_and_shuts() -> None:
    door = np.concatenate([np.full(40, 300.0), [0.0]])
    assert set(steps_after(door)) == {StepKind.PASSING}


def test_a_watch_tells_what_came_open_or_was_shut() -> None:
    assert steps_after(np.array([60.0])) == (StepKind.CAME_OPEN,)
    assert steps_after(np.array([-200.0])) == (StepKind.SHUT,)


def test_a_watch_of_quiet_minutes_stays_quiet() -> None:
    alarms = [bool(steps_in(trace_of(quiet(540, seed)), learnt(seed + 500))) for seed in range(60)]
    assert sum(alarms) <= 7  # 5 % asked for: 60 watches show at most 7 in 98 of 100 cases (binomial)
