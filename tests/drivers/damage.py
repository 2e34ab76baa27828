"""What bytes may do to a framer, as functions of raw bytes: for hypothesis in the tests and for the bench's fuzzer.

Each function takes any bytes, makes traffic of them (true frames, cut, damaged, with garbage between) and raises
`AssertionError` when something comes out that was never sent, when a lost frame is not counted, when the outcome
depends on how the bytes were cut into pieces, or when the memory grows. The damage is what the protocol's check
promises to find: a burst of at most two bytes for Modbus RTU, one byte for the exclusive or; what gets past a check by
chance is measured in `test_fuzz`.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from pymodbus.framer import FramerRTU, FramerSocket
from pymodbus.pdu import DecodePDU
from pymodbus.pdu.register_message import ReadInputRegistersResponse

from drivers.framing.fields import ReplyFormat, columns, named_fields
from drivers.framing.framer import Framer
from drivers.framing.lines import LONGEST_LINE, Checksum, LineFramer
from drivers.framing.modbus import LONGEST_TCP, Bus, ModbusFramer, Wire
from drivers.framing.scpi import decimal, scpi_number
from drivers.profile import load_profile
from tests.drivers.wires import with_checksum

LINES = (
    "p1=-50.12 p2=103.40 t1=21.04 t2=11.23",
    "p1=0.00 p2=0.00 t1=21.00 t2=-3.10",
    "p1=OVER p2=499.99 t1=0.07 t2=11.11",
)
ROWS = (
    "-5.01200E+01,1.03400E+02,9.91E37,9.91E37,2.10400E+01,1.12300E+01,1.01325E+05,4.50000E+01",
    "1.00000E+00,-1.00000E+00,0.00000E+00,9.91E37,2.10000E+01,-1.00000E+01,1.00000E+05,0.00000E+00",
)
REGISTERS = ((0xC248, 0x7AE1) * 5, (0x0000,) * 10, (0x0103, 0x1400) * 5)
UNIT = 1


class Dice:
    """Choices out of raw bytes; 0 once they are used up."""

    def __init__(self, data: bytes) -> None:
        """Begin with the first byte."""
        self._data = data
        self._at = 0

    @property
    def left(self) -> bool:
        """Whether there are bytes left."""
        return self._at < len(self._data)

    def below(self, end: int) -> int:
        """Return a whole number from 0 on, less than `end`, which is at most 65 536."""
        return int.from_bytes(self.bytes(2 if end > 256 else 1), "big") % end

    def bytes(self, count: int) -> bytes:
        """Return so many bytes, fewer at the end."""
        piece = self._data[self._at : self._at + count]
        self._at += count
        return piece


def any_lines(data: bytes) -> None:
    """Any bytes, as lines with or without a checksum, however they are cut."""
    dice = Dice(data)
    checksum = list(Checksum)[dice.below(len(Checksum))]
    terminator = (b"\n", b"\r")[dice.below(2)]
    size, rest = 1 + dice.below(7), dice.bytes(len(data))
    whole, cut = LineFramer(checksum, terminator), LineFramer(checksum, terminator)
    lines = whole.feed(rest)
    assert lines == _fed(cut, rest, size)
    assert whole.bad == cut.bad
    assert max(whole.pending, cut.pending) <= LONGEST_LINE
    assert all(line and line.isascii() and line.isprintable() for line in lines)


def proved_lines(data: bytes) -> None:
    """Lines with a checksum, each whole or with one byte lost, doubled or wrong: the true values or none."""
    dice = Dice(data)
    reply = _reply("line-gauge")
    true = [reply.values(line) for line in LINES]
    stream = bytearray()
    sent = damaged = 0
    while dice.left:
        line = with_checksum(LINES[dice.below(len(LINES))])
        arriving = _damaged(line, dice, longest=1)
        stream += arriving
        sent += bool(arriving)
        damaged += arriving not in (line, b"")
    stream += b"\r\n" + with_checksum(LINES[0])
    framer = LineFramer(Checksum.XOR)
    framer.expect_reply()
    found = [reply.values(line) for line in _fed(framer, bytes(stream), 1 + len(data) % 9)]
    read = [values for values in found if values is not None]
    assert all(values in true for values in read)
    # A line that no reply is made of is counted by the link. Of two that are damaged one may mend the other.
    assert len(read) > sent or framer.bad > 0 or None in found or damaged > 1


def scpi_rows(data: bytes) -> None:
    """A reply without a checksum that was cut short or lost a byte: never a number that was not sent."""
    dice = Dice(data)
    reply = _reply("scpi-gauge")
    row = ROWS[dice.below(len(ROWS))]
    at, ended = dice.below(len(row)), dice.below(2)
    framer = LineFramer()
    framer.expect_reply()
    lines = _fed(framer, row[:at].encode() + (b"\n" if ended else b""), 1 + dice.below(5))
    # The last digits of a row can only be lost together with its line feed.
    assert ended or lines == []
    assert at > row.rindex(",") or all(reply.values(line) is None for line in lines)
    short = reply.values(row[:at] + row[at + 1 :])
    unseen = row[at] == "-" or "9.91E37"[:4] in row[max(at - 3, 0) : at + 1]
    assert short is None or unseen


def modbus_rtu(data: bytes) -> None:
    """Frames with a burst of at most two wrong bytes, cut, or with garbage in front: the true registers or none."""
    dice = Dice(data)
    framer = ModbusFramer(Bus(Wire.RTU, UNIT))
    while dice.left:
        frame = FRAMES[Wire.RTU][dice.below(len(REGISTERS))]
        garbage = dice.bytes(dice.below(4))
        traffic = garbage + _damaged(frame, dice, longest=2)
        framer.expect_reply()
        bad, lines = framer.bad, _fed(framer, traffic, 1 + dice.below(9))
        read = [line for line in lines if not line.startswith("exception")]
        assert set(read) <= TRUE_TEXTS
        assert read or framer.bad > bad or framer.pending or not traffic
        assert framer.pending < LONGEST_TCP


def modbus_tcp(data: bytes) -> None:
    """Frames over TCP, which delivers all bytes in order until the connection breaks: cut frames are never read."""
    dice = Dice(data)
    framer = ModbusFramer(Bus(Wire.TCP, UNIT))
    while dice.left:
        frame = FRAMES[Wire.TCP][dice.below(len(REGISTERS))]
        cut = frame[: dice.below(len(frame))]
        framer.resync()
        assert _fed(framer, cut, 1 + dice.below(9)) == []
        framer.resync()
        assert set(_fed(framer, frame, 1 + dice.below(9))) <= TRUE_TEXTS
        assert framer.pending == 0


def any_modbus(data: bytes) -> None:
    """Any bytes: no exception, little memory, and the same outcome however they are cut."""
    dice = Dice(data)
    bus = Bus(list(Wire)[dice.below(2)], UNIT)
    size, rest = 1 + dice.below(9), dice.bytes(len(data))
    framer = ModbusFramer(bus)
    for line in _fed(framer, rest, size):
        assert line.isascii()
    assert framer.pending <= LONGEST_TCP


def any_number(data: bytes) -> None:
    """Any text as a number or a row of them: a number is decimal text, and is what Python reads in it."""
    text = data.decode("latin-1")
    value = decimal(text)
    if value is not None:
        assert set(text) <= set("0123456789+-.eE")
        assert value == float(text)
    special = scpi_number(text)
    assert (special is None) == (value is None)
    texts = columns(("a", "b"), ",")(text)
    assert (texts is None) == (text.count(",") != 1)
    for name, part in (named_fields(text) or {}).items():
        assert name
        assert part
    for profile in ("scpi-gauge", "line-gauge", "modbus-gauge"):
        values = _reply(profile).values(text)
        assert values is None or len(values) == len(_reply(profile).names)


TARGETS: dict[str, Callable[[bytes], None]] = {
    "any-lines": any_lines,
    "proved-lines": proved_lines,
    "scpi-rows": scpi_rows,
    "modbus-rtu": modbus_rtu,
    "modbus-tcp": modbus_tcp,
    "any-modbus": any_modbus,
    "numbers": any_number,
}
"""Every way of cutting bytes into frames, and frames into numbers, by a name for the command line."""


def _fed(framer: Framer, data: bytes, size: int) -> list[str]:
    return [line for at in range(0, len(data), size) for line in framer.feed(data[at : at + size])]


def _damaged(frame: bytes, dice: Dice, *, longest: int) -> bytes:
    """Return a frame as it may arrive: whole, cut, or with at most `longest` bytes in a row lost, doubled or wrong."""
    way, at, count = dice.below(5), dice.below(len(frame)), 1 + dice.below(longest)
    match way:
        case 0:
            return frame
        case 1:
            return frame[:at]
        case 2:
            return frame[:at] + frame[at + count :]
        case 3:
            return frame[: at + count] + frame[at:]
        case _:
            wrong = bytes(byte ^ (1 + dice.below(255)) for byte in frame[at : at + count])
            return frame[:at] + wrong + frame[at + count :]


def _frame(wire: Wire, registers: Sequence[int]) -> bytes:
    pdu = ReadInputRegistersResponse(registers=list(registers))
    frames = FramerRTU if wire is Wire.RTU else FramerSocket
    return frames(DecodePDU(True)).encode(pdu.function_code.to_bytes(1, "big") + pdu.encode(), UNIT, 0)


def _text(registers: Sequence[int]) -> str:
    return " ".join(f"{word:04X}" for word in registers)


FRAMES = {wire: [_frame(wire, registers) for registers in REGISTERS] for wire in Wire}
TRUE_TEXTS = {_text(registers) for registers in REGISTERS}
_REPLIES: dict[str, ReplyFormat] = {}


def _reply(profile_id: str) -> ReplyFormat:
    if profile_id not in _REPLIES:
        reply = load_profile(profile_id).reply
        assert reply is not None
        _REPLIES[profile_id] = reply
    return _REPLIES[profile_id]
