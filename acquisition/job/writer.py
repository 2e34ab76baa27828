"""The one writer of a job file: a queue that anyone fills and nobody waits for, and a hosted loop that empties it."""

from __future__ import annotations

import sqlite3
import tempfile
import threading
from collections import deque
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TypeVar

from drivers.clock import NS_PER_S, Clock, Hosted, VirtualClock, seconds

SqlValue = str | int | float | bytes | None
T = TypeVar("T")

PERIOD_S = 0.1
COMMIT_S = 0.4
"""At least two commits a second, allowing for the period."""
RETRY_S = 1.0
BEHIND_S = 2.0
ROWS_AT_ONCE = 2000
"""Keeps one round of the loop short; what is left goes into the next."""


@dataclass(frozen=True, slots=True)
class _Entry:
    sql: str
    rows: Sequence[Sequence[SqlValue]]
    posted_ns: int


class Writer:
    """Owns the connection to the file. `post` may be called from any thread and returns at once.

    Entries are written in the order in which they were posted, each batch in one transaction that reaches the disk
    whole or not at all. While the disk does not take them they stay in memory, the alarm says so, and the writer tries
    again every second.
    """

    def __init__(self, connection: sqlite3.Connection, clock: Clock, path: Path) -> None:
        """Take over the connection; `start` begins to write."""
        self._connection = connection
        self._clock = clock
        if isinstance(clock, VirtualClock):
            # A test that is calculated can be calculated again: where the power fails, its last moments may be lost.
            connection.execute("PRAGMA synchronous = NORMAL")
        self._path = path
        self._lock = threading.RLock()
        self._queue: deque[_Entry] = deque()
        self._urgent = False
        self._last_commit_ns = clock.now_ns()
        self._retry_ns = clock.now_ns()
        self._saved_utc: datetime | None = None
        self._failure = ""
        self._hosted: Hosted | None = None

    def start(self) -> None:
        """Begin to write, in a hosted loop."""
        self._hosted = self._clock.host(self.pump, f"writer of {self._path.name}")

    def post(self, sql: str, rows: Sequence[Sequence[SqlValue]], *, urgent: bool = False) -> None:
        """Queue one statement for each of `rows`; `urgent` has it committed at the next round."""
        self._queue.append(_Entry(sql, rows, self._clock.now_ns()))
        if urgent:
            self._urgent = True

    def pump(self, now_ns: int) -> int:
        """Write what is due."""
        due = self._urgent or now_ns - self._last_commit_ns >= seconds(COMMIT_S)
        if self._queue and due and now_ns >= self._retry_ns:
            self._write_batch(now_ns)
        return now_ns + seconds(PERIOD_S)

    def flush(self) -> bool:
        """Write everything queued, in the calling thread; false when the disk does not take it."""
        with self._lock:
            while self._queue:
                if not self._write_batch(self._clock.now_ns()):
                    return False
        return True

    def read(self, query: Callable[[sqlite3.Connection], T]) -> T:
        """Write what is queued, then run `query` on the connection; raises `sqlite3.Error`."""
        with self._lock:
            self.flush()
            return query(self._connection)

    @property
    def saved_utc(self) -> datetime | None:
        """When data last reached the disk."""
        return self._saved_utc

    def alarm(self, now_ns: int) -> str:
        """Return a sentence when the data is not on the disk as it should be, else an empty text."""
        if self._hosted is not None and self._hosted.error is not None:
            return f"The writer of {self._path.name} has stopped ({self._hosted.error}): new data is in memory only."
        if self._failure:
            return f"The disk does not take {self._path.name} ({self._failure}): new data is in memory only. Make room."
        try:
            behind_s = (now_ns - self._queue[0].posted_ns) / NS_PER_S
        except IndexError:
            return ""
        if behind_s > BEHIND_S + self._clock.slack_s:
            return f"The disk is slow: {self._path.name} is {behind_s:.0f} s behind."
        return ""

    def close(self, rescue_folder: Path | None = None) -> str:
        """Write the rest and close the file. Where the disk does not take it, save a whole copy elsewhere and say so.

        Returns an empty text when everything is in the file.
        """
        if self._hosted is not None:
            self._hosted.stop()
        with self._lock:
            sentence = "" if self.flush() else self._rescue(rescue_folder or Path(tempfile.gettempdir()))
            self._connection.close()
        return sentence

    def _write_batch(self, now_ns: int) -> bool:
        with self._lock:
            batch = self._next_batch()
            try:
                _execute(self._connection, batch)
            except (sqlite3.Error, OSError) as error:
                self._failure = str(error)
                self._retry_ns = now_ns + seconds(RETRY_S)
                return False
            for _ in batch:
                self._queue.popleft()
            self._failure = ""
            self._saved_utc = self._clock.utc()
            self._last_commit_ns = now_ns
            self._urgent = self._urgent and bool(self._queue)
            return True

    def _next_batch(self) -> list[_Entry]:
        batch: list[_Entry] = []
        rows = 0
        for index in range(len(self._queue)):
            entry = self._queue[index]
            if batch and rows + len(entry.rows) > ROWS_AT_ONCE:
                break
            batch.append(entry)
            rows += len(entry.rows)
        return batch

    def _rescue(self, folder: Path) -> str:
        """Copy the file with the queued entries to `folder`."""
        stamp = self._clock.utc().strftime("%Y%m%dT%H%M%SZ")
        target = folder / f"{self._path.stem}-rescued-{stamp}{self._path.suffix}"
        rows = sum(len(entry.rows) for entry in self._queue)
        lost = f"The disk did not take the last {rows} entries of {self._path.name} ({self._failure})"
        try:
            copy = sqlite3.connect(target, isolation_level=None)
            try:
                self._connection.backup(copy)
                _execute(copy, list(self._queue))
            finally:
                copy.close()
        except (sqlite3.Error, OSError) as error:
            return f"{lost}, and a copy to {target} failed too ({error}): they are lost."
        return f"{lost}: the whole job with them is in {target}."


def _execute(connection: sqlite3.Connection, batch: Sequence[_Entry]) -> None:
    """Write a batch in one transaction; raises `sqlite3.Error` with nothing of it written."""
    connection.execute("BEGIN IMMEDIATE")
    try:
        for entry in batch:
            connection.executemany(entry.sql, entry.rows)
        connection.execute("COMMIT")
    except BaseException:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
        raise
