"""Whether the computer slept: its monotonic clock then stood still, and the time of day went on."""

from __future__ import annotations

from datetime import datetime

from drivers.clock import NS_PER_S, Clock

LEAST_S = 3.0
"""A smaller jump is the time of day being set right, or a busy machine."""


class Sleep:
    """Compares the two clocks from one look to the next."""

    def __init__(self, clock: Clock) -> None:
        """Begin now."""
        self._clock = clock
        self._last: tuple[int, datetime] | None = None

    def slept_s(self, now_ns: int) -> float:
        """Return for how long the computer slept since the last look, 0 where it did not."""
        utc, last = self._clock.utc(), self._last
        self._last = (now_ns, utc)
        if last is None:
            return 0.0
        jump_s = (utc - last[1]).total_seconds() - (now_ns - last[0]) / NS_PER_S
        return jump_s if jump_s > LEAST_S + self._clock.slack_s else 0.0


def lasting_words(time_s: float) -> str:
    """Return a duration in words."""
    if time_s < 120.0:
        return f"{time_s:.0f} s"
    return f"{time_s / 60.0:.0f} min" if time_s < 7200.0 else f"{time_s / 3600.0:.1f} h"
