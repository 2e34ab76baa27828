"""From readings to points."""

from __future__ import annotations

import json
import math
from dataclasses import replace

import pytest

from acquisition.derive import derive_point, derive_run, derive_test, derive_zero, has_readings
from acquisition.rig import Role
from acquisition.series import RunData, WindowRecord
from acquisition.steps import WindowKind
from analysis.errors import InvalidInput
from analysis.records import Air, Building, Direction, Run, Test
from analysis.testjson import read_test, write_test
from drivers.clock import seconds
from tests.acquisition.samples import MIDDLE, plan

OUT, IN = Direction.DEPRESSURIZE, Direction.PRESSURIZE
STILL = Building("Shed")
AIR = Air(indoor_c=20.0, outdoor_c=20.0, barometric_pa=101325.0)
POINT = WindowRecord(2, WindowKind.POINT, seconds(10), seconds(30), -50.0)


def steady(envelope_pa: float = -50.0, element_pa: float = 100.0, slope_pa_s: float = 0.0) -> RunData:
    data = RunData()
    for tick in range(400):
        t_ns = seconds(tick / 10)
        data.append_value(Role.ENVELOPE, t_ns, envelope_pa + slope_pa_s * (tick / 10 - 20))
        data.append_value(Role.FLOW_ELEMENT, t_ns, element_pa)
    return data


def test_a_steady_point_is_the_calibration_curve() -> None:
    # 20 °C, dry, 101325 Pa is the air of the calibration: 1.2041 kg/m3 (reference conditions of ISO 9972, from memory).
    point = derive_point(OUT, AIR, steady(), POINT, MIDDLE, STILL)
    assert point.flow_m3_h == pytest.approx(183.0 * 100.0**0.498, rel=1e-4)
    assert point.envelope_pa == pytest.approx(-50.0)
    assert (point.count, point.seconds, point.target_pa) == (200, 20.0, -50.0)
    assert point.envelope_sd_pa == pytest.approx(0.0, abs=1e-9)


def test_the_fan_breathes_indoor_air_out_and_outdoor_air_in() -> None:
    cold = replace(AIR, outdoor_c=-10.0)
    out = derive_point(OUT, cold, steady(), POINT, MIDDLE, STILL).flow_m3_h
    inward = derive_point(IN, cold, steady(50.0), replace(POINT, target_pa=50.0), MIDDLE, STILL).flow_m3_h
    # Flow through an element goes with the root of 1/density (general fluid mechanics), density with 1/T.
    assert inward / out == pytest.approx(math.sqrt(263.15 / 293.15), rel=1e-6)


@pytest.mark.parametrize(("direction", "sign"), [(OUT, 1.0), (IN, -1.0)])
def test_a_rising_pressure_stores_air(direction: Direction, sign: float) -> None:
    # Ideal gas: dm/dt = V rho/(kappa p) dP/dt; kappa 1.2 between isothermal and adiabatic.
    house = Building("House", volume_m3=400.0)
    slope_pa_s = 0.05
    data = steady(50.0 * direction.sign, slope_pa_s=slope_pa_s)
    stored = 400.0 / (1.2 * 101325.0) * slope_pa_s * 3600
    still = derive_point(direction, AIR, data, POINT, MIDDLE, STILL).flow_m3_h
    leaking = derive_point(direction, AIR, data, POINT, MIDDLE, house).flow_m3_h
    # Depressurizing, a rising pressure means that more air came in than the fan took out.
    assert leaking - still == pytest.approx(sign * stored, rel=1e-6)


def test_measured_temperatures_take_the_place_of_those_by_hand() -> None:
    data = steady()
    for tick in range(400):
        data.append_value(Role.INDOOR, seconds(tick / 10), 26.0)
    point = derive_point(OUT, AIR, data, POINT, MIDDLE, STILL)
    by_hand = derive_point(OUT, replace(AIR, indoor_c=26.0), steady(), POINT, MIDDLE, STILL)
    assert point.flow_m3_h == pytest.approx(by_hand.flow_m3_h, rel=1e-12)
    run = derive_run(OUT, AIR, data, [POINT], MIDDLE, STILL)
    assert (run.air.indoor_c, run.air.outdoor_c) == (26.0, 20.0)


def test_a_slow_thermometer_holds_its_last_value() -> None:
    data = steady()
    data.append_value(Role.INDOOR, seconds(1), 26.0)
    slow = derive_point(OUT, AIR, data, POINT, MIDDLE, STILL)
    by_hand = derive_point(OUT, replace(AIR, indoor_c=26.0), steady(), POINT, MIDDLE, STILL)
    assert slow.flow_m3_h == by_hand.flow_m3_h


def test_a_gauge_that_gives_flows_needs_no_calibration() -> None:
    data = RunData()
    for tick in range(400):
        data.append_value(Role.ENVELOPE, seconds(tick / 10), -50.0)
        data.append_value(Role.FLOW, seconds(tick / 10), 600.0)
    assert derive_point(OUT, AIR, data, POINT, MIDDLE, STILL).flow_m3_h == pytest.approx(600.0)


def test_struck_and_empty_windows_are_left_out() -> None:
    struck = replace(POINT, id=3, struck_reason="door opened")
    empty = WindowRecord(4, WindowKind.POINT, seconds(100), seconds(120), -40.0)
    data = steady()
    run = derive_run(OUT, AIR, data, [POINT, struck, empty], MIDDLE, STILL)
    assert len(run.points) == 1
    assert has_readings(data, POINT)
    assert not has_readings(data, empty)
    with pytest.raises(InvalidInput, match="window 4 is 'empty'"):
        derive_point(OUT, AIR, data, empty, MIDDLE, STILL)


def test_the_last_zero_record_of_a_kind_counts() -> None:
    first = WindowRecord(1, WindowKind.ZERO_BEFORE, 0, seconds(5))
    again = WindowRecord(2, WindowKind.ZERO_BEFORE, seconds(20), seconds(25))
    data = RunData()
    for tick in range(300):
        data.append_value(Role.ENVELOPE, seconds(tick / 10), -1.0 if tick < 100 else 2.0)
    run = derive_run(OUT, AIR, data, [first, again], MIDDLE, STILL)
    assert run.zero_before is not None
    assert run.zero_before.mean_pa == 2.0
    zero = derive_zero(data, first)
    assert (zero.mean_pa, zero.count, zero.seconds, zero.positive_mean_pa) == (-1.0, 50, 5.0, None)


def test_of_two_runs_in_one_direction_the_last_with_points_counts() -> None:
    with_point = derive_run(OUT, AIR, steady(), [POINT], MIDDLE, STILL)
    without = Run(OUT, AIR, ())
    test = derive_test(plan(), [Run(OUT, AIR, ()), with_point, without])
    assert test.runs == (with_point,)
    with pytest.raises(InvalidInput, match="test is without points"):
        derive_test(plan(), [without])


def test_records_between_the_points_carry_the_zero_flow_pressure_through_the_run() -> None:
    data = RunData()
    for tick in range(1500):
        time_s = tick / 10
        fan_on = any(start <= time_s < start + 20 for start in (20, 60, 100))
        # The wind shifts by 1 Pa in every 40 s.
        drift_pa = -1.0 - time_s / 40
        data.append_value(Role.ENVELOPE, seconds(time_s), drift_pa - (50.0 if fan_on else 0.0))
        data.append_value(Role.FLOW_ELEMENT, seconds(time_s), 100.0 if fan_on else 0.0)
    before, closing = (WindowKind.ZERO_BEFORE, WindowKind.ZERO_AFTER)
    windows = [WindowRecord(1, before, 0, seconds(20))]
    for number, start in enumerate((20, 60, 100)):
        windows.append(WindowRecord(2 + 2 * number, WindowKind.POINT, seconds(start), seconds(start + 20), -50.0))
        windows.append(WindowRecord(3 + 2 * number, closing, seconds(start + 20), seconds(start + 40)))
    run = derive_run(OUT, AIR, data, windows, MIDDLE, STILL)
    # The methods take the first and the last record, as their standards ask.
    assert run.zero_before == derive_zero(data, windows[0])
    assert run.zero_after == derive_zero(data, windows[-1])
    assert len(run.zeros_between) == 2
    induced = [point.envelope_pa - at for point, at in zip(run.points, run.zero_at_points_pa, strict=True)]
    assert induced == pytest.approx([-50.0] * 3, abs=0.15)
    # Halfway through, the newest record closes the run so far.
    half = derive_run(OUT, AIR, data, windows[:3], MIDDLE, STILL)
    assert half.zero_after == derive_zero(data, windows[2])
    assert half.zero_at_points_pa == ()
    written = write_test(Test(STILL, (run,)))
    assert read_test(json.dumps(written)).runs[0] == run
