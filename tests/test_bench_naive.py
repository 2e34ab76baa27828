"""The naive way of the benches: what it takes out of the program has to be there."""

from __future__ import annotations

from unittest.mock import MagicMock

from acquisition.bench import new_bench
from acquisition.watchdog import Watchdog
from tests.bench._naive import OneLoop, blind, steering


def test_the_naive_way_takes_the_place_of_controller_and_watchdog() -> None:
    rig, progress, look = MagicMock(), MagicMock(), Watchdog.look
    rig.spec.further = ()
    progress.plan.building.volume_m3 = 300.0
    with steering(naive=True), blind():
        assert isinstance(new_bench(rig, MagicMock(), progress, 0.0).controller, OneLoop)
        assert Watchdog.look is not look
    assert not isinstance(new_bench(rig, MagicMock(), progress, 0.0).controller, OneLoop)
