"""Modbus as messages and lines of text, so that everything above a framer stays the same for it.

A profile writes requests as text: `read holding 0 8`, `read input 0 2`, `write 4 500`, `identify`. A reply becomes a
line: registers as four hexadecimal digits each, the register that was written as a number, an identity as its objects
with commas between. Frames, their lengths and checks are those of pymodbus; here they only meet bytes.
"""

from __future__ import annotations

import re
import struct
from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum

from pymodbus.exceptions import ModbusException
from pymodbus.framer import FramerRTU, FramerSocket
from pymodbus.pdu import DecodePDU, ExceptionResponse, ModbusPDU
from pymodbus.pdu.mei_message import ReadDeviceInformationRequest, ReadDeviceInformationResponse
from pymodbus.pdu.register_message import (
    ReadHoldingRegistersRequest,
    ReadHoldingRegistersResponse,
    ReadInputRegistersRequest,
    ReadInputRegistersResponse,
    WriteSingleRegisterRequest,
    WriteSingleRegisterResponse,
)

LONGEST_RTU, LONGEST_TCP = 256, 260
HEADER = 7
"""Bytes of the header over TCP: transaction, protocol, length, unit."""
MOST_REGISTERS = 125
LARGEST_UNIT = 247

_READ = re.compile(r"read (?P<space>holding|input) (?P<first>\d{1,5}) (?P<count>\d{1,3})", re.ASCII)
_WRITE = re.compile(r"write (?P<at>\d{1,5}) (?P<value>\d{1,5})", re.ASCII)
GRAMMAR = (
    "one of these is needed: read holding FIRST COUNT, read input FIRST COUNT, write REGISTER VALUE (0 to 65535), "
    "identify"
)


class Wire(StrEnum):
    """How frames travel."""

    RTU = "rtu"
    TCP = "tcp"


class Words(StrEnum):
    """What registers hold, and in which order where two make a number."""

    INT16 = "int16"
    UINT16 = "uint16"
    INT32 = "int32"
    UINT32 = "uint32"
    FLOAT32 = "float32"

    @property
    def registers(self) -> int:
        """How many registers make one number."""
        return 1 if self in (Words.INT16, Words.UINT16) else 2


_FORMATS = {Words.INT16: ">h", Words.UINT16: ">H", Words.INT32: ">i", Words.UINT32: ">I", Words.FLOAT32: ">f"}


@dataclass(frozen=True, slots=True)
class Bus:
    """Where an instrument is found on a Modbus link."""

    wire: Wire
    unit: int

    def frame(self, text: str) -> bytes:
        """Return the frame of a request; raises `ValueError` with what is allowed."""
        pdu = _request(text)
        payload = pdu.function_code.to_bytes(1, "big") + pdu.encode()
        if self.wire is Wire.RTU:
            return FramerRTU(DecodePDU(False)).encode(payload, self.unit, 0)
        return FramerSocket(DecodePDU(False)).encode(payload, self.unit, 0)


@dataclass(frozen=True, slots=True)
class Register:
    """Where the number of a channel stands in the reply to a poll: counted from the first register that was read."""

    at: int
    words: Words
    low_first: bool = False

    def text(self, registers: list[int]) -> str:
        """Return the number as text; `nan` for a float that is none."""
        words = registers[self.at : self.at + self.words.registers]
        if self.low_first:
            words = words[::-1]
        raw = b"".join(word.to_bytes(2, "big") for word in words)
        (value,) = struct.unpack(_FORMATS[self.words], raw)
        return repr(value)


def registers_split(places: dict[str, Register], count: int) -> Callable[[str], dict[str, str] | None]:
    """Return what splits a line of `count` registers into the texts of channels."""

    def split(line: str) -> dict[str, str] | None:
        parts = line.split(" ")
        if len(parts) != count or not all(_WORD.fullmatch(part) for part in parts):
            return None
        registers = [int(part, 16) for part in parts]
        return {name: place.text(registers) for name, place in places.items()}

    return split


_WORD = re.compile(r"[0-9A-F]{4}", re.ASCII)


def count_of(text: str) -> int:
    """Return how many registers a request reads, 0 for one that reads none."""
    found = _READ.fullmatch(text)
    return int(found["count"]) if found else 0


def _request(text: str) -> ModbusPDU:
    if text == "identify":
        return ReadDeviceInformationRequest(read_code=1, object_id=0)
    found = _READ.fullmatch(text)
    if found is not None:
        first, count = int(found["first"]), int(found["count"])
        if not (first + count <= 65_536 and 1 <= count <= MOST_REGISTERS):
            raise ValueError(f"1 to {MOST_REGISTERS} registers are read at once, numbered 0 to 65535")
        request = ReadHoldingRegistersRequest if found["space"] == "holding" else ReadInputRegistersRequest
        return request(address=first, count=count)
    found = _WRITE.fullmatch(text)
    if found is None or int(found["at"]) > 65_535 or int(found["value"]) > 65_535:
        raise ValueError(GRAMMAR)
    return WriteSingleRegisterRequest(address=int(found["at"]), registers=[int(found["value"])])


class ModbusFramer:
    """Cuts a byte stream into replies of one unit, as lines of text.

    A frame counts only when its check (RTU) or its header (TCP) is right and it comes from the unit that was asked;
    anything else is counted in `bad`, and never handed on. The buffer never grows beyond the longest frame.
    """

    proves = True
    """A frame proves by itself that it is whole."""

    def __init__(self, bus: Bus) -> None:
        """Begin with nothing read."""
        self.bad = 0
        self._bus = bus
        self._buffer = bytearray()
        self._pdus = DecodePDU(False)

    @property
    def pending(self) -> int:
        """Number of bytes that wait for the rest of their frame."""
        return len(self._buffer)

    def resync(self) -> None:
        """Forget the buffer."""
        self._buffer.clear()

    def expect_reply(self) -> None:
        """The next byte begins a frame."""
        self.resync()

    def feed(self, data: bytes) -> list[str]:
        """Take bytes and return the lines of the replies that they complete."""
        lines: list[str] = []
        self._buffer += data
        while True:
            length = self._length()
            if length == 0 or length > len(self._buffer):
                break
            line = self._line(bytes(self._buffer[:length])) if length > 0 else None
            if line is None:
                # No frame begins here: look one byte further on, and count the stretch once.
                self.bad += 1
                self._hunt()
                continue
            del self._buffer[:length]
            lines.append(line)
        self._limit()
        return lines

    def _length(self) -> int:
        """Return the length of the frame that begins the buffer, 0 while that is not known, -1 where none can begin."""
        if self._bus.wire is Wire.TCP:
            if len(self._buffer) < HEADER:
                return 0
            follows = int.from_bytes(self._buffer[4:6], "big")
            sound = self._buffer[2:4] == b"\0\0" and 3 <= follows <= LONGEST_TCP - 6
            return 6 + follows if sound else -1
        if len(self._buffer) < 5:
            return 0
        if self._buffer[1] & 0x80:
            return 5
        reply = self._pdus.lookupPduClass(bytes(self._buffer))
        if reply is None:
            return -1
        if reply is ReadDeviceInformationResponse:
            return _identity_length(bytes(self._buffer))
        size: int = reply.calculateRtuFrameSize(bytes(self._buffer))
        return size if size <= LONGEST_RTU else -1

    def _line(self, frame: bytes) -> str | None:
        """Return the reply in a whole frame as text, None where it is none of this unit's."""
        if self._bus.wire is Wire.TCP:
            unit, payload = frame[6], frame[7:]
        else:
            unit, payload = frame[0], frame[1:-2]
            if not FramerRTU.check_CRC(frame[:-2], int.from_bytes(frame[-2:], "big")):
                return None
        if unit != self._bus.unit:
            return None
        try:
            pdu = self._pdus.decode(payload)
        except (ModbusException, struct.error, IndexError, ValueError):
            return None
        return None if pdu is None else _text(pdu)

    def _hunt(self) -> None:
        """Drop bytes until a frame of this unit could begin again."""
        unit = self._bus.unit.to_bytes(1, "big") if self._bus.wire is Wire.RTU else b"\0"
        at = self._buffer.find(unit, 1)
        del self._buffer[: at if at > 0 else len(self._buffer)]

    def _limit(self) -> None:
        longest = LONGEST_TCP if self._bus.wire is Wire.TCP else LONGEST_RTU
        if len(self._buffer) > longest:
            self.bad += 1
            self._buffer.clear()


def _identity_length(buffer: bytes) -> int:
    """Return the length of a frame with an identity: objects of their own lengths, then the check."""
    at = 8
    if len(buffer) < at:
        return 0
    for _ in range(buffer[7]):
        if len(buffer) < at + 2:
            return 0
        at += 2 + buffer[at + 1]
    return at + 2 if at + 2 <= LONGEST_RTU else -1


def _text(pdu: ModbusPDU) -> str | None:
    match pdu:
        case ExceptionResponse():
            return f"exception {pdu.exception_code}"
        case ReadHoldingRegistersResponse() | ReadInputRegistersResponse():
            return " ".join(f"{word:04X}" for word in pdu.registers)
        case WriteSingleRegisterResponse():
            return str(pdu.registers[0])
        case ReadDeviceInformationResponse():
            parts = [pdu.information[key] for key in sorted(pdu.information)]
            text = ",".join(part.decode("ascii", "replace") if isinstance(part, bytes) else "" for part in parts)
            return text if text.isprintable() and text.isascii() else None
        case _:
            return None
