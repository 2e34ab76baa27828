"""Modbus: requests as text, replies as lines, frames held to their checks, and profiles that say what is wrong.

Frames are checked against the Modbus specifications' examples (Modbus Application Protocol V1.1b3 and over serial line
V1.02, from memory) and against pymodbus.
"""

from __future__ import annotations

import re
import struct
from collections.abc import Sequence

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pymodbus.framer import FramerRTU, FramerSocket
from pymodbus.pdu import DecodePDU, ExceptionResponse, ModbusPDU
from pymodbus.pdu.mei_message import ReadDeviceInformationResponse
from pymodbus.pdu.register_message import ReadHoldingRegistersResponse, ReadInputRegistersResponse

from drivers.errors import ProfileError
from drivers.framing.modbus import LONGEST_RTU, Bus, ModbusFramer, Register, Wire, Words, registers_split
from drivers.profile import load_profile, read_profile, shipped_profiles

RTU, TCP = Bus(Wire.RTU, 1), Bus(Wire.TCP, 1)
SHEET = load_profile("modbus-gauge")


def framed(pdu: ModbusPDU, wire: Wire = Wire.RTU, unit: int = 1) -> bytes:
    frames = FramerRTU if wire is Wire.RTU else FramerSocket
    return frames(DecodePDU(True)).encode(pdu.function_code.to_bytes(1, "big") + pdu.encode(), unit, 0)


def fed(framer: ModbusFramer, pieces: Sequence[bytes]) -> list[str]:
    return [line for piece in pieces for line in framer.feed(piece)]


def text_of(name: str) -> str:
    from importlib import resources

    return (resources.files("drivers.profiles") / f"{name}.toml").read_text("utf-8")


@pytest.mark.parametrize(
    ("text", "frame"),
    [
        # Read 3 holding registers from 107 of unit 1 (the specification's example is unit 17; check by pymodbus).
        ("read holding 107 3", "0103006b00037417"),
        # Write 3 into register 1: 00 01 00 03, the specification's example of function 06.
        ("write 1 3", "0106000100039" + "80b"),
        ("identify", "012b0e01007077"),
    ],
)
def test_requests_are_the_frames_of_the_specification(text: str, frame: str) -> None:
    assert RTU.frame(text).hex() == frame
    assert TCP.frame(text)[6:] == RTU.frame(text)[:-2]


@pytest.mark.parametrize(
    "text", ["", "read coils 0 1", "read holding 0 0", "read holding 0 126", "write 1 65536", "write"]
)
def test_what_is_no_request_is_refused_with_what_is(text: str) -> None:
    with pytest.raises(ValueError, match=r"needed|at once"):
        RTU.frame(text)


@given(st.lists(st.integers(0, 65_535), min_size=1, max_size=30), st.lists(st.integers(1, 8), max_size=40))
def test_a_reply_is_read_however_it_is_cut(registers: list[int], cuts: list[int]) -> None:
    for wire in Wire:
        frame = framed(ReadHoldingRegistersResponse(registers=registers), wire)
        framer, pieces, at = ModbusFramer(Bus(wire, 1)), [], 0
        for cut in cuts:
            pieces.append(frame[at : at + cut])
            at += cut
        assert fed(framer, [*pieces, frame[at:]]) == [" ".join(f"{word:04X}" for word in registers)]
        assert framer.bad == 0
        assert framer.pending == 0


@given(st.lists(st.integers(0, 65_535), min_size=1, max_size=10), st.data())
def test_a_frame_with_a_wrong_byte_is_counted_and_never_read_as_another_number(
    registers: list[int], data: st.DataObject
) -> None:
    frame = bytearray(framed(ReadInputRegistersResponse(registers=registers)))
    at = data.draw(st.integers(0, len(frame) - 1))
    frame[at] ^= data.draw(st.integers(1, 255))
    framer = ModbusFramer(RTU)
    whole = " ".join(f"{word:04X}" for word in registers)
    # A frame that lost its check may look like the beginning of a longer one; the next good frame still comes through.
    good = framed(ReadInputRegistersResponse(registers=registers))
    lines = fed(framer, [bytes(frame)])
    framer.expect_reply()
    lines += fed(framer, [good])
    assert set(lines) <= {whole, "exception 1", "exception 2", "exception 3", "exception 4"}
    assert lines[-1] == whole


@given(st.lists(st.binary(max_size=300), max_size=20))
def test_garbage_makes_no_line_that_a_gauge_would_say_and_no_memory(pieces: list[bytes]) -> None:
    for bus in (RTU, TCP):
        framer = ModbusFramer(bus)
        for piece in pieces:
            for line in framer.feed(piece):
                assert SHEET.reply is not None
                assert SHEET.reply.values(line) is None or bus.wire is Wire.TCP
            assert framer.pending <= LONGEST_RTU + 4


def test_after_garbage_in_front_the_frame_is_found() -> None:
    frame = framed(ReadHoldingRegistersResponse(registers=[7]))
    framer = ModbusFramer(RTU)
    assert framer.feed(b"\x00\x55\x99" + frame) == ["0007"]
    assert framer.bad == 1


def test_another_unit_is_not_listened_to() -> None:
    framer = ModbusFramer(RTU)
    assert framer.feed(framed(ReadHoldingRegistersResponse(registers=[7]), unit=2)) == []
    assert framer.bad == 1


def test_exceptions_and_identities_become_lines() -> None:
    framer = ModbusFramer(RTU)
    assert framer.feed(framed(ExceptionResponse(3, 2))) == ["exception 2"]
    identity = ReadDeviceInformationResponse(read_code=1, information={0: b"MAKER", 1: b"THING 5", 2: b"1.0"})
    assert framer.feed(framed(identity)) == ["MAKER,THING 5,1.0"]


@given(st.floats(width=32, allow_nan=False, allow_infinity=False))
def test_floats_stand_in_two_registers_in_either_order(value: float) -> None:
    words = struct.unpack(">HH", struct.pack(">f", value))
    line = " ".join(f"{word:04X}" for word in (*words, *words[::-1]))
    places = {"a": Register(0, Words.FLOAT32), "b": Register(2, Words.FLOAT32, low_first=True)}
    texts = registers_split(places, 4)(line)
    assert texts is not None
    assert float(texts["a"]) == float(texts["b"]) == value


def test_whole_numbers_have_their_sign() -> None:
    places = {"a": Register(0, Words.INT16), "b": Register(0, Words.UINT16), "c": Register(0, Words.INT32)}
    assert registers_split(places, 2)("FFFE 0001") == {"a": "-2", "b": "65534", "c": str(-0x1FFFF)}
    assert registers_split(places, 2)("FFFE") is None


def test_a_word_for_over_range_and_a_float_that_is_none_are_no_numbers() -> None:
    transmitter = load_profile("modbus-pressure")
    assert transmitter.reply is not None
    assert transmitter.reply.values("7FFF") is not None
    assert transmitter.reply.values("FE0C") == {"p1": -500.0}
    assert SHEET.reply is not None
    nothing = SHEET.reply.values(" ".join(["7FC0", "0000"] * 5))
    assert nothing is not None
    assert all(value != value for value in nothing.values())


def test_the_speed_goes_into_a_register() -> None:
    for name, full in (("modbus-ec-fan", 1000), ("modbus-voltage-fan", 10_000)):
        drive = load_profile(name).drive
        assert drive is not None
        assert drive.set_message(0.5) == RTU.frame(f"write 0 {full // 2}")
        assert drive.safe == RTU.frame("write 0 0")


@pytest.mark.parametrize(
    ("old", "new", "key"),
    [
        ('query = "read input 0 10"', 'query = "read coils 0 10"', "query"),
        ('query = "read input 0 10"', 'query = "identify"', "query"),
        ('b1 = "8 float32"', 'b1 = "9 float32"', "b1"),
        ('b1 = "8 float32"', 'b1 = "8 float64"', "b1"),
        ('wire = "rtu"', 'wire = "ascii"', "wire"),
        ("unit = 1", "unit = 300", "unit"),
        ('order = "high-first"', 'order = "middle"', "order"),
        ('command = "write 100 1"', 'command = "write 100 x"', "command"),
    ],
)
def test_a_mistake_in_a_profile_is_named_with_file_line_and_key(old: str, new: str, key: str) -> None:
    text = text_of("modbus-gauge")
    assert old in text
    broken = text.replace(old, new, 1)
    line = text[: text.index(old)].count("\n") + 1
    with pytest.raises(ProfileError, match=re.escape(key)) as caught:
        read_profile(broken, "own.toml")
    assert "own.toml" in str(caught.value)
    assert f"line {line}" in str(caught.value)


def test_the_shipped_profiles_can_all_be_read() -> None:
    assert {"modbus-gauge", "modbus-pressure", "modbus-ec-fan", "modbus-voltage-fan"} <= set(shipped_profiles())
    for name in shipped_profiles():
        assert load_profile(name).id == name
