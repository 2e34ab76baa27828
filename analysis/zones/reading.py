"""What is read at a zone while a fan keeps the house at a pressure, and what follows from it alone."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from analysis.bounds import above_zero, not_negative, within
from analysis.errors import InvalidInput
from analysis.records import Check, Estimate
from analysis.uncertain import Measured, Values, check_measured, gathered, scattered
from analysis.zones.series import EXPONENTS

USUAL_EXPONENT = Measured(0.65, 0.05)
"""Flow exponent of the leaks between house, zone and outdoors where none was measured (from memory)."""
END_SHARE = 0.05
"""Share of the house pressure within which a zone pressure is too near to either end to split anything (our choice)."""
_NEAR_SHARE = 0.1
_LEAST_SHARE = 1e-9


class Side(StrEnum):
    """Which air a zone rather belongs to."""

    INDOORS = "rather indoors"
    BETWEEN = "between indoors and outdoors"
    OUTDOORS = "rather outdoors"


@dataclass(frozen=True, slots=True)
class ZoneReading:
    """Pressures of house and zone against outdoors (magnitudes, Pa), and the flow exponent of the leaks between."""

    house_pa: Measured
    zone_pa: Measured
    n: Measured = USUAL_EXPONENT


@dataclass(frozen=True, slots=True)
class ZoneRatio:
    """Leak between house and zone over leak between zone and outdoors, as coefficients."""

    ratio: Estimate
    side: Side
    checks: tuple[Check, ...]


def zone_ratio(reading: ZoneReading) -> ZoneRatio:
    """Return how the leaks on both sides of a zone compare: C_hz/C_zo = (P_z/(P_h - P_z))**n. Raises `InvalidInput`."""
    check_reading(reading)
    house, zone, n = scattered(reading.house_pa, reading.zone_pa, reading.n)
    zone, n = between(zone, house), exponents(n)
    share = reading.zone_pa.value / reading.house_pa.value
    return ZoneRatio(gathered((zone / (house - zone)) ** n), _side(share), (not_at_an_end(reading),))


def check_reading(reading: ZoneReading) -> None:
    """Raise `InvalidInput` unless the zone lies between house and outdoors and the exponent is one."""
    check_measured(reading.house_pa, "house_pa")
    check_measured(reading.n, "n")
    within(reading.n.value, *EXPONENTS, "n")
    not_negative(reading.zone_pa.u, "zone_pa, standard uncertainty")
    house, zone = reading.house_pa.value, reading.zone_pa.value
    if not 0.0 <= zone < house:
        raise InvalidInput("zone_pa", zone, f"a pressure between 0 and that of the house, {house:g} Pa, is needed")


def not_at_an_end(reading: ZoneReading) -> Check:
    """Hold the zone pressure against the ends of its range: there a small error means everything."""
    house, zone = reading.house_pa.value, reading.zone_pa.value
    least = END_SHARE * above_zero(house, "house_pa")
    margin = min(zone, house - zone)
    return Check(
        "zone-not-at-an-end",
        "",
        f"Zone pressure at least {least:.1f} Pa away from those of house and outdoors",
        margin,
        least,
        "Pa",
        margin >= least,
        "from memory that it must not be near either; the figure is our choice",
    )


def between(zone: Values, house: Values) -> Values:
    """Return zone pressures kept within those of house and outdoors: beyond, the formulas mean nothing."""
    return np.clip(zone, _LEAST_SHARE * house, (1.0 - _LEAST_SHARE) * house)


def exponents(n: Values) -> Values:
    """Return exponents kept within those that leaks have."""
    return np.clip(n, *EXPONENTS)


def _side(share: float) -> Side:
    if share >= 1.0 - _NEAR_SHARE:
        return Side.INDOORS
    return Side.OUTDOORS if share <= _NEAR_SHARE else Side.BETWEEN
