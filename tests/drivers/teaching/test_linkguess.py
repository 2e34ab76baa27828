"""Guessing link settings: only the right ones give regular lines; noise, silence and trouble have their sentences."""

from __future__ import annotations

import random
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.clock import NS_PER_S, VirtualClock
from drivers.errors import PortMissing
from drivers.spec import LinkSettings
from drivers.teaching.linkguess import LinkGuess, usual_settings
from drivers.teaching.rawstream import hex_view, look_at
from tests.drivers.wires import run

RIGHT = LinkSettings(baud=19_200, data_bits=7, parity="even")


class Stranger:
    """Sends ten lines a second; with the wrong settings they arrive as noise. May have to be asked."""

    url = "test:stranger"

    def __init__(self, clock: VirtualClock, *, asked: bool = False, silent: bool = False) -> None:
        """Say nothing before it is opened."""
        self._clock, self._asked, self._silent = clock, asked, silent
        self.settings = LinkSettings()
        self._noise = random.Random(1)
        self._due = bytearray()
        self._sent_ns = 0
        self.is_open = False

    def configure(self, settings: LinkSettings) -> None:
        """Take settings."""
        self.settings = settings

    def open(self) -> None:
        """Open."""
        self.is_open = True
        self._sent_ns = self._clock.now_ns()
        self._due.clear()

    def close(self) -> None:
        """Close."""
        self.is_open = False

    def write(self, data: bytes) -> None:
        """Answer."""
        assert self.is_open
        if self._asked:
            self._say()

    def read(self, timeout_s: float) -> bytes:
        """Return what came."""
        assert self.is_open
        while not self._asked and not self._silent and self._clock.now_ns() - self._sent_ns > NS_PER_S // 10:
            self._sent_ns += NS_PER_S // 10
            self._say()
        data = bytes(self._due)
        self._due.clear()
        return data

    def _say(self) -> None:
        line = f"dp {self._noise.gauss(0.0, 20.0):7.2f} Pa\r\n".encode()
        right = (self.settings.baud, self.settings.parity) == (RIGHT.baud, RIGHT.parity)
        self._due += line if right else self._noise.randbytes(len(line))


def virtual() -> VirtualClock:
    return VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))


@pytest.mark.parametrize("asked", [False, True])
def test_the_settings_at_which_lines_are_regular_are_found(asked: bool) -> None:
    clock = virtual()
    stranger = Stranger(clock, asked=asked)
    guess = LinkGuess(stranger, clock, probe=b"?\r" if asked else b"", dwell_s=2.5)
    guess.start()
    run(clock, 120.0)
    seen = guess.look()
    assert seen.done
    assert seen.settings is not None
    assert (seen.settings.baud, seen.settings.parity) == (RIGHT.baud, RIGHT.parity)
    assert "19200 baud, 7E1" in seen.sentence
    assert seen.tried < seen.of, "it stops once it is sure"
    assert not stranger.is_open
    guess.close()


def test_silence_and_noise_each_have_their_sentence() -> None:
    clock = virtual()
    quiet = LinkGuess(Stranger(clock, silent=True), clock, usual_settings()[:3], dwell_s=0.5)
    noisy = LinkGuess(Stranger(clock), clock, usual_settings()[:2], dwell_s=0.5)
    quiet.start()
    noisy.start()
    run(clock, 5.0)
    assert quiet.look().done
    assert noisy.look().done
    assert "Nothing came" in quiet.look().sentence
    assert "nothing regular" in noisy.look().sentence
    assert quiet.look().settings is noisy.look().settings is None
    assert noisy.look().best is not None, "the bytes can be looked at"
    quiet.close()
    noisy.close()


def test_a_port_that_is_gone_ends_the_guessing_with_its_sentence() -> None:
    clock = virtual()

    class Gone(Stranger):
        def open(self) -> None:
            raise PortMissing("test:stranger is not there.")

    guess = LinkGuess(Gone(clock), clock)
    guess.start()
    run(clock, 1.0)
    assert guess.look().done
    assert guess.look().sentence == "test:stranger is not there."
    guess.close()


@given(st.binary(max_size=500))
def test_any_bytes_can_be_looked_at(data: bytes) -> None:
    seen = look_at(data, 1.0)
    assert 0.0 <= seen.regularity <= 1.0
    assert all(line.isascii() and line.isprintable() for line in seen.lines)
    rows = hex_view(data)
    assert len(rows) == -(-len(data) // 16)
    assert bytes.fromhex("".join(row[8:55] for row in rows)) == data


def test_the_hexadecimal_view_shows_place_bytes_and_text() -> None:
    (row,) = hex_view(b"p1=5\r\n")
    assert row == f"000000  {'70 31 3D 35 0D 0A':<47}  p1=5··"
