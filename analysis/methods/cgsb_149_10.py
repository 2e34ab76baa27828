"""CAN/CGSB-149.10, airtightness of building envelopes: depressurized. From memory; see `cgsb_149_10.toml`."""

from __future__ import annotations

from analysis.methods import measures
from analysis.methods.method import Conversion, Method, Sequence
from analysis.methods.requirement import load_requirements
from analysis.records import Direction
from analysis.siteair import moist_site_air, to_reference

METHOD = Method(
    id="cgsb-149.10",
    title="CAN/CGSB-149.10",
    official_fit="ols",
    conversion=Conversion(site_air=moist_site_air, to_reference=to_reference),
    requirements=lambda: load_requirements("cgsb_149_10"),
    measures={
        "depressurized": measures.only_depressurized,
        "zero-before": measures.zero_before,
        "zero-after": measures.zero_after,
        "point-count": measures.point_count,
        "point-spacing": measures.point_spacing,
        "lowest-pressure": measures.bottom_pressure,
        "highest-pressure": measures.top_pressure,
        "exponent": measures.exponent,
        "correlation": measures.correlation,
        "standard-error": measures.flow_error,
        "wind": measures.wind_plain,
    },
    sequence=Sequence(
        directions=(Direction.DEPRESSURIZE,),
        targets_pa=(50.0, 45.0, 40.0, 35.0, 30.0, 25.0, 20.0, 15.0),
        zero_s=60.0,
        average_s=20.0,
    ),
    reports=("n50_per_h", "nla10_cm2_m2", "nlr50_l_s_m2"),
    not_in_record=(
        "openings sealed as the schedule of the standard says",
        "static pressure averaged over the façades",
        "that the standard may weigh its fit by the flow, which is remembered with little confidence and not done here",
        "accuracy and calibration of gauge, flow element and thermometers",
    ),
)
