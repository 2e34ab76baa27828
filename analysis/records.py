"""The records of the trade: what was tested, what was read, what came out. All frozen, all in SI units.

Signs: an envelope pressure is indoor minus outdoor, negative when depressurizing. A flow is the volume flow through
the fan, positive, at the density of the air that passes the fan, after the flow element's own calibration and density
correction. A *zero-flow pressure* is the envelope pressure with the fan covered.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum


class Direction(StrEnum):
    """Which way the fan blows."""

    DEPRESSURIZE = "depressurize"
    PRESSURIZE = "pressurize"

    @property
    def sign(self) -> int:
        """Sign of the induced pressure: -1 when depressurizing, +1 when pressurizing."""
        return -1 if self is Direction.DEPRESSURIZE else 1


@dataclass(frozen=True, slots=True)
class Building:
    """The tested building. What is not known is None; what needs it then is None too."""

    name: str
    volume_m3: float | None = None
    envelope_area_m2: float | None = None
    floor_area_m2: float | None = None
    height_m: float | None = None
    altitude_m: float = 0.0


@dataclass(frozen=True, slots=True)
class Air:
    """Air and weather during a run. Humidity 0..1; barometric pressure absolute at the site."""

    indoor_c: float
    outdoor_c: float
    indoor_rh: float | None = None
    outdoor_rh: float | None = None
    barometric_pa: float | None = None
    wind_m_s: float | None = None


@dataclass(frozen=True, slots=True)
class FlowRange:
    """A flow range with its calibration: `q = coefficient * dp**exponent` in m3/h and Pa at the reference density.

    The calibration holds for element pressures from `min_pa` to `max_pa`.
    """

    name: str
    coefficient_m3_h_pa_n: float
    exponent: float
    min_pa: float
    max_pa: float
    reference_density_kg_m3: float = 1.2041


@dataclass(frozen=True, slots=True)
class ZeroFlow:
    """A record of the zero-flow pressure.

    `positive_mean_pa` and `negative_mean_pa` are the means of the positive and of the negative readings, None where
    there were none. `readings_pa` is empty where only the means were given.
    """

    mean_pa: float
    positive_mean_pa: float | None
    negative_mean_pa: float | None
    count: int
    seconds: float | None = None
    readings_pa: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class Point:
    """Means over one averaging window; the pressure is not yet corrected by the zero-flow pressure."""

    envelope_pa: float
    flow_m3_h: float
    seconds: float | None = None
    target_pa: float | None = None
    count: int | None = None
    envelope_sd_pa: float | None = None
    flow_sd_m3_h: float | None = None


@dataclass(frozen=True, slots=True)
class Run:
    """One direction: zero, points, zero."""

    direction: Direction
    air: Air
    points: tuple[Point, ...]
    zero_before: ZeroFlow | None = None
    zero_after: ZeroFlow | None = None
    started: datetime | None = None
    gust_corrected: Run | None = None
    """The same run with the outdoor pressure of several taps weighted against gusts, None with fewer than three."""
    zeros_between: tuple[ZeroFlow, ...] = ()
    """Zero-flow records between the points, in their order."""
    zero_at_points_pa: tuple[float, ...] = ()
    """Zero-flow pressure at the time of each point, from all records; empty without records between the points."""

    @property
    def zeros(self) -> tuple[ZeroFlow, ...]:
        """All zero-flow records in their order."""
        return tuple(zero for zero in (self.zero_before, *self.zeros_between, self.zero_after) if zero is not None)


@dataclass(frozen=True, slots=True)
class Test:
    """A test of a building at one stage: one run, or one in each direction."""

    building: Building
    runs: tuple[Run, ...]
    stage: str = ""
    preparation: str = ""
    """Id of the state in which the method wants the building, empty where nobody has said."""


@dataclass(frozen=True, slots=True)
class Estimate:
    """A value with its 95 % interval; `extrapolated` when it lies outside the measured pressures.

    Without degrees of freedom (a line through two points) the interval is unbounded: `high` is infinite.
    """

    value: float
    low: float
    high: float
    extrapolated: bool = False

    @property
    def half_width(self) -> float:
        """Half of the interval."""
        return (self.high - self.low) / 2

    def times(self, factor: float) -> Estimate:
        """Return the estimate times a factor above 0 that is taken as exact."""
        return Estimate(self.value * factor, self.low * factor, self.high * factor, self.extrapolated)


@dataclass(frozen=True, slots=True)
class PowerLaw:
    """A fitted leakage line `q = C dp**n` in m3/h and Pa, with what is needed to say how sure it is.

    The variances and the covariance belong to the two parameters ln C and n. `dof` are the degrees of freedom of
    Student's t (infinite for a normal distribution); with 0 the line has no interval. `residual_sd` is the standard
    deviation of ln q about the line. The measured pressures lie between `low_pa` and `high_pa`.
    """

    ln_c: float
    n: float
    var_ln_c: float
    var_n: float
    cov_ln_c_n: float
    dof: float
    r2: float
    residual_sd: float
    low_pa: float
    high_pa: float


@dataclass(frozen=True, slots=True)
class Check:
    """One requirement of a method, as far as it was checked.

    `ok` is None where it could not be checked (yet): `text` then says what is missing. `source` says where the
    requirement was read, or "from memory".
    """

    id: str
    clause: str
    text: str
    value: float | None
    limit: float | None
    unit: str
    ok: bool | None
    source: str


@dataclass(frozen=True, slots=True)
class RunResult:
    """What came out of one direction. Quantities that lack an input (volume, area) are None.

    `line` goes through `envelope_flow_m3_h` against the magnitudes of `induced_pa`.
    """

    direction: Direction
    zero_pa: float
    n: Estimate
    c_env_m3_h_pa_n: Estimate
    c_l_m3_h_pa_n: Estimate
    r2: float
    q50_m3_h: Estimate
    n50_per_h: Estimate | None
    qe50_m3_h_m2: Estimate | None
    qf50_m3_h_m2: Estimate | None
    ela4_cm2: Estimate
    eqla10_cm2: Estimate
    induced_pa: tuple[float, ...]
    envelope_flow_m3_h: tuple[float, ...]
    checks: tuple[Check, ...]
    line: PowerLaw | None = None
    reference_line: PowerLaw | None = None
    """The same line in reference air."""

    @property
    def valid(self) -> bool:
        """True when every check is met; one that could not be made does not count as met."""
        return all(check.ok for check in self.checks)


@dataclass(frozen=True, slots=True)
class MeanResult:
    """Mean of both directions."""

    q50_m3_h: Estimate
    n50_per_h: Estimate | None
    qe50_m3_h_m2: Estimate | None
    qf50_m3_h_m2: Estimate | None


@dataclass(frozen=True, slots=True)
class Limit:
    """A limit or target: the quantity must be at most `value`. `quantity` names one of `analysis.effective`.

    It is held against the mean of the directions or, with `each_direction`, against each of them.
    """

    id: str
    quantity: str
    value: float
    each_direction: bool = False


@dataclass(frozen=True, slots=True)
class UncertaintyPart:
    """One independent part of the uncertainty of a result: the standard uncertainty of its logarithm.

    A part that is `repeatable` is drawn anew in every test; one that is not (a calibration, a volume) stays the same.
    """

    id: str
    ln_u: float
    dof: float = math.inf
    repeatable: bool = True


@dataclass(frozen=True, slots=True)
class Kit:
    """Standard uncertainties of what a test is made with and of what its result is divided by.

    Relative ones but for the temperature. The figures stand where nobody knows better (our choice).
    """

    gauge: float = 0.005
    flow_element: float = 0.025
    temperature_k: float = 0.5
    volume: float = 0.02
    envelope_area: float = 0.03
    floor_area: float = 0.02


@dataclass(frozen=True, slots=True)
class QuantityBudget:
    """A quantity with everything that makes it uncertain: `total` is its 95 % interval with all parts together."""

    quantity: str
    total: Estimate
    parts: tuple[UncertaintyPart, ...]
    dof: float


@dataclass(frozen=True, slots=True)
class BestEstimate:
    """What the readings say by the best means there are, beside the official number of a method.

    `q50_m3_h` has the interval of all that the readings hold (scatter, zero-flow pressure, wind), without the
    instruments. `difference` is how far it lies from the official flow at 50 Pa, as a share of that. `lines` are in
    reference air, a line for each run.
    """

    fit: str
    reason: str
    q50_m3_h: Estimate
    difference: float
    lines: tuple[PowerLaw, ...]


@dataclass(frozen=True, slots=True)
class Improvement:
    """A part of the uncertainty that would settle a verdict alone, if it were brought down to `ln_u_needed`."""

    part: UncertaintyPart
    ln_u_needed: float


@dataclass(frozen=True, slots=True)
class Settling:
    """What would settle a verdict that cannot be told, the value staying what it is.

    `narrowing` is what the width of the interval has to be multiplied by, 0 where the value is the limit itself: then
    nothing settles it. `tests` is how many equal tests, this one among them, have a mean that settles it; None where no
    sensible number does. `improvements` are the parts that would settle it alone, the least demanding first.
    """

    narrowing: float
    tests: int | None
    improvements: tuple[Improvement, ...] = ()


@dataclass(frozen=True, slots=True)
class Verdict:
    """A limit held against a result: `probability` that the true value is within the limit (JCGM 106)."""

    limit: Limit
    probability: float
    verdict: str
    """One of "meets", "does not meet", "cannot tell"."""
    settling: Settling | None = None


@dataclass(frozen=True, slots=True)
class TestResult:
    """The result of a test under one method. `mean` stands for a single run too (it then repeats the run)."""

    method: str
    fit: str
    runs: tuple[RunResult, ...]
    mean: MeanResult
    verdicts: tuple[Verdict, ...] = ()
    best: BestEstimate | None = None
    budgets: tuple[QuantityBudget, ...] = ()

    @property
    def valid(self) -> bool:
        """True when every check of every run is met."""
        return all(run.valid for run in self.runs)
