"""Rooms with the door closed: the pressure that the supply air makes, and the opening that would relieve it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from analysis.bounds import above_zero
from analysis.hole import SHARP_EDGED, hole_cm2_per_m3_h
from analysis.records import Check, Estimate
from analysis.uncertain import Measured, check_measured, gathered, scattered

LIMIT_PA, HIGH_FLOW_LIMIT_PA = 3.0, 5.0
"""Pressure of a closed room against the main space in one programme of the United States (from memory)."""


@dataclass(frozen=True, slots=True)
class RoomResult:
    """A closed room held against the limit, and what it lacks.

    Areas (cm2, sharp-edged hole, discharge coefficient 0.611) are None where the supply flow is not known.
    `missing_cm2` is what has to be added for the limit, 0 where nothing has to.
    """

    check: Check
    present_cm2: Estimate | None
    needed_cm2: Estimate | None
    missing_cm2: Estimate | None


def room_result(pressure_pa: Measured, supply_m3_h: Measured | None = None, *, high_flow: bool = False) -> RoomResult:
    """Return what the pressure of a closed room (magnitude against the main space) and its supply say.

    A = Q/(Cd (2 dp/rho)**0.5), all supply air leaving to the main space (general fluid mechanics). Raises
    `InvalidInput`.
    """
    check_measured(pressure_pa, "pressure_pa")
    limit = HIGH_FLOW_LIMIT_PA if high_flow else LIMIT_PA
    text = f"At most {limit:g} Pa between closed room and main space"
    ok = pressure_pa.value <= limit
    check = Check(
        "room-pressure", "", text, pressure_pa.value, limit, "Pa", ok, "from memory, a programme of the United States"
    )
    if supply_m3_h is None:
        return RoomResult(check, None, None, None)
    check_measured(supply_m3_h, "supply_m3_h")
    pressure, supply = scattered(pressure_pa, supply_m3_h)
    per_root_pascal = hole_cm2_per_m3_h(1.0, SHARP_EDGED)
    present = supply * per_root_pascal / np.sqrt(np.maximum(pressure, 1e-9))
    needed = supply * hole_cm2_per_m3_h(limit, SHARP_EDGED)
    return RoomResult(check, gathered(present), gathered(needed), gathered(np.maximum(needed - present, 0.0)))


def transfer_area_cm2(flow_m3_h: float, pressure_pa: float = LIMIT_PA) -> float:
    """Return the opening (cm2, discharge coefficient 0.611) that passes a flow at a pressure."""
    return above_zero(flow_m3_h, "flow_m3_h") * hole_cm2_per_m3_h(above_zero(pressure_pa, "pressure_pa"), SHARP_EDGED)
