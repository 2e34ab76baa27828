"""The polled gauge: its eight numbers."""

from __future__ import annotations

import re
from itertools import pairwise

import numpy as np
import pytest

from drivers.clock import seconds
from simulators.instruments.replies import LATENCY_NS
from simulators.instruments.scpi_gauge import ScpiGauge
from simulators.world import World
from tests.simulators.rigs import new_world


@pytest.fixture
def world() -> World:
    return new_world()


@pytest.fixture
def gauge(world: World) -> ScpiGauge:
    return ScpiGauge(world)


def ask(gauge: ScpiGauge, message: bytes, time_s: float) -> list[str]:
    gauge.receive(message, seconds(time_s))
    return gauge.send(seconds(time_s) + LATENCY_NS).decode("ascii").strip().split(",")


def test_it_tells_who_it_is(gauge: ScpiGauge) -> None:
    assert ask(gauge, b"*IDN?\n", 0.0) == ["AIRSEAM DEMO", "SCPI-GAUGE", "SG-0012", "1.0"]


def test_a_reading_has_eight_numbers_in_scientific_notation(world: World, gauge: ScpiGauge) -> None:
    fields = ask(gauge, b"READ?\n", 1.0)
    assert len(fields) == 8
    assert all(re.fullmatch(r"-?\d\.\d+E[+-]?\d{2}", field) for field in fields)
    values = [float(field) for field in fields]
    assert values[0] == pytest.approx(world.reading("p1"), abs=1e-9)
    assert values[2:4] == [9.91e37, 9.91e37]
    assert values[4:] == pytest.approx([21.0, 11.0, 101325.0, 45.0], rel=0.03)


def test_no_digit_of_a_reading_is_lost_in_the_notation(world: World, gauge: ScpiGauge) -> None:
    for value in (-50.12, 103.41, 0.07, -0.01, 0.0):
        world.plant.gauge.shown = np.array([[value, 0.0, 21.0, 11.0, 101325.0, 45.0]])
        assert float(ask(gauge, b"READ?\n", 0.0)[0]) == pytest.approx(value, abs=1e-9)


def test_a_new_reading_is_there_ten_times_a_second(gauge: ScpiGauge) -> None:
    readings = [ask(gauge, b"READ?\n", tick / 10)[0] for tick in range(50)]
    assert sum(a == b for a, b in pairwise(readings)) < 10


def test_readings_do_not_depend_on_when_they_are_asked_for(world: World, gauge: ScpiGauge) -> None:
    other = ScpiGauge(new_world())
    for time_s in np.linspace(0.0, 9.3, 173):
        ask(gauge, b"READ?\n", float(time_s))
    assert ask(gauge, b"READ?\n", 9.36) == ask(other, b"READ?\n", 9.31)


def test_beyond_the_range_it_says_so(world: World, gauge: ScpiGauge) -> None:
    world.plant.gauge.shown = np.array([[500.0, -500.0, 21.0, 11.0, 101325.0, 45.0]])
    assert ask(gauge, b"READ?\n", 0.0)[:2] == ["9.9E37", "-9.9E37"]


def test_zeroing_takes_the_zero_off_and_gives_no_pressure_meanwhile(world: World, gauge: ScpiGauge) -> None:
    world.plant.gauge._zero[:, 1] = 3.0
    assert float(ask(gauge, b"READ?\n", 1.0)[1]) == pytest.approx(3.0, abs=0.5)
    ask(gauge, b"CAL:ZERO\n", 1.0)
    assert ask(gauge, b"READ?\n", 1.5)[0:2] == ["9.91E37", "9.91E37"]
    assert float(ask(gauge, b"READ?\n", 3.0)[1]) == pytest.approx(0.0, abs=0.5)
