"""Bytes to and from an instrument. Everything above this module works on bytes and never sees a port."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol


class Transport(Protocol):
    """A byte stream that can be opened, lost and opened again. Exactly one thread uses it.

    Constructing does not open. Every failure of the operating system comes out as one of the errors of
    `drivers.errors`; after `LinkLost` the owner closes the transport.
    """

    @property
    def url(self) -> str:
        """The port as the user wrote it."""
        ...

    def open(self) -> None:
        """Open the port; raises `PortMissing`, `PortDenied`, `PortBusy` or `LinkLost`."""
        ...

    def close(self) -> None:
        """Close the port; never raises, may be called twice."""
        ...

    def read(self, timeout_s: float) -> bytes:
        """Return what has arrived, waiting at most `timeout_s` real seconds for the first byte; raises `LinkLost`."""
        ...

    def write(self, data: bytes) -> None:
        """Send all bytes; raises `LinkLost` or `WriteBlocked`."""
        ...


TransportOpener = Callable[[str], Transport]
"""Makes the transport for a port address such as `COM3`, `/dev/ttyUSB0` or `socket://localhost:4001`; does not open."""
