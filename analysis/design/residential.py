"""The load calculation of ASHRAE for houses: infiltration at the design hour from the leakage area.

ASHRAE Fundamentals 2021, residential chapter (read in a public copy whose formula is garbled; the grouping used here
reproduces its tables).
"""

from __future__ import annotations

from enum import Enum

from analysis.bounds import above_zero, not_negative, within
from analysis.infiltration.model import Infiltration, infiltration
from analysis.records import Estimate

_M3_H_PER_L_S = 3.6


class Season(Enum):
    """Coefficients I0, I1, I2 for a wind of 3.4 m/s (cooling) and 6.7 m/s (heating)."""

    COOLING = (25.0, 0.38, 0.12)
    HEATING = (51.0, 0.35, 0.23)


def driving_force_l_s_cm2(
    season: Season, height_m: float, temperature_difference_k: float, flue_share: float = 0.0
) -> float:
    """Return the infiltration driving force: (I0 + H dt (I1 + I2 A_flue/A_L))/1000 l/(s cm2).

    `height_m` is the average stack height, dt indoor minus outdoor as a magnitude, `flue_share` A_flue/A_L.
    """
    constant, stack, flue = season.value
    above_zero(height_m, "height_m")
    difference = not_negative(temperature_difference_k, "temperature_difference_k")
    share = within(flue_share, 0.0, 1.0, "flue_share")
    return (constant + height_m * difference * (stack + flue * share)) / 1000.0


def design_infiltration(
    ela4_cm2: Estimate,
    season: Season,
    height_m: float,
    temperature_difference_k: float,
    volume_m3: float | None = None,
    flue_share: float = 0.0,
) -> Infiltration:
    """Return the air flow at the design hour: leakage area at 4 Pa times the driving force. Raises `InvalidInput`."""
    force = driving_force_l_s_cm2(season, height_m, temperature_difference_k, flue_share)
    return infiltration("design-factor", ela4_cm2.times(force * _M3_H_PER_L_S), volume_m3)


def leakage_area_cm2(exposed_m2: float, unit_leakage_cm2_m2: float) -> float:
    """Return the effective leakage area at 4 Pa that a class of construction stands for: A_es A_ul."""
    return above_zero(exposed_m2, "exposed_m2") * above_zero(unit_leakage_cm2_m2, "unit_leakage_cm2_m2")


def with_unbalanced_fans_m3_h(infiltration_m3_h: float, unbalanced_m3_h: float) -> float:
    """Return infiltration and fans together: max(Q_unbal, Q_i + 0.5 Q_unbal)."""
    natural = not_negative(infiltration_m3_h, "infiltration_m3_h")
    fans = not_negative(unbalanced_m3_h, "unbalanced_m3_h")
    return max(fans, natural + 0.5 * fans)
