"""Gauges without a wire (typed values, a recorded file), and the line gauges that are asked or cannot be asked."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.answering import COLUMNS
from drivers.clock import VirtualClock
from drivers.device import Gauge, connect
from drivers.errors import PortMissing
from drivers.following import FollowingTransport
from drivers.instrument import LinkState
from drivers.openers import Openers
from drivers.profile import load_profile
from drivers.recorded import read_rows
from drivers.serialport import SerialTransport
from drivers.transport import Transport
from tests.drivers.wires import Wire, run, with_checksum


def virtual() -> VirtualClock:
    return VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))


def gauge_of(profile: str, transport: Transport, clock: VirtualClock) -> Gauge:
    gauge = connect("g", load_profile(profile), transport, clock)
    assert isinstance(gauge, Gauge)
    gauge.start()
    return gauge


def test_typed_values_become_readings_once_each_in_their_order() -> None:
    clock = virtual()
    openers = Openers(clock)
    gauge = gauge_of("by-hand", openers.open("hand:table"), clock)
    run(clock, 1.0)
    assert gauge.status().state is LinkState.LINKED
    assert gauge.status().identity == "id=BY-HAND,table"
    keyboard = openers.keyboard("hand:table")
    for channel, value in (("p1", -50.2), ("p1", -49.9), ("t1", 21.0), ("h1", 45.0)):
        keyboard.enter(channel, value)
    run(clock, 30.0)
    readings = [(item.channel, item.value) for item in gauge.take()]
    assert [value for channel, value in readings if channel == "g.p1"] == [-50.2, -49.9]
    assert ("g.t1", 21.0) in readings
    assert [value for channel, value in readings if channel == "g.h1"] == pytest.approx([0.45])
    assert len(readings) == 4
    assert gauge.status().no_replies == gauge.status().bad_frames == 0
    gauge.close()


def test_what_is_typed_wrong_is_refused() -> None:
    keyboard = Openers(virtual()).keyboard("hand:a")
    with pytest.raises(ValueError, match=r"channel is 'p9': one of these is needed: p1, p2"):
        keyboard.enter("p9", 1.0)
    with pytest.raises(ValueError, match="p1 is nan"):
        keyboard.enter("p1", float("nan"))


def test_a_recorded_file_is_played_at_its_own_pace(tmp_path: Path) -> None:
    path = tmp_path / "readings.csv"
    rows = [f"{100 + 0.1 * n:.1f},{-50 + n},{'' if n % 2 else 20.5}" for n in range(50)]
    path.write_text("t_s,p1,t1\n" + "\n".join(rows) + "\n", "utf-8-sig")
    clock = virtual()
    gauge = gauge_of("recorded-file", Openers(clock).open(f"file:{path}"), clock)
    begin_ns = clock.now_ns()
    run(clock, 10.0)
    pressures = [item for item in gauge.take() if item.channel == "g.p1"]
    assert [item.value for item in pressures] == [-50.0 + n for n in range(50)]
    moments = [(item.monotonic_ns - pressures[0].monotonic_ns) / 1e9 for item in pressures]
    assert moments == pytest.approx([0.1 * n for n in range(50)], abs=0.021)
    assert (pressures[0].monotonic_ns - begin_ns) / 1e9 < 0.2
    assert gauge.status().state is LinkState.LINKED
    gauge.close()


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "line 1: the heading needs t_s"),
        ("t_s,p9\n0,1\n", "line 1: the heading needs t_s"),
        ("t_s,p1,p1\n0,1,1\n", "each once"),
        ("t_s,p1\n", "no rows"),
        ("t_s,p1\n0,1\n1,x\n", "line 3: p1: a number is needed, not “x”"),
        ("t_s,p1\n0,1\n1\n", "line 3: 2 cells are needed, there are 1"),
        ("t_s,p1\n0,1\n,2\n", "line 3: t_s: a number is needed"),
        ("t_s,p1\n5,1\n4,2\n", "goes back, from 5 to 4"),
        ("t_s,p1\n" + "\n".join(f"{n / 100},1" for n in range(200)), "at most 40 rows a second"),
    ],
)
def test_a_mistake_in_a_recorded_file_is_named(text: str, said: str) -> None:
    with pytest.raises(PortMissing) as caught:
        read_rows(text, "file.csv")
    assert said in str(caught.value)


def test_a_recorded_file_that_is_not_there_is_a_lost_link() -> None:
    clock = virtual()
    gauge = gauge_of("recorded-file", Openers(clock).open("file:/nowhere/x.csv"), clock)
    run(clock, 1.0)
    assert gauge.status().state is LinkState.LOST
    assert "/nowhere/x.csv" in gauge.status().sentence
    gauge.close()


@given(st.text(max_size=300))
def test_any_text_is_a_recording_or_refused(text: str) -> None:
    try:
        rows = read_rows(text, "f")
    except PortMissing:
        return
    assert all(set(values) <= set(COLUMNS) for _, values in rows)


def test_other_addresses_are_ports() -> None:
    openers = Openers(virtual())
    assert isinstance(openers.open("COM3"), FollowingTransport)
    assert isinstance(openers.open("socket://localhost:4001"), SerialTransport)


def test_the_line_gauge_that_is_asked_is_read() -> None:
    clock = virtual()
    answers = {
        b"?\r\n": with_checksum("id=LINE-GAUGE-POLLED,LP-0001"),
        b"read\r\n": with_checksum("p1=-50.12 p2=OVER t1=21.04 t2=11.23"),
    }
    gauge = gauge_of("line-gauge-polled", Wire(clock, answer=answers.get), clock)
    run(clock, 2.0)
    readings = gauge.take()
    assert {item.value for item in readings if item.channel == "g.p1"} == {-50.12}
    assert len([item for item in readings if item.channel == "g.p1"]) >= 15
    gauge.close()


def test_a_thermometer_that_cannot_be_asked_is_known_by_its_lines() -> None:
    clock = virtual()
    wire = Wire(clock)
    wire.url = "test:thermometer"
    gauge = gauge_of("thermometer-line", wire, clock)
    run(clock, 0.1)
    for n in range(10):
        wire.say(b"T %5.2f C, H  45.2 %%, B 1013.25 hPa\r\n" % (20 + n / 100), 1.0 + n)
    wire.say(b"T   --- C, H  45.2 %, B 1013.25 hPa\r\n", 11.0)
    run(clock, 11.5)
    assert gauge.status().state is LinkState.LINKED
    readings = gauge.take()
    assert [item.value for item in readings if item.channel == "g.t1"] == pytest.approx(
        [20 + n / 100 for n in range(1, 10)]
    ), "the first line told who it is"
    assert {item.value for item in readings if item.channel == "g.b1"} == {101_325.0}
    assert [item.value for item in readings if item.channel == "g.h1"] == pytest.approx([0.452] * 10)
    assert [message for message in wire.messages() if message] == []
    gauge.close()
