"""The way of new readings in the engine's loop: from the rig to the live buffer and to the run that is recorded."""

from __future__ import annotations

from acquisition.live import LiveBuffer
from acquisition.openrig import OpenRig
from acquisition.progress import TestProgress
from acquisition.rig import Role
from acquisition.taps import TapsAsOne


class Intake:
    """Takes what came since the last time; several outdoor taps become one envelope pressure in the live buffer."""

    def __init__(self, rig: OpenRig, live: LiveBuffer) -> None:
        """Take from a rig into a buffer."""
        self._rig = rig
        self._live = live
        self._taps = TapsAsOne()

    def take(self, progress: TestProgress | None) -> None:
        """Take all that is new; `progress` gets it too while a test runs."""
        batch = self._rig.take()
        for role, reading in self._taps.mean(batch):
            self._live.append(role, reading.monotonic_ns, reading.value)
        for role, reading in batch:
            if role is Role.ENVELOPE:
                self._live.append_first_tap(reading.monotonic_ns, reading.value)
        if progress is not None:
            progress.note(batch)
            for told_ns, fraction in self._rig.told():
                progress.fan(fraction, told_ns)
