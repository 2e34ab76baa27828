"""The best estimate of a test: the best fit that its readings allow, in reference air by density and viscosity.

The form of the conversion without viscosity, which ISO 9972 has, is up to 1.4 % off in cold air or at altitude; what a
method's official number leaves out shows as the difference between both.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from analysis.effective import REFERENCE_PRESSURE_PA, mean_flow
from analysis.errors import InvalidInput
from analysis.estimators import assumed, gls, ols
from analysis.estimators.observations import Observations, PointNoise, ZeroParts
from analysis.flow import envelope_factor
from analysis.noise import GUST_BIAS_SHARE, point_noise, zero_parts
from analysis.powerlaw import in_other_air
from analysis.records import BestEstimate, Building, PowerLaw, Run, Test
from analysis.siteair import leak_air, moist_site_air, to_reference
from analysis.zeroflow import zero_correction_pa

NUDGE_PA = 0.05
"""By how much the zero-flow pressure is moved to see what it does to the line."""
MODEL_LN_U = 0.0010
"""No line of one direction is surer than this, whatever its points say (standard uncertainty of ln q).

Worked out for 400 simulated houses in still air: stack bends the line of one direction by 0.0010, the other way round
in the other direction; leaks of different exponents by 0.00002. With it the intervals of the complete program hold the
truth in 93.7 to 97.5 % of 80 simulated tests (two seeds, of which it was chosen on one) at 0, 3 and 6 m/s with one
and with four outdoor taps; not held against field tests.
"""
_ONE_PRESSURE = 1.1

_BY_DENSITY_AND_VISCOSITY = "converts to reference air by density and viscosity"
REASONS = {
    "gusts": (
        "takes the outdoor pressure of several taps with weights that cancel gusts, weighs each point by the spread of "
        f"its readings, lets the zero-flow pressure err for all points alike, and {_BY_DENSITY_AND_VISCOSITY}"
    ),
    "gls": (
        "weighs each point by the spread of its readings, lets the zero-flow pressure err for all points alike, and "
        f"{_BY_DENSITY_AND_VISCOSITY}"
    ),
    "ols": f"{_BY_DENSITY_AND_VISCOSITY}; the points weigh alike, because the spread of their readings is not recorded",
    "assumed-exponent": f"{_BY_DENSITY_AND_VISCOSITY}; the exponent is assumed, because there is one pressure only",
}


@dataclass(frozen=True, slots=True)
class BestRun:
    """The best line of a run in reference air.

    `zero` is None without a zero-flow record. `holds_zero` tells whether the interval of the line holds it already.
    """

    kind: str
    line: PowerLaw
    zero: ZeroParts | None

    response: tuple[float, float]
    """(a, b): ln q of the line moves by a + b ln dp with the zero-flow pressure (1/Pa)."""

    @property
    def holds_zero(self) -> bool:
        """Whether the fit itself lets the zero-flow pressure err."""
        return self.kind in ("gls", "gusts")

    def zero_slope(self, pressure_pa: float) -> float:
        """Return by how much ln q of the line at a pressure moves with the zero-flow pressure (1/Pa)."""
        return self.response[0] + self.response[1] * math.log(pressure_pa)


def best_estimate(runs: Sequence[BestRun], official_q50_m3_h: float) -> BestEstimate:
    """Return the estimate of a test from the best lines of its runs."""
    flow = mean_flow([run.line for run in runs], REFERENCE_PRESSURE_PA)
    kind = runs[0].kind
    return BestEstimate(
        fit="gls" if kind == "gusts" else kind,
        reason=REASONS[kind],
        q50_m3_h=flow.estimate,
        difference=flow.value / official_q50_m3_h - 1.0,
        lines=tuple(run.line for run in runs),
    )


def best_runs(test: Test) -> tuple[BestRun, ...]:
    """Return the best line of each run of a test that has been analysed, all runs by the same fit."""
    noises = [_noise(run) for run in test.runs]
    kinds = [_kind(run, noise) for run, noise in zip(test.runs, noises, strict=True)]
    weakest = max(kinds, key=list(REASONS).index)
    return tuple(_best_run(run, test.building, weakest, noise) for run, noise in zip(test.runs, noises, strict=True))


def _read(run: Run) -> Run:
    """Return the run whose outdoor pressure is weighted against gusts, where there is one."""
    return run if run.gust_corrected is None else run.gust_corrected


def _noise(run: Run) -> PointNoise | None:
    """Return how sure the points are, None where the record does not hold it."""
    try:
        own = point_noise(_read(run), "run", "gls")
    except InvalidInput:
        return None
    if run.gust_corrected is None:
        return own
    means = [zero.mean_pa for zero in run.zeros]
    wind = GUST_BIAS_SHARE * abs(math.fsum(means) / len(means))
    return replace(own, zero=replace(own.zero, wind=wind))


def _kind(run: Run, noise: PointNoise | None) -> str:
    """Return the best fit that the record of a run allows."""
    magnitudes = [abs(point.envelope_pa) for point in run.points]
    if max(magnitudes) < _ONE_PRESSURE * min(magnitudes):
        return "assumed-exponent"
    if noise is None or len(run.points) < 3:
        return "ols"
    return "gls" if run.gust_corrected is None else "gusts"


def _best_run(run: Run, building: Building, kind: str, noise: PointNoise | None) -> BestRun:
    read = _read(run) if kind == "gusts" else run
    zeros_pa = read.zero_at_points_pa or (zero_correction_pa(read.zero_before, read.zero_after),) * len(read.points)
    air = moist_site_air(read.air, building)
    factor = envelope_factor(read.direction, air.indoor_kg_m3, air.outdoor_kg_m3)
    magnitudes = tuple(abs(point.envelope_pa - zero_pa) for point, zero_pa in zip(read.points, zeros_pa, strict=True))
    observations = Observations(magnitudes, tuple(point.flow_m3_h * factor for point in read.points), noise)
    fitted = _fit(observations, kind)
    unsure = replace(fitted, var_ln_c=fitted.var_ln_c + MODEL_LN_U**2)
    line = in_other_air(unsure, *to_reference(*leak_air(read.direction, air)))
    zero = zero_parts(run) if noise is None else noise.zero
    return BestRun(kind, line, zero, _response(observations, fitted, kind))


def _response(observations: Observations, fitted: PowerLaw, kind: str) -> tuple[float, float]:
    """Return how a fitted line moves with the zero-flow pressure: from the weights, or by trying."""
    if kind in ("gls", "gusts"):
        return gls.response(observations, fitted)
    moved = tuple(pressure + NUDGE_PA for pressure in observations.pressure_pa)
    after = _fit(replace(observations, pressure_pa=moved), kind)
    return (after.ln_c - fitted.ln_c) / NUDGE_PA, (after.n - fitted.n) / NUDGE_PA


def _fit(observations: Observations, kind: str) -> PowerLaw:
    match kind:
        case "gusts" | "gls":
            return gls.fit(observations)
        case "ols":
            return ols.fit(observations)
        case _:
            return _assumed(observations)


def _assumed(observations: Observations) -> PowerLaw:
    """Return the line of assumed exponent; a single reading is as sure as the spread within it says."""
    line, noise = assumed.fit(observations), observations.noise
    if line.dof > 0 or noise is None:
        return line
    own = noise.ln_flow_u[0] ** 2 + (line.n * noise.pressure_u_pa[0] / observations.pressure_pa[0]) ** 2
    return replace(line, var_ln_c=line.var_ln_c + own, dof=math.inf)
