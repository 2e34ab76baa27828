"""The live buffer: what was put in comes out, by time, also after the ring has gone round."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from acquisition.live import CAPACITY, LiveBuffer
from acquisition.rig import Role
from drivers.clock import seconds


def filled(count: int) -> LiveBuffer:
    live = LiveBuffer()
    for at in range(count):
        live.append(Role.ENVELOPE, seconds(at / 10), float(at))
    return live


def test_a_window_ends_at_its_end() -> None:
    live = filled(100)
    times, values = live.window(Role.ENVELOPE, 1.0, seconds(5.0))
    assert values.tolist() == [float(at) for at in range(40, 51)]
    assert times[0] == pytest.approx(-1.0)
    assert times[-1] == 0.0


@given(st.integers(1, 2 * CAPACITY), st.integers(0, 400))
def test_the_newest_readings_are_there_wherever_the_ring_stands(count: int, wanted: int) -> None:
    live = LiveBuffer()
    ring = live._rings[Role.ENVELOPE]
    # Filling by hand what a long run would have filled.
    first = max(0, count - CAPACITY)
    order = np.arange(first, count)
    ring.append(0, 0.0)
    ring._time_ns[order % CAPACITY] = order
    ring._value[order % CAPACITY] = order
    ring._written = count
    times, values = live.since(Role.ENVELOPE, count - wanted)
    expected = np.arange(max(first, count - wanted), count)
    assert np.array_equal(times, expected)
    assert np.array_equal(values, expected)


def test_a_role_without_readings_has_no_mean() -> None:
    live = filled(10)
    assert live.mean(Role.FLOW, 1.0, seconds(1.0)) is None
    assert live.newest_ns(Role.FLOW) is None
    assert live.newest_ns(Role.ENVELOPE) == seconds(0.9)
    assert live.mean(Role.ENVELOPE, 0.25, seconds(0.9)) == pytest.approx(8.0)


def test_what_was_copied_out_does_not_change() -> None:
    live = filled(10)
    _, values = live.since(Role.ENVELOPE, 0)
    live.append(Role.ENVELOPE, seconds(1.0), 99.0)
    values[:] = 0.0
    assert live.since(Role.ENVELOPE, 0)[1].tolist() == [*map(float, range(10)), 99.0]
