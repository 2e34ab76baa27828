"""What a test can be expected to know, from its first zero-flow record: the interval of the flow at 50 Pa beforehand.

The wind that the record shows is carried through the same fit that will make the best estimate, so that what is
foretold is what the result will say of itself.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from analysis.best.estimate import MODEL_LN_U
from analysis.effective import REFERENCE_PRESSURE_PA
from analysis.estimators import assumed, gls
from analysis.estimators.observations import Observations, PointNoise, ZeroParts
from analysis.noise import LEAST_LN_FLOW_U, LEAST_PRESSURE_U_PA, UNKNOWN_INDEPENDENCE_S, WIND_BIAS_SHARE
from analysis.powerlaw import ln_flow_variance
from analysis.records import Kit, ZeroFlow
from analysis.statistics import mean_error_and_correlation
from analysis.student import t_multiplier
from analysis.zeroflow import zero_spread_pa

EXPONENT = 0.65
"""Of a house that nobody has measured yet (from memory, many standards assume it)."""
FLOW_SPREAD = 0.008
"""Standard deviation of the readings of a flow in still air, as a share of it (our choice, by simulated fans)."""
WANDER = 2.0
"""By how much the zero-flow pressure of two records differs, as a multiple of what their scatter makes expect.

Wind changes more slowly than one record can show. Tuned on simulated houses, not on field tests.
"""
_FEWEST = 20
_ONE_PRESSURE = 1.1


@dataclass(frozen=True, slots=True)
class Unrest:
    """What the wind does to the envelope pressure: mean, standard deviation, seconds of one independent reading."""

    mean_pa: float
    sd_pa: float
    independent_s: float

    def error_pa(self, record_s: float) -> float:
        """Return the standard error of the mean of a zero-flow record of this length."""
        independent = max(record_s / self.independent_s, 1.5)
        return max(self.sd_pa / math.sqrt(independent - 1.0), LEAST_PRESSURE_U_PA)


@dataclass(frozen=True, slots=True)
class Effort:
    """How a test is made: length and number of the zero-flow records of a run, length of a point, number of runs."""

    zero_s: float
    average_s: float
    runs: int = 1
    zeros: int = 2


def unrest(zero: ZeroFlow) -> Unrest:
    """Return what a zero-flow record shows of the wind; without its readings there is nothing but its mean."""
    spread = zero_spread_pa(zero)
    if spread is None:
        return Unrest(zero.mean_pa, 0.0, UNKNOWN_INDEPENDENCE_S)
    if zero.seconds is None or zero.count < _FEWEST:
        return Unrest(zero.mean_pa, spread, UNKNOWN_INDEPENDENCE_S)
    _, correlated = mean_error_and_correlation(zero.readings_pa)
    return Unrest(zero.mean_pa, spread, correlated * zero.seconds / zero.count)


def expected_half_width(air: Unrest, targets_pa: Sequence[float], effort: Effort) -> float:
    """Return half of the 95 % interval of q50 to expect, as a share of q50, without the instruments.

    `targets_pa` are magnitudes. Both runs of a test in both directions are independent of each other.
    """
    count = max(effort.average_s / air.independent_s, 1.0)
    pressure_u = max(air.sd_pa / math.sqrt(count), LEAST_PRESSURE_U_PA)
    own = max(FLOW_SPREAD / math.sqrt(max(effort.average_s, 1.0)), LEAST_LN_FLOW_U)
    targets = tuple(targets_pa)
    # A gust that moves the pressure moves the flow of a fan at constant speed a little too.
    flow_u = tuple(math.hypot(own, 0.2 * EXPONENT * pressure_u / target) for target in targets)
    noise = PointNoise((pressure_u,) * len(targets), flow_u, expected_zero(air, effort))
    flows = tuple(100.0 * target**EXPONENT for target in targets)
    observations = Observations(targets, flows, noise)
    if len(targets) < 3 or max(targets) < _ONE_PRESSURE * min(targets):
        variance = _of_one_pressure(observations, noise)
    else:
        variance = ln_flow_variance(gls.fit(observations), REFERENCE_PRESSURE_PA)
    return t_multiplier(math.inf) * math.sqrt((variance + MODEL_LN_U**2) / effort.runs)


def expected_zero(air: Unrest, effort: Effort) -> ZeroParts:
    """Return what will make the zero-flow pressure of a run uncertain."""
    error = air.error_pa(effort.zero_s)
    drift = WANDER * error * math.sqrt(2.0) / math.sqrt(12.0) / max(effort.zeros - 1, 1)
    return ZeroParts(error / math.sqrt(effort.zeros), drift, WIND_BIAS_SHARE * abs(air.mean_pa))


def kit_u(kit: Kit) -> float:
    """Return the standard uncertainty of q50 that comes of the instruments, relative: gauge and flow element."""
    return math.hypot(EXPONENT * kit.gauge, kit.flow_element)


def _of_one_pressure(observations: Observations, noise: PointNoise) -> float:
    """Return the variance of ln q50 of readings at one pressure with an assumed exponent."""
    pressure_pa = observations.pressure_pa[0]
    repeated = (noise.ln_flow_u[0] ** 2 + (EXPONENT * noise.pressure_u_pa[0] / pressure_pa) ** 2) / len(
        observations.pressure_pa
    )
    line = ln_flow_variance(assumed.fit(observations), REFERENCE_PRESSURE_PA)
    return repeated + (line if math.isfinite(line) else 0.0)
