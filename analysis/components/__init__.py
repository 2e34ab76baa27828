"""What single components leak, by published tables, and what a list of them adds up to."""

from __future__ import annotations

from analysis.components.table import Component, ComponentTable, read_components, shipped_components
from analysis.components.total import ComponentTotal, component_total, flow_of_area_m3_h

__all__ = [
    "Component",
    "ComponentTable",
    "ComponentTotal",
    "component_total",
    "flow_of_area_m3_h",
    "read_components",
    "shipped_components",
]
