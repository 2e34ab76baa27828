"""What the bench of accuracy takes from the course of the pressure, on courses whose answer is known."""

from __future__ import annotations

import math

import numpy as np
import pytest

from acquisition.series import WindowRecord
from acquisition.steps import WindowKind
from tests.bench._stepping import Floats, small_steps
from tests.bench._told import by_wind

ZERO_PA = -1.0


def a_window(kind: WindowKind, start_s: float, end_s: float, target_pa: float | None) -> WindowRecord:
    return WindowRecord(id=1, kind=kind, start_ns=round(start_s * 1e9), end_ns=round(end_s * 1e9), target_pa=target_pa)


def course(start_ns: int, end_ns: int) -> Floats:
    """Ten readings a second: 54 Pa, at 20 s down to 47 Pa for a second, then 48 Pa with a gust of 0.5 Pa at 30 s."""
    seconds = np.arange(start_ns / 1e9, end_ns / 1e9, 0.1)
    induced = np.where(seconds < 20.0, 54.0, np.where(seconds < 21.0, 47.0, 48.0))
    induced = np.where((seconds > 30.0) & (seconds < 31.0), 47.5, induced)
    return -induced + ZERO_PA


def test_a_step_is_measured_and_gusts_apart() -> None:
    points = [a_window(WindowKind.POINT, 0.0, 20.0, -54.0), a_window(WindowKind.POINT, 26.0, 46.0, -48.0)]
    (step,) = small_steps(points, ZERO_PA, course)
    assert step.settle_s == 6.0
    assert step.overshoot_pa == pytest.approx(1.0)
    assert step.gusts_pa == pytest.approx(0.5, abs=0.15)


def test_what_is_no_small_step_from_point_to_point_is_left_out() -> None:
    first = a_window(WindowKind.POINT, 0.0, 20.0, -54.0)
    zero = a_window(WindowKind.ZERO_AFTER, 21.0, 25.0, None)
    near, far = a_window(WindowKind.POINT, 26.0, 46.0, -48.0), a_window(WindowKind.POINT, 26.0, 46.0, -38.0)
    late = a_window(WindowKind.POINT, 60.0, 80.0, -48.0)
    for windows in ([first, zero, near], [first, far], [first, late], [near, first]):
        assert small_steps(windows, ZERO_PA, course) == []


def test_a_single_wind_is_told_flat_as_well_and_what_is_no_number_is_null() -> None:
    row = {"rms_pct": 0.3, "settle_p90_s": math.nan, "smallest_pct": math.inf}
    shown = {"rms_pct": 0.3, "settle_p90_s": None, "smallest_pct": None}

    assert by_wind({"3": row}) == {**shown, "winds": {"3": shown}}
    assert by_wind({"0": row, "3": row}) == {"winds": {"0": shown, "3": shown}}
