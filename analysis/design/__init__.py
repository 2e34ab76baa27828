"""The test beside a heating and cooling design: what was assumed, what is usual, what the difference means."""

from __future__ import annotations

from analysis.design.assumptions import nearest_construction, shipped_assumptions, weather_multiplier
from analysis.design.comparison import DesignComparison, compare_with_design
from analysis.design.residential import Season, design_infiltration

__all__ = [
    "DesignComparison",
    "Season",
    "compare_with_design",
    "design_infiltration",
    "nearest_construction",
    "shipped_assumptions",
    "weather_multiplier",
]
