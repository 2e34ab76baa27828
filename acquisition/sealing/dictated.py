"""Marks that are typed at a terminal while a pressure is held, one a line, and what is said there of each seal.

A line may begin with the seconds of the hold at which it counts: `150 s 2`. So a file can stand for a person.
"""

from __future__ import annotations

import queue
import sys
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import TextIO

from acquisition.engine import Engine
from acquisition.job import Job
from acquisition.sealing.hold import HoldLook
from acquisition.sealing.leaks import Drop
from acquisition.sealing.session import UNKNOWN_PART, HoldSession
from acquisition.snapshot import Snapshot
from acquisition.told.texts import plus_minus
from analysis.errors import InvalidInput
from analysis.units import Display, Quantity, unit_symbol
from drivers.clock import Clock, seconds

WORDS = (
    "s [N] sealing starts, d done, n TEXT note, l [PART] new leak, m count from here, z zero-flow pressure again, "
    "u take back"
)
LOOK_EVERY_NS = seconds(1.0)

Watch = Callable[[Snapshot], None]


@dataclass(frozen=True, slots=True)
class Line:
    """What was typed; `at_s` is when it counts, None: at once."""

    at_s: float | None
    key: str
    rest: str


def parsed(text: str) -> Line | None:
    """Return a line, None for an empty one. Raises `InvalidInput`."""
    words = text.split()
    if not words:
        return None
    at_s = None
    if words[0].replace(".", "", 1).isdecimal():
        at_s, words = float(words[0]), words[1:]
    key = words[0].lower() if words else ""
    if key not in ("s", "d", "n", "l", "m", "z", "u"):
        raise InvalidInput("mark", text.strip(), f"one of these is needed: {WORDS}")
    return Line(at_s, key, " ".join(words[1:]))


class Dictated:
    """Takes lines and does what they say, once a pressure is held; tells what each seal brought."""

    def __init__(self, session: HoldSession, source: TextIO, out: TextIO, display: Display) -> None:
        """Begin to read: of a file or pipe everything at once, of a terminal as it is typed."""
        self._session = session
        self._out = out
        self._display = display
        self._lines: queue.SimpleQueue[str] = queue.SimpleQueue()
        self._waiting: list[Line] = []
        self._told: dict[int, Drop] = session.register.drops
        self._looked_ns = 0
        self.look: HoldLook | None = None
        if source.isatty():
            threading.Thread(target=self._read, args=(source,), name="marks", daemon=True).start()
        else:
            self._read(source)

    def watch(self, shown: Snapshot) -> None:
        """Take the lines that are due, and look once a second."""
        while not self._lines.empty():
            self._taken(self._lines.get())
        if shown.held is None:
            return
        due = [line for line in self._waiting if line.at_s is None or line.at_s <= shown.held.seconds]
        for line in due:
            self._waiting.remove(line)
            self._do(line)
        if shown.now_ns - self._looked_ns >= LOOK_EVERY_NS:
            self._looked_ns = shown.now_ns
            self.look = self._session.look(shown) or self.look
            self._tell()

    def close(self) -> None:
        """Store and tell what the last seals brought."""
        self._session.close(self.look)
        self._tell()

    def _read(self, source: TextIO) -> None:
        for text in source:
            self._lines.put(text)

    def _taken(self, text: str) -> None:
        try:
            line = parsed(text)
        except InvalidInput as error:
            self._say(str(error))
            return
        if line is not None:
            self._waiting.append(line)

    def _do(self, line: Line) -> None:
        session = self._session
        try:
            match line.key:
                case "s":
                    number = session.starts(_number(line.rest))
                    self._say(f"Sealing of leak {number} starts.")
                case "d":
                    self._say(f"Sealing of leak {session.done()} is done; in 30 s it is told what it brought.")
                case "n":
                    session.note(line.rest)
                case "l":
                    self._say(f"Leak {session.new_leak(line.rest or UNKNOWN_PART)} is noted.")
                case "m":
                    session.count_from_here()
                case "z":
                    self._session.zero_again()
                    self._say("The zero-flow pressure is read again, then the pressure is held on.")
                case "u":
                    self._say("Taken back." if session.undo() else "There is nothing to take back.")
        except InvalidInput as error:
            self._say(str(error))

    def _tell(self) -> None:
        for number, drop in self._session.register.drops.items():
            if self._told.get(number) != drop:
                self._told[number] = drop
                unit = unit_symbol(Quantity.FLOW, self._display)
                brought = plus_minus(drop.difference_m3_h, Quantity.FLOW, self._display)
                self._say(f"Leak {number}: {brought} {unit} at {drop.reference_pa:g} Pa, {drop.sureness}.")

    def _say(self, words: str) -> None:
        print(f"\nairseam: {words}", file=self._out)


@contextmanager
def dictated(job: Job, engine: Engine, clock: Clock, display: Display, watch: Watch) -> Iterator[Watch]:
    """Take marks from standard input while a pressure is held; yields `watch` that looks each moment too."""
    marks = Dictated(HoldSession(job, engine, clock), sys.stdin, sys.stderr, display)

    def look(shown: Snapshot) -> None:
        watch(shown)
        marks.watch(shown)

    yield look
    marks.close()


def _number(text: str) -> int | None:
    if not text:
        return None
    if not text.isdecimal():
        raise InvalidInput("leak", text, "its number is needed, or nothing for one that is not listed yet")
    return int(text)
