"""ASTM E1827, single-point test: repeated readings at 50 Pa, exponent assumed. From memory; see the data file."""

from __future__ import annotations

from analysis.methods import measures
from analysis.methods.elevation import ELEVATION
from analysis.methods.method import Method, Sequence
from analysis.methods.requirement import load_requirements
from analysis.records import Direction

METHOD = Method(
    id="astm-e1827-single",
    title="ASTM E1827 single-point",
    official_fit="assumed-exponent",
    conversion=ELEVATION,
    requirements=lambda: load_requirements("astm_e1827_single"),
    measures={
        "zero-before": measures.zero_before,
        "zero-seconds": measures.zero_seconds,
        "reading-count": measures.point_count,
        "near-pressure": measures.near_pressure,
        "temperature-height": measures.temperature_height,
    },
    sequence=Sequence(
        directions=(Direction.DEPRESSURIZE,),
        targets_pa=(50.0,) * 5,
        zero_s=30.0,
        average_s=20.0,
    ),
    fewest_points=1,
    one_pressure=True,
    not_in_record=(
        "bias of the instruments, which the standard combines with the precision of the readings",
        "state of all intentional openings",
    ),
)
