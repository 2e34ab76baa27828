"""Means, spreads and correlation against certified values: NIST StRD, univariate data sets NumAcc1 to NumAcc3.

Data and certified values from memory (itl.nist.gov, Statistical Reference Datasets): sample mean, sample standard
deviation, and autocorrelation at lag 1. The sets are made to break one-pass formulas.
"""

from __future__ import annotations

import math

import numpy as np
import pytest

from analysis.statistics import autocovariance
from analysis.zeroflow import zero_flow, zero_spread_pa

NUMACC1 = [10000001.0, 10000003.0, 10000002.0]
NUMACC2 = [1.2, *[1.1, 1.3] * 500]
NUMACC3 = [1000000.2, *[1000000.1, 1000000.3] * 500]


@pytest.mark.parametrize(
    ("values", "mean", "sd", "lag_1"),
    [(NUMACC1, 10000002.0, 1.0, -0.5), (NUMACC2, 1.2, 0.1, -0.999), (NUMACC3, 1000000.2, 0.1, -0.999)],
    ids=["NumAcc1", "NumAcc2", "NumAcc3"],
)
def test_univariate_sets(values: list[float], mean: float, sd: float, lag_1: float) -> None:
    record = zero_flow(values)
    spread = zero_spread_pa(record)
    assert record.mean_pa == pytest.approx(mean, rel=1e-15)
    assert spread == pytest.approx(sd, rel=1e-8)
    covariance = autocovariance(np.array(values))
    assert covariance[1] / covariance[0] == pytest.approx(lag_1, rel=1e-6)
    count = len(values)
    assert math.sqrt(covariance[0] * count / (count - 1)) == pytest.approx(sd, rel=1e-8)
