"""The watchdog, told what was read; limits from the table of the controller's design."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import pytest

from acquisition.watchdog import Alarm, AlarmKind, Observation, Watchdog
from drivers.clock import NS_PER_S, seconds

CALM = Observation(
    now_ns=0, readings_pa=(-50.0,), induced_pa=50.0, speed=0.5, flow_share=0.5, expected_pa=50.0, fan_linked=True
)


def watch(
    change: Callable[[float, Observation], Observation], *, until_s: float = 12.0, slack_s: float = 0.0
) -> tuple[float, Alarm] | None:
    """Let ten readings a second pass, changed by `change`; return when the watchdog barked, and why."""
    dog = Watchdog(slack_s)
    for tick in range(round(until_s * 10)):
        time_s = tick / 10
        wiggle = 0.01 * (tick % 7)
        seen = replace(CALM, now_ns=round(time_s * NS_PER_S), readings_pa=(-50.0 - wiggle,))
        alarm = dog.look(change(time_s, seen))
        if alarm is not None:
            return time_s, alarm
    return None


def after(start_s: float, **changes: object) -> Callable[[float, Observation], Observation]:
    return lambda time_s, seen: replace(seen, **changes) if time_s >= start_s else seen  # type: ignore[arg-type]


def test_a_quiet_test_raises_nothing() -> None:
    assert watch(lambda time_s, seen: seen, until_s=60.0) is None


@pytest.mark.parametrize(
    ("kind", "changes", "within_s"),
    [
        (AlarmKind.TOO_HIGH, {"readings_pa": (-100.5,)}, 0.0),
        (AlarmKind.TOO_HIGH, {"readings_pa": (-81.0,)}, 1.2),
        (AlarmKind.SILENT, {"readings_pa": ()}, 1.2),
        (AlarmKind.FROZEN, {"readings_pa": (-49.99,)}, 2.0),
        (AlarmKind.WRONG_SIGN, {"induced_pa": -3.5, "expected_pa": None}, 3.2),
        (AlarmKind.NO_PRESSURE, {"induced_pa": 1.5, "expected_pa": None}, 5.2),
        (AlarmKind.COLLAPSE, {"induced_pa": 5.0}, 1.2),
        (AlarmKind.FAN_LINK, {"fan_linked": False}, 1.2),
    ],
)
def test_each_fault_stops_the_fan_in_time(kind: AlarmKind, changes: dict[str, object], within_s: float) -> None:
    barked = watch(after(3.0, **changes))
    assert barked is not None
    at_s, alarm = barked
    assert alarm.kind is kind
    assert 3.0 <= at_s <= 3.0 + within_s
    assert alarm.sentence.endswith(".")


def test_a_reading_above_80_pa_for_half_a_second_is_a_gust() -> None:
    gust = replace(CALM, readings_pa=(-85.0,))
    assert watch(lambda t, seen: replace(gust, now_ns=seen.now_ns) if 3.0 <= t < 3.5 else seen) is None


def test_a_climb_is_stopped_before_it_has_come_too_high() -> None:
    """A plate drawn out of a running fan: 40 Pa a second, as simulated houses showed."""
    climbing = watch(lambda t, seen: replace(seen, readings_pa=(seen.readings_pa[0] - 40.0 * max(t - 3.0, 0.0),)))
    assert climbing is not None
    at_s, alarm = climbing
    assert alarm == Alarm(AlarmKind.TOO_HIGH, "The pressure climbed fast towards 100 Pa. The fan was stopped.")
    assert 60.0 < 50.0 + 40.0 * (at_s - 3.0) < 70.0


def test_one_wrong_reading_is_no_climb() -> None:
    assert watch(lambda t, seen: replace(seen, readings_pa=(-90.0,)) if abs(t - 3.0) < 0.01 else seen) is None


def test_a_gauge_that_jumps_behind_its_lag_is_no_climb() -> None:
    """Hoses swapped: from 50 to 78 Pa with a lag of 0.25 s, where neither limit is passed."""
    jumped = watch(
        lambda t, seen: replace(
            seen, readings_pa=(seen.readings_pa[0] - 28.0 * -math.expm1(-max(t - 3.0, 0.0) / 0.25),)
        ),
        until_s=8.0,
    )
    assert jumped is None


def test_at_rest_only_the_pressure_itself_matters() -> None:
    assert watch(after(1.0, speed=0.0, readings_pa=(), fan_linked=False)) is None
    barked = watch(after(1.0, speed=0.0, readings_pa=(120.0,)))
    assert barked is not None
    assert barked[1].kind is AlarmKind.TOO_HIGH


def test_a_scaled_clock_gets_its_slack() -> None:
    assert watch(lambda t, seen: replace(seen, readings_pa=()) if 3.0 <= t < 5.5 else seen, slack_s=2.0) is None
    barked = watch(after(3.0, readings_pa=()), slack_s=2.0)
    assert barked is not None
    assert barked[0] == pytest.approx(6.1, abs=0.15)


def test_the_silence_is_the_age_of_the_newest_reading() -> None:
    dog = Watchdog()
    dog.look(CALM)
    dog.look(replace(CALM, now_ns=seconds(0.7), readings_pa=()))
    assert dog.silence_s(seconds(0.7)) == pytest.approx(0.7)


def test_a_cap_lowers_what_is_too_high() -> None:
    def alarm(cap_pa: float | None, pressure_pa: float) -> Alarm | None:
        dog = Watchdog(cap_pa=cap_pa)
        found = None
        for tick in range(20):
            now_ns = tick * 100_000_000
            reading = pressure_pa + 0.01 * tick
            found = found or dog.look(Observation(now_ns, (reading,), reading, 0.3, 0.1, None, True))
        return found

    assert alarm(None, 42.0) is None
    assert alarm(30.0, 38.0) is None
    capped = alarm(30.0, 42.0)
    assert capped is not None
    assert capped.sentence == "The pressure stayed above 40 Pa. The fan was stopped."


def test_gusts_that_push_the_pressure_below_zero_are_no_wrong_sign() -> None:
    gusty = after(3.0, induced_pa=-6.0, expected_pa=None, wind_pa=2.0)
    assert watch(gusty, until_s=7.0) is None
    turned = after(3.0, induced_pa=-12.0, expected_pa=None, wind_pa=2.0)
    barked = watch(turned, until_s=7.0)
    assert barked is not None
    assert barked[1].kind is AlarmKind.WRONG_SIGN
