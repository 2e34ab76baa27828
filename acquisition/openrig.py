"""A connected rig: readings come out in their roles, the fan takes a speed, everything can be brought to rest."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from acquisition.register import Register, equipped
from acquisition.rig import RigSpec, Role
from acquisition.steps import Procedure
from analysis.errors import InvalidInput
from analysis.records import Air, Building, Direction
from drivers.answering import AnsweringTransport
from drivers.byhand import Keyboard
from drivers.clock import Clock
from drivers.device import Drive, Gauge, connect
from drivers.errors import ProfileError
from drivers.instrument import LinkState, LinkStatus
from drivers.profile import Profile, load_profile
from drivers.reading import Reading
from drivers.transport import TransportOpener


class OpenRig:
    """The instruments of a rig, each with its link running. Used by the engine's loop only, but for `statuses`."""

    def __init__(self, spec: RigSpec, gauges: Sequence[Gauge], fans: Sequence[Drive]) -> None:
        """Take over connected instruments; `start` opens their links."""
        self.spec = spec
        self._gauges = tuple(gauges)
        self._fans = tuple(fans)
        self._roles = {channel: role for role, channel in spec.role_channels().items()}
        self._corrections = spec.corrections_by_channel()
        self.keyboards: dict[str, Keyboard] = {}
        """Where values are typed, by the name of the instrument that is read by hand."""
        self.batteries: dict[str, float] = {}
        """Charge (0..1) that instruments report of themselves, by name; a new dictionary with each change."""
        self._battery_channels = {
            f"{gauge.name}.{channel.name}": gauge.name
            for gauge in self._gauges
            for channel in gauge.profile.channels
            if channel.quantity == "battery"
        }
        self.fitter: Callable[[int, str], None] | None = None
        """Fits a flow range where no person does: gets the fan, counted from 0, and the name of the range."""
        self.script: Callable[[], Procedure] | None = None
        """Gives the steps of a rig that plays back a recorded test, in place of those of a plan."""
        self._watched = tuple(gauge.watch() for gauge in self._gauges)

    def start(self) -> None:
        """Open the links."""
        for item in self._linked():
            item.start()

    def take(self) -> list[tuple[Role, Reading]]:
        """Return the readings of all channels with a role since the last call, oldest first."""
        readings = [reading for gauge in self._gauges for reading in gauge.take()]
        if self._battery_channels:
            self.batteries = self.batteries | {
                self._battery_channels[reading.channel]: reading.value
                for reading in readings
                if reading.channel in self._battery_channels
            }
        return self._in_roles(readings)

    def watch(self) -> list[tuple[Role, Reading]]:
        """Return the readings since the last call of this, for the watchdog, which does not wait for the engine."""
        return self._in_roles([reading for take in self._watched for reading in take()])

    def enter(self, role: Role, value: float) -> None:
        """Take a value (SI) that a person read from a gauge and typed; raises `ValueError` where nothing is typed."""
        name, _, channel = self.spec.role_channels().get(role, "").partition(".")
        if name not in self.keyboards:
            raise ValueError(f"role is {role!r}: its readings are not typed")
        self.keyboards[name].enter(channel, value)

    def equip(self, register: Register) -> None:
        """Take over what the equipment register knows of these instruments; before readings are taken."""
        self.spec = equipped(self.spec, register)
        self._corrections = self.spec.corrections_by_channel()

    def _in_roles(self, readings: Sequence[Reading]) -> list[tuple[Role, Reading]]:
        batch = [
            (self._roles[reading.channel], self._corrected(reading))
            for reading in readings
            if reading.channel in self._roles
        ]
        batch.sort(key=lambda pair: pair[1].monotonic_ns)
        return batch

    def told(self) -> Sequence[tuple[int, float]]:
        """Return when (ns) a fan of a record was told which speed (0 to 1) since the last call; here there is none."""
        return ()

    def _corrected(self, reading: Reading) -> Reading:
        """Return a reading as the certificate of its gauge corrects it: everything behind sees the true pressure."""
        correction = self._corrections.get(reading.channel)
        if correction is None:
            return reading
        return replace(reading, value=correction.true_pa(reading.value), shown=reading.value)

    @property
    def rate_hz(self) -> float:
        """How often the fastest gauge is to give readings, by its profile; 0 without a gauge."""
        return max((gauge.profile.rate_hz for gauge in self._gauges), default=0.0)

    @property
    def has_fan(self) -> bool:
        """Whether the program drives the fans; else a person does."""
        return bool(self._fans)

    @property
    def turns(self) -> bool:
        """Whether the fan changes its direction by itself."""
        return bool(self._fans) and all(fan.turns for fan in self._fans)

    def set_fan(self, fraction: float, running: int | None = None) -> None:
        """Command the speed 0..1 of the first fans, or of all; the others rest.

        To be repeated, since a drive stops by itself when it hears nothing.
        """
        count = len(self._fans) if running is None else running
        for number, fan in enumerate(self._fans, 1):
            fan.set(fraction if number <= count else 0.0)

    def fit(self, fan: int, name: str) -> None:
        """Take it as done that another flow range is fitted on a fan, counted from 0.

        Raises `InvalidInput` for a fan or range that the rig has not.
        """
        self.spec = self.spec.with_fitted(fan, name)
        if self.fitter is not None:
            self.fitter(fan, name)

    def set_direction(self, direction: Direction) -> None:
        """Tell a fan that turns by itself which way to blow; only at rest."""
        for fan in self._fans:
            if fan.turns:
                fan.set_direction(direction.value)

    def stop(self) -> None:
        """Bring every fan to its safe state, ahead of anything queued."""
        for fan in self._fans:
            fan.to_safe_state()

    def speed_readback(self) -> float | None:
        """Return the speed that the drives themselves report, the highest of them; None when none does."""
        speeds = [speed for fan in self._fans if (speed := fan.speed_readback()) is not None]
        return max(speeds, default=None)

    def statuses(self) -> tuple[LinkStatus, ...]:
        """Return the state of every link."""
        return tuple(item.status() for item in self._linked())

    @property
    def fans_linked(self) -> bool:
        """Whether the link of every fan drive stands."""
        return all(fan.status().state is LinkState.LINKED for fan in self._fans)

    def accept_identity(self, name: str) -> None:
        """Go on with the instrument that now answers on the link `name`: a person decided so."""
        for item in self._linked():
            if item.name == name:
                item.accept_identity()

    def close(self) -> None:
        """Bring every fan to its safe state, confirm it, and close every link."""
        self.stop()
        for fan in self._fans:
            fan.close()
        for gauge in self._gauges:
            gauge.close()

    @property
    def stopped_safely(self) -> bool | None:
        """After `close`: whether the drives confirmed that they are at rest; None when none was ever commanded."""
        found = [fan.closed_safely for fan in self._fans if fan.closed_safely is not None]
        return all(found) if found else None

    def _linked(self) -> tuple[Gauge | Drive, ...]:
        return (*self._gauges, *self._fans)


def open_rig(spec: RigSpec, clock: Clock, opener: TransportOpener) -> OpenRig:
    """Connect the instruments of `spec` and start their links; raises `InvalidInput` for what the file gets wrong."""
    gauges: list[Gauge] = []
    drives: dict[str, Drive] = {}
    keyboards: dict[str, Keyboard] = {}
    for instrument in spec.instruments:
        try:
            profile = load_profile(instrument.profile)
        except ProfileError as error:
            raise InvalidInput(f"profile of {instrument.name}", instrument.profile, str(error)) from error
        transport = opener(instrument.port)
        if isinstance(transport, AnsweringTransport) and isinstance(transport.source, Keyboard):
            keyboards[instrument.name] = transport.source
        device = connect(instrument.name, profile, transport, clock, serial=instrument.serial)
        if isinstance(device, Gauge):
            _check_channels(instrument.name, profile, [channel for channel, _ in instrument.channels])
            gauges.append(device)
        elif instrument.name in spec.fans:
            drives[instrument.name] = device
        else:
            raise InvalidInput("fan", spec.fan or None, f"instrument {instrument.name} is a fan drive: name it here")
    for name in spec.fans:
        if name not in drives:
            raise InvalidInput("fan", name, "the name of a fan drive is needed; that instrument is a gauge")
    rig = OpenRig(spec, gauges, [drives[name] for name in spec.fans])
    rig.keyboards = keyboards
    rig.start()
    return rig


def _check_channels(name: str, profile: Profile, channels: list[str]) -> None:
    known = [channel.name for channel in profile.channels]
    for channel in channels:
        if channel not in known:
            allowed = f"the channels of profile {profile.id} are: {', '.join(known)}"
            raise InvalidInput(f"channels of {name}", channel, allowed)


@dataclass(frozen=True, slots=True)
class RigSource:
    """A rig that can be opened by a click: the simulated houses, made by the front door.

    `open` gets the time factor (1 is real time) and returns the rig and the clock that it lives on. `building` and
    `air` are what a new job may start from.
    """

    id: str
    title: str
    description: str
    open: Callable[[float], tuple[OpenRig, Clock]]
    building: Building | None = None
    air: Air | None = None
