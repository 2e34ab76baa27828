"""ISO 9972:2015, fan pressurization of buildings. Formulas and limits from memory; see `iso9972.toml`."""

from __future__ import annotations

import math

from analysis.air import REFERENCE_DENSITY_KG_M3
from analysis.methods import measures
from analysis.methods.method import Conversion, Method, Sequence
from analysis.methods.requirement import load_requirements
from analysis.records import Direction
from analysis.siteair import moist_site_air


def to_reference(_temperature_c: float, density_kg_m3: float) -> tuple[float, float]:
    """Return the conversion C_L = C_env (rho / rho0)**(1 - n); viscosity does not enter (from memory)."""
    ratio = math.log(density_kg_m3 / REFERENCE_DENSITY_KG_M3)
    return ratio, -ratio


METHOD = Method(
    id="iso9972",
    title="ISO 9972",
    official_fit="ols",
    conversion=Conversion(site_air=moist_site_air, to_reference=to_reference),
    requirements=lambda: load_requirements("iso9972"),
    measures={
        "zero-before": measures.zero_before,
        "zero-after": measures.zero_after,
        "zero-count": measures.zero_count,
        "zero-seconds": measures.zero_seconds,
        "zero-flow-limit": measures.zero_within,
        "point-count": measures.point_count,
        "point-spacing": measures.point_spacing,
        "lowest-pressure": measures.lowest_pressure,
        "highest-pressure": measures.highest_pressure,
        "exponent": measures.exponent,
        "r2": measures.determination,
        "temperature-height": measures.temperature_height,
        "wind": measures.wind,
    },
    sequence=Sequence(
        directions=(Direction.DEPRESSURIZE, Direction.PRESSURIZE),
        targets_pa=(60.0, 54.0, 48.0, 43.0, 38.0, 33.0, 28.0, 23.0, 18.0, 13.0),
        zero_s=60.0,
        average_s=20.0,
    ),
    reports=("n50_per_h", "q50_m3_h", "qe50_m3_h_m2", "qf50_m3_h_m2"),
    preparations={
        "1": "Method 1, building in use: openings for ventilation closed, others as they are in use",
        "2": "Method 2, building envelope: all intentional openings sealed or closed",
        "3": "Method 3, specific purpose: as the regulation or programme says",
    },
    not_in_record=(
        "that openings were prepared as the preparation method says",
        "that temporary seals held at the highest pressure",
        "that pressure was even inside the building (differences below 10 % of the envelope pressure)",
        "accuracy and calibration of gauge, flow element and thermometers",
    ),
)
