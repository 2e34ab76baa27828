"""A plug that is pulled and put back again and again: what it costs in links, threads and descriptors."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from drivers.clock import ScaledClock
from drivers.device import Gauge, connect
from drivers.following import FollowingTransport
from drivers.instrument import LinkState
from drivers.ports import PortInfo, PortList
from drivers.profile import load_profile
from tests.drivers.terminals import Terminal, eventually

DESCRIPTORS = Path("/proc/self/fd")
IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"
ROW = b"-5.01200E+01,1.03400E+02,9.91E37,9.91E37,2.10400E+01,1.12300E+01,1.01325E+05,4.50000E+01\n"
FASTER = 100.0
"""The link waits half a second or more between two tries: on this clock so many times less."""


@dataclass(frozen=True, slots=True)
class Soaked:
    """What was counted: of threads and descriptors how many more there are after the last cycle than before the first.

    `gaps` are readings that have no number, `stuck` cycles in which the link did not get lost or did not come back.
    """

    cycles: int
    reconnects: int
    readings: int
    gaps: int
    stuck: int
    threads: int
    descriptors: int

    @property
    def clean(self) -> bool:
        """Whether nothing was lost and nothing left behind."""
        lost = self.gaps or self.stuck or self.threads or self.descriptors
        return self.reconnects == self.cycles and not lost


def soak(cycles: int, folder: Path, told: Callable[[int], None] = lambda _: None) -> Soaked:
    """Pull the plug of a polled gauge on a pseudo-terminal; every second time it comes back under another name."""
    names = (folder / "USB0", folder / "USB1")
    profile = load_profile("scpi-gauge")
    profile = replace(profile, link=replace(profile.link, settle_s=0.01))
    terminal = Terminal(names[0], _answer)

    def ports() -> PortList:
        return PortList((PortInfo(str(terminal.link), "", "0001:0002", "A7"),))

    gauge = connect("gauge", profile, FollowingTransport(str(names[0]), ports), ScaledClock(FASTER))
    assert isinstance(gauge, Gauge)
    numbers: list[int] = []

    def is_in(state: LinkState) -> bool:
        numbers.extend(reading.sequence for reading in gauge.take() if reading.channel == "gauge.p1")
        return gauge.status().state is state

    def is_read_past(count: int) -> bool:
        return is_in(LinkState.LINKED) and len(numbers) > count

    with terminal:
        gauge.start()
        stuck = int(not eventually(lambda: is_in(LinkState.LINKED)))
        threads, descriptors = threading.active_count(), _open_descriptors()
        for cycle in range(cycles):
            terminal.unplug()
            stuck += not eventually(lambda: is_in(LinkState.LOST))
            terminal.link = names[cycle // 2 % 2]
            terminal.plug_in()
            stuck += not eventually(partial(is_read_past, len(numbers)))
            told(cycle + 1)
        more = threading.active_count() - threads, _open_descriptors() - descriptors
        reconnects = gauge.status().reconnects
        gauge.close()
    gaps = len(numbers) - len(set(numbers) & set(range(len(numbers))))
    return Soaked(cycles, reconnects, len(numbers), gaps, stuck, *more)


def _answer(message: bytes) -> bytes | None:
    return {b"*IDN?\n": IDENTITY, b"READ?\n": ROW}.get(message)


def _open_descriptors() -> int:
    return len(list(DESCRIPTORS.iterdir()))
