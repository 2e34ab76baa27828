"""The gauge that talks by itself: lines, checksum, identity."""

from __future__ import annotations

import re
from functools import reduce

import numpy as np
import pytest

from drivers.clock import seconds
from simulators.instruments.line_gauge import LONGEST_QUEUE, LineGauge, framed
from simulators.world import World
from tests.simulators.rigs import new_world

LINE = re.compile(rb"p1=(-?\d+\.\d\d) p2=(-?\d+\.\d\d) t1=(-?\d+\.\d\d) t2=(-?\d+\.\d\d);[0-9A-F]{2}\r\n")


@pytest.fixture
def world() -> World:
    return new_world()


@pytest.fixture
def gauge(world: World) -> LineGauge:
    return LineGauge(world)


def test_the_checksum_is_the_exclusive_or_of_all_before_the_semicolon() -> None:
    body = b"p1=-50.12 p2=103.40 t1=21.04 t2=11.23"
    assert framed(body.decode()) == body + b";%02X\r\n" % reduce(lambda a, b: a ^ b, body)
    # Exclusive or of 0x61, 0x62 and 0x63, by hand: 0x60.
    assert framed("abc") == b"abc;60\r\n"


def test_ten_lines_a_second_come_unasked(gauge: LineGauge) -> None:
    data = gauge.send(seconds(1.0))
    lines = data.splitlines(keepends=True)
    assert len(lines) == 10
    assert all(LINE.fullmatch(line) for line in lines)
    assert gauge.send(seconds(1.05)) == b""
    assert gauge.next_ns() == seconds(1.1)


def test_the_line_holds_what_the_gauge_shows(world: World, gauge: LineGauge) -> None:
    match = LINE.fullmatch(gauge.send(seconds(0.1)))
    assert match is not None
    shown = [world.reading(name) for name in ("p1", "p2", "t1", "t2")]
    assert [float(group) for group in match.groups()] == pytest.approx(shown, abs=0.005)


def test_late_asking_gives_the_same_lines(gauge: LineGauge) -> None:
    other = LineGauge(new_world())
    prompt = b"".join(other.send(seconds(tick / 37)) for tick in range(75))
    assert gauge.send(seconds(2.0)) == prompt


def test_a_question_mark_brings_the_identity_between_two_lines(gauge: LineGauge) -> None:
    gauge.receive(b"?\r\n", seconds(0.05))
    lines = gauge.send(seconds(0.3)).splitlines(keepends=True)
    assert lines[1] == framed("id=LINE-GAUGE,LG-0007")
    assert len(lines) == 4


def test_the_question_may_come_byte_by_byte_and_nothing_else_is_answered(gauge: LineGauge) -> None:
    for byte in b"*IDN?\r\n??\r\nREAD?\n" + b"\x00\xff" * 300 + b"\n":
        gauge.receive(bytes([byte]), 0)
    assert b"id=" not in gauge.send(seconds(0.1))
    for byte in b"?\r\n":
        gauge.receive(bytes([byte]), seconds(0.1))
    assert b"id=" in gauge.send(seconds(0.2))


def test_a_pressure_out_of_range_reads_over(world: World, gauge: LineGauge) -> None:
    world.plant.gauge.shown = np.array([[-500.0, 12.3, 21.0, 11.0, 101325.0, 45.0]])
    gauge.follow(0)
    assert gauge.send(0) == framed("p1=OVER p2=12.30 t1=21.00 t2=11.00")


def test_lines_that_nobody_takes_are_gone(gauge: LineGauge) -> None:
    assert len(gauge.send(seconds(20.0)).splitlines()) == LONGEST_QUEUE
