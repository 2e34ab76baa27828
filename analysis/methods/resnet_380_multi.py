"""ANSI/RESNET/ICC 380, multi-point test in one direction. From memory; see `resnet_380_multi.toml`."""

from __future__ import annotations

from analysis.methods import measures
from analysis.methods.method import Method, Sequence
from analysis.methods.requirement import load_requirements
from analysis.methods.resnet_air import CONDITIONAL
from analysis.records import Direction

METHOD = Method(
    id="resnet-380-multi",
    title="ANSI/RESNET/ICC 380 multi-point",
    official_fit="ols",
    conversion=CONDITIONAL,
    requirements=lambda: load_requirements("resnet_380_multi"),
    measures={
        "zero-before": measures.zero_before,
        "zero-seconds": measures.zero_seconds,
        "point-count": measures.point_count,
        "lowest-pressure": measures.bottom_pressure,
        "highest-pressure": measures.top_pressure,
        "point-seconds": measures.point_seconds,
        "accuracy": measures.flow_error,
    },
    sequence=Sequence(
        directions=(Direction.DEPRESSURIZE,),
        targets_pa=(60.0, 52.0, 45.0, 38.0, 31.0, 25.0, 20.0, 15.0),
        zero_s=30.0,
        average_s=20.0,
    ),
    not_in_record=(
        "with reduced accuracy a rating raises the result by a rule that is not recalled: not done here",
        "doors, dampers and openings as the standard lists them",
        "accuracy and calibration of gauge, flow element and thermometers",
    ),
)
