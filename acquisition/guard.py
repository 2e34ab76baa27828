"""The guard: stands between the engine and the fan, in a loop of its own, and has the last word on the drive.

The engine asks it for every speed. It reads the gauges for itself, so it sees what happens even while the engine hangs,
lets the watchdog judge ten times a second, and stops the drive at an alarm. From then on it refuses every speed until
somebody releases it. An engine that is not heard of for half a second counts as an alarm too.
"""

from __future__ import annotations

import threading
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass

from acquisition.openrig import OpenRig
from acquisition.rig import Role
from acquisition.taps import TapsAsOne
from acquisition.watchdog import Alarm, AlarmKind, Observation, Watchdog
from drivers.battery import Battery
from drivers.clock import NS_PER_S, Clock, Hosted, seconds

PERIOD_S = 0.1
HEARTBEAT_S = 0.5
SMOOTHING_S = 0.5
BATTERY_S = 10.0
"""So often the battery is looked at."""
LOW_CHARGE, EMPTY_CHARGE = 0.10, 0.05
"""Below the first it is said, below the second the fan stops while there is still power to stop it."""


@dataclass(frozen=True, slots=True)
class Expectation:
    """What the engine knows by which raw readings are judged.

    `zero_pa` is the zero-flow pressure, None before it was read; `sign` that of the induced pressure of the run;
    `expected_pa` the induced pressure that the leakage line so far gives for the present flow, None before there is a
    line; `flow_share` the flow as a share of the top of its range; `wind_pa` the spread of 3 s means of the zero-flow
    pressure.
    """

    zero_pa: float | None = None
    sign: int = 1
    flow_share: float = 0.0
    expected_pa: float | None = None
    wind_pa: float = 0.0


class Guard:
    """Passes speeds on to one rig's drive as long as all is well. Every public call is thread-safe."""

    def __init__(self, rig: OpenRig, clock: Clock, battery: Callable[[], Battery | None] = lambda: None) -> None:
        """Watch a rig whose fan is at rest; `battery` tells how much this computer has left."""
        self._rig = rig
        self._clock = clock
        self._lock = threading.Lock()
        self._cap_pa: float | None = None
        self._watchdog = Watchdog(clock.slack_s)
        self._taps = TapsAsOne()
        self._recent: deque[tuple[int, float]] = deque()
        self._speed = 0.0
        self._beat_ns = 0
        self._known = Expectation()
        self._alarm: Alarm | None = None
        self._hosted: Hosted | None = None
        self._due_ns = 0
        self._read_battery = battery
        self._battery_ns = 0
        self.battery: Battery | None = None
        """What this computer has left, None without a battery."""

    @property
    def low_battery(self) -> bool:
        """Whether somebody should plug the computer in soon."""
        return self.battery is not None and self.battery.draining and self.battery.charge < LOW_CHARGE

    @property
    def alarm(self) -> Alarm | None:
        """What stopped the fan, None while it may run."""
        return self._alarm

    def start(self) -> None:
        """Begin to watch."""
        self._due_ns = self._clock.now_ns()
        self._hosted = self._clock.host(self.pump, "watchdog")

    def end(self) -> None:
        """End watching; the fan stays as it is."""
        if self._hosted is not None:
            self._hosted.stop()
            self._hosted = None

    def drive(self, speed: float, known: Expectation, now_ns: int, running: int | None = None) -> bool:
        """Pass a speed on to the first drives, or all, and tell that the engine lives; false when no fan may run."""
        with self._lock:
            if self._alarm is not None:
                return False
            self._speed, self._known, self._beat_ns = speed, known, now_ns
            self._rig.set_fan(speed, running)
            return True

    def rest(self) -> None:
        """Command a fan at rest to stay there."""
        with self._lock:
            self._speed = 0.0
            self._rig.set_fan(0.0)

    def stop(self) -> None:
        """Bring the fan to its safe state, ahead of everything queued."""
        with self._lock:
            self._speed = 0.0
            self._rig.stop()

    def release(self) -> None:
        """Let the fan run again: a person said so, or a link that was lost is back."""
        with self._lock:
            self._speed = 0.0
            self._alarm = None
            self._watchdog = Watchdog(self._clock.slack_s, self._cap_pa)

    def keep_below(self, cap_pa: float | None) -> None:
        """Watch over a lower pressure than usual from now on; None takes that back."""
        with self._lock:
            self._cap_pa = cap_pa
            self._watchdog = Watchdog(self._clock.slack_s, cap_pa)

    def pump(self, now_ns: int) -> int:
        """Do one round of watching and return when the next is due."""
        readings = tuple(
            (reading.monotonic_ns, reading.value)
            for role, reading in self._taps.mean(self._rig.watch())
            if role is Role.ENVELOPE
        )
        self._recent.extend(readings)
        while self._recent and self._recent[0][0] < now_ns - seconds(SMOOTHING_S):
            self._recent.popleft()
        linked = self._rig.fans_linked
        if now_ns >= self._battery_ns:
            self._battery_ns = now_ns + seconds(BATTERY_S)
            self.battery = self._read_battery()
        with self._lock:
            found = self._judge(now_ns, tuple(value for _, value in readings), linked)
            if found is not None and self._alarm is None and self._speed > 0.0:
                self._alarm = found
                self._speed = 0.0
                self._rig.stop()
        self._due_ns += seconds(PERIOD_S)
        if self._due_ns <= now_ns:
            # After a stall one round sees all that was read meanwhile; those that were missed are not made up.
            self._due_ns = now_ns + seconds(PERIOD_S)
        return self._due_ns

    def _judge(self, now_ns: int, readings_pa: tuple[float, ...], linked: bool) -> Alarm | None:
        seen = Observation(
            now_ns=now_ns,
            readings_pa=readings_pa,
            induced_pa=self._induced_pa(),
            speed=self._speed,
            flow_share=self._known.flow_share,
            expected_pa=self._known.expected_pa,
            fan_linked=linked,
            wind_pa=self._known.wind_pa,
        )
        found = self._watchdog.look(seen)
        if self._speed <= 0.0:
            return None
        if self.battery is not None and self.battery.draining and self.battery.charge < EMPTY_CHARGE:
            left = f"{100.0 * self.battery.charge:.0f} %"
            text = f"The battery of this computer is at {left}: the fan was stopped. Plug it in, then go on."
            return Alarm(AlarmKind.BATTERY, text)
        silent_s = (now_ns - self._beat_ns) / NS_PER_S
        if silent_s > HEARTBEAT_S + self._clock.slack_s:
            text = f"The program was held up for {silent_s:.1f} s and did not steer. The fan was stopped."
            return Alarm(AlarmKind.HELD_UP, text)
        return found

    def _induced_pa(self) -> float | None:
        if self._known.zero_pa is None or not self._recent:
            return None
        mean_pa = sum(value for _, value in self._recent) / len(self._recent)
        return self._known.sign * (mean_pa - self._known.zero_pa)
