"""The rig: instruments in their roles. Nothing above this module knows a protocol or a port."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from functools import cached_property

from acquisition.correction import Correction
from acquisition.fitted import Fitted
from analysis.errors import InvalidInput
from analysis.records import FlowRange
from drivers.byhand import HAND


class Role(StrEnum):
    """What a channel measures in the test."""

    ENVELOPE = "envelope-pressure"
    """Indoor minus outdoor, at the first or only outdoor tap."""
    ENVELOPE_2 = "envelope-pressure-2"
    ENVELOPE_3 = "envelope-pressure-3"
    ENVELOPE_4 = "envelope-pressure-4"
    FLOW_ELEMENT = "flow-element-pressure"
    FLOW_ELEMENT_2 = "flow-element-pressure-2"
    FLOW_ELEMENT_3 = "flow-element-pressure-3"
    FLOW_ELEMENT_4 = "flow-element-pressure-4"
    FLOW = "flow"
    FLOW_2 = "flow-2"
    FLOW_3 = "flow-3"
    FLOW_4 = "flow-4"
    ZONE_1 = "zone-pressure-1"
    """Indoor minus an unheated zone: a garage, an attic, a crawl space, a neighbour."""
    ZONE_2 = "zone-pressure-2"
    ZONE_3 = "zone-pressure-3"
    ZONE_4 = "zone-pressure-4"
    INDOOR = "indoor-temperature"
    INDOOR_2 = "indoor-temperature-2"
    INDOOR_3 = "indoor-temperature-3"
    OUTDOOR = "outdoor-temperature"
    OUTDOOR_2 = "outdoor-temperature-2"
    BAROMETER = "barometric-pressure"


TAPS = (Role.ENVELOPE, Role.ENVELOPE_2, Role.ENVELOPE_3, Role.ENVELOPE_4)
"""The same pressure indoors against outdoor pressure at several places; the mean of all is the envelope pressure."""
ZONES = (Role.ZONE_1, Role.ZONE_2, Role.ZONE_3, Role.ZONE_4)
FLOWS = (Role.FLOW, Role.FLOW_2, Role.FLOW_3, Role.FLOW_4)
FLOW_ELEMENTS = (Role.FLOW_ELEMENT, Role.FLOW_ELEMENT_2, Role.FLOW_ELEMENT_3, Role.FLOW_ELEMENT_4)
FAN_FLOWS = tuple(zip(FLOWS, FLOW_ELEMENTS, strict=True))
"""What tells the flow of each fan: the flow itself where there is such a channel, else its flow element."""
PRESSURES = (*TAPS, *ZONES, *FLOW_ELEMENTS)
"""What is corrected by the calibration of a gauge."""
INDOORS = (Role.INDOOR, Role.INDOOR_2, Role.INDOOR_3)
OUTDOORS = (Role.OUTDOOR, Role.OUTDOOR_2)
"""Of several thermometers in one air the mean counts."""


@dataclass(frozen=True, slots=True)
class InstrumentSpec:
    """One instrument of a rig file.

    `profile` is the id of a shipped profile or the path of a profile file. `channels` gives the role of each channel
    that is used, by the channel's name in the profile. `serial` is the identity that must answer, empty for any.
    """

    name: str
    profile: str
    port: str
    channels: tuple[tuple[str, Role], ...] = ()
    serial: str = ""


@dataclass(frozen=True, slots=True)
class FurtherFan:
    """One more fan that blows with the first one: its drive, and the flow range that is fitted on it."""

    drive: str
    fitted: str


@dataclass(frozen=True, slots=True)
class CalibrationNote:
    """The calibration of an instrument or a flow range (`of`, its name in the rig), as the equipment register had it.

    `due` holds the first day on which it is overdue by the name of the scheme, the usual one without a name; it is
    empty, and `calibrated` None, where the register has no calibration.
    """

    of: str
    calibrated: date | None
    due: tuple[tuple[str, date], ...] = ()


@dataclass(frozen=True)
class RigSpec:
    """A rig as its file describes it; stored with every test as used.

    `fan` names the instrument that drives the fan, empty for a fan by hand. `fitted` names the flow range in use.
    `shutter` says that the fan closes by itself at rest, so that nobody has to cover it. `time_factor` other than 1 is
    for simulated rigs only. `further` are fans that get the same command as the first one; their flows add up.
    `calibrations` and `corrections` (whose channels are `INSTRUMENT.CHANNEL`) come from the equipment register when
    the rig is opened; a rig file has neither.
    """

    name: str
    instruments: tuple[InstrumentSpec, ...]
    fan: str
    ranges: tuple[FlowRange, ...]
    fitted: str
    shutter: bool = False
    simulated: bool = False
    time_factor: float = 1.0
    further: tuple[FurtherFan, ...] = ()
    typed: bool = False
    """Whether there was no rig: pressures and flows were typed from a hand-written record."""
    zone_names: tuple[tuple[Role, str], ...] = ()
    """What the zones are called, such as garage, attic, neighbour."""
    calibrations: tuple[CalibrationNote, ...] = ()
    corrections: tuple[Correction, ...] = ()

    @property
    def fitted_range(self) -> FlowRange:
        """The flow range in use on the first fan."""
        return self.range_named(self.fitted)

    @cached_property
    def fitted_ranges(self) -> Fitted:
        """The flow range in use on each fan."""
        names = (self.fitted, *(fan.fitted for fan in self.further))
        return Fitted(tuple(self.range_named(name) for name in names))

    @property
    def fans(self) -> tuple[str, ...]:
        """The fan drives, none for a fan by hand."""
        return (self.fan, *(fan.drive for fan in self.further)) if self.fan else ()

    @property
    def by_hand(self) -> frozenset[Role]:
        """The roles whose readings a person types."""
        typed = (item for item in self.instruments if item.port.startswith(HAND))
        return frozenset(role for item in typed for _, role in item.channels)

    def with_fitted(self, fan: int, name: str) -> RigSpec:
        """Return the rig with another flow range on a fan, counted from 0; raises `InvalidInput`."""
        names = [item.name for item in self.ranges]
        if name not in names:
            raise InvalidInput("flow range", name, f"one of this rig's is needed: {', '.join(names)}")
        if not 0 <= fan <= len(self.further):
            raise InvalidInput("fan", fan + 1, f"a number from 1 to {1 + len(self.further)} is needed")
        if fan == 0:
            return replace(self, fitted=name)
        further = [replace(item, fitted=name) if at == fan else item for at, item in enumerate(self.further, 1)]
        return replace(self, further=tuple(further))

    def range_named(self, name: str) -> FlowRange:
        """Return a flow range of the rig."""
        return next(item for item in self.ranges if item.name == name)

    def zone_name(self, role: Role) -> str:
        """Return what a zone is called, empty where nobody said."""
        return dict(self.zone_names).get(role, "")

    def role_channels(self) -> dict[Role, str]:
        """The channel of each role, as `INSTRUMENT.CHANNEL`."""
        return {
            role: f"{instrument.name}.{channel}"
            for instrument in self.instruments
            for channel, role in instrument.channels
        }

    def corrections_by_channel(self) -> dict[str, Correction]:
        """The correction of each channel that has one, by `INSTRUMENT.CHANNEL`."""
        return {item.channel: item for item in self.corrections}
