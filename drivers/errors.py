"""What can go wrong on a wire.

    InstrumentError
    +-- LinkLost            the port is gone or failed: the link is closed and opened again after a while
    |   +-- PortMissing         there is no such port (adapter unplugged, other name, wrong address)
    |   +-- PortDenied          the operating system refuses the port to this user
    |   +-- PortBusy            another program holds the port, or it was only just released
    +-- NoReply             the port works, the instrument did not answer in time: the link stays open
    |   +-- WriteBlocked        the port does not take the bytes
    +-- BadFrame            bytes came that are no valid frame: counted, never read as a number
    +-- WrongInstrument     another instrument answers than the one that was there: a person has to decide
    ProfileError            an instrument profile that cannot be used (file, line, key, what is allowed)

Only LinkLost closes a port. Every message is one sentence for the person at the screen.
"""

from __future__ import annotations


class InstrumentError(Exception):
    """Anything that an instrument or its wire can do wrong."""


class LinkLost(InstrumentError):
    """The port failed or went away."""


class PortMissing(LinkLost):
    """There is no such port."""


class PortDenied(LinkLost):
    """The operating system refuses the port to this user."""


class PortBusy(LinkLost):
    """Another program holds the port."""


class NoReply(InstrumentError):
    """No answer in time."""


class WriteBlocked(NoReply):
    """The port does not take the bytes."""


class BadFrame(InstrumentError):
    """Bytes that are no valid frame."""


class WrongInstrument(InstrumentError):
    """The identity is not the expected one."""


class ProfileError(Exception):
    """A profile that cannot be used."""

    def __init__(self, file: str, line: int | None, key: str, allowed: str) -> None:
        """Name the file, the line if known, the key and what is allowed there."""
        where = file if line is None else f"{file}, line {line}"
        super().__init__(f"{where}: {key}: {allowed}")
        self.file = file
        self.line = line
        self.key = key
        self.allowed = allowed
