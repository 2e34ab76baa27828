"""Links over a pseudo-terminal in real time: what a port of the operating system really does when things go wrong."""

from __future__ import annotations

import itertools
import os
import sys
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import replace
from pathlib import Path

import pytest

from drivers.clock import Clock, WallClock
from drivers.device import Drive, Gauge, connect
from drivers.instrument import LinkState
from drivers.profile import Profile, load_profile
from drivers.reading import Reading
from drivers.serialport import open_url
from tests.drivers.soaking import DESCRIPTORS, soak
from tests.drivers.terminals import Terminal, eventually, pause
from tests.drivers.wires import with_checksum

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="Windows has no pseudo-terminals")

IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"
OTHER_IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0099,1.0\n"
SETTLED_S = 0.01


def quick(profile_id: str) -> Profile:
    """Return a shipped profile with times fit for a test."""
    profile = load_profile(profile_id)
    quick_link = replace(profile.link, settle_s=SETTLED_S)
    quick_identity = replace(profile.identity, timeout_s=0.15)
    poll = None if profile.poll is None else replace(profile.poll, rate_hz=50.0, timeout_s=0.1)
    return replace(profile, link=quick_link, identity=quick_identity, poll=poll)


def numbers(p1: float) -> bytes:
    return f"{p1:.5E},1.03400E+02,9.91E37,9.91E37,2.10000E+01,1.10000E+01,1.01325E+05,4.50000E+01\n".encode()


def counting(identity: bytes = IDENTITY) -> Callable[[bytes], bytes | None]:
    """Answer as a gauge does whose p1 counts the requests."""
    count = itertools.count(1)

    def answer(message: bytes) -> bytes | None:
        if message == b"*IDN?\n":
            return identity
        return numbers(next(count)) if message == b"READ?\n" else None

    return answer


@contextmanager
def gauge_on(
    terminal: Terminal, profile_id: str = "scpi-gauge", clock: Clock | None = None, serial: str = ""
) -> Iterator[Gauge]:
    device = connect("gauge", quick(profile_id), open_url(terminal.url), clock or WallClock(), serial=serial)
    assert isinstance(device, Gauge)
    device.start()
    try:
        yield device
    finally:
        device.close()


def linked(device: Gauge | Drive) -> bool:
    return device.status().state is LinkState.LINKED


def p1_of(readings: list[Reading]) -> list[float]:
    return [reading.value for reading in readings if reading.channel == "gauge.p1"]


def await_readings(gauge: Gauge, count: int) -> list[Reading]:
    taken: list[Reading] = []

    def enough() -> bool:
        taken.extend(gauge.take())
        return len(p1_of(taken)) >= count

    assert eventually(enough), gauge.status()
    return taken


def fill(terminal: Terminal) -> None:
    """Write what nobody reads until the system takes no more."""
    end = os.open(terminal.url, os.O_RDWR | os.O_NOCTTY | os.O_NONBLOCK)
    try:
        for _ in range(5):
            with suppress(BlockingIOError):
                while True:
                    os.write(end, b"\n" * 512)
            pause(0.01)
            with suppress(BlockingIOError):
                while True:
                    os.write(end, b"\n")
    finally:
        os.close(end)


def test_a_gauge_is_opened_identified_and_read(tmp_path: Path) -> None:
    with Terminal(tmp_path / "port", counting()) as terminal, gauge_on(terminal) as gauge:
        taken = await_readings(gauge, 3)
        assert p1_of(taken)[:3] == [1.0, 2.0, 3.0]
        status = gauge.status()
    assert (status.identity, status.port) == (IDENTITY.decode().strip(), terminal.url)
    assert status.sentence == ""
    assert status.round_trip_s is not None
    assert 0 < status.round_trip_s < 0.1


def test_a_pulled_plug_is_told_and_the_gauge_found_again_under_the_same_name(tmp_path: Path) -> None:
    """Rules A1 and A21: any exception of the port is a lost link, told once, and opened again."""
    with Terminal(tmp_path / "port", counting()) as terminal, gauge_on(terminal) as gauge:
        before = await_readings(gauge, 2)
        terminal.unplug()
        assert eventually(lambda: gauge.status().state is LinkState.LOST)
        assert gauge.status().sentence.startswith(terminal.url)
        assert gauge.status().sentence.endswith(".")
        terminal.plug_in()
        after = await_readings(gauge, 2)
    status = gauge.status()
    assert status.reconnects == 1
    sequence = [reading.sequence for reading in before + after if reading.channel == "gauge.p1"]
    assert sequence == list(range(len(sequence)))


def test_a_missing_port_is_named_and_opened_once_it_is_there(tmp_path: Path) -> None:
    """Rule A4: a port that is not there is tried again, and the reason is said."""
    with Terminal(tmp_path / "port", counting()) as terminal:
        terminal.unplug()
        with gauge_on(terminal) as gauge:
            assert eventually(lambda: gauge.status().state is LinkState.LOST)
            assert "is not there" in gauge.status().sentence
            terminal.plug_in()
            await_readings(gauge, 1)
            assert gauge.status().sentence == ""


def test_one_byte_at_a_time_is_read_as_whole_numbers_only(tmp_path: Path) -> None:
    """Rule A7: only terminated lines are read."""

    def answer(message: bytes) -> bytes | None:
        for byte in whole(message) or b"":
            terminal.say(bytes([byte]))
            pause(0.0003)
        return None

    whole = counting()
    with Terminal(tmp_path / "port", answer) as terminal, gauge_on(terminal) as gauge:
        values = p1_of(await_readings(gauge, 3))
    # On a busy machine some replies come too late to be read: what is read was sent, each once and in its order.
    assert all(value.is_integer() for value in values)
    assert all(before < after for before, after in itertools.pairwise(values))


def test_half_a_line_is_completed_never_read(tmp_path: Path) -> None:
    """Rule A7: `12.3` and `4` are not two numbers."""
    first_half, second_half = numbers(12.34)[:4], numbers(12.34)[4:]

    def answer(message: bytes) -> bytes | None:
        if message != b"READ?\n":
            return IDENTITY
        terminal.say(first_half)
        pause(0.03)
        return second_half

    with Terminal(tmp_path / "port", answer) as terminal, gauge_on(terminal) as gauge:
        assert set(p1_of(await_readings(gauge, 3))) == {12.34}


def test_garbage_at_connect_is_skipped(tmp_path: Path) -> None:
    """Rules A10 and A11: what comes first may be anything, and ends no loop."""
    silent = threading.Event()
    whole = counting()

    def answer(message: bytes) -> bytes | None:
        if silent.is_set():
            return whole(message)
        silent.set()
        return b"\xff\x00\xfe\x80garbage 1.0,2.0\r\n\xf0\x9f" + bytes(range(256))

    with Terminal(tmp_path / "port", answer) as terminal:
        terminal.say(b"\x00\xff12.5,13.5\n\x80\x81half a li")
        with gauge_on(terminal) as gauge:
            assert p1_of(await_readings(gauge, 2))[:2] == [1.0, 2.0]
            assert linked(gauge)


def test_replies_that_come_after_their_time_are_never_taken_for_the_next(tmp_path: Path) -> None:
    """Rule A9, the fault that users met: each reply is that of the question before it."""
    late = 0.16  # later than the time-out of a poll, so each reply falls into the time of something else
    asked: list[int] = []

    def answer(message: bytes) -> bytes | None:
        if message == b"*IDN?\n":
            return IDENTITY
        asked.append(len(asked) + 1)
        pause(late)
        return numbers(float(asked[-1]))

    with Terminal(tmp_path / "port", answer) as terminal, gauge_on(terminal) as gauge:
        assert eventually(lambda: len(asked) >= 4)
        late_ones = p1_of(list(gauge.take()))
        late = 0.0
        fresh = await_readings(gauge, 1)
        assert p1_of(fresh)[0] >= 4.0
        assert late_ones == []
        assert gauge.status().no_replies >= 3


def test_an_instrument_that_is_one_reply_behind_is_never_believed(tmp_path: Path) -> None:
    """Rule A9: each reply is that of the question before it."""
    pending: list[bytes] = []
    polls = 0

    def answer(message: bytes) -> bytes | None:
        nonlocal polls
        polls += message == b"READ?\n"
        pending.append(IDENTITY if message == b"*IDN?\n" else numbers(float(polls)))
        return pending.pop(0) if len(pending) > 1 else None

    with Terminal(tmp_path / "port", answer) as terminal, gauge_on(terminal) as gauge:
        assert eventually(lambda: polls >= 1)
        pause(0.8)
        assert p1_of(list(gauge.take())) == []
        assert gauge.status().sentence != "" or not linked(gauge)


def test_another_instrument_after_a_replug_is_refused_until_a_person_accepts_it(tmp_path: Path) -> None:
    """Rule A17: who answers is asked after every opening."""
    with Terminal(tmp_path / "port", counting()) as terminal, gauge_on(terminal) as gauge:
        await_readings(gauge, 1)
        terminal.unplug()
        assert eventually(lambda: gauge.status().state is LinkState.LOST)
        gauge.take()
        terminal.answer = counting(OTHER_IDENTITY)
        terminal.plug_in()
        assert eventually(lambda: gauge.status().state is LinkState.WRONG_INSTRUMENT)
        sentence = gauge.status().sentence
        assert "SG-0099" in sentence
        assert "SG-0012" in sentence
        pause(0.1)
        assert gauge.take() == []
        gauge.accept_identity()
        await_readings(gauge, 1)
        assert "SG-0099" in gauge.status().identity


def test_the_serial_number_of_the_rig_file_is_held_against_the_first_answer(tmp_path: Path) -> None:
    with Terminal(tmp_path / "port", counting()) as terminal, gauge_on(terminal, serial="SG-7777") as gauge:
        assert eventually(lambda: gauge.status().state is LinkState.WRONG_INSTRUMENT)
        assert "SG-7777" in gauge.status().sentence
        assert gauge.take() == []


def test_the_second_to_open_a_port_is_told_that_it_is_taken(tmp_path: Path) -> None:
    """Rules A4 and A14: one program per port, and the other is told so in words."""
    with Terminal(tmp_path / "port", counting()) as terminal, gauge_on(terminal) as first:
        assert eventually(lambda: linked(first))
        with gauge_on(terminal) as second:
            assert eventually(lambda: second.status().state is LinkState.LOST)
            assert "in use by another program" in second.status().sentence
            await_readings(first, 2)


def test_a_port_that_takes_no_bytes_is_silence_not_a_lost_port(tmp_path: Path) -> None:
    """Rule A12: a write has a time-out of its own."""
    with Terminal(tmp_path / "port") as terminal:
        fill(terminal)
        with gauge_on(terminal) as gauge:
            assert eventually(lambda: gauge.status().no_replies >= 1)
            status = gauge.status()
            assert status.state is not LinkState.LOST
            assert "does not take the bytes" in status.sentence
            terminal.answer = counting()
            await_readings(gauge, 1)


def test_a_gauge_that_falls_silent_keeps_its_port(tmp_path: Path) -> None:
    """Rule A22: no reply is no lost link; only the second closes the port."""
    whole = counting()
    deaf = threading.Event()
    with (
        Terminal(tmp_path / "port", lambda message: None if deaf.is_set() else whole(message)) as terminal,
        gauge_on(terminal) as gauge,
    ):
        await_readings(gauge, 1)
        deaf.set()
        assert eventually(lambda: gauge.status().no_replies >= 2)
        assert gauge.status().state is LinkState.IDENTIFYING
        assert gauge.status().sentence.endswith(".")
        deaf.clear()
        gauge.take()
        await_readings(gauge, 1)
        assert gauge.status().reconnects == 0


def test_a_free_running_gauge_is_read_from_the_first_whole_line_on(tmp_path: Path) -> None:
    line = with_checksum("p1=-50.12 p2=103.40 t1=21.04 t2=11.23")

    def answer(message: bytes) -> bytes | None:
        return line[5:] + with_checksum("id=LINE-GAUGE,LG-0007") if message == b"?\r\n" else None

    with Terminal(tmp_path / "port", answer) as terminal, gauge_on(terminal, "line-gauge") as gauge:
        terminal.say(line[10:])
        assert eventually(lambda: linked(gauge))
        terminal.say(line + with_checksum("p1=-50.13 p2=OVER t1=21.04 t2=11.23"))
        assert p1_of(await_readings(gauge, 2)) == [-50.12, -50.13]
        assert gauge.status().bad_frames <= 1


def test_forty_pulled_plugs_cost_no_link_no_thread_and_no_descriptor(tmp_path: Path) -> None:
    """Rules A1 to A5, A17 and A21; `run.py bench wires --soak` does it two hundred times."""
    if not DESCRIPTORS.is_dir():
        pytest.skip("this system does not list open descriptors")
    soaked = soak(40, tmp_path)
    assert soaked.clean, soaked
