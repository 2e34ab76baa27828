"""A person with gauge and fan in hand: a simulated house (invented) behind somebody who sets, looks and types."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

from acquisition.rig import InstrumentSpec, RigSpec, Role
from acquisition.rigfile import read_rig
from drivers.clock import VirtualClock, seconds
from simulators.houses import load_house
from simulators.rig import SimulatedRig

CHANNELS = (("p1", Role.ENVELOPE), ("p2", Role.FLOW_ELEMENT))
LOOK_S, LOOKS = 0.5, 20
SETTLE_S, TRIES = 15.0, 12


class Person:
    """Lives on a clock of its own: what is typed does not say when it was read."""

    def __init__(self, seed: int = 1, wind_m_s: float = 0.0) -> None:
        """Stand in the house with the fan off."""
        clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
        self.house = SimulatedRig(load_house("mill-row"), seed, clock, wind_m_s=wind_m_s, by_hand=True)
        self._now_ns = 0
        self._set_pa = 0.0
        assert self.house.hand is not None
        self.house.hand.hear("hold", 0)
        self._pass(SETTLE_S)

    def rig(self, factor: float = 1.0) -> RigSpec:
        """Return the rig of this house with a gauge that is typed and a fan that nobody drives."""
        known = read_rig(self.house.rig_toml(self.house.own_ports))
        gauge = InstrumentSpec("gauge", "by-hand", "hand:blue", CHANNELS)
        return replace(known, instruments=(gauge,), simulated=True, time_factor=factor)

    def true_q50(self) -> float:
        """Return what the house really leaks at 50 Pa."""
        return self.house.true_q_m3_h(50.0, "depressurize")

    def shown(self, role: Role, target_pa: float | None) -> float:
        """Bring the fan to a target, or off, and return what the gauge shows, as it is read off: two decimals."""
        if target_pa is None:
            self.house.world.speed, self._set_pa = 0.0, 0.0
            self._pass(SETTLE_S)
        elif target_pa != self._set_pa:
            self._set(target_pa)
        return round(self._mean({of: name for name, of in CHANNELS}[role]), 2)

    def _set(self, target_pa: float) -> None:
        low, high = 0.05, 1.0
        for _ in range(TRIES):
            self.house.world.speed = (low + high) / 2
            self._pass(SETTLE_S)
            if abs(self._mean("p1")) < abs(target_pa):
                low = self.house.world.speed
            else:
                high = self.house.world.speed
        self._set_pa = target_pa

    def _pass(self, time_s: float) -> None:
        self._now_ns += seconds(time_s)
        self.house.world.advance(self._now_ns)

    def _mean(self, channel: str) -> float:
        total = 0.0
        for _ in range(LOOKS):
            self._pass(LOOK_S)
            total += self.house.world.reading(channel)
        return total / LOOKS
