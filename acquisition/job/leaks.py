"""The leak register of a job: leaks, marks and measured drops, in memory and in the file."""

from __future__ import annotations

import sqlite3
import threading
from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum

from acquisition.job.encoding import utc_from, utc_text
from acquisition.job.writer import Writer
from acquisition.sealing.leaks import Drop, Leak, LeakStatus, drop_from, drop_text, leak_from, leak_text
from analysis.errors import InvalidInput


class SealingMarkKind(StrEnum):
    """What a key says while the pressure is held."""

    STARTS = "sealing starts"
    DONE = "sealing done"
    NOTE = "note"
    NEW_LEAK = "new leak"


@dataclass(frozen=True, slots=True)
class SealingMark:
    """A mark; `leak` is the number of the leak it is about, None for none. `t_ns` is of the program's clock."""

    utc: datetime
    t_ns: int
    kind: SealingMarkKind
    leak: int | None = None
    text: str = ""


@dataclass(slots=True)
class RegisterContents:
    """All of it: the leaks by number as they are now, marks in order, the newest drop of each leak."""

    leaks: dict[int, Leak] = field(default_factory=dict)
    marks: list[SealingMark] = field(default_factory=list)
    drops: dict[int, Drop] = field(default_factory=dict)


class LeakRegister:
    """Keeps `RegisterContents` and the file in step. Any thread may call it; nothing waits for the disk."""

    def __init__(self, contents: RegisterContents, writer: Writer) -> None:
        """Take over what was read from the file."""
        self._contents = contents
        self._writer = writer
        self._lock = threading.RLock()

    @property
    def leaks(self) -> dict[int, Leak]:
        """The leaks by their number, as they are now, without those that were entered by mistake."""
        with self._lock:
            kept = self._contents.leaks.items()
            return {number: leak for number, leak in kept if leak.status is not LeakStatus.WITHDRAWN}

    @property
    def marks(self) -> tuple[SealingMark, ...]:
        """All marks, oldest first."""
        with self._lock:
            return tuple(self._contents.marks)

    @property
    def drops(self) -> dict[int, Drop]:
        """What sealing brought, by the number of the leak."""
        with self._lock:
            return dict(self._contents.drops)

    def add(self, leak: Leak, utc: datetime) -> int:
        """Add a leak and return its number."""
        with self._lock:
            number = max(self._contents.leaks, default=0) + 1
            self._keep(number, leak, utc)
            return number

    def change(self, number: int, leak: Leak, utc: datetime) -> None:
        """Say what is so now of a leak; what was said before stays in the file. Raises `InvalidInput`."""
        with self._lock:
            if leak != self._known(number):
                self._keep(number, leak, utc)

    def mark(self, mark: SealingMark) -> None:
        """Add a mark; raises `InvalidInput` where it is about a leak that is not there."""
        with self._lock:
            if mark.leak is not None:
                self._known(mark.leak)
            self._contents.marks.append(mark)
            row = (utc_text(mark.utc), mark.t_ns, mark.kind.value, mark.leak, mark.text)
            sql = "INSERT INTO sealing_mark (utc, t_ns, kind, leak, text) VALUES (?, ?, ?, ?, ?)"
            self._writer.post(sql, (row,), urgent=True)

    def take_back(self, mark: SealingMark, utc: datetime) -> None:
        """Let a mark that was set by mistake no longer count; it stays in the file."""
        with self._lock:
            if mark not in self._contents.marks:
                return
            self._contents.marks.remove(mark)
            row = (utc_text(utc), utc_text(mark.utc), mark.t_ns, mark.kind.value)
            sql = "INSERT INTO sealing_mark_taken_back (utc, mark_utc, mark_t_ns, mark_kind) VALUES (?, ?, ?, ?)"
            self._writer.post(sql, (row,), urgent=True)

    def measured(self, number: int, drop: Drop, utc: datetime) -> None:
        """Keep what sealing a leak brought; raises `InvalidInput` where the leak is not there."""
        with self._lock:
            self._known(number)
            text = drop_text(drop)
            self._contents.drops[number] = drop
            row = (utc_text(utc), number, text)
            self._writer.post("INSERT INTO leak_drop (utc, leak, document) VALUES (?, ?, ?)", (row,), urgent=True)

    def _known(self, number: int) -> Leak:
        if number not in self._contents.leaks:
            known = ", ".join(map(str, self._contents.leaks)) or "none yet"
            raise InvalidInput("leak", number, f"the number of a leak is needed, there are: {known}")
        return self._contents.leaks[number]

    def _keep(self, number: int, leak: Leak, utc: datetime) -> None:
        text = leak_text(leak)
        self._contents.leaks[number] = leak
        row = (number, utc_text(utc), text)
        self._writer.post("INSERT INTO leak (number, utc, document) VALUES (?, ?, ?)", (row,), urgent=True)


def read_register(db: sqlite3.Connection) -> RegisterContents:
    """Read the register; raises `InvalidInput` or `sqlite3.Error`."""
    # Later rows of a number take the place of earlier ones.
    return RegisterContents(
        leaks={number: leak_from(text) for number, text in db.execute("SELECT number, document FROM leak ORDER BY id")},
        marks=[
            SealingMark(utc_from(utc), t_ns, SealingMarkKind(kind), leak, text)
            for utc, t_ns, kind, leak, text in db.execute("SELECT utc, t_ns, kind, leak, text FROM sealing_mark_now")
        ],
        drops={
            number: drop_from(text) for number, text in db.execute("SELECT leak, document FROM leak_drop ORDER BY id")
        },
    )
