"""How fast a clock runs against real time: for those few places that wait on an operating system."""

from __future__ import annotations

from drivers.clock import NS_PER_S, Clock, ScaledClock, VirtualClock


def clock_rate(clock: Clock) -> float | None:
    """Return clock seconds per real second; None for virtual time, which no waiting moves."""
    if isinstance(clock, VirtualClock):
        return None
    return clock.factor if isinstance(clock, ScaledClock) else 1.0


def real_seconds(duration_ns: int, rate: float) -> float:
    """Return how long a duration on the clock really takes; not negative."""
    return max(duration_ns, 0) / NS_PER_S / rate


def clock_ns(real_s: float, rate: float) -> int:
    """Return how long a real duration is on the clock, at least 1 ns."""
    return max(round(real_s * rate * NS_PER_S), 1)
