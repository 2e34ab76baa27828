"""What a session expects of a framer: bytes in, whole replies out as lines of text, whatever they were on the wire."""

from __future__ import annotations

from typing import Protocol


class Framer(Protocol):
    """Cuts a byte stream into lines; what is none is counted in `bad` and never handed on."""

    bad: int

    @property
    def proves(self) -> bool:
        """Whether a line proves by itself that it is whole."""
        ...

    @property
    def pending(self) -> int:
        """Number of bytes that wait for the rest of their line."""
        ...

    def resync(self) -> None:
        """Forget the buffer; the next byte may be anywhere."""
        ...

    def expect_reply(self) -> None:
        """The next byte begins a line."""
        ...

    def feed(self, data: bytes) -> list[str]:
        """Take bytes and return the lines that they complete."""
        ...
