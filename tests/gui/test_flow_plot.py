"""The flow plot: logarithms, points in their states, the line and its band."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from acquisition.snapshot import PointState, PointView
from analysis.records import Direction
from gui.viewmodels.flow_plot import flow_picture
from gui.viewmodels.plot_csv import flow_csv, residual_csv
from gui.viewmodels.residuals import residual_picture
from tests.gui.fakes import COMMA, US, flow, moment, running_moment, shown


def test_before_the_first_test_the_targets_stand_on_an_empty_plot() -> None:
    picture = flow_picture(moment())
    assert picture.empty == "The line grows here, point by point."
    assert [round(10**x) for x in picture.targets] == [60, 50, 40, 30, 20]
    assert picture.curves == ()


def test_the_point_being_averaged_is_apart_from_those_taken() -> None:
    curve = flow_picture(running_moment()).curves[0]
    assert [round(10**dot.x) for dot in curve.taken] == [60, 50, 40]
    assert curve.averaging is not None
    assert 10**curve.averaging.x == pytest.approx(30.0)
    assert curve.struck == ()


def test_only_targets_to_come_are_marked() -> None:
    assert [round(10**x) for x in flow_picture(running_moment()).targets] == [30, 20]


def test_points_stand_at_the_induced_pressure_and_the_flow_through_the_envelope() -> None:
    now = moment(shown=shown())
    assert now.shown is not None
    assert now.shown.result is not None
    result = now.shown.result.runs[0]
    dots = flow_picture(now).curves[0].taken
    assert [10**dot.x for dot in dots] == pytest.approx([abs(value) for value in result.induced_pa])
    factor = result.envelope_flow_m3_h[0] / flow(60.0)
    assert [10**dot.y for dot in dots] == pytest.approx([flow(p) * factor for p in (60, 50, 40, 30, 20)])


def test_the_line_is_straight_and_inside_its_band() -> None:
    curve = flow_picture(moment(shown=shown())).curves[0]
    slopes = [(curve.line[i + 1] - curve.line[i]) / (curve.x[i + 1] - curve.x[i]) for i in range(len(curve.x) - 1)]
    assert slopes == pytest.approx([slopes[0]] * len(slopes))
    assert all(low < line < high for low, line, high in zip(curve.low, curve.line, curve.high, strict=True))


def test_two_points_make_a_line_without_a_band() -> None:
    curve = flow_picture(running_moment(2)).curves[0]
    assert curve.line
    assert curve.low == ()


def test_error_bars_are_two_standard_errors() -> None:
    dot = flow_picture(moment(shown=shown())).curves[0].taken[0]
    assert 10 ** (dot.y + dot.up) / 10**dot.y == pytest.approx(1.008)
    assert 10 ** (dot.y - dot.down) / 10**dot.y == pytest.approx(0.992)


def test_struck_points_stay_on_the_plot_as_struck() -> None:
    curve = flow_picture(moment(shown=shown(struck=(1,)))).curves[0]
    assert [round(10**dot.x) for dot in curve.struck] == [50]
    assert len(curve.taken) == 4


def test_what_cannot_stand_on_a_logarithmic_axis_is_counted() -> None:
    test = shown(3)
    odd = (PointView(-10.0, PointState.TAKEN, 9, -10.5, -3.0), PointView(-5.0, PointState.TAKEN, 10, 2.0, 30.0))
    run = replace(test.runs[0], points=(*test.runs[0].points[:3], *odd))
    picture = flow_picture(moment(shown=replace(test, runs=(run,))))
    assert picture.hidden == "2 points are not shown: pressure or flow is not above 0."
    assert len(picture.curves[0].taken) == 3


def test_both_directions_are_two_curves_and_a_repeated_one_is_shown_once() -> None:
    first, again = shown(2), shown(5)
    other = shown(5, Direction.PRESSURIZE)
    assert again.result is not None
    assert other.result is not None
    both = replace(
        again,
        runs=(*first.runs, *again.runs, *other.runs),
        result=replace(again.result, runs=(*again.result.runs, *other.result.runs)),
    )
    picture = flow_picture(moment(shown=both))
    assert [curve.direction for curve in picture.curves] == [Direction.DEPRESSURIZE, Direction.PRESSURIZE]
    assert len(picture.curves[0].taken) == 5
    assert picture.note.count("n = ") == 2


def test_us_units_move_the_flow_axis_and_nothing_else() -> None:
    si, us = flow_picture(moment(shown=shown())), flow_picture(moment(shown=shown(), display=US))
    assert us.y_label == "flow, cfm"
    shift = si.curves[0].taken[0].y - us.curves[0].taken[0].y
    assert 10**shift == pytest.approx(1.69901, rel=1e-5)  # 1 cfm = 0.3048^3 * 60 m3/h, by the definition of the foot
    assert [dot.x for dot in si.curves[0].taken] == [dot.x for dot in us.curves[0].taken]


def test_everything_lies_inside_the_ranges() -> None:
    for now in (moment(shown=shown()), running_moment(1), running_moment(3), moment()):
        picture = flow_picture(now)
        dots = [dot for curve in picture.curves for dot in (*curve.taken, *curve.struck)]
        assert all(picture.x_range[0] < dot.x < picture.x_range[1] for dot in dots)
        assert all(picture.y_range[0] <= dot.y - dot.down <= dot.y + dot.up <= picture.y_range[1] for dot in dots)


def test_the_exponent_carries_its_interval() -> None:
    note = flow_picture(moment(shown=shown(), display=COMMA)).note
    assert note.startswith("n = 0,6")
    assert "±" in note


def test_residuals_are_percent_of_the_line() -> None:
    now = moment(shown=shown())
    assert now.shown is not None
    assert now.shown.result is not None
    result = now.shown.result.runs[0]
    offsets = residual_picture(now).curves[0].taken
    for dot, pressure, measured in zip(offsets, result.induced_pa, result.envelope_flow_m3_h, strict=True):
        line = result.c_env_m3_h_pa_n.value * math.pow(abs(pressure), result.n.value)
        # The plot works with the running means, which the records round away no digit of: equal but for the noise
        # that the fake test puts on the flow of each point.
        assert dot.percent == pytest.approx(100 * (measured / line - 1), abs=0.5)
    assert residual_picture(moment()).empty == "There is no line yet to be off."


def test_the_numbers_of_a_plot_can_be_taken_away() -> None:
    lines = flow_csv(flow_picture(moment(shown=shown(struck=(1,))))).splitlines()
    assert lines[0] == "direction,kind,pressure Pa,flow m³/h,band low m³/h,band high m³/h"
    assert sum(",taken," in line for line in lines) == 4
    assert sum(",struck," in line for line in lines) == 1
    assert float(lines[1].split(",")[2]) == pytest.approx(60.0)
    assert residual_csv(residual_picture(moment(shown=shown()))).count("depressurize,taken") == 5
