"""Whatever comes over a wire: no exception, no unbounded memory, no number that was not sent."""

from __future__ import annotations

import importlib.util
import math
import sys
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from drivers.clock import VirtualClock
from drivers.device import Drive, Gauge, connect
from drivers.drivetalk import Driving
from drivers.framing.fields import columns, named_fields
from drivers.framing.lines import LONGEST_LINE, Checksum, LineFramer
from drivers.framing.scpi import decimal, scpi_number
from drivers.instrument import LinkState
from drivers.profile import load_profile
from tests.bench import fuzz
from tests.drivers.damage import TARGETS
from tests.drivers.wires import Wire, run, with_checksum

GAUGE_IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"
FAN_IDENTITY = b"AIRSEAM DEMO,SCPI-FAN,SF-0003,1.0\n"
REPLY = b"-5.01200E+01,1.03400E+02,9.91E37,9.91E37,2.10400E+01,1.12300E+01,1.01325E+05,4.50000E+01\n"
LINE = "p1=-50.12 p2=103.40 t1=21.04 t2=11.23"
P1 = -50.12
RAN_TOGETHER = "c6d7fac250a0529a2b61679b33e15ae9759f8389e8a6a56ae95e1f5612dae60f83a4eea90940c0cbac08"

chunks = st.lists(st.binary(max_size=200), max_size=20)
checksums = st.sampled_from(list(Checksum))


def virtual() -> VirtualClock:
    return VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))


def fed(framer: LineFramer, pieces: Sequence[bytes]) -> list[str]:
    return [line for piece in pieces for line in framer.feed(piece)]


# --- the framer ---------------------------------------------------------------------------------------------------


@given(chunks, checksums, st.integers(1, 7))
def test_lines_do_not_depend_on_how_the_bytes_are_cut(pieces: list[bytes], checksum: Checksum, size: int) -> None:
    whole = b"".join(pieces)
    by_piece, by_size = LineFramer(checksum), LineFramer(checksum)
    regular = [whole[at : at + size] for at in range(0, len(whole), size)]
    assert fed(by_piece, pieces) == fed(by_size, regular)
    assert by_piece.bad == by_size.bad
    assert by_piece.pending == by_size.pending


@given(chunks, checksums)
def test_a_framer_gives_printable_ascii_only_and_keeps_a_bounded_rest(pieces: list[bytes], checksum: Checksum) -> None:
    framer = LineFramer(checksum)
    for line in fed(framer, pieces):
        assert line
        assert line.isascii()
        assert line.isprintable()
    assert framer.pending <= LONGEST_LINE


def test_endless_bytes_without_a_line_end_are_not_kept() -> None:
    framer = LineFramer()
    framer.feed(b"\n")
    for _ in range(200):
        assert framer.feed(b"x" * 1000) == []
        assert framer.pending <= LONGEST_LINE
    assert framer.bad == 1
    assert framer.feed(b"\nwhole\n") == ["whole"]


@given(st.integers(0, len(LINE) + 3), st.integers(0, 7))
def test_no_single_turned_bit_passes_the_checksum(at: int, bit: int) -> None:
    framer = LineFramer(Checksum.XOR)
    framer.expect_reply()
    damaged = bytearray(with_checksum(LINE))
    damaged[at] ^= 1 << bit
    lines = framer.feed(bytes(damaged))
    # A bit turned in the line feed itself leaves the line unended; in a carriage return, one byte too many.
    assert lines == []


@given(st.integers(0, len(LINE) + 2), st.integers(1, 5))
def test_a_burst_of_lost_bytes_hardly_passes_and_then_shows_in_the_fields(at: int, count: int) -> None:
    """An 8-bit exclusive or is blind to what cancels: a burst of random bytes passes once in 256.

    Two equal bytes lost together cancel as well (`00` here), so a line that lost two equal digits is believed. What is
    then read is still a line of named fields; only the decimals of a number can be missing.
    """
    framer = LineFramer(Checksum.XOR)
    framer.expect_reply()
    whole = with_checksum(LINE)
    damaged = whole[:at] + whole[at + count :]
    lost = whole[at : at + count]
    for line in framer.feed(damaged + b"\r\n"):
        assert Checksum.XOR.of(lost) == b"00" or line == LINE


def test_the_checksum_lets_one_random_damage_in_256_through() -> None:
    """The honest chance: of all ways to overwrite two bytes exactly 1 in 256 keeps the exclusive or."""
    wanted = Checksum.XOR.of(b"12")
    passing = sum(Checksum.XOR.of(bytes((first, second))) == wanted for first in range(256) for second in range(256))
    assert passing / 256**2 == 1 / 256


@pytest.mark.parametrize("target", TARGETS)
@settings(max_examples=150)
@given(st.binary(max_size=80))
@example(bytes.fromhex(RAN_TOGETHER))
def test_damaged_traffic_gives_true_numbers_or_none(target: str, data: bytes) -> None:
    """Rules A7, A9 and A11 for every framer; `run.py bench fuzz` does the same for minutes, led by coverage.

    The example is what was once found: half a line that ran together with the next one under a checksum that fitted.
    """
    TARGETS[target](data)


# --- the numbers --------------------------------------------------------------------------------------------------


@given(st.text(max_size=30))
@example("nan")
@example("inf")
@example("1_000")
@example("１２")
@example("0x10")
@example("1e9999")
def test_only_decimal_text_is_a_number(text: str) -> None:
    value = decimal(text)
    if value is not None:
        assert set(text) <= set("0123456789+-.eE")
        assert not math.isnan(value)


@given(st.floats(-1e6, 1e6), st.integers(1, 8))
def test_a_number_is_read_as_it_was_written(value: float, digits: int) -> None:
    text = f"{value:.{digits}E}"
    assert scpi_number(text) == float(text)


@given(st.text("0123456789,.-+E", max_size=60))
def test_columns_come_all_or_not_at_all(text: str) -> None:
    split = columns(("a", "b", "c"), ",")
    texts = split(text)
    assert (texts is None) == (text.count(",") != 2)


@given(st.text(max_size=60))
def test_named_fields_have_a_name_and_a_value(text: str) -> None:
    for name, value in (named_fields(text) or {}).items():
        assert name
        assert value


@given(st.data())
def test_a_cut_reply_is_never_read(data: st.DataObject) -> None:
    """Any cut that loses a comma changes the count of columns; a cut inside the last number loses the line feed too."""
    profile = load_profile("scpi-gauge")
    assert profile.reply is not None
    whole = REPLY.decode().strip()
    cut = data.draw(st.integers(0, whole.rindex(",")))
    assert profile.reply.values(whole[:cut]) is None
    assert profile.reply.values(whole[whole.index(",") + 1 :][cut:]) is None
    framer = LineFramer()
    framer.expect_reply()
    assert framer.feed(REPLY[: data.draw(st.integers(0, len(REPLY) - 1))]) == []


# --- the whole link -----------------------------------------------------------------------------------------------

garbage = st.binary(max_size=60)
replies = st.lists(
    st.one_of(
        st.none(),
        st.just(REPLY),
        st.just(GAUGE_IDENTITY),
        garbage,
        st.builds(lambda at: REPLY[:at] + b"\n", st.integers(0, len(REPLY) - 20)),
        st.builds(lambda at: REPLY[at:], st.integers(15, len(REPLY))),
        st.builds(lambda noise: noise + REPLY, garbage),
    ),
    max_size=30,
)


@settings(max_examples=60)
@given(replies, st.floats(0.0, 0.8), st.sampled_from([None, 1, 3, 50]))
def test_a_polled_gauge_survives_every_reply_and_reads_no_wrong_number(
    script: list[bytes | None], latency_s: float, split: int | None
) -> None:
    clock = virtual()
    queue = iter(script)

    def answer(message: bytes) -> bytes | None:
        usual = GAUGE_IDENTITY if message == b"*IDN?\n" else REPLY
        return next(queue, usual)

    wire = Wire(clock, answer=answer, latency_s=latency_s, split=split)
    gauge = connect("gauge", load_profile("scpi-gauge"), wire, clock)
    assert isinstance(gauge, Gauge)
    gauge.start()
    run(clock, 20.0)
    taken = gauge.take()
    assert {reading.value for reading in taken if reading.channel == "gauge.p1"} <= {P1}
    assert all(reading.channel not in ("gauge.p3", "gauge.p4") for reading in taken)
    gauge.close()
    assert wire.mistakes == []


@settings(max_examples=40)
@given(chunks)
def test_a_free_running_gauge_survives_every_byte_and_reads_no_wrong_number(pieces: list[bytes]) -> None:
    clock = virtual()
    wire = Wire(clock, answer=lambda message: with_checksum("id=LINE-GAUGE,LG-0007"))
    gauge = connect("gauge", load_profile("line-gauge"), wire, clock)
    assert isinstance(gauge, Gauge)
    gauge.start()
    run(clock, 0.5)
    for piece in pieces:
        wire.say(piece)
        wire.say(with_checksum(LINE), 0.02)
        run(clock, 0.1)
    run(clock, 0.5)
    assert {reading.value for reading in gauge.take() if reading.channel == "gauge.p1"} <= {P1}
    gauge.close()


@settings(max_examples=40)
@given(st.lists(st.one_of(st.none(), garbage, st.just(FAN_IDENTITY), st.just(b"0.3000\n")), max_size=30))
def test_a_drive_survives_every_reply_and_is_told_nothing_but_whole_messages(script: list[bytes | None]) -> None:
    clock = virtual()
    queue = iter(script)
    known = {
        b"*IDN?\n": FAN_IDENTITY,
        b"SYST:COMM:TIMEOUT 2.0;TIMEOUT?\n": b"2.0\n",
        b"FAN:SPEED 0;SPEED?\n": b"0.0000\n",
    }
    wire = Wire(clock, answer=lambda message: next(queue, known.get(message, b"0.3000\n")))
    fan = connect("fan", load_profile("scpi-fan"), wire, clock)
    assert isinstance(fan, Drive)
    fan.start()
    for _ in range(260):
        fan.set(0.3)
        run(clock, 0.5)
    assert set(wire.messages()) <= {*known, b"FAN:SPEED 0.3000;SPEED?\n"}
    assert fan.speed_readback() in (None, 0.3) or fan.status().state is not LinkState.CLOSED
    fan.close()
    assert fan.closed_safely is True


@given(st.floats(), st.floats(0.1, 100.0))
def test_a_drive_is_never_told_a_speed_beyond_its_range(speed: float, full: float) -> None:
    spec = load_profile("scpi-fan").drive
    assert spec is not None
    driving = Driving(replace(spec, full=full, start=None))
    driving.want(speed, 0)
    request = driving.next_request(0)
    assert request is not None
    told = float(request.data.removeprefix(b"FAN:SPEED ").split(b";")[0])
    assert -1e-9 <= told <= full * (1.0 + 1e-9) + 1e-4


def test_without_its_fuzzer_the_bench_says_the_one_command(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(importlib.util, "find_spec", lambda name: None)
    monkeypatch.setattr(sys, "argv", ["fuzz", "--seconds", "1"])
    assert fuzz.main() == 2
    assert "pip install atheris" in capsys.readouterr().err
