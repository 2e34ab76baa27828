"""Houses for the tests: simple enough to be checked by hand."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from simulators.air import FloatArray
from simulators.house import Climate, Facade, House, Leak
from simulators.houses import load_house
from simulators.plant import Plant, PlantInputs

REFERENCE_CLIMATE = Climate(
    indoor_c=20.0,
    outdoor_c=20.0,
    indoor_rh=0.0,
    outdoor_rh=0.0,
    barometric_pa=101_325.0,
    wind_m_s=0.0,
    wind_from_deg=0.0,
    shelter=1.0,
)


def one_leak_house(
    n50_per_h: float = 1.0,
    volume_m3: float = 400.0,
    exponent: float = 0.65,
    climate: Climate = REFERENCE_CLIMATE,
    pillowing: float = 0.0,
    fitted: str = "narrow",
) -> House:
    """Return a house whose only leak sits at the height of the gauge."""
    leaks = (Leak("gap", Facade.NORTH, 1.0, exponent, 1.2, pillowing),)
    house = load_house("mill-row")
    return replace(
        house, n50_per_h=n50_per_h, volume_m3=volume_m3, leaks=leaks, climate=climate, fitted=fitted, gauge_height_m=1.2
    )


def inputs(speed: float, direction: int = -1, count: int = 1) -> PlantInputs:
    """Return the same inputs for every house."""
    return PlantInputs(np.full(count, speed), np.full(count, float(direction)))


def run(plant: Plant, seconds: float, speed: float, direction: int = -1, dt_s: float = 0.1) -> FloatArray:
    """Step a plant and return its pressure after each step, (steps, B)."""
    held = inputs(speed, direction, len(plant.houses))
    course: list[FloatArray] = []
    for _ in range(round(seconds / dt_s)):
        plant.step(dt_s, held)
        course.append(plant.pressure_pa.copy())
    return np.array(course)
