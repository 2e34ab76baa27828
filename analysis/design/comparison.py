"""The air change that a heating or cooling design assumed, beside the one that the test lets expect."""

from __future__ import annotations

from dataclasses import dataclass

from analysis.bounds import above_zero, not_negative
from analysis.errors import InvalidInput
from analysis.infiltration.model import Infiltration
from analysis.records import Estimate

WITHIN, TIGHTER, LEAKIER = "within the band of the estimate", "tighter than assumed", "leakier than assumed"
HEAT_WH_M3_K = 1.2041 * 1006.0 / 3600.0
"""Heat that a cubic metre of air takes for each kelvin: density and specific heat of dry air at 20 degC (textbook)."""


@dataclass(frozen=True, slots=True)
class DesignComparison:
    """`ratio` is the expected air change over the assumed one, `load_w` what the design lacks (below 0: has over).

    `finding` says on which side the assumption lies of the whole band of the estimate.
    """

    assumed_per_h: float
    expected: Infiltration
    ratio: Estimate
    load_w: Estimate
    finding: str


def compare_with_design(
    assumed_per_h: float, expected: Infiltration, volume_m3: float, temperature_difference_k: float
) -> DesignComparison:
    """Return how an assumed air change compares with the expected one, and what that means in heat.

    load = rho c V (n_expected - n_assumed) dT, sensible heat only. Raises `InvalidInput`.
    """
    above_zero(assumed_per_h, "assumed_per_h")
    above_zero(volume_m3, "volume_m3")
    difference = not_negative(temperature_difference_k, "temperature_difference_k")
    found = expected.air_change_per_h
    if found is None:
        raise InvalidInput("volume_m3", None, "the expected air change needs it")
    watts = HEAT_WH_M3_K * volume_m3 * difference
    return DesignComparison(
        assumed_per_h=assumed_per_h,
        expected=expected,
        ratio=found.times(1.0 / assumed_per_h),
        load_w=Estimate(
            watts * (found.value - assumed_per_h),
            watts * (found.low - assumed_per_h),
            watts * (found.high - assumed_per_h),
            found.extrapolated,
        ),
        finding=_finding(assumed_per_h, found),
    )


def _finding(assumed_per_h: float, found: Estimate) -> str:
    if assumed_per_h > found.high:
        return TIGHTER
    return LEAKIER if assumed_per_h < found.low else WITHIN
