"""Splitting the leakage through a zone by adding a hole on one side of it, the house being kept at its pressure.

Hole between zone and outdoors: C_hz = dQ/((P_h - P_z')**n - (P_h - P_z)**n). Hole between house and zone: C_zo =
dQ/(P_z'**n - P_z**n). The other coefficient follows from the ratio before (derived from the flow through both leaks;
the way is described at watersmiths.com).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from analysis.errors import InvalidInput
from analysis.records import Check, Estimate
from analysis.uncertain import Measured, Values, check_measured, gathered, scattered
from analysis.zones.reading import ZoneReading, between, check_reading, exponents, not_at_an_end

LEAST_CHANGE_PA = 5.0
"""Change of the zone pressure from which a split is worth anything (from memory: 5 to 6 Pa)."""
CERTAIN_TIMES = 2.0
"""The flow change has to be so many times its standard uncertainty (our choice)."""


class HoleSide(StrEnum):
    """Where the hole was added."""

    OUTDOORS = "between zone and outdoors"
    HOUSE = "between house and zone"


@dataclass(frozen=True, slots=True)
class AddedHole:
    """A hole, the zone pressure with it (against outdoors, a magnitude), and how much more flow kept the house there.

    An error that the flow has with and without the hole, such as that of the calibration, changes dQ only in
    proportion; the uncertainty of `flow_change_m3_h` is mostly that of the scatter of both flows.
    """

    side: HoleSide
    zone_pa: Measured
    flow_change_m3_h: Measured


@dataclass(frozen=True, slots=True)
class ZoneSplit:
    """The leaks on both sides of a zone as coefficients (m3/(h Pa**n)), and the flow through both before the hole.

    `share` is that flow over the flow of the whole house, None where that was not given. Not all `checks` met: the
    numbers stand with their intervals, and are not worth a decision.
    """

    house_zone: Estimate
    zone_outdoors: Estimate
    path_flow_m3_h: Estimate
    share: Estimate | None
    checks: tuple[Check, ...]

    @property
    def usable(self) -> bool:
        """True when every check is met."""
        return all(check.ok for check in self.checks)


def split_by_hole(before: ZoneReading, hole: AddedHole, house_flow_m3_h: Measured | None = None) -> ZoneSplit:
    """Return the split of the leakage through a zone, with intervals from all that was read (JCGM 101).

    `house_flow_m3_h` is the fan flow before the hole. Raises `InvalidInput` for a zone pressure or a flow that moved
    the wrong way.
    """
    check_reading(before)
    _check_hole(before, hole)
    whole = house_flow_m3_h if house_flow_m3_h is not None else Measured(1.0)
    check_measured(whole, "house_flow_m3_h")
    house, zone, n, after, change, total = scattered(
        before.house_pa, before.zone_pa, before.n, hole.zone_pa, hole.flow_change_m3_h, whole
    )
    zone, after, n = between(zone, house), between(after, house), exponents(n)
    ratio = (zone / (house - zone)) ** n
    if hole.side is HoleSide.OUTDOORS:
        house_zone = coefficient(change, (house - after) ** n - (house - zone) ** n)
        zone_outdoors = house_zone / ratio
    else:
        zone_outdoors = coefficient(change, after**n - zone**n)
        house_zone = zone_outdoors * ratio
    path = house_zone * (house - zone) ** n
    return ZoneSplit(
        house_zone=gathered(house_zone),
        zone_outdoors=gathered(zone_outdoors),
        path_flow_m3_h=gathered(path),
        share=None if house_flow_m3_h is None else gathered(path / total),
        checks=(not_at_an_end(before), change_is_large(before.zone_pa, hole.zone_pa), _flow_is_clear(hole)),
    )


def coefficient(flow_change: Values, power_change: Values) -> Values:
    """Return the coefficient that a flow change belongs to: 0 for none, infinite where the pressure did not change."""
    flow = np.maximum(flow_change, 0.0)
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(power_change > 0.0, flow / power_change, np.inf)


def change_is_large(before: Measured, after: Measured) -> Check:
    """Hold the change of the zone pressure against the least that is useful."""
    change = abs(after.value - before.value)
    return Check(
        "zone-change",
        "",
        f"Zone pressure changed by at least {LEAST_CHANGE_PA:g} Pa: else add a larger hole",
        change,
        LEAST_CHANGE_PA,
        "Pa",
        change >= LEAST_CHANGE_PA,
        "from memory",
    )


def _flow_is_clear(hole: AddedHole) -> Check:
    change = hole.flow_change_m3_h
    least = CERTAIN_TIMES * change.u
    return Check(
        "flow-change",
        "",
        f"Flow changed by at least {CERTAIN_TIMES:g} times its own uncertainty",
        change.value,
        least,
        "m³/h",
        change.value >= least,
        "our choice",
    )


def _check_hole(before: ZoneReading, hole: AddedHole) -> None:
    check_measured(hole.zone_pa, "zone pressure with the hole")
    check_measured(hole.flow_change_m3_h, "change of the fan flow")
    was, now, house = before.zone_pa.value, hole.zone_pa.value, before.house_pa.value
    if now >= house:
        allowed = f"a pressure below that of the house, {house:g} Pa, is needed"
        raise InvalidInput("zone pressure with the hole", now, allowed)
    if hole.side is HoleSide.OUTDOORS and now >= was:
        allowed = f"a hole to outdoors lowers the zone pressure, which was {was:g} Pa"
        raise InvalidInput("zone pressure with the hole", now, allowed)
    if hole.side is HoleSide.HOUSE and now <= was:
        allowed = f"a hole to the house raises the zone pressure, which was {was:g} Pa"
        raise InvalidInput("zone pressure with the hole", now, allowed)
