"""A gauge that averages by itself: its values stand for the middle of the time that they are the mean of."""

from __future__ import annotations

from dataclasses import replace

import pytest

from drivers.clock import VirtualClock, seconds
from drivers.device import Gauge, connect
from drivers.profile import load_profile
from drivers.spec import Profile
from tests.drivers.gauges import counting
from tests.drivers.wires import Wire, run


def averaging(averaging_s: float) -> Profile:
    profile = load_profile("scpi-gauge")
    assert profile.poll is not None
    return replace(profile, poll=replace(profile.poll, averaging_s=averaging_s))


@pytest.mark.parametrize("averaging_s", [0.0, 0.4, 1.0])
def test_a_value_is_half_the_averaging_time_older(clock: VirtualClock, averaging_s: float) -> None:
    stamps = []
    for profile in (averaging(0.0), averaging(averaging_s)):
        wire = Wire(clock, answer=counting())
        gauge = connect("gauge", profile, wire, clock)
        assert isinstance(gauge, Gauge)
        gauge.start()
        begun_ns = clock.now_ns()
        run(clock, 2.0)
        reading = gauge.take()[0]
        stamps.append(reading.monotonic_ns - begun_ns)
        # Both clocks of a reading go back alike.
        utc_ns = round(clock.utc().timestamp() * 1e9)
        assert reading.utc_ns - utc_ns == pytest.approx(reading.monotonic_ns - clock.now_ns(), abs=2e3)
        gauge.close()
    assert stamps[0] - stamps[1] == seconds(averaging_s / 2.0)
