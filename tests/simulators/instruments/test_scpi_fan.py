"""The fan drive: what it does to the fan, and that it stops by itself."""

from __future__ import annotations

import pytest

from drivers.clock import seconds
from simulators.instruments.replies import LATENCY_NS
from simulators.instruments.scpi_fan import ScpiFan
from simulators.world import World
from tests.simulators.rigs import new_world


@pytest.fixture
def world() -> World:
    return new_world()


@pytest.fixture
def fan(world: World) -> ScpiFan:
    return ScpiFan(world)


def ask(fan: ScpiFan, message: bytes, time_s: float) -> bytes:
    fan.receive(message, seconds(time_s))
    return fan.send(seconds(time_s) + LATENCY_NS)


def repeat(fan: ScpiFan, message: bytes, start_s: float, end_s: float) -> None:
    for tick in range(round((end_s - start_s) * 2)):
        ask(fan, message, start_s + tick / 2)


def test_the_commanded_speed_reaches_the_motor(world: World, fan: ScpiFan) -> None:
    repeat(fan, b"FAN:SPEED 0.5\n", 0.0, 20.0)
    assert world.plant.motor.speed[0] == pytest.approx(0.5, abs=1e-3)
    assert world.plant.flow_m3_s[0] > 0.05


def test_it_stops_by_itself_when_it_hears_nothing(world: World, fan: ScpiFan) -> None:
    repeat(fan, b"FAN:SPEED 0.5\n", 0.0, 10.0)
    world.advance(seconds(9.5 + 1.9))
    assert world.speed == 0.5
    world.advance(seconds(9.5 + 2.0))
    assert world.speed == 0.0
    world.advance(seconds(25.0))
    assert world.plant.motor.at_rest
    assert world.plant.flow_m3_s[0] == 0.0
    assert ask(fan, b"FAN:SPEED?\n", 25.0) == b"0.0000\n"


def test_any_message_keeps_it_alive(world: World, fan: ScpiFan) -> None:
    ask(fan, b"FAN:SPEED 0.5\n", 0.0)
    repeat(fan, b"FAN:SPEED?\n", 0.5, 10.0)
    assert world.speed == 0.5


def test_bytes_that_make_no_message_do_not_keep_it_alive(world: World, fan: ScpiFan) -> None:
    ask(fan, b"FAN:SPEED 0.5\n", 0.0)
    repeat(fan, b"FAN:", 0.5, 4.0)
    assert world.speed == 0.0


def test_the_time_out_can_be_set(world: World, fan: ScpiFan) -> None:
    assert ask(fan, b"SYST:COMM:TIMEOUT 0.5;TIMEOUT?\n", 0.0) == b"0.5\n"
    ask(fan, b"FAN:SPEED 0.5\n", 0.0)
    world.advance(seconds(0.4))
    assert world.speed == 0.5
    world.advance(seconds(0.6))
    assert world.speed == 0.0


def test_it_turns_round_at_rest_only(world: World, fan: ScpiFan) -> None:
    assert ask(fan, b"FAN:DIRECTION?\n", 0.0) == b"OUT\n"
    repeat(fan, b"FAN:SPEED 0.5\n", 0.0, 5.0)
    assert ask(fan, b"FAN:DIRECTION IN\n", 5.0) == b""
    assert ask(fan, b"SYST:ERR?;:FAN:DIRECTION?\n", 5.0) == b'-221,"Settings conflict";OUT\n'
    ask(fan, b"FAN:SPEED 0\n", 5.0)
    assert ask(fan, b"FAN:DIRECTION IN;:SYST:ERR?\n", 6.0) == b'-221,"Settings conflict"\n'
    repeat(fan, b"FAN:SPEED?\n", 6.5, 16.0)
    assert ask(fan, b"FAN:DIRECTION IN;DIRECTION?;:SYST:ERR?\n", 16.0) == b'IN;0,"No error"\n'
    repeat(fan, b"FAN:SPEED 0.5\n", 16.0, 30.0)
    assert world.plant.pressure_pa[0] > 10.0


def test_the_direction_it_has_is_no_conflict(fan: ScpiFan) -> None:
    repeat(fan, b"FAN:SPEED 0.5\n", 0.0, 5.0)
    assert ask(fan, b"FAN:DIRECTION OUT;:SYST:ERR?\n", 5.0) == b'0,"No error"\n'


def test_the_shutter_closes_at_rest_so_that_the_house_is_as_if_covered(world: World, fan: ScpiFan) -> None:
    world.advance(seconds(5.0))
    before = float(world.plant.pressure_pa[0])
    repeat(fan, b"FAN:SPEED 0.4\n", 5.0, 15.0)
    assert world.plant.pressure_pa[0] < before - 10.0
    ask(fan, b"FAN:SPEED 0\n", 15.0)
    world.advance(seconds(40.0))
    assert world.plant.flow_m3_s[0] == 0.0
    assert world.plant.pressure_pa[0] == pytest.approx(before, abs=1.0)
