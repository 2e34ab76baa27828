"""The records of an instrument profile: what is known of an instrument once its file has been read."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from drivers.framing.fields import ReplyFormat
from drivers.framing.lines import Checksum
from drivers.framing.modbus import Bus

Kind = Literal["gauge", "drive"]
Place = Literal["port", "file", "hand"]
Protocol = Literal["lines", "scpi", "modbus"]
DIRECTIONS = ("depressurize", "pressurize")


@dataclass(frozen=True, slots=True)
class LinkSettings:
    """How the port is opened, how long the instrument needs afterwards, and how messages end.

    Replies end in the last byte of `terminator`; a CR or LF beside it is no part of a line.
    """

    baud: int = 9600
    data_bits: int = 8
    parity: str = "none"
    stop_bits: int = 1
    dtr: bool = True
    rts: bool = True
    settle_s: float = 0.0
    terminator: str = "\n"


@dataclass(frozen=True, slots=True)
class Identity:
    """What is asked to learn who is there (empty: its lines alone tell); `pattern` has a group `serial`."""

    query: bytes
    pattern: re.Pattern[str]
    timeout_s: float


@dataclass(frozen=True, slots=True)
class ChannelSpec:
    """One channel; limits, resolution and accuracy in SI units. `value_si = raw * factor + offset`.

    The accuracy is `accuracy` plus `accuracy_percent` of the value, as the maker of the instrument states it.
    """

    name: str
    quantity: str
    unit: str
    factor: float
    offset: float
    low: float
    high: float
    resolution: float
    accuracy: float
    accuracy_percent: float


@dataclass(frozen=True, slots=True)
class Poll:
    """A polled gauge: what is asked, how often, how long to wait for the answer, over what time it averages."""

    query: bytes
    rate_hz: float
    timeout_s: float
    averaging_s: float = 0.0


@dataclass(frozen=True, slots=True)
class Stream:
    """A free-running gauge: how often it sends, after what silence it is asked who it is, over what it averages."""

    rate_hz: float
    silence_s: float
    averaging_s: float = 0.0


@dataclass(frozen=True, slots=True)
class Zeroing:
    """How a gauge is zeroed, and how long it is left alone afterwards."""

    command: bytes
    wait_s: float


@dataclass(frozen=True, slots=True)
class Upkeep:
    """What a gauge has to be told after each opening, and again and again lest it stop sending; none is answered."""

    start: tuple[bytes, ...] = ()
    keep_alive: bytes = b""
    every_s: float = 0.0


@dataclass(frozen=True, slots=True)
class Confirmed:
    """A message whose whole reply has to be `reply`."""

    message: bytes
    reply: str


@dataclass(frozen=True, slots=True)
class DriveSpec:
    """A fan drive.

    `set_format` has one field `{speed}` that takes the speed times `full`; the reply to it and to `safe` is the speed
    that the drive took over, in the same scale, written as `reply` says: a form of fixed length protects a lone number
    from a lost byte. Hearing nothing for `communication_timeout_s` the drive stops by
    itself; `start` tells it so. `directions` is empty for a fan that is turned by hand.
    """

    set_format: str
    encode: Callable[[str], bytes]
    full: float
    safe: bytes
    start: Confirmed | None
    timeout_s: float
    communication_timeout_s: float
    directions: tuple[tuple[str, Confirmed], ...]
    reply: re.Pattern[str] | None = None

    def set_message(self, speed: float) -> bytes:
        """Return the message for a speed 0..1."""
        return self.encode(self.set_format.format(speed=speed * self.full))


@dataclass(frozen=True, slots=True)
class Profile:
    """An instrument as the program knows it. Of `poll`, `stream` and `drive` exactly one is there; `bus` for Modbus.

    `place` says where it is: at a port, in a file of readings, or in the hands of a person who types them.
    """

    id: str
    title: str
    kind: Kind
    protocol: Protocol
    link: LinkSettings
    identity: Identity
    checksum: Checksum = Checksum.NONE
    channels: tuple[ChannelSpec, ...] = ()
    reply: ReplyFormat | None = None
    poll: Poll | None = None
    stream: Stream | None = None
    zeroing: Zeroing | None = None
    drive: DriveSpec | None = None
    bus: Bus | None = None
    place: Place = "port"
    upkeep: Upkeep = Upkeep()

    @property
    def rate_hz(self) -> float:
        """How often a gauge gives readings, 0 for a drive."""
        source = self.poll or self.stream
        return 0.0 if source is None else source.rate_hz

    @property
    def averaging_s(self) -> float:
        """Over what time a gauge averages before it gives a value, 0 for a drive."""
        source = self.poll or self.stream
        return 0.0 if source is None else source.averaging_s
