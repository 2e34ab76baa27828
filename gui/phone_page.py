"""The page on phones, switched on and off in the window. Knows no Qt."""

from __future__ import annotations

from collections.abc import Callable

from acquisition.phone import HelperView, PhoneServer
from acquisition.phone.numbers import helper_numbers
from acquisition.phone.page import page
from acquisition.sealing.hold import HoldLook
from acquisition.snapshot import Severity, Snapshot
from analysis.errors import InvalidInput
from analysis.units import Display
from drivers.clock import Clock, WallClock
from gui.viewmodels.errors import sentence
from gui.viewmodels.retold import retold
from gui.words import say, spoken

Tell = Callable[[Severity, str], None]


class PhonePage:
    """Off by default; ends with the window, with the job, or after four hours."""

    def __init__(self, tell: Tell, clock: Clock | None = None) -> None:
        """Serve nothing yet. Ages are told on the clock of the wall: phones know no other."""
        self._tell = tell
        self._clock = clock or WallClock()
        self._server: PhoneServer | None = None
        self._view = HelperView(self._clock)
        self._shown: tuple[int, int] = (0, 0)

    @property
    def link(self) -> str:
        """The link for the phone, empty while the page is off."""
        return self._server.link if self._server is not None else ""

    @property
    def phones(self) -> int:
        """How many phones are looking."""
        return self._server.phones if self._server is not None else 0

    def start(self, host: str, decimal_mark: str) -> None:
        """Begin to serve at a private address of this machine, in the language of the window."""
        self.stop()
        self._view = HelperView(self._clock)
        try:
            self._server = PhoneServer(self._view, self._clock, host, page(retold, spoken().value, decimal_mark))
        except InvalidInput as error:
            self._tell(Severity.ATTENTION, sentence(error))

    def stop(self) -> None:
        """Serve no more."""
        if self._server is not None:
            self._server.stop()
            self._server = None

    def tend(self, shown: Snapshot | None, look: HoldLook | None, display: Display) -> bool:
        """Show a moment on the phones; return whether something has changed that the window shows."""
        if self._server is not None and self._server.ended:
            self.stop()
            self._tell(Severity.NOTE, say("The page for phones has ended after four hours."))
            return True
        stamp = (0 if shown is None else shown.now_ns, self.phones)
        changed = stamp[1] != self._shown[1]
        if self._server is not None and shown is not None and stamp[0] != self._shown[0]:
            self._view.show(helper_numbers(shown, display, look, retold))
        self._shown = stamp
        return changed
