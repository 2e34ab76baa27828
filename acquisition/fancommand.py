"""What the fan is told: at every tick while it runs, now and then while it rests. The guard has the last word."""

from __future__ import annotations

from acquisition.bench import Bench
from acquisition.fanbyhand import watched_speed
from acquisition.guard import Expectation, Guard
from acquisition.openrig import OpenRig
from acquisition.rig import Role
from drivers.clock import seconds

REST_REPEAT_S = 0.5


class FanCommand:
    """Speaks to the guard for one engine."""

    def __init__(self, rig: OpenRig, guard: Guard) -> None:
        """Nothing was commanded yet."""
        self._rig = rig
        self._guard = guard
        self._commanded = False
        self._rest_sent_ns: int | None = None

    def command(self, bench: Bench | None, now_ns: int, *, running: bool) -> None:
        """Tell the fan what the controller wants of it, or to stay at rest."""
        speed = 0.0 if bench is None else bench.controller.command
        if bench is not None and not self._rig.has_fan:
            unseen = bench.target_pa is None or Role.ENVELOPE in self._rig.spec.by_hand
            speed = 0.0 if unseen else watched_speed(bench.leak_flow_now(now_ns)[1])
        if bench is not None and running and speed > 0:
            driven = self._guard.drive(speed, expectation(bench, now_ns), now_ns, bench.controller.running)
            if self._rig.has_fan:
                bench.progress.fan(speed if driven else 0.0, now_ns)
            self._commanded = True
            self._rest_sent_ns = None
            return
        if bench is not None and self._rig.has_fan:
            bench.progress.fan(0.0, now_ns)
        if self._commanded and (self._rest_sent_ns is None or now_ns - self._rest_sent_ns > seconds(REST_REPEAT_S)):
            self._guard.rest()
            self._rest_sent_ns = now_ns


def expectation(bench: Bench, now_ns: int) -> Expectation:
    """Return by what the guard judges the readings."""
    leak, share = bench.leak_flow_now(now_ns)
    expected_pa = bench.expected_pa(leak) if leak is not None else None
    return Expectation(bench.zero_pa, bench.sign, share, expected_pa, bench.controller.plant.wind_spread_pa)
