"""Lines of ASCII text, with or without a checksum."""

from __future__ import annotations

LONGEST_LINE = 4096
"""A line that gets longer than this is no line of an instrument; the buffer never grows beyond it."""


class LineFramer:
    """Cuts a byte stream into terminated lines.

    What comes before the first terminator after `resync` is thrown away: it may be the second half of a line. Lines
    that are too long, no ASCII, or fail their checksum are counted in `bad` and never handed on.
    """

    def __init__(self, *, checksum: bool = False) -> None:
        """With `checksum` a line ends in `;HH`, two hexadecimal digits: all bytes before the `;` exclusive-ored."""
        self.bad = 0
        self._checksum = checksum
        self._buffer = bytearray()
        self._skipping = True

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
        self._buffer += data
        *ended, rest = self._buffer.split(b"\n")
        self._buffer = bytearray(rest)
        lines: list[str] = []
        for raw in ended:
            if self._skipping:
                self._skipping = False
                continue
            line = self._checked(bytes(raw).removesuffix(b"\r"))
            if line:
                lines.append(line)
        if len(self._buffer) > LONGEST_LINE:
            self.bad += 1
            self.resync()
        return lines

    def _checked(self, raw: bytes) -> str | None:
        if not raw:
            return None
        body = raw
        if self._checksum:
            body, mark, digits = raw.rpartition(b";")
            if not mark or digits != checksum_of(body):
                self.bad += 1
                return None
        if len(body) > LONGEST_LINE or not all(0x20 <= byte < 0x7F for byte in body):
            self.bad += 1
            return None
        return body.decode("ascii")


def checksum_of(body: bytes) -> bytes:
    """Return the two upper-case hexadecimal digits of all bytes exclusive-ored."""
    value = 0
    for byte in body:
        value ^= byte
    return b"%02X" % value


def named_fields(line: str) -> dict[str, str] | None:
    """Return the fields of a line like `p1=-50.12 p2=103.40`, None when it is not made of such fields."""
    fields: dict[str, str] = {}
    for part in line.split(" "):
        name, mark, value = part.partition("=")
        if not (name and mark and value) or name in fields:
            return None
        fields[name] = value
    return fields
