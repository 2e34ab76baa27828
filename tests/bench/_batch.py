"""Tests of many houses by chance side by side, for Monte-Carlo runs: the plant and the analysis, without wires.

A simple vectorised controller brings every house to its targets; from there on readings become tests as in the program:
flow by the element's own formula, storage taken off, spreads kept. No estimate ever sees the truth.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from analysis.air import moist_air_density
from analysis.flow import element_flow_m3_h
from analysis.gust import SteadyWindow, gust_weights, weighted
from analysis.records import Air, Building, Direction, FlowRange, Point, Run, Test
from analysis.zeroflow import zero_flow
from simulators.air import REFERENCE_DENSITY_KG_M3
from simulators.element import HIGHEST_PA, LOWEST_PA, range_named
from simulators.house import House
from simulators.plant import Plant, PlantInputs
from simulators.random_house import random_houses
from simulators.rigging import Rigging, TapPlace

Floats = NDArray[np.float64]
DT_S = 0.1
TARGETS_PA = (60.0, 54.0, 48.0, 43.0, 38.0, 33.0, 28.0, 23.0, 18.0, 13.0)
STORAGE_EXPONENT = 1.2


@dataclass(frozen=True, slots=True)
class Schedule:
    """How long everything takes (s)."""

    zero_s: float = 60.0
    reach_s: float = 16.0
    first_reach_s: float = 45.0
    average_s: float = 20.0


@dataclass(frozen=True, slots=True)
class Window:
    """Readings of a window: at each tap (count, houses, taps), at the element (count, houses), mean temperatures."""

    taps_pa: Floats
    element_pa: Floats
    indoor_c: Floats
    outdoor_c: Floats


@dataclass(slots=True)
class Recording:
    """What was read of all houses in one direction."""

    before: Window
    points: list[Window] = field(default_factory=list)
    after: Window | None = None


def houses_tested(
    count: int, wind_m_s: float, taps: int, seed: int, schedule: Schedule | None = None
) -> tuple[list[Test], Floats]:
    """Return a test in both directions of each house, and the true flows at 50 Pa, mean of both directions (m3/h)."""
    plan = schedule or Schedule()
    houses = random_houses(count, seed, wind_m_s)
    place = TapPlace.GROUND if taps == 1 else TapPlace.FACADE
    plant = Plant(houses, seed, wind_m_s, Rigging(taps=taps, tap=place))
    recordings = {way: _recorded(plant, way, taps, plan) for way in Direction}
    truth = (plant.true_flow_m3_h(-50.0) + plant.true_flow_m3_h(50.0)) / 2.0
    tests = [_test(house, at, recordings, taps, plan) for at, house in enumerate(houses)]
    return tests, truth


def _recorded(plant: Plant, way: Direction, taps: int, plan: Schedule) -> Recording:
    rest = np.zeros(len(plant.houses))
    run(plant, way, rest, 20.0, taps)
    recording = Recording(run(plant, way, rest, plan.zero_s, taps))
    zero_pa = recording.before.taps_pa.mean(axis=(0, 2))
    speed = np.full(len(plant.houses), 0.15)
    for at, target_pa in enumerate(TARGETS_PA):
        speed = reach(plant, way, speed, target_pa, zero_pa, plan.first_reach_s if at == 0 else plan.reach_s, taps)
        recording.points.append(run(plant, way, speed, plan.average_s, taps))
    run(plant, way, rest, 25.0, taps)
    recording.after = run(plant, way, rest, plan.zero_s, taps)
    return recording


def reach(
    plant: Plant, way: Direction, speed: Floats, target_pa: float, zero_pa: Floats, time_s: float, taps: int
) -> Floats:
    """Return the speeds that bring the houses near a target: a fan law, corrected every second and a half.

    Tight houses follow slowly: what is held against the target is where the pressure is going, by the time constant
    that a person who knows volume and flow would expect.
    """
    step_s, left_s = 1.5, time_s
    lag_s = _lag_s(plant.houses, target_pa)
    while left_s > 4.0:
        seen = run(plant, way, speed, step_s, taps)
        late, early = (seen.taps_pa[part].mean(axis=(0, 2)) for part in (slice(-5, None), slice(-10, -5)))
        going_pa = lag_s * (late - early) / (5 * DT_S)
        now_pa = way.sign * (late + going_pa - zero_pa)
        ratio = np.clip(target_pa / np.maximum(now_pa, 1.0), 0.5, 2.0)
        speed = np.clip(speed * ratio**0.45, 0.06, 1.0)
        left_s -= step_s
    run(plant, way, speed, left_s, taps)
    return speed


def _lag_s(houses: Sequence[House], pressure_pa: float) -> Floats:
    """Return the time constant of the air in each house at a pressure: V dp/(k p n q)."""
    volume_m3 = np.array([house.volume_m3 for house in houses])
    flow_m3_s = volume_m3 * np.array([house.n50_per_h for house in houses]) / 3600.0 * (pressure_pa / 50.0) ** 0.65
    lag_s: Floats = volume_m3 * pressure_pa / (STORAGE_EXPONENT * 101_325.0 * 0.65 * flow_m3_s)
    return lag_s


def run(plant: Plant, way: Direction, speed: Floats, time_s: float, taps: int) -> Window:
    """Return what the gauge shows ten times a second while the fans turn at these speeds."""
    inputs = PlantInputs(speed, np.full(len(plant.houses), float(way.sign)))
    columns = [plant.channel("p1"), *(plant.channel(f"p{number}") for number in range(3, 2 + taps))]
    element = plant.channel("p2")
    count = round(time_s / DT_S)
    taps_pa = np.empty((count, len(plant.houses), taps))
    element_pa = np.empty((count, len(plant.houses)))
    indoor, outdoor = (plant.gauge.columns[name] for name in ("t1", "t2"))
    warmth = np.zeros((2, len(plant.houses)))
    for at in range(count):
        plant.step(DT_S, inputs)
        warmth += plant.gauge.shown[:, [indoor, outdoor]].T / count
        taps_pa[at] = plant.gauge.shown[:, columns]
        element_pa[at] = plant.gauge.shown[:, element]
    return Window(taps_pa, element_pa, warmth[0], warmth[1])


def _test(house: House, at: int, recordings: dict[Direction, Recording], taps: int, plan: Schedule) -> Test:
    climate = house.climate
    air = Air(
        climate.indoor_c,
        climate.outdoor_c,
        climate.indoor_rh,
        climate.outdoor_rh,
        climate.barometric_pa,
        climate.wind_m_s,
    )
    building = Building(
        house.name, house.volume_m3, house.envelope_area_m2, house.floor_area_m2, house.height_m, house.altitude_m
    )
    runs = []
    for way, recording in recordings.items():
        plain = _run_of(way, recording, at, house, air, building, (1.0 / taps,) * taps, plan)
        windows = [SteadyWindow(window.taps_pa[:, at], window.element_pa[:, at]) for window in recording.points]
        weights = gust_weights(windows)
        corrected = _run_of(way, recording, at, house, air, building, weights, plan) if weights else None
        runs.append(replace(plain, gust_corrected=corrected))
    return Test(building, tuple(runs))


def _run_of(
    way: Direction, recording: Recording, at: int, house: House, air: Air, building: Building,
    weights: Sequence[float], plan: Schedule,
) -> Run:  # fmt: skip
    assert recording.after is not None
    fitted = range_named(house.fitted)
    flow_range = FlowRange(
        fitted.name, 3600.0 * fitted.coefficient, fitted.exponent, LOWEST_PA, HIGHEST_PA, REFERENCE_DENSITY_KG_M3
    )
    windows = [recording.before, *recording.points, recording.after]
    air = replace(
        air,
        indoor_c=float(np.mean([window.indoor_c[at] for window in windows])),
        outdoor_c=float(np.mean([window.outdoor_c[at] for window in windows])),
    )
    assert air.barometric_pa is not None

    def point(window: Window, target_pa: float) -> Point:
        pressure_pa = weighted(window.taps_pa[:, at], weights)
        inside = way is Direction.DEPRESSURIZE
        warm_c = float((window.indoor_c if inside else window.outdoor_c)[at])
        rh = air.indoor_rh if inside else air.outdoor_rh
        density = moist_air_density(warm_c, rh, air.barometric_pa or 0.0)
        flow = element_flow_m3_h(window.element_pa[:, at], flow_range, density)
        slope = float(np.polyfit(np.arange(len(pressure_pa)) * DT_S, pressure_pa, 1)[0])
        stored = house.volume_m3 / (STORAGE_EXPONENT * 101_325.0) * slope * 3600.0
        return Point(
            float(pressure_pa.mean()), float(flow.mean()) - way.sign * stored, plan.average_s, target_pa,
            len(pressure_pa), float(pressure_pa.std(ddof=1)), float(flow.std(ddof=1)),
        )  # fmt: skip

    zeros = [
        replace(zero_flow(tuple(weighted(window.taps_pa[:, at], weights).tolist())), seconds=plan.zero_s)
        for window in (recording.before, recording.after)
    ]
    points = tuple(point(window, target) for window, target in zip(recording.points, TARGETS_PA, strict=True))
    return Run(way, air, points, zeros[0], zeros[1])
