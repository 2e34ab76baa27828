"""The readings of a run."""

from __future__ import annotations

import math

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from acquisition.rig import Role
from acquisition.series import RunData
from drivers.clock import NS_PER_S
from drivers.reading import Quality, Reading


def reading(t_ns: int, value: float, quality: Quality = Quality.GOOD) -> Reading:
    return Reading("gauge.p1", value, t_ns, t_ns, 0.0, quality, 0)


@given(st.lists(st.floats(-500, 500), max_size=3000), st.integers(0, 3000), st.integers(0, 3000))
def test_a_slice_holds_the_start_and_not_the_end(values: list[float], start: int, end: int) -> None:
    data = RunData()
    for t_ns, value in enumerate(values):
        data.append(reading(t_ns, value), Role.ENVELOPE)
    times, got = data.slice(Role.ENVELOPE, start, end)
    assert got.tolist() == values[start:end]
    assert times.tolist() == list(range(len(values)))[start:end]


def test_readings_grow_past_the_first_capacity() -> None:
    data = RunData()
    for t_ns in range(5000):
        data.append(reading(t_ns, t_ns / 7), Role.ENVELOPE)
    times, values = data.slice(Role.ENVELOPE, 0, 5000)
    assert len(times) == data.count(Role.ENVELOPE) == 5000
    assert np.array_equal(values, times / 7)


def test_over_range_and_missing_numbers_are_kept_apart() -> None:
    data = RunData()
    data.append(reading(1, 10.0), Role.ENVELOPE)
    data.append(reading(2, 500.0, Quality.OVER_RANGE), Role.ENVELOPE)
    data.append(reading(3, math.nan), Role.ENVELOPE)
    assert data.slice(Role.ENVELOPE, 0, 10)[1].tolist() == [10.0]
    assert data.unusable(Role.ENVELOPE, 0, 10) == 2
    assert data.count(Role.ENVELOPE) == 3


def test_a_role_without_readings_is_empty() -> None:
    data = RunData()
    assert len(data.slice(Role.FLOW, 0, 10)[1]) == data.unusable(Role.FLOW, 0, 10) == data.count(Role.FLOW) == 0
    assert data.roles == ()


def test_a_slice_is_a_copy() -> None:
    data = RunData()
    data.append(reading(1, 10.0), Role.ENVELOPE)
    data.slice(Role.ENVELOPE, 0, 10)[1][0] = 99.0
    assert data.slice(Role.ENVELOPE, 0, 10)[1].tolist() == [10.0]


def test_a_reading_that_came_late_is_in_the_slice_of_its_time() -> None:
    data = RunData()
    for t_ns in (0, 10, 30, 20, 40):
        data.append(reading(t_ns, float(t_ns)), Role.ENVELOPE)
    later = RunData()
    later.append(reading(35, 35.0), Role.ENVELOPE)
    ordered = RunData()
    ordered.append(reading(40, 40.0), Role.ENVELOPE)
    ordered.extend(later)
    assert data.slice(Role.ENVELOPE, 15, 35)[1].tolist() == [30.0, 20.0]
    assert ordered.slice(Role.ENVELOPE, 0, 40)[1].tolist() == [35.0]


def test_what_the_fan_is_told_holds_until_it_is_told_otherwise() -> None:
    data, later = RunData(), RunData()
    for at_s, fraction in ((1, 0.4), (2, 0.4), (3, 0.5)):
        data.drive(at_s * NS_PER_S, fraction)
    later.drive(0, 0.0)
    data.extend(later, 5 * NS_PER_S)
    instants = np.array([0.5, 1.0, 2.5, 3.0, 4.9, 5.0]) * NS_PER_S
    assert data.speed(instants.astype(np.int64)).tolist() == [0.0, 0.4, 0.4, 0.5, 0.5, 0.0]
    assert data.speed(instants.astype(np.int64), NS_PER_S).tolist() == [0.0, 0.0, 0.4, 0.4, 0.5, 0.5]
