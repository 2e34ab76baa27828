"""Channels of several gauges: brought to one time by their stamps, each in its role, all of them in the job."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from acquisition.derive import envelope_pressures, run_air
from acquisition.engine import Engine
from acquisition.job import Job
from acquisition.openrig import open_rig
from acquisition.rig import Role
from acquisition.rigfile import read_rig
from acquisition.series import RunData, WindowRecord, at_instants
from acquisition.steps import WindowKind
from acquisition.taps import TapsAsOne
from analysis.records import Air
from drivers.clock import NS_PER_S, VirtualClock, seconds
from drivers.reading import Quality, Reading
from simulators.houses import load_house
from simulators.instruments.scpi_gauge import ScpiGauge
from simulators.memory import Faults, MemoryPort, MemoryTransport
from simulators.rig import SimulatedRig
from tests.acquisition.scenes import Scene

SECOND_GAUGE = """
[[instrument]]
name = "second"
profile = "scpi-gauge"
port = "sim:second"
[instrument.channels]
p1 = "envelope-pressure-2"
p2 = "flow-element-pressure"
t1 = "indoor-temperature-2"
"""


def reading(role_s: float, value: float) -> Reading:
    return Reading("gauge.p1", value, seconds(role_s), 0, 0.0, Quality.GOOD, 0)


def test_a_ramp_seen_by_two_gauges_at_different_moments_is_one_ramp() -> None:
    data = RunData()
    for at in range(100):
        data.append(reading(at * 0.1, 2.0 * at * 0.1), Role.ENVELOPE)
        data.append(reading(at * 0.15 + 0.037, 2.0 * (at * 0.15 + 0.037) + 4.0), Role.ENVELOPE_2)
    times_ns, values = envelope_pressures(data, seconds(2.0), seconds(8.0))
    assert len(times_ns) == 60
    assert values == pytest.approx(2.0 * times_ns / NS_PER_S + 2.0, abs=1e-6)


def test_a_moment_in_a_hole_of_the_other_gauge_is_not_known() -> None:
    times = np.array([0, 1, 9, 10], np.int64) * NS_PER_S
    found = at_instants(times, np.array([0.0, 1.0, 9.0, 10.0]), np.array([0, 0.5e9, 4e9, 9.5e9, 11e9]).astype(np.int64))
    assert np.isnan(found).tolist() == [False, False, True, False, True]
    assert found[[0, 1, 3]] == pytest.approx([0.0, 0.5, 9.5])


def test_a_tap_of_another_gauge_counts_until_it_has_been_silent_for_long() -> None:
    taps = TapsAsOne()
    taps.mean([(Role.ENVELOPE_2, reading(0.0, -54.0))])
    assert taps.mean([(Role.ENVELOPE, reading(0.2, -50.0))])[0][1].value == -52.0
    assert taps.mean([(Role.ENVELOPE, reading(5.0, -50.0))])[0][1].value == -50.0


def test_several_thermometers_in_one_air_are_averaged() -> None:
    data = RunData()
    for role, value in ((Role.INDOOR, 20.0), (Role.INDOOR_2, 22.0), (Role.INDOOR_3, 24.0), (Role.OUTDOOR, 3.0)):
        data.append(reading(0.5, value), role)
    air = run_air(Air(10.0, 10.0), data, [WindowRecord(1, WindowKind.POINT, 0, seconds(1.0), -50.0)])
    assert (air.indoor_c, air.outdoor_c) == (22.0, 3.0)


def test_gauges_of_different_latency_make_one_true_test(tmp_path: Path, clock: VirtualClock) -> None:
    """The second gauge answers 0.16 s late and has the flow; windows are cut by the same moments."""
    house = SimulatedRig(load_house("brook-end"), 3, clock, wind_m_s=0.0)
    second = MemoryPort("sim:second", ScpiGauge(house.world), clock)
    second.faults = Faults(delay_s=0.16)
    text = house.rig_toml(house.own_ports).replace('p2 = "flow-element-pressure"\n', "", 1) + SECOND_GAUGE
    rig = open_rig(read_rig(text), clock, lambda url: MemoryTransport(second) if url == second.url else house.open(url))
    engine = Engine(rig, clock, auto_answer=True)
    engine.start()
    job = Job.create(tmp_path / "two.airseam", clock, "Brook End")
    scene = Scene(clock, house, rig, engine, job)
    try:
        scene.pass_time(3.0)
        scene.begin()
        shown = scene.to_the_end()
        assert shown.result is not None
        q50 = shown.result.runs[0].q50_m3_h.value
        assert q50 == pytest.approx(house.true_q_m3_h(50.0, "depressurize"), rel=0.02)
        run = job.load(1).runs[0]
        for role in (Role.ZONE_1, Role.INDOOR_2, Role.ENVELOPE_2, Role.FLOW_ELEMENT, Role.BAROMETER):
            assert run.data.count(role) > 100, role
        late = {link.name: link.round_trip_s for link in shown.links}
        assert late["second"] == pytest.approx(0.16, abs=0.03)
        first_ns, first = run.data.slice(Role.ENVELOPE, 0, 2**63 - 1)
        other_ns, other = run.data.slice(Role.ENVELOPE_2, 0, 2**63 - 1)
        gap = at_instants(other_ns, other, first_ns) - first
        assert abs(float(np.nanmean(gap))) < 0.05
    finally:
        engine.close()
        job.close()
