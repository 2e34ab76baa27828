"""How sure the points of a run are: from the spread of their readings and from the zero-flow records.

Readings in wind hang together, so that a spread over the square root of their number says far too little. How long they
hang together is read off the zero-flow records, which are the longest undisturbed ones of a run.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from analysis.errors import InvalidInput
from analysis.estimators.observations import PointNoise, ZeroParts
from analysis.records import Point, Run, ZeroFlow
from analysis.statistics import mean_error_and_correlation

UNKNOWN_INDEPENDENCE_S = 10.0
"""Seconds that make one independent reading where no record tells (our choice: gusts of a time constant of 5 s)."""
LEAST_PRESSURE_U_PA = 0.02
LEAST_LN_FLOW_U = 0.001
"""No point is surer than this (our choice): a spread of zero is a gauge that did not resolve it."""
WIND_BIAS_SHARE = 0.08
"""Standard uncertainty of the zero-flow pressure with the fan on, as a share of the zero-flow pressure.

The fan changes how wind and stack act on the leaks. Tuned on simulated houses with one outdoor tap, not on field tests.
"""
GUST_BIAS_SHARE = 0.05
"""The same where the outdoor pressure is taken at three or more taps."""
_FEWEST_FOR_CORRELATION = 20


def point_noise(run: Run, path: str, fit_id: str) -> PointNoise:
    """Return the standard uncertainties of the points; raises `InvalidInput` where the record does not hold them.

    `path` names the run and `fit_id` the estimator that asks, in the sentence.
    """
    records = _records(run)
    independent_s = _seconds_per_independent(records)
    pressure_u, ln_flow_u = [], []
    for at, point in enumerate(run.points):
        where = f"{path}.points[{at}]"
        count = _independent_readings(point, independent_s)
        pressure_sd = _needed(point.envelope_sd_pa, f"{where}.envelope_sd_pa", fit_id)
        flow_sd = _needed(point.flow_sd_m3_h, f"{where}.flow_sd_m3_h", fit_id)
        own = max(pressure_sd / math.sqrt(count), LEAST_PRESSURE_U_PA)
        pressure_u.append(math.hypot(own, _wander_pa(run, records)))
        ln_flow_u.append(max(flow_sd / point.flow_m3_h / math.sqrt(count), LEAST_LN_FLOW_U))
    if not records:
        raise InvalidInput(f"{path}.zero_before", None, f"the fit {fit_id} needs a zero-flow record")
    return PointNoise(tuple(pressure_u), tuple(ln_flow_u), _parts(run, records))


def seconds_per_independent_reading(run: Run) -> float:
    """Return how many seconds of readings count as one independent reading, the longer of what the records say."""
    return _seconds_per_independent(_records(run))


def zero_parts(run: Run) -> ZeroParts | None:
    """Return what makes the zero-flow pressure of a run uncertain, None without any record of it."""
    records = _records(run)
    return _parts(run, records) if records else None


@dataclass(frozen=True, slots=True)
class _Record:
    """A zero-flow record: the standard error of its mean, and the seconds of one independent reading, None if unknown.

    The error is at least what a gauge resolves, and that alone for a single reading.
    """

    mean_pa: float
    error_pa: float
    independent_s: float | None


def _records(run: Run) -> list[_Record]:
    return [_record(zero) for zero in run.zeros]


def _record(zero: ZeroFlow) -> _Record:
    if len(zero.readings_pa) < 2:
        return _Record(zero.mean_pa, LEAST_PRESSURE_U_PA, None)
    error_pa, correlated = mean_error_and_correlation(zero.readings_pa)
    known = zero.seconds is not None and len(zero.readings_pa) >= _FEWEST_FOR_CORRELATION
    independent_s = correlated * zero.seconds / zero.count if known and zero.seconds is not None else None
    return _Record(zero.mean_pa, max(error_pa, LEAST_PRESSURE_U_PA), independent_s)


def _seconds_per_independent(records: Sequence[_Record]) -> float:
    known = [record.independent_s for record in records if record.independent_s is not None]
    return max(known, default=UNKNOWN_INDEPENDENCE_S)


def _parts(run: Run, records: Sequence[_Record]) -> ZeroParts:
    scatter = math.fsum(record.error_pa**2 for record in records) / len(records) ** 2
    drift = abs(records[-1].mean_pa - records[0].mean_pa) / math.sqrt(12.0)
    if run.zero_at_points_pa:
        drift = _wander_pa(run, records) / math.sqrt(len(records) - 1)
    wind = WIND_BIAS_SHARE * abs(math.fsum(record.mean_pa for record in records) / len(records))
    return ZeroParts(math.sqrt(scatter), drift, wind)


def _wander_pa(run: Run, records: Sequence[_Record]) -> float:
    """Return by how much the zero-flow pressure at a point may differ from what its neighbouring records say.

    The change from one record to the next may have come anywhere between them, as for two records.
    """
    if not run.zero_at_points_pa:
        return 0.0
    steps = [later.mean_pa - earlier.mean_pa for earlier, later in pairwise(records)]
    return math.sqrt(math.fsum(step * step for step in steps) / len(steps) / 12.0)


def _independent_readings(point: Point, independent_s: float) -> float:
    """Return how many independent readings a point is worth: one where its duration is not known."""
    return 1.0 if point.seconds is None else max(point.seconds / independent_s, 1.0)


def _needed(spread: float | None, field: str, fit_id: str) -> float:
    if spread is None:
        raise InvalidInput(field, None, f"the fit {fit_id} weighs points by the spread of their readings")
    return spread
