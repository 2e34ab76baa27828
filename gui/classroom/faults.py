"""What a trainer throws with one press: the keys of an event, and what the truth says of it afterwards."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from gui.words import say
from simulators.element import RANGES
from simulators.house import House


@dataclass(frozen=True, slots=True)
class Fault:
    """A fault: its words on the button, its event, and what it is called on the sheet of the student."""

    words: str
    event: Mapping[str, object]
    says: str
    over_s: float = 0.0
    lasts: bool = True
    """Whether it stays until it is put right."""


def faults_of(house: House) -> tuple[Fault, ...]:
    """Return what can be thrown at a house."""
    biggest = max(house.leaks, key=lambda leak: leak.share)
    names = [item.name for item in RANGES]
    at = names.index(house.fitted)
    other = names[at - 1] if at else names[1]
    wall = house.fan_facade.value
    found = [
        Fault(
            say("A seal comes off"),
            {"what": "seal-off", "times": 1.0 + 0.25 / biggest.share, "leaks": [biggest.name]},
            f"A seal came off: {biggest.name}.",
        ),
        Fault(
            say("A window stands ajar"),
            {"what": "opening", "facade": wall, "area_m2": 0.02},
            f"A window stood ajar, {wall}.",
            1.0,
        ),
        Fault(
            say("A door stands open"),
            {"what": "opening", "facade": wall, "area_m2": 1.6},
            f"A door stood open, {wall}.",
            1.0,
        ),
        Fault(say("The flue is open"), {"what": "flue", "area_m2": 0.03}, "The flue was open.", 1.0),
        Fault(say("The kitchen hood runs"), {"what": "exhaust", "flow_m3_h": 300.0}, "The kitchen hood ran.", 1.0),
        Fault(say("Outdoor hose slips off"), {"what": "hose", "state": "off"}, "The outdoor hose had slipped off."),
        Fault(say("Outdoor hose kinked"), {"what": "hose", "state": "kinked"}, "The outdoor hose was kinked."),
        Fault(say("Outdoor hose wet"), {"what": "hose", "state": "wet"}, "There was water in the outdoor hose."),
        Fault(
            say("Outdoor hose in the wind"),
            {"what": "hose", "state": "flapping"},
            "The outdoor hose moved in the wind.",
        ),
        Fault(
            say("Outdoor hose in the jet"), {"what": "hose-in-jet", "jet_pa": 12.0}, "The outdoor hose lay in the jet."
        ),
        Fault(say("Hoses swapped"), {"what": "hoses-swapped"}, "The hoses were swapped."),
        Fault(
            say("Flow range {name} fitted", name=other),
            {"what": "range-fitted", "range": other},
            f"The flow range {other} was fitted, unsaid.",
        ),
        Fault(
            say("Something before the fan"),
            {"what": "fan-obstructed", "share": 0.3},
            "Something lay before the fan.",
            2.0,
        ),
        Fault(say("The fan drive trips"), {"what": "fan-tripped"}, "The fan drive had switched itself off."),
        Fault(say("The gauge freezes"), {"what": "gauge-frozen"}, "The gauge repeated its last reading."),
        Fault(say("Readings get lost"), {"what": "readings-lost", "share": 0.3}, "Three readings in ten got lost."),
        Fault(say("A gust"), {"what": "gust", "speed_m_s": 6.0}, "", 8.0, lasts=False),
    ]
    found += [
        Fault(
            say("Door of the {zone} open", zone=zone.name),
            {"what": "zone-door", "zone": zone.name},
            f"The {zone.name} stood open.",
        )
        for zone in house.zones
    ]
    return tuple(found)
