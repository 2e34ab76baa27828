"""The readings of one run and the spans over which they are averaged: the same live and out of the job file."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from acquisition.fitted import Corrected
from acquisition.rig import Role
from acquisition.steps import WindowKind
from drivers.clock import NS_PER_S, seconds
from drivers.reading import Quality, Reading

LONGEST_GAP_NS = seconds(2.5)
"""Between two readings of a channel of which a moment between them can be told: a slow gauge gives one a second."""
_FIRST_CAPACITY = 1024


@dataclass(frozen=True, slots=True)
class WindowRecord:
    """A span of readings that is averaged, from `start_ns` up to and not including `end_ns`.

    `id` is unique within the test. `target_pa` is the induced pressure aimed at, with its sign; None for a zero-flow
    record. `struck_reason` is None unless the window is struck. `corrected` are the flow ranges that it was read with
    where others had been entered.
    """

    id: int
    kind: WindowKind
    start_ns: int
    end_ns: int
    target_pa: float | None = None
    struck_reason: str | None = None
    corrected: tuple[Corrected, ...] = ()

    @property
    def struck(self) -> bool:
        """Whether the window is left out of the result."""
        return self.struck_reason is not None

    @property
    def seconds(self) -> float:
        """Length of the window."""
        return (self.end_ns - self.start_ns) / NS_PER_S

    def judged(self, struck_reason: str | None) -> WindowRecord:
        """Return the window struck for a reason, or put back."""
        return replace(self, struck_reason=struck_reason)

    def read_with(self, fan: int, right: Corrected | None) -> WindowRecord:
        """Return the window with the range of a fan corrected, or as it was entered."""
        others = tuple(item for item in self.corrected if item.fan != fan)
        return replace(self, corrected=others if right is None else (*others, right))


class Series:
    """Stamped values of one role that grow at the end; usable or not by their quality.

    One thread adds, any may look.
    """

    def __init__(self) -> None:
        """Start empty."""
        self._count = 0
        self._in_order = True
        self._last_ns = 0
        self._time_ns = np.zeros(_FIRST_CAPACITY, np.int64)
        self._value = np.zeros(_FIRST_CAPACITY, np.float64)
        self._usable = np.zeros(_FIRST_CAPACITY, np.bool_)

    def __len__(self) -> int:
        return self._count

    def append(self, time_ns: int, value: float, usable: bool) -> None:
        """Add one value; a value that is no number is never usable."""
        if self._count == len(self._time_ns):
            self._time_ns = np.concatenate([self._time_ns, np.zeros_like(self._time_ns)])
            self._value = np.concatenate([self._value, np.zeros_like(self._value)])
            self._usable = np.concatenate([self._usable, np.zeros_like(self._usable)])
        at = self._count
        self._in_order = self._in_order and (at == 0 or time_ns >= self._last_ns)
        self._last_ns = time_ns
        self._time_ns[at] = time_ns
        self._value[at] = value
        self._usable[at] = usable and math.isfinite(value)
        self._count = at + 1

    @property
    def last_ns(self) -> int:
        """The stamp of the last value; there has to be one."""
        return self._last_ns

    @property
    def columns(self) -> tuple[NDArray[np.int64], NDArray[np.float64], NDArray[np.bool_]]:
        """Stamps (ns), values, and whether each is usable; all (n,)."""
        return self._time_ns[: self._count], self._value[: self._count], self._usable[: self._count]

    def extend(self, later: Series, shift_ns: int = 0) -> None:
        """Add the values of another series, their stamps `shift_ns` later."""
        times_ns, values, usable = later.columns
        own_times_ns, own_values, own_usable = self.columns
        joined = np.concatenate([own_times_ns[-1:], times_ns[:1] + shift_ns])
        self._in_order = self._in_order and later._in_order and bool(np.all(joined[1:] >= joined[:-1]))
        # One place more than needed: what grows by doubling must not start from nothing.
        spare = 1
        self._time_ns = np.concatenate([own_times_ns, times_ns + shift_ns, np.zeros(spare, np.int64)])
        self._value = np.concatenate([own_values, values, np.zeros(spare, np.float64)])
        self._usable = np.concatenate([own_usable, usable, np.zeros(spare, np.bool_)])
        self._count += len(times_ns)
        self._last_ns = int(self._time_ns[self._count - 1])

    def inside(self, start_ns: int, end_ns: int) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
        """Return two masks of shape (n,): in `[start_ns, end_ns)` and usable; in there and not usable."""
        # Asked once: another thread may be adding readings, which only ever grow behind this many.
        count = self._count
        times = self._time_ns[:count]
        inside = (times >= start_ns) & (times < end_ns)
        usable = self._usable[:count]
        return inside & usable, inside & ~usable

    def usable_in(self, start_ns: int, end_ns: int) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
        """Return copies of the stamps and values in `[start_ns, end_ns)` that are usable.

        Where they came in the order of their stamps it costs no more after hours than after a minute.
        """
        if not self._in_order:
            return self.at(self.inside(start_ns, end_ns)[0])
        times = self._time_ns[: self._count]
        first, last = np.searchsorted(times, (start_ns, end_ns))
        usable = self._usable[first:last]
        return times[first:last][usable], self._value[first:last][usable]

    def at(self, mask: NDArray[np.bool_]) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
        """Return copies of the stamps and values where `mask` is true."""
        return self._time_ns[: len(mask)][mask], self._value[: len(mask)][mask]


class RunData:
    """The readings of one run by role, in the order in which they came, and what the fan was told."""

    def __init__(self) -> None:
        """Start empty."""
        self._series: dict[Role, Series] = {}
        self._told = Series()

    def drive(self, time_ns: int, fraction: float) -> bool:
        """Add the speed (0 to 1) that the fan is told from a moment on; false where it repeats the last."""
        if len(self._told) and self._told.columns[1][-1] == fraction:
            return False
        self._told.append(time_ns, fraction, usable=True)
        return True

    @property
    def told(self) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
        """When the fan was told another speed, and which (n,)."""
        return self._told.columns[:2]

    def speed(self, instants_ns: NDArray[np.int64], late_ns: int = 0) -> NDArray[np.float64]:
        """Return what the fan was told `late_ns` before some instants (n,), 0 before the first time."""
        times_ns, fractions, _ = self._told.columns
        at = np.searchsorted(times_ns, instants_ns - late_ns, side="right")
        return np.concatenate([[0.0], fractions])[at]

    def append(self, reading: Reading, role: Role) -> None:
        """Add a reading. One that is over range or no number is kept and never averaged."""
        self.append_value(role, reading.monotonic_ns, reading.value, reading.quality is Quality.GOOD)

    def append_value(self, role: Role, time_ns: int, value: float, usable: bool = True) -> None:
        """Add a value (SI units) stamped with the clock of the run."""
        series = self._series.get(role)
        if series is None:
            series = self._series[role] = Series()
        series.append(time_ns, value, usable)

    @property
    def roles(self) -> tuple[Role, ...]:
        """The roles that have readings."""
        return tuple(self._series)

    def count(self, role: Role) -> int:
        """Return how many readings of the role there are, usable or not."""
        return len(self._series[role]) if role in self._series else 0

    def slice(self, role: Role, start_ns: int, end_ns: int) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
        """Return stamps (ns) and values of the usable readings in `[start_ns, end_ns)`, both of shape (n,)."""
        series = self._series.get(role)
        if series is None:
            return np.zeros(0, np.int64), np.zeros(0, np.float64)
        return series.usable_in(start_ns, end_ns)

    @property
    def last_ns(self) -> int | None:
        """The stamp of the newest reading, usable or not; None without one."""
        return max((series.last_ns for series in self._series.values() if len(series)), default=None)

    def extend(self, later: RunData, shift_ns: int = 0) -> None:
        """Add the readings of another record, their stamps `shift_ns` later."""
        for role in later.roles:
            self._series.setdefault(role, Series()).extend(later.series(role), shift_ns)
        self._told.extend(later._told, shift_ns)

    def series(self, role: Role) -> Series:
        """Return the readings of a role that has some."""
        return self._series[role]

    def shifted(self, shift_ns: int) -> RunData:
        """Return the same readings on a clock that shows `shift_ns` more."""
        moved = RunData()
        moved.extend(self, shift_ns)
        return moved

    def unusable(self, role: Role, start_ns: int, end_ns: int) -> int:
        """Return how many readings in `[start_ns, end_ns)` were over range or no number."""
        series = self._series.get(role)
        return 0 if series is None else int(np.count_nonzero(series.inside(start_ns, end_ns)[1]))


def at_instants(
    times_ns: NDArray[np.int64], values: NDArray[np.float64], instants_ns: NDArray[np.int64]
) -> NDArray[np.float64]:
    """Return the values (n,) at other instants, between the readings before and after each.

    It is how channels of gauges that answer at different moments come to one time: not a number where one of the two
    readings is missing or lies more than `LONGEST_GAP_NS` from the other.
    """
    if not len(times_ns):
        return np.full(len(instants_ns), math.nan)
    after = np.searchsorted(times_ns, instants_ns)
    inside = (after > 0) & (after < len(times_ns))
    exact = (after < len(times_ns)) & (times_ns[np.minimum(after, len(times_ns) - 1)] == instants_ns)
    before, after = np.maximum(after - 1, 0), np.minimum(after, len(times_ns) - 1)
    inside &= times_ns[after] - times_ns[before] <= LONGEST_GAP_NS
    # Against the first instant: nanoseconds since the start of a machine are more than a float holds.
    start_ns = times_ns[0]
    between = np.interp((instants_ns - start_ns).astype(np.float64), (times_ns - start_ns).astype(np.float64), values)
    return np.where(inside | exact, between, math.nan)
