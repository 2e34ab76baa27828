"""What the rest of the program sees of an instrument: roles, and the state of its link."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Protocol, runtime_checkable

from drivers.reading import Reading


class LinkState(StrEnum):
    """Where a link is between closed and linked."""

    CLOSED = "closed"
    OPENING = "opening"
    IDENTIFYING = "identifying"
    LINKED = "linked"
    LOST = "lost"
    WRONG_INSTRUMENT = "wrong instrument"


@dataclass(frozen=True, slots=True)
class LinkStatus:
    """A snapshot of one link, safe to hand between threads.

    `sentence` says in plain words what is wrong, or is empty. `rate_hz` is measured over the last seconds; `age_s` is
    the age of the newest reading (or accepted command of a drive), None before the first. `skipped_polls` counts the
    moments at which a polled gauge should have been asked and was not, because the machine or the gauge was late.
    """

    name: str
    port: str
    state: LinkState
    identity: str = ""
    sentence: str = ""
    rate_hz: float = 0.0
    age_s: float | None = None
    round_trip_s: float | None = None
    readings: int = 0
    bad_frames: int = 0
    no_replies: int = 0
    reconnects: int = 0
    skipped_polls: int = 0


@runtime_checkable
class Readable(Protocol):
    """Delivers readings."""

    def take(self) -> Sequence[Reading]:
        """Return the readings that came since the last call, oldest first; never blocks, never raises."""
        ...


@runtime_checkable
class Stoppable(Protocol):
    """Can be brought to a state in which it harms nobody."""

    def to_safe_state(self) -> None:
        """Ask for the safe state of the profile, ahead of anything queued; never raises, never blocks."""
        ...


@runtime_checkable
class Settable(Stoppable, Protocol):
    """Takes a set value."""

    def set(self, value: float) -> None:
        """Ask for a value (fan speed 0..1); the newest one wins; never blocks."""
        ...


class Linked(Protocol):
    """Has a link that lives from `start` to `close`, and may be lost and found again in between."""

    @property
    def name(self) -> str:
        """The name in the rig file."""
        ...

    def start(self) -> None:
        """Begin to open, identify and talk, in a hosted loop of its own."""
        ...

    def status(self) -> LinkStatus:
        """Return a snapshot of the link."""
        ...

    def close(self) -> None:
        """Send the safe state if it was ever commanded, close the port, end the loop."""
        ...
