"""How sure the points of a run are: from the spread of their readings and from the zero-flow records.

Readings in wind hang together, so that a spread over the square root of their number says far too little. How long they
hang together is read off the zero-flow records, which are the longest undisturbed ones of a run.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from analysis.errors import InvalidInput
from analysis.estimators.observations import PointNoise
from analysis.records import Point, Run, ZeroFlow
from analysis.statistics import readings_per_independent_one, standard_error_of_mean
from analysis.zeroflow import zero_correction_pa

UNKNOWN_INDEPENDENCE_S = 10.0
"""Seconds that make one independent reading where no record tells (our choice: gusts of a time constant of 5 s)."""
LEAST_PRESSURE_U_PA = 0.02
LEAST_LN_FLOW_U = 0.001
"""No point is surer than this (our choice): a spread of zero is a gauge that did not resolve it."""
WIND_BIAS_SHARE = 0.06
"""Standard uncertainty of the zero-flow pressure with the fan on, as a share of the zero-flow pressure.

The fan changes how wind and stack act on the leaks. Tuned on simulated houses with one outdoor tap, not on field tests.
"""
GUST_BIAS_SHARE = 0.04
"""The same where the outdoor pressure is taken at three or more taps."""
_FEWEST_FOR_CORRELATION = 20


def point_noise(run: Run, path: str, fit_id: str) -> PointNoise:
    """Return the standard uncertainties of the points; raises `InvalidInput` where the record does not hold them.

    `path` names the run and `fit_id` the estimator that asks, in the sentence.
    """
    independent_s = seconds_per_independent_reading(run)
    pressure_u, ln_flow_u = [], []
    for at, point in enumerate(run.points):
        where = f"{path}.points[{at}]"
        count = _independent_readings(point, independent_s)
        pressure_sd = _needed(point.envelope_sd_pa, f"{where}.envelope_sd_pa", fit_id)
        flow_sd = _needed(point.flow_sd_m3_h, f"{where}.flow_sd_m3_h", fit_id)
        pressure_u.append(max(pressure_sd / math.sqrt(count), LEAST_PRESSURE_U_PA))
        ln_flow_u.append(max(flow_sd / point.flow_m3_h / math.sqrt(count), LEAST_LN_FLOW_U))
    return PointNoise(tuple(pressure_u), tuple(ln_flow_u), zero_uncertainty_pa(run, path, fit_id))


def seconds_per_independent_reading(run: Run) -> float:
    """Return how many seconds of readings count as one independent reading, the longer of what the records say."""
    known = [
        readings_per_independent_one(zero.readings_pa) * zero.seconds / zero.count
        for zero in (run.zero_before, run.zero_after)
        if zero is not None and zero.seconds is not None and len(zero.readings_pa) >= _FEWEST_FOR_CORRELATION
    ]
    return max(known, default=UNKNOWN_INDEPENDENCE_S)


@dataclass(frozen=True, slots=True)
class ZeroParts:
    """Independent standard uncertainties (Pa) of the zero-flow pressure that is taken off all points of a run.

    `scatter` of the records; `drift`, their difference, which may have come anywhere between them; `wind`, what the
    running fan may change of how wind and stack act on the leaks.
    """

    scatter: float
    drift: float
    wind: float

    @property
    def together(self) -> float:
        """All parts."""
        return math.hypot(self.scatter, self.drift, self.wind)


def zero_uncertainty_pa(run: Run, path: str, fit_id: str) -> float:
    """Return the standard uncertainty of the zero-flow pressure (Pa); raises `InvalidInput` without any record."""
    parts = zero_parts(run)
    if parts is None:
        raise InvalidInput(f"{path}.zero_before", None, f"the fit {fit_id} needs a zero-flow record")
    return parts.together


def zero_parts(run: Run) -> ZeroParts | None:
    """Return what makes the zero-flow pressure of a run uncertain, None without any record of it."""
    records = [zero for zero in (run.zero_before, run.zero_after) if zero is not None]
    if not records:
        return None
    scatter = math.fsum(_mean_error_pa(zero) ** 2 for zero in records) / len(records) ** 2
    drift = abs(records[-1].mean_pa - records[0].mean_pa) / math.sqrt(12.0)
    share = WIND_BIAS_SHARE if run.gust_corrected is None else GUST_BIAS_SHARE
    wind = share * abs(zero_correction_pa(run.zero_before, run.zero_after))
    return ZeroParts(math.sqrt(scatter), drift, wind)


def _mean_error_pa(zero: ZeroFlow) -> float:
    """Return the standard error of a record's mean, at least what a gauge resolves; that alone for a single reading."""
    if len(zero.readings_pa) < 2:
        return LEAST_PRESSURE_U_PA
    return max(standard_error_of_mean(zero.readings_pa), LEAST_PRESSURE_U_PA)


def _independent_readings(point: Point, independent_s: float) -> float:
    """Return how many independent readings a point is worth: one where its duration is not known."""
    return 1.0 if point.seconds is None else max(point.seconds / independent_s, 1.0)


def _needed(spread: float | None, field: str, fit_id: str) -> float:
    if spread is None:
        raise InvalidInput(field, None, f"the fit {fit_id} weighs points by the spread of their readings")
    return spread
