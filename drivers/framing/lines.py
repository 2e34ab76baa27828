"""Terminated lines of ASCII text, with or without a checksum: what SCPI and plain line instruments both send."""

from __future__ import annotations

import binascii
from enum import StrEnum
from functools import reduce
from operator import xor

LONGEST_LINE = 4096
"""A line that gets longer than this is no line of an instrument; the buffer never grows beyond it."""


class Checksum(StrEnum):
    """How a line proves itself: by upper-case hexadecimal digits at its end, over all bytes before their mark."""

    NONE = "none"
    XOR = "xor"
    """`;HH`: exclusive-ored."""
    XOR_STAR = "xor-star"
    """`*HH`: exclusive-ored without a leading `$` or `!`, as in the open standard NMEA 0183 (from memory)."""
    SUM = "sum"
    """`;HH`: added up, modulo 256."""
    CRC16 = "crc16"
    """`;HHHH`: the CRC with polynomial 0x1021 that begins at 0 (CRC-16/XMODEM)."""

    @property
    def mark(self) -> bytes:
        """The byte before the digits."""
        return b"*" if self is Checksum.XOR_STAR else b";"

    def of(self, body: bytes) -> bytes:
        """Return the digits that prove these bytes; none for `NONE`."""
        match self:
            case Checksum.XOR:
                return b"%02X" % _xor(body)
            case Checksum.XOR_STAR:
                return b"%02X" % _xor(body[body[:1] in (b"$", b"!") :])
            case Checksum.SUM:
                return b"%02X" % (sum(body) % 256)
            case Checksum.CRC16:
                return b"%04X" % binascii.crc_hqx(body, 0)
        return b""


class LineFramer:
    """Cuts a byte stream into terminated lines.

    What comes first after `resync` may be the second half of a line: it is handed on only when its checksum proves it,
    else thrown away. Lines that are too long, no printable ASCII, or fail their checksum are counted in `bad` and never
    handed on. A tabulator comes out as a blank.
    """

    def __init__(self, checksum: Checksum = Checksum.NONE, terminator: bytes = b"\n") -> None:
        """Begin between two lines that nobody has seen. `terminator` is one byte; the other of CR and LF is dropped."""
        self.bad = 0
        self._terminator = terminator
        self._checksum = checksum
        self.proves = checksum is not Checksum.NONE
        """Whether a line proves by itself that it is whole."""
        self._buffer = bytearray()
        self._from_beginning = False
        self._too_long = False

    @property
    def pending(self) -> int:
        """Number of bytes that wait for their terminator."""
        return len(self._buffer)

    def resync(self) -> None:
        """Forget the buffer; the next byte may be anywhere in a line."""
        self._buffer.clear()
        self._from_beginning = self._too_long = False

    def expect_reply(self) -> None:
        """The next byte begins a line: a request was just sent and everything before it drained."""
        self.resync()
        self._from_beginning = True

    def feed(self, data: bytes) -> list[str]:
        """Take bytes and return the lines that they complete, without terminator and checksum."""
        lines: list[str] = []
        *ends, rest = data.split(self._terminator)
        for end in ends:
            self._grow(end)
            line = self._ended()
            if line:
                lines.append(line)
            self.expect_reply()
        self._grow(rest)
        return lines

    def _grow(self, data: bytes) -> None:
        if self._too_long:
            return
        self._buffer += data
        if len(self._buffer) > LONGEST_LINE:
            self._buffer.clear()
            self._too_long = True
            self.bad += 1

    def _ended(self) -> str | None:
        """Return the text of the line in the buffer, None when it is none; count a bad one, but not half a line."""
        raw = bytes(self._buffer).strip(b"\r\n")
        if not raw or self._too_long or not (self._from_beginning or self.proves):
            return None
        text = self._checked(raw)
        self.bad += text is None and self._from_beginning
        return text

    def _checked(self, raw: bytes) -> str | None:
        """Return the text of a whole line, None for a bad one."""
        body = raw
        if self.proves:
            body, mark, digits = raw.rpartition(self._checksum.mark)
            if not mark or digits != self._checksum.of(body):
                return None
        body = body.replace(b"\t", b" ")
        if not body or not body.isascii() or not body.decode("ascii").isprintable():
            return None
        return body.decode("ascii")


def _xor(body: bytes) -> int:
    return reduce(xor, body, 0)
