"""The life of a link on virtual time: opened, identified, lost, found again, each with a sentence."""

from __future__ import annotations

import logging
from collections import deque
from dataclasses import replace
from itertools import pairwise

import pytest

from drivers.clock import NS_PER_S, VirtualClock, seconds
from drivers.device import connect
from drivers.errors import LinkLost, PortBusy
from drivers.instrument import Linked, LinkState, Readable
from drivers.profile import load_profile
from drivers.reading import Quality
from drivers.session import FIRST_WAIT_S, LONGEST_WAIT_S
from tests.drivers.gauges import (
    IDENTITY,
    OTHER,
    SETTLED_S,
    counting,
    gauge_on,
    is_sentence,
    p1_of,
    started,
    state_of,
    values,
)
from tests.drivers.wires import Pair, Wire, run

# --- a good day ---------------------------------------------------------------------------------------------------


def test_a_gauge_fulfils_its_roles(clock: VirtualClock) -> None:
    gauge: Linked = gauge_on(Wire(clock))
    assert isinstance(gauge, Readable)


def test_the_talk_of_a_polled_gauge_byte_by_byte(clock: VirtualClock) -> None:
    wire = Wire(clock, deque([Pair(b"*IDN?\n", IDENTITY), *[Pair(b"READ?\n", values(-50.12))] * 5]))
    gauge = started(wire)
    run(clock, SETTLED_S + 0.49)
    readings = list(gauge.take())
    gauge.close()
    wire.finished()
    assert p1_of(readings) == [-50.12] * 5
    assert {reading.channel for reading in readings} == {
        f"gauge.{name}" for name in ("p1", "p2", "t1", "t2", "b1", "h1")
    }
    humidity = next(reading for reading in readings if reading.channel == "gauge.h1")
    assert humidity.value == pytest.approx(0.45)
    assert [reading.sequence for reading in readings if reading.channel == "gauge.p1"] == [0, 1, 2, 3, 4]


def test_a_reading_is_stamped_in_the_middle_of_request_and_reply(clock: VirtualClock) -> None:
    """Rule A23."""
    wire = Wire(clock, deque([Pair(b"*IDN?\n", IDENTITY), Pair(b"READ?\n", values(1.0), after_s=0.04)]))
    gauge = started(wire)
    run(clock, SETTLED_S + 0.09)
    (first, *_) = gauge.take()
    sent_ns = wire.sent(b"READ?\n")[0]
    assert first.round_trip_s == pytest.approx(0.04, abs=0.006)
    assert first.monotonic_ns - sent_ns == pytest.approx(seconds(first.round_trip_s / 2), abs=1)
    utc_s = first.utc_ns / NS_PER_S
    assert utc_s == pytest.approx(clock.utc().timestamp() - (clock.now_ns() - first.monotonic_ns) / NS_PER_S, abs=1e-5)
    gauge.close()


def test_polls_keep_their_times_and_missed_ones_are_skipped_not_made_up_for(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting())
    gauge = started(wire)
    run(clock, 10.0)
    times = wire.sent(b"READ?\n")
    assert len(times) == pytest.approx(99, abs=1)
    assert times[-1] - times[0] == pytest.approx((len(times) - 1) * seconds(0.1), abs=seconds(0.01))
    wire.latency_s = 0.25
    run(clock, 10.0)
    slow = [time_ns for time_ns in wire.sent(b"READ?\n") if time_ns > seconds(10.5)]
    assert all(after - before >= seconds(0.25) for before, after in pairwise(slow))
    status = gauge.status()
    assert status.skipped_polls > 0
    assert 3.0 < status.rate_hz < 4.1
    gauge.close()


def test_over_range_is_marked_and_shown_at_its_end(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=lambda message: IDENTITY if message == b"*IDN?\n" else values(-612.0, "9.9E37"))
    gauge = started(wire)
    run(clock, 0.3)
    shown = {item.channel: (item.value, item.quality) for item in gauge.take()}
    assert shown["gauge.p1"] == (-500.0, Quality.OVER_RANGE)
    assert shown["gauge.p2"] == (500.0, Quality.OVER_RANGE)
    assert shown["gauge.t1"] == (21.04, Quality.GOOD)
    gauge.close()


def test_a_plus_sign_of_infinity_is_believed_whatever_came_before(clock: VirtualClock) -> None:
    replies = iter([IDENTITY, values(1.0, "-4.99000E+02"), values(1.0, "9.9E37"), values(1.0, "-9.9E37")])
    wire = Wire(clock, answer=lambda message: next(replies, values(1.0)))
    gauge = started(wire)
    run(clock, 0.35)
    assert [item.value for item in gauge.take() if item.channel == "gauge.p2"][:3] == [-499.0, 500.0, -500.0]
    gauge.close()


# --- what is said in each state -----------------------------------------------------------------------------------


def test_every_state_that_is_not_linked_has_a_sentence(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=lambda message: None)
    gauge = gauge_on(wire)
    seen: dict[LinkState, set[str]] = {}

    def note() -> None:
        status = gauge.status()
        seen.setdefault(status.state, set()).add(status.sentence)

    note()
    gauge.start()
    for step in range(600):
        run(clock, 0.02)
        note()
        if step == 100:
            wire.answer = counting()
        if step == 320:
            wire.unplug()
        if step == 400:
            wire.answer = counting(OTHER)
            wire.replug()
    gauge.close()
    note()
    assert set(seen) == set(LinkState)
    assert seen.pop(LinkState.LINKED) == {""}
    for state, sentences in seen.items():
        assert all(is_sentence(sentence) for sentence in sentences), (state, sentences)


def test_a_port_that_takes_long_to_open_is_said_to_be_opening(clock: VirtualClock) -> None:
    said: list[tuple[LinkState, str]] = []

    class SlowWire(Wire):
        def open(self) -> None:
            status = gauge.status()
            said.append((status.state, status.sentence))
            super().open()

    wire = SlowWire(clock, answer=counting())
    gauge = started(wire)
    run(clock, 0.05)
    assert said == [(LinkState.OPENING, "test:wire is being opened.")]
    gauge.close()


def test_bytes_that_make_no_sense_point_to_speed_and_cable(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=lambda message: b"\x80\xfe\x00\n" * 3)
    gauge = started(wire)
    run(clock, SETTLED_S + 1.2)
    assert "make no sense" in gauge.status().sentence
    gauge.close()


# --- the port goes and comes --------------------------------------------------------------------------------------


def test_a_missing_port_is_tried_after_half_a_second_then_twice_as_long_up_to_five(clock: VirtualClock) -> None:
    """Rules A4 and A21: with a ceiling, and never at once."""
    wire = Wire(clock, plugged=False)
    gauge = started(wire)
    run(clock, 40.0)
    waits = [(b - a) / NS_PER_S for a, b in pairwise(wire.opened_ns)]
    assert waits[:6] == pytest.approx([0.5, 1.0, 2.0, 4.0, 5.0, 5.0], abs=0.01)
    assert (FIRST_WAIT_S, LONGEST_WAIT_S) == (0.5, 5.0)
    gauge.close()


def test_the_wait_starts_anew_after_a_link(clock: VirtualClock) -> None:
    wire = Wire(clock, plugged=False, answer=counting())
    gauge = started(wire)
    run(clock, 20.0)
    wire.replug()
    run(clock, 6.0)
    assert state_of(gauge) is LinkState.LINKED
    wire.unplug()
    run(clock, 0.2)
    lost_ns = clock.now_ns()
    count = len(wire.opened_ns)
    run(clock, 0.6)
    assert len(wire.opened_ns) == count + 1
    assert wire.opened_ns[-1] - lost_ns < seconds(0.5)
    gauge.close()


def test_the_reason_of_a_refusal_is_shown_until_the_port_opens(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting(), refusal=PortBusy("COM7 is in use by another program."))
    gauge = started(wire)
    run(clock, 3.0)
    assert gauge.status().sentence == "COM7 is in use by another program."
    assert state_of(gauge) is LinkState.LOST
    wire.refusal = None
    run(clock, 5.0)
    assert (state_of(gauge), gauge.status().sentence) == (LinkState.LINKED, "")
    gauge.close()


def test_readings_go_on_with_the_next_number_after_a_pulled_plug(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting())
    gauge = started(wire)
    run(clock, 2.0)
    wire.unplug()
    run(clock, 3.0)
    wire.replug()
    run(clock, 5.0)
    numbers = [reading.sequence for reading in gauge.take() if reading.channel == "gauge.p1"]
    assert numbers == list(range(len(numbers)))
    assert gauge.status().reconnects == 1
    gauge.close()


def test_the_rate_is_that_of_the_link_that_stands_now(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting())
    gauge = started(wire)
    run(clock, 5.0)
    assert gauge.status().rate_hz == pytest.approx(10.0, abs=0.2)
    wire.unplug()
    run(clock, 10.0)
    status = gauge.status()
    assert status.rate_hz == 0.0
    assert status.age_s == pytest.approx(10.0, abs=0.2)
    wire.replug()
    run(clock, 8.0)
    assert gauge.status().rate_hz == pytest.approx(10.0, abs=0.2)
    gauge.close()


def test_a_fault_of_the_program_is_shown_and_the_link_comes_back(
    clock: VirtualClock, caplog: pytest.LogCaptureFixture
) -> None:
    class Broken(Wire):
        def read(self, timeout_s: float) -> bytes:
            if self.latency_s < 0:
                raise ZeroDivisionError("a bug")
            return super().read(timeout_s)

    wire = Broken(clock, answer=counting())
    gauge = started(wire)
    run(clock, 1.0)
    wire.latency_s = -1.0
    with caplog.at_level(logging.CRITICAL, logger="drivers.session"):
        run(clock, 0.3)
    assert "a bug" in gauge.status().sentence
    wire.latency_s = 0.005
    run(clock, 2.0)
    assert state_of(gauge) is LinkState.LINKED
    gauge.close()


# --- the loop -----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("unplugged", [False, True])
@pytest.mark.parametrize("answers", [False, True])
def test_a_pump_never_spins(clock: VirtualClock, unplugged: bool, answers: bool) -> None:
    """Real machines wait between pumps: no state may ask to run more often than about 250 times a second."""
    calls = 0
    wire = Wire(clock, answer=counting() if answers else lambda message: None, plugged=not unplugged)
    gauge = gauge_on(wire)
    pump = gauge._session.pump

    def counted(now_ns: int) -> int:
        nonlocal calls
        calls += 1
        return pump(now_ns)

    clock.host(counted, "counted")
    run(clock, 20.0)
    assert calls < 20 * 250
    gauge.close()


def test_closing_twice_and_before_starting_is_harmless(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting())
    gauge = gauge_on(wire)
    gauge.close()
    gauge.start()
    run(clock, 1.0)
    gauge.start()
    gauge.close()
    gauge.close()
    assert state_of(gauge) is LinkState.CLOSED
    written = len(wire.written)
    run(clock, 5.0)
    assert len(wire.written) == written


def test_a_zero_that_was_asked_for_is_sent_before_the_next_poll_only_while_linked(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=lambda message: None if message == b"CAL:ZERO\n" else counting()(message))
    gauge = started(wire)
    run(clock, 1.0)
    assert gauge.zero()
    run(clock, 0.2)
    assert len(wire.sent(b"CAL:ZERO\n")) == 1
    wire.unplug()
    run(clock, 0.05)
    assert not gauge.zero()
    run(clock, 0.2)
    wire.replug()
    run(clock, 3.0)
    assert len(wire.sent(b"CAL:ZERO\n")) == 1
    gauge.close()


def test_a_line_gauge_cannot_be_zeroed(clock: VirtualClock) -> None:
    assert not gauge_on(Wire(clock), "line-gauge").zero()


def test_a_profile_with_neither_poll_nor_stream_is_refused(clock: VirtualClock) -> None:
    profile = replace(load_profile("scpi-gauge"), poll=None)
    with pytest.raises(ValueError, match="either a poll or a stream"):
        connect("gauge", profile, Wire(clock), clock)


def test_a_port_used_while_closed_says_so(clock: VirtualClock) -> None:
    with pytest.raises(LinkLost, match="is not open"):
        Wire(clock).read(0.0)
