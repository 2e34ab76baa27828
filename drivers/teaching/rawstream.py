"""What an unknown gauge sends, looked at: its lines, how they end, whether they prove themselves, how regular they are.

Pure: bytes in, records out. A stream that was received with the wrong link settings has bytes that are no text, or
lines of which no two look alike; that is what `regularity` measures.
"""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass

from drivers.framing.lines import LONGEST_LINE, Checksum, LineFramer

LEAST_LINES = 3
TEXT = frozenset(range(0x20, 0x7F)) | {0x09, 0x0A, 0x0D}
SHAPE_OF_NUMBER = re.compile(r"[-+ ]*[0-9]+(?:\.[0-9]*)?(?:[eE][-+]?[0-9]+)?")
HEX_WIDTH = 16


@dataclass(frozen=True, slots=True)
class RawStream:
    """What was seen. `regularity` is 0 for noise and 1 for lines of text that all look alike.

    `lines` are whole lines without terminator and checksum; the pieces at both ends are left out.
    """

    lines: tuple[str, ...]
    terminator: str
    checksum: Checksum
    regularity: float
    rate_hz: float


def look_at(data: bytes, span_s: float = 0.0) -> RawStream:
    """Return what is seen in bytes that came within `span_s` seconds (0: the rate stays 0)."""
    terminator = _terminator(data)
    pieces = data.split(terminator[-1:].encode("ascii"))[1:-1]
    whole = [piece.strip(b"\r\n") for piece in pieces if len(piece) <= LONGEST_LINE]
    whole = [piece for piece in whole if piece]
    checksum = _checksum(whole)
    lines = tuple(line for piece in whole for line in _text(piece, checksum))
    rate_hz = len(whole) / span_s if span_s > 0 else 0.0
    return RawStream(lines, terminator, checksum, _regularity(data, whole, lines), rate_hz)


def hex_view(data: bytes, width: int = HEX_WIDTH) -> list[str]:
    """Return rows of bytes in hexadecimal and, behind them, as text; a middle dot where there is none."""
    rows = []
    for at in range(0, len(data), width):
        row = data[at : at + width]
        text = "".join(chr(byte) if 0x20 <= byte < 0x7F else "·" for byte in row)
        rows.append(f"{at:06X}  {row.hex(' ').upper():<{3 * width - 1}}  {text}")
    return rows


def _terminator(data: bytes) -> str:
    if b"\r\n" in data:
        return "\r\n"
    return "\r" if data.count(b"\r") > data.count(b"\n") else "\n"


def _checksum(pieces: list[bytes]) -> Checksum:
    """Return the kind of checksum that every line carries: one line that fails would be one too many."""
    if len(pieces) < LEAST_LINES:
        return Checksum.NONE
    kinds = [kind for kind in Checksum if kind is not Checksum.NONE]
    return next((kind for kind in kinds if all(_text(piece, kind) for piece in pieces)), Checksum.NONE)


def _text(piece: bytes, checksum: Checksum) -> list[str]:
    framer = LineFramer(checksum)
    framer.expect_reply()
    return framer.feed(piece + b"\n")


def _regularity(data: bytes, pieces: list[bytes], lines: tuple[str, ...]) -> float:
    if len(lines) < LEAST_LINES:
        return 0.0
    readable = sum(byte in TEXT for byte in data) / len(data)
    shapes = Counter(SHAPE_OF_NUMBER.sub("0", line) for line in lines)
    # The two commonest shapes: many gauges put a line about themselves in between.
    alike = sum(count for _, count in shapes.most_common(2)) / len(pieces)
    return readable * min(alike, 1.0)
