"""Houses by chance, for benchmarks: the spread of leakage, shape and weather over which accuracy is stated.

All figures are invented, in the ranges that the trade meets: n50 0.3 to 10 1/h, exponents 0.5 to 0.75, 120 to 1200 m3.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from simulators.element import RANGES, ElementRange
from simulators.house import FACADES, WALLS, Climate, Facade, House, Leak

LOWEST_N50, HIGHEST_N50 = 0.3, 10.0
LOWEST_EXPONENT, HIGHEST_EXPONENT = 0.50, 0.75
EXPONENT_SPREAD, CLIPPED_EXPONENT = 0.03, 0.85
TYPICAL_VOLUME_M3, VOLUME_SPREAD = 380.0, 0.35
SMALLEST_VOLUME_M3, LARGEST_VOLUME_M3 = 120.0, 1200.0
HEIGHTS_M, HEIGHT_SHARES = (2.5, 5.0, 7.5), (0.35, 0.55, 0.10)
STOREY_M = 2.5
COLDEST_K, WARMEST_K = -7.0, 25.0
"""Indoors minus outdoors."""
LEAK_WEIGHTS = (2.0, 2.0, 2.0, 2.0, 4.0, 2.0)
"""Dirichlet weights of north, east, south, west, roof and floor."""
HIGHEST_TARGET_PA = 60.0
RESERVE = 1.15
"""By how much the fan can do more than the highest target takes in still air."""


def random_house(rng: np.random.Generator, wind_m_s: float = 0.0, shelter: float = 0.5) -> House:
    """Draw a house that the fan can bring to 60 Pa, with the flow range fitted that suits it.

    Houses beyond the fan's reach are drawn again; about one in fifty is.
    """
    while True:
        volume_m3 = float(
            np.clip(rng.lognormal(math.log(TYPICAL_VOLUME_M3), VOLUME_SPREAD), SMALLEST_VOLUME_M3, LARGEST_VOLUME_M3)
        )
        n50_per_h = float(math.exp(rng.uniform(math.log(LOWEST_N50), math.log(HIGHEST_N50))))
        height_m = float(rng.choice(HEIGHTS_M, p=HEIGHT_SHARES))
        leaks = _leaks(rng, height_m)
        mean_exponent = sum(leak.share * leak.exponent for leak in leaks)
        top_m3_s = RESERVE * n50_per_h * volume_m3 / 3600.0 * (HIGHEST_TARGET_PA / 50.0) ** mean_exponent
        fitting = range_for(top_m3_s)
        if fitting is not None:
            break
    floor_m2 = volume_m3 / height_m
    wall_m2 = 4.0 * math.sqrt(floor_m2) * height_m
    return House(
        id="random",
        name="House by chance",
        note="Invented data.",
        volume_m3=volume_m3,
        envelope_area_m2=wall_m2 + 2.0 * floor_m2,
        floor_area_m2=floor_m2 * round(height_m / STOREY_M),
        height_m=height_m,
        altitude_m=0.0,
        n50_per_h=n50_per_h,
        air_stiffness=1.2,
        leaks=leaks,
        climate=_climate(rng, wind_m_s, shelter),
        fan_facade=WALLS[int(rng.integers(len(WALLS)))],
        fitted=fitting.name,
        gauge_height_m=1.2,
    )


def random_houses(count: int, seed: int, wind_m_s: float = 0.0, shelter: float = 0.5) -> tuple[House, ...]:
    """Draw so many houses; one seed gives the same houses, and the first of many are those of fewer."""
    return tuple(random_house(rng, wind_m_s, shelter) for rng in np.random.default_rng(seed).spawn(count))


def range_for(top_m3_s: float) -> ElementRange | None:
    """Return the smallest flow range that reaches a flow, None when none does."""
    reaching = [item for item in RANGES if item.top_m3_s >= top_m3_s]
    return min(reaching, key=lambda item: item.top_m3_s, default=None)


def _leaks(rng: np.random.Generator, height_m: float) -> tuple[Leak, ...]:
    shares: Sequence[float] = rng.dirichlet(LEAK_WEIGHTS).tolist()
    mean = rng.uniform(LOWEST_EXPONENT, HIGHEST_EXPONENT)
    exponents: Sequence[float] = np.clip(
        mean + EXPONENT_SPREAD * rng.standard_normal(len(FACADES)), LOWEST_EXPONENT, CLIPPED_EXPONENT
    ).tolist()
    at = {wall: float(rng.uniform(0.2, 0.8)) * height_m for wall in WALLS} | {Facade.ROOF: height_m, Facade.FLOOR: 0.0}
    return tuple(
        Leak(f"leaks, {facade}", facade, share, exponent, at[facade])
        for facade, share, exponent in zip(FACADES, shares, exponents, strict=True)
    )


def _climate(rng: np.random.Generator, wind_m_s: float, shelter: float) -> Climate:
    indoor_c = float(rng.uniform(18.0, 24.0))
    return Climate(
        indoor_c=indoor_c,
        outdoor_c=indoor_c - float(rng.uniform(COLDEST_K, WARMEST_K)),
        indoor_rh=float(rng.uniform(0.3, 0.6)),
        outdoor_rh=float(rng.uniform(0.5, 0.9)),
        barometric_pa=float(rng.uniform(98_500.0, 103_000.0)),
        wind_m_s=wind_m_s,
        wind_from_deg=float(rng.uniform(0.0, 360.0)),
        shelter=shelter,
    )
