"""The attached garage: how open it is to the house, by its pressure and by opening its overhead door.

Criteria of public guidance (basc.pnnl.gov, air leakage testing garage to house). The opened door is a hole between zone
and outdoors that leaves the garage near outdoor pressure.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from analysis.errors import InvalidInput
from analysis.records import Check, Estimate
from analysis.uncertain import Measured, check_measured, gathered, scattered
from analysis.zones.addhole import coefficient
from analysis.zones.reading import ZoneReading, between, check_reading, exponents

HOUSE_TO_GARAGE_SHARE = 0.9
"""45 of 50 Pa between house and garage."""
LARGEST_INCREASE = 0.06
"""Share by which opening the overhead door may raise the flow."""

_ROUNDING = 1e-12
_SOURCE = "basc.pnnl.gov, air leakage testing garage to house"


@dataclass(frozen=True, slots=True)
class DoorOpened:
    """Fan flows (m3/h) at the same house pressure with the overhead door closed and open.

    `garage_pa` is what is left of the garage pressure with the door open, nothing by default.
    """

    closed_m3_h: Measured
    open_m3_h: Measured
    garage_pa: float = 0.0


@dataclass(frozen=True, slots=True)
class GarageShare:
    """The leak between house and garage at the pressure of the house, the garage being open to outdoors.

    `share` is that flow over the flow of the house with the door open.
    """

    interface_m3_h: Estimate
    share: Estimate


@dataclass(frozen=True, slots=True)
class GarageResult:
    """What the garage says: checks of the criteria, and the share where the door was opened."""

    checks: tuple[Check, ...]
    found: GarageShare | None


def garage_result(reading: ZoneReading, door: DoorOpened | None = None) -> GarageResult:
    """Return how open a garage is to the house; the reading is that with the door closed. Raises `InvalidInput`."""
    check_reading(reading)
    checks = [_pressure_check(reading)]
    if door is None:
        return GarageResult(tuple(checks), None)
    _check_door(reading, door)
    checks.append(_flow_check(door))
    return GarageResult(tuple(checks), _share(reading, door))


def _share(reading: ZoneReading, door: DoorOpened) -> GarageShare:
    """Return C_hz (P_h - P_z')**n with C_hz = dQ/((P_h - P_z')**n - (P_h - P_z)**n); dQ below 0 counts as none."""
    house, zone, n, closed, opened = scattered(
        reading.house_pa, reading.zone_pa, reading.n, door.closed_m3_h, door.open_m3_h
    )
    zone, n = between(zone, house), exponents(n)
    left = np.maximum(house - door.garage_pa, 0.0) ** n
    interface = coefficient(opened - closed, left - (house - zone) ** n) * left
    return GarageShare(gathered(interface), gathered(interface / opened))


def _pressure_check(reading: ZoneReading) -> Check:
    across = reading.house_pa.value - reading.zone_pa.value
    least = HOUSE_TO_GARAGE_SHARE * reading.house_pa.value
    text = f"More than {least:.1f} Pa between house and garage (45 of 50 Pa)"
    return Check("house-to-garage", "", text, across, least, "Pa", across > least, _SOURCE)


def _flow_check(door: DoorOpened) -> Check:
    increase = door.open_m3_h.value / door.closed_m3_h.value - 1.0
    text = "Opening the overhead door raises the flow by at most 6 %"
    return Check(
        "overhead-door",
        "",
        text,
        100.0 * increase,
        100.0 * LARGEST_INCREASE,
        "%",
        increase <= LARGEST_INCREASE + _ROUNDING,
        _SOURCE,
    )


def _check_door(reading: ZoneReading, door: DoorOpened) -> None:
    check_measured(door.closed_m3_h, "closed_m3_h")
    check_measured(door.open_m3_h, "open_m3_h")
    if not 0.0 <= door.garage_pa < reading.zone_pa.value:
        allowed = f"a pressure from 0 to below that with the door closed, {reading.zone_pa.value:g} Pa, is needed"
        raise InvalidInput("garage_pa with the door open", door.garage_pa, allowed)
