"""When the fan follows what is read, and when it stands still instead."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

from acquisition.control import Plant, PressureController
from acquisition.executors import steer

TARGET_PA = 43.0


def bench_with(speed: float, induced_pa: float, leak_m3_h: float) -> Any:  # noqa: ANN401 - stands in for a Bench
    """Return a bench in the middle of a test: the fan turns at a speed on its way to a target, this is read."""
    controller = PressureController(Plant(400.0))
    for pressure_pa in (59.0, 39.0):
        controller.curve.learn(0.05 * pressure_pa**0.57, pressure_pa, windy=True)
    controller.aim(TARGET_PA, 0.2)
    controller.command = speed
    return SimpleNamespace(
        controller=controller,
        running=1,
        dt_s=0.1,
        target_pa=TARGET_PA,
        line=[(59.0, 2600.0), (39.0, 2000.0)],
        induced_now=lambda _now_ns: induced_pa,
        flow_now=lambda _now_ns: max(leak_m3_h, 0.0),
        leak_flow_now=lambda _now_ns: (leak_m3_h, 0.1),
        expected_pa=lambda leak: (max(leak, 0.0) / 190.0) ** (1 / 0.65),
    )


def test_wind_that_blows_back_through_a_fan_at_rest_does_not_keep_it_there() -> None:
    """After a zero-flow record between the points a fan that never left its lowest speed spoilt a test in 6 m/s."""
    bench = bench_with(speed=0.06, induced_pa=-2.7, leak_m3_h=-308.0)
    steer(bench, 0)
    assert bench.controller.command > 0.06


def test_a_fan_at_speed_does_not_chase_a_pressure_that_cannot_be() -> None:
    bench = bench_with(speed=0.4, induced_pa=2.0, leak_m3_h=2100.0)
    steer(bench, 0)
    assert bench.controller.command == 0.4

    bench = bench_with(speed=0.4, induced_pa=-2.7, leak_m3_h=-308.0)
    steer(bench, 0)
    assert bench.controller.command == 0.4
