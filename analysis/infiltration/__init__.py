"""Natural air change from a test under pressure: models with their names, and the wide band that belongs to each."""

from __future__ import annotations

from analysis.infiltration.basic import basic_infiltration
from analysis.infiltration.credit import credit, fan_flow_m3_h, required_ventilation_m3_h, stations
from analysis.infiltration.enhanced import enhanced_infiltration
from analysis.infiltration.model import Infiltration, Model, model_of
from analysis.infiltration.rules import by_divisor, by_facade_pressure, by_twenty
from analysis.infiltration.site import Foundation, Shelter, Site, Terrain, Weather

__all__ = [
    "Foundation",
    "Infiltration",
    "Model",
    "Shelter",
    "Site",
    "Terrain",
    "Weather",
    "basic_infiltration",
    "by_divisor",
    "by_facade_pressure",
    "by_twenty",
    "credit",
    "enhanced_infiltration",
    "fan_flow_m3_h",
    "model_of",
    "required_ventilation_m3_h",
    "stations",
]
