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
from analysis.estimators.observations import Observations, PointNoise
from analysis.flow import envelope_factor
from analysis.noise import ZeroParts, point_noise, zero_parts
from analysis.powerlaw import in_other_air
from analysis.records import BestEstimate, Building, PowerLaw, Run, Test
from analysis.siteair import leak_air, moist_site_air, to_reference
from analysis.zeroflow import zero_correction_pa

NUDGE_PA = 0.05
"""By how much the zero-flow pressure is moved to see what it does to the line."""
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

    `nudged` is the line with the zero-flow pressure raised by `NUDGE_PA`: what an error of it does at any pressure.
    `zero` is None without a zero-flow record. `holds_zero` tells whether the interval of the line holds `zero` already.
    """

    kind: str
    line: PowerLaw
    nudged: PowerLaw
    zero: ZeroParts | None
    holds_zero: bool


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
    kinds = [_kind(run) for run in test.runs]
    weakest = max(kinds, key=list(REASONS).index)
    return tuple(_best_run(run, test.building, weakest) for run in test.runs)


def _kind(run: Run) -> str:
    """Return the best fit that the record of a run allows."""
    magnitudes = [abs(point.envelope_pa) for point in run.points]
    if max(magnitudes) < _ONE_PRESSURE * min(magnitudes):
        return "assumed-exponent"
    if _noise(run) is None or len(run.points) < 3:
        return "ols"
    return "gls" if run.gust_corrected is None else "gusts"


def _noise(run: Run) -> PointNoise | None:
    try:
        return point_noise(run, "run", "gls")
    except InvalidInput:
        return None


def _best_run(run: Run, building: Building, kind: str) -> BestRun:
    read = run.gust_corrected if kind == "gusts" and run.gust_corrected is not None else run
    zero_pa = zero_correction_pa(read.zero_before, read.zero_after)
    air = moist_site_air(read.air, building)
    factor = envelope_factor(read.direction, air.indoor_kg_m3, air.outdoor_kg_m3)
    flows = tuple(point.flow_m3_h * factor for point in read.points)
    noise = _noise(read)
    conversion = to_reference(*leak_air(read.direction, air))

    def line(zero_pa: float) -> PowerLaw:
        magnitudes = tuple(abs(point.envelope_pa - zero_pa) for point in read.points)
        fitted = _fit(Observations(magnitudes, flows, noise), kind)
        return in_other_air(fitted, *conversion)

    # With the model error of several taps where the weights were used.
    parts = zero_parts(run if kind == "gusts" else replace(read, gust_corrected=None))
    if kind == "gusts":
        scatter = zero_parts(read)
        parts = None if parts is None or scatter is None else replace(scatter, wind=parts.wind)
    return BestRun(kind, line(zero_pa), line(zero_pa + NUDGE_PA), parts, kind in ("gls", "gusts"))


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
