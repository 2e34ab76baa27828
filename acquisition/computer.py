"""The computer that the test runs on: whether it slept, and whether its battery lasts."""

from __future__ import annotations

from dataclasses import dataclass

from acquisition.guard import EMPTY_CHARGE, Guard
from acquisition.sleep import Sleep, lasting_words
from drivers.clock import Clock


@dataclass(frozen=True, slots=True)
class Found:
    """Sentences on what was noticed at a look, empty for nothing."""

    slept: str = ""
    battery: str = ""


class Computer:
    """Looks at it once a round."""

    def __init__(self, guard: Guard, clock: Clock) -> None:
        """Begin now; the guard reads the battery."""
        self._guard = guard
        self._sleep = Sleep(clock)
        self._gap_s = 0.0
        self._told = False

    def look(self, now_ns: int) -> Found:
        """Return what is new."""
        slept_s = self._sleep.slept_s(now_ns)
        self._gap_s += slept_s
        slept = battery = ""
        if slept_s:
            slept = f"The computer slept for {lasting_words(slept_s)}, or its time was set; nothing was recorded."
        low = self._guard.low_battery
        if low and not self._told:
            battery = (
                "The battery of this computer is nearly empty: plug it in. "
                f"Below {100.0 * EMPTY_CHARGE:.0f} % the fan is stopped."
            )
        self._told = low
        return Found(slept, battery)

    def take_gap_s(self) -> float:
        """Return for how long it slept since this was asked last."""
        gap_s, self._gap_s = self._gap_s, 0.0
        return gap_s
