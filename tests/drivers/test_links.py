"""The life of a link on virtual time: opened, identified, lost, found again, refused, each with a sentence."""

from __future__ import annotations

import logging
from collections import deque
from dataclasses import replace
from itertools import pairwise

import pytest

from drivers.clock import NS_PER_S, VirtualClock, seconds
from drivers.device import Gauge, connect
from drivers.errors import LinkLost, PortBusy
from drivers.instrument import Linked, LinkState, Readable
from drivers.profile import load_profile
from drivers.reading import Quality, Reading
from drivers.session import FIRST_WAIT_S, LONGEST_WAIT_S
from tests.drivers.wires import Answer, Pair, Wire, run, with_checksum

IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"
OTHER = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0099,1.0\n"
FAN = b"AIRSEAM DEMO,SCPI-FAN,SF-0003,1.0\n"
LINE_IDENTITY = with_checksum("id=LINE-GAUGE,LG-0007")
SETTLED_S = 0.1


def values(p1: float, p2: str = "1.03400E+02") -> bytes:
    return f"{p1:.5E},{p2},9.91E37,9.91E37,2.10400E+01,1.12300E+01,1.01325E+05,4.50000E+01\n".encode()


def counting(identity: bytes = IDENTITY) -> Answer:
    """Answer as a gauge whose p1 counts the requests."""
    count = iter(range(1, 100_000))
    return lambda message: identity if message == b"*IDN?\n" else values(float(next(count)))


def gauge_on(wire: Wire, profile_id: str = "scpi-gauge", serial: str = "") -> Gauge:
    gauge = connect("gauge", load_profile(profile_id), wire, wire.clock, serial=serial)
    assert isinstance(gauge, Gauge)
    return gauge


def started(wire: Wire, serial: str = "") -> Gauge:
    gauge = gauge_on(wire, serial=serial)
    gauge.start()
    return gauge


def state_of(gauge: Gauge) -> LinkState:
    return gauge.status().state


def p1_of(readings: list[Reading] | tuple[Reading, ...]) -> list[float]:
    return [reading.value for reading in readings if reading.channel == "gauge.p1"]


def taken(gauge: Gauge) -> list[float]:
    return p1_of(list(gauge.take()))


def is_sentence(text: str) -> bool:
    return len(text) > 12 and text.endswith(".") and " " in text


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


# --- silence ------------------------------------------------------------------------------------------------------


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


# --- who is there -------------------------------------------------------------------------------------------------


def test_the_first_to_answer_is_the_right_one_and_another_after_it_is_refused(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting())
    gauge = started(wire)
    run(clock, 1.0)
    wire.unplug()
    run(clock, 1.0)
    taken(gauge)
    wire.answer = counting(OTHER)
    wire.replug()
    run(clock, 10.0)
    assert state_of(gauge) is LinkState.WRONG_INSTRUMENT
    assert "SG-0099" in gauge.status().sentence
    assert "SG-0012" in gauge.status().sentence
    reopened_ns = wire.opened_ns[-1]
    assert {data for time_ns, data in wire.written if time_ns > reopened_ns} == {b"*IDN?\n"}
    assert taken(gauge) == []
    gauge.accept_identity()
    run(clock, 1.0)
    assert state_of(gauge) is LinkState.LINKED
    assert taken(gauge)
    gauge.close()


def test_the_accepted_instrument_is_the_right_one_from_then_on(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting(OTHER))
    gauge = started(wire, serial="SG-0012")
    run(clock, 1.0)
    gauge.accept_identity()
    run(clock, 1.0)
    assert state_of(gauge) is LinkState.LINKED
    wire.unplug()
    run(clock, 1.0)
    wire.answer = counting()
    wire.replug()
    run(clock, 3.0)
    assert state_of(gauge) is LinkState.WRONG_INSTRUMENT
    gauge.close()


def test_the_right_instrument_that_is_put_back_needs_no_word(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting(OTHER))
    gauge = started(wire, serial="SG-0012")
    run(clock, 1.0)
    assert state_of(gauge) is LinkState.WRONG_INSTRUMENT
    wire.answer = counting()
    run(clock, 3.0)
    assert state_of(gauge) is LinkState.LINKED
    gauge.close()


def test_a_wrong_instrument_stays_wrong_while_it_is_asked_again(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting(OTHER))
    gauge = started(wire, serial="SG-0012")
    run(clock, 1.0)
    states = set()
    for _ in range(2000):
        run(clock, 0.005)
        states.add(state_of(gauge))
    assert states == {LinkState.WRONG_INSTRUMENT}
    assert len(wire.sent(b"*IDN?\n")) > 3
    gauge.close()


def test_acceptance_given_while_all_is_well_is_not_kept_for_later(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=counting())
    gauge = started(wire)
    run(clock, 1.0)
    gauge.accept_identity()
    wire.unplug()
    run(clock, 1.0)
    wire.answer = counting(OTHER)
    wire.replug()
    run(clock, 3.0)
    assert state_of(gauge) is LinkState.WRONG_INSTRUMENT
    gauge.close()


def test_another_kind_of_instrument_is_quoted(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=lambda message: FAN)
    gauge = started(wire)
    run(clock, 2.0)
    assert state_of(gauge) is LinkState.WRONG_INSTRUMENT
    assert "SCPI-FAN" in gauge.status().sentence
    gauge.accept_identity()
    run(clock, 5.0)
    assert state_of(gauge) is LinkState.WRONG_INSTRUMENT
    assert b"READ?\n" not in wire.messages()
    gauge.close()


# --- a free-running gauge -----------------------------------------------------------------------------------------


class Stream:
    """A gauge that sends a line ten times a second while `talking`, and its identity when asked."""

    def __init__(self, clock: VirtualClock, identity: bytes = LINE_IDENTITY) -> None:
        """Be silent until the port is open."""
        self.wire = Wire(clock, answer=self._answer)
        self.identity = identity
        self.talking = True
        self.count = 0
        self._clock = clock
        clock.host(self._pump, "stream")

    def _answer(self, message: bytes) -> bytes | None:
        return self.identity if self.talking and message == b"?\r\n" else None

    def _pump(self, now_ns: int) -> int:
        if self.talking and self.wire.is_open:
            self.count += 1
            self.wire.say(with_checksum(f"p1={self.count:.2f} p2=103.40 t1=21.04 t2=11.23"))
        return now_ns + seconds(0.1)


def test_a_free_running_gauge_is_read_line_by_line(clock: VirtualClock) -> None:
    stream = Stream(clock)
    gauge = gauge_on(stream.wire, "line-gauge")
    gauge.start()
    run(clock, 10.0)
    read = taken(gauge)
    assert len(read) > 95
    assert read == [float(number) for number in range(int(read[0]), int(read[0]) + len(read))]
    assert gauge.status().bad_frames == 0
    assert gauge.status().rate_hz == pytest.approx(10.0, abs=0.2)
    assert stream.wire.messages() == [b"?\r\n"]
    gauge.close()


def test_a_gauge_that_goes_silent_is_asked_and_taken_up_when_it_speaks_again(clock: VirtualClock) -> None:
    stream = Stream(clock)
    gauge = gauge_on(stream.wire, "line-gauge")
    gauge.start()
    run(clock, 2.0)
    stream.talking = False
    run(clock, 1.3)
    assert state_of(gauge) is LinkState.IDENTIFYING
    assert "gone silent" in gauge.status().sentence
    run(clock, 30.0)
    assert len(stream.wire.opened_ns) == 1
    assert is_sentence(gauge.status().sentence)
    stream.talking = True
    run(clock, 4.0)
    assert (state_of(gauge), gauge.status().sentence) == (LinkState.LINKED, "")
    gauge.close()


def test_a_gauge_that_names_itself_but_never_sends_is_not_called_well(clock: VirtualClock) -> None:
    wire = Wire(clock, answer=lambda message: b"x" + LINE_IDENTITY + LINE_IDENTITY)
    gauge = gauge_on(wire, "line-gauge")
    gauge.start()
    run(clock, 10.0)
    assert gauge.status().no_replies >= 1
    assert gauge.status().readings == 0
    gauge.close()


def test_another_free_running_gauge_behind_the_same_open_port_is_noticed(clock: VirtualClock) -> None:
    stream = Stream(clock)
    gauge = gauge_on(stream.wire, "line-gauge")
    gauge.start()
    run(clock, 1.0)
    stream.wire.say(with_checksum("id=LINE-GAUGE,LG-0042"))
    run(clock, 0.1)
    assert state_of(gauge) is LinkState.WRONG_INSTRUMENT
    assert "LG-0042" in gauge.status().sentence
    run(clock, 5.0)
    assert state_of(gauge) is LinkState.LINKED  # it was the old one that answered when asked
    gauge.close()


def test_over_without_a_side_is_the_end_that_was_nearer(clock: VirtualClock) -> None:
    stream = Stream(clock)
    gauge = gauge_on(stream.wire, "line-gauge")
    gauge.start()
    run(clock, 1.0)
    stream.talking = False
    stream.wire.say(with_checksum("p1=-490.00 p2=490.00 t1=21.04 t2=11.23"))
    stream.wire.say(with_checksum("p1=OVER p2=OVER t1=21.04 t2=11.23"), 0.1)
    run(clock, 0.3)
    newest = {reading.channel: (reading.value, reading.quality) for reading in gauge.take()}
    assert newest["gauge.p1"] == (-500.0, Quality.OVER_RANGE)
    assert newest["gauge.p2"] == (500.0, Quality.OVER_RANGE)
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
