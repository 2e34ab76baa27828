"""Rules of serial ports that users of many programs paid for, each over a pseudo-terminal; README.md lists them all."""

from __future__ import annotations

import os
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import replace
from pathlib import Path

import pytest

from drivers import session
from drivers.clock import WallClock, seconds
from drivers.device import Gauge, connect
from drivers.finding import find_instruments
from drivers.instrument import LinkState
from drivers.ports import PortInfo
from drivers.profile import Profile, load_profile, read_profile
from drivers.reading import Reading
from drivers.serialport import SerialTransport
from drivers.spec import LinkSettings
from drivers.transport import Transport
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from simulators.server import serve_pty
from tests.drivers.terminals import Terminal, eventually, pause
from tests.drivers.wires import with_checksum

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="Windows has no pseudo-terminals")

CLOCK = WallClock()
IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"
ROW = b"-5.01200E+01,1.03400E+02,9.91E37,9.91E37,2.10400E+01,1.12300E+01,1.01325E+05,4.50000E+01\n"
LINE = with_checksum("p1=-50.12 p2=103.40 t1=21.04 t2=11.23")


class Watched:
    """A transport that notes which thread calls it, and may be held fast in a read."""

    def __init__(self, url: str) -> None:
        """Stand before a real port."""
        self.port = SerialTransport(url)
        self.callers: set[str] = set()
        self.free = threading.Event()
        self.free.set()

    @property
    def url(self) -> str:
        """The port's name."""
        return self.port.url

    def configure(self, settings: LinkSettings) -> None:
        """Pass on."""
        self.port.configure(settings)

    def open(self) -> None:
        """Note and pass on."""
        self.callers.add(threading.current_thread().name)
        self.port.open()

    def close(self) -> None:
        """Pass on."""
        self.port.close()

    def read(self, timeout_s: float) -> bytes:
        """Note, wait while held, and pass on."""
        self.callers.add(threading.current_thread().name)
        self.free.wait(10.0)
        return self.port.read(timeout_s)

    def write(self, data: bytes) -> None:
        """Note and pass on."""
        self.callers.add(threading.current_thread().name)
        self.port.write(data)


def answer(message: bytes) -> bytes | None:
    return {b"*IDN?\n": IDENTITY, b"READ?\n": ROW}.get(message)


def quick(profile_id: str = "scpi-gauge", *, settle_s: float = 0.01, timeout_s: float = 0.1) -> Profile:
    profile = load_profile(profile_id)
    poll = None if profile.poll is None else replace(profile.poll, rate_hz=50.0, timeout_s=timeout_s)
    identity = replace(profile.identity, timeout_s=0.15)
    return replace(profile, link=replace(profile.link, settle_s=settle_s), identity=identity, poll=poll)


@contextmanager
def gauge_on(transport: Transport, profile: Profile) -> Iterator[Gauge]:
    gauge = connect("gauge", profile, transport, CLOCK)
    assert isinstance(gauge, Gauge)
    gauge.start()
    try:
        yield gauge
    finally:
        gauge.close()


def is_linked(gauge: Gauge) -> bool:
    return gauge.status().state is LinkState.LINKED


def test_one_thread_alone_opens_reads_and_writes_a_port(tmp_path: Path) -> None:
    """Rule A5: also while others ask for the state, and through a pulled plug."""
    with Terminal(tmp_path / "port", answer) as terminal:
        transport = Watched(terminal.url)
        with gauge_on(transport, quick()) as gauge:
            assert eventually(lambda: is_linked(gauge) and gauge.take())
            terminal.unplug()
            assert eventually(lambda: gauge.status().state is LinkState.LOST)
            terminal.plug_in()
            assert eventually(lambda: is_linked(gauge))
    assert transport.callers == {"link gauge"}


def test_closing_does_not_wait_for_a_silent_instrument(tmp_path: Path) -> None:
    """Rule A6: reads are short, so that nobody has to cancel one."""
    with Terminal(tmp_path / "port", lambda message: None) as terminal:
        gauge = connect(
            "gauge", replace(quick(), identity=load_profile("scpi-gauge").identity), Watched(terminal.url), CLOCK
        )
        gauge.start()
        assert eventually(lambda: terminal.heard)
        start_ns = CLOCK.now_ns()
        gauge.close()
        assert CLOCK.now_ns() - start_ns < seconds(0.5)


def test_a_reply_that_drips_in_is_over_at_its_time_out(tmp_path: Path) -> None:
    """Rule A8: the time-out is that of the whole reply, not of each byte."""

    def drip(message: bytes) -> bytes | None:
        if message != b"READ?\n":
            return IDENTITY
        for byte in ROW[:12]:
            terminal.say(bytes([byte]))
            pause(0.03)
        return None

    with Terminal(tmp_path / "port", drip) as terminal, gauge_on(Watched(terminal.url), quick()) as gauge:
        assert eventually(lambda: b"READ?\n" in terminal.heard or gauge.status().no_replies)
        assert eventually(lambda: gauge.status().no_replies >= 1, 1.0)
        assert gauge.take() == []


def test_an_owner_that_does_not_come_back_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Rule A13: a call that hangs in the system is a lost link, with a sentence that says what to do."""
    monkeypatch.setattr(session, "STUCK_NS", seconds(0.1))
    with Terminal(tmp_path / "port", answer) as terminal:
        transport = Watched(terminal.url)
        with gauge_on(transport, quick()) as gauge:
            assert eventually(lambda: is_linked(gauge))
            transport.free.clear()
            assert eventually(lambda: gauge.status().state is LinkState.LOST)
            assert "does not come back" in gauge.status().sentence
            transport.free.set()
            assert eventually(lambda: is_linked(gauge))


def test_another_program_that_takes_half_the_bytes_is_named(tmp_path: Path) -> None:
    """Rule A14: it opened the port before us, so that asking for it alone does not help."""
    with Terminal(tmp_path / "port", lambda message: with_checksum("id=LINE-GAUGE,LG-0007")) as terminal:
        thief = os.open(terminal.url, os.O_RDWR | os.O_NOCTTY | os.O_NONBLOCK)
        try:
            with gauge_on(SerialTransport(terminal.url), quick("line-gauge")) as gauge:
                assert eventually(lambda: is_linked(gauge))
                said: set[str] = set()
                for _ in range(30):
                    terminal.say(LINE[:15])
                    pause(0.005)
                    terminal.say(LINE[15:])
                    with suppress(BlockingIOError):
                        os.read(thief, 10)
                    pause(0.01)
                    said.add(gauge.status().sentence)
                values = {reading.value for reading in gauge.take() if reading.channel == "gauge.p1"}
                damaged = gauge.status().bad_frames
        finally:
            os.close(thief)
    assert damaged >= 5
    assert any("another program reads the same port" in sentence for sentence in said)
    assert values <= {-50.12}


def test_an_instrument_gets_its_moment_after_the_opening(tmp_path: Path) -> None:
    """Rule A20: what restarts when its port is opened is not spoken to before it is ready."""
    with Terminal(tmp_path / "port", answer) as terminal, gauge_on(Watched(terminal.url), quick(settle_s=0.3)) as gauge:
        assert eventually(lambda: gauge.status().state is LinkState.OPENING)
        pause(0.15)
        assert terminal.heard == []
        assert eventually(lambda: is_linked(gauge))


def test_a_silent_unit_on_a_bus_keeps_the_port_open(tmp_path: Path) -> None:
    """Rule A22: nobody answers to number 7; the port stays open, and a neighbour at the same port is still read."""
    rig = SimulatedRig(load_house("mill-row"), 1, CLOCK, protocol="modbus")
    server = serve_pty(rig, tmp_path)
    try:
        profile = quick("modbus-gauge")
        assert profile.bus is not None
        text = (Path(session.__file__).parent / "profiles" / "modbus-gauge.toml").read_text("utf-8")
        silent = read_profile(
            text.replace("unit = 1", "unit = 7").replace("timeout_s = 1.0", "timeout_s = 0.1"), "x.toml"
        )
        with gauge_on(SerialTransport(server["gauge"]), silent) as gauge:
            assert eventually(lambda: gauge.status().no_replies >= 2)
            status = gauge.status()
        assert status.state is LinkState.IDENTIFYING
        assert status.reconnects == 0
        assert "does not say who it is" in status.sentence
        with gauge_on(SerialTransport(server["gauge"]), profile) as gauge:
            assert eventually(gauge.take), (gauge.status().state, gauge.status().sentence)
    finally:
        server.close()


def test_the_sixteen_milliseconds_of_an_adapter_are_in_the_round_trip(tmp_path: Path) -> None:
    """Rule A23: the middle of request and reply is the time of the sample, and the rate is the one that is reached."""

    def slowly(message: bytes) -> bytes | None:
        pause(0.016)
        return answer(message)

    with Terminal(tmp_path / "port", slowly) as terminal, gauge_on(Watched(terminal.url), quick()) as gauge:
        taken: list[Reading] = []

        def enough() -> bool:
            taken.extend(reading for reading in gauge.take() if reading.channel == "gauge.p1")
            return len(taken) >= 20

        assert eventually(enough)
        rate_hz = gauge.status().rate_hz
    span_s = (taken[-1].monotonic_ns - taken[0].monotonic_ns) / 1e9
    assert all(reading.round_trip_s >= 0.016 for reading in taken)
    assert rate_hz == pytest.approx(19.0 / span_s, rel=0.3)


def test_ports_are_asked_in_threads_of_their_own(tmp_path: Path) -> None:
    """Rule A15: asking who is there takes as long as the slowest port, and is never done where pictures are drawn."""
    asked: list[Watched] = []

    def opener(url: str) -> Transport:
        asked.append(Watched(url))
        return asked[-1]

    with Terminal(tmp_path / "port", answer) as terminal:
        (found,) = find_instruments([PortInfo(terminal.url, "")], [load_profile("scpi-gauge")], opener, CLOCK)
    assert found.serial == "SG-0012"
    callers = {caller for transport in asked for caller in transport.callers}
    assert all(caller.startswith("find") for caller in callers)
