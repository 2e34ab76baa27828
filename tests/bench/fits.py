"""How long the analysis of a whole test takes, beside a bare least-squares fit of the same points by a library.

The library is statsmodels: `OLS(y, X).fit()` of ln q on ln dp with its parameters and their intervals. The analysis is
that of one direction by ISO 9972 with all checks and quantities, the best estimate by generalized least squares, and
the uncertainty budget. Both are timed alternately in one run; the medians count.
"""

from __future__ import annotations

import argparse
import json
import statistics
import sys
import time
from collections.abc import Callable
from dataclasses import replace

import numpy as np
import statsmodels.api as sm

from analysis.methods import analyse
from analysis.records import Kit, Test
from tests.bench._batch import houses_tested

MOST_TIMES = 5.0
STORED_TESTS, MOST_STORED_S = 10_000, 30.0
KIT = Kit()


def bare_fit(test: Test) -> object:
    """Return what a person would take from a library: parameters and their intervals."""
    points = test.runs[0].points
    x = np.log([abs(point.envelope_pa) for point in points])
    y = np.log([point.flow_m3_h for point in points])
    fitted = sm.OLS(y, sm.add_constant(x)).fit()
    return fitted.params, fitted.conf_int()


def whole(test: Test) -> object:
    """Return everything."""
    return analyse(test, kit=KIT)


def alternately(calls: dict[str, Callable[[Test], object]], tests: list[Test], rounds: int) -> dict[str, float]:
    """Return the median time of each call in microseconds; every round takes each call once on the same test."""
    times: dict[str, list[float]] = {name: [] for name in calls}
    for at in range(rounds):
        test = tests[at % len(tests)]
        for name, call in calls.items():
            start_s = time.perf_counter()
            call(test)
            times[name].append(1e6 * (time.perf_counter() - start_s))
    return {name: statistics.median(values) for name, values in times.items()}


def main() -> int:
    """Print the table."""
    parser = argparse.ArgumentParser(prog="run.py bench fits", description=__doc__)
    parser.add_argument("--rounds", type=int, default=400, help="times of each (%(default)s)")
    parser.add_argument("--seed", type=int, default=1, help="decides the tests (%(default)s)")
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args()
    tests, _ = houses_tested(20, 3.0, 1, options.seed)
    one_way = [replace(test, runs=test.runs[:1]) for test in tests]
    calls: dict[str, Callable[[Test], object]] = {"bare": bare_fit, "whole": whole, "official": analyse}
    alternately(calls, one_way, 20)
    found = alternately(calls, one_way, options.rounds)
    times = found["whole"] / found["bare"]
    print(f"bare fit by the library           {found['bare']:>8.0f} us")
    print(f"official result alone             {found['official']:>8.0f} us")
    print(f"whole analysis, one direction     {found['whole']:>8.0f} us   {times:.2f} times the bare fit")
    start_s = time.perf_counter()
    for at in range(STORED_TESTS):
        whole(tests[at % len(tests)])
    stored_s = time.perf_counter() - start_s
    print(f"{STORED_TESTS} tests in both directions   {stored_s:>8.1f} s on one core")
    if options.json:
        print(json.dumps({"bench": "fits", "us": found, "times": times, "stored_s": stored_s}))
    return 0 if times <= MOST_TIMES and stored_s <= MOST_STORED_S else 1


if __name__ == "__main__":
    sys.exit(main())
