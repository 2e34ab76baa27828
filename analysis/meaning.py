"""What a result means for the house: one hole, the natural air change, a design beside it, exhaust fans.

Every part is an estimate by a named model with its wide band; none of it belongs on a certificate.
"""

from __future__ import annotations

from dataclasses import dataclass

from analysis.design import DesignComparison, compare_with_design, nearest_construction
from analysis.design.assumptions import Construction
from analysis.errors import InvalidInput
from analysis.exhaust import Depressurization, depressurization
from analysis.hole import EquivalentHole, equivalent_hole
from analysis.infiltration import (
    Foundation,
    Infiltration,
    Shelter,
    Site,
    Terrain,
    Weather,
    basic_infiltration,
    by_twenty,
    credit,
    enhanced_infiltration,
)
from analysis.records import Building, RunResult, TestResult
from analysis.uncertain import Measured

STOREY_M = 2.7
"""Height of a storey, floor to floor, where only the height of the house is known (common practice, no source)."""
MOST_STOREYS = 3
EXHAUST_U = 0.1
"""Relative standard uncertainty of an exhaust flow that somebody states (our choice)."""


@dataclass(frozen=True, slots=True)
class Surroundings:
    """What the models ask for besides the test. None: not stated, and what needs it is left out.

    `temperature_difference_k` and `wind_m_s` are those of the season that is looked at, the wind at a weather station.
    """

    storeys: int | None = None
    shelter: int = Shelter.LARGER_LOTS.value
    flue: bool = False
    crawl_space: bool = False
    temperature_difference_k: float = 20.0
    wind_m_s: float = 4.0
    weather_factor: float | None = None
    assumed_per_h: float | None = None
    design_difference_k: float = 30.0
    exhaust_m3_h: float | None = None


@dataclass(frozen=True, slots=True)
class Meaning:
    """Everything that a result lets say of the house; `gaps` tell in sentences what is left out and why."""

    hole: EquivalentHole
    construction: Construction | None
    natural: tuple[Infiltration, ...]
    credit: Infiltration | None
    design: DesignComparison | None
    exhaust: Depressurization | None
    gaps: tuple[str, ...]


def meaning_of(result: TestResult, building: Building, surroundings: Surroundings) -> Meaning:
    """Return what a result means. The run with the larger flow at 50 Pa stands for the house.

    A part whose input is missing or impossible is left out, with its sentence among the gaps.
    """
    run = max(result.runs, key=lambda item: item.q50_m3_h.value)
    gaps: list[str] = []
    natural = _natural(run, building, surroundings, gaps)
    return Meaning(
        hole=equivalent_hole(run.eqla10_cm2),
        construction=_construction(run, building),
        natural=natural,
        credit=_credit(result, building, surroundings, gaps),
        design=_design(natural, building, surroundings, gaps),
        exhaust=_exhaust(run, surroundings, gaps),
        gaps=tuple(gaps),
    )


def storeys_of(building: Building, surroundings: Surroundings) -> int:
    """Return the storeys as stated, or by the height of the house, 1 where neither is known."""
    if surroundings.storeys is not None:
        return surroundings.storeys
    if building.height_m is None:
        return 1
    return min(max(round(building.height_m / STOREY_M), 1), MOST_STOREYS)


def _natural(
    run: RunResult, building: Building, surroundings: Surroundings, gaps: list[str]
) -> tuple[Infiltration, ...]:
    line = run.reference_line
    found: list[Infiltration] = []
    try:
        site = Site(
            storeys_of(building, surroundings),
            Shelter(surroundings.shelter),
            surroundings.flue,
            Foundation.CRAWL_SPACE if surroundings.crawl_space else Foundation.BASEMENT_OR_SLAB,
            Terrain.SUBURB,
        )
        weather = Weather(surroundings.temperature_difference_k, surroundings.wind_m_s)
        found.append(basic_infiltration(run.ela4_cm2, site, weather, building.volume_m3))
        if line is not None:
            found.append(enhanced_infiltration(line, site, weather, building.volume_m3))
    except InvalidInput as error:
        gaps.append(f"No natural air change: {error}.")
    if building.volume_m3 is None:
        gaps.append("No air change per hour: the volume is not stated.")
    else:
        found.append(by_twenty(run.q50_m3_h, building.volume_m3))
    return tuple(found)


def _construction(run: RunResult, building: Building) -> Construction | None:
    if building.envelope_area_m2 is None:
        return None
    return nearest_construction(run.ela4_cm2.value, building.envelope_area_m2)


def _credit(result: TestResult, building: Building, surroundings: Surroundings, gaps: list[str]) -> Infiltration | None:
    if surroundings.weather_factor is None:
        return None
    if building.height_m is None:
        gaps.append("No infiltration credit: the height is not stated.")
        return None
    try:
        return credit(result.mean.q50_m3_h, building.height_m, surroundings.weather_factor, building.volume_m3)
    except InvalidInput as error:
        gaps.append(f"No infiltration credit: {error}.")
        return None


def _design(
    natural: tuple[Infiltration, ...], building: Building, surroundings: Surroundings, gaps: list[str]
) -> DesignComparison | None:
    """Hold the assumption against the basic model: of all it leans least on the exponent."""
    if surroundings.assumed_per_h is None:
        return None
    expected = next((item for item in natural if item.model.id == "basic"), None)
    if expected is None or expected.air_change_per_h is None or building.volume_m3 is None:
        gaps.append("No comparison with a design: the expected air change is not known.")
        return None
    try:
        return compare_with_design(
            surroundings.assumed_per_h, expected, building.volume_m3, surroundings.design_difference_k
        )
    except InvalidInput as error:
        gaps.append(f"No comparison with a design: {error}.")
        return None


def _exhaust(run: RunResult, surroundings: Surroundings, gaps: list[str]) -> Depressurization | None:
    exhaust, line = surroundings.exhaust_m3_h, run.reference_line
    if exhaust is None or line is None:
        return None
    try:
        return depressurization(line, Measured(exhaust, EXHAUST_U * exhaust, logarithmic=True))
    except InvalidInput as error:
        gaps.append(f"No depressurization by fans: {error}.")
        return None
