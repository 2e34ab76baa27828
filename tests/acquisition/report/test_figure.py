"""The leakage figure."""

from __future__ import annotations

import xml.etree.ElementTree as ET

import numpy as np
import pytest

from acquisition.report.curves import report_curves
from acquisition.report.figure import Curve, leakage_figure
from analysis.powerlaw import flow_at
from analysis.units import Display, System
from tests.acquisition.report.cases import IN, OUT, content

SVG = "{http://www.w3.org/2000/svg}"


def texts(svg: bytes) -> list[str]:
    return ["".join(item.itertext()).strip() for item in ET.fromstring(svg).iter(f"{SVG}text")]


def curve(name: str, scale: float = 1.0) -> Curve:
    pressures = np.array([10.0, 20.0, 50.0])
    flow = scale * 40.0 * pressures**0.65
    none = np.zeros(0)
    return Curve(name, pressures, flow, none, none, pressures, flow, flow * 0.97, flow * 1.03)


def test_the_figure_keeps_its_text_as_text() -> None:
    found = texts(leakage_figure([curve("Depressurize"), curve("Pressurize", 1.1)], "envelope flow, m³/h", 62.0))
    assert {"Depressurize", "Pressurize", "pressure difference, Pa", "envelope flow, m³/h", "50", "500"} <= set(found)


def test_the_figure_is_the_same_each_time() -> None:
    figures = {leakage_figure([curve("Depressurize")], "flow", 62.0) for _ in range(3)}
    assert len(figures) == 1


def test_thousands_have_a_thin_space() -> None:
    assert "2\u2009000" in texts(leakage_figure([curve("Depressurize", 5.0)], "flow", 62.0))


@pytest.mark.parametrize("scale", [1e-3, 1.0, 1e3])
def test_the_flow_axis_has_a_few_round_numbers(scale: float) -> None:
    found = texts(leakage_figure([curve("Depressurize", scale)], "flow", 62.0))
    assert 4 <= len(found) <= 22


def test_line_and_band_are_those_of_the_result() -> None:
    made = content(OUT, IN)
    for item, run in zip(report_curves(made, Display()), made.runs, strict=True):
        line = run.result.line
        assert line is not None
        for at in (0, 30, 60):
            estimate = flow_at(line, float(item.line_pa[at]))
            assert item.line_flow[at] == pytest.approx(estimate.value)
            assert item.low_flow[at] == pytest.approx(estimate.low)
            assert item.high_flow[at] == pytest.approx(estimate.high)
        assert item.points_pa.tolist() == [abs(value) for value in run.result.induced_pa]
        assert item.points_flow.tolist() == pytest.approx(run.result.envelope_flow_m3_h)


def test_the_flows_are_in_the_units_of_the_reader() -> None:
    made = content(OUT)
    si, us = (report_curves(made, Display(system))[0].points_flow for system in (System.SI, System.US))
    # 1 cfm = 1.699011 m3/h (standards: definition of the foot).
    assert (si / us).tolist() == pytest.approx([1.699011] * len(si), rel=1e-6)
