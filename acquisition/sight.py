"""What the vigil is shown: the last seconds of the live buffer, as the running step sees them."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from acquisition.bench import Bench, fan_density
from acquisition.fitted import RESTING_PA
from acquisition.rig import FAN_FLOWS, Role
from acquisition.snapshot import Activity
from acquisition.vigil.sight import REACH_S, Sight
from analysis.flow import element_flow_m3_h

Floats = NDArray[np.float64]


def sight_of(bench: Bench, activity: Activity, activity_s: float, now_ns: int) -> Sight:
    """Return the last seconds; `activity_s` is for how long the step has run."""
    pressure_s, raw_pa = bench.live.window(Role.ENVELOPE, REACH_S, now_ns)
    flow_s, flow_m3_h, element_pa = _flow(bench, now_ns)
    # How fast a fan is that a person turns is not known, and nobody swings it.
    swing_pa = bench.controller.swing_pa if bench.rig.has_fan else np.zeros(0)
    trend = bench.induced_trend(now_ns, 2.0)
    return Sight(
        now_ns=now_ns,
        activity=activity,
        activity_s=activity_s,
        held_s=activity_s if activity is Activity.AVERAGE else 0.0,
        speed=bench.controller.command,
        motor=bench.controller.speed_now if bench.rig.has_fan else 0.0,
        target_pa=abs(bench.target_pa or 0.0),
        pressure_s=pressure_s,
        raw_pa=raw_pa,
        pressure_pa=bench.sign * (raw_pa - (bench.zero_pa or 0.0)),
        flow_s=flow_s,
        flow_m3_h=flow_m3_h,
        element_pa=element_pa,
        swing_s=-bench.dt_s * np.arange(len(swing_pa), dtype=np.float64)[::-1],
        swing_pa=swing_pa,
        stored_m3_h=0.0 if trend is None else bench.controller.plant.storage_m3_h(trend.slope_pa_s),
        bad_frames=sum(status.bad_frames + status.no_replies for status in bench.rig.statuses()),
    )


def _flow(bench: Bench, now_ns: int) -> tuple[Floats, Floats, Floats]:
    """Return times, flow of all fans, and the flow-element pressure of a single one (empty for several)."""
    density = fan_density(bench.progress.plan.air, bench.direction)
    parts: list[tuple[Floats, Floats]] = []
    elements: list[Floats] = []
    for (flow, element), fitted in zip(FAN_FLOWS, bench.rig.spec.fitted_ranges.now, strict=False):
        times, values = bench.live.window(flow, REACH_S, now_ns)
        if not len(values):
            times, raw_pa = bench.live.window(element, REACH_S, now_ns)
            elements.append(raw_pa)
            held = density or fitted.reference_density_kg_m3
            floor_pa = 0.0 if not parts else RESTING_PA
            values = np.asarray(element_flow_m3_h(np.where(raw_pa > floor_pa, raw_pa, 0.0), fitted, held))
        parts.append((times, values))
    count = min(len(values) for _, values in parts)
    total = np.sum([values[len(values) - count :] for _, values in parts], axis=0)
    times = parts[0][0][len(parts[0][0]) - count :]
    return times, total, elements[0] if len(parts) == len(elements) == 1 else np.empty(0)
