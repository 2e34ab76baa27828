"""ASTM E779, air leakage rate by fan pressurization: both directions. From memory; see `astm_e779.toml`."""

from __future__ import annotations

from analysis.methods import measures
from analysis.methods.elevation import ELEVATION
from analysis.methods.method import Method, Sequence
from analysis.methods.requirement import load_requirements
from analysis.records import Direction

METHOD = Method(
    id="astm-e779",
    title="ASTM E779",
    official_fit="ols",
    conversion=ELEVATION,
    requirements=lambda: load_requirements("astm_e779"),
    measures={
        "both-directions": measures.both_directions,
        "zero-before": measures.zero_before,
        "zero-after": measures.zero_after,
        "zero-seconds": measures.zero_seconds,
        "point-count": measures.point_count,
        "point-spacing": measures.point_spacing,
        "lowest-pressure": measures.bottom_pressure,
        "highest-pressure": measures.highest_pressure,
        "point-seconds": measures.point_seconds,
        "exponent": measures.exponent,
        "temperature-height": measures.temperature_height,
    },
    sequence=Sequence(
        directions=(Direction.DEPRESSURIZE, Direction.PRESSURIZE),
        targets_pa=(60.0, 54.0, 48.0, 42.0, 36.0, 30.0, 24.0, 18.0, 12.0),
        zero_s=30.0,
        average_s=20.0,
        both_directions=True,
    ),
    reports=("q50_m3_h", "n50_per_h", "qe4_m3_h_m2", "sla4_cm2_m2"),
    not_in_record=(
        "preferred weather: wind up to 2 m/s, 5 to 35 °C outdoors",
        "that pressure was even inside the building",
        "state of all intentional openings",
        "accuracy and calibration of gauge, flow element and thermometers",
    ),
)
