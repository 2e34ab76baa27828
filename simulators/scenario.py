"""What a scenario is: a house, its weather, the rig around it, and what happens when."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import partial

from drivers.clock import Clock
from simulators.house import House
from simulators.memory import Faults, MemoryPort
from simulators.plant import Event
from simulators.rig import SimulatedRig
from simulators.rigging import Rigging


class Plug(StrEnum):
    """What somebody does to a cable."""

    PULL = "pull"
    PUT_BACK = "put back"


@dataclass(frozen=True, slots=True)
class LinkEvent:
    """What happens to the cable of an instrument, `gauge` or `fan`, some time after the start."""

    at_s: float
    instrument: str
    change: Faults | Plug

    def befall(self, port: MemoryPort) -> None:
        """Do it to a port."""
        match self.change:
            case Plug.PULL:
                port.unplug()
            case Plug.PUT_BACK:
                port.replug()
            case Faults():
                port.faults = self.change


@dataclass(frozen=True, slots=True)
class Scenario:
    """A house on a certain day, and the course of events. `task` says in words what it is for."""

    id: str
    title: str
    note: str
    task: str
    house: House
    rigging: Rigging
    protocol: str
    events: tuple[Event, ...]
    link_events: tuple[LinkEvent, ...]

    def rig(self, seed: int, clock: Clock) -> SimulatedRig:
        """Return the rig with everything that is to happen to it; the times of the events begin now."""
        rig = SimulatedRig(self.house, seed, clock, protocol=self.protocol, rigging=self.rigging)
        with rig.world.lock:
            for event in self.events:
                rig.plant.schedule(event)
        for link_event in self.link_events:
            port = rig.ports[rig.own_ports[link_event.instrument]]
            port.at(link_event.at_s, partial(link_event.befall, port))
        return rig
