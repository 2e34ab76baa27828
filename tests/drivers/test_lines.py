"""Lines and the values in them, by example; the properties are in `test_fuzz`."""

from __future__ import annotations

import math
import re

import pytest

from drivers.framing.fields import Over, ReplyFormat, columns, named_fields, only, pattern
from drivers.framing.lines import Checksum, LineFramer
from drivers.framing.scpi import decimal, scpi_number
from drivers.profile import load_profile
from tests.drivers.wires import with_checksum


def test_the_checksum_is_the_exclusive_or_in_two_upper_case_digits() -> None:
    # Worked by hand: 0x41 ^ 0x42 = 0x03; 0x41 ^ 0x1E = 0x5F.
    assert Checksum.XOR.of(b"AB") == b"03"
    assert Checksum.XOR.of(b"A\x1e") == b"5F"
    assert Checksum.XOR.of(b"") == b"00"


def test_the_other_kinds_of_checksum_against_known_values() -> None:
    # The check value of CRC-16/XMODEM over "123456789" is 31C3 (catalogue of parametrised CRC algorithms, from memory).
    assert Checksum.CRC16.of(b"123456789") == b"31C3"
    # 0x31 + ... + 0x39 = 477 = 0x1DD (worked by hand).
    assert Checksum.SUM.of(b"123456789") == b"DD"
    # A sentence of NMEA 0183 that stands in many introductions (from memory).
    sentence = b"$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,"
    assert Checksum.XOR_STAR.of(sentence) == b"47"
    assert Checksum.NONE.of(sentence) == b""


@pytest.mark.parametrize("kind", [kind for kind in Checksum if kind is not Checksum.NONE])
def test_a_line_of_every_kind_is_proved_and_a_damaged_one_is_counted(kind: Checksum) -> None:
    framer = LineFramer(kind)
    body = b"$p1=-50.12 p2=103.40"
    line = body + kind.mark + kind.of(body)
    assert framer.feed(line + b"\r\n" + line.replace(b"5", b"6") + b"\r\n" + body + b"\r\n") == [body.decode()]
    assert framer.bad == 2


def test_a_line_without_a_beginning_is_thrown_away_unless_its_checksum_proves_it() -> None:
    plain, proven = LineFramer(), LineFramer(Checksum.XOR)
    assert plain.feed(b"half\nwhole\n") == ["whole"]
    assert proven.feed(b"AB;03\r\n") == ["AB"]
    assert LineFramer(Checksum.XOR).feed(b"B;03\r\nAB;03\r\n") == ["AB"]
    assert plain.bad == proven.bad == 0


@pytest.mark.parametrize("line", [b"AB;04", b"AB;3", b"AB03", b"AB;03 ", b"AB;0a", b"A\x80;C1", b"A\x00;41", b";00"])
def test_a_line_that_fails_its_checksum_or_is_no_text_is_counted(line: bytes) -> None:
    framer = LineFramer(Checksum.XOR)
    framer.expect_reply()
    assert framer.feed(line + b"\r\n") == []
    assert framer.bad == 1
    assert framer.feed(b"AB;03\r\n") == ["AB"]


def test_an_empty_line_is_no_fault() -> None:
    framer = LineFramer()
    framer.expect_reply()
    assert framer.feed(b"\n\r\nx\n") == ["x"]
    assert framer.bad == 0


def test_instruments_that_end_lines_with_a_carriage_return_are_understood() -> None:
    framer = LineFramer(terminator=b"\r")
    framer.expect_reply()
    assert framer.feed(b"one\rtwo\r\nthr") == ["one", "two"]
    assert framer.feed(b"ee\r\n") == ["three"]
    assert framer.bad == 0


def test_named_fields_are_split_at_blanks() -> None:
    assert named_fields("p1=-50.12  p2=103.40") == {"p1": "-50.12", "p2": "103.40"}
    for line in ("p1=", "=5", "p1 p2", "p1=1 p1=2", "p1=1 x"):
        assert named_fields(line) is None
    assert named_fields("") == {}


def test_columns_have_to_be_as_many_as_there_are_names() -> None:
    split = columns(("a", "-", "b"), ";")
    assert split("1; 2 ;3") == {"a": "1", "-": "2", "b": "3"}
    assert split("1;2") is None
    assert split("1;2;3;4") is None


def test_a_pattern_has_to_fit_the_whole_line() -> None:
    split = pattern(re.compile(r"P(?P<p>[-0-9.]+)Pa(?P<t>.*)"))
    assert split("P-5.0Pa 21") == {"p": "-5.0", "t": "21"}
    assert split("xP-5.0Pa") is None


def test_words_of_the_instrument_stand_for_over_and_for_nothing() -> None:
    reply = ReplyFormat(named_fields, ("p", "t"), over_range=("OVER",), not_a_number=("---",))
    values = reply.values("p=OVER t=---")
    assert values is not None
    assert values["p"] is Over.RANGE
    assert isinstance(values["t"], float)
    assert math.isnan(values["t"])
    assert reply.values("p=1") is None, "a line without one of its fields is half a line"
    assert reply.values("p=1 t=2 more=x") == {"p": 1.0, "t": 2.0}
    assert reply.values("p=under t=2") is None


def test_numbers_are_plain_decimal_text() -> None:
    assert decimal("-5.012E+01") == -50.12
    assert decimal(".5") == 0.5
    for text in ("", "nan", "inf", "1_000", "0x10", "1,5", " 1", "1e", "--1", "١"):
        assert decimal(text) is None


def test_the_special_numbers_of_scpi_are_no_values() -> None:
    # SCPI-99, volume 1, chapter 7: 9.91E37 is not a number, 9.9E37 and -9.9E37 are infinities (from memory).
    assert math.isnan(scpi_number("9.91E37") or 0.0)
    assert math.isnan(scpi_number("9.910000E+37") or 0.0)
    assert scpi_number("9.9E37") == math.inf
    assert scpi_number("-9.9E+37") == -math.inf
    assert scpi_number("1e999") == math.inf
    assert scpi_number("9.8E37") == 9.8e37


def test_two_lines_that_ran_together_are_none_though_their_checksum_fits() -> None:
    """The exclusive or of `p1=0.00 p2` is zero: cut there, a line and the next one prove each other."""
    reply = load_profile("line-gauge").reply
    assert reply is not None
    framer = LineFramer(Checksum.XOR)
    framer.expect_reply()
    next_line = with_checksum("p1=OVER p2=499.99 t1=0.07 t2=11.11")
    assert Checksum.XOR.of(b"p1=0.00 p2") == b"00"
    (together,) = framer.feed(b"p1=0.00 p2" + next_line)
    assert reply.values(together) is None


def test_fields_that_are_not_read_have_to_be_known() -> None:
    split = only(frozenset({"p1", "battery"}))
    assert split("p1=1.0") == {"p1": "1.0"}
    assert split("p1=1.0 battery=80") == {"p1": "1.0", "battery": "80"}
    assert split("p1=1.0 mood=3") is None
