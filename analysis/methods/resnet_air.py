"""Air in ANSI/RESNET/ICC 380: corrected as in ASTM E779, but only high up or with a large temperature difference."""

from __future__ import annotations

from analysis.air import REFERENCE_DENSITY_KG_M3, REFERENCE_TEMPERATURE_C
from analysis.methods.elevation import site_air as corrected_air
from analysis.methods.method import Conversion
from analysis.records import Air, Building
from analysis.siteair import SiteAir, to_reference

WARM_K = 16.7
"""30 degF: up to this temperature difference nothing is corrected (from memory)."""
HIGH_M = 1524.0
"""5000 ft: up to this altitude nothing is corrected (from memory)."""


def site_air(air: Air, building: Building) -> SiteAir:
    """Return the air of the site, or reference air on both sides where nothing has to be corrected."""
    if abs(air.indoor_c - air.outdoor_c) > WARM_K or building.altitude_m > HIGH_M:
        return corrected_air(air, building)
    reference = REFERENCE_TEMPERATURE_C, REFERENCE_DENSITY_KG_M3
    return SiteAir(reference[0], reference[0], reference[1], reference[1])


CONDITIONAL = Conversion(site_air=site_air, to_reference=to_reference)
