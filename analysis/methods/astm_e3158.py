"""ASTM E3158, large or multizone buildings, multi-point at up to 75 Pa. See `astm_e3158.toml`."""

from __future__ import annotations

from analysis.methods import measures
from analysis.methods.elevation import ELEVATION
from analysis.methods.method import Method, Sequence
from analysis.methods.requirement import load_requirements
from analysis.records import Direction

METHOD = Method(
    id="astm-e3158",
    title="ASTM E3158",
    official_fit="ols",
    conversion=ELEVATION,
    requirements=lambda: load_requirements("astm_e3158"),
    measures={
        "zero-before": measures.zero_before,
        "zero-after": measures.zero_after,
        "zero-seconds": measures.zero_seconds,
        "point-count": measures.point_count,
        "lowest-pressure": measures.bottom_pressure,
        "highest-pressure": measures.top_pressure,
        "zero-share": measures.zero_share,
        "point-seconds": measures.point_seconds,
        "exponent": measures.exponent,
        "r2": measures.determination,
    },
    sequence=Sequence(
        directions=(Direction.PRESSURIZE,),
        targets_pa=(75.0, 70.0, 66.0, 61.0, 57.0, 52.0, 48.0, 43.0, 39.0, 34.0, 30.0, 25.0),
        zero_s=120.0,
        average_s=20.0,
    ),
    reports=("qe75_m3_h_m2", "q50_m3_h"),
    preparations={
        "envelope": "Building envelope: openings of heating and ventilation are left out (masked)",
        "operational": "Operational envelope: openings of heating and ventilation belong to it, as in operation",
    },
    not_in_record=(
        "even pressure within the envelope, doors open, excluded zones at outdoor pressure",
        "weather as the standard directs: rain, snow, wind",
        "accuracy and calibration of gauge, flow element and thermometers",
    ),
)
