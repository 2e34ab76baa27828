"""The live buffer: the last minutes of every role, written by the engine, copied out by whoever draws."""

from __future__ import annotations

import threading

import numpy as np
from numpy.typing import NDArray

from acquisition.rig import Role
from drivers.clock import NS_PER_S

CAPACITY = 1 << 16
"""Readings kept per role: about 11 minutes at 100 Hz, close to two hours at 10 Hz."""

MOST_MEANS = 64


class _Ring:
    """A ring of stamped values that is read as two views at most.

    It takes its memory at the first value, all of it: what a long hold needs is there from the beginning.
    """

    def __init__(self) -> None:
        self._time_ns = np.zeros(0, np.int64)
        self._value = np.zeros(0, np.float64)
        self._written = 0

    def append(self, time_ns: int, value: float) -> None:
        if not len(self._value):
            self._time_ns, self._value = np.full(CAPACITY, 0, np.int64), np.full(CAPACITY, 0.0)
        at = self._written % CAPACITY
        self._time_ns[at] = time_ns
        self._value[at] = value
        self._written += 1

    @property
    def empty(self) -> bool:
        return not self._written

    def values(self, start_ns: int, end_ns: int) -> NDArray[np.float64]:
        """Return the values from `start_ns` to `end_ns`, both included; a view where they lie in one piece."""
        at = self._written % CAPACITY
        first = int(self._time_ns[:at].searchsorted(start_ns))
        if self._written < CAPACITY or first > 0:
            return self._value[first : int(self._time_ns[:at].searchsorted(end_ns, side="right"))]
        times, values = self.since(start_ns)
        return values[: int(times.searchsorted(end_ns, side="right"))]

    def since(self, start_ns: int) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
        if not self._written:
            return self._time_ns.copy(), self._value.copy()
        at = self._written % CAPACITY
        newer = slice(int(self._time_ns[:at].searchsorted(start_ns)), at)
        if self._written < CAPACITY or newer.start > 0:
            return self._time_ns[newer].copy(), self._value[newer].copy()
        older = slice(at + int(self._time_ns[at:].searchsorted(start_ns)), CAPACITY)
        return (
            np.concatenate([self._time_ns[older], self._time_ns[newer]]),
            np.concatenate([self._value[older], self._value[newer]]),
        )


class LiveBuffer:
    """The last readings of every role."""

    def __init__(self) -> None:
        """Start empty."""
        self._lock = threading.Lock()
        self._rings = {role: _Ring() for role in Role}
        self._newest_ns: dict[Role, int] = {}
        self._means: dict[tuple[Role, float, int], float | None] = {}
        """Means that were asked for since the last reading came: several ask for the same at a tick."""
        self._first_tap = _Ring()

    def append(self, role: Role, time_ns: int, value: float) -> None:
        """Add a reading (SI units)."""
        with self._lock:
            self._rings[role].append(time_ns, value)
            self._means.clear()
            self._newest_ns[role] = max(time_ns, self._newest_ns.get(role, time_ns))

    def append_first_tap(self, time_ns: int, value_pa: float) -> None:
        """Add what the first outdoor tap alone reads; the envelope pressure is the mean of all taps."""
        with self._lock:
            self._first_tap.append(time_ns, value_pa)

    def first_tap(self, start_ns: int) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
        """Return copies of the stamps (ns) and values (Pa) of the first tap alone from `start_ns` on, shape (n,)."""
        with self._lock:
            return self._first_tap.since(start_ns)

    def newest_ns(self, role: Role) -> int | None:
        """Return the stamp of the newest reading."""
        return self._newest_ns.get(role)

    def since(self, role: Role, start_ns: int) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
        """Return copies of the stamps (ns) and values from `start_ns` on, both of shape (n,)."""
        with self._lock:
            return self._rings[role].since(start_ns)

    def window(self, role: Role, seconds: float, end_ns: int) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """Return seconds before `end_ns` (0 down to -`seconds`, oldest first) and values, both of shape (n,)."""
        times, values = self.since(role, end_ns - round(seconds * NS_PER_S))
        if len(times) and times[-1] > end_ns:
            count = int(np.searchsorted(times, end_ns, side="right"))
            times, values = times[:count], values[:count]
        return (times - end_ns) / NS_PER_S, values

    def mean(self, role: Role, seconds: float, end_ns: int) -> float | None:
        """Return the mean of the last `seconds` before `end_ns`, None without a reading."""
        with self._lock:
            ring = self._rings[role]
            if ring.empty:
                return None
            asked = (role, seconds, end_ns)
            if asked not in self._means:
                if len(self._means) > MOST_MEANS:
                    self._means.clear()
                values = ring.values(end_ns - round(seconds * NS_PER_S), end_ns)
                self._means[asked] = float(np.add.reduce(values)) / len(values) if len(values) else None
            return self._means[asked]
