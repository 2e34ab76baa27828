"""From readings and windows to the records of the analysis: one code for the live result and for the job file."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from acquisition.fitted import RESTING_PA, Fitted, as_fitted
from acquisition.plan import TestPlan
from acquisition.rig import FAN_FLOWS, INDOORS, OUTDOORS, TAPS, Role
from acquisition.series import LONGEST_GAP_NS, RunData, WindowRecord, at_instants
from acquisition.steps import WindowKind
from acquisition.unswung import without_swing
from analysis.air import moist_air_density, pressure_at_altitude
from analysis.errors import InvalidInput
from analysis.flow import element_flow_m3_h
from analysis.gust import FEWEST_TAPS, SteadyWindow, gust_weights, weighted
from analysis.records import Air, Building, Direction, FlowRange, Point, Run, Test, ZeroFlow
from analysis.statistics import mean_error_and_correlation
from analysis.zeroflow import zero_flow, zero_over_time_pa
from drivers.clock import NS_PER_S

STORAGE_EXPONENT = 1.2
"""Between the slow (1.0) and the fast (1.4) compression of the air inside, which gives way with its walls."""

_SECONDS_PER_HOUR = 3600.0


def derive_zero(data: RunData, window: WindowRecord, weights: Sequence[float] = ()) -> ZeroFlow:
    """Return the zero-flow record of a window; raises `InvalidInput` without usable readings.

    Several outdoor taps are averaged with these weights, evenly without any.
    """
    _, envelope_pa = envelope_pressures(data, window.start_ns, window.end_ns, weights)
    if not len(envelope_pa):
        raise _no_readings(window)
    return replace(zero_flow(tuple(envelope_pa.tolist())), seconds=window.seconds)


def derive_point(
    direction: Direction,
    air: Air,
    data: RunData,
    window: WindowRecord,
    flow_range: FlowRange | Fitted,
    building: Building,
    weights: Sequence[float] = (),
) -> Point:
    """Return the means over a window; raises `InvalidInput` without usable readings.

    Several outdoor taps are averaged with these weights, evenly without any. The flows of several fans add up.

    What the fan's own swing adds to the spread of the readings does not count in it.

    Every element pressure becomes a flow at the density of the air in the fan before it is averaged. The flow that
    goes into the change of pressure of the building, V/(1.2 p) dP/dt, is taken off: the point holds what leaks.
    """
    times_ns, envelope_pa = envelope_pressures(data, window.start_ns, window.end_ns, weights)
    air = air_in(air, data, window.start_ns, window.end_ns, latest=True)
    fitted = as_fitted(flow_range).corrected(window.corrected)
    flow_times_ns, flows_m3_h = _flows(direction, air, data, window, fitted, building)
    if not len(envelope_pa) or not len(flows_m3_h):
        raise _no_readings(window)
    stored_m3_h = _storage_flow_m3_h(times_ns, envelope_pa, building, pressure_of(air, building))
    return Point(
        envelope_pa=float(envelope_pa.mean()),
        flow_m3_h=float(flows_m3_h.mean()) - direction.sign * stored_m3_h,
        seconds=window.seconds,
        target_pa=window.target_pa,
        count=len(envelope_pa),
        envelope_sd_pa=_spread(without_swing(data, times_ns, envelope_pa)),
        flow_sd_m3_h=_spread(without_swing(data, flow_times_ns, flows_m3_h)),
    )


def derive_run(
    direction: Direction,
    air: Air,
    data: RunData,
    windows: Sequence[WindowRecord],
    flow_range: FlowRange | Fitted,
    building: Building,
    started: datetime | None = None,
) -> Run:
    """Return a run without its struck windows and those that hold no usable reading.

    Of several zero-flow records of a kind the last one counts; those with points before and after them stand between
    the points. Measured temperatures and barometric pressure take the
    place of those entered by hand, as means from the first of the windows to the last. With three outdoor taps or more
    the run with gust weights stands in `gust_corrected`.
    """
    kept = [window for window in windows if not window.struck and has_readings(data, window)]
    points = [window for window in kept if window.kind is WindowKind.POINT]
    before, between, after = _zeros(kept)
    measured = run_air(air, data, kept)

    def run(weights: Sequence[float]) -> Run:
        def zero(window: WindowRecord | None) -> ZeroFlow | None:
            return None if window is None else derive_zero(data, window, weights)

        inner = tuple(derive_zero(data, item, weights) for item in between)
        timed = [*(w for w in (before,) if w is not None), *between, *(w for w in (after,) if w is not None)]
        return Run(
            direction=direction,
            air=measured,
            points=tuple(derive_point(direction, air, data, item, flow_range, building, weights) for item in points),
            zero_before=zero(before),
            zero_after=zero(after),
            started=started,
            zeros_between=inner,
            zero_at_points_pa=_zero_at(points, timed, data, weights) if inner and len(timed) > 1 else (),
        )

    weights = gust_weights([item for window in points if (item := _steady(data, window)) is not None])
    return replace(run(()), gust_corrected=run(weights)) if weights else run(())


def _zeros(
    windows: Sequence[WindowRecord],
) -> tuple[WindowRecord | None, tuple[WindowRecord, ...], WindowRecord | None]:
    """Return the zero-flow windows before, between and after the points; of several before or after, the last."""
    points = [item.start_ns for item in windows if item.kind is WindowKind.POINT]
    last_ns = max(points, default=None)
    firsts = [item for item in windows if item.kind is WindowKind.ZERO_BEFORE]
    later = [item for item in windows if item.kind is WindowKind.ZERO_AFTER]
    between = tuple(item for item in later if last_ns is not None and item.start_ns < last_ns)
    closing = [item for item in later if item not in between]
    # A run that is still on its way has its newest record as the closing one.
    after = closing[-1] if closing else between[-1] if between else None
    return firsts[-1] if firsts else None, between if closing else between[:-1], after


def _zero_at(
    points: Sequence[WindowRecord], zeros: Sequence[WindowRecord], data: RunData, weights: Sequence[float]
) -> tuple[float, ...]:
    """Return the zero-flow pressure at the middle of each point, from all records of a run."""
    records = [derive_zero(data, item, weights) for item in zeros]
    errors = [mean_error_and_correlation(item.readings_pa)[0] if item.count > 1 else 0.0 for item in records]
    return zero_over_time_pa(
        [_middle_s(item) for item in zeros],
        [item.mean_pa for item in records],
        math.sqrt(math.fsum(error * error for error in errors) / len(errors)),
        [_middle_s(item) for item in points],
    )


def _middle_s(window: WindowRecord) -> float:
    return (window.start_ns + window.end_ns) / 2 / NS_PER_S


def envelope_pressures(
    data: RunData, start_ns: int, end_ns: int, weights: Sequence[float] = ()
) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Return stamps and envelope pressures in a span, both (n,): the mean over all outdoor taps that were read.

    Taps are averaged where all of them have a reading of one moment, with `weights` or evenly; those of another gauge
    are first brought to the moments of the first tap.
    """
    taps = taps_read(data)
    if len(taps) == 1:
        return data.slice(Role.ENVELOPE, start_ns, end_ns)
    times_ns, taps_pa = taps_together(data, taps, start_ns, end_ns)
    return times_ns, weighted(taps_pa, weights or (1.0 / len(taps),) * len(taps))


def taps_read(data: RunData) -> tuple[Role, ...]:
    """Return the outdoor taps that were read, always the first among them."""
    return tuple(role for role in TAPS if role is Role.ENVELOPE or data.count(role))


def taps_together(
    data: RunData, taps: Sequence[Role], start_ns: int, end_ns: int
) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Return the stamps (n,) of moments at which all taps are known, and their pressures (n, taps)."""
    slices = [data.slice(role, start_ns, end_ns) for role in taps]
    first_ns = slices[0][0]
    shared = first_ns
    for times_ns, _ in slices[1:]:
        shared = np.intersect1d(shared, times_ns, assume_unique=True)
    if 2 * len(shared) >= len(first_ns):
        columns = [values[np.isin(times_ns, shared, assume_unique=True)] for times_ns, values in slices]
        return shared, np.stack(columns, axis=1)
    wide = [data.slice(role, start_ns - LONGEST_GAP_NS, end_ns + LONGEST_GAP_NS) for role in taps[1:]]
    others = [at_instants(times_ns, values, first_ns) for times_ns, values in wide]
    table = np.stack([slices[0][1], *others], axis=1)
    known = ~np.isnan(table).any(axis=1)
    return first_ns[known], table[known]


def _steady(data: RunData, window: WindowRecord) -> SteadyWindow | None:
    """Return the fast readings of a point, None where they tell nothing of gusts."""
    taps = taps_read(data)
    if len(taps) < FEWEST_TAPS:
        return None
    times_ns, taps_pa = taps_together(data, taps, window.start_ns, window.end_ns)
    flow_ns, flow = data.slice(_flow_role(data), window.start_ns, window.end_ns)
    if len(times_ns) < 3 or not len(flow):
        return None
    return SteadyWindow(taps_pa, np.interp(times_ns, flow_ns, flow))


def derive_test(plan: TestPlan, runs: Sequence[Run]) -> Test:
    """Return the test of the runs; of several in one direction the last with points. Raises `InvalidInput` if none."""
    last = {run.direction: run for run in runs if run.points}
    if not last:
        raise InvalidInput("test", 0, "at least one point that is not struck is needed", shown="without points")
    return Test(building=plan.building, runs=tuple(last.values()), stage=plan.stage, preparation=plan.preparation)


def has_readings(data: RunData, window: WindowRecord) -> bool:
    """Return whether the window holds what its kind is derived from."""
    pressures = len(envelope_pressures(data, window.start_ns, window.end_ns)[0])
    if window.kind is not WindowKind.POINT:
        return pressures > 0
    return pressures > 0 and len(data.slice(_flow_role(data), window.start_ns, window.end_ns)[0]) > 0


def run_air(air: Air, data: RunData, windows: Sequence[WindowRecord]) -> Air:
    """Return `air` with the means of what was measured from the first of the windows to the last."""
    if not windows:
        return air
    return air_in(air, data, min(w.start_ns for w in windows), max(w.end_ns for w in windows), latest=False)


def air_in(air: Air, data: RunData, start_ns: int, end_ns: int, *, latest: bool) -> Air:
    """Return `air` with the means in a span; with `latest`, the last value before its end where the span has none."""

    def mean(*roles: Role) -> float | None:
        means = []
        for role in roles:
            _, values = data.slice(role, start_ns, end_ns)
            if not len(values) and latest:
                values = data.slice(role, -(2**63), end_ns)[1][-1:]
            if len(values):
                means.append(float(values.mean()))
        return sum(means) / len(means) if means else None

    indoor_c, outdoor_c, barometric_pa = mean(*INDOORS), mean(*OUTDOORS), mean(Role.BAROMETER)
    return replace(
        air,
        indoor_c=air.indoor_c if indoor_c is None else indoor_c,
        outdoor_c=air.outdoor_c if outdoor_c is None else outdoor_c,
        barometric_pa=air.barometric_pa if barometric_pa is None else barometric_pa,
    )


def _flow_role(data: RunData, fan: int = 0) -> Role:
    direct, element = FAN_FLOWS[fan]
    return direct if data.count(direct) else element


def _flows(
    direction: Direction, air: Air, data: RunData, window: WindowRecord, fitted: Fitted, building: Building
) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Return stamps and flows (n,) at the density of the air in the fan, without those that are not known."""
    times_ns, total = fan_flows(direction, air, data, window.start_ns, window.end_ns, fitted, building)
    known = ~np.isnan(total)
    return times_ns[known], total[known]


def fan_flows(
    direction: Direction, air: Air, data: RunData, start_ns: int, end_ns: int, fitted: Fitted, building: Building
) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Return stamps and flows, both (n,), at the density of the air in the fan: from indoors when depressurizing.

    Those of several fans are added at the moments of the first; where one is not known there is NaN. Each reading is
    converted by the range that was fitted when it was read.
    """
    inward = direction is Direction.PRESSURIZE
    temperature_c, rh = (air.outdoor_c, air.outdoor_rh) if inward else (air.indoor_c, air.indoor_rh)
    density_kg_m3 = moist_air_density(temperature_c, rh, pressure_of(air, building))

    def flow_of(fan: int, flow_range: FlowRange, *span: int) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
        role = _flow_role(data, fan)
        times_ns, values = data.slice(role, *span)
        if role is FAN_FLOWS[fan][0]:
            return times_ns, values
        return times_ns, np.asarray(element_flow_m3_h(values, flow_range, density_kg_m3), np.float64)

    inside = sorted({item.t_ns for item in fitted.changes if start_ns < item.t_ns < end_ns})
    parts = []
    for from_ns, to_ns in pairwise((start_ns, *inside, end_ns)):
        first, *further = fitted.at(from_ns)
        times_ns, total = flow_of(0, first, from_ns, to_ns)
        for fan, flow_range in enumerate(further, 1):
            margin = from_ns - LONGEST_GAP_NS, to_ns + LONGEST_GAP_NS
            if not _rests(data, fan, from_ns, to_ns):
                total = total + at_instants(*flow_of(fan, flow_range, *margin), times_ns)
        parts.append((times_ns, total))
    return np.concatenate([times for times, _ in parts]), np.concatenate([flows for _, flows in parts])


def _rests(data: RunData, fan: int, start_ns: int, end_ns: int) -> bool:
    """Tell whether a further fan was at rest: its flow element is read, and shows next to nothing."""
    role = _flow_role(data, fan)
    if role is FAN_FLOWS[fan][0]:
        return False
    _, values = data.slice(role, start_ns, end_ns)
    return bool(len(values)) and float(values.mean()) < RESTING_PA


def _storage_flow_m3_h(
    times_ns: NDArray[np.int64], envelope_pa: NDArray[np.float64], building: Building, pressure_pa: float
) -> float:
    """Return the flow that fills the building, positive while its pressure rises; 0 where the volume is not known."""
    if building.volume_m3 is None or len(times_ns) < 2:
        return 0.0
    elapsed_s = (times_ns - times_ns[0]) / NS_PER_S
    elapsed_s -= elapsed_s.mean()
    spread = float(elapsed_s @ elapsed_s)
    if spread == 0:
        return 0.0
    slope_pa_s = float(elapsed_s @ (envelope_pa - envelope_pa.mean())) / spread
    return building.volume_m3 / (STORAGE_EXPONENT * pressure_pa) * slope_pa_s * _SECONDS_PER_HOUR


def pressure_of(air: Air, building: Building) -> float:
    """Return the barometric pressure (Pa) as measured, or that of the altitude."""
    return air.barometric_pa if air.barometric_pa is not None else pressure_at_altitude(building.altitude_m)


def _spread(values: NDArray[np.float64]) -> float | None:
    return float(values.std(ddof=1)) if len(values) > 1 else None


def _no_readings(window: WindowRecord) -> InvalidInput:
    return InvalidInput(f"window {window.id}", "empty", f"a {window.kind} needs at least one usable reading")
