"""Whether an element pressure is within the calibration of the fitted flow range, and which range would fit. Pure."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from analysis.records import FlowRange


@dataclass(frozen=True, slots=True)
class Validity:
    """`inside` the calibration or not; `proposed` is the name of the range to fit instead, empty for none."""

    inside: bool
    sentence: str = ""
    proposed: str = ""


def check_validity(element_pa: float, fitted: FlowRange, ranges: Sequence[FlowRange]) -> Validity:
    """Return whether a pressure is one that the fitted range is calibrated for.

    Outside, the flow that the fitted range gives is looked up in the others; of those that could measure it, the one
    that has it farthest from its own ends is proposed.
    """
    pa = abs(element_pa)
    if not math.isfinite(pa):
        return Validity(False, "There is no flow-element pressure.")
    if fitted.min_pa <= pa <= fitted.max_pa:
        return Validity(True)
    flow = fitted.coefficient_m3_h_pa_n * pa**fitted.exponent
    room = {item.name: _room(flow, item) for item in ranges if item.name != fitted.name}
    name = max(room, key=lambda key: room[key], default="")
    proposed = name if name and room[name] >= 1.0 else ""
    side, bound = ("below", fitted.min_pa) if pa < fitted.min_pa else ("above", fitted.max_pa)
    words = f"{pa:.1f} Pa at the flow element is {side} the {bound:g} Pa that range {fitted.name} is calibrated to."
    if proposed:
        return Validity(False, f"{words} Fit range {proposed}.", proposed)
    return Validity(False, f"{words} No other range of this rig measures such a flow.")


def readings_outside(element_pa: Sequence[float], fitted: FlowRange) -> tuple[int, ...]:
    """Return the places of the readings that are outside the calibration; what is no number is outside."""
    return tuple(n for n, pa in enumerate(element_pa) if not fitted.min_pa <= abs(pa) <= fitted.max_pa)


def _room(flow_m3_h: float, item: FlowRange) -> float:
    """Return by what factor the pressure of a flow is away from the nearer end of a range; below 1: outside."""
    if flow_m3_h <= 0.0:
        return 0.0
    pa = float((flow_m3_h / item.coefficient_m3_h_pa_n) ** (1.0 / item.exponent))
    return min(pa / item.min_pa, item.max_pa / pa)
