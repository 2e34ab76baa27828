"""Whether the flow range in the fan will do for all targets, told from the first point."""

from __future__ import annotations

from collections.abc import Sequence

from analysis.outlook import EXPONENT
from analysis.records import FlowRange


def flow_of(flow_range: FlowRange, element_pa: float) -> float:
    """Return the flow (m3/h) that an element pressure stands for, at the reference density."""
    return float(flow_range.coefficient_m3_h_pa_n * element_pa**flow_range.exponent)


def range_doubt(flow_range: FlowRange, flow_m3_h: float, pressure_pa: float, targets_pa: Sequence[float]) -> str:
    """Return a sentence when the targets (magnitudes) leave the calibrated part of the range, else an empty one.

    The flow at the other targets follows from the first point, `flow_m3_h` at `pressure_pa`, by a typical exponent.
    """
    if flow_m3_h <= 0 or pressure_pa <= 0 or not targets_pa:
        return ""
    lowest_m3_h, highest_m3_h = flow_of(flow_range, flow_range.min_pa), flow_of(flow_range, flow_range.max_pa)
    flows = {target: flow_m3_h * (target / pressure_pa) ** EXPONENT for target in targets_pa}
    below = [target for target, flow in flows.items() if flow < lowest_m3_h]
    above = [target for target, flow in flows.items() if flow > highest_m3_h]
    if below:
        return (
            f"From {max(below):.0f} Pa down the flow will be below the {lowest_m3_h:.0f} m³/h at which range "
            f"{flow_range.name} begins. A smaller range suits this house."
        )
    if above:
        return (
            f"From {min(above):.0f} Pa up the flow will be above the {highest_m3_h:.0f} m³/h at which range "
            f"{flow_range.name} ends. A larger range suits this house."
        )
    return ""
