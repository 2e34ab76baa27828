"""Teaching over real pseudo-terminals: guess the link, take the lines, make the profile, read by it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from drivers.clock import WallClock, seconds
from drivers.device import Gauge, connect
from drivers.framing.modbus import Bus, Wire
from drivers.profile import load_profile
from drivers.serialport import open_url
from drivers.spec import LinkSettings
from drivers.teaching.channels import Meaning, save_profile
from drivers.teaching.lesson import Lesson, numbers_in, teach
from drivers.teaching.linkguess import LinkGuess
from drivers.teaching.registers import RegisterScan
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from simulators.server import serve_pty

CLOCK = WallClock()


def until(what: Callable[[], bool], limit_s: float = 15.0) -> bool:
    end_ns = CLOCK.now_ns() + seconds(limit_s)
    while CLOCK.now_ns() < end_ns and not what():
        CLOCK.wait_until(CLOCK.now_ns() + seconds(0.02))
    return what()


def test_a_stream_on_a_terminal_is_guessed_taught_saved_and_read(tmp_path: Path) -> None:
    server = serve_pty(SimulatedRig(load_house("mill-row"), 1, CLOCK, protocol="lines"), tmp_path)
    try:
        guess = LinkGuess(open_url(server["gauge"]), CLOCK)
        guess.start()
        assert until(lambda: guess.look().done)
        guess.close()
        best = guess.look().best
        assert best is not None
        assert guess.look().settings is not None, guess.look().sentence
        sample = best.seen.lines[0]
        picks = tuple((span.end - 1, Meaning(f"c{n}")) for n, span in enumerate(numbers_in(sample)[:2]))
        link = LinkSettings(terminator=best.seen.terminator)
        lesson = Lesson("taught", "Taught", sample, picks, best.seen.lines, link, best.seen.checksum)
        profile = load_profile(str(save_profile(teach(lesson).text, tmp_path / "profiles")))
        gauge = connect("g", profile, open_url(server["gauge"]), CLOCK)
        assert isinstance(gauge, Gauge)
        gauge.start()
        assert until(lambda: gauge.status().readings >= 5), gauge.status()
        assert {item.channel for item in gauge.take()} == {"g.c0", "g.c1"}
        gauge.close()
    finally:
        server.close()


def test_the_registers_of_an_instrument_on_a_terminal_are_scanned(tmp_path: Path) -> None:
    server = serve_pty(SimulatedRig(load_house("mill-row"), 1, CLOCK, protocol="modbus"), tmp_path)
    try:
        link = LinkSettings(baud=19_200, parity="even")
        scan = RegisterScan(open_url(server["fan"]), CLOCK, Bus(Wire.RTU, 1), link, spaces=("holding",), count=8)
        scan.start()
        assert until(lambda: scan.look().done), scan.look()
        scan.close()
        assert scan.look().registers["holding"] == {0: 0, 1: 0, 2: 20}
    finally:
        server.close()
