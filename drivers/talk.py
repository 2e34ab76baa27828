"""What a session expects of the instrument's side of it: requests, and somebody who understands the lines."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol


@dataclass(frozen=True, slots=True)
class Request:
    """A message to send; with a time-out when a reply has to come. `tag` is for whoever made it."""

    data: bytes
    timeout_s: float | None = None
    tag: str = ""


@dataclass(frozen=True, slots=True)
class Heard:
    """A line that came: the reply to `request` when there is one. `behind` lines came with it in the same moment."""

    line: str
    request: Request | None
    sent_ns: int
    now_ns: int
    behind: int = 0


@dataclass(frozen=True, slots=True)
class Manners:
    """How to treat the instrument at the other end.

    `settle_s` is what it needs after opening. After `ask_again_s` without an answer it is asked again who it is: a
    drive must not be kept running by being asked. `serial` is the number that must answer, empty for any.
    `start` is said after each opening, once it is known who is there; `keep_alive` again and again while it sends by
    itself, every `keep_alive_s`.
    """

    settle_s: float = 0.0
    ask_again_s: float = 0.5
    serial: str = ""
    start: tuple[bytes, ...] = ()
    keep_alive: bytes = b""
    keep_alive_s: float = 0.0


class Talk(Protocol):
    """What is said over a link once it is known who is there. Called by the owner of the port alone."""

    @property
    def silence_s(self) -> float | None:
        """How long a free-running instrument may be silent; None for one that only answers."""
        ...

    @property
    def complaint(self) -> str:
        """What is wrong with the instrument although its link is well, in one sentence, or nothing."""
        ...

    @property
    def skipped(self) -> int:
        """How many polls were left out because their time had passed."""
        ...

    def begin(self, now_ns: int, *, anew: bool) -> None:
        """It is known who is there: `anew` after the port was opened, else after a disturbance."""
        ...

    def lost(self) -> None:
        """The link has just been lost."""
        ...

    def next_request(self, now_ns: int) -> Request | None:
        """Return what to send now, None for nothing."""
        ...

    def urgent(self, now_ns: int) -> bytes | None:
        """Return what has to be sent even while the link is in doubt, None for nothing."""
        ...

    def understands(self, line: str) -> bool:
        """Tell whether a line is one of the instrument's usual ones."""
        ...

    def heard(self, heard: Heard) -> bool:
        """Take a line; false when it makes no sense."""
        ...

    def due_ns(self, now_ns: int) -> int:
        """Return when there will be something to send, or to look for."""
        ...
