"""Methods: what each standard makes of a test. A new one is a module with `METHOD` and its line below."""

from __future__ import annotations

from collections.abc import Sequence

from analysis.best import Assessment, best_estimate, best_runs
from analysis.errors import InvalidInput
from analysis.estimators import estimator
from analysis.methods import (
    astm_e779,
    astm_e1827_single,
    astm_e1827_two,
    astm_e3158,
    cgsb_149_10,
    iso9972,
    resnet_380_multi,
    resnet_380_single,
)
from analysis.methods.directions import mean_flow, mean_result, verdict
from analysis.methods.method import Method
from analysis.methods.run import analyse_run
from analysis.records import Kit, Limit, Test, TestResult
from analysis.validation import validate

_METHODS: tuple[Method, ...] = (
    iso9972.METHOD,
    astm_e779.METHOD,
    astm_e1827_single.METHOD,
    astm_e1827_two.METHOD,
    cgsb_149_10.METHOD,
    resnet_380_single.METHOD,
    resnet_380_multi.METHOD,
    astm_e3158.METHOD,
)
_BY_ID = {item.id: item for item in _METHODS}


def method_ids() -> tuple[str, ...]:
    """Return the ids of the methods there are."""
    return tuple(_BY_ID)


def method_of(method_id: str) -> Method:
    """Return the method of an id; raises `InvalidInput` that lists those there are."""
    found = _BY_ID.get(method_id)
    if found is None:
        raise InvalidInput("method", method_id, f"one of {', '.join(_BY_ID)} is needed")
    return found


def analyse(
    test: Test, method: str = "iso9972", fit: str | None = None, limits: Sequence[Limit] = (), kit: Kit | None = None
) -> TestResult:
    """Return the result of a test under a method, by its official fit or the one named.

    With a kit the best estimate stands beside it, with the budget of everything that makes the result uncertain, and
    the verdicts count all of that.

    An unfinished run (no closing zero-flow record) is analysed as far as it has come: checks that more points may still
    settle are open. Raises `InvalidInput`, one sentence that names the field as in the JSON form of a test.
    """
    chosen = method_of(method)
    fitting = estimator(fit if fit is not None else chosen.official_fit)
    validate(test)
    results = [analyse_run(chosen, fitting, test, run, f"runs[{at}]") for at, run in enumerate(test.runs)]
    flow = mean_flow([reference for _, reference in results])
    best = best_runs(test) if kit is not None else ()
    assessed = Assessment(test, flow.lines, best, kit) if kit is not None else None
    return TestResult(
        method=chosen.id,
        fit=fitting.ID,
        runs=tuple(result for result, _ in results),
        mean=mean_result(flow, test.building),
        verdicts=tuple(
            verdict(flow, test.building, limit, f"limits[{at}]", assessed) for at, limit in enumerate(limits)
        ),
        best=best_estimate(best, flow.at_50.value) if best else None,
        budgets=assessed.all() if assessed is not None else (),
    )
