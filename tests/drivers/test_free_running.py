"""A gauge that sends by itself."""

from __future__ import annotations

import pytest

from drivers.clock import VirtualClock, seconds
from drivers.instrument import LinkState
from drivers.reading import Quality
from tests.drivers.gauges import (
    LINE_IDENTITY,
    gauge_on,
    is_sentence,
    state_of,
    taken,
)
from tests.drivers.wires import Wire, run, with_checksum


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
