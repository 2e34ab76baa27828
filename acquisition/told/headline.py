"""The number in front: which quantity it is, and the interval that holds everything."""

from __future__ import annotations

from analysis.records import Estimate, Limit, MeanResult, TestResult


def headline(mean: MeanResult, limit: Limit | None) -> tuple[str, Estimate]:
    """Return the quantity that stands in front: that of the limit, else the first that is known."""
    order = ["n50_per_h", "q50_m3_h"]
    if limit is not None:
        order.insert(0, limit.quantity)
    for quantity in order:
        estimate: Estimate | None = getattr(mean, quantity, None)
        if estimate is not None:
            return quantity, estimate
    return "q50_m3_h", mean.q50_m3_h


def total_of(result: TestResult, quantity: str) -> Estimate | None:
    """Return a quantity with the interval of everything that makes it uncertain, None where that was not worked out."""
    return next((item.total for item in result.budgets if item.quantity == quantity), None)
