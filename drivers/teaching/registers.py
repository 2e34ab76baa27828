"""Teaching a Modbus instrument: read all its registers, see which of them could be the number on its display.

Only reading requests are sent. A hosted pump owns the port meanwhile. The candidates and the profile are pure.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace

from drivers.clock import Clock, seconds
from drivers.device import Configurable
from drivers.errors import ProfileError
from drivers.framing.modbus import MOST_REGISTERS, Bus, ModbusFramer, Register, Words
from drivers.framing.scpi import decimal
from drivers.spec import LinkSettings, Profile
from drivers.teaching.channels import Meaning, channel_lines, checked, heading, quoted
from drivers.teaching.study import Study
from drivers.transport import Transport

READ_SLICE_S = 0.02
LOOK_NS = seconds(0.005)
REPLY_S = 0.4
BLOCK = 16
SILENT_BLOCKS = 3
"""So many blocks in a row without any answer: nobody is there."""
SPACES = ("input", "holding")
SCALES = (1.0, 0.1, 0.01, 0.001, 10.0, 100.0)
MOVED = 5e-4
"""Share by which a large number may have moved between a look at the display and the scan."""
SMALLEST, LARGEST = 1e-4, 1e6


@dataclass(frozen=True, slots=True)
class Scan:
    """How far a scan has come: registers by number, for each space that was asked."""

    registers: Mapping[str, Mapping[int, int]]
    share: float
    done: bool
    sentence: str


class RegisterScan(Study[Scan]):
    """Reads registers block by block."""

    def __init__(
        self,
        transport: Transport,
        clock: Clock,
        bus: Bus,
        link: LinkSettings,
        *,
        spaces: Sequence[str] = SPACES,
        first: int = 0,
        count: int = 256,
    ) -> None:
        """Prepare to read `count` registers from `first` in each of the spaces "input" and "holding"."""
        if isinstance(transport, Configurable):
            transport.configure(link)
        super().__init__(transport, clock, "scan", LOOK_NS, Scan({}, 0.0, False, f"{transport.url} is not read yet."))
        self._bus = bus
        self._framer = ModbusFramer(bus)
        self._tasks = [
            (space, at, min(BLOCK, first + count - at)) for space in spaces for at in range(first, first + count, BLOCK)
        ]
        self._total = len(self._tasks)
        self._found: dict[str, dict[int, int]] = {space: {} for space in spaces}
        self._asked_ns: int | None = None
        self._opened = False
        self._answered = False
        self._silent = 0

    def _step(self, now_ns: int) -> None:
        if not self._opened:
            self._transport.open()
            self._opened = True
        if not self._tasks:
            self._end(self._conclusion())
            return
        space, at, count = self._tasks[0]
        if self._asked_ns is None:
            self._transport.read(0.0)
            self._framer.expect_reply()
            self._transport.write(self._bus.frame(f"read {space} {at} {count}"))
            self._asked_ns = self._clock.now_ns()
            return
        lines = self._framer.feed(self._transport.read(READ_SLICE_S))
        if lines:
            self._take(lines[0])
        elif now_ns - self._asked_ns > seconds(REPLY_S + self._clock.slack_s):
            self._silence()

    def _take(self, line: str) -> None:
        """Note the registers of a block; of one that was refused ask for each register alone."""
        space, at, count = self._tasks.pop(0)
        self._asked_ns = None
        self._answered = True
        words = line.split(" ")
        if line.startswith("exception"):
            if count > 1:
                self._tasks[:0] = [(space, number, 1) for number in range(at, at + count)]
        elif len(words) == count:
            self._found[space].update({at + n: int(word, 16) for n, word in enumerate(words)})
        self._publish()

    def _silence(self) -> None:
        self._tasks.pop(0)
        self._asked_ns = None
        self._silent += 1
        if not self._answered and self._silent >= SILENT_BLOCKS:
            self._end(
                f"Nobody answers on {self._transport.url} as unit {self._bus.unit}: "
                "look at speed, parity, the unit's number and the two wires."
            )
            return
        self._publish()

    def _publish(self) -> None:
        waiting = sum(count for _, _, count in self._tasks)
        share = 1.0 - waiting / max(self._total * BLOCK, 1)
        found = {space: dict(registers) for space, registers in self._found.items()}
        self._progress = replace(self._progress, registers=found, share=max(share, 0.0), sentence=self._conclusion())

    def _conclusion(self) -> str:
        parts = [f"{len(registers)} {space} registers" for space, registers in self._found.items()]
        return f"{' and '.join(parts)} were read from unit {self._bus.unit}."

    def _end(self, sentence: str) -> None:
        self._transport.close()
        found = {space: dict(registers) for space, registers in self._found.items()}
        self._progress = Scan(found, 1.0, True, sentence)


@dataclass(frozen=True, slots=True)
class Candidate:
    """A way to read a number at a register: its `value` is what the words say times `scale`."""

    space: str
    register: int
    words: Words
    low_first: bool
    scale: float
    value: float


def candidates(registers: Mapping[int, int], space: str, shown: str = "") -> tuple[Candidate, ...]:
    """Return how the registers could be read, the likeliest first.

    With `shown`, the number on the instrument's display as text, only readings that come as near to it as its last
    digit allows (three of it, or half a thousandth: numbers move); without, all of a plausible size, unscaled.
    """
    target = decimal(shown.strip().replace(",", ".").replace("−", "-")) if shown.strip() else None
    found = []
    for register, words, low_first in _ways(registers):
        block = [registers[register + n] for n in range(words.registers)]
        raw = decimal(Register(0, words, low_first).text(block))
        if raw is None or not math.isfinite(raw):
            continue
        for scale in SCALES if target is not None else (1.0,):
            value = raw * scale
            if _fits(value, target, shown):
                found.append(Candidate(space, register, words, low_first, scale, value))
    return tuple(sorted(found, key=lambda item: _doubt(item, target)))


def _ways(registers: Mapping[int, int]) -> list[tuple[int, Words, bool]]:
    ways = []
    for register in sorted(registers):
        for words in Words:
            if words.registers == 2 and register + 1 not in registers:
                continue
            ways += [(register, words, low) for low in ((False, True) if words.registers == 2 else (False,))]
    return ways


def _fits(value: float, target: float | None, shown: str) -> bool:
    if target is None:
        return SMALLEST <= abs(value) <= LARGEST
    decimals = len(shown.strip().replace(",", ".").partition(".")[2])
    return abs(value - target) <= max(3.0 * 10.0**-decimals, MOVED * abs(target)) and (value != 0.0 or target == 0.0)


def _doubt(item: Candidate, target: float | None) -> tuple[float, ...]:
    """Return what makes a candidate less likely, the weightiest first."""
    simple = (Words.FLOAT32, Words.INT16, Words.UINT16, Words.INT32, Words.UINT32).index(item.words)
    # A whole number far from what is shown can be scaled to it by chance; a float that fits hardly can.
    odd_float = item.words is Words.FLOAT32 and item.scale != 1.0
    off = 0.0 if target is None else abs(item.value - target)
    return (float(odd_float), float(simple), float(item.low_first), float(SCALES.index(item.scale)), off, item.register)


@dataclass(frozen=True, slots=True)
class RegisterLesson:
    """What was pointed at: candidates and what they are. All are read by one request, so they stand near each other."""

    id: str
    title: str
    bus: Bus
    picks: tuple[tuple[Candidate, Meaning], ...]
    link: LinkSettings = field(default_factory=lambda: LinkSettings(baud=19_200, parity="even"))
    rate_hz: float = 10.0


def teach_registers(lesson: RegisterLesson) -> tuple[str, Profile]:
    """Return the profile of a Modbus gauge as text and as read; raises `ProfileError` with what is missing.

    The scale of a candidate and that of its meaning are multiplied.
    """
    file = f"{lesson.id}.toml"
    if not lesson.picks:
        raise ProfileError(file, None, "channel", "point at one register at least")
    if len({(pick.space, pick.low_first) for pick, _ in lesson.picks if pick.words.registers == 2}) > 1:
        raise ProfileError(file, None, "reply.order", "all numbers of two registers have to be in one order")
    if len({pick.space for pick, _ in lesson.picks}) > 1:
        raise ProfileError(file, None, "poll.query", "all registers have to be input or all holding registers")
    first = min(pick.register for pick, _ in lesson.picks)
    count = max(pick.register + pick.words.registers for pick, _ in lesson.picks) - first
    if count > MOST_REGISTERS:
        allowed = f"at most {MOST_REGISTERS} registers are read at once, not {count}"
        raise ProfileError(file, None, "poll.query", allowed)
    query = f"read {lesson.picks[0][0].space} {first} {count}"
    low_first = any(pick.low_first for pick, _ in lesson.picks)
    lines = heading(lesson.id, lesson.title, "modbus", lesson.link)
    lines += ["", "[modbus]", f"wire = {quoted(lesson.bus.wire)}", f"unit = {lesson.bus.unit}"]
    lines += ["", "[identity]", "# It has no name to ask for: whoever answers with as many registers is taken for it."]
    lines += [f"query = {quoted(query)}", f"pattern = {quoted(_blocks(count) + '(?P<serial>)')}", "timeout_s = 1.0"]
    lines += ["", "[poll]", f"query = {quoted(query)}", f"rate_hz = {lesson.rate_hz!r}", "timeout_s = 0.3"]
    lines += ["", "[reply]", 'layout = "registers"', f'order = "{"low-first" if low_first else "high-first"}"']
    lines += ["", "[reply.registers]"]
    lines += [f'{meaning.name} = "{pick.register - first} {pick.words}"' for pick, meaning in lesson.picks]
    for pick, meaning in lesson.picks:
        step = 1e-3 if pick.words is Words.FLOAT32 else 1.0
        lines += channel_lines(replace(meaning, scale=meaning.scale * pick.scale), step)
    return checked(lines, lesson.id)


def _blocks(count: int) -> str:
    word = "[0-9A-F]{4}"
    return word if count == 1 else f"{word}(?: {word}){{{count - 1}}}"
