"""Gauges and drives: a profile, a transport and a session joined to something that the program reads or sets."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol, runtime_checkable

from drivers.clock import Clock, Hosted, seconds
from drivers.errors import ProfileError
from drivers.framing.lines import LineFramer
from drivers.instrument import LinkState, LinkStatus
from drivers.profile import LinkSettings, Profile
from drivers.reading import Reading
from drivers.session import Session
from drivers.talks import Driving, Listening, Outbox, Polling
from drivers.transport import Transport

CLOSE_LOOK_S = 0.02
CLOSE_LIMIT_S = 2.0


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
        """Return a snapshot of the link."""
        return self._session.status()

    def accept_identity(self) -> None:
        """Go on with the instrument that now answers: a person decided so."""
        self._session.accept_identity()

    def _end(self) -> None:
        if self._hosted is not None:
            self._hosted.stop()
            self._hosted = None
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

    def zero(self) -> bool:
        """Ask the gauge to zero itself; false when it cannot be asked."""
        if self.profile.zero_command is None or not isinstance(self._talk, Polling):
            return False
        self._talk.command(self.profile.zero_command)
        return True

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
        self._talk.want(value)

    def set_direction(self, direction: str) -> None:
        """Ask for "depressurize" or "pressurize"; only at rest, and only when the fan turns by itself."""
        self._talk.want_direction(direction)

    def to_safe_state(self) -> None:
        """Ask for rest, ahead of everything queued."""
        self._talk.want_safe()

    def speed_readback(self) -> float | None:
        """Return the speed that the drive last said it took over."""
        return self._talk.readback

    def close(self) -> None:
        """Bring the fan to rest, wait a bounded time until the drive confirms it, close the port, end the loop."""
        if self._hosted is not None and self._talk.commanded:
            self._talk.want_safe()
            limit_ns = self._clock.now_ns() + seconds(CLOSE_LIMIT_S + self._clock.slack_s)
            while not self._talk.safe_confirmed and self._clock.now_ns() < limit_ns:
                if self.status().state is not LinkState.LINKED:
                    break
                self._clock.wait_until(self._clock.now_ns() + seconds(CLOSE_LOOK_S))
            self.closed_safely = self._talk.safe_confirmed
        self._end()


def connect(name: str, profile: Profile, transport: Transport, clock: Clock, *, serial: str = "") -> Gauge | Drive:
    """Return the gauge or drive of a profile on a transport; nothing is opened before `start`."""
    if isinstance(transport, Configurable):
        transport.configure(profile.link)
    framer = LineFramer(checksum=profile.lines is not None and profile.lines.checksum)
    if profile.drive is not None:
        driving = Driving(profile.drive)
        session = Session(name, transport, clock, profile.identity, profile.link, framer, driving, serial=serial)
        return Drive(session, clock, profile, driving)
    outbox = Outbox(name, profile.channels, clock)
    talk: Polling | Listening
    if profile.poll is not None:
        talk = Polling(profile.poll, outbox)
    elif profile.lines is not None:
        talk = Listening(profile.lines, outbox)
    else:
        raise ProfileError(profile.id, None, "protocol", "a gauge is polled or sends lines by itself")
    session = Session(
        name,
        transport,
        clock,
        profile.identity,
        profile.link,
        framer,
        talk,
        serial=serial,
        free_running=profile.lines is not None,
    )
    return Gauge(session, clock, profile, outbox, talk)
