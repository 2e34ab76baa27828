"""The SCPI message loop: framing, compound messages, error queue (SCPI-99 and IEEE 488.2, from memory)."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from simulators.instruments.replies import LATENCY_NS
from simulators.instruments.scpi import LONGEST_MESSAGE, ScpiInstrument, spellings
from simulators.instruments.scpi_fan import ScpiFan
from tests.simulators.rigs import new_world

IDENTITY = b"AIRSEAM DEMO,SCPI-FAN,SF-0003,1.0\n"


def ask(instrument: ScpiInstrument, message: bytes, now_ns: int = 0) -> bytes:
    instrument.receive(message, now_ns)
    return instrument.send(now_ns + LATENCY_NS)


@pytest.fixture
def fan() -> ScpiFan:
    return ScpiFan(new_world())


def test_the_identity_is_told(fan: ScpiFan) -> None:
    assert ask(fan, b"*IDN?\n") == IDENTITY
    assert fan.serial == "SF-0003"


def test_the_reply_comes_five_milliseconds_later(fan: ScpiFan) -> None:
    fan.receive(b"*IDN?\n", 1000)
    assert fan.next_ns() == 5_001_000
    assert fan.send(5_000_999) == b""
    assert fan.send(5_001_000) == IDENTITY
    assert fan.next_ns() is None


def test_a_message_may_come_byte_by_byte(fan: ScpiFan) -> None:
    for byte in b"*IDN?\n":
        assert fan.next_ns() is None
        fan.receive(bytes([byte]), 0)
    assert fan.send(LATENCY_NS) == IDENTITY


def test_nothing_is_answered_before_the_line_ends(fan: ScpiFan) -> None:
    assert ask(fan, b"*IDN?") == b""
    assert ask(fan, b"\r\n") == IDENTITY


def test_several_messages_in_one_piece_are_answered_in_turn(fan: ScpiFan) -> None:
    assert ask(fan, b"*IDN?\nFAN:SPEED?\n\n") == IDENTITY + b"0.0000\n"


def test_a_compound_message_continues_at_the_level_of_the_one_before(fan: ScpiFan) -> None:
    assert ask(fan, b"FAN:SPEED 0.4520;SPEED?\n") == b"0.4520\n"
    assert ask(fan, b"FAN:SPEED?;DIRECTION?;:SYST:ERR?\n") == b'0.4520;OUT;0,"No error"\n'
    assert ask(fan, b"FAN:SPEED?;*IDN?;SPEED?\n") == b"0.4520;" + IDENTITY.rstrip() + b";0.4520\n"


@pytest.mark.parametrize("message", [b"fan:speed?\n", b"Fan:Speed? \n", b"  :FAN:SPEED?\r\n", b";;FAN:SPEED?;\n"])
def test_case_blanks_and_empty_units_do_not_matter(fan: ScpiFan, message: bytes) -> None:
    assert ask(fan, message) == b"0.0000\n"


def test_mnemonics_are_long_or_short_but_nothing_between(fan: ScpiFan) -> None:
    assert ask(fan, b"SYST:ERR?\nSYSTEM:ERROR?\nsyst:error?\n") == b'0,"No error"\n' * 3
    assert ask(fan, b"SYSTE:ERR?\nSYST:ERR?\n") == b'-113,"Undefined header"\n'
    assert spellings("SYSTem:ERRor?") == {"SYST:ERR?", "SYSTEM:ERR?", "SYST:ERROR?", "SYSTEM:ERROR?"}


@pytest.mark.parametrize(
    ("message", "error"),
    [
        (b"FAN:COLOUR RED\n", b'-113,"Undefined header"'),
        (b"FAN:SPEED\n", b'-109,"Missing parameter"'),
        (b"FAN:SPEED fast\n", b'-104,"Data type error"'),
        (b"FAN:SPEED nan\n", b'-104,"Data type error"'),
        (b"FAN:SPEED 1e5e\n", b'-104,"Data type error"'),
        (b"FAN:SPEED 1.2\n", b'-222,"Data out of range"'),
        (b"FAN:SPEED -0.1\n", b'-222,"Data out of range"'),
        (b"FAN:SPEED? 3\n", b'-108,"Parameter not allowed"'),
        (b"FAN:SPEED \xff0.5\n", b'-101,"Invalid character"'),
        (b"FAN:DIRECTION UP\n", b'-224,"Illegal parameter value"'),
        (b"FAN:DIRECTION\n", b'-109,"Missing parameter"'),
        (b"SYST:COMM:TIMEOUT 0\n", b'-222,"Data out of range"'),
    ],
)
def test_a_faulty_command_gets_no_reply_and_one_error(fan: ScpiFan, message: bytes, error: bytes) -> None:
    assert ask(fan, message) == b""
    assert ask(fan, b"SYST:ERR?\nSYST:ERR?\n") == error + b'\n0,"No error"\n'


def test_a_command_error_ends_the_message_an_execution_error_does_not(fan: ScpiFan) -> None:
    assert ask(fan, b"FAN:SPEED 7;SPEED?\n") == b"0.0000\n"
    assert ask(fan, b"FAN:SPEED?;NONSENSE;SPEED 0.5\n") == b"0.0000\n"
    assert ask(fan, b"FAN:SPEED?\n") == b"0.0000\n"


def test_the_error_queue_is_bounded_and_can_be_cleared(fan: ScpiFan) -> None:
    ask(fan, b"WHAT\n" * 15)
    replies = ask(fan, b"SYST:ERR?\n" * 11).splitlines()
    assert replies == [b'-113,"Undefined header"'] * 9 + [b'-350,"Queue overflow"', b'0,"No error"']
    ask(fan, b"WHAT\n*CLS\n")
    assert ask(fan, b"SYST:ERR?\n") == b'0,"No error"\n'


def test_an_endless_line_is_dropped_whole(fan: ScpiFan) -> None:
    assert ask(fan, b"FAN:SPEED 0.5;" * LONGEST_MESSAGE + b"\n") == b""
    assert ask(fan, b"FAN:SPEED?;:SYST:ERR?\n") == b'0.0000;-363,"Input buffer overrun"\n'


@given(garbage=st.binary(max_size=80))
def test_garbage_never_stops_it(garbage: bytes) -> None:
    fan = _hardy
    fan.receive(garbage + b"\n", 0)
    fan.send(LATENCY_NS)
    fan.receive(b"*CLS;*IDN?\n", 0)
    assert fan.send(LATENCY_NS) == IDENTITY


_hardy = ScpiFan(new_world())
