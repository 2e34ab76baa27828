"""A gauge that says nothing, answers late or answers nonsense: asked again, never believed, its port left open."""

from __future__ import annotations

from collections import deque

import pytest

from drivers.clock import NS_PER_S, VirtualClock
from drivers.instrument import LinkState
from tests.drivers.gauges import (
    IDENTITY,
    SETTLED_S,
    counting,
    started,
    state_of,
    taken,
    values,
)
from tests.drivers.wires import Wire, run


def test_a_silent_instrument_is_asked_now_and_then_and_its_port_stays_open(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=lambda message: None)
    gauge = started(wire)
    run(clock, 60.0)
    assert len(wire.opened_ns) == 1
    assert wire.is_open
    assert 30 < len(wire.written) < 45
    assert set(wire.messages()) == {b"*IDN?\n"}
    assert wire.reads < 60 * 210
    assert state_of(gauge) is LinkState.IDENTIFYING
    assert "does not say who it is" in gauge.status().sentence
    gauge.close()


def test_a_reply_that_stays_away_does_not_close_the_port(clock: VirtualClock) -> None:
    whole = counting()
    deaf = [False]
    wire = Wire(clock, answer=lambda message: None if deaf[0] and message == b"READ?\n" else whole(message))
    gauge = started(wire)
    run(clock, 1.0)
    deaf[0] = True
    run(clock, 0.7)
    deaf[0] = False
    run(clock, 1.0)
    status = gauge.status()
    assert 1 <= status.no_replies <= 3
    assert (status.reconnects, status.state) == (0, LinkState.LINKED)
    assert len(wire.opened_ns) == 1
    assert status.sentence == ""
    gauge.close()


@pytest.mark.parametrize("latency_s", [0.05, 0.28, 0.35, 0.6, 0.95, 1.2, 1.55, 1.7, 2.4, 3.2])
def test_a_late_reply_is_never_taken_for_the_current_value(clock: VirtualClock, latency_s: float) -> None:
    """p1 is the time of the request that it answers: a value may never be older than its own round trip."""

    def answer(message: bytes) -> bytes:
        return IDENTITY if message == b"*IDN?\n" else values(1.0 + clock.now_ns() / NS_PER_S)

    wire = Wire(clock, answer=answer, latency_s=latency_s)
    gauge = started(wire)
    run(clock, 60.0)
    readings = [reading for reading in gauge.take() if reading.channel == "gauge.p1"]
    assert bool(readings) == (latency_s < 0.3)
    for reading in readings:
        asked_s = reading.monotonic_ns / NS_PER_S - reading.round_trip_s / 2
        assert reading.value - 1.0 == pytest.approx(asked_s, abs=0.002)
    gauge.close()


@pytest.mark.parametrize("lag", [1, 2, 3])
def test_an_instrument_that_answers_the_question_before_is_never_read(clock: VirtualClock, lag: int) -> None:
    behind: deque[bytes] = deque()
    whole = counting()

    def answer(message: bytes) -> bytes | None:
        behind.append(whole(message) or b"")
        return behind.popleft() if len(behind) > lag else None

    wire = Wire(clock, answer=answer)
    gauge = started(wire)
    run(clock, 120.0)
    assert taken(gauge) == []
    gauge.close()


def test_a_jam_that_clears_all_at_once_leaves_no_old_value(clock: VirtualClock) -> None:
    """A network that stalls and then delivers everything: identities and values in one burst."""
    jam: list[bytes] = []
    jammed = [False]
    whole = counting()

    def answer(message: bytes) -> bytes | None:
        reply = whole(message) or b""
        if jammed[0]:
            jam.append(reply)
            return None
        return reply

    wire = Wire(clock, answer=answer)
    gauge = started(wire)
    run(clock, 1.0)
    jammed[0] = True
    run(clock, 8.0)
    before = taken(gauge)
    jammed[0] = False
    wire.say(b"".join(jam))
    run(clock, 10.0)
    after = taken(gauge)
    assert after
    assert min(after) > max(before) + len([reply for reply in jam if reply != IDENTITY])
    gauge.close()


def test_a_nonsense_reply_costs_one_question_not_the_link(clock: VirtualClock) -> None:
    replies = iter([IDENTITY, values(1.0), b"1.0,2.0\n", IDENTITY, values(2.0)])
    wire = Wire(clock, answer=lambda message: next(replies, values(3.0)))
    gauge = started(wire)
    run(clock, SETTLED_S + 0.35)
    assert taken(gauge)[:2] == [1.0, 2.0]
    assert wire.messages()[:5] == [b"*IDN?\n", b"READ?\n", b"READ?\n", b"*IDN?\n", b"READ?\n"]
    assert (gauge.status().bad_frames, gauge.status().no_replies) == (1, 0)
    gauge.close()


def test_a_flood_neither_blocks_nor_passes_for_an_answer(clock: VirtualClock) -> None:
    class Flood(Wire):
        def read(self, timeout_s: float) -> bytes:
            self.reads += 1
            return b"1.0,2.0,3.0,4.0,5.0,6.0,7.0,8.0\n" * 100

    wire = Flood(clock, answer=counting())
    gauge = started(wire)
    run(clock, 5.0)
    assert taken(gauge) == []
    assert "does not stop" in gauge.status().sentence
    assert len(wire.opened_ns) == 1
    gauge.close()
