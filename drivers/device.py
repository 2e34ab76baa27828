"""Gauges and drives: a profile, a transport and a session joined to something that the program reads or sets."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Protocol, runtime_checkable

from drivers.clock import Clock, Hosted, seconds
from drivers.drivetalk import Driving
from drivers.framing.framer import Framer
from drivers.framing.lines import LineFramer
from drivers.framing.modbus import ModbusFramer
from drivers.gaugetalk import Listening, Polling
from drivers.instrument import LinkState, LinkStatus
from drivers.outbox import Outbox
from drivers.reading import Reading
from drivers.session import Session
from drivers.spec import LinkSettings, Profile
from drivers.talk import Manners, Talk
from drivers.transport import Transport

BITS_PER_BYTE = 10.0
"""On a serial line: eight, and a start and a stop bit."""
CLOSE_LOOK_S = 0.02
CLOSE_LIMIT_S = 2.0
UNLINKED = (LinkState.CLOSED, LinkState.LOST, LinkState.WRONG_INSTRUMENT)
BEYOND_COMMUNICATION_TIMEOUT_S = 0.5


@runtime_checkable
class Configurable(Protocol):
    """A transport that takes link settings."""

    def configure(self, settings: LinkSettings) -> None:
        """Take them for the next `open`."""
        ...


class _Device:
    """What gauges and drives share: a session in a hosted loop."""

    def __init__(self, session: Session, clock: Clock, profile: Profile) -> None:
        self.profile = profile
        self._session = session
        self._clock = clock
        self._hosted: Hosted | None = None

    @property
    def name(self) -> str:
        """The name in the rig file."""
        return self._session.name

    def start(self) -> None:
        """Begin to open, identify and talk."""
        if self._hosted is None:
            self._hosted = self._clock.host(self._session.pump, f"link {self.name}")

    def status(self) -> LinkStatus:
        """Return a snapshot of the link; a loop that died by a fault of the program counts as a lost link."""
        status = self._session.status()
        error = self._hosted.error if self._hosted is not None else None
        if error is None:
            return status
        sentence = f"The link to {self.name} ended by a fault of the program ({type(error).__name__}: {error})."
        return replace(status, state=LinkState.LOST, sentence=sentence)

    def accept_identity(self) -> None:
        """Go on with the instrument that now answers: a person decided so."""
        self._session.accept_identity()

    def _end(self) -> None:
        """End the loop, then close the port; a loop stuck in the operating system closes it when it comes back."""
        hosted, self._hosted = self._hosted, None
        if hosted is not None and not hosted.stop():
            self._session.abandon()
            if not hosted.stop(0.1):
                return
        self._session.shut()


class Gauge(_Device):
    """Delivers readings of its channels."""

    def __init__(
        self, session: Session, clock: Clock, profile: Profile, outbox: Outbox, talk: Polling | Listening
    ) -> None:
        """Join the parts; `start` opens the link."""
        super().__init__(session, clock, profile)
        self._outbox = outbox
        self._talk = talk

    def take(self) -> Sequence[Reading]:
        """Return the readings that came since the last call, oldest first."""
        return self._outbox.take()

    def watch(self) -> Callable[[], list[Reading]]:
        """Return another `take` for a second reader that must not depend on the first; to be called before `start`."""
        return self._outbox.watch()

    def zero(self) -> bool:
        """Ask the gauge to zero itself; false when it cannot be asked (now)."""
        linked = self.status().state is LinkState.LINKED
        return linked and isinstance(self._talk, Polling) and self._talk.want_zero()

    def close(self) -> None:
        """Close the port and end the loop."""
        self._end()


class Drive(_Device):
    """Takes a fan speed, and can be brought to rest."""

    def __init__(self, session: Session, clock: Clock, profile: Profile, talk: Driving) -> None:
        """Join the parts; `start` opens the link."""
        super().__init__(session, clock, profile)
        self._talk = talk
        self.closed_safely: bool | None = None
        """After `close`: whether the drive confirmed that it is at rest; None when it was never commanded."""

    @property
    def turns(self) -> bool:
        """Whether the fan changes its direction by itself."""
        return self.profile.drive is not None and bool(self.profile.drive.directions)

    def set(self, value: float) -> None:
        """Ask for a speed 0..1; the newest wish wins. To be repeated: a drive that hears nothing stops by itself."""
        self._talk.want(value, self._clock.now_ns())

    def set_direction(self, direction: str) -> None:
        """Ask for "depressurize" or "pressurize"; taken at rest, and repeated a while until the drive confirms it.

        Until then no speed above zero is sent. Raises `ValueError` when the fan does not turn by itself.
        """
        self._talk.want_direction(direction, self._clock.now_ns())

    def to_safe_state(self) -> None:
        """Ask for rest, ahead of everything queued, until the drive confirms it."""
        self._talk.want_safe(self._clock.now_ns())

    def speed_readback(self) -> float | None:
        """Return the speed that the drive last said it took over, None before and after a lost link."""
        return self._talk.readback

    def direction_readback(self) -> str | None:
        """Return the direction that the drive last confirmed, None before and after a lost link."""
        return self._talk.direction

    def close(self) -> None:
        """Bring the fan to rest, wait a bounded time until the drive confirms it, close the port, end the loop."""
        if self._hosted is not None and self._talk.commanded:
            self.to_safe_state()
            limit_ns = self._clock.now_ns() + seconds(CLOSE_LIMIT_S + self._clock.slack_s)
            while not self._talk.safe_confirmed and self._clock.now_ns() < limit_ns:
                if self.status().state in UNLINKED:
                    break
                self._clock.wait_until(self._clock.now_ns() + seconds(CLOSE_LOOK_S))
            self.closed_safely = self._talk.safe_confirmed
        self._end()


def connect(name: str, profile: Profile, transport: Transport, clock: Clock, *, serial: str = "") -> Gauge | Drive:
    """Return the gauge or drive of a profile on a transport; nothing is opened before `start`.

    With `serial` only the instrument of that number is taken; without, the first that answers is the right one.
    """
    if isinstance(transport, Configurable):
        transport.configure(profile.link)
    settle_s = profile.link.settle_s
    framer = framer_for(profile)

    def session(talk: Talk, manners: Manners) -> Session:
        return Session(name, transport, clock, profile.identity, framer, talk, manners)

    if profile.drive is not None:
        driving = Driving(profile.drive)
        # Asked more often, a drive whose answers get lost would be kept running by the asking.
        again_s = profile.drive.communication_timeout_s + BEYOND_COMMUNICATION_TIMEOUT_S
        return Drive(session(driving, Manners(settle_s, again_s, serial)), clock, profile, driving)
    outbox = Outbox(name, profile.channels, clock, profile.averaging_s)
    talk = _gauge_talk(profile, outbox, transport.url)
    upkeep = profile.upkeep
    manners = Manners(
        settle_s, serial=serial, start=upkeep.start, keep_alive=upkeep.keep_alive, keep_alive_s=upkeep.every_s
    )
    return Gauge(session(talk, manners), clock, profile, outbox, talk)


def framer_for(profile: Profile) -> Framer:
    """Return what cuts the byte stream of a profile into lines."""
    if profile.bus is not None:
        return ModbusFramer(profile.bus)
    return LineFramer(profile.checksum, profile.link.terminator[-1:].encode("ascii"))


def _gauge_talk(profile: Profile, outbox: Outbox, port: str) -> Polling | Listening:
    if profile.reply is None or (profile.poll is None) == (profile.stream is None):
        raise ValueError(f"profile {profile.id}: a gauge has a reply format and either a poll or a stream")
    if profile.poll is not None:
        return Polling(profile.poll, profile.reply, outbox, profile.zeroing)
    assert profile.stream is not None
    byte_s = 0.0 if ":" in port else BITS_PER_BYTE / profile.link.baud
    return Listening(profile.stream, profile.reply, outbox, byte_s)
