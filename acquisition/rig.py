"""The rig: instruments in their roles. Nothing above this module knows a protocol or a port."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from analysis.records import FlowRange


class Role(StrEnum):
    """What a channel measures in the test."""

    ENVELOPE = "envelope-pressure"
    FLOW_ELEMENT = "flow-element-pressure"
    FLOW = "flow"
    INDOOR = "indoor-temperature"
    OUTDOOR = "outdoor-temperature"
    BAROMETER = "barometric-pressure"


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
class RigSpec:
    """A rig as its file describes it; stored with every test as used.

    `fan` names the instrument that drives the fan, empty for a fan by hand. `fitted` names the flow range in use.
    `time_factor` other than 1 is for simulated rigs only.
    """

    name: str
    instruments: tuple[InstrumentSpec, ...]
    fan: str
    ranges: tuple[FlowRange, ...]
    fitted: str
    simulated: bool = False
    time_factor: float = 1.0
    note: str = ""
