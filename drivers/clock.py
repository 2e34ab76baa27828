"""Time as a parameter: the only module of the program that reads a clock or waits.

Everything that needs the time is handed a `Clock`. A wall clock serves real instruments, a scaled clock lets a
simulated rig run faster over a real terminal, and a virtual clock runs an eight-minute test in a fraction of a
second: it hosts the loops that would otherwise be threads and calls each at its due time, one after the other,
so that a run is deterministic and single-threaded.

Durations and deadlines are monotonic nanoseconds; UTC is only ever stored beside them.
"""

from __future__ import annotations

import math
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from typing import Protocol

NS_PER_S = 1_000_000_000

Pump = Callable[[int], int]
"""The body of a hosted loop: takes the time now, does what is due, returns the time at which it is next due."""


class Hosted(Protocol):
    """A loop that a clock runs until it is stopped."""

    def stop(self, timeout_s: float = 5.0) -> bool:
        """End the loop and wait for it; false when it did not end in time (it is stuck in a system call)."""
        ...

    @property
    def error(self) -> BaseException | None:
        """What ended the loop, if it died instead of being stopped."""
        ...


class Clock(Protocol):
    """Source of time and the only place that waits."""

    def now_ns(self) -> int:
        """Return monotonic nanoseconds; only differences have a meaning."""
        ...

    def utc(self) -> datetime:
        """Return the time of day in UTC."""
        ...

    def wait_until(self, deadline_ns: int, cancel: threading.Event | None = None) -> bool:
        """Wait until the deadline; return false at once when `cancel` is or becomes set."""
        ...

    def host(self, pump: Pump, name: str) -> Hosted:
        """Run `pump` at each time that it asks for: in a thread of its own, or inside `wait_until`."""
        ...

    @property
    def slack_s(self) -> float:
        """Clock seconds that the machine itself may lose at any moment; a time limit has to allow for them."""
        ...


def seconds(value_s: float) -> int:
    """Return a duration in seconds as whole nanoseconds."""
    return round(value_s * NS_PER_S)


class WallClock:
    """Real time."""

    slack_s = 0.0

    def now_ns(self) -> int:
        """Return the operating system's monotonic time."""
        return time.monotonic_ns()

    def utc(self) -> datetime:
        """Return the time of day in UTC."""
        return datetime.now(UTC)

    def wait_until(self, deadline_ns: int, cancel: threading.Event | None = None) -> bool:
        """Sleep until the deadline or until `cancel` is set."""
        return _sleep((deadline_ns - self.now_ns()) / NS_PER_S, cancel)

    def host(self, pump: Pump, name: str) -> Hosted:
        """Run `pump` in a thread of its own."""
        return HostThread(self, pump, name)


class ScaledClock:
    """Real time that passes `factor` times faster: for a simulated rig behind a real terminal.

    Two programs that share a scaled clock need no common start: only durations are compared.
    """

    STALL_S = 0.1
    """Real seconds that a busy machine may hold up a thread without anything being wrong."""

    def __init__(self, factor: float) -> None:
        """Start the clock at the present time of day. `factor` is greater than zero."""
        if not 0 < factor < math.inf:
            raise ValueError(f"time factor {factor!r}: a number greater than 0 is needed")
        self.factor = factor
        self._real0_ns = time.monotonic_ns()
        self._utc0 = datetime.now(UTC)

    @property
    def slack_s(self) -> float:
        """Return what a stall of `STALL_S` real seconds looks like on this clock."""
        return self.STALL_S * self.factor

    def now_ns(self) -> int:
        """Return scaled nanoseconds since the clock was made."""
        return round((time.monotonic_ns() - self._real0_ns) * self.factor)

    def utc(self) -> datetime:
        """Return the time of day at which the clock was made, plus the scaled time since."""
        return self._utc0 + timedelta(microseconds=self.now_ns() / 1000)

    def wait_until(self, deadline_ns: int, cancel: threading.Event | None = None) -> bool:
        """Sleep until the scaled deadline or until `cancel` is set."""
        return _sleep((deadline_ns - self.now_ns()) / NS_PER_S / self.factor, cancel)

    def host(self, pump: Pump, name: str) -> Hosted:
        """Run `pump` in a thread of its own."""
        return HostThread(self, pump, name)


@dataclass(frozen=True, slots=True)
class _Hands:
    """How far a clock is ahead of another, and when, on the other, it was stopped."""

    ahead_ns: int
    ahead: timedelta
    held_ns: int | None = None


class ShiftedClock:
    """Another clock with its hands put elsewhere: a recorded test is played back at the times of its own readings."""

    LOOK_NS = round(0.05 * NS_PER_S)
    """How often, on the other clock, a loop looks whether a clock that was held goes on."""

    def __init__(self, clock: Clock, now_ns: int, utc: datetime) -> None:
        """Let it be `now_ns` and `utc` now, and go on as `clock` does."""
        self._clock = clock
        # Replaced as a whole: loops of other threads look at it at any moment.
        self._hands = _Hands(now_ns - clock.now_ns(), utc - clock.utc())

    def hold(self) -> None:
        """Let time stand still until `go_on`; hosted loops rest."""
        if self._hands.held_ns is None:
            self._hands = replace(self._hands, held_ns=self._clock.now_ns())

    def go_on(self) -> None:
        """Let time pass again, from where it stood."""
        hands = self._hands
        if hands.held_ns is not None:
            self._hands = _Hands(*self._ahead(hands))

    def _ahead(self, hands: _Hands) -> tuple[int, timedelta]:
        lag_ns = 0 if hands.held_ns is None else self._clock.now_ns() - hands.held_ns
        return hands.ahead_ns - lag_ns, hands.ahead - timedelta(microseconds=lag_ns / 1000)

    @property
    def slack_s(self) -> float:
        """Return that of the other clock."""
        return self._clock.slack_s

    def now_ns(self) -> int:
        """Return the time of the other clock, put elsewhere."""
        hands = self._hands
        return hands.ahead_ns + (self._clock.now_ns() if hands.held_ns is None else hands.held_ns)

    def utc(self) -> datetime:
        """Return the time of day of the other clock, put elsewhere."""
        return self._clock.utc() + self._ahead(self._hands)[1]

    def wait_until(self, deadline_ns: int, cancel: threading.Event | None = None) -> bool:
        """Wait by the other clock."""
        return self._clock.wait_until(deadline_ns - self._ahead(self._hands)[0], cancel)

    def host(self, pump: Pump, name: str) -> Hosted:
        """Have the other clock run the loop, which sees this one's times."""

        def shifted(now_ns: int) -> int:
            hands = self._hands
            if hands.held_ns is not None:
                return now_ns + self.LOOK_NS
            return pump(now_ns + hands.ahead_ns) - hands.ahead_ns

        return self._clock.host(shifted, name)


class VirtualClock:
    """Time that passes only inside `wait_until`, as fast as the hosted loops allow.

    Loops due at the same time run in the order in which they were hosted, so two runs of a program on virtual
    time do exactly the same.
    """

    slack_s = 0.0

    def __init__(self, start: datetime) -> None:
        """Start at the time of day `start` and monotonic time 0; raises `ValueError` without a time zone."""
        if start.tzinfo is None:
            raise ValueError(f"start {start}: a time with a time zone is needed")
        self._now_ns = 0
        self._start = start.astimezone(UTC)
        self._hosted: list[HostedPump] = []
        self._advancing = False

    def now_ns(self) -> int:
        """Return virtual nanoseconds since the start."""
        return self._now_ns

    def utc(self) -> datetime:
        """Return the virtual time of day."""
        return self._start + timedelta(microseconds=self._now_ns / 1000)

    def wait_until(self, deadline_ns: int, cancel: threading.Event | None = None) -> bool:
        """Advance to the deadline, calling every hosted loop that comes due on the way."""
        if self._advancing:
            raise RuntimeError("a hosted loop must not wait: it returns the time at which it is next due")
        self._advancing = True
        try:
            while not (cancel is not None and cancel.is_set()):
                # Deterministic: the first hosted of those due at one time.
                nearest: HostedPump | None = None
                for hosted in self._hosted:
                    if nearest is None or hosted.due_ns < nearest.due_ns:
                        nearest = hosted
                if nearest is None or nearest.due_ns > deadline_ns:
                    self._now_ns = max(self._now_ns, deadline_ns)
                    return True
                self._now_ns = max(self._now_ns, nearest.due_ns)
                self._call(nearest)
            return False
        finally:
            self._advancing = False

    def _call(self, hosted: HostedPump) -> None:
        """Run a loop once; one that fails has ended, as a thread would have."""
        try:
            hosted.call(self._now_ns)
        except Exception:
            self.release(hosted)
            raise

    def host(self, pump: Pump, name: str) -> Hosted:
        """Call `pump` from `wait_until`, first at once."""
        hosted = HostedPump(self, pump, name)
        self._hosted.append(hosted)
        return hosted

    def release(self, hosted: HostedPump) -> None:
        """Forget a hosted loop."""
        if hosted in self._hosted:
            self._hosted.remove(hosted)


class HostThread:
    """A hosted loop in a thread: pump, wait until it is due again, and so on until stopped."""

    def __init__(self, clock: Clock, pump: Pump, name: str) -> None:
        """Start the thread."""
        self._clock = clock
        self._pump = pump
        self._stop = threading.Event()
        self._error: BaseException | None = None
        self._thread = threading.Thread(target=self._run, name=name, daemon=True)
        self._thread.start()

    @property
    def error(self) -> BaseException | None:
        """What ended the loop, if it died."""
        return self._error

    def stop(self, timeout_s: float = 5.0) -> bool:
        """Ask the thread to end and join it; may be called from the thread itself."""
        self._stop.set()
        if threading.current_thread() is self._thread:
            return True
        self._thread.join(timeout_s)
        return not self._thread.is_alive()

    def _run(self) -> None:
        try:
            while not self._stop.is_set():
                self._clock.wait_until(self._pump(self._clock.now_ns()), self._stop)
        except BaseException as error:
            self._error = error
            raise


class HostedPump:
    """A hosted loop on virtual time."""

    def __init__(self, clock: VirtualClock, pump: Pump, name: str) -> None:
        """Make the loop due now."""
        self.name = name
        self.due_ns = clock.now_ns()
        self._clock = clock
        self._pump = pump
        self._error: BaseException | None = None

    @property
    def error(self) -> BaseException | None:
        """What ended the loop, if it died; on virtual time it also came out of `wait_until`."""
        return self._error

    def call(self, now_ns: int) -> None:
        """Run the pump once; it may not ask for a time that does not advance."""
        try:
            due_ns = self._pump(now_ns)
            if due_ns <= now_ns:
                raise RuntimeError(f"hosted loop {self.name!r} asked to run again at {due_ns}, now is {now_ns}")
        except Exception as error:
            self._error = error
            raise
        self.due_ns = due_ns

    def stop(self, timeout_s: float = 5.0) -> bool:
        """Forget the loop."""
        self._clock.release(self)
        return True


def _sleep(duration_s: float, cancel: threading.Event | None) -> bool:
    """Sleep in real time; false when cancelled."""
    if cancel is not None:
        return not cancel.wait(max(duration_s, 0.0))
    if duration_s > 0:
        time.sleep(duration_s)
    return True
