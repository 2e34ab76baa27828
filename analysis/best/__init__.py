"""The best that the readings give, beside the official number, and everything that makes a result uncertain."""

from __future__ import annotations

from analysis.best.budget import Assessment
from analysis.best.estimate import BestRun, best_estimate, best_runs

__all__ = ["Assessment", "BestRun", "best_estimate", "best_runs"]
