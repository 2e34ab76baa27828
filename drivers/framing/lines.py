"""Terminated lines of ASCII text, with or without a checksum: what SCPI and plain line instruments both send."""

from __future__ import annotations

from enum import StrEnum

LONGEST_LINE = 4096
"""A line that gets longer than this is no line of an instrument; the buffer never grows beyond it."""


class Checksum(StrEnum):
    """How a line proves itself."""

    NONE = "none"
    XOR = "xor"
    """`;HH` at the end: all bytes before the `;` exclusive-ored, two upper-case hexadecimal digits."""


class LineFramer:
    """Cuts a byte stream into terminated lines.

    What comes before the first terminator after `resync` is thrown away: it may be the second half of a line. Lines
    that are too long, no printable ASCII, or fail their checksum are counted in `bad` and never handed on.
    """

    def __init__(self, checksum: Checksum = Checksum.NONE) -> None:
        """Begin between two lines that nobody has seen."""
        self.bad = 0
        self._checksum = checksum
        self._buffer = bytearray()
        self._skipping = True

    @property
    def pending(self) -> int:
        """Number of bytes that wait for their terminator."""
        return len(self._buffer)

    def resync(self) -> None:
        """Forget the buffer and skip to the next terminator."""
        self._buffer.clear()
        self._skipping = True

    def expect_reply(self) -> None:
        """The next byte begins a line: a request was just sent and everything before it drained."""
        self._buffer.clear()
        self._skipping = False

    def feed(self, data: bytes) -> list[str]:
        """Take bytes and return the lines that they complete, without terminator and checksum."""
        lines: list[str] = []
        *ends, rest = data.split(b"\n")
        for end in ends:
            self._grow(end)
            if self._skipping:
                self._skipping = False
            elif (line := self._checked(bytes(self._buffer).removesuffix(b"\r"))) is not None:
                lines.append(line)
            self._buffer.clear()
        self._grow(rest)
        return lines

    def _grow(self, data: bytes) -> None:
        if self._skipping:
            return
        if len(self._buffer) + len(data) > LONGEST_LINE:
            self.bad += 1
            self.resync()
            return
        self._buffer += data

    def _checked(self, raw: bytes) -> str | None:
        """Return the text of a whole line; None for an empty one (no fault) and for a bad one (counted)."""
        if not raw:
            return None
        body = raw
        if self._checksum is Checksum.XOR:
            body, mark, digits = raw.rpartition(b";")
            if not mark or digits != checksum_of(body):
                self.bad += 1
                return None
        text = body.decode("ascii", "replace").replace("\t", " ")
        if not text or not text.isascii() or not text.isprintable():
            self.bad += 1
            return None
        return text


def checksum_of(body: bytes) -> bytes:
    """Return the two upper-case hexadecimal digits of all bytes exclusive-ored."""
    value = 0
    for byte in body:
        value ^= byte
    return b"%02X" % value
