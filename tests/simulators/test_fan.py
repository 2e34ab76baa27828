"""The fan against the fan laws (handbook knowledge) and its own curve."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from simulators.fan import Motor, fan_flow

DENSITY = np.array([1.2])
NO_LOSS = np.zeros(1)


def flow(speed: float, back_pa: float, density: float = 1.2, loss: float = 0.0) -> float:
    return float(fan_flow(np.array([speed]), np.array([back_pa]), np.array([density]), np.array([loss]))[0][0])


@given(speed=st.floats(0.2, 1.0), back_pa=st.floats(0.0, 300.0), loss=st.floats(0.0, 5000.0))
def test_flow_goes_with_speed_and_pressure_with_its_square(speed: float, back_pa: float, loss: float) -> None:
    assert flow(speed, back_pa * speed**2, loss=loss) == pytest.approx(speed * flow(1.0, back_pa, loss=loss), rel=1e-4)


def test_pressure_rise_goes_with_density() -> None:
    assert flow(0.7, 60.0, density=1.2) == pytest.approx(flow(0.7, 50.0, density=1.0), rel=1e-9)


def test_wide_open_it_gives_two_cubic_metres_a_second_at_fifty_pascal() -> None:
    # 400 - 10 Q - 65 Q2 = 50, by hand: Q = 2.245.
    assert flow(1.0, 50.0) == pytest.approx((-10 + np.sqrt(100 + 4 * 65 * 350)) / 130, rel=1e-6)


def test_air_blows_back_through_a_slow_fan() -> None:
    assert flow(0.1, 50.0) < 0 < flow(0.5, 50.0)


@given(speed=st.floats(0.0, 1.0), back_pa=st.floats(-50.0, 120.0), loss=st.floats(0.0, 30000.0))
def test_slope_is_the_derivative_of_the_flow(speed: float, back_pa: float, loss: float) -> None:
    step = 1e-4
    _, slope = fan_flow(np.array([speed]), np.array([back_pa]), DENSITY, np.array([loss]))
    numeric = (flow(speed, back_pa + step, loss=loss) - flow(speed, back_pa - step, loss=loss)) / (2 * step)
    if abs(400 * speed**2 - back_pa) > 0.01:
        assert slope[0] == pytest.approx(numeric, rel=1e-3)
    assert slope[0] < 0


def settle(motor: Motor, command: float, seconds: float) -> list[float]:
    course = []
    for _ in range(round(seconds / 0.1)):
        motor.step(0.1, np.array([command]))
        course.append(float(motor.speed[0]))
    return course


def test_nothing_happens_before_the_latency_is_over() -> None:
    course = settle(Motor(1), 0.5, 1.0)
    assert course[:3] == [0.0, 0.0, 0.0]
    assert course[3] > 0


def test_a_small_step_up_is_followed_with_a_lag_of_nine_tenths_of_a_second() -> None:
    motor = Motor(1)
    settle(motor, 0.5, 20.0)
    course = settle(motor, 0.6, 1.2)
    assert course[-1] == pytest.approx(0.5 + 0.1 * (1 - np.exp(-0.9 / 0.9)), abs=0.002)


def test_coasting_down_is_slower() -> None:
    motor = Motor(1)
    settle(motor, 0.6, 20.0)
    course = settle(motor, 0.5, 1.9)
    assert course[-1] == pytest.approx(0.5 + 0.1 * np.exp(-1.6 / 1.6), abs=0.002)


def test_a_large_step_is_ramped() -> None:
    course = settle(Motor(1), 1.0, 2.0)
    assert np.diff(course).max() == pytest.approx(0.035, abs=1e-6)


def test_commands_are_rounded_and_small_ones_are_none() -> None:
    motor = Motor(1)
    assert settle(motor, 0.4531, 30.0)[-1] == pytest.approx(0.454, abs=1e-6)
    assert settle(motor, 0.049, 30.0)[-1] == pytest.approx(0.0, abs=1e-6)


def test_the_shutter_opens_with_the_command_and_falls_shut_when_run_down() -> None:
    motor = Motor(1)
    rest = [motor.at_rest]
    for command, seconds in [(0.3, 0.4), (0.3, 20.0), (0.0, 2.0), (0.0, 8.0)]:
        settle(motor, command, seconds)
        rest.append(motor.at_rest)
    assert rest == [True, False, False, False, True]
