"""ASTM E1827, two-point test: repeated readings at 50 Pa and at 12.5 Pa. From memory; see the data file."""

from __future__ import annotations

from analysis.methods import measures
from analysis.methods.elevation import ELEVATION
from analysis.methods.method import Method, Sequence
from analysis.methods.requirement import load_requirements
from analysis.records import Direction

METHOD = Method(
    id="astm-e1827-two",
    title="ASTM E1827 two-point",
    official_fit="two-stations",
    conversion=ELEVATION,
    requirements=lambda: load_requirements("astm_e1827_two"),
    measures={
        "zero-before": measures.zero_before,
        "zero-seconds": measures.zero_seconds,
        "station-readings": measures.station_readings,
        "highest-pressure": measures.top_pressure,
        "lowest-pressure": measures.bottom_pressure,
        "exponent": measures.exponent,
        "temperature-height": measures.temperature_height,
    },
    sequence=Sequence(
        directions=(Direction.DEPRESSURIZE,),
        targets_pa=(*(50.0,) * 5, *(12.5,) * 5),
        zero_s=30.0,
        average_s=20.0,
    ),
    not_in_record=(
        "bias of the instruments, which the standard combines with the precision of the readings",
        "state of all intentional openings",
    ),
)
