"""The straight line against certified values: NIST StRD, data set Norris (36 points, linear, lower difficulty).

Data and certified values as published by NIST (Statistical Reference Datasets, Norris.dat).
"""

from __future__ import annotations

import math

import pytest

from analysis.leastsquares import straight_line

DATA = """
0.1 0.2  338.8 337.4  118.1 118.2  888.0 884.6  9.2 10.1  228.1 226.5  668.5 666.3  998.5 996.3  449.1 448.6
778.9 777.0  559.2 558.2  0.3 0.4  0.1 0.6  778.1 775.5  668.8 666.9  339.3 338.0  448.9 447.5  10.8 11.6
557.7 556.0  228.3 228.1  998.0 995.8  888.8 887.6  119.6 120.2  0.3 0.3  0.6 0.3  557.6 556.8  339.3 339.1
888.0 887.2  998.5 999.0  778.9 779.0  10.2 11.1  117.6 118.3  228.9 229.2  668.4 669.1  449.2 448.9  0.2 0.5
"""
VALUES = [float(number) for number in DATA.split()]
Y, X = VALUES[::2], VALUES[1::2]


def test_the_line_has_the_certified_parameters() -> None:
    line = straight_line(X, Y)
    assert len(X) == 36
    assert line.intercept == pytest.approx(-0.262323073774029, rel=1e-12)
    assert line.slope == pytest.approx(1.00211681802045, rel=1e-14)
    assert line.r2 == pytest.approx(0.999993745883712, rel=1e-14)


def test_the_line_has_the_certified_spread() -> None:
    line = straight_line(X, Y)
    variance = line.residual_sum / 34
    assert line.residual_sum == pytest.approx(26.6173985294224, rel=1e-12)
    assert math.sqrt(variance) == pytest.approx(0.884796396144373, rel=1e-12)
    assert math.sqrt(variance * line.unit_var_intercept) == pytest.approx(0.232818234301152, rel=1e-12)
    assert math.sqrt(variance * line.unit_var_slope) == pytest.approx(0.429796848199937e-03, rel=1e-12)
