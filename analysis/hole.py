"""The size of a hole: what a flow at a pressure amounts to, in words that everybody understands."""

from __future__ import annotations

import math
from dataclasses import dataclass

from analysis.air import REFERENCE_DENSITY_KG_M3
from analysis.bounds import above_zero
from analysis.records import Estimate

SHARP_EDGED = 0.611
"""Discharge coefficient of a hole with sharp edges (general fluid mechanics)."""
DEFINITION = "one round hole with sharp edges (discharge coefficient 0.611) that passes the same flow at 10 Pa: EqLA10"

_CM2_PER_M2 = 1e4
_SECONDS_PER_HOUR = 3600.0


@dataclass(frozen=True, slots=True)
class EquivalentHole:
    """All leaks together as one hole; `definition` has to stand beside the area."""

    area_cm2: Estimate
    diameter_cm: Estimate
    definition: str = DEFINITION


def equivalent_hole(eqla10_cm2: Estimate) -> EquivalentHole:
    """Return the hole of an equivalent leakage area at 10 Pa; d = (4 A/pi)**0.5.

    It is taken at 10 Pa and not at 50 Pa: with an exponent other than 0.5 the area depends on the pressure, and the
    lower one is nearer to what wind and stack do.
    """
    return EquivalentHole(
        eqla10_cm2,
        Estimate(
            _diameter_cm(eqla10_cm2.value),
            _diameter_cm(eqla10_cm2.low),
            _diameter_cm(eqla10_cm2.high),
            eqla10_cm2.extrapolated,
        ),
    )


def hole_cm2_per_m3_h(
    pressure_pa: float,
    discharge_coefficient: float = SHARP_EDGED,
    density_kg_m3: float = REFERENCE_DENSITY_KG_M3,
) -> float:
    """Return the area of a hole (cm2) for each m3/h that it passes at a pressure.

    1/(Cd (2 dp/rho)**0.5), flow through an orifice (general fluid mechanics).
    """
    speed_m_s = math.sqrt(2.0 * pressure_pa / density_kg_m3)
    return _CM2_PER_M2 / (_SECONDS_PER_HOUR * discharge_coefficient * speed_m_s)


def area_to_seal(eqla10_cm2: Estimate, q50_m3_h: float, target_m3_h: float) -> Estimate | None:
    """Return how much of the equivalent hole (cm2) has to go until the flow at 50 Pa is at a target; None if it is.

    The exponent is taken to stay. The uncertainty of the flow itself is that of the verdict, not of this figure.
    """
    above_zero(target_m3_h, "target_m3_h")
    share = 1.0 - target_m3_h / above_zero(q50_m3_h, "q50_m3_h")
    if share <= 0.0:
        return None
    return Estimate(share * eqla10_cm2.value, share * eqla10_cm2.low, share * eqla10_cm2.high, eqla10_cm2.extrapolated)


def _diameter_cm(area_cm2: float) -> float:
    return math.sqrt(4.0 * area_cm2 / math.pi)
