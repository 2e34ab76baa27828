"""A result as JSON: `airseam-result-1`. Every interval is 95 %; a bound that does not exist is null.

An estimate that lies outside the measured pressures carries `"extrapolated": true`.
"""

from __future__ import annotations

import math

from analysis.records import (
    BestEstimate,
    Check,
    Estimate,
    MeanResult,
    QuantityBudget,
    RunResult,
    Settling,
    TestResult,
    Verdict,
)

FORMAT = "airseam-result-1"

Document = dict[str, object]


def result_document(result: TestResult) -> Document:
    """Return the document of a result, ready for `json.dumps`."""
    return {
        "format": FORMAT,
        "method": result.method,
        "fit": result.fit,
        "runs": [_run(run) for run in result.runs],
        "mean": _mean(result.mean),
        "verdicts": [_verdict(verdict) for verdict in result.verdicts],
        **({} if result.best is None else {"best": _best(result.best)}),
        **({} if not result.budgets else {"budgets": [_budget(item) for item in result.budgets]}),
    }


def _best(best: BestEstimate) -> Document:
    return {
        "fit": best.fit,
        "reason": best.reason,
        "q50_m3_h": _estimate(best.q50_m3_h),
        "difference": best.difference,
    }


def _budget(budget: QuantityBudget) -> Document:
    return {
        "quantity": budget.quantity,
        "total": _estimate(budget.total),
        "parts": [{"id": part.id, "ln_u": _finite(part.ln_u), "repeatable": part.repeatable} for part in budget.parts],
    }


def _finite(value: float) -> float | None:
    return value if math.isfinite(value) else None


def _run(run: RunResult) -> Document:
    return {
        "direction": run.direction.value,
        "zero_pa": run.zero_pa,
        "n": _estimate(run.n),
        "c_env_m3_h_pa_n": _estimate(run.c_env_m3_h_pa_n),
        "c_l_m3_h_pa_n": _estimate(run.c_l_m3_h_pa_n),
        "r2": run.r2,
        "q50_m3_h": _estimate(run.q50_m3_h),
        "n50_per_h": _estimate(run.n50_per_h),
        "qe50_m3_h_m2": _estimate(run.qe50_m3_h_m2),
        "qf50_m3_h_m2": _estimate(run.qf50_m3_h_m2),
        "ela4_cm2": _estimate(run.ela4_cm2),
        "eqla10_cm2": _estimate(run.eqla10_cm2),
        "induced_pa": list(run.induced_pa),
        "envelope_flow_m3_h": list(run.envelope_flow_m3_h),
        "valid": run.valid,
        "checks": [_check(check) for check in run.checks],
    }


def _mean(mean: MeanResult) -> Document:
    return {
        "q50_m3_h": _estimate(mean.q50_m3_h),
        "n50_per_h": _estimate(mean.n50_per_h),
        "qe50_m3_h_m2": _estimate(mean.qe50_m3_h_m2),
        "qf50_m3_h_m2": _estimate(mean.qf50_m3_h_m2),
    }


def _estimate(estimate: Estimate | None) -> Document | None:
    if estimate is None:
        return None
    bounded = math.isfinite(estimate.high)
    document: Document = {
        "value": estimate.value,
        "low": estimate.low if bounded else None,
        "high": estimate.high if bounded else None,
    }
    if estimate.extrapolated:
        document["extrapolated"] = True
    return document


def _check(check: Check) -> Document:
    return {
        "id": check.id,
        "clause": check.clause,
        "text": check.text,
        "value": check.value,
        "limit": check.limit,
        "unit": check.unit,
        "ok": check.ok,
        "source": check.source,
    }


def _verdict(verdict: Verdict) -> Document:
    return {
        "limit": verdict.limit.id,
        "quantity": verdict.limit.quantity,
        "value": verdict.limit.value,
        "probability": verdict.probability,
        "verdict": verdict.verdict,
        **({} if verdict.settling is None else {"settling": _settling(verdict.settling)}),
    }


def _settling(settling: Settling) -> Document:
    return {
        "narrowing": settling.narrowing,
        "tests": settling.tests,
        "improvements": [{"part": item.part.id, "ln_u_needed": item.ln_u_needed} for item in settling.improvements],
    }
