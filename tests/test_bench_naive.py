"""The naive way of the benches: what it takes out of the program has to be there."""

from __future__ import annotations

from acquisition import bench
from acquisition.watchdog import Watchdog
from tests.bench._naive import OneLoop, blind, steering


def test_the_naive_way_takes_the_place_of_controller_and_watchdog() -> None:
    usual, look = bench.PressureController, Watchdog.look
    with steering(naive=True), blind():
        assert bench.PressureController is OneLoop
        assert Watchdog.look is not look
    assert bench.PressureController is usual
