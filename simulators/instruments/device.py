"""What a wire sees of a simulated instrument."""

from __future__ import annotations

from typing import Protocol


class Device(Protocol):
    """A simulated instrument behind any wire; may be called from the thread of the wire."""

    @property
    def serial(self) -> str:
        """Its serial number, as the rig file names it."""
        ...

    def receive(self, data: bytes, now_ns: int) -> None:
        """Take bytes off the wire, in pieces of any size; never raises, whatever they are."""
        ...

    def send(self, now_ns: int) -> bytes:
        """Return the bytes that have gone out since the last call."""
        ...

    def next_ns(self) -> int | None:
        """Return when `send` next has something unless bytes come before, None when it then never has."""
        ...
