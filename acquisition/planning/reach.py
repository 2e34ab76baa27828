"""Whether the flow range in the fan will do for all targets, told from the first point."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import takewhile

from analysis.outlook import EXPONENT
from analysis.records import FlowRange


def flow_of(flow_range: FlowRange, element_pa: float) -> float:
    """Return the flow (m3/h) that an element pressure stands for, at the reference density."""
    return float(flow_range.coefficient_m3_h_pa_n * element_pa**flow_range.exponent)


@dataclass(frozen=True, slots=True)
class Proposal:
    """Another flow range that should be fitted, and why."""

    flow_range: FlowRange
    sentence: str


def better_range(
    fitted: FlowRange, ranges: Sequence[FlowRange], flow_m3_h: float, pressure_pa: float, targets_pa: Sequence[float]
) -> Proposal | None:
    """Return the range that the next target needs, None where the fitted one will do or none is better.

    The flow at the targets (magnitudes, in their order) follows from a point, `flow_m3_h` at `pressure_pa`, by a
    typical exponent. Of the ranges that measure the next target the one is taken that serves most of those after it.
    """
    if flow_m3_h <= 0 or pressure_pa <= 0 or not targets_pa:
        return None
    flows = [flow_m3_h * (target / pressure_pa) ** EXPONENT for target in targets_pa]
    if _measures(fitted, flows[0]):
        return None
    served = {
        item.name: sum(1 for _ in takewhile(lambda flow, item=item: _measures(item, flow), flows))  # type: ignore[misc]
        for item in ranges
        if item.name != fitted.name
    }
    best = max(served, key=lambda name: served[name], default="")
    if not best or not served[best]:
        return None
    lowest, highest = flow_of(fitted, fitted.min_pa), flow_of(fitted, fitted.max_pa)
    ends = f"below the {lowest:.0f} m³/h at which range {fitted.name} begins"
    if flows[0] > highest:
        ends = f"above the {highest:.0f} m³/h at which range {fitted.name} ends"
    sentence = f"At {targets_pa[0]:.0f} Pa the flow will be about {flows[0]:.0f} m³/h, {ends}."
    return Proposal(next(item for item in ranges if item.name == best), sentence)


def _measures(item: FlowRange, flow_m3_h: float) -> bool:
    return flow_of(item, item.min_pa) <= flow_m3_h <= flow_of(item, item.max_pa)


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
            f"From {max(below):g} Pa down the flow will be below the {lowest_m3_h:.0f} m³/h at which range "
            f"{flow_range.name} begins. A smaller range suits this house."
        )
    if above:
        return (
            f"From {min(above):g} Pa up the flow will be above the {highest_m3_h:.0f} m³/h at which range "
            f"{flow_range.name} ends. A larger range suits this house."
        )
    return ""
