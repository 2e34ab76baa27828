"""A method: what a standard makes of a run. Data and small functions; the common way through them is in `run.py`."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from analysis.methods.measures import Measure
from analysis.methods.requirement import Requirement
from analysis.records import Air, Building, Direction
from analysis.siteair import SiteAir


@dataclass(frozen=True, slots=True)
class Conversion:
    """How a method brings flows to the envelope and the line to reference air.

    `site_air` gives the densities. `to_reference(temperature_c, density)` of the air that enters the leaks gives
    (a, b) such that ln C at reference conditions is ln C + a + b n.
    """

    site_air: Callable[[Air, Building], SiteAir]
    to_reference: Callable[[float, float], tuple[float, float]]


@dataclass(frozen=True, slots=True)
class Sequence:
    """What a standard has a tester do: the plan that is offered when its method is chosen.

    Targets are magnitudes in the order in which they are taken; a target that stands there more than once is measured
    as often. `both_directions` is true where one direction alone is no test by this standard.
    """

    directions: tuple[Direction, ...]
    targets_pa: tuple[float, ...]
    zero_s: float
    average_s: float
    both_directions: bool = False


@dataclass(frozen=True, slots=True)
class Method:
    """A standard's way from readings to a result.

    `fewest_points` make a line by its official fit; with `one_pressure` they may all lie at the same pressure.
    `reports` are the quantities that the standard puts in front, by their ids. `preparations` are the states in which
    a building may be tested, by their ids. `not_in_record` lists what the standard asks for and no record of readings
    can show; a report has to say it.
    """

    id: str
    title: str
    official_fit: str
    conversion: Conversion
    requirements: Callable[[], tuple[Requirement, ...]]
    measures: Mapping[str, Measure]
    sequence: Sequence
    reports: tuple[str, ...] = ("n50_per_h", "q50_m3_h")
    fewest_points: int = 2
    one_pressure: bool = False
    preparations: Mapping[str, str] = field(default_factory=dict)
    not_in_record: tuple[str, ...] = ()
