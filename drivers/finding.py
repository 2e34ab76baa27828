"""Finding out who is at the other end of a port: the identity questions of the known profiles, one after the other.

Only questions are sent, never a command; a port that another program has open is left alone and said so. Ports are
asked side by side. Blocking: not for the thread of a window.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass

from drivers.clock import Clock, seconds
from drivers.device import Configurable, framer_for
from drivers.errors import InstrumentError
from drivers.ports import PortInfo
from drivers.spec import Profile
from drivers.transport import TransportOpener

READ_SLICE_S = 0.02
LOOK_S = 0.005
MOST_AT_ONCE = 8
NOBODY = "Nobody whom a profile knows answers. Is it switched on, and is there a profile for it?"


@dataclass(frozen=True, slots=True)
class Found:
    """What was found at a port. `profile` is empty where nobody was; `sentence` then says why."""

    port: PortInfo
    profile: str = ""
    identity: str = ""
    serial: str = ""
    sentence: str = ""


def find_instruments(
    ports: Sequence[PortInfo],
    profiles: Iterable[Profile],
    opener: TransportOpener,
    clock: Clock,
    tell: Callable[[Found], None] = lambda _: None,
) -> tuple[Found, ...]:
    """Return who is at each port, in the order of the ports; `tell` hears of each as soon as it is known."""
    known = tuple(profile for profile in profiles if profile.place == "port")

    def ask(port: PortInfo) -> Found:
        found = _ask(port, known, opener, clock)
        tell(found)
        return found

    if not ports:
        return ()
    with ThreadPoolExecutor(min(len(ports), MOST_AT_ONCE), "find") as workers:
        return tuple(workers.map(ask, ports))


def _ask(port: PortInfo, profiles: Sequence[Profile], opener: TransportOpener, clock: Clock) -> Found:
    """Try the profiles that ask alike together, each group with its own link settings."""
    for group in _alike(profiles):
        try:
            line = _answer(port.name, group, opener, clock)
        except InstrumentError as error:
            return Found(port, sentence=str(error))
        for profile in group:
            match = profile.identity.pattern.fullmatch(line) if line else None
            if match is not None:
                return Found(port, profile.id, line, match["serial"])
        if line:
            return Found(port, identity=line, sentence=f"It says “{line}”, which no profile knows.")
    return Found(port, sentence=NOBODY)


def _alike(profiles: Sequence[Profile]) -> list[list[Profile]]:
    """Return the profiles in groups that ask the same question with the same link settings."""
    groups: dict[object, list[Profile]] = {}
    for profile in profiles:
        groups.setdefault((profile.link, profile.identity.query, profile.checksum, profile.bus), []).append(profile)
    # Text first: what it makes of binary frames no instrument can be asked.
    return sorted(groups.values(), key=lambda group: group[0].bus is not None)


def _answer(port: str, group: Sequence[Profile], opener: TransportOpener, clock: Clock) -> str:
    """Return the line that answers, empty when none that makes sense comes in time.

    A line that one of the patterns knows ends the wait; lines of a free-running instrument are passed over.
    """
    first = group[0]
    transport = opener(port)
    if isinstance(transport, Configurable):
        transport.configure(first.link)
    framer = framer_for(first)
    transport.open()
    try:
        clock.wait_until(clock.now_ns() + seconds(first.link.settle_s))
        transport.read(READ_SLICE_S)
        framer.expect_reply()
        if first.bus is None:
            # Ends whatever another question has left behind in the instrument.
            transport.write(first.link.terminator.encode("ascii"))
        transport.write(first.identity.query)
        end_ns = clock.now_ns() + seconds(max(profile.identity.timeout_s for profile in group))
        last = ""
        while clock.now_ns() < end_ns:
            for line in framer.feed(transport.read(READ_SLICE_S)):
                if any(profile.identity.pattern.fullmatch(line) for profile in group):
                    return line
                last = line
            clock.wait_until(clock.now_ns() + seconds(LOOK_S))
        return last if _polled(group) else ""
    finally:
        transport.close()


def _polled(group: Sequence[Profile]) -> bool:
    """Tell whether these only speak when they are asked: what they say then is an answer."""
    return all(profile.stream is None for profile in group)
