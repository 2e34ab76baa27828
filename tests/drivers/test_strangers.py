"""Who is there: the right instrument, another one, and what a person decides."""

from __future__ import annotations

from drivers.clock import VirtualClock
from drivers.instrument import LinkState
from tests.drivers.gauges import (
    FAN,
    OTHER,
    counting,
    started,
    state_of,
    taken,
)
from tests.drivers.wires import Wire, run


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
