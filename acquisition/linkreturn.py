"""Tells when links that were lost are back for good."""

from __future__ import annotations

from acquisition.live import LiveBuffer
from acquisition.openrig import OpenRig
from acquisition.rig import Role
from drivers.clock import Clock, seconds
from drivers.instrument import LinkState

BACK_S = 2.0
FRESH_S = 1.0


class LinkReturn:
    """Watches the links of a rig while a test is paused for them."""

    def __init__(self, rig: OpenRig, live: LiveBuffer, clock: Clock) -> None:
        """Nothing is waited for yet."""
        self._rig = rig
        self._live = live
        self._clock = clock
        self._since_ns: int | None = None

    def wait(self) -> None:
        """Begin to wait."""
        self._since_ns = None

    def stranger(self) -> str:
        """Return a sentence when another instrument than before answers, else an empty one."""
        wrong = [item for item in self._rig.statuses() if item.state is LinkState.WRONG_INSTRUMENT]
        return wrong[0].sentence if wrong else ""

    def back(self, now_ns: int) -> bool:
        """Tell whether every link has been there for a while, and the readings are fresh."""
        newest = self._live.newest_ns(Role.ENVELOPE)
        fresh = newest is not None and now_ns - newest < seconds(FRESH_S + self._clock.slack_s)
        if not fresh or any(status.state is not LinkState.LINKED for status in self._rig.statuses()):
            self._since_ns = None
        elif self._since_ns is None:
            self._since_ns = now_ns
        return self._since_ns is not None and now_ns - self._since_ns > seconds(BACK_S)
