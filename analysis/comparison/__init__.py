"""Two tests of a building beside each other: the change with its interval, and what else differs."""

from __future__ import annotations

from analysis.comparison.change import Assessed, Calibration, Change, assessed_flow, change_between
from analysis.comparison.differences import Difference, differences

__all__ = ["Assessed", "Calibration", "Change", "Difference", "assessed_flow", "change_between", "differences"]
