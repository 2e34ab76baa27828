"""What a gauge that is faster than the engine's loop shows: as fresh as it can be, and nothing twice."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

import pytest

from acquisition.engine import PERIOD_S, Engine
from acquisition.openrig import open_rig
from acquisition.rig import Role
from acquisition.rigfile import read_rig
from drivers.clock import NS_PER_S, VirtualClock, seconds
from simulators.houses import load_house
from simulators.rig import SimulatedRig

LATENCY_S = 0.015
"""What the simulated gauge takes to answer, and its link to look."""


@pytest.mark.parametrize(("rate_hz", "oldest_s"), [(10.0, 0.1 + PERIOD_S), (50.0, 0.02 + PERIOD_S / 4)])
def test_what_is_shown_is_as_fresh_as_the_gauge_is_fast(
    clock: VirtualClock, tmp_path: Path, rate_hz: float, oldest_s: float
) -> None:
    text = (files("drivers.profiles") / "scpi-gauge.toml").read_text("utf-8")
    fast = tmp_path / "fast.toml"
    fast.write_text(text.replace("rate_hz = 10.0", f"rate_hz = {rate_hz}"), encoding="utf-8")
    house = SimulatedRig(load_house("mill-row"), 1, clock)
    rig_text = house.rig_toml(house.own_ports).replace('"scpi-gauge"', f'"{fast.as_posix()}"')
    engine = Engine(open_rig(read_rig(rig_text), clock, house.open), clock)
    engine.start()
    try:
        clock.wait_until(clock.now_ns() + seconds(3.0))
        ages_s = []
        for _ in range(200):
            clock.wait_until(clock.now_ns() + seconds(0.013))
            snapshot = engine.snapshot()
            newest_ns = engine.live.newest_ns(Role.ENVELOPE)
            assert newest_ns is not None
            ages_s.append((clock.now_ns() - newest_ns) / NS_PER_S)
            assert clock.now_ns() - snapshot.now_ns <= seconds(PERIOD_S / (4 if rate_hz > 10.0 else 1))
        stamps, _ = engine.live.since(Role.ENVELOPE, 0)
    finally:
        engine.close()
    assert max(ages_s) < oldest_s + LATENCY_S
    assert len(set(stamps.tolist())) == len(stamps)
