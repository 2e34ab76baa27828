"""Gauges without a wire that are read as if they had one: `who` is answered with a name, `read` with values."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Protocol

from drivers.errors import LinkLost

COLUMNS = ("p1", "p2", "p3", "p4", "q1", "t1", "t2", "b1", "h1")
"""The channels of such a gauge, in the order of its rows; the profiles `by-hand` and `recorded-file` list the same."""
NOTHING = "-"


class Source(Protocol):
    """Where the values come from."""

    @property
    def name(self) -> str:
        """What it answers to `who`."""
        ...

    def open(self) -> None:
        """Get ready; raises one of `drivers.errors`."""
        ...

    def row(self) -> Mapping[str, float]:
        """Return what is new, by channel."""
        ...


class AnsweringTransport:
    """A transport whose other end is in this program."""

    def __init__(self, url: str, source: Source) -> None:
        """Nothing is opened."""
        self._url = url
        self._source = source
        self._open = False
        self._due = bytearray()

    @property
    def source(self) -> Source:
        """Where the values come from."""
        return self._source

    @property
    def url(self) -> str:
        """The port as the user wrote it."""
        return self._url

    def open(self) -> None:
        """Get the source ready."""
        self._source.open()
        self._open = True
        self._due.clear()

    def close(self) -> None:
        """Answer no more."""
        self._open = False

    def read(self, timeout_s: float) -> bytes:
        """Return the answers to what was written."""
        self._check()
        data = bytes(self._due)
        self._due.clear()
        return data

    def write(self, data: bytes) -> None:
        """Answer questions."""
        self._check()
        for question in data.split():
            if question == b"who":
                self._due += f"id={self._source.name}\n".encode("ascii", "replace")
            elif question == b"read":
                row = self._source.row()
                texts = (f"{row[name]!r}" if name in row else NOTHING for name in COLUMNS)
                self._due += (",".join(texts) + "\n").encode("ascii")

    def _check(self) -> None:
        if not self._open:
            raise LinkLost(f"{self._url} is not open.")
