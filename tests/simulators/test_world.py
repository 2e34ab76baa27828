"""The clockwork between plant and instruments."""

from __future__ import annotations

import pytest

from drivers.clock import seconds
from simulators.world import LONGEST_GAP_NS, World
from tests.simulators.rigs import new_world


@pytest.fixture
def world() -> World:
    return new_world()


def test_the_plant_moves_in_whole_steps_only(world: World) -> None:
    world.advance(seconds(0.099))
    assert world.plant.time_s == 0.0
    world.advance(seconds(0.25))
    assert world.plant.time_s == pytest.approx(0.2)
    assert world.next_ns == seconds(0.3)


def test_time_going_back_is_no_time(world: World) -> None:
    world.advance(seconds(1.0))
    world.advance(seconds(0.5))
    assert world.plant.time_s == pytest.approx(1.0)


def test_after_a_long_sleep_the_time_missed_is_skipped(world: World) -> None:
    world.advance(seconds(3600.0))
    assert world.plant.time_s == pytest.approx(LONGEST_GAP_NS / 1e9, abs=0.2)
    assert world.next_ns == seconds(3600.1)


def test_followers_hear_of_each_step_in_turn(world: World) -> None:
    class Ear:
        def __init__(self) -> None:
            self.heard: list[int] = []

        def follow(self, now_ns: int) -> None:
            self.heard.append(now_ns)

    ear = Ear()
    world.attach(ear)
    world.advance(seconds(0.35))
    assert ear.heard == [seconds(0.1), seconds(0.2), seconds(0.3)]


def test_a_command_acts_from_the_next_step_on(world: World) -> None:
    world.advance(seconds(1.0))
    world.speed = 0.5
    world.advance(seconds(1.3))
    assert world.plant.motor.speed[0] == 0.0
    world.advance(seconds(1.4))
    assert world.plant.motor.speed[0] > 0.0
