"""The best that the readings give, beside the official number, and everything that makes a result uncertain."""

from __future__ import annotations

from analysis.best.budget import budget_of, budgets
from analysis.best.estimate import BestRun, best_estimate, best_runs

__all__ = ["BestRun", "best_estimate", "best_runs", "budget_of", "budgets"]
