"""Clocks: what passes, what waits, what is called when."""

from __future__ import annotations

import threading
from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest

from drivers.clock import NS_PER_S, ScaledClock, VirtualClock, WallClock, seconds

START = datetime(2026, 5, 4, 9, 0, tzinfo=UTC)


def test_seconds_are_rounded_to_whole_nanoseconds() -> None:
    assert seconds(0.1) == 100_000_000
    assert seconds(1e-10) == 0


def test_virtual_time_passes_only_while_waiting(clock: VirtualClock) -> None:
    assert clock.now_ns() == 0
    assert clock.utc() == START
    assert clock.wait_until(seconds(90.0))
    assert clock.now_ns() == seconds(90.0)
    assert clock.utc() == START + timedelta(seconds=90)


def test_waiting_for_the_past_does_not_turn_virtual_time_back(clock: VirtualClock) -> None:
    clock.wait_until(seconds(5.0))
    assert clock.wait_until(seconds(1.0))
    assert clock.now_ns() == seconds(5.0)


def test_hosted_loops_run_at_their_times_and_in_the_order_of_hosting(clock: VirtualClock) -> None:
    calls: list[tuple[str, int]] = []

    def every(name: str, period_ns: int) -> Callable[[int], int]:
        def pump(now_ns: int) -> int:
            calls.append((name, now_ns))
            return now_ns + period_ns

        return pump

    clock.host(every("a", 2), "a")
    clock.host(every("b", 3), "b")
    clock.wait_until(6)
    assert calls == [("a", 0), ("b", 0), ("a", 2), ("b", 3), ("a", 4), ("a", 6), ("b", 6)]


def test_a_hosted_loop_that_does_not_advance_is_refused(clock: VirtualClock) -> None:
    clock.host(lambda now_ns: now_ns, "stuck")
    with pytest.raises(RuntimeError, match=r"'stuck' asked to run again at 0"):
        clock.wait_until(1)


def test_a_hosted_loop_may_not_wait(clock: VirtualClock) -> None:
    def pump(now_ns: int) -> int:
        clock.wait_until(now_ns + 1)
        return now_ns + 1

    clock.host(pump, "waits")
    with pytest.raises(RuntimeError, match="must not wait"):
        clock.wait_until(1)


def test_a_stopped_virtual_loop_is_not_called_again(clock: VirtualClock) -> None:
    calls: list[int] = []

    def pump(now_ns: int) -> int:
        calls.append(now_ns)
        return now_ns + 1

    hosted = clock.host(pump, "loop")
    clock.wait_until(2)
    assert hosted.stop()
    assert hosted.stop()
    assert hosted.error is None
    clock.wait_until(10)
    assert calls == [0, 1, 2]


def test_a_loop_may_stop_another_and_cancel_the_wait(clock: VirtualClock) -> None:
    cancel = threading.Event()
    other = clock.host(lambda now_ns: now_ns + 100, "other")

    def pump(now_ns: int) -> int:
        if now_ns >= 30:
            other.stop()
            cancel.set()
        return now_ns + 10

    clock.host(pump, "ends it")
    assert not clock.wait_until(1000, cancel)
    assert clock.now_ns() == 30


def test_wall_time_advances_and_its_wait_can_be_cancelled() -> None:
    wall = WallClock()
    before_ns = wall.now_ns()
    assert wall.wait_until(before_ns + seconds(0.01))
    assert wall.now_ns() - before_ns >= seconds(0.01)
    cancel = threading.Event()
    cancel.set()
    assert not wall.wait_until(wall.now_ns() + seconds(60.0), cancel)
    assert wall.now_ns() - before_ns < seconds(10.0)
    assert wall.utc().tzinfo is UTC


def test_a_thread_calls_the_pump_until_it_is_stopped() -> None:
    wall = WallClock()
    called = threading.Event()
    names: set[str] = set()

    def pump(now_ns: int) -> int:
        names.add(threading.current_thread().name)
        called.set()
        return now_ns + seconds(60.0)

    hosted = wall.host(pump, "link gauge")
    assert called.wait(5.0)
    assert hosted.stop()
    assert names == {"link gauge"}
    assert hosted.error is None


def test_a_stuck_thread_is_reported_not_waited_for() -> None:
    wall = WallClock()
    inside, release = threading.Event(), threading.Event()

    def pump(now_ns: int) -> int:
        inside.set()
        release.wait(10.0)
        return now_ns + 1

    hosted = wall.host(pump, "stuck")
    assert inside.wait(5.0)
    assert not hosted.stop(timeout_s=0.01)
    release.set()
    assert hosted.stop()


def test_what_kills_a_thread_is_kept_and_shown(monkeypatch: pytest.MonkeyPatch) -> None:
    shown: list[str] = []
    monkeypatch.setattr(threading, "excepthook", lambda args: shown.append(str(args.exc_value)))

    def pump(now_ns: int) -> int:
        raise ArithmeticError("broken")

    hosted = WallClock().host(pump, "dies")
    assert hosted.stop()
    assert isinstance(hosted.error, ArithmeticError)
    assert shown == ["broken"]


def test_a_loop_may_stop_itself_from_its_own_thread() -> None:
    wall = WallClock()
    ready, stopped = threading.Event(), threading.Event()

    def pump(now_ns: int) -> int:
        ready.wait(5.0)
        hosted.stop()
        stopped.set()
        return now_ns + 1

    hosted = wall.host(pump, "self")
    ready.set()
    assert stopped.wait(5.0)
    assert hosted.stop()


def test_scaled_time_passes_faster_by_its_factor() -> None:
    scaled, wall = ScaledClock(50.0), WallClock()
    real0_ns, scaled0_ns = wall.now_ns(), scaled.now_ns()
    assert scaled.wait_until(scaled0_ns + seconds(1.0))
    real_s = (wall.now_ns() - real0_ns) / NS_PER_S
    scaled_s = (scaled.now_ns() - scaled0_ns) / NS_PER_S
    assert scaled_s >= 1.0
    assert scaled_s == pytest.approx(50.0 * real_s, rel=0.2)
    assert scaled.slack_s == pytest.approx(5.0)
    assert scaled.utc() - datetime.fromtimestamp(0, UTC) > timedelta(days=1)


@pytest.mark.parametrize("factor", [0.0, -1.0, float("nan")])
def test_a_time_factor_has_to_be_positive(factor: float) -> None:
    with pytest.raises(ValueError, match="a number greater than 0 is needed"):
        ScaledClock(factor)
