"""A gauge for the bench of wires: eight channels, as fast as it is told to be, every sample with a number of its own.

It stands behind a TCP port in a process of its own, so that its work is not counted as that of whoever reads it.
"""

from __future__ import annotations

import itertools
import math
import multiprocessing
from collections import deque
from collections.abc import Iterator
from contextlib import contextmanager
from multiprocessing.connection import Connection

from drivers.clock import NS_PER_S, WallClock
from drivers.framing.lines import Checksum
from simulators.tcp import TcpPort

CHANNELS = ("p1", "p2", "p3", "p4", "p5", "t1", "t2", "b1")
"""Four taps, the flow element, two temperatures and a barometer: every one has a role, so that all reach the screen."""
NUMBERS = 40_000
"""`b1` counts so far and begins again; the profile calls it Pa."""
FIRST_NUMBER = 60_000
START_LIMIT_S = 20.0
TALKS = ("polled", "free-running")


class FastGauge:
    """Answers `*IDN?`; answers `READ?` with a line of eight columns, or sends one `rate_hz` times a second."""

    serial = "FG-0001"

    def __init__(self, talk: str, rate_hz: float) -> None:
        """Begin to count at 0."""
        self._period_ns = round(NS_PER_S / rate_hz) if talk == "free-running" else None
        self._due_ns: int | None = None
        self._numbers = itertools.cycle(range(FIRST_NUMBER, FIRST_NUMBER + NUMBERS))
        self._received = bytearray()
        self._replies: deque[bytes] = deque()

    def receive(self, data: bytes, now_ns: int) -> None:
        """Take questions."""
        *messages, rest = (bytes(self._received) + data).split(b"\n")
        self._received[:] = rest[-64:]
        for message in messages:
            if message == b"*IDN?":
                self._replies.append(_framed(f"AIRSEAM DEMO,FAST-GAUGE,{self.serial},1.0"))
                self._due_ns = self._due_ns or now_ns
            elif message == b"READ?":
                self._replies.append(self._row())

    def send(self, now_ns: int) -> bytes:
        """Return what is due."""
        if self._period_ns is not None and self._due_ns is not None:
            while self._due_ns <= now_ns:
                self._replies.append(self._row())
                self._due_ns += self._period_ns
        data = b"".join(self._replies)
        self._replies.clear()
        return data

    def next_ns(self) -> int | None:
        """Return when the next line goes out."""
        return self._due_ns if self._period_ns is not None else None

    def _row(self) -> bytes:
        number = next(self._numbers)
        pressure_pa = 50.0 * math.sin(number / 300.0)
        values = [*(pressure_pa + tap for tap in range(4)), 2.0 * abs(pressure_pa), 21.0, 3.0, float(number)]
        return _framed(",".join(f"{value:.5E}" for value in values))


def _framed(text: str) -> bytes:
    body = text.encode("ascii")
    return body + b";" + Checksum.XOR.of(body) + b"\n"


@contextmanager
def served(talk: str, rate_hz: float) -> Iterator[str]:
    """Serve a gauge by another process; yield its address."""
    context = multiprocessing.get_context("spawn")
    here, there = context.Pipe()
    process = context.Process(target=_serve, args=(there, talk, rate_hz), daemon=True)
    process.start()
    try:
        if not here.poll(START_LIMIT_S):
            raise RuntimeError("the simulated gauge did not start")
        yield here.recv()
        here.send("end")
    finally:
        process.join(2.0)
        process.terminate()
        process.join()
        here.close()


def _serve(pipe: Connection, talk: str, rate_hz: float) -> None:
    """Serve until told to end."""
    port = TcpPort("fast gauge", FastGauge(talk, rate_hz), WallClock(), "127.0.0.1", 0)
    port.start()
    try:
        pipe.send(port.address)
        pipe.recv()
    finally:
        port.close()


def profile_text(talk: str, rate_hz: float) -> str:
    """Return the profile by which the program reads this gauge."""
    how = f'[poll]\nquery = "READ?"\nrate_hz = {rate_hz}\ntimeout_s = 0.3\n'
    if talk == "free-running":
        how = f"[stream]\nrate_hz = {rate_hz}\nsilence_s = 1.0\n"
    columns = ", ".join(f'"{name}"' for name in CHANNELS)
    return (
        'format = "airseam-profile-1"\nid = "fast-gauge"\ntitle = "Gauge of the bench"\nkind = "gauge"\n'
        'protocol = "lines"\nchecksum = "xor"\n'
        '[link]\nbaud = 115200\ndata_bits = 8\nparity = "none"\nstop_bits = 1\ndtr = true\nrts = true\n'
        'settle_s = 0.05\nterminator = "\\n"\n'
        '[identity]\nquery = "*IDN?"\npattern = "[^,]*,FAST-GAUGE,(?P<serial>[^,]+),[^,]*"\ntimeout_s = 1.0\n'
        f'[reply]\nlayout = "columns"\ncolumns = [{columns}]\nseparator = ","\n{how}' + "".join(map(_channel, CHANNELS))
    )


def _channel(name: str) -> str:
    quantity, unit, low, high = {
        "p": ("pressure", "Pa", -500.0, 500.0),
        "t": ("temperature", "degC", -40.0, 60.0),
        "b": ("pressure", "Pa", 50_000.0, 110_000.0),
    }[name[0]]
    return (
        f'[[channel]]\nname = "{name}"\nquantity = "{quantity}"\nunit = "{unit}"\nlow = {low}\nhigh = {high}\n'
        "resolution = 0.01\naccuracy = 0.5\n"
    )
