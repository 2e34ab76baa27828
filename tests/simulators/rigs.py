"""Rigs for the tests, on virtual time."""

from __future__ import annotations

from datetime import UTC, datetime

from drivers.clock import VirtualClock
from simulators.houses import load_house
from simulators.plant import Plant
from simulators.rig import SimulatedRig
from simulators.world import World


def virtual_clock() -> VirtualClock:
    """Return a virtual clock at a date of no meaning."""
    return VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))


def new_world(seed: int = 1) -> World:
    """Return a world at time 0 with the demonstration house in it."""
    return World(Plant([load_house("mill-row")], seed), 0)


def virtual_rig(protocol: str = "scpi", seed: int = 1, wind_m_s: float | None = None) -> SimulatedRig:
    """Return the demonstration rig on a virtual clock."""
    return SimulatedRig(load_house("mill-row"), seed, virtual_clock(), protocol=protocol, wind_m_s=wind_m_s)
