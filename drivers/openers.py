"""One opener for every address of a rig file: ports, files of readings (`file:PATH`), a person's hand (`hand:NAME`)."""

from __future__ import annotations

from drivers.answering import AnsweringTransport
from drivers.byhand import HAND, Keyboard
from drivers.clock import Clock
from drivers.following import FollowingTransport
from drivers.recorded import Recording
from drivers.serialport import open_url
from drivers.transport import Transport

FILE = "file:"


class Openers:
    """Makes transports, and takes what a person types for those that are read by hand."""

    def __init__(self, clock: Clock) -> None:
        """Play files back on this clock."""
        self._clock = clock
        self._keyboards: dict[str, Keyboard] = {}

    def open(self, url: str) -> Transport:
        """Return the transport of an address; nothing is opened yet."""
        if url.startswith(FILE):
            return AnsweringTransport(url, Recording(url.removeprefix(FILE), self._clock))
        if url.startswith(HAND):
            return AnsweringTransport(url, self.keyboard(url))
        return open_url(url) if "://" in url else FollowingTransport(url)

    def keyboard(self, url: str) -> Keyboard:
        """Return the keyboard of an address `hand:NAME`: always the same one."""
        if url not in self._keyboards:
            self._keyboards[url] = Keyboard(url.removeprefix(HAND))
        return self._keyboards[url]
