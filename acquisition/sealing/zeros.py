"""The zero-flow pressures of a run in which a pressure is held, and how old the newest of them has become."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from acquisition.derive import air_in, derive_zero, pressure_of
from acquisition.series import RunData, WindowRecord
from acquisition.steps import WindowKind
from analysis.air import moist_air_density
from analysis.records import Air, Building
from analysis.sealing.levelled import Levelling, Trace
from analysis.sealing.zeroage import ZeroAge, as_flow_m3_h, roughness_pa, stack_pa, wind_moved_pa
from analysis.statistics import mean_error_and_correlation
from drivers.clock import NS_PER_S

ROUGH_SPAN_S = 300.0
NEWEST_AIR_S = 60.0
TWO_SIDED = 1.96


@dataclass(frozen=True, slots=True)
class ReadZero:
    """A zero-flow pressure with the standard error of its mean, when it was read, and the stack pressure of then."""

    start_s: float
    end_s: float
    mean_pa: float
    error_pa: float
    stack_pa: float


def zero_windows(windows: Sequence[WindowRecord]) -> list[WindowRecord]:
    """Return the zero-flow records that a held pressure is counted from, oldest first."""
    return [item for item in windows if item.kind is WindowKind.ZERO_BEFORE and not item.struck]


def read_zero(data: RunData, window: WindowRecord, air: Air, building: Building) -> ReadZero:
    """Return what a record gave; raises `InvalidInput` where it holds no reading."""
    zero = derive_zero(data, window)
    error = mean_error_and_correlation(zero.readings_pa)[0] if zero.count > 1 else 0.0
    return ReadZero(
        window.start_ns / NS_PER_S,
        window.end_ns / NS_PER_S,
        zero.mean_pa,
        error,
        stack_in(data, air, building, window.start_ns, window.end_ns),
    )


def stack_in(data: RunData, air: Air, building: Building, start_ns: int, end_ns: int) -> float:
    """Return the stack pressure (Pa) by the temperatures of a span, or of the last before it."""
    then = air_in(air, data, start_ns, end_ns, latest=True)
    pressure = pressure_of(then, building)
    indoor = moist_air_density(then.indoor_c, then.indoor_rh, pressure)
    return stack_pa(building.height_m, indoor, moist_air_density(then.outdoor_c, then.outdoor_rh, pressure))


def age_of(zero: ReadZero, stack_now_pa: float, trace: Trace, levelling: Levelling) -> ZeroAge:
    """Return how far a zero-flow pressure may have moved up to the end of a trace."""
    begun = trace.span(zero.end_s, zero.end_s + ROUGH_SPAN_S)
    newest = trace.span(max(trace.end_s - ROUGH_SPAN_S, zero.end_s), trace.end_s)
    known = trace.end_s >= zero.end_s + 2.0 * ROUGH_SPAN_S
    return ZeroAge(
        max(trace.end_s - zero.end_s, 0.0),
        abs(stack_now_pa - zero.stack_pa),
        wind_moved_pa(roughness_pa(begun, levelling), roughness_pa(newest, levelling)) if known else 0.0,
    )


def crossing_m3_h(
    zeros: Sequence[ReadZero], start_s: float, end_s: float, flow_m3_h: float, levelling: Levelling, held_pa: float
) -> float:
    """Return what a zero-flow pressure that was read between two moments adds to a change (95 %): both their errors."""
    then = [item for item in zeros if item.end_s <= start_s] or list(zeros[:1])
    later = [item for item in zeros if item.end_s <= end_s] or then
    if later[-1] == then[-1]:
        return 0.0
    error_pa = TWO_SIDED * math.hypot(then[-1].error_pa, later[-1].error_pa)
    return as_flow_m3_h(error_pa, flow_m3_h, levelling, held_pa)


def unsure_m3_h(
    zeros: Sequence[ReadZero],
    age: ZeroAge,
    flow_m3_h: float,
    levelling: Levelling,
    held_pa: float,
    since_s: float | None,
) -> float:
    """Return what the zero-flow pressure adds to the interval (95 %) of a flow, or of its change since a moment.

    Of a change it is what the newest one may have moved meanwhile, and the errors of both where one was read between.
    """
    newest = zeros[-1]
    now_s = newest.end_s + age.seconds
    if since_s is None:
        read = as_flow_m3_h(TWO_SIDED * newest.error_pa, flow_m3_h, levelling, held_pa)
        share = 1.0
    else:
        read = crossing_m3_h(zeros, since_s, now_s, flow_m3_h, levelling, held_pa)
        share = min((now_s - since_s) / max(age.seconds, 1.0), 1.0)
    return math.hypot(read, as_flow_m3_h(age.drift_pa * share, flow_m3_h, levelling, held_pa))
