"""The loop that serves a port, with a port that can be turned every way."""

from __future__ import annotations

import pytest

from drivers.clock import WallClock, seconds
from simulators.instruments.line_gauge import LineGauge
from simulators.wire import CHUNK_BYTES, WirePort
from tests.simulators.rigs import new_world


class HandClock(WallClock):
    """A clock that somebody sets."""

    time_ns = 0

    def now_ns(self) -> int:
        """Return what it was set to."""
        return self.time_ns


class Port(WirePort):
    """A port that takes `room` bytes at a time and has a client or not."""

    def __init__(self) -> None:
        """Take nothing, and have a client."""
        self.clock = HandClock()
        super().__init__("test", LineGauge(new_world()), self.clock)
        self.there = False
        self.client = True
        self.room = 0
        self.taken = b""

    @property
    def address(self) -> str:
        """Nowhere."""
        return "nowhere"

    @property
    def _is_there(self) -> bool:
        return self.there

    def _begin(self) -> None:
        self.there = True

    def _end(self) -> None:
        self.there = False

    def _wait(self, timeout_s: float) -> bytes | None:
        return b"" if self.client else None

    def _write(self, data: bytes) -> int:
        self.taken += data[: self.room]
        return min(self.room, len(data))


@pytest.fixture
def port() -> Port:
    port = Port()
    port._begin()
    return port


def pump(port: Port, times: int) -> None:
    for _ in range(times):
        port.clock.time_ns += seconds(0.1)
        port._pump(port.clock.time_ns)


def test_what_a_full_port_does_not_take_is_lost_beyond_a_buffer(port: Port) -> None:
    pump(port, 300)
    assert 0 < len(port._unsent) <= CHUNK_BYTES


def test_what_goes_out_in_parts_is_whole_in_the_end(port: Port) -> None:
    port.room = 7
    pump(port, 3)
    lines = port.taken + port._unsent
    assert lines.count(b"\r\n") == 3
    assert lines.startswith(b"p1=")


def test_nothing_is_kept_for_a_client_that_is_not_there(port: Port) -> None:
    pump(port, 3)
    port.client = False
    pump(port, 3)
    assert port._unsent == b""


def test_it_comes_back_soon_for_a_client_and_later_without_one(port: Port) -> None:
    port.clock.time_ns = seconds(0.05)
    assert port._pump(seconds(0.05)) == seconds(0.05) + 1
    port.clock.time_ns = seconds(0.099)
    assert port._pump(seconds(0.099)) == seconds(0.1)
    port.client = False
    assert port._pump(seconds(0.099)) == seconds(0.099 + 0.02)
